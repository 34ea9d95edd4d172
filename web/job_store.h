// The job and its history on this device: each edit is one transaction that costs what the edit is
// worth. The layout is archive/journal.h's.
//
// A base is a whole job and is written when there is none, and every k_steps_to_fold edits later
// on. The old one and its steps go only after the new one has been read back. What cannot be read
// is never written over: it stays under its keys, or a copy is put aside first.

#pragma once

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
    static constexpr std::size_t k_steps_to_fold = 50;

    explicit JobStore(platform::Ports& ports) : ports_(ports) {}

    struct Opened {
        std::optional<edit::Session::History> history; ///< none: there is no job yet, or none reads
        std::optional<base::Refusal> trouble;          ///< all or some could not be read
        bool is_old = false;                           ///< from the one key of earlier pages
        bool has_store = true; ///< false: nothing can be kept; `detail` says why
        std::string detail;
    };
    /// Reads what is kept; answers once.
    void open(std::function<void(Opened)> answer);

    /// Called after each transaction: nothing when all is stored, else why not.
    std::function<void(const std::optional<std::string>& trouble)> when_stored;

    /// Stores the step that the session has just taken.
    void edited(const edit::Session& session);
    /// Stores where undo stands now: one step back (-1) or forward (1).
    void moved(int by);
    /// True while a change waits to be stored, whether or not it can be.
    [[nodiscard]] bool is_waiting() const { return !waiting_.empty() || in_flight_ > 0; }

private:
    struct Fold {
        std::shared_ptr<const edit::Document> document;
        archive::RecordName state; ///< that the new base is a copy of
        archive::RecordName base;
        std::string bytes;
    };

    void loaded(const platform::LoadedAll& all, const std::function<void(Opened)>& answer);
    void load_old(const std::function<void(Opened)>& answer);
    void take_over(const archive::ReadJournal& journal);
    /// Puts what could not be read where nothing overwrites it, then allows storing.
    void keep_aside(const std::string& bytes, int number);

    [[nodiscard]] archive::RecordName next_name();
    [[nodiscard]] std::string key(archive::RecordKind kind, const archive::RecordName& name) const;
    void change(std::string key, std::optional<std::string> bytes);
    void change_head();
    void send();
    void sent(const platform::StoreOutcome& outcome);
    void begin_fold(const edit::Session& session);
    void write_fold();
    void check_fold();
    void end_fold(const platform::LoadedBytes& back);

    platform::Ports& ports_;
    std::string writer_;
    long long highest_ = 0;
    std::optional<archive::RecordName> base_;    ///< none: nothing is stored yet
    std::vector<archive::RecordName> states_;    ///< the base's, and one after each step
    std::size_t cursor_ = 0;                     ///< of states_
    std::vector<platform::StoreChange> waiting_; ///< not confirmed; the first in_flight_ are sent
    std::size_t in_flight_ = 0;
    std::optional<Fold> fold_;
    bool may_store_ = true; ///< not while something unreadable waits to be kept
};

} // namespace treadle::web
