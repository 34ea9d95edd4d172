// What is kept, as the app shows and uses it: part of app.h.

#include "archive/archive.h"
#include "archive/bundle.h"
#include "archive/parts_list.h"

#include <utility>

#include "app.h"

namespace treadle::web {

void App::wire_jobs() {
    jobs_.session = [this]() -> const edit::Session& { return session_; };
    jobs_.show = [this](edit::Session::History history) { show(std::move(history)); };
    jobs_.say = [this](std::string title, std::string text) {
        say(std::move(title), std::move(text));
        redraw("said");
    };
    jobs_.when_stored = [this](const platform::StoreOutcome& outcome) { stored(outcome); };
    jobs_.when_changed = [this] { redraw("jobs"); };
    jobs_.rename = [this](const std::string& name) {
        const job::Job& job = session_.job();
        if (!session_.apply(edit::SetJobNames{name, job.note, job.due}))
            edited();
    };
    jobs_.go_back = [this](edit::Document document) {
        views::PlainEdit edit{edit::ReplaceDocument{std::move(document)}, "", false};
        take(edit);
    };
}

void App::show(edit::Session::History history) {
    const std::uint64_t before = session_.revision();
    session_ = edit::Session(std::move(history), catalog_);
    session_.count_from(before);
    state_.faults.clear();
    state_.saved = views::Saved::saved;
    state_.saved_note = "Saved";
    if (!state_.paper.chosen_paper)
        state_.paper.letter = session_.job().style.system == UnitSystem::inch;
    revision_ = session_.revision();
    readings_.refresh(session_);
    if (!is_started_)
        return; // the place that was kept is put back first
    settle_choice();
    load_machine([this] { redraw("machine"); });
    redraw("job");
}

void App::show_guest(archive::File file) {
    edit::Session::History history;
    history.now = std::make_shared<const edit::Document>(to_document(std::move(file)));
    jobs_.leave([this, history = std::move(history)]() mutable {
        state_.part.clear();
        state_.messages.clear();
        state_.panel = views::Panel::checks;
        state_.place = views::Place::parts;
        show(std::move(history));
        state_.saved = views::Saved::nothing_yet;
        jobs_.be_guest();
    });
}

bool App::may_edit() {
    if (jobs_.may_edit())
        return true;
    say("That was not done.",
        "This job is open in another tab. Press \"Write here instead\" first.");
    return false;
}

void App::stored(const platform::StoreOutcome& outcome) {
    using platform::StoreResult;
    const bool done = outcome.result == StoreResult::done;
    state_.saved = done ? views::Saved::saved : views::Saved::failed;
    state_.saved_note = done                                      ? "Saved " + ports_.now_text()
                        : outcome.result == StoreResult::no_store ? "Not kept on this device"
                                                                  : "Not saved. " + outcome.detail;
    redraw("saved");
}

/// As they lie in the store: for whoever can read them better.
void App::save_records(const std::string& job) {
    ports_.load_all(job.empty() ? "aside/" : archive::journal_prefix(job),
                    [this](const platform::LoadedAll& all) {
                        std::string text;
                        for (const platform::Kept& kept : all.kept)
                            text += kept.key + "\n" + kept.bytes + "\n\n";
                        ports_.download("treadle-records.txt", "text/plain", text);
                    });
}

void App::take(views::JobAsk& ask) {
    using Do = views::JobAsk::Do;
    switch (ask.what) {
    case Do::none:
        return;
    case Do::open:
        return jobs_.open(ask.id);
    case Do::duplicate:
        return jobs_.duplicate(ask.id);
    case Do::throw_away:
        return jobs_.throw_away(ask.id);
    case Do::take_back:
        return jobs_.take_back(ask.id);
    case Do::ask_remove:
        state_.to_remove = ask.id;
        return;
    case Do::remove:
        state_.to_remove.clear();
        return jobs_.remove(ask.id);
    case Do::edit_here:
        return jobs_.edit_here();
    case Do::keep_point:
        return jobs_.keep_point("Kept by hand", false);
    case Do::open_point:
        return jobs_.open_point(ask.id);
    case Do::remove_point:
        return jobs_.remove_point(ask.id);
    case Do::save_records:
        return save_records(ask.id);
    case Do::open_shelf:
        return open_shelf(ask.id);
    case Do::add_incoming:
        return add_incoming();
    case Do::leave_incoming:
        incoming_.clear();
        jobs_.board().incoming.clear();
        jobs_.board().not_incoming.clear();
        return;
    case Do::save_all:
        return save_all_jobs();
    case Do::save_shop:
        return ports_.download(
            file_name("shop.json"),
            "application/json",
            archive::write_shop_file(session_.shop(), session_.job().style.system));
    case Do::save_parts:
        return ports_.download(file_name("parts.csv"),
                               "text/csv",
                               archive::write_parts_csv(session_.job(), *catalog_));
    case Do::paste_table:
        return ports_.ask_for_table();
    case Do::copy_link:
        return copy_link();
    }
}

} // namespace treadle::web
