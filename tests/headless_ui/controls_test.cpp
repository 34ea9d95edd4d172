#include <doctest/doctest.h>

#include "bench_page.h"

using namespace treadle;
using tests::BenchPage;

TEST_CASE("the mirror presses by id, as a key or a screen reader does") {
    BenchPage page;
    page.stage.activate("open");
    page.host.settle();
    CHECK(page.presses["open"] == 1);
    page.stage.activate("no such thing");
    page.host.settle();
    CHECK(page.presses.size() == 1);
}

TEST_CASE("a key that is not enabled answers to nobody and says why") {
    BenchPage page;
    page.host.tap(550, 45);
    page.stage.activate("dead");
    page.host.settle();
    CHECK(page.presses.empty());
    CHECK(page.node("dead").note == "Nothing to do");
    CHECK_FALSE(page.node("dead").enabled);
}

TEST_CASE("a text that was committed reaches its field and no other") {
    BenchPage page;
    page.stage.commit_text("thickness", "20 mm");
    page.host.settle();
    CHECK(page.thickness == "20 mm");
    CHECK(page.node("thickness").value == "20 mm");
}

TEST_CASE("an error stands in the field's node and as a message of its own") {
    BenchPage page;
    page.error = "Not a length";
    page.ports.request_frame("test", 1);
    page.host.settle();
    CHECK(page.node("thickness").error == "Not a length");
    CHECK(page.node("thickness.error").name == "Not a length");
    CHECK(page.node("thickness.error").role == ui::Role::message);
}

TEST_CASE("a choice takes only what it offers") {
    BenchPage page;
    page.stage.choose("material", 2);
    page.host.settle();
    CHECK(page.material == 2);
    for (const int wrong : {3, -1}) {
        page.stage.choose("material", wrong);
        page.host.settle();
        CHECK(page.material == 2);
    }
}

TEST_CASE("under a dialog nothing answers to a pointer") {
    BenchPage page;
    page.dialog = true;
    page.ports.request_frame("test", 1);
    page.host.settle();
    page.host.tap(340, 45);
    page.host.tap(60, 300);
    CHECK(page.presses.empty());
    page.stage.wheel({60, 300, 0, 2});
    page.host.settle();
    CHECK(page.offset() == 0);
    page.host.tap(200, 330);
    CHECK(page.presses["close"] == 1);
}

TEST_CASE("a key that comes three times between two frames is three presses") {
    BenchPage page;
    for (int i = 0; i < 3; ++i)
        CHECK(page.stage.key({"z", true, false, false}));
    page.host.settle();
    CHECK(page.presses["undo"] == 3);
}

TEST_CASE("only keys that the page asked for are taken from the browser") {
    BenchPage page;
    CHECK(page.stage.key({"z", true, false, false}));
    page.host.settle();
    CHECK(page.presses["undo"] == 1);
    CHECK_FALSE(page.stage.key({"z", false, false, false}));
    CHECK_FALSE(page.stage.key({"t", true, false, false}));
    CHECK_FALSE(page.stage.key({"z", true, false, true}));
}

TEST_CASE("targets are as high as their density asks") {
    BenchPage shop(true);
    CHECK(shop.node("save").rect.h >= 56);
    CHECK(shop.node("thickness").rect.h >= 56);
    CHECK(shop.node("material").rect.h >= 56);
    CHECK(shop.node("row0").rect.h >= 56);
    BenchPage desk(false);
    CHECK(desk.node("save").rect.h >= 32);
    CHECK(desk.node("open").rect.x - (desk.node("dead").rect.x + desk.node("dead").rect.w) >= 8);
}

TEST_CASE("a row scrolled out of sight does not answer, and its node stays for the keyboard") {
    BenchPage page;
    page.stage.scrolled("parts", 1000);
    page.host.settle();
    CHECK(page.offset() == 1000);
    CHECK(page.node("row0").name.find("row0") == 0);
    page.host.tap(100, 30);
    CHECK(page.presses["row0"] == 0);
    // (1000 + 30) / 84 = 12.26, clear of the room between two rows
    CHECK(page.presses["row12"] == 1);
}

TEST_CASE("a list that grows shorter does not stay scrolled past its end") {
    BenchPage page;
    page.stage.scrolled("parts", 2000);
    page.host.settle();
    page.rows = 3;
    page.ports.request_frame("test", 1);
    page.host.settle();
    CHECK(page.offset() == 0);
}

TEST_CASE("a row says what the words of its first line left, so that nothing is drawn over them") {
    const auto rest_of = [](const std::string& title, float wide) {
        float rest = -1;
        platform::headless::HeadlessPorts ports;
        ui::Stage stage{ports, [&](ui::Ui& ui) {
                            ui::ListRow row;
                            row.title = title;
                            row.beside = "\u00d7 14";
                            row.slots_width = 100;
                            const ui::Rect place{0, 0, wide, 80};
                            rest = ui::list_row(ui, "row", place, row).first_rest;
                        }};
        platform::headless::Host host{ports, stage};
        host.open({800, 600, 1, true});
        host.settle();
        return rest;
    };
    const float shortest = rest_of("HB1", 300);
    CHECK(shortest > rest_of("L1-UK12", 300));
    CHECK(rest_of("HB1", 340) == doctest::Approx(shortest + 40));
    const std::string longest(40, 'W');
    CHECK(rest_of(longest, 300) >= 0);
    CHECK(rest_of(longest, 300) < 24); // under a letter of it: its count is there too
    CHECK(rest_of("HB1", 120) >= 0);
}
