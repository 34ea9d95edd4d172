// Lessons in the page: part of app.h. They lie beside the jobs and touch none of them.

#include "sheet/lesson_sheet.h"

#include <utility>

#include "app.h"
#include "ui/views/paper_options.h"

namespace treadle::web {

namespace {

using Do = views::LessonAsk::Do;

/// Twice the letters, black on white.
constexpr int k_presenter_percent = 200;

} // namespace

void App::wire_lessons() {
    lessons_.source_title = [this](std::string_view key) { return source_title(key); };
    lessons_.announce = [this](const std::string& words) { ports_.announce(words); };
}

void App::show_lessons() {
    if (state_.place != views::Place::lessons)
        state_.place_before = state_.place;
    state_.place = views::Place::lessons;
    use_presenter_look();
    redraw("lesson");
}

void App::leave_lessons() {
    state_.place = state_.place_before == views::Place::lessons ||
                           state_.place_before == views::Place::at_machine
                       ? views::Place::jobs
                       : state_.place_before;
}

void App::use_presenter_look() {
    const bool wants = state_.place == views::Place::lessons && lessons_.board().is_presenting;
    if (std::exchange(has_presenter_look_, wants) == wants)
        return;
    views::ScreenWishes look = state_.screen;
    if (wants) {
        look.theme = ui::ThemeKind::sun;
        look.text_percent = k_presenter_percent;
    }
    use_screen_(look);
}

void App::take(const views::LessonAsk& ask) {
    switch (ask.what) {
    case Do::enter:
        lessons_.begin();
        return show_lessons();
    case Do::leave:
        return leave_lessons();
    case Do::print:
        return print_results();
    case Do::copy_link:
        return copy_lesson_link();
    default:
        lessons_.take(ask);
        use_presenter_look();
    }
}

void App::print_results() {
    sheet::SheetOptions options;
    options.source_title = [this](std::string_view key) { return source_title(key); };
    options.paper = views::paper_of(state_.paper);
    const lesson::Results results = lessons_.results();
    ports_.print_html("Results: " + results.title, sheet::lesson_html(results, options));
}

void App::copy_lesson_link() {
    const auto fragment = lessons_.link();
    auto address = fragment ? archive::link_address(ports_.page_address(), *fragment) : fragment;
    if (!address)
        return refused("There is no link to this lesson.", address.refusal());
    views::CopyText copy{"The link to this lesson, with these numbers,",
                         std::move(address).value()};
    take(copy);
}

void App::open_lesson_file(const std::string& name, std::string_view bytes, bool on_shelf) {
    if (const auto refusal = lessons_.open_file(name, bytes, on_shelf))
        return refused(name + " was not opened.", *refusal);
    show_lessons();
}

/// A lesson that came with the page, or one that lies on the shelf beside it.
void App::open_wished_lesson(const archive::LinkWishes& wishes) {
    if (lessons_.open_wished(wishes))
        return show_lessons();
    const std::string file = wishes.lesson;
    ports_.fetch_beside(file,
                        static_cast<int>(archive::k_largest_lesson),
                        [this, wishes](const platform::LoadedBytes& answer) {
                            if (answer.result != platform::StoreResult::done)
                                return say("The lesson of this link is not here.",
                                           "The host does not give it now.");
                            open_lesson_file(wishes.lesson, answer.bytes, true);
                            if (lessons_.open_wished(wishes))
                                show_lessons();
                        });
}

} // namespace treadle::web
