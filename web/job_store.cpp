#include "job_store.h"

#include "archive/archive.h"

#include <algorithm>
#include <utility>

namespace treadle::web {

namespace {

using archive::RecordKind;
using archive::RecordName;
using platform::StoreResult;

std::shared_ptr<const edit::Document> shared(edit::Document document) {
    return std::make_shared<const edit::Document>(std::move(document));
}

archive::Moment moment(const edit::Document& document) { return {document.job, document.shop}; }

edit::Session::History history_of(archive::ReadJournal& journal) {
    std::vector<std::shared_ptr<const edit::Document>> states;
    for (archive::Moment& at : journal.moments)
        states.push_back(shared({std::move(at.job), std::move(at.shop)}));
    edit::Session::History history;
    for (std::size_t i = 0; i < journal.cursor; ++i)
        history.past.push_back({states[i], journal.words[i]});
    history.now = states[journal.cursor];
    for (std::size_t i = journal.words.size(); i > journal.cursor; --i)
        history.future.push_back({states[i], journal.words[i - 1]});
    return history;
}

} // namespace

// ---- reading ------------------------------------------------------------------------------------

void JobStore::close() {
    ++opening_;
    job_.clear();
    highest_ = turn_ = 0;
    bases_.clear();
    states_.clear();
    waiting_.clear();
    aside_.clear();
    cursor_ = in_flight_ = 0;
    is_dirty_ = is_sending_ = false;
    snapshot_of_.reset();
    snapshot_.reset();
    flushed(false);
}

void JobStore::begin(const std::string& job) {
    close();
    job_ = job;
    if (writer_.empty())
        writer_ = ports_.own_word();
}

void JobStore::open(const std::string& job, std::function<void(Opened)> answer) {
    begin(job);
    ports_.load_all(
        archive::journal_prefix(job),
        [this, mine = opening_, answer = std::move(answer)](const platform::LoadedAll& all) {
            if (mine == opening_)
                loaded(all, answer);
        });
}

void JobStore::loaded(const platform::LoadedAll& all, const std::function<void(Opened)>& answer) {
    Opened opened;
    opened.result = all.result;
    opened.detail = all.detail;
    if (all.result != StoreResult::done || all.kept.empty())
        return answer(std::move(opened));
    std::vector<archive::StoredBytes> stored;
    for (const platform::Kept& kept : all.kept)
        stored.push_back({kept.key, kept.bytes});
    auto read = archive::read_journal(job_, stored);
    if (!read) {
        opened.is_whole = false;
        opened.trouble = read.refusal();
        close(); // its records have keys that nobody writes again
        return answer(std::move(opened));
    }
    archive::ReadJournal journal = std::move(read).value();
    opened.is_whole = journal.is_whole;
    opened.trouble = journal.trouble;
    if (journal.is_whole) {
        highest_ = archive::highest_number(job_, stored);
        take_over(journal, stored);
        for (archive::Branch& branch : journal.branches)
            opened.branches.push_back(
                {std::move(branch.moment.job), std::move(branch.moment.shop)});
    } else {
        close();
    }
    opened.history = history_of(journal);
    answer(std::move(opened));
}

/// What cannot be read goes aside, and what was written beside becomes a job of its own: the next
/// edit takes both away from here.
void JobStore::take_over(const archive::ReadJournal& journal,
                         const std::vector<archive::StoredBytes>& stored) {
    turn_ = journal.turn;
    bases_ = journal.bases;
    states_.assign(1, journal.start);
    states_.insert(states_.end(), journal.names.begin(), journal.names.end());
    cursor_ = journal.cursor;
    std::vector<std::string> aside = journal.unread;
    for (const archive::Branch& branch : journal.branches)
        aside.insert(aside.end(), branch.keys.begin(), branch.keys.end());
    for (const archive::StoredBytes& one : stored)
        if (std::find(aside.begin(), aside.end(), one.key) != aside.end())
            put_aside(one.key, one.bytes);
}

void JobStore::put_aside(const std::string& key, const std::string& bytes) {
    aside_.push_back({"aside/" + writer_ + "/" + key, bytes, false});
    aside_.push_back({key, std::nullopt, false});
}

// ---- writing ------------------------------------------------------------------------------------

RecordName JobStore::next_name() { return {++highest_, writer_}; }

std::string JobStore::key(RecordKind kind, const RecordName& name) const {
    return archive::record_key(job_, kind, name);
}

void JobStore::add(std::string key, std::string bytes) {
    waiting_.push_back({std::move(key), std::move(bytes), true});
}

void JobStore::remove(std::string key) {
    waiting_.push_back({std::move(key), std::nullopt, false});
}

void JobStore::begin_with(const edit::Document& first) {
    const RecordName base = next_name();
    bases_.assign(1, {base, base});
    states_.assign(1, base);
    cursor_ = 0;
    add(key(RecordKind::base, base),
        archive::write_record(base, std::nullopt, archive::write_file(first.job, *first.shop)));
}

void JobStore::add_step(const edit::Session::Step& before, const edit::Document& after) {
    const RecordName name = next_name();
    add(key(RecordKind::step, name),
        archive::write_record(
            name,
            states_.back(),
            archive::write_step(moment(*before.document), moment(after), before.words)));
    states_.push_back(name);
}

/// A new edit takes the place of what was undone, and of snapshots of it.
void JobStore::forget_redo() {
    for (std::size_t i = cursor_ + 1; i < states_.size(); ++i) {
        remove(key(RecordKind::step, states_[i]));
        for (const archive::Snapshot& base : bases_)
            if (base.state == states_[i])
                remove(key(RecordKind::base, base.record));
        std::erase_if(bases_, [&](const auto& base) { return base.state == states_[i]; });
    }
    states_.resize(cursor_ + 1);
}

void JobStore::edited(const edit::Session& session) {
    TREADLE_EXPECT(!session.past().empty());
    if (job_.empty())
        return; // a page that may only look
    waiting_.insert(waiting_.end(), aside_.begin(), aside_.end());
    aside_.clear();
    const edit::Session::Step& before = session.past().back();
    if (bases_.empty())
        begin_with(*before.document);
    forget_redo();
    add_step(before, session.document());
    ++cursor_;
    is_dirty_ = true;
    forget_old(session);
    want_snapshot(session);
    send();
}

void JobStore::moved(int by, const edit::Session& session) {
    if (job_.empty() || bases_.empty())
        return; // nothing is stored, so there was no step
    cursor_ = by < 0 ? cursor_ - 1 : cursor_ + 1;
    TREADLE_EXPECT(cursor_ < states_.size());
    is_dirty_ = true;
    want_snapshot(session);
    send();
}

void JobStore::adopt(const std::string& job, const edit::Session& session) {
    begin(job);
    const auto& past = session.past();
    const auto& future = session.future();
    begin_with(past.empty() ? session.document() : *past.front().document);
    for (std::size_t i = 0; i < past.size(); ++i)
        add_step(past[i], i + 1 < past.size() ? *past[i + 1].document : session.document());
    cursor_ = past.size();
    // What undo took back, nearest last: each leads on from the one before.
    edit::Session::Step now{std::make_shared<const edit::Document>(session.document()), ""};
    for (std::size_t i = future.size(); i-- > 0;) {
        now.words = future[i].words;
        add_step(now, *future[i].document);
        now.document = future[i].document;
    }
    is_dirty_ = true;
    want_snapshot(session);
    send();
}

void JobStore::send() {
    if (is_sending_ || (waiting_.empty() && !is_dirty_))
        return;
    if (job_.empty())
        return;
    std::vector<platform::StoreChange> changes = waiting_;
    in_flight_ = changes.size();
    is_sending_ = true;
    sent_head_ = archive::write_head({bases_.front().record, states_.back(), states_[cursor_]});
    changes.push_back({archive::head_key(job_, turn_ + 1), sent_head_, true});
    const long long old = turn_ + 1 - k_heads;
    if (old > 0)
        changes.push_back({archive::head_key(job_, old), std::nullopt, false});
    if (card)
        changes.push_back({archive::card_key(job_), card(), false});
    is_dirty_ = false;
    ports_.store_all(changes, [this, mine = opening_](const platform::StoreOutcome& outcome) {
        if (mine == opening_)
            sent(outcome);
    });
}

void JobStore::sent(const platform::StoreOutcome& outcome) {
    if (outcome.result == StoreResult::done)
        return confirmed();
    if (outcome.result == StoreResult::taken)
        return check_turn();
    // All of it waits for the next edit, which tries again.
    is_sending_ = false;
    is_dirty_ = true;
    in_flight_ = 0;
    if (when_stored)
        when_stored(outcome);
    flushed(false);
}

/// A transaction that was made once more with a new handle finds its own turn taken.
void JobStore::check_turn() {
    ports_.load(archive::head_key(job_, turn_ + 1),
                [this, mine = opening_](const platform::LoadedBytes& there) {
                    if (mine != opening_)
                        return;
                    if (there.result == StoreResult::done && there.bytes == sent_head_)
                        return confirmed();
                    is_sending_ = false;
                    in_flight_ = 0;
                    if (when_overtaken)
                        when_overtaken();
                });
}

void JobStore::confirmed() {
    is_sending_ = false;
    ++turn_;
    waiting_.erase(waiting_.begin(), waiting_.begin() + static_cast<std::ptrdiff_t>(in_flight_));
    in_flight_ = 0;
    if (!waiting_.empty() || is_dirty_)
        return send();
    if (when_stored)
        when_stored({StoreResult::done, ""});
    flushed(true);
    if (snapshot_of_ && !snapshot_)
        ports_.call_in(0, [this, mine = opening_] {
            if (mine == opening_)
                write_snapshot();
        });
}

void JobStore::flushed(bool stored) {
    for (const auto& done : std::exchange(flushes_, {}))
        done(stored);
}

void JobStore::flush(std::function<void(bool stored)> done) {
    if (job_.empty() || (!is_sending_ && waiting_.empty() && !is_dirty_))
        return done(true);
    flushes_.push_back(std::move(done));
    send();
}

std::vector<platform::StoreChange> JobStore::whole_job(const std::string& job,
                                                       const std::string& writer,
                                                       const edit::Document& document,
                                                       const archive::JobCard& card) {
    const RecordName name{1, writer};
    return {{archive::record_key(job, RecordKind::base, name),
             archive::write_record(
                 name, std::nullopt, archive::write_file(document.job, *document.shop)),
             true},
            {archive::head_key(job, 1), archive::write_head({name, name, name}), true},
            {archive::card_key(job), archive::write_card(card), false}};
}

// ---- snapshots ----------------------------------------------------------------------------------

/// Where the last base is many steps back, or alone.
void JobStore::want_snapshot(const edit::Session& session) {
    if (snapshot_of_ || snapshot_)
        return;
    const auto last = std::find(states_.begin(), states_.end(), bases_.back().state);
    const auto place = static_cast<std::size_t>(last - states_.begin());
    const bool is_far = cursor_ >= place + k_steps_to_snapshot;
    if (!is_far && bases_.size() > 1)
        return;
    snapshot_of_ = std::make_shared<const edit::Document>(session.document());
    snapshot_state_ = states_[cursor_];
}

void JobStore::write_snapshot() {
    if (!snapshot_of_ || snapshot_)
        return;
    const RecordName name = next_name();
    snapshot_ = NewBase{
        {name, snapshot_state_},
        archive::write_record(
            name, snapshot_state_, archive::write_file(snapshot_of_->job, *snapshot_of_->shop))};
    snapshot_of_.reset();
    ports_.store_all({{key(RecordKind::base, name), snapshot_->bytes, true}},
                     [this, mine = opening_](const platform::StoreOutcome& outcome) {
                         if (mine != opening_)
                             return;
                         if (outcome.result != StoreResult::done)
                             return snapshot_.reset(); // a later edit tries again
                         ports_.load(key(RecordKind::base, snapshot_->at.record),
                                     [this, mine](const platform::LoadedBytes& back) {
                                         if (mine == opening_)
                                             check_snapshot(back);
                                     });
                     });
}

void JobStore::check_snapshot(const platform::LoadedBytes& back) {
    const NewBase made = std::move(*snapshot_);
    snapshot_.reset();
    const auto state = std::find(states_.begin(), states_.end(), made.at.state);
    const bool is_good = back.result == StoreResult::done && back.bytes == made.bytes;
    if (is_good && state != states_.end())
        bases_.push_back(made.at);
    else
        remove(key(RecordKind::base, made.at.record)); // goes with the next edit
}

/// The oldest base and what follows it up to the next, as long as undo begins at or after a base
/// and has one more before it.
void JobStore::forget_old(const edit::Session& session) {
    const std::size_t reach = session.past().size();
    while (bases_.size() >= 3) {
        const auto place = [&](const archive::Snapshot& base) {
            return static_cast<std::size_t>(std::find(states_.begin(), states_.end(), base.state) -
                                            states_.begin());
        };
        const std::size_t next = place(bases_[2]);
        if (cursor_ < reach || next > cursor_ - reach)
            return;
        const std::size_t gone = place(bases_[1]);
        remove(key(RecordKind::base, bases_.front().record));
        for (std::size_t i = 1; i <= gone; ++i)
            remove(key(RecordKind::step, states_[i]));
        states_.erase(states_.begin(), states_.begin() + static_cast<std::ptrdiff_t>(gone));
        cursor_ -= gone;
        bases_.erase(bases_.begin());
    }
}

} // namespace treadle::web
