// A whole journal read back: part of journal.h.

#include "archive/archive.h"
#include "archive/journal.h"

#include <algorithm>
#include <charconv>
#include <map>
#include <set>
#include <utility>

namespace treadle::archive {

namespace {

using base::Refusal;
using base::Result;

using Records = std::map<RecordName, Record>;

/// What lies in the store, sorted.
struct Sorted {
    Records bases; ///< by the name of their record
    Records steps;
    std::map<long long, Head> heads; ///< by turn
    long long turn = 0;
    std::optional<Refusal> trouble; ///< the first thing that could not be read
    std::set<std::string> unread;

    void could_not(const std::string& key, const Refusal& why) {
        unread.insert(key);
        if (!trouble)
            trouble = why;
    }
    [[nodiscard]] const Head* head() const {
        return heads.empty() ? nullptr : &heads.rbegin()->second;
    }
    /// The latest head was read.
    [[nodiscard]] bool knows_cursor() const {
        return !heads.empty() && heads.rbegin()->first == turn;
    }
};

RecordName state_of(const Record& base) { return base.follows.value_or(base.name); }

void put(Sorted& all, Records& records, std::string_view name, const StoredBytes& one) {
    auto record = read_record(one.bytes);
    if (record && name_text(record->name) == name)
        records.emplace(record->name, *record);
    else
        all.could_not(one.key,
                      record ? Refusal{one.key, "A record lies under another one's key.", ""}
                             : record.refusal());
}

void put_head(Sorted& all, long long turn, const StoredBytes& one) {
    all.turn = std::max(all.turn, turn);
    auto head = read_head(one.bytes);
    if (head)
        all.heads.emplace(turn, *head);
    else
        all.could_not(one.key, head.refusal());
}

long long turn_from(std::string_view digits) {
    long long turn = 0;
    const auto [at, fault] = std::from_chars(digits.data(), digits.data() + digits.size(), turn);
    return fault == std::errc{} && at == digits.data() + digits.size() && turn > 0 ? turn : -1;
}

Sorted sorted(std::string_view job, const std::vector<StoredBytes>& stored) {
    Sorted all;
    const std::string bases = journal_prefix(job) + "base/";
    const std::string steps = journal_prefix(job) + "step/";
    const std::string heads = old_head_key(job) + "/";
    for (const StoredBytes& one : stored) {
        const std::string_view key(one.key);
        if (key == old_head_key(job))
            put_head(all, 0, one);
        else if (key.substr(0, bases.size()) == bases)
            put(all, all.bases, key.substr(bases.size()), one);
        else if (key.substr(0, steps.size()) == steps)
            put(all, all.steps, key.substr(steps.size()), one);
        else if (key.substr(0, heads.size()) == heads && turn_from(key.substr(heads.size())) > 0)
            put_head(all, turn_from(key.substr(heads.size())), one);
    }
    return all;
}

/// States from the oldest that the records lead back to, up to `last`.
std::vector<RecordName> way_to(const Sorted& all, const RecordName& last) {
    std::vector<RecordName> way{last};
    std::set<RecordName> seen{last};
    for (;;) {
        const auto step = all.steps.find(way.back());
        if (step == all.steps.end() || !step->second.follows ||
            !seen.insert(*step->second.follows).second)
            break;
        way.push_back(*step->second.follows);
    }
    std::reverse(way.begin(), way.end());
    return way;
}

/// Follows the steps on from the end of a way: the younger one where it parts.
void extend(const Sorted& all, std::vector<RecordName>& way) {
    std::map<RecordName, RecordName> next;
    for (const auto& [name, step] : all.steps)
        if (step.follows)
            next.insert_or_assign(*step.follows, name);
    std::set<RecordName> seen(way.begin(), way.end());
    for (auto found = next.find(way.back());
         found != next.end() && seen.insert(found->second).second;
         found = next.find(way.back()))
        way.push_back(found->second);
}

class Reading {
public:
    Reading(std::string_view job, const std::vector<StoredBytes>& stored)
        : job_(job),
          all_(sorted(job, stored)) {}

