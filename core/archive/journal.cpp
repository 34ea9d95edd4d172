#include "archive/journal.h"

#include <algorithm>
#include <array>
#include <charconv>
#include <cstdint>

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

std::string padded(long long number) {
    std::string digits = std::to_string(number);
    if (digits.size() < k_digits)
        digits.insert(0, k_digits - digits.size(), '0');
    return digits;
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

std::string name_text(const RecordName& name) { return padded(name.number) + "-" + name.writer; }

std::string journal_prefix(std::string_view job) { return "journal/" + std::string(job) + "/"; }

std::string old_head_key(std::string_view job) { return journal_prefix(job) + "head"; }

std::string head_key(std::string_view job, long long turn) {
    return old_head_key(job) + "/" + padded(turn);
}

std::string_view job_of_key(std::string_view key) {
    constexpr std::string_view k_begin = "journal/";
    if (key.substr(0, k_begin.size()) != k_begin)
        return {};
    key.remove_prefix(k_begin.size());
    const std::size_t end = key.find('/');
    return end == std::string_view::npos ? std::string_view{} : key.substr(0, end);
}

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

long long highest_number(std::string_view job, const std::vector<StoredBytes>& stored) {
    const std::string prefix = journal_prefix(job);
    constexpr std::size_t k_kind = 5; // "base/", "step/"
    long long highest = 0;
    for (const StoredBytes& one : stored) {
        const std::string_view key(one.key);
        if (key.size() <= prefix.size() + k_kind || key.substr(0, prefix.size()) != prefix)
            continue;
        if (const auto name = name_from(key.substr(prefix.size() + k_kind)))
            highest = std::max(highest, name->number);
    }
    return highest;
}

} // namespace treadle::archive
