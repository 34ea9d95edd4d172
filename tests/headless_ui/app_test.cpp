// The app with its store: what lasts over a reload, and how much of a long job is drawn.

#include <doctest/doctest.h>

#include <cmath>
#include <string>

#include "app_page.h"

using namespace treadle;
using platform::headless::HeadlessPorts;
using tests::AppPage;
using ui::Role;

namespace {

constexpr std::size_t k_parts = 1000;

void open_long_job(AppPage& page) {
    page.press(Role::button, "Understood");
    page.press(Role::tab, "Sheets");
    page.press(Role::button, "Open file");
    REQUIRE(page.ports.pick);
    page.ports.pick({"long.json", tests::long_job(k_parts)});
    page.host.settle();
    REQUIRE(page.app.session().job().parts.size() == k_parts);
}

} // namespace

TEST_CASE("the page shows nothing before its store has answered, and then the demo job") {
    HeadlessPorts ports;
    AppPage page(ports);
    CHECK(page.mirror().size() > 10);
    CHECK(page.find(Role::button, "Understood") != nullptr);
    REQUIRE(ports.kept.size() == 1); // on how many days the page was opened, and no job
    CHECK(ports.kept.begin()->first == "days");
}

TEST_CASE("an edit, undo and the place are there in the next page") {
    HeadlessPorts ports;
    std::string mark;
    {
        AppPage page(ports);
        page.press(Role::button, "Understood");
        mark = page.app.session().job().parts.front()->mark;
        page.press(Role::button, "Change sizes of " + mark);
        page.type("Pieces", "41");
        page.type("Pieces", "42");
        page.type("Thickness", "3 furlongs");
        REQUIRE(page.app.session().job().parts.front()->count == 42);
        page.stage.key({"z", true, false, false});
        page.host.settle();
        REQUIRE(page.app.session().job().parts.front()->count == 41);
        page.type("Thickness", "3 furlongs");
        ports.leave();
    }
    AppPage page(ports);
    const edit::Session& session = page.app.session();
    CHECK(session.job().parts.front()->count == 41);
    CHECK(session.can_undo());
    CHECK(session.can_redo());
    CHECK(page.find(Role::button, "Understood") == nullptr);
    const ui::Node* thickness = page.find(Role::number, "Thickness");
    REQUIRE(thickness != nullptr);
    CHECK(thickness->value == "3 furlongs");
    CHECK_FALSE(thickness->error.empty());
    page.stage.key({"y", true, false, false});
    page.host.settle();
    CHECK(session.job().parts.front()->count == 42);
}

TEST_CASE("wishes for the screen are used at once and in the next page") {
    HeadlessPorts ports;
    {
        AppPage page(ports);
        page.press(Role::button, "Understood");
        page.press(Role::tab, "Help");
        page.press(Role::row, "Screen");
        page.press(Role::row, "Sun");
        page.press(Role::row, "150 %");
        page.press(Role::row, "Left");
        CHECK(page.wishes.theme == ui::ThemeKind::sun);
    }
    AppPage page(ports);
    CHECK(page.wishes.theme == ui::ThemeKind::sun);
    CHECK(page.wishes.text_percent == 150);
    CHECK(page.wishes.hand == views::Hand::left);
    CHECK(page.app.state().screen == page.wishes);
}

TEST_CASE("of a thousand parts only what is about in sight is drawn, in every place") {
    HeadlessPorts ports;
    AppPage page(ports);
    open_long_job(page);
    for (const char* place :
         {"Jobs", "Parts", "Order", "Bars", "Limits", "Shop", "Sheets", "Help"}) {
        page.press(Role::tab, place);
        CAPTURE(place);
        CHECK(page.mirror().size() > 10);
        CHECK(page.mirror().size() < 400);
    }
}

TEST_CASE("who goes from row to row gets through a list of a thousand") {
    HeadlessPorts ports;
    AppPage page(ports);
    open_long_job(page);
    page.press(Role::tab, "Parts");
    const std::string list = "parts";
    const ui::Node* area = page.mirror().find(list);
    REQUIRE(area != nullptr);
    const float height = area->rect.h;
    for (std::size_t i = 0; i < k_parts; ++i) {
        const ui::Node* row = page.mirror().find("copy" + std::to_string(i));
        REQUIRE(row != nullptr);
        // As a browser brings the element into sight that gets the focus.
        const float offset = page.mirror().find(list)->offset;
        const float below = row->rect.bottom() - offset - height;
        if (below > 0)
            page.stage.scrolled(list, offset + below);
        page.stage.focus(row->id);
        page.host.settle();
    }
}
