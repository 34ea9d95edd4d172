#include "app.h"

#include "sheet/worksheet.h"

#include "assets/embedded.h"
#include "ui/views/refusal_words.h"
#include "ui/views/screen.h"

#include <utility>

#include "about.h"

namespace treadle::web {

namespace {

constexpr const char* k_job_key = "job";
constexpr const char* k_notice_key = "notice";
constexpr const char* k_hint_key = "hint";

bool ends_with(const std::string& text, const std::string& end) {
    return text.size() >= end.size() &&
           text.compare(text.size() - end.size(), end.size(), end) == 0;
}

std::string reason_at(const std::string& field, const base::Refusal& refusal) {
    const std::string reason = views::refusal_words(refusal);
    const bool elsewhere = !refusal.field.empty() && !ends_with(field, refusal.field);
    return elsewhere ? refusal.field + ": " + reason : reason;
}

} // namespace

edit::Document to_document(archive::File file) {
    return {std::move(file.job), std::make_shared<const equipment::Shop>(std::move(file.shop))};
}

App::App(platform::Ports& ports, std::shared_ptr<const job::Catalog> catalog, archive::File first)
    : ports_(ports),
      catalog_(std::move(catalog)),
      session_(to_document(std::move(first)), catalog_),
      about_(about_lines()),
      stock_(ports) {
    readings_.source_title = [this](std::string_view key) { return source_title(key); };
    auto sources = archive::read_sources(assets::embedded("sources.json").value_or(""));
    if (!sources)
        return; // the keys are shown then, and the list is left out
    sources_ = std::move(sources).value();
    for (const archive::Source& source : sources_)
        about_.push_back(source.title + ": " + source.how_read + ".");
}

void App::start() {
    ports_.load(k_notice_key, [this](const platform::LoadedBytes& answer) {
        state_.notice_open = answer.result != platform::StoreResult::done;
        redraw("notice");
    });
    ports_.load(k_hint_key, [this](const platform::LoadedBytes& answer) {
        state_.hint_open = answer.result != platform::StoreResult::done || answer.bytes != "gone";
        redraw("hint");
    });
    ports_.load(k_job_key, [this](const platform::LoadedBytes& answer) { loaded(answer); });
}

void App::draw(ui::Ui& ui) {
    if (!is_open_) {
        ui.fill(ui.screen(), ui::Ink::bench);
        return;
    }
    if (state_.place == views::Place::bars)
        stock_.refresh(session_); // what nobody looks at is not searched
    views::Desk desk{
        ui, session_, state_, readings_, asks_, about_, sheet::safety_notice(), stock_.board()};
    views::screen(desk);
    if (asks_.empty())
        return;
    do_asks();
    ui.want_frame();
}

void App::do_asks() {
    // An ask never makes another one; new ones belong to the next frame.
    for (views::Ask& ask : std::exchange(asks_, {}))
        std::visit([this](auto& one) { take(one); }, ask);
}

void App::take(views::FieldEdit& field) {
    if (const auto refusal = session_.apply(std::move(field.edit))) {
        if (field.field.empty())
            return refused("That was not done.", *refusal);
        views::set_fault(state_, {field.field, field.typed, reason_at(field.field, *refusal)});
        return;
    }
    views::clear_fault(state_, field.field);
    changed();
}

void App::take(views::PlainEdit& plain) {
    if (const auto refusal = session_.apply(std::move(plain.edit)))
        return refused("That was not done.", *refusal);
    const auto& parts = session_.job().parts;
    if (plain.select_last && !parts.empty())
        state_.part = state_.part_to_show = parts.back()->id;
    else if (!plain.select_part.empty())
        state_.part = plain.select_part;
    changed();
}

void App::take(views::Wish& wish) {
    using views::Wish;
    switch (wish) {
    case Wish::undo:
    case Wish::redo:
        if (wish == Wish::undo ? session_.undo() : session_.redo()) {
            state_.faults.clear();
            changed();
        }
        return;
    case Wish::accept_notice:
        state_.notice_open = false;
        return ports_.store(k_notice_key, "accepted", [](const platform::StoreOutcome&) {});
    case Wish::hide_hint:
    case Wish::show_hint:
        state_.hint_open = wish == Wish::show_hint;
        return ports_.store(
            k_hint_key, state_.hint_open ? "shown" : "gone", [](const platform::StoreOutcome&) {});
    case Wish::import_file:
        return ports_.pick_file(".json,application/json",
                                [this](const platform::PickedFile& file) { import(file); });
    case Wish::export_file:
        return ports_.download(file_name("json"),
                               "application/json",
                               archive::write_file(session_.job(), session_.shop()));
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
        return ports_.show_sheet_preview(session_.job().name, sheet());
    case Wish::print_sheet:
        return ports_.print_html(session_.job().name, sheet());
    case Wish::demo_inch:
        return use_demo("demo/demo-inch.json");
    case Wish::demo_metric:
        return use_demo("demo/demo-metric.json");
    case Wish::new_job: {
        archive::File file{{}, session_.shop()};
        file.job.name = "New job";
        file.job.style = session_.job().style;
        return replace(std::move(file));
    }
    }
}

void App::refused(const std::string& title, const base::Refusal& refusal) {
    say(title, reason_at("", refusal));
}

void App::changed() {
    const auto before = readings_.parts();
    readings_.refresh(session_);
    settle_choice();
    announce_changes(before);
    store();
}

void App::settle_choice() {
    const auto& parts = session_.job().parts;
    const job::Part* chosen = nullptr;
    for (const job::PartRef& part : parts) {
        if (part->id == state_.part)
            chosen = part.get();
    }
    if (!chosen && !parts.empty()) {
        chosen = parts.front().get();
        state_.part = chosen->id;
        state_.operation = views::first_trouble(*readings_.parts().front());
    }
    const int operations = chosen ? static_cast<int>(chosen->operations.size()) : 0;
    if (state_.operation >= operations)
        state_.operation = operations - 1;
}

void App::announce_changes(const std::vector<std::shared_ptr<views::PartReading>>& before) {
    constexpr int k_most = 3;
    std::string sentences;
    int told = 0;
    int more = 0;
    for (std::size_t i = 0; i < readings_.parts().size() && i < before.size(); ++i) {
        const views::PartReading& now = *readings_.parts()[i];
        const views::PartReading& was = *before[i];
        if (now.mark != was.mark || now.verdict == was.verdict)
            continue;
        if (++told > k_most) {
            ++more;
            continue;
        }
        sentences += (sentences.empty() ? "" : " ") + now.announcement;
    }
    if (more > 0)
        sentences += " And " + std::to_string(more) + " more parts.";
    if (!sentences.empty())
        ports_.announce(sentences);
}

void App::loaded(const platform::LoadedBytes& answer) {
    using platform::StoreResult;
    is_open_ = true;
    if (answer.result == StoreResult::done) {
        auto file = archive::read_file(answer.bytes);
        if (file) {
            session_ = edit::Session(to_document(std::move(file).value()), catalog_);
            state_.saved = views::Saved::saved;
            state_.saved_note = "Saved";
        } else {
            may_store_ = false;
            refused("The job stored on this device could not be read and is kept as it is.",
                    file.refusal());
            keep_unreadable(answer.bytes, 1);
        }
    } else if (answer.result != StoreResult::not_found) {
        state_.saved = views::Saved::failed;
        state_.saved_note = "Not kept on this device";
        say("Nothing can be kept on this device.",
            "Save the file under Sheets before you close the page. " + answer.detail);
    }
    state_.letter = session_.job().style.system == UnitSystem::inch;
    readings_.refresh(session_);
    settle_choice();
    redraw("job");
}

void App::keep_unreadable(const std::string& bytes, int number) {
    constexpr int k_most = 100;
    const std::string key = "unreadable-" + std::to_string(number);
    ports_.load(key, [this, bytes, key, number](const platform::LoadedBytes& there) {
        if (there.result == platform::StoreResult::done && there.bytes != bytes && number < k_most)
            return keep_unreadable(bytes, number + 1);
        if (there.result == platform::StoreResult::done && there.bytes == bytes) {
            may_store_ = true;
            return;
        }
        if (there.result != platform::StoreResult::not_found)
            return; // nothing is stored over it as long as it is not safe elsewhere
        ports_.store(key, bytes, [this](const platform::StoreOutcome& outcome) {
            may_store_ = outcome.result == platform::StoreResult::done;
        });
    });
}

void App::store() {
    if (!may_store_) {
        state_.saved = views::Saved::failed;
        state_.saved_note = "Not saved";
        return;
    }
    const int number = ++store_number_;
    state_.saved = views::Saved::saving;
    ports_.store(
        k_job_key,
        archive::write_file(session_.job(), session_.shop()),
        [this, number](const platform::StoreOutcome& outcome) { stored(number, outcome); });
}

void App::stored(int number, const platform::StoreOutcome& outcome) {
    if (number != store_number_)
        return; // a later edit is on its way
    const bool done = outcome.result == platform::StoreResult::done;
    state_.saved = done ? views::Saved::saved : views::Saved::failed;
    state_.saved_note = done ? "Saved " + ports_.now_text() : "Not saved. " + outcome.detail;
    redraw("saved");
}

void App::replace(archive::File file) {
    views::PlainEdit edit{edit::ReplaceDocument{to_document(std::move(file))}, "", false};
    state_.faults.clear();
    state_.panel = views::Panel::checks;
    take(edit);
    state_.letter = session_.job().style.system == UnitSystem::inch;
}

void App::import(const platform::PickedFile& picked) {
    auto file = archive::read_file(picked.bytes);
    if (file) {
        replace(std::move(file).value());
        state_.messages.clear();
        state_.place = views::Place::parts;
    } else {
        refused(picked.name + " was not opened, and the job is as it was.", file.refusal());
    }
    redraw("file");
}

void App::use_demo(const char* path) {
    const auto bytes = assets::embedded(path);
    if (!bytes)
        return say("The demo job is missing from this build.", path);
    auto file = archive::read_file(*bytes);
    if (!file)
        return refused("The demo job could not be read.", file.refusal());
    replace(std::move(file).value());
    state_.place = views::Place::parts;
}

std::string App::sheet() const {
    sheet::SheetOptions options;
    options.source_title = [this](std::string_view key) { return source_title(key); };
    options.paper = state_.letter ? sheet::Paper::letter : sheet::Paper::a4;
    return sheet::worksheet_html(
        session_.plan(), session_.job(), session_.shop(), *catalog_, options);
}

std::string App::source_title(std::string_view key) const {
    for (const archive::Source& source : sources_) {
        if (source.key == key)
            return source.title;
    }
    return {};
}

std::string App::file_name(const char* ending) const {
    std::string name;
    for (const char c : session_.job().name) {
        const bool plain =
            (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z') || (c >= '0' && c <= '9');
        if (plain)
            name += c;
        else if (!name.empty() && name.back() != '-')
            name += '-';
    }
    while (!name.empty() && name.back() == '-')
        name.pop_back();
    return (name.empty() ? "job" : name) + "." + ending;
}

void App::say(std::string title, std::string text) {
    state_.messages.clear();
    ports_.announce(title + " " + text);
    state_.messages.push_back({std::move(title), std::move(text)});
}

void App::redraw(const char* why) { ports_.request_frame(why, 2); }

} // namespace treadle::web
