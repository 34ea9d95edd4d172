// What is done to kept jobs, and what the board says of them: part of jobs.h.

#include "archive/archive.h"

#include <algorithm>
#include <cmath>
#include <memory>
#include <utility>

#include "jobs.h"

namespace treadle::web {

namespace {

using platform::StoreResult;
using views::Ownership;

constexpr std::size_t k_most_points = 8;

std::string counted(int number, const char* one, const char* more) {
    return std::to_string(number) + " " + (number == 1 ? one : more);
}

std::string size_words(double bytes) {
    const double mega = bytes / 1e6;
    return mega < 1 ? std::to_string(static_cast<int>(std::ceil(bytes / 1e3))) + " kB"
                    : std::to_string(static_cast<long long>(std::ceil(mega))) + " MB";
}

std::string row_detail(const archive::JobCard& card) {
    std::string detail = counted(card.parts, "part", "parts");
    if (!card.edited.empty())
        detail += ", edited " + card.edited;
    if (card.since_copy > 0)
        detail += ", " + counted(card.since_copy, "edit", "edits") + " since a file was saved";
    if (card.invented)
        detail += ", invented scenario";
    return detail;
}

} // namespace

// ---- one job ------------------------------------------------------------------------------------

void Jobs::open(const std::string& id) {
    if (id == id_)
        return;
    store_.flush([this, id](bool) {
        if (!id_.empty())
            ports_.let_go(id_, false);
        use(id);
    });
}

void Jobs::add(const edit::Document& document, bool in_trash, std::function<void(bool)> answer) {
    archive::JobCard card;
    card.name = document.job.name;
    card.parts = static_cast<int>(document.job.parts.size());
    card.invented = document.job.invented;
    card.edited = when();
    if (in_trash)
        card.trash = days_.count;
    const std::string id = new_id();
    ports_.store_all(
        JobStore::whole_job(id, ports_.own_word(), document, card),
        [this, id, card, answer = std::move(answer)](const platform::StoreOutcome& outcome) {
            if (outcome.result == StoreResult::done)
                cards_[id] = card;
            else
                stored(outcome);
            make_rows();
            ports_.tell_pages("list");
            answer(outcome.result == StoreResult::done);
        });
}

void Jobs::duplicate(const std::string& id) {
    const auto copy = [this](edit::Document document) {
        document.job.name += " (copy)";
        add(document, false, [](bool) {});
    };
    if (id == id_)
        return copy(session().document());
    auto side = std::make_shared<JobStore>(ports_);
    side->open(id, [this, side, copy](JobStore::Opened what) {
        if (what.history)
            copy(*what.history->now);
        else
            say("That job could not be read.", what.trouble ? what.trouble->reason : what.detail);
    });
}

void Jobs::throw_away(const std::string& id) {
    const bool is_open = id == id_;
    cards_[id].trash = days_.count;
    if (is_open)
        cards_[id] = card_of_session();
    put_card(id);
    if (is_open)
        store_.flush([this](bool) {
            be_guest();
            choose();
        });
    make_rows();
}

void Jobs::take_back(const std::string& id) {
    cards_[id].trash.reset();
    put_card(id);
    make_rows();
}

/// For good: every record of it.
void Jobs::remove(const std::string& id) {
    cards_.erase(id);
    std::erase(without_card_, id);
    const auto drop = [this](const platform::LoadedKeys& keys) {
        std::vector<platform::StoreChange> changes;
        for (const std::string& key : keys.keys)
            changes.push_back({key, std::nullopt, false});
        if (!changes.empty())
            ports_.store_all(changes, [this](const platform::StoreOutcome& outcome) {
                ports_.tell_pages("list");
                if (outcome.result == StoreResult::done) // room for what waits
                    store_.again();
            });
    };
    ports_.load_keys(archive::journal_prefix(id), drop);
    ports_.load_keys(archive::points_prefix(id), drop);
    ports_.load_keys(archive::card_key(id), drop);
    make_rows();
}

void Jobs::copied() {
    if (id_.empty())
        return;
    cards_[id_].since_copy = 0;
    if (may_edit())
        put_card(id_);
    make_rows();
}

void Jobs::read_all(std::function<void(std::vector<edit::Document>, int unread)> answer) {
    auto ids = std::make_shared<std::vector<std::string>>(without_card_);
    for (const auto& [id, card] : cards_)
        if (!card.trash)
            ids->push_back(id);
    store_.flush([this, ids, answer = std::move(answer)](bool) {
        read_next(ids, std::make_shared<std::vector<edit::Document>>(), 0, answer);
    });
}

void Jobs::read_next(std::shared_ptr<std::vector<std::string>> ids,
                     std::shared_ptr<std::vector<edit::Document>> done,
                     int unread,
                     std::function<void(std::vector<edit::Document>, int)> answer) {
    if (ids->empty())
        return answer(std::move(*done), unread);
    const std::string id = ids->back();
    ids->pop_back();
    auto side = std::make_shared<JobStore>(ports_);
    side->open(id, [this, side, ids, done, unread, answer](JobStore::Opened what) {
        if (what.history)
            done->push_back(*what.history->now);
        read_next(ids, done, unread + (what.history ? 0 : 1), answer);
    });
}

// ---- states to go back to -----------------------------------------------------------------------

void Jobs::read_points() {
    if (id_.empty())
        return;
    ports_.load_all(archive::points_prefix(id_), [this](const platform::LoadedAll& all) {
        points_.clear();
        for (const platform::Kept& kept : all.kept)
            if (const auto read = archive::read_point(kept.bytes))
                points_[kept.key] = read->point;
        make_rows();
    });
}

void Jobs::keep_point(const std::string& why, bool is_pinned) {
    if (id_.empty() || !may_edit())
        return; // what is not kept has nothing to go back to
    const archive::Point point{why, when(), is_pinned};
    const edit::Document& now = session().document();
    const std::string key = archive::points_prefix(id_) + archive::name_text({days_.count, "d"}) +
                            "-" + ports_.own_word() + std::to_string(++made_ids_);
    std::vector<platform::StoreChange> changes{
        {key, archive::write_point(point, archive::write_file(now.job, *now.shop)), true}};
    // The oldest that nobody pinned goes, as soon as there are more than are of use.
    std::vector<std::string> loose;
    for (const auto& [name, kept] : points_)
        if (!kept.is_pinned)
            loose.push_back(name);
    for (std::size_t i = 0; i + k_most_points <= loose.size(); ++i) {
        changes.push_back({loose[i], std::nullopt, false});
        points_.erase(loose[i]);
    }
    points_[key] = point;
    ports_.store_all(changes, [this](const platform::StoreOutcome& outcome) {
        if (outcome.result != StoreResult::done)
            stored(outcome);
    });
    make_rows();
}

void Jobs::open_point(const std::string& key) {
    ports_.load(key, [this](const platform::LoadedBytes& kept) {
        const auto read = archive::read_point(kept.bytes);
        auto file =
            read ? archive::read_file(read->file) : base::Result<archive::File>(read.refusal());
        if (!file)
            return say("That state could not be read, and the job is as it was.",
                       file.refusal().reason);
        keep_point("Before going back to an earlier state", false);
        go_back(
            {std::move(file->job), std::make_shared<const equipment::Shop>(std::move(file->shop))});
    });
}

void Jobs::remove_point(const std::string& key) {
    points_.erase(key);
    ports_.store_all({{key, std::nullopt, false}}, [](const platform::StoreOutcome&) {});
    make_rows();
}

// ---- what is said of them -----------------------------------------------------------------------

void Jobs::make_rows() {
    board_.jobs.clear();
    board_.trash.clear();
    board_.points.clear();
    for (const auto& [id, card] : cards_) {
        views::JobRow row{id,
                          card.name.empty() ? "Job without a name" : card.name,
                          row_detail(card),
                          card.is_damaged ? "damaged, kept as it is" : "",
                          id == id_};
        if (card.trash) {
            const int left = archive::k_trash_days - (days_.count - *card.trash);
            row.mark =
                "goes after " + counted(std::max(1, left), "more day", "more days") + " of use";
            board_.trash.push_back(std::move(row));
        } else {
            board_.jobs.push_back(std::move(row));
        }
    }
    for (const std::string& id : without_card_)
        if (cards_.count(id) == 0)
            board_.jobs.push_back(
                {id, "A job of an earlier version", "not looked into yet", "", id == id_});
    std::stable_sort(board_.jobs.begin(), board_.jobs.end(), [](const auto& a, const auto& b) {
        return a.is_open != b.is_open ? a.is_open : a.name < b.name;
    });
    for (auto point = points_.rbegin(); point != points_.rend(); ++point)
        board_.points.push_back(
            {point->first, point->second.why + ", " + point->second.when, point->second.is_pinned});
    const auto open = cards_.find(id_);
    const int since = open == cards_.end() ? 0 : open->second.since_copy;
    board_.since_copy =
        since > 0 ? counted(since, "edit", "edits") + " since a file of this job was saved." : "";
    if (when_changed)
        when_changed();
}

void Jobs::make_strip() {
    using Where = platform::StoreStanding::Where;
    board_.strip.clear();
    board_.strip_takes = board_.strip_saves = board_.strip_frees = false;
    if (trouble_ == StoreResult::newer) {
        board_.strip = "A newer version of this page has been used here. This one only shows and "
                       "changes nothing that is kept: reload it to get the newer one.";
        board_.strip_saves = true;
    } else if (board_.ownership == Ownership::reader) {
        board_.strip =
            "This job is open in another tab, which may change it. Here it is only shown.";
        board_.strip_takes = true;
    } else if (standing_.where == Where::memory) {
        board_.strip = "This browser keeps nothing for this page (a private window, or storage is "
                       "switched off). Save a file before you close it.";
        board_.strip_saves = true;
    } else if (trouble_ == StoreResult::full) {
        board_.strip = "Not saved: the browser gives this page no more room";
        if (standing_.used_bytes >= 0 && standing_.most_bytes > 0)
            board_.strip += " (" + size_words(standing_.used_bytes) + " of " +
                            size_words(standing_.most_bytes) + " used)";
        board_.strip += ". Save a file, or remove old jobs.";
        board_.strip_saves = board_.strip_frees = true;
    } else if (trouble_ != StoreResult::done) {
        board_.strip = "Not saved: the browser did not store the last edits. They are tried again "
                       "with the next one. Save a file to be safe.";
        board_.strip_saves = true;
    }
    if (when_changed)
        when_changed();
}

void Jobs::read_standing() {
    ports_.standing([this](const platform::StoreStanding& standing) {
        using Where = platform::StoreStanding::Where;
        standing_ = standing;
        board_.place.clear();
        if (standing.where == Where::memory)
            board_.place.emplace_back("Nothing is kept: this browser has no place for it.");
        else if (standing.where == Where::reserve)
            board_.place.emplace_back(
                "Kept in a second place, because the browser's usual one is broken. What lies "
                "there comes back when it works again; save files until then.");
        else if (standing.is_protected)
            board_.place.emplace_back("Kept in this browser, which promised not to clear it.");
        else
            board_.place.emplace_back("Kept in this browser only. It may clear it when space runs "
                                      "short or when the page was not visited for long: save a "
                                      "file now and then.");
        if (standing.used_bytes >= 0)
            board_.place.push_back(
                "Room used: " + size_words(standing.used_bytes) +
                (standing.most_bytes > 0 ? " of " + size_words(standing.most_bytes) + "." : "."));
        make_strip();
    });
}

} // namespace treadle::web
