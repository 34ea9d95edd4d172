#include "job_store.h"

#include "archive/archive.h"

#include <algorithm>
#include <utility>

namespace treadle::web {

namespace {

using archive::RecordKind;
using archive::RecordName;
using platform::StoreResult;

constexpr const char* k_job = "main";    ///< the one job of this page
constexpr const char* k_old_key = "job"; ///< where pages without history had the whole job

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

void JobStore::open(std::function<void(Opened)> answer) {
    writer_ = ports_.own_word();
    ports_.load_all(archive::journal_prefix(k_job),
                    [this, answer = std::move(answer)](const platform::LoadedAll& all) {
                        loaded(all, answer);
                    });
}

void JobStore::loaded(const platform::LoadedAll& all, const std::function<void(Opened)>& answer) {
    Opened opened;
    if (all.result != StoreResult::done) {
        opened.has_store = false;
        opened.detail = all.detail;
        return answer(std::move(opened));
    }
    if (all.kept.empty())
        return load_old(answer);
    std::vector<archive::StoredBytes> stored;
    std::string head;
    for (const platform::Kept& kept : all.kept) {
        stored.push_back({kept.key, kept.bytes});
        if (kept.key == archive::head_key(k_job))
            head = kept.bytes;
    }
    highest_ = archive::highest_number(k_job, stored);
    auto journal = archive::read_journal(k_job, stored);
    if (!journal) {
        // Its records have keys that nobody writes again; only the head would be replaced.
        opened.trouble = journal.refusal();
        keep_aside(head, 1);
        return answer(std::move(opened));
    }
    opened.trouble = journal->trouble;
    if (opened.trouble)
        keep_aside(head, 1);
    take_over(*journal);
    archive::ReadJournal read = std::move(journal).value();
    opened.history = history_of(read);
    answer(std::move(opened));
}

void JobStore::take_over(const archive::ReadJournal& journal) {
    base_ = journal.base;
    states_.assign(1, journal.start);
    states_.insert(states_.end(), journal.names.begin(), journal.names.end());
    cursor_ = journal.cursor;
}

void JobStore::load_old(const std::function<void(Opened)>& answer) {
    ports_.load(k_old_key, [this, answer](const platform::LoadedBytes& old) {
        Opened opened;
        opened.has_store = old.result == StoreResult::done || old.result == StoreResult::not_found;
        opened.detail = old.detail;
        if (old.result == StoreResult::done) {
            opened.is_old = true;
            auto file = archive::read_file(old.bytes);
            if (file) {
                opened.history.emplace();
                opened.history->now =
                    shared({std::move(file->job),
                            std::make_shared<const equipment::Shop>(std::move(file->shop))});
            } else {
                opened.trouble = file.refusal();
                keep_aside(old.bytes, 1);
            }
        }
        answer(std::move(opened));
    });
}

void JobStore::keep_aside(const std::string& bytes, int number) {
    constexpr int k_most = 100;
    if (bytes.empty())
        return;
    may_store_ = false;
    const std::string key = "unreadable-" + std::to_string(number);
    ports_.load(key, [this, bytes, key, number](const platform::LoadedBytes& there) {
        const auto allow = [this] {
            may_store_ = true;
            send();
        };
        if (there.result == StoreResult::done && there.bytes != bytes && number < k_most)
            return keep_aside(bytes, number + 1);
        if (there.result == StoreResult::done && there.bytes == bytes)
            return allow();
        if (there.result != StoreResult::not_found)
            return; // nothing is stored over it as long as it is not safe elsewhere
        ports_.store(key, bytes, [allow](const platform::StoreOutcome& outcome) {
            if (outcome.result == StoreResult::done)
                allow();
        });
    });
}

// ---- writing ------------------------------------------------------------------------------------

RecordName JobStore::next_name() { return {++highest_, writer_}; }

std::string JobStore::key(RecordKind kind, const RecordName& name) const {
    return archive::record_key(k_job, kind, name);
}

void JobStore::change(std::string key, std::optional<std::string> bytes) {
    waiting_.push_back({std::move(key), std::move(bytes)});
}

void JobStore::change_head() {
    change(archive::head_key(k_job),
           archive::write_head({*base_, states_.back(), states_[cursor_]}));
}

void JobStore::edited(const edit::Session& session) {
    TREADLE_EXPECT(!session.past().empty());
    const edit::Session::Step& before = session.past().back();
    if (!base_) {
        base_ = next_name();
        states_.assign(1, *base_);
        cursor_ = 0;
        const edit::Document& first = *before.document;
        change(key(RecordKind::base, *base_),
               archive::write_record(
                   *base_, std::nullopt, archive::write_file(first.job, *first.shop)));
    }
    for (std::size_t i = cursor_ + 1; i < states_.size(); ++i)
        change(key(RecordKind::step, states_[i]), std::nullopt);
    states_.resize(cursor_ + 1);
    const RecordName name = next_name();
    const std::string step =
        archive::write_step(moment(*before.document), moment(session.document()), before.words);
    change(key(RecordKind::step, name), archive::write_record(name, states_[cursor_], step));
    states_.push_back(name);
    ++cursor_;
    change_head();
    begin_fold(session);
    send();
}

void JobStore::moved(int by) {
    if (!base_)
        return; // nothing is stored, so there was no step
    cursor_ = by < 0 ? cursor_ - 1 : cursor_ + 1;
    TREADLE_EXPECT(cursor_ < states_.size());
    change_head();
    send();
}

void JobStore::send() {
    if (in_flight_ > 0 || waiting_.empty())
        return;
    if (!may_store_) {
        if (when_stored)
            when_stored("What could not be read is not safe yet.");
        return;
    }
    in_flight_ = waiting_.size();
    ports_.store_all(waiting_, [this](const platform::StoreOutcome& outcome) { sent(outcome); });
}

void JobStore::sent(const platform::StoreOutcome& outcome) {
    const auto count = static_cast<std::ptrdiff_t>(in_flight_);
    in_flight_ = 0;
    if (outcome.result != StoreResult::done) {
        // All of it waits for the next edit, which tries again.
        if (when_stored)
            when_stored(outcome.detail);
        return;
    }
    waiting_.erase(waiting_.begin(), waiting_.begin() + count);
    if (!waiting_.empty())
        return send();
    if (when_stored)
        when_stored(std::nullopt);
    if (fold_ && fold_->bytes.empty())
        ports_.call_in(0, [this] { write_fold(); });
}

// ---- a later base -------------------------------------------------------------------------------

void JobStore::begin_fold(const edit::Session& session) {
    const std::size_t window = session.past().size();
    if (fold_ || cursor_ - window < k_steps_to_fold)
        return;
    fold_ = Fold{session.past().front().document, states_[cursor_ - window], next_name(), ""};
}

void JobStore::write_fold() {
    if (!fold_ || !fold_->bytes.empty())
        return;
    fold_->bytes =
        archive::write_record(fold_->base,
                              fold_->state,
                              archive::write_file(fold_->document->job, *fold_->document->shop));
    ports_.store(key(RecordKind::base, fold_->base),
                 fold_->bytes,
                 [this](const platform::StoreOutcome& outcome) {
                     if (outcome.result == StoreResult::done)
                         check_fold();
                     else
                         fold_.reset(); // the old base is good; a later edit tries again
                 });
}

void JobStore::check_fold() {
    ports_.load(key(RecordKind::base, fold_->base),
                [this](const platform::LoadedBytes& back) { end_fold(back); });
}

void JobStore::end_fold(const platform::LoadedBytes& back) {
    const Fold fold = std::move(*fold_);
    fold_.reset();
    const auto state = std::find(states_.begin(), states_.end(), fold.state);
    const bool is_good = back.result == StoreResult::done && back.bytes == fold.bytes;
    if (!is_good || state == states_.end())
        return; // the old base is good; a later edit tries again
    change(key(RecordKind::base, *base_), std::nullopt);
    const auto folded = static_cast<std::size_t>(state - states_.begin());
    for (std::size_t i = 1; i <= folded; ++i)
        change(key(RecordKind::step, states_[i]), std::nullopt);
    states_.erase(states_.begin(), state);
    cursor_ -= folded;
    base_ = fold.base;
    change_head();
    send();
}

} // namespace treadle::web
