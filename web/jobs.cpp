#include "jobs.h"

#include <algorithm>
#include <memory>
#include <utility>

namespace treadle::web {

namespace {

using platform::Claim;
using platform::StoreResult;
using views::Ownership;

constexpr const char* k_open_key = "open";
constexpr const char* k_days_key = "days";
constexpr const char* k_old_key = "job";  ///< where the first pages had the whole job
constexpr const char* k_old_job = "main"; ///< the one job of pages without a list
constexpr std::string_view k_stored_word = "stored ";
constexpr std::string_view k_list_word = "list";
constexpr double k_reload_seconds = 0.4;

/// Calls `done` when it was called so often itself.
std::function<void()> answered_all(int count, std::function<void()> done) {
    return [left = std::make_shared<int>(count), done = std::move(done)] {
        if (--*left == 0)
            done();
    };
}

edit::Session::History history_of(archive::File file) {
    edit::Session::History history;
    history.now = std::make_shared<const edit::Document>(edit::Document{
        std::move(file.job), std::make_shared<const equipment::Shop>(std::move(file.shop))});
    return history;
}

} // namespace

Jobs::Jobs(platform::Ports& ports) : ports_(ports), store_(ports) {
    store_.card = [this] {
        cards_[id_] = card_of_session();
        return archive::write_card(cards_[id_]);
    };
    store_.when_stored = [this](const platform::StoreOutcome& outcome) { stored(outcome); };
    store_.when_overtaken = [this] {
        fork("This job was changed in another tab at the same time.",
             "Both are kept: the other tab's as it was, and yours under a name of its own.",
             " (other tab)");
    };
}

// ---- starting -----------------------------------------------------------------------------------

void Jobs::start(std::function<void()> ready) {
    ready_ = std::move(ready);
    ports_.when_told([this](const std::string& words) { hear(words); });
    const auto one = answered_all(3, [this] {
        empty_old_trash();
        choose();
    });
    ports_.load(k_days_key, [this, one](const platform::LoadedBytes& days) {
        if (days.result == StoreResult::newer)
            trouble_ = StoreResult::newer;
        count_day(days);
        one();
    });
    ports_.load(k_open_key, [this, one](const platform::LoadedBytes& open) {
        last_open_ = open.bytes;
        one();
    });
    read_cards(one);
}

void Jobs::count_day(const platform::LoadedBytes& days) {
    if (days.result != StoreResult::done && days.result != StoreResult::not_found)
        return;
    days_ = archive::read_days(days.bytes);
    if (days_.last == ports_.day_text())
        return;
    days_ = {days_.count + 1, ports_.day_text()};
    // The first write of a visit: where it fails, nothing will be kept.
    ports_.store(k_days_key, archive::write_days(days_), [this](const platform::StoreOutcome& out) {
        if (out.result != StoreResult::done)
            stored(out);
    });
}

void Jobs::read_cards(std::function<void()> answer) {
    auto keys_of_journals = std::make_shared<std::vector<std::string>>();
    const auto one = answered_all(3, [this, keys_of_journals, answer = std::move(answer)] {
        find_without_card(*keys_of_journals);
        make_rows();
        answer();
    });
    ports_.load_all(std::string(archive::k_card_prefix),
                    [this, one](const platform::LoadedAll& all) {
                        cards_.clear();
                        for (const platform::Kept& kept : all.kept) {
                            auto card = archive::read_card(kept.bytes);
                            cards_[kept.key.substr(archive::k_card_prefix.size())] =
                                card ? std::move(card).value() : archive::JobCard{};
                        }
                        one();
                    });
    ports_.load_keys("aside/", [this, one](const platform::LoadedKeys& keys) {
        board_.aside = keys.keys.size();
        one();
    });
    ports_.load_keys("journal/", [keys_of_journals, one](const platform::LoadedKeys& keys) {
        *keys_of_journals = keys.keys;
        one();
    });
}

void Jobs::find_without_card(const std::vector<std::string>& keys) {
    without_card_.clear();
    for (const std::string& key : keys) {
        const std::string job(archive::job_of_key(key));
        if (!job.empty() && cards_.count(job) == 0 &&
            (without_card_.empty() || without_card_.back() != job))
            without_card_.push_back(job);
    }
}

void Jobs::empty_old_trash() {
    std::vector<std::string> old;
    for (const auto& [id, card] : cards_)
        if (card.trash && days_.count - *card.trash >= archive::k_trash_days)
            old.push_back(id);
    for (const std::string& id : old)
        remove(id);
}

/// This page's own job, the one that was open last, any other, the oldest pages' job, none.
void Jobs::choose() {
    const auto is_there = [this](const std::string& id) {
        const auto card = cards_.find(id);
        return card != cards_.end() ? !card->second.trash && !card->second.is_damaged
                                    : std::find(without_card_.begin(), without_card_.end(), id) !=
                                          without_card_.end();
    };
    std::vector<std::string> ids;
    for (const std::string& id : {ports_.page_text(), last_open_, std::string(k_old_job)})
        if (is_there(id) && std::find(ids.begin(), ids.end(), id) == ids.end())
            ids.push_back(id);
    if (ids.empty())
        for (const views::JobRow& row : board_.jobs)
            if (is_there(row.id))
                ids.push_back(row.id);
    if (ids.empty())
        return ports_.load(k_old_key, [this](const platform::LoadedBytes& old) { show_old(old); });
    use(ids.front());
}

void Jobs::show_old(const platform::LoadedBytes& old) {
    if (old.result == StoreResult::done) {
        auto file = archive::read_file(old.bytes);
        if (file)
            show(history_of(std::move(file).value()));
        else
            say("The job stored on this device could not be read and is kept as it is.",
                file.refusal().field + ": " + file.refusal().reason);
    } else if (old.result != StoreResult::not_found) {
        stored({old.result, old.detail});
    }
    be_guest();
    tell_ready();
}

void Jobs::use(const std::string& id) {
    id_ = id;
    is_held_ = false;
    board_.ownership = Ownership::own;
    ports_.keep_page_text(id);
    if (last_open_ != id) {
        last_open_ = id;
        ports_.store(k_open_key, id, [](const platform::StoreOutcome&) {});
    }
    is_reading_ = true;
    store_.open(id, [this, id](JobStore::Opened what) {
        is_reading_ = false;
        opened(id, std::move(what));
    });
    hold(false);
}

void Jobs::opened(const std::string& id, JobStore::Opened what) {
    const std::string name = what.history ? what.history->now->job.name : std::string();
    if (what.is_whole && what.history) {
        show(std::move(*what.history));
        if (what.trouble)
            say("A stored record was damaged; the job itself is whole.",
                "What cannot be read is put aside with your next edit. " + what.trouble->reason);
        keep_branches(std::move(what.branches), name);
        if (cards_.count(id) == 0)
            cards_[id] = card_of_session();
        read_points();
    } else {
        recover(id, std::move(what));
    }
    make_rows();
    make_strip();
    tell_ready();
}

/// The damaged job stays as it is, for ever; what could be read of it becomes a job of its own.
void Jobs::recover(const std::string& id, JobStore::Opened what) {
    const bool is_newer = what.trouble && what.trouble->field == "version";
    ports_.let_go(id, false);
    if (what.result != StoreResult::done) {
        be_guest();
        return stored({what.result, what.detail});
    }
    if (what.trouble && !is_newer) {
        cards_[id].is_damaged = true;
        put_card(id);
    }
    const std::string why = what.trouble ? what.trouble->reason : std::string();
    if (!what.history) {
        be_guest();
        if (what.trouble)
            say("The job stored on this device could not be read and is kept as it is.", why);
        return;
    }
    if (cards_[id].name.empty()) {
        cards_[id].name = what.history->now->job.name;
        put_card(id);
    }
    show(std::move(*what.history));
    id_.clear();
    be_new();
    rename(session().job().name + " (recovered)");
    say("The last edits stored on this device could not be read and are kept as they are.",
        "This is the job before them, under a name of its own. " + why);
    keep_point("What could be recovered", true);
}

void Jobs::keep_branches(std::vector<edit::Document> branches, const std::string& name) {
    if (branches.empty())
        return;
    for (edit::Document& branch : branches) {
        branch.job.name += " (other tab)";
        add(branch, false, [](bool) {});
    }
    say("Another tab had changed " + name + " at the same time.",
        "Both are kept: its edits are under Jobs as a job of their own.");
}

void Jobs::tell_ready() {
    if (!ready_)
        return;
    std::exchange(ready_, {})();
    bring_back();
}

/// What was kept in the reserve while the usual place was broken.
void Jobs::bring_back() {
    constexpr double k_later_seconds = 2;
    ports_.call_in(k_later_seconds, [this] {
        ports_.bring_back([this](int count) {
            if (count > 0)
                read_cards([this] {
                    say("The browser's usual storage works again.",
                        "What was kept in the second place is under Jobs.");
                });
        });
    });
}

// ---- who writes ---------------------------------------------------------------------------------

void Jobs::hold(bool insist) {
    ports_.hold(id_, insist, [this, id = id_](Claim how) {
        if (id == id_)
            held(how);
    });
}

void Jobs::held(Claim how) {
    if (how == Claim::asked)
        return store_.flush([this](bool) {
            is_held_ = false;
            board_.ownership = Ownership::reader;
            make_strip();
            ports_.let_go(id_, true);
        });
    is_held_ = how == Claim::mine;
    if (is_held_ && board_.ownership == Ownership::reader)
        return reload(); // the other page may have written until now
    board_.ownership = is_held_ ? Ownership::own : Ownership::reader;
    make_strip();
}

void Jobs::reload() {
    store_.open(id_, [this, id = id_](JobStore::Opened what) {
        if (id != id_)
            return;
        board_.ownership = is_held_ ? Ownership::own : Ownership::reader;
        if (what.is_whole && what.history)
            show(std::move(*what.history));
        else if (is_held_)
            recover(id, std::move(what));
        make_strip();
    });
}

void Jobs::edit_here() {
    if (board_.ownership == Ownership::reader)
        hold(true);
}

void Jobs::hear(const std::string& words) {
    const std::string_view all(words);
    if (all == k_list_word)
        return read_cards([] {});
    if (all.substr(0, k_stored_word.size()) != k_stored_word ||
        all.substr(k_stored_word.size()) != id_ || may_edit() || is_reloading_)
        return;
    is_reloading_ = true;
    ports_.call_in(k_reload_seconds, [this] {
        is_reloading_ = false;
        if (!may_edit())
            reload();
    });
}

// ---- storing ------------------------------------------------------------------------------------

void Jobs::edited() {
    if (id_.empty()) {
        id_ = new_id();
        board_.ownership = Ownership::own;
        store_.begin(id_);
        hold(false);
        last_open_ = id_;
        ports_.store(k_open_key, id_, [](const platform::StoreOutcome&) {});
        ports_.keep_page_text(id_);
    }
    cards_[id_].since_copy += 1;
    store_.edited(session());
    if (std::exchange(wants_protection_, false))
        ports_.ask_to_protect();
}

void Jobs::moved(int by) { store_.moved(by, session()); }

void Jobs::stored(const platform::StoreOutcome& outcome) {
    if (outcome.result == StoreResult::moved) {
        ports_.accept_place();
        return fork("The browser's storage broke, and this page keeps on in another place.",
                    "Your job is stored anew there. Save a file of it to be safe.",
                    "");
    }
    trouble_ = outcome.result;
    if (outcome.result == StoreResult::no_store)
        standing_.where = platform::StoreStanding::Where::memory;
    if (outcome.result == StoreResult::done && !id_.empty())
        ports_.tell_pages(std::string(k_stored_word) + id_);
    if (outcome.result == StoreResult::full)
        read_standing();
    make_rows();
    make_strip();
    if (when_stored)
        when_stored(outcome);
}

/// What the session holds goes on as a job of its own.
void Jobs::fork(const std::string& title, const std::string& text, const char* suffix) {
    ports_.let_go(id_, false);
    const std::string name = session().job().name;
    be_new();
    if (*suffix != '\0')
        rename(name + suffix);
    say(title, text);
    read_standing();
}

void Jobs::be_guest() {
    if (!id_.empty())
        ports_.let_go(id_, false);
    id_.clear();
    is_reading_ = false;
    store_.close();
    points_.clear();
    board_.ownership = Ownership::guest;
    make_rows();
    make_strip();
}

void Jobs::be_new() {
    if (!id_.empty())
        ports_.let_go(id_, false);
    id_ = new_id();
    is_reading_ = false;
    points_.clear();
    board_.ownership = Ownership::own;
    last_open_ = id_;
    ports_.keep_page_text(id_);
    ports_.store(k_open_key, id_, [](const platform::StoreOutcome&) {});
    store_.adopt(id_, session());
    hold(false);
    ports_.tell_pages(std::string(k_list_word));
    make_rows();
    make_strip();
}

std::string Jobs::new_id() { return "j" + ports_.own_word() + std::to_string(++made_ids_); }

std::string Jobs::when() const { return ports_.day_text() + ", " + ports_.now_text(); }

archive::JobCard Jobs::card_of_session() const {
    const auto was = cards_.find(id_);
    archive::JobCard card = was == cards_.end() ? archive::JobCard{} : was->second;
    const job::Job& job = session().job();
    card.name = job.name;
    card.parts = static_cast<int>(job.parts.size());
    card.invented = job.invented;
    card.edited = when();
    return card;
}

void Jobs::put_card(const std::string& id) {
    ports_.store(
        archive::card_key(id),
        archive::write_card(cards_[id]),
        [this](const platform::StoreOutcome&) { ports_.tell_pages(std::string(k_list_word)); });
}

} // namespace treadle::web
