// Versions of the page: versions.cpp, version_bar.cpp and what App stores before a switch.

#include "platform/headless/headless.h"
#include "ui/views/version_bar.h"

#include <doctest/doctest.h>

#include <algorithm>
#include <string>

#include "app_page.h"

using namespace treadle;
using platform::VersionNews;
using platform::headless::HeadlessPorts;
using tests::AppPage;

namespace {

bool says(AppPage& page, const std::string& words) {
    for (std::size_t i = 0; i < page.mirror().size(); ++i) {
        const ui::Node& node = page.mirror().at(i);
        if (node.name.find(words) != std::string::npos ||
            node.value.find(words) != std::string::npos)
            return true;
    }
    return false;
}

void tell(AppPage& page, const VersionNews& news) {
    page.ports.news(news);
    page.host.settle();
}

void start(AppPage& page) { page.press(ui::Role::button, "Understood"); }

} // namespace

TEST_CASE("a version that waits gets one line with a key, and is announced once") {
    HeadlessPorts ports;
    AppPage page(ports);
    start(page);
    tell(page, {VersionNews::Offline::works, true, false, false, false});
    CHECK_FALSE(says(page, "new version"));
    CHECK(says(page, "works offline"));
    tell(page, {VersionNews::Offline::works, true, true, false, false});
    tell(page, {VersionNews::Offline::works, true, true, false, false});
    CHECK(says(page, "A new version is ready."));
    CHECK(std::count(ports.announced.begin(), ports.announced.end(), "A new version is ready.") ==
          1);
    CHECK(ports.switches == 0);
    page.press(ui::Role::button, "Switch now");
    CHECK(ports.switches == 1);
    tell(page, {VersionNews::Offline::works, true, true, true, false});
    CHECK(page.find(ui::Role::button, "Switch now") == nullptr);
    tell(page, {VersionNews::Offline::works, true, true, false, true});
    CHECK(says(page, "not stored"));
    CHECK(page.find(ui::Role::button, "Switch now") != nullptr);
}

TEST_CASE("an address that keeps no pages says so until it is dismissed, and offers the copy") {
    HeadlessPorts ports;
    {
        AppPage page(ports);
        start(page);
        tell(page, {VersionNews::Offline::needs_host, false, false, false, false});
        CHECK(says(page, "online only"));
        CHECK(says(page, "take the one-file copy"));
        page.press(ui::Role::button, "Take the one-file copy");
        REQUIRE(ports.handed.size() == 1);
        CHECK(ports.handed.front() == platform::PagePart::one_file_copy);
        page.press(ui::Role::button, "Dismiss this line; Help has it under About");
    }
    AppPage again(ports);
    tell(again, {VersionNews::Offline::needs_host, false, false, false, false});
    CHECK(says(again, "online only"));
    CHECK_FALSE(says(again, "take the one-file copy"));
}

TEST_CASE("the one-file copy says that its store is no record, with a key to save the file") {
    HeadlessPorts ports;
    ports.made.is_one_file = true;
    ports.made.can_hand_copy = false;
    AppPage page(ports);
    start(page);
    tell(page, {VersionNews::Offline::not_known, true, false, false, false});
    CHECK(says(page, "no record"));
    page.press(ui::Role::button, "Save the file of this job");
    REQUIRE(ports.downloads.size() == 1);
    CHECK(ports.downloads.front().first.find(".json") != std::string::npos);
}

TEST_CASE("before a switch the edits and the typing are stored, for this tab too") {
    HeadlessPorts ports;
    AppPage page(ports);
    start(page);
    page.press(ui::Role::tab, "Sheets");
    ports.type("a/field", "77");
    bool done = false;
    ports.flush([&] { done = true; });
    CHECK(done);
    CHECK(ports.in_tab.find("77") != std::string::npos);
    CHECK(ports.kept.at("place") == ports.in_tab);
    ports.kept["place"] = ""; // another tab was somewhere else
    AppPage next(ports);
    CHECK(next.app.state().place == views::Place::sheets);
    REQUIRE_FALSE(ports.typed_again.empty());
    CHECK(ports.typed_again.back().second == "77");
    CHECK(ports.in_tab.empty());
}

TEST_CASE("what cannot be stored holds a switch back") {
    HeadlessPorts ports;
    AppPage page(ports);
    start(page);
    ports.store_refuses = true;
    page.press(ui::Role::tab, "Parts");
    page.press(ui::Role::button, "Change sizes of HB1");
    page.type("Thickness", "7/16");
    bool done = false;
    ports.flush([&] { done = true; });
    for (int i = 0; i < 20; ++i)
        ports.pass_time();
    CHECK_FALSE(done);
}

TEST_CASE("About names version, build and sources, and hands out the licences") {
    HeadlessPorts ports;
    AppPage page(ports);
    start(page);
    page.press(ui::Role::tab, "Help");
    page.press(ui::Role::row, "About");
    CHECK(says(page, "Version 1.2.3, build build-1, made from sources sources-1."));
    page.press(ui::Role::button, "Read the licences");
    REQUIRE(ports.handed.size() == 1);
    CHECK(ports.handed.front() == platform::PagePart::licences);
}
