#include "app.h"

#include "sheet/worksheet.h"

#include "assets/embedded.h"
#include "ui/views/screen.h"

#include <utility>

#include "about.h"

namespace treadle::web {

edit::Document to_document(archive::File file) {
    return {std::move(file.job), std::make_shared<const equipment::Shop>(std::move(file.shop))};
}

App::App(platform::Ports& ports,
         std::shared_ptr<const job::Catalog> catalog,
         archive::File first,
         std::function<void(const views::ScreenWishes&)> use_screen)
    : ports_(ports),
      catalog_(std::move(catalog)),
      use_screen_(std::move(use_screen)),
      session_(to_document(std::move(first)), catalog_),
      about_(about_lines()),
      stock_(ports),
      machine_(ports),
      store_(ports),
      place_(ports, state_) {
    store_.when_stored = [this](const std::optional<std::string>& trouble) { stored(trouble); };
    readings_.source_title = [this](std::string_view key) { return source_title(key); };
    auto sources = archive::read_sources(assets::embedded("sources.json").value_or(""));
    if (!sources)
        return; // the keys are shown then, and the list is left out
    sources_ = std::move(sources).value();
    for (const archive::Source& source : sources_)
        about_.push_back(source.title + ": " + source.how_read + ".");
}

void App::start() {
    unanswered_ = 6;
    ports_.load(k_notice_key, [this](const platform::LoadedBytes& answer) {
        state_.notice_open = answer.result != platform::StoreResult::done;
        answered();
    });
    ports_.load(k_hint_key, [this](const platform::LoadedBytes& answer) {
        state_.hint_open = answer.result != platform::StoreResult::done || answer.bytes != "gone";
        answered();
    });
    ports_.load(k_screen_key, [this](const platform::LoadedBytes& answer) {
        if (const auto wishes = read_screen_text(answer.bytes))
            use_screen(*wishes);
        answered();
    });
    place_.load([this] { answered(); });
    machine_.load([this] { answered(); },
                  [this](const base::Refusal& refusal) {
                      refused("The record of work at the machine could not be read and was put "
                              "aside; counting starts anew.",
                              refusal);
                  });
    store_.open([this](JobStore::Opened opened) {
        loaded(std::move(opened));
        answered();
    });
}

void App::answered() {
    if (--unanswered_ > 0)
        return;
    // Only now: what was chosen belongs to the job that was kept.
    place_.restore();
    settle_choice();
    if (machine_.was_open(session_.job().name)) // somebody stood there when the page went
        machine_.come_back(session_, state_);
    redraw("opened");
}

void App::draw(ui::Ui& ui) {
    if (unanswered_ > 0)
        return; // no picture before everything is known, so that none is taken back
    place_.before_frame(ui);
    if (state_.place == views::Place::bars)
        stock_.refresh(session_); // what nobody looks at is not searched
    refresh_machine();
    views::Desk desk{ui,
                     session_,
                     state_,
                     readings_,
                     asks_,
                     about_,
                     sheet::safety_notice(),
                     stock_.board(),
                     machine_.board()};
    views::screen(desk);
    place_.after_frame(ui);
    if (asks_.empty())
        return;
    do_asks();
    ui.want_frame();
}

/// Steps are listed for who looks at them; of work on hold one line is shown everywhere.
void App::refresh_machine() {
    const std::string& job = session_.job().name;
    const bool looked_at = state_.place == views::Place::at_machine ||
                           (state_.place == views::Place::order && machine_.has_record(job));
    if (looked_at || machine_.is_on_hold(job) || machine_.board().is_held)
        machine_.refresh(session_);
}

void App::use_screen(const views::ScreenWishes& wishes) {
    state_.screen = wishes;
    use_screen_(wishes);
}

void App::changed() {
    const auto before = readings_.parts();
    revision_ = session_.revision();
    readings_.refresh(session_);
    settle_choice();
    announce_changes(before);
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

void App::loaded(JobStore::Opened opened) {
    if (!opened.has_store) {
        state_.saved = views::Saved::failed;
        state_.saved_note = "Not kept on this device";
        say("Nothing can be kept on this device.",
            "Save the file under Sheets before you close the page. " + opened.detail);
    }
    if (opened.history) {
        session_ = edit::Session(std::move(*opened.history), catalog_);
        state_.saved = views::Saved::saved;
        state_.saved_note = "Saved";
    }
    if (opened.trouble)
        refused(opened.history
                    ? "The last edits stored on this device could not be read and are kept as they "
                      "are. This is the job before them."
                    : "The job stored on this device could not be read and is kept as it is.",
                *opened.trouble);
    state_.letter = session_.job().style.system == UnitSystem::inch;
    revision_ = session_.revision();
    readings_.refresh(session_);
}

void App::saving() { state_.saved = views::Saved::saving; }

void App::stored(const std::optional<std::string>& trouble) {
    state_.saved = trouble ? views::Saved::failed : views::Saved::saved;
    state_.saved_note = trouble ? "Not saved. " + *trouble : "Saved " + ports_.now_text();
    redraw("saved");
}

std::string App::source_title(std::string_view key) const {
    for (const archive::Source& source : sources_) {
        if (source.key == key)
            return source.title;
    }
    return {};
}

void App::say(std::string title, std::string text) {
    state_.messages.clear();
    ports_.announce(title + " " + text);
    state_.messages.push_back({std::move(title), std::move(text)});
}

void App::redraw(const char* why) { ports_.request_frame(why, 2); }

} // namespace treadle::web