    Result<ReadJournal> read();

private:
    [[nodiscard]] std::vector<RecordName> whole_way() const;
    /// The bases of states on a way, oldest first, by their place on it.
    [[nodiscard]] std::multimap<std::size_t, const Record*>
    bases_on(const std::vector<RecordName>& way) const;
    bool begin_at(const RecordName& state, const Record& base);
    bool step_to(const RecordName& state);
    bool walk(const std::vector<RecordName>& way);
    void find_cursor();
    void set_apart_older();
    void find_branches();
    void add_branch(const RecordName& leaf);
    void could_not(RecordKind kind, const RecordName& name, const Refusal& why) {
        all_.could_not(record_key(job_, kind, name), why);
    }

    std::string job_;
    Sorted all_;
    ReadJournal out_;
    std::map<RecordName, Moment> reached_; ///< every state that was made, for branches
    std::set<RecordName> used_;            ///< steps on the way, made or not
};

std::vector<RecordName> Reading::whole_way() const {
    std::vector<RecordName> way;
    if (const Head* head = all_.head())
        way = way_to(all_, head->last);
    else if (!all_.steps.empty())
        way = way_to(all_, all_.steps.rbegin()->first);
    else if (!all_.bases.empty())
        way = {state_of(all_.bases.rbegin()->second)};
    if (!way.empty() && !all_.knows_cursor())
        extend(all_, way);
    return way;
}

std::multimap<std::size_t, const Record*>
Reading::bases_on(const std::vector<RecordName>& way) const {
    std::map<RecordName, std::size_t> place;
    for (std::size_t i = 0; i < way.size(); ++i)
        place.emplace(way[i], i);
    std::multimap<std::size_t, const Record*> on;
    for (const auto& [name, base] : all_.bases)
        if (const auto found = place.find(state_of(base)); found != place.end())
            on.emplace(found->second, &base);
    return on;
}

/// Forgets what was made so far: the history begins here.
bool Reading::begin_at(const RecordName& state, const Record& base) {
    auto file = read_file(base.body);
    if (!file) {
        could_not(RecordKind::base, base.name, file.refusal());
        return false;
    }
    out_.start = state;
    out_.names.clear();
    out_.words.clear();
    out_.moments.assign(
        1, {std::move(file->job), std::make_shared<const equipment::Shop>(std::move(file->shop))});
    reached_.insert_or_assign(state, out_.moments.front());
    return true;
}

bool Reading::step_to(const RecordName& state) {
    const auto record = all_.steps.find(state);
    if (record == all_.steps.end())
        return false;
    auto step = read_step(record->second.body);
    if (!step) {
        could_not(RecordKind::step, state, step.refusal());
        return false;
    }
    auto moment = apply_step(out_.moments.back(), *step);
    if (!moment) {
        could_not(RecordKind::step, state, moment.refusal());
        return false;
    }
    reached_.insert_or_assign(state, *moment);
    out_.names.push_back(state);
    out_.words.push_back(step->words);
    out_.moments.push_back(std::move(moment).value());
    return true;
}

/// From the oldest base on; where it breaks, from the next base after the break. False when there
/// is no base to begin with.
bool Reading::walk(const std::vector<RecordName>& way) {
    const auto bases = bases_on(way);
    bool has_begun = false;
    std::size_t at = 0; // place of moments.back()
    auto next = bases.begin();
    while (at + 1 < way.size() || !has_begun) {
        if (has_begun && step_to(way[at + 1])) {
            ++at;
            continue;
        }
        while (next != bases.end() && has_begun && next->first <= at)
            ++next;
        bool found = false;
        for (; next != bases.end() && !found; ++next) {
            found = begin_at(way[next->first], *next->second);
            at = found ? next->first : at;
        }
        if (!found)
            break;
        has_begun = true;
    }
    for (const RecordName& state : way)
        used_.insert(state);
    out_.is_whole = has_begun && at + 1 == way.size();
    const std::size_t start = at - out_.names.size();
    for (const auto& [place, base] : bases) {
        const std::string key = record_key(job_, RecordKind::base, base->name);
        if (has_begun && place < start)
            all_.unread.insert(key); // of the part that is lost to undo
        else if (all_.unread.count(key) == 0)
            out_.bases.push_back({base->name, way[place]});
    }
    return has_begun;
}

void Reading::find_cursor() {
    out_.cursor = out_.names.size();
    const Head* const head = all_.head();
    if (head == nullptr || !all_.knows_cursor())
        return; // the end is the latest edit
    if (head->cursor == out_.start) {
        out_.cursor = 0;
        return;
    }
    const auto found = std::find(out_.names.begin(), out_.names.end(), head->cursor);
    if (found != out_.names.end())
        out_.cursor = static_cast<std::size_t>(found - out_.names.begin()) + 1;
    else
        out_.is_whole = false; // the shown state is older than what can be read
}

/// Where the way is broken, what is older than its beginning is the lost part of it and no branch.
void Reading::set_apart_older() {
    const bool is_broken = out_.bases.empty() || out_.bases.front().state != out_.start ||
                           all_.steps.count(out_.start) > 0;
    for (const auto& [name, step] : all_.steps) {
        if (is_broken && used_.count(name) == 0 && name.number < out_.start.number) {
            used_.insert(name);
            all_.unread.insert(record_key(job_, RecordKind::step, name));
        }
    }
}

void Reading::find_branches() {
    std::set<RecordName> followed;
    for (const auto& [name, step] : all_.steps)
        if (step.follows && used_.count(name) == 0)
            followed.insert(*step.follows);
    constexpr std::size_t k_most = 20;
    for (const auto& [name, step] : all_.steps)
        if (used_.count(name) == 0 && followed.count(name) == 0 && out_.branches.size() < k_most)
            add_branch(name);
}

void Reading::add_branch(const RecordName& leaf) {
    const std::vector<RecordName> way = way_to(all_, leaf);
    const auto bases = bases_on(way);
    Reading side(job_, {});
    side.all_.steps = all_.steps;
    std::size_t from = way.size();
    while (from > 0) {
        --from;
        const auto base = bases.find(from);
        const auto known = reached_.find(way[from]);
        if (known != reached_.end()) {
            side.out_.moments.assign(1, known->second);
            break;
        }
        if (base != bases.end() && side.begin_at(way[from], *base->second))
            break;
    }
    bool is_made = !side.out_.moments.empty();
    for (std::size_t i = from + 1; i < way.size(); ++i)
        is_made = is_made && side.step_to(way[i]);
    Branch branch; // the steps before a base within it are its records too
    for (const RecordName& state : way)
        if (used_.count(state) == 0 && all_.steps.count(state) > 0)
            branch.keys.push_back(record_key(job_, RecordKind::step, state));
    if (is_made) {
        branch.moment = side.out_.moments.back();
        out_.branches.push_back(std::move(branch));
        return;
    }
    for (const std::string& key : branch.keys)
        all_.could_not(key, {"journal", "An edit belongs to a state that is missing.", ""});
}

Result<ReadJournal> Reading::read() {
    const std::vector<RecordName> way = whole_way();
    bool has_begun = !way.empty() && walk(way);
    // No base leads there: the latest base at all, and what follows it.
    for (auto base = all_.bases.rbegin(); !has_begun && base != all_.bases.rend(); ++base) {
        std::vector<RecordName> other{state_of(base->second)};
        extend(all_, other);
        out_ = {};
        has_begun = walk(other);
        out_.is_whole = false;
    }
    if (!has_begun)
        return all_.trouble.value_or(
            Refusal{"journal", "The job that the stored edits belong to is missing.", ""});
    find_cursor();
    set_apart_older();
    find_branches();
    if (!all_.trouble && !out_.is_whole)
        all_.trouble = Refusal{"journal", "The last edits are missing from what was stored.", ""};
    if (!all_.trouble && all_.heads.empty())
        all_.trouble = Refusal{"head", "Where undo stood was not stored.", ""};
    out_.turn = all_.turn;
    out_.trouble = all_.trouble;
    out_.unread.assign(all_.unread.begin(), all_.unread.end());
    return std::move(out_);
}

} // namespace

Result<ReadJournal> read_journal(std::string_view job, const std::vector<StoredBytes>& stored) {
    return Reading(job, stored).read();
}

} // namespace treadle::archive
