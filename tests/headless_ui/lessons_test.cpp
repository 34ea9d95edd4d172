// web/lesson_work, web/lesson_blocks, web/app_lessons and the view: lessons without a browser.

#include "archive/lesson_file.h"

#include <doctest/doctest.h>

#include "headless_ui/app_page.h"

using namespace treadle;
using tests::AppPage;
using ui::Role;

namespace {

struct LessonPage {
    platform::headless::HeadlessPorts ports;
    AppPage page{ports};

    LessonPage() {
        page.press(Role::button, "Understood");
        page.press(Role::tab, "Jobs");
        page.press(Role::button, "Lessons and demonstrations");
    }
    void open(const std::string& title) { page.press(Role::button, "Open lesson: " + title); }
    void next(int times = 1) {
        for (int i = 0; i < times; ++i)
            page.press(Role::button, "Next step");
    }
    [[nodiscard]] bool says(std::string_view part) {
        for (std::size_t i = 0; i < page.mirror().size(); ++i)
            if (page.mirror().at(i).name.find(part) != std::string::npos)
                return true;
        return false;
    }
    void answer(const std::string& typed) {
        page.type("Your answer", typed);
        page.press(Role::button, "Check the answer");
    }
};

constexpr const char* k_punching = "Punching force";

} // namespace

TEST_CASE("every lesson is listed, opens, and can be gone through step by step") {
    LessonPage lessons;
    const auto all = archive::read_built_in_lessons();
    REQUIRE(all.ok());
    for (const archive::BuiltInLesson& one : *all) {
        CAPTURE(one.id);
        REQUIRE(lessons.page.find(Role::button, "Open lesson: " + one.lesson.title) != nullptr);
        lessons.open(one.lesson.title);
        for (const lesson::Step& step : one.lesson.steps) {
            CAPTURE(step.title);
            CHECK(lessons.page.find(Role::heading, step.title) != nullptr);
            lessons.next();
        }
        lessons.page.press(Role::button, "All lessons");
    }
}

TEST_CASE("a right answer is right, a wrong one names its step, and a bare number is no answer") {
    LessonPage lessons;
    lessons.open(k_punching);
    lessons.next(2);
    // Set 1; the lesson itself says what is given.
    const auto all = archive::read_built_in_lessons();
    REQUIRE(all.ok());
    const lesson::Step& step = (*all)[0].lesson.steps[2];
    const auto catalog = archive::read_catalog();
    const auto key = lesson::key_of(step, 2, 1, {catalog->grades, catalog->sections});
    REQUIRE(key.ok());
    lessons.answer("28");
    CHECK(lessons.page.find(Role::message, "Right") == nullptr);
    lessons.answer(lesson::figure_text(key->slips[0].figure, {UnitSystem::metric, 16}));
    CHECK(lessons.page.find(Role::message, "Wrong step: Factor.") != nullptr);
    CHECK(lessons.ports.announced.back().rfind("Wrong step: Factor.", 0) == 0);
    lessons.answer(lesson::figure_text(key->answer, {UnitSystem::metric, 16}));
    CHECK(lessons.page.find(Role::message, "Right: ") != nullptr);
    lessons.page.press(Role::button, "All lessons");
    CHECK(lessons.says("1 of 3 answered, 1 right"));
}

TEST_CASE("the working is shown line by line and covered again") {
    LessonPage lessons;
    lessons.open(k_punching);
    lessons.next();
    CHECK_FALSE(lessons.says("Punching force:"));
    CHECK_FALSE(lessons.says("Published: 549.8 kN"));
    lessons.page.press(Role::button, "Show the next line");
    const std::size_t after_one = lessons.page.mirror().size();
    lessons.page.press(Role::button, "Show the next line");
    CHECK(lessons.page.mirror().size() == after_one + 1);
    lessons.page.press(Role::button, "Show all of it");
    CHECK(lessons.says("Published: 549.8 kN"));
    CHECK(lessons.says("Ours agrees within 0.05 kN."));
    lessons.page.press(Role::button, "Cover it");
    CHECK_FALSE(lessons.says("Published: 549.8 kN"));
}

TEST_CASE("a worked example is broken and says why it is stopped") {
    LessonPage lessons;
    lessons.open(k_punching);
    lessons.next();
    lessons.page.press(Role::button, "Break it");
    const ui::Node* stopped = lessons.page.find(Role::message, "Plate 3/4");
    REQUIRE(stopped != nullptr);
    CHECK(stopped->name.find("does not fit") != std::string::npos);
}

TEST_CASE("a verdict is predicted before the plan is shown") {
    LessonPage lessons;
    lessons.open("Order of set-ups");
    lessons.next(2);
    CHECK_FALSE(lessons.says("largest mitre of Bar shear"));
    lessons.page.press(Role::button, "It fits");
    CHECK(lessons.page.find(Role::message, "Wrong step: Missing figure.") != nullptr);
    lessons.page.press(Role::button, "It cannot be said");
    CHECK(lessons.page.find(Role::message, "Right: it cannot be said.") != nullptr);
    lessons.page.press(Role::button, "Show all of it");
    CHECK(lessons.says("largest mitre of Bar shear"));
}

