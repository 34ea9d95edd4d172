// What is kept of the screen: kept_text, screen_text, place_text, place_keeper.

#include "platform/headless/headless.h"

#include <doctest/doctest.h>

#include <string>

#include "bench_page.h"
#include "kept_text.h"
#include "place_keeper.h"
#include "place_text.h"
#include "screen_text.h"

using namespace treadle;

TEST_CASE("lines read back as they were written, whatever the values hold") {
    const std::vector<web::KeptLine> lines{
        {"a", ""}, {"b", "two words"}, {"c", "back\\slash\nand line"}, {"a", " \\n "}};
    const auto read = web::read_lines("title 1", web::write_lines("title 1", lines));
    REQUIRE(read.has_value());
    REQUIRE(read->size() == lines.size());
    for (std::size_t i = 0; i < lines.size(); ++i) {
        CHECK((*read)[i].name == lines[i].name);
        CHECK((*read)[i].value == lines[i].value);
    }
}

TEST_CASE("lines of another title or with something wrong are none") {
    CHECK_FALSE(web::read_lines("title 1", "").has_value());
    CHECK_FALSE(web::read_lines("title 1", "title 2\na b\n").has_value());
    CHECK_FALSE(web::read_lines("title 1", "title 1\na b").has_value());
    CHECK_FALSE(web::read_lines("title 1", "title 1\nab\n").has_value());
    CHECK_FALSE(web::read_lines("title 1", "title 1\n b\n").has_value());
    CHECK_FALSE(web::read_lines("title 1", "title 1\na \\x\n").has_value());
    CHECK(web::read_lines("title 1", "title 1\n")->empty());
}

TEST_CASE("every wish for the screen reads back, and what is not known is as the device has it") {
    using ui::Density;
    using ui::ThemeKind;
    const std::optional<ThemeKind> themes[] = {
        std::nullopt, ThemeKind::light, ThemeKind::dark, ThemeKind::sun};
    const std::optional<Density> densities[] = {std::nullopt, Density::shop, Density::desk};
    for (const auto theme : themes)
        for (const auto density : densities)
            for (const int percent : views::k_text_percents)
                for (const auto hand : {views::Hand::right, views::Hand::left})
                    for (const auto pad : {views::PadWish::by_touch,
                                           views::PadWish::always,
                                           views::PadWish::never}) {
                        const views::ScreenWishes wishes{theme, density, percent, hand, pad};
                        CHECK(web::read_screen_text(web::screen_text(wishes)) == wishes);
                    }
    const auto other = web::read_screen_text("treadle-screen 1\ntheme plaid\ntext 90\nhand left\n");
    REQUIRE(other.has_value());
    CHECK(*other == views::ScreenWishes{{}, {}, 100, views::Hand::left, views::PadWish::by_touch});
    CHECK_FALSE(web::read_screen_text("").has_value());
    CHECK_FALSE(web::read_screen_text("treadle-screen 2\ntheme dark\n").has_value());
}

TEST_CASE("a place reads back with its choices, scrolls, refused and unfinished entries") {
    views::State state;
    state.place = views::Place::limits;
    state.part = "p 12";
    state.operation = 3;
    state.panel = views::Panel::operation_form;
    state.shape = views::Shape::bends;
    state.bend_step = 2;
    state.detail_open = state.limits_machines = true;
    state.limits_place = 4;
    state.limits_grade = "a36";
    state.open_bar = "2/bar-1";
    state.shop_page = 5;
    state.tool = 6;
    state.faults = {{"part/x/length", "12 furlongs", "This unit is not known."},
                    {"shop/y", "", "This is missing."}};
    const web::PlaceBeside beside{{{"parts", 120}, {"order/view", 33}}, "panel/length", "3 1/"};
    views::State read;
    web::PlaceBeside read_beside;
    REQUIRE(web::read_place_text(web::place_text(state, beside), read, read_beside));
    CHECK(web::place_text(read, read_beside) == web::place_text(state, beside));
    CHECK(read.place == views::Place::limits);
    CHECK(read.part == "p 12");
    CHECK(read.operation == 3);
    REQUIRE(read.faults.size() == 2);
    CHECK(read.faults[0].typed == "12 furlongs");
    CHECK(read_beside.scrolls == beside.scrolls);
    CHECK(read_beside.typed == "3 1/");
}

TEST_CASE("a place of no known form changes nothing, and a line that makes no sense is left out") {
    views::State state;
    web::PlaceBeside beside;
    CHECK_FALSE(web::read_place_text("treadle-place 2\nplace shop\n", state, beside));
    CHECK(state.place == views::Place::parts);
    CHECK(web::read_place_text("treadle-place 1\nplace nowhere\nshop-page -1\noperation 1.5\n"
                               "tool many\nscroll far parts\nscroll 3\nfault-reason x\nnew line\n",
                               state,
                               beside));
    CHECK(state.place == views::Place::parts);
    CHECK(state.shop_page == 0);
    CHECK(state.operation == -1);
    CHECK(state.tool == 0);
    CHECK(state.faults.empty());
    CHECK(beside.scrolls.empty());
}

TEST_CASE("the place is stored a second after the last change and when the page is left") {
    platform::headless::HeadlessPorts ports;
    views::State state;
    web::PlaceKeeper keeper(ports, state);
    bool answered = false;
    keeper.load([&] { answered = true; });
    REQUIRE(answered);
    keeper.restore();
    CHECK(ports.kept.empty());
    state.place = views::Place::order;
    ports.type("panel/length", "12");
    CHECK(ports.kept.empty());
    CHECK(ports.calls.size() == 1);
    ports.pass_time();
    REQUIRE(ports.kept.count("place") == 1);
    state.place = views::Place::shop;
    ports.leave();
    CHECK(ports.kept["place"].find("place shop") != std::string::npos);
    CHECK(ports.pacer.drawn() == 0);
    CHECK_FALSE(ports.pacer.wants_frame());

    views::State later;
    web::PlaceKeeper again(ports, later);
    again.load([] {});
    again.restore();
    CHECK(later.place == views::Place::shop);
    REQUIRE(ports.typed_again.size() == 1);
    CHECK(ports.typed_again[0] == std::pair<std::string, std::string>{"panel/length", "12"});
}

TEST_CASE("an area that was not drawn yet opens where it stood") {
    tests::BenchPage page;
    tests::BenchPage later;
    page.host.drag(100, 500, 100, 200, 8);
    page.host.settle();
    REQUIRE(page.offset() > 100);
    CHECK(page.stage.ui().scroll_offsets()["parts"] ==
          doctest::Approx(page.offset()).epsilon(0.01));
    platform::headless::HeadlessPorts ports;
    ui::Stage fresh(ports, [&](ui::Ui& ui) { later.draw(ui); });
    fresh.ui().scroll_to("parts", 333);
    platform::headless::Host host(ports, fresh);
    host.open({800, 600, 1, true});
    REQUIRE(fresh.ui().semantics().find("parts") != nullptr);
    CHECK(fresh.ui().semantics().find("parts")->offset == 333);
}
