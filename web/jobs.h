// The jobs kept on this device: which of them is open, who writes it, what lies in the trash, and
// the states kept to go back to. The open one is stored by job_store.h; this class decides where.

#pragma once

#include "archive/archive.h"
#include "archive/job_card.h"
#include "edit/session.h"

#include "platform/ports.h"
#include "ui/views/jobs_board.h"

#include <functional>
#include <map>
#include <memory>
#include <optional>
#include <string>
#include <vector>

#include "job_store.h"

namespace treadle::web {

class Jobs {
public:
    explicit Jobs(platform::Ports& ports);

    /// The session as it is now; never empty once started.
    std::function<const edit::Session&()> session;
    /// Another history is to be shown. `words` tell why, or are empty.
    std::function<void(edit::Session::History)> show;
    std::function<void(std::string title, std::string text)> say;
    std::function<void(const platform::StoreOutcome&)> when_stored;
    /// The board is another one.
    std::function<void()> when_changed;
    /// An earlier state takes the place of the present one, as an edit.
    std::function<void(edit::Document)> go_back;
    /// The job is renamed, as an edit.
    std::function<void(const std::string& name)> rename;

    /// Reads what is kept and shows the job that was open. Answers once.
    void start(std::function<void()> ready);

    /// Not while the job is read: what is shown meanwhile is older, or another one.
    [[nodiscard]] bool may_edit() const {
        return board_.ownership != views::Ownership::reader && !is_reading_;
    }
    [[nodiscard]] const std::string& id() const { return id_; }
    [[nodiscard]] const views::JobsBoard& board() const { return board_; }
    views::JobsBoard& board() { return board_; }

    void edited();
    void moved(int by);
    void flush(std::function<void(bool stored)> done) { store_.flush(std::move(done)); }

    /// Before another one is shown: what waits is stored first.
    void leave(std::function<void()> then) {
        store_.flush([then = std::move(then)](bool) { then(); });
    }
    /// What `show` has just shown is nobody's job yet; its first edit makes one of it.
    void be_guest();
    /// What `show` has just shown is a job of its own, kept from now on.
    void be_new();
    void open(const std::string& id);
    void edit_here();
    /// Kept beside the others, not opened.
    void add(const edit::Document& document, bool in_trash, std::function<void(bool)> answer);
    void duplicate(const std::string& id);
    void throw_away(const std::string& id);
    void take_back(const std::string& id);
    void remove(const std::string& id);
    /// A file of the open job was saved.
    void copied();

    void keep_point(const std::string& why, bool is_pinned);
    void open_point(const std::string& key);
    void remove_point(const std::string& key);
    void read_points();
    /// Where things are kept, asked anew.
    void read_standing();
    /// Every kept job, one after the other; those that cannot be read are left out and counted.
    void read_all(std::function<void(std::vector<edit::Document>, int unread)> answer);

private:
    void choose();
    void tell_ready();
    void bring_back();
    void opened(const std::string& id, JobStore::Opened what);
    void recover(const std::string& id, JobStore::Opened what);
    void show_old(const platform::LoadedBytes& old);
    void keep_branches(std::vector<edit::Document> branches, const std::string& name);
    void hold(bool insist);
    void held(platform::Claim how);
    void reload();
    void stored(const platform::StoreOutcome& outcome);
    void fork(const std::string& title, const std::string& text, const char* suffix);
    void use(const std::string& id);
    void hear(const std::string& words);
    void read_cards(std::function<void()> answer);
    void find_without_card(const std::vector<std::string>& keys);
    void count_day(const platform::LoadedBytes& days);
    void empty_old_trash();
    void put_card(const std::string& id);
    [[nodiscard]] archive::JobCard card_of_session() const;
    [[nodiscard]] std::string new_id();
    [[nodiscard]] std::string when() const;
    void make_rows();
    void make_strip();
    void read_next(std::shared_ptr<std::vector<std::string>> ids,
                   std::shared_ptr<std::vector<edit::Document>> done,
                   int unread,
                   std::function<void(std::vector<edit::Document>, int)> answer);

    platform::Ports& ports_;
    JobStore store_;
    std::string id_; ///< empty: a guest
    std::map<std::string, archive::JobCard> cards_;
    std::vector<std::string> without_card_;
    archive::SeenDays days_;
    std::map<std::string, archive::Point> points_; ///< of the open job, by key
    platform::StoreStanding standing_;
    std::function<void()> ready_;
    std::string last_open_;
    int made_ids_ = 0;
    bool is_held_ = false; ///< this page has the open job
    bool is_reading_ = false;
    bool is_reloading_ = false; ///< when news come
    bool wants_protection_ = true;
    platform::StoreResult trouble_ = platform::StoreResult::done; ///< of the last storing
    views::JobsBoard board_;
};

} // namespace treadle::web
