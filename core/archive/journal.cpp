#include "archive/journal.h"

#include "archive/archive.h"

#include <algorithm>
#include <array>
#include <charconv>
#include <cstdint>
#include <map>
#include <set>
#include <utility>

namespace treadle::archive {

namespace {

using base::Refusal;
using base::Result;

constexpr std::string_view k_record_word = "treadle-record";
constexpr std::string_view k_head_word = "treadle-head";
constexpr std::string_view k_version_word = "1";
constexpr std::size_t k_digits = 12; ///< of a number in a name, so that keys lie in its order
constexpr std::size_t k_longest_writer = 32;

/// FNV-1a: finds what went wrong by itself, not what somebody forged.
std::string sum_of(std::string_view first, std::string_view second) {
    std::uint64_t sum = 14695981039346656037ULL;
    for (const std::string_view part : {first, second})
        for (const char byte : part)
            sum = (sum ^ static_cast<unsigned char>(byte)) * 1099511628211ULL;
    std::string text(16, '0');
    for (std::size_t i = text.size(); i-- > 0; sum >>= 4U)
        text[i] = "0123456789abcdef"[sum & 0xFU];
    return text;
}

bool is_writer(std::string_view word) {
    return !word.empty() && word.size() <= k_longest_writer &&
           std::all_of(word.begin(), word.end(), [](char c) {
               return (c >= 'a' && c <= 'z') || (c >= '0' && c <= '9');
           });
}

std::optional<RecordName> name_from(std::string_view text) {
    const std::size_t dash = text.find('-');
    if (dash != k_digits || !is_writer(text.substr(dash + 1)))
        return std::nullopt;
    RecordName name;
    const char* const end = text.data() + dash;
    const auto [at, fault] = std::from_chars(text.data(), end, name.number);
    if (fault != std::errc{} || at != end || name.number < 0)
        return std::nullopt;
    name.writer = text.substr(dash + 1);
    return name;
}

/// Exactly `Count` words of a line, one blank between two; less when there are others.
template <std::size_t Count>
std::optional<std::array<std::string_view, Count>> words_of(std::string_view line) {
    std::array<std::string_view, Count> words;
    for (std::size_t i = 0; i < Count; ++i) {
        const std::size_t end = i + 1 < Count ? line.find(' ') : line.size();
        if (end == std::string_view::npos || end == 0)
            return std::nullopt;
        words[i] = line.substr(0, end);
        line.remove_prefix(std::min(line.size(), end + 1));
    }
    return words;
}

Refusal not_this(std::string_view what) {
    return {std::string(what), "This is not what Treadle stored here, or it was damaged.", ""};
}

std::optional<Refusal>
fault_of_words(std::string_view word, std::string_view expected, std::string_view version) {
    if (word != expected)
        return not_this("format");
    if (version != k_version_word)
        return Refusal{"version",
                       "This was stored by another version of Treadle; nothing was changed.",
                       "this one reads version " + std::string(k_version_word)};
    return std::nullopt;
}

} // namespace

std::string name_text(const RecordName& name) {
    std::string digits = std::to_string(name.number);
    if (digits.size() < k_digits)
        digits.insert(0, k_digits - digits.size(), '0');
    return digits + "-" + name.writer;
}

std::string journal_prefix(std::string_view job) { return "journal/" + std::string(job) + "/"; }

std::string head_key(std::string_view job) { return journal_prefix(job) + "head"; }

std::string record_key(std::string_view job, RecordKind kind, const RecordName& name) {
    return journal_prefix(job) + (kind == RecordKind::base ? "base/" : "step/") + name_text(name);
}

std::string write_record(const RecordName& name,
                         const std::optional<RecordName>& follows,
                         std::string_view body) {
    const std::string names = name_text(name) + " " + (follows ? name_text(*follows) : "-");
    std::string text(k_record_word);
    text += " " + std::string(k_version_word) + " " + names + " " + sum_of(names, body) + "\n";
    return text.append(body);
}

Result<Record> read_record(std::string_view bytes) {
    const std::size_t end = bytes.find('\n');
    const auto words = words_of<5>(bytes.substr(0, std::min(end, bytes.size())));
    if (!words || end == std::string_view::npos)
        return not_this("record");
    if (auto fault = fault_of_words((*words)[0], k_record_word, (*words)[1]))
        return *fault;
    const auto name = name_from((*words)[2]);
    const auto follows = name_from((*words)[3]);
    if (!name)
        return not_this("name");
    if (!follows && (*words)[3] != "-")
        return not_this("follows");
    const std::string_view body = bytes.substr(end + 1);
    const std::string names = std::string((*words)[2]) + " " + std::string((*words)[3]);
    if (sum_of(names, body) != (*words)[4])
        return not_this("sum");
    return Record{*name, follows, body};
}

std::string write_head(const Head& head) {
    const std::string names =
        name_text(head.first) + " " + name_text(head.last) + " " + name_text(head.cursor);
    return std::string(k_head_word) + " " + std::string(k_version_word) + " " + names + " " +
           sum_of(names, "");
}

Result<Head> read_head(std::string_view bytes) {
    const auto words = words_of<6>(bytes);
    if (!words)
        return not_this("head");
    if (auto fault = fault_of_words((*words)[0], k_head_word, (*words)[1]))
        return *fault;
    const auto first = name_from((*words)[2]);
    const auto last = name_from((*words)[3]);
    const auto cursor = name_from((*words)[4]);
    if (!first || !last || !cursor)
        return not_this("head");
    const std::string names =
        std::string((*words)[2]) + " " + std::string((*words)[3]) + " " + std::string((*words)[4]);
    if (sum_of(names, "") != (*words)[5])
        return not_this("sum");
    return Head{*first, *last, *cursor};
}

// ---- a whole journal ----------------------------------------------------------------------------

namespace {

struct NameOrder {
    bool operator()(const RecordName& a, const RecordName& b) const {
        return a.number != b.number ? a.number < b.number : a.writer < b.writer;
    }
};
using Records = std::map<RecordName, Record, NameOrder>;

/// What lies in the store, sorted.
struct Shelf {
    Records bases;
    Records steps;
    std::optional<Head> head;
    std::optional<Refusal> trouble; ///< the first thing that could not be read
};

void put(Shelf& shelf, Records& records, std::string_view name, const StoredBytes& one) {
    auto record = read_record(one.bytes);
    if (record && name_text(record->name) == name)
        records.emplace(record->name, *record);
    else if (!shelf.trouble)
        shelf.trouble = record ? not_this(one.key) : record.refusal();
}

Shelf sorted(std::string_view job, const std::vector<StoredBytes>& stored) {
    Shelf shelf;
    const std::string bases = journal_prefix(job) + "base/";
    const std::string steps = journal_prefix(job) + "step/";
    for (const StoredBytes& one : stored) {
        const std::string_view key(one.key);
        if (key == head_key(job)) {
            auto head = read_head(one.bytes);
            if (head)
                shelf.head = *head;
            else
                shelf.trouble = head.refusal();
        } else if (key.substr(0, bases.size()) == bases) {
            put(shelf, shelf.bases, key.substr(bases.size()), one);
        } else if (key.substr(0, steps.size()) == steps) {
            put(shelf, shelf.steps, key.substr(steps.size()), one);
        }
    }
    return shelf;
}

/// The states that lead to the last one, as far back as the records say it.
std::set<RecordName, NameOrder> ancestors(const Shelf& shelf) {
    std::set<RecordName, NameOrder> names;
    std::optional<RecordName> at = shelf.head ? std::optional(shelf.head->last) : std::nullopt;
    while (at && names.insert(*at).second) {
        const auto found = shelf.steps.find(*at);
        at = found == shelf.steps.end() ? std::nullopt : found->second.follows;
    }
    return names;
}

/// The steps from a base on. Where it parts, the way to the last step, else the younger one.
std::vector<const Record*> chain_from(const Shelf& shelf, const Record& base) {
    const auto wanted = ancestors(shelf);
    std::multimap<RecordName, const Record*, NameOrder> after;
    for (const auto& [name, step] : shelf.steps)
        if (step.follows)
            after.emplace(*step.follows, &step);
    std::vector<const Record*> chain;
    std::set<RecordName, NameOrder> seen;
    RecordName at = base.follows.value_or(base.name);
    while (seen.insert(at).second) {
        if (shelf.head && at == shelf.head->last)
            break;
        const Record* next = nullptr;
        const auto [begin, end] = after.equal_range(at);
        for (auto it = begin; it != end; ++it) {
            if (next == nullptr || wanted.count(next->name) == 0 ||
                wanted.count(it->second->name) > 0)
                next = it->second;
        }
        if (next == nullptr)
            break;
        chain.push_back(next);
        at = next->name;
    }
    return chain;
}

/// Applies the steps until one cannot be read.
void replay(const std::vector<const Record*>& chain, ReadJournal& journal) {
    for (const Record* record : chain) {
        auto step = read_step(record->body);
        if (!step) {
            journal.trouble = step.refusal();
            return;
        }
        auto moment = apply_step(journal.moments.back(), *step);
        if (!moment) {
            journal.trouble = moment.refusal();
            return;
        }
        journal.names.push_back(record->name);
        journal.words.push_back(step->words);
        journal.moments.push_back(std::move(moment).value());
    }
}

void find_cursor(const Shelf& shelf, ReadJournal& journal) {
    journal.cursor = journal.names.size();
    const RecordName end = journal.names.empty() ? journal.start : journal.names.back();
    if (!journal.trouble && shelf.head && !(shelf.head->last == end))
        journal.trouble = shelf.trouble.value_or(
            Refusal{"journal", "The last edits are missing from what was stored.", ""});
    if (!shelf.head && !journal.trouble)
        journal.trouble = shelf.trouble.value_or(not_this("head"));
    if (!shelf.head)
        return;
    if (shelf.head->cursor == journal.start)
        journal.cursor = 0;
    for (std::size_t i = 0; i < journal.names.size(); ++i)
        if (journal.names[i] == shelf.head->cursor)
            journal.cursor = i + 1;
}

std::optional<ReadJournal> read_from(const Shelf& shelf, const Record& base) {
    auto file = read_file(base.body);
    if (!file)
        return std::nullopt;
    ReadJournal journal;
    journal.base = base.name;
    journal.start = base.follows.value_or(base.name);
    journal.moments.push_back(
        {std::move(file->job), std::make_shared<const equipment::Shop>(std::move(file->shop))});
    replay(chain_from(shelf, base), journal);
    find_cursor(shelf, journal);
    return journal;
}

} // namespace

long long highest_number(std::string_view job, const std::vector<StoredBytes>& stored) {
    long long highest = 0;
    for (const StoredBytes& one : stored) {
        const std::string_view key(one.key);
        const std::string prefix = journal_prefix(job);
        if (key.size() <= prefix.size() + 5 || key.substr(0, prefix.size()) != prefix)
            continue;
        if (const auto name = name_from(key.substr(prefix.size() + 5)))
            highest = std::max(highest, name->number);
    }
    return highest;
}

Result<ReadJournal> read_journal(std::string_view job, const std::vector<StoredBytes>& stored) {
    const Shelf shelf = sorted(job, stored);
    std::vector<const Record*> bases;
    if (shelf.head) {
        const auto first = shelf.bases.find(shelf.head->first);
        if (first != shelf.bases.end())
            bases.push_back(&first->second);
    }
    for (auto it = shelf.bases.rbegin(); it != shelf.bases.rend(); ++it)
        bases.push_back(&it->second);
    for (const Record* base : bases)
        if (auto journal = read_from(shelf, *base))
            return std::move(*journal);
    return shelf.trouble.value_or(
        Refusal{"journal", "The job that the stored edits belong to is missing.", ""});
}

} // namespace treadle::archive
