#include "app.h"

#include "sheet/worksheet.h"

#include "assets/embedded.h"
#include "ui/views/parts_list_view.h"
#include "ui/views/screen.h"

#include <utility>

#include "about.h"
#include "paper_text.h"

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
      parts_list_(ports),
      lessons_(catalog_),
      jobs_(ports),
      place_(ports, state_),
      versions_(ports) {
    wire_jobs();
    wire_lessons();
    readings_.source_title = [this](std::string_view key) { return source_title(key); };
    auto sources = archive::read_sources(assets::embedded("sources.json").value_or(""));
    if (!sources)
        return; // the keys are shown then, and the list is left out
    sources_ = std::move(sources).value();
    for (const archive::Source& source : sources_)
        about_.push_back(source.title + ": " + source.how_read + ".");
}

void App::start() {
    unanswered_ = 7;
    versions_.load([this] { answered(); });
    ports_.load(k_notice_key, [this](const platform::LoadedBytes& answer) {
        state_.notice_open = answer.result != platform::StoreResult::done;
        answered();
    });
    ports_.load(k_hint_key, [this](const platform::LoadedBytes& answer) {
        state_.hint_open = answer.result != platform::StoreResult::done || answer.bytes != "gone";
        answered();
    });
    ports_.load(k_paper_key, [this](const platform::LoadedBytes& answer) {
        if (auto wishes = read_paper_text(answer.bytes))
            state_.paper = std::move(*wishes);
        answered();
    });
    ports_.when_ticked([this](const std::string& key, bool on) {
        if (may_edit())
            machine_.tick(key, on, session_);
    });
    ports_.load(k_screen_key, [this](const platform::LoadedBytes& answer) {
        if (const auto wishes = read_screen_text(answer.bytes))
            use_screen(*wishes);
        answered();
    });
    place_.load([this] { answered(); });
    jobs_.start([this] { load_machine([this] { answered(); }); });
}

void App::load_machine(std::function<void()> ready) {
    machine_.load(
        jobs_.id(), session_.job().name, std::move(ready), [this](const base::Refusal& refusal) {
            refused("The record of work at the machine could not be read and was put "
                    "aside; counting starts anew.",
                    refusal);
        });
}

void App::answered() {
    if (--unanswered_ > 0)
        return;
    revision_ = session_.revision();
    readings_.refresh(session_);
    if (!state_.paper.chosen_paper)
        state_.paper.letter = session_.job().style.system == UnitSystem::inch;
    // Only now: what was chosen belongs to the job that was kept.
    place_.restore();
    settle_choice();
    if (machine_.was_open()) // somebody stood there when the page went
        machine_.come_back(session_, state_);
    is_started_ = true;
    ports_.when_given([this](const platform::PickedFile& file) { import(file); });
    open_address();
    jobs_.read_standing();
    versions_.watch([this](const std::function<void()>& done) { flush(done); });
    redraw("opened");
}

void App::draw(ui::Ui& ui) {
    if (unanswered_ > 0)
        return; // no picture before everything is known, so that none is taken back
    place_.before_frame(ui);
    if (state_.place == views::Place::jobs)
        look_at_shelf();
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
                     machine_.board(),
                     jobs_.board(),
                     versions_.board(),
                     lessons_.board()};
    if (Demonstrated* const shown = lessons_.demonstrated()) {
        views::Desk beside{ui,
                           shown->session,
                           shown->state,
                           shown->readings,
                           shown->asks,
                           about_,
                           sheet::safety_notice(),
                           stock_.board(),
                           machine_.board(),
                           jobs_.board(),
                           versions_.board(),
                           lessons_.board()};
        views::screen(desk, &beside);
    } else {
        views::screen(desk);
    }
    views::parts_list_view(ui, parts_list_.board(), asks_);
    place_.after_frame(ui);
    if (lessons_.demonstrated() != nullptr && !lessons_.demonstrated()->asks.empty()) {
        lessons_.take_shown();
        ui.outdate();
    }
    if (asks_.empty())
        return;
    const std::uint64_t before = session_.revision();
    do_asks();
    if (session_.revision() == before)
        ui.want_frame();
    else
        ui.outdate();
}

/// Steps are listed for who looks at them; of work on hold one line is shown everywhere.
void App::refresh_machine() {
    const bool looked_at = state_.place == views::Place::at_machine ||
                           (state_.place == views::Place::order && machine_.has_record());
    if (looked_at || machine_.is_on_hold() || machine_.board().is_held)
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
        sentences += (sentences.empty() ? "" : " ") + now.announcement();
    }
    if (more > 0)
        sentences += " And " + std::to_string(more) + " more parts.";
    if (!sentences.empty())
        ports_.announce(sentences);
}

void App::saving() { state_.saved = views::Saved::saving; }

void App::flush(const std::function<void()>& done) {
    jobs_.flush([this, done](bool stored) {
        if (stored)
            place_.flush(done);
    });
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