TEST_CASE("a reset takes one exercise or all of them, and can be undone") {
    LessonPage lessons;
    lessons.open(k_punching);
    lessons.next(2);
    lessons.answer("1 ton");
    CHECK(lessons.page.find(Role::message, "That is not it") != nullptr);
    lessons.page.press(Role::button, "Reset this exercise");
    CHECK(lessons.page.find(Role::message, "That is not it") == nullptr);
    lessons.page.press(Role::button, "Undo the reset");
    CHECK(lessons.page.find(Role::message, "That is not it") != nullptr);
    lessons.page.press(Role::button, "Reset the lesson");
    CHECK(lessons.says("Step 1 of 7"));
    lessons.page.press(Role::button, "Undo the reset");
    CHECK(lessons.says("Step 3 of 7"));
    CHECK(lessons.page.find(Role::message, "That is not it") != nullptr);
}

TEST_CASE("other numbers are another set, for the whole lesson") {
    LessonPage lessons;
    lessons.open(k_punching);
    CHECK(lessons.says("Numbers of set 1."));
    lessons.page.press(Role::button, "Other numbers");
    CHECK(lessons.says("Numbers of set 2."));
    lessons.page.press(Role::button, "Undo the reset");
    CHECK(lessons.says("Numbers of set 1."));
}

TEST_CASE("results are printed, and nothing of a lesson is stored") {
    LessonPage lessons;
    const auto before = lessons.ports.transactions.size();
    const auto job = lessons.page.app.session().revision();
    lessons.open(k_punching);
    lessons.next(2);
    lessons.answer("1 ton");
    lessons.page.press(Role::button, "Print results");
    CHECK(lessons.ports.printed.find("1 ton") != std::string::npos);
    CHECK(lessons.ports.printed.find("not answered") != std::string::npos);
    CHECK(lessons.ports.transactions.size() == before);
    CHECK(lessons.page.app.session().revision() == job);
    for (const auto& kept : lessons.ports.kept) {
        CAPTURE(kept.first);
        CHECK(kept.second.find("1 ton") == std::string::npos);
    }
    lessons.page.press(Role::button, "All lessons");
    lessons.page.press(Role::button, "Back to the job");
    CHECK(lessons.page.find(Role::tab, "Jobs") != nullptr);
}

TEST_CASE("P presents with larger letters, marked, and gives the look back") {
    LessonPage lessons;
    lessons.open(k_punching);
    lessons.page.press(Role::button, "Presenter view");
    CHECK(lessons.page.find(Role::heading, "Presenter view: Punching force") != nullptr);
    CHECK(lessons.page.wishes.text_percent == 200);
    CHECK(lessons.page.find(Role::button, "Print results") == nullptr); // folded away
    lessons.page.press(Role::button, "Leave presenter view");
    CHECK(lessons.page.wishes.text_percent == 100);
    CHECK(lessons.page.find(Role::button, "Print results") != nullptr);
}

TEST_CASE("a demonstration is worked on beside the job, which stays as it is") {
    LessonPage lessons;
    const auto job = lessons.page.app.session().revision();
    lessons.open("Bolt holes");
    lessons.next(6);
    REQUIRE(lessons.page.find(Role::heading, "Look at it on the drawing") != nullptr);
    REQUIRE(lessons.page.find(Role::heading, "HB1") != nullptr);
    lessons.page.press(Role::button, "Begin it anew");
    CHECK(lessons.page.find(Role::heading, "HB1") != nullptr);
    lessons.page.press(Role::button, "All lessons");
    lessons.open("Shear ratings");
    lessons.next(6);
    CHECK(lessons.page.find(Role::heading, "What it can do") != nullptr);
    CHECK(lessons.page.app.session().revision() == job);
}

TEST_CASE("a lesson file is opened by the same key as a job, and a broken one is refused") {
    LessonPage lessons;
    lessons.page.press(Role::button, "Back to the job");
    lessons.page.press(Role::button, "Open file");
    REQUIRE(lessons.ports.pick);
    lessons.ports.pick({"mine.json",
                        R"({"format":"treadle-lesson","version":1,"units":"inch","title":"Mine",)"
                        R"("steps":[{"do":"read","title":"First","words":["Look."]}]})"});
    lessons.page.host.settle();
    CHECK(lessons.page.find(Role::heading, "Mine") != nullptr);
    CHECK(lessons.says("Look."));
    lessons.page.press(Role::button, "Copy a link");
    CHECK(lessons.says("There is no link to this lesson."));
    lessons.page.press(Role::button, "All lessons");
    CHECK(lessons.says("From mine.json."));
    lessons.page.press(Role::button, "Back to the job");
    lessons.page.press(Role::button, "Open file");
    lessons.ports.pick({"bad.json", R"({"format":"treadle-lesson","version":9})"});
    lessons.page.host.settle();
    CHECK(lessons.says("bad.json was not opened."));
}

TEST_CASE("a link opens a lesson with its numbers at its step, and wants an answer first") {
    platform::headless::HeadlessPorts ports;
    ports.fragment = "lesson=1-punching-force&seed=7&step=3&hide=answers";
    AppPage page(ports);
    page.press(Role::button, "Understood");
    const auto says = [&](std::string_view part) {
        for (std::size_t i = 0; i < page.mirror().size(); ++i)
            if (page.mirror().at(i).name.find(part) != std::string::npos)
                return true;
        return false;
    };
    CHECK(says("Step 3 of 7"));
    CHECK(says("Numbers of set 7."));
    const ui::Node* reveal = page.find(Role::button, "Show the next line");
    REQUIRE(reveal != nullptr);
    CHECK_FALSE(reveal->enabled);
    page.type("Your answer", "1 ton");
    page.press(Role::button, "Check the answer");
    REQUIRE(page.find(Role::button, "Show the next line") != nullptr);
    CHECK(page.find(Role::button, "Show the next line")->enabled);
}
