// A job and its history on this device: each edit is one transaction that costs what the edit is
// worth. The layout is archive/journal.h's.
//
// A snapshot is a whole job, written now and then so that no single record holds a job alone. Older
// ones and the steps before them go only when undo does not reach there any more and two later ones
// have been read back. What cannot be read is never written over: where the present is whole it is
// put aside, where it is not the job is left alone for good.

#pragma once

#include "archive/job_card.h"
#include "archive/journal.h"
#include "edit/session.h"

#include "platform/ports.h"

#include <functional>
#include <memory>
#include <optional>
#include <string>
#include <vector>

namespace treadle::web {

class JobStore {
public:
    static constexpr std::size_t k_steps_to_snapshot = 50;
    /// Heads that stay, so that a page which slept through so many edits still finds its turn
    /// taken.
    static constexpr long long k_heads = 64;

    explicit JobStore(platform::Ports& ports) : ports_(ports) {}

    struct Opened {
        std::optional<edit::Session::History>
            history;                          ///< none: there is no such job, or none reads
        bool is_whole = true;                 ///< the last state is there
        std::optional<base::Refusal> trouble; ///< all or some could not be read
        std::vector<edit::Document> branches; ///< what other pages wrote beside
        platform::StoreResult result = platform::StoreResult::done;
        std::string detail;
    };
    /// Reads a job and goes on storing it; one that is not whole is closed again. Answers once.
    void open(const std::string& job, std::function<void(Opened)> answer);
    /// A job of its own from here on. Nothing is stored before its first edit.
    void begin(const std::string& job);
    /// The same, and stores what the session holds, with its whole history.
    void adopt(const std::string& job, const edit::Session& session);
    /// Stores nothing any more; what waits is forgotten.
    void close();

    /// Beside each transaction: the job's card.
    std::function<std::string()> card;
    /// Called after each transaction.
    std::function<void(const platform::StoreOutcome&)> when_stored;
    /// Another page wrote this job meanwhile; nothing of what waits was stored.
    std::function<void()> when_overtaken;

    /// Stores the step that the session has just taken.
    void edited(const edit::Session& session);
    /// Stores where undo stands now: one step back (-1) or forward (1).
    void moved(int by, const edit::Session& session);
    /// Tries again what could not be stored.
    void again() { send(); }
    /// Called when nothing waits any more, at once or after the next transaction: whether all of it
    /// is stored.
    void flush(std::function<void(bool stored)> done);

    /// A job that is not opened, as one transaction.
    [[nodiscard]] static std::vector<platform::StoreChange>
    whole_job(const std::string& job,
              const std::string& writer,
              const edit::Document& document,
              const archive::JobCard& card);

    [[nodiscard]] const std::string& job() const { return job_; }
    [[nodiscard]] bool is_stored() const { return !bases_.empty(); }

private:
    struct NewBase {
        archive::Snapshot at;
        std::string bytes;
    };

    void loaded(const platform::LoadedAll& all, const std::function<void(Opened)>& answer);
    void take_over(const archive::ReadJournal& journal,
                   const std::vector<archive::StoredBytes>& stored);
    void put_aside(const std::string& key, const std::string& bytes);

    [[nodiscard]] archive::RecordName next_name();
    [[nodiscard]] std::string key(archive::RecordKind kind, const archive::RecordName& name) const;
    void add(std::string key, std::string bytes);
    void remove(std::string key);
    void begin_with(const edit::Document& first);
    void add_step(const edit::Session::Step& before, const edit::Document& after);
    void forget_redo();
    void forget_old(const edit::Session& session);
    void send();
    void sent(const platform::StoreOutcome& outcome);
    void flushed(bool stored);
    void check_turn();
    void confirmed();
    void want_snapshot(const edit::Session& session);
    void write_snapshot();
    void check_snapshot(const platform::LoadedBytes& back);

    platform::Ports& ports_;
    std::string job_; ///< empty: closed
    std::string writer_;
    int opening_ = 0; ///< rises with each job, so that an answer for another one is known
    long long highest_ = 0;
    long long turn_ = 0;
    std::vector<archive::Snapshot> bases_;       ///< oldest first; empty: nothing is stored yet
    std::vector<archive::RecordName> states_;    ///< the oldest base's, and one after each step
    std::size_t cursor_ = 0;                     ///< of states_
    std::vector<platform::StoreChange> aside_;   ///< that goes with the next edit, by who may edit
    std::vector<platform::StoreChange> waiting_; ///< not confirmed; the first in_flight_ are sent
    bool is_dirty_ = false;                      ///< the head is to be written with them
    std::size_t in_flight_ = 0;
    bool is_sending_ = false;
    std::string sent_head_;
    std::shared_ptr<const edit::Document> snapshot_of_; ///< to be written when all is stored
    archive::RecordName snapshot_state_;
    std::optional<NewBase> snapshot_; ///< written, not read back yet
    std::vector<std::function<void(bool stored)>> flushes_;
};

} // namespace treadle::web
