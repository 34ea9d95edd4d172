// What the views asked for, done between two frames: part of app.h.

#include "archive/archive.h"
#include "sheet/worksheet.h"

#include "ui/views/refusal_words.h"

#include <utility>

#include "app.h"
#include "paper_text.h"

namespace treadle::web {

namespace {

bool ends_with(const std::string& text, const std::string& end) {
    return text.size() >= end.size() &&
           text.compare(text.size() - end.size(), end.size(), end) == 0;
}

std::string reason_at(const std::string& field, const base::Refusal& refusal) {
    const std::string reason = views::refusal_words(refusal);
    const bool elsewhere = !refusal.field.empty() && !ends_with(field, refusal.field);
    if (!elsewhere)
        return reason;
    // A field stands among its like; a file is many, and its paths tell them apart.
    return (field.empty() ? refusal.field : views::field_words(refusal.field)) + ": " + reason;
}

} // namespace

void App::do_asks() {
    // An ask never makes another one; new ones belong to the next frame.
    for (views::Ask& ask : std::exchange(asks_, {}))
        std::visit([this](auto& one) { take(one); }, ask);
}

void App::take(views::FieldEdit& field) {
    if (!jobs_.may_edit()) { // what was typed stays, to be entered here or there
        views::set_fault(state_,
                         {field.field,
                          field.typed,
                          "This job is open in another tab. Press \"Write here instead\" first."});
        return;
    }
    if (const auto refusal = session_.apply(std::move(field.edit))) {
        if (field.field.empty())
            return refused("That was not done.", *refusal);
        views::set_fault(state_, {field.field, field.typed, reason_at(field.field, *refusal)});
        return;
    }
    views::clear_fault(state_, field.field);
    edited();
}

void App::take(views::PlainEdit& plain) {
    if (!may_edit())
        return;
    if (const auto refusal = session_.apply(std::move(plain.edit)))
        return refused("That was not done.", *refusal);
    const auto& parts = session_.job().parts;
    if (plain.select_last && !parts.empty())
        state_.part = state_.part_to_show = parts.back()->id;
    else if (!plain.select_part.empty())
        state_.part = plain.select_part;
    edited();
}

void App::take(views::AtMachine& ask) {
    if (may_edit())
        machine_.take(ask, session_, state_);
}

void App::take(const views::PartsListAsk& ask) {
    if (ask.what == views::PartsListAsk::Do::add && !may_edit())
        return; // the list stays open
    auto parts = parts_list_.take(ask, session_);
    if (!parts)
        return;
    views::PlainEdit edit{std::move(*parts), "", true};
    take(edit);
    state_.place = views::Place::parts;
}

void App::take(views::ScreenWishes& wishes) {
    state_.screen = wishes;
    use_screen(wishes);
    ports_.store(k_screen_key, screen_text(wishes), [](const platform::StoreOutcome&) {});
}

void App::take(views::PaperWishes& wishes) {
    state_.paper = wishes;
    ports_.store(k_paper_key, paper_text(wishes), [](const platform::StoreOutcome&) {});
}

void App::step(int by) {
    if (!may_edit() || !(by < 0 ? session_.undo() : session_.redo()))
        return;
    state_.faults.clear();
    saving();
    jobs_.moved(by);
    changed();
}

void App::edited() {
    if (revision_ != session_.revision()) { // else it said what already is so
        saving();
        place_.keep();
        jobs_.edited();
        machine_.use(jobs_.id()); // the first edit of a job that nobody had kept
    }
    changed();
}

void App::take(const views::CopyText& copy) {
    ports_.copy_text(copy.text, [this, what = copy.what](bool done) {
        if (done)
            say(what + " is on the clipboard.", "");
    });
}

void App::take(views::Wish& wish) {
    using views::Wish;
    switch (wish) {
    case Wish::undo:
    case Wish::redo:
        return step(wish == Wish::undo ? -1 : 1);
    case Wish::accept_notice:
        state_.notice_open = false;
        return ports_.store(k_notice_key, "accepted", [](const platform::StoreOutcome&) {});
    case Wish::hide_hint:
    case Wish::show_hint:
        state_.hint_open = wish == Wish::show_hint;
        return ports_.store(
            k_hint_key, state_.hint_open ? "shown" : "gone", [](const platform::StoreOutcome&) {});
    case Wish::import_file:
        return ports_.pick_file(".json,.csv,.tsv,.txt,application/json,text/csv",
                                [this](const platform::PickedFile& file) { import(file); });
    case Wish::export_file:
        ports_.download(file_name("json"),
                        "application/json",
                        archive::write_file(session_.job(), session_.shop()));
        return jobs_.copied();
    case Wish::save_csv:
        return ports_.download(
            file_name("csv"),
            "text/csv",
            sheet::worksheet_csv(session_.plan(), session_.job(), session_.shop()));
    case Wish::save_html:
        return ports_.download(file_name("html"), "text/html", sheet());
    case Wish::save_json:
        return ports_.download(file_name("plan.json"),
                               "application/json",
                               sheet::plan_json(session_.plan(), session_.job(), session_.shop()));
    case Wish::preview_sheet:
        return ports_.show_sheet_preview(session_.job().name, sheet(true));
    case Wish::print_sheet:
        return ports_.print_html(session_.job().name, sheet());
    case Wish::preview_templates:
    case Wish::print_templates:
        if (const std::string html = templates(); html.empty())
            return;
        else if (wish == Wish::print_templates)
            return ports_.print_html(session_.job().name, html);
        else
            return ports_.show_sheet_preview(session_.job().name, html);
    case Wish::demo_inch:
        return use_demo("demo/demo-inch.json");
    case Wish::demo_metric:
        return use_demo("demo/demo-metric.json");
    case Wish::new_job: {
        archive::File file{{}, session_.shop()};
        file.job.name = "New job";
        file.job.style = session_.job().style;
        return show_guest(std::move(file));
    }
    }
}

void App::refused(const std::string& title, const base::Refusal& refusal) {
    say(title, reason_at("", refusal));
}

} // namespace treadle::web
