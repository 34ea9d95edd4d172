// web/ui/views/layouts_*: a layout is filled in, looked at, put into the job, changed and taken
// out.

#include <doctest/doctest.h>

#include "headless_ui/app_page.h"

using namespace treadle;
using tests::AppPage;
using ui::Role;

namespace {

struct LayoutsPage {
    platform::headless::HeadlessPorts ports;
    AppPage page{ports};

    LayoutsPage() {
        page.press(Role::button, "Understood");
        page.press(Role::button, "Lay out parts");
        REQUIRE(page.find(Role::heading, "A new layout") != nullptr);
    }
    [[nodiscard]] const job::Job& job() { return page.app.session().job(); }
    void choose(std::string_view label, std::string_view option) {
        const ui::Node* node = page.find(Role::choice, label);
        REQUIRE(node != nullptr);
        for (std::size_t i = 0; i < node->options.size(); ++i)
            if (node->options[i] == option) {
                page.stage.choose(node->id, static_cast<int>(i));
                page.host.settle();
                return;
            }
        FAIL("no such option");
    }
    [[nodiscard]] bool says(std::string_view begin) {
        return page.find(Role::words, begin) != nullptr;
    }
};

} // namespace

TEST_CASE("a guard is looked at before anything is added, then its parts are there in one step") {
    LayoutsPage layouts;
    const std::size_t before = layouts.job().parts.size();
    CHECK(layouts.page.find(Role::picture, "Level guard") != nullptr);
    CHECK(layouts.says("Opening between pickets and at posts: "));
    CHECK(layouts.says("L1-P \u00D7 3: "));
    layouts.page.type("Run", "24 ft");
    CHECK(layouts.says("L1-P \u00D7 4: "));
    CHECK(layouts.job().parts.size() == before);
    layouts.page.press(Role::button, "Add to the job");
    CHECK(layouts.job().parts.size() == before + 4);
    REQUIRE(layouts.job().layouts.size() == 1);
    CHECK(layouts.says("Made by Guard or railing, level L1: "));
    layouts.page.press(Role::button, "Undo");
    CHECK(layouts.job().parts.size() == before);
    CHECK(layouts.job().layouts.empty());
}

TEST_CASE("a broken rule is said and does not stand in the way; nonsense does") {
    LayoutsPage layouts;
    layouts.page.type("Height", "20 in");
    CHECK(layouts.says(
        "Height of the top edge: 20 in, at least 36 in: breaks IRC, guard of a dwelling"));
    layouts.page.type("Spacing", "1 in");
    const ui::Node* key = layouts.page.find(Role::button, "Add to the job");
    REQUIRE(key != nullptr);
    layouts.page.press(Role::button, "Add to the job");
    CHECK(layouts.job().layouts.empty());
}

TEST_CASE("a made part leads to its layout, follows it, and can be detached") {
    LayoutsPage layouts;
    layouts.choose("What to make", "Ring");
    layouts.page.press(Role::button, "Add to the job");
    REQUIRE(layouts.job().layouts.size() == 1);
    const std::string id = layouts.job().layouts[0].made[0].part;
    const Length before = layouts.job().parts.back()->length;
    layouts.page.press(Role::button, "Open its layout");
    REQUIRE(layouts.page.find(Role::heading, "Layout L1") != nullptr);
    layouts.page.type("Diameter", "10 in");
    layouts.page.press(Role::button, "Make its parts follow");
    CHECK(layouts.job().parts.back()->id == id);
    CHECK(layouts.job().parts.back()->length > before);
    layouts.page.press(Role::button, "Back to the parts");
    layouts.page.press(Role::button, "Detach from its layout");
    CHECK(layouts.job().layouts[0].made[0].detached);
    CHECK(layouts.page.find(Role::button, "Detach from its layout") == nullptr);
    layouts.page.press(Role::button, "Open its layout");
    layouts.page.press(Role::button, "Remove it with its parts");
    CHECK(layouts.job().layouts.empty());
    CHECK(layouts.job().parts.back()->id == id); // it was detached, so it stays
}

TEST_CASE("every kind can be opened on the page and shows its drawing") {
    LayoutsPage layouts;
    const ui::Node* node = layouts.page.find(Role::choice, "What to make");
    REQUIRE(node != nullptr);
    const std::vector<std::string> kinds(node->options.begin(), node->options.end());
    CHECK(kinds.size() >= 15);
    for (const std::string& kind : kinds) {
        CAPTURE(kind);
        layouts.choose("What to make", kind);
        CHECK(layouts.page.find(Role::picture, "") != nullptr);
        CHECK(layouts.page.find(Role::heading, "Parts that it makes") != nullptr);
    }
}
