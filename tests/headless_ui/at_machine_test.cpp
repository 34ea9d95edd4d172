// The view at the machine on the demo job: sizes, keys that stay put, and what is kept.

#include "archive/archive.h"
#include "archive/progress_file.h"

#include "assets/embedded.h"
#include "platform/headless/headless.h"
#include "ui/views/at_machine.h"
#include "ui/widgets/stage.h"

#include <doctest/doctest.h>

#include <algorithm>
#include <cmath>
#include <memory>
#include <string>
#include <vector>

#include "app.h"

namespace {

using namespace treadle;

constexpr float k_tablets[][2] = {{768, 1024}, {800, 1280}, {1024, 768}, {1280, 800}};
constexpr const char* k_keys[] = {"at-machine/back",
                                  "at-machine/minus",
                                  "at-machine/count",
                                  "at-machine/plus",
                                  "at-machine/next"};

/// The whole page, headless, at the machine.
struct Page {
    platform::headless::HeadlessPorts ports;
    web::App app;
    ui::Stage stage{ports, [this](ui::Ui& ui) { app.draw(ui); }};
    platform::headless::Host host{ports, stage};

    explicit Page(float width = 800,
                  float height = 1280,
                  const platform::headless::HeadlessPorts* kept = nullptr,
                  const char* demo = "demo/demo-inch.json")
        : app(ports,
              std::make_shared<const job::Catalog>(archive::read_catalog().value()),
              archive::read_file(assets::embedded(demo).value_or("")).value(),
              [](const views::ScreenWishes&) {}) {
        ports.kept["notice"] = "accepted";
        if (kept != nullptr)
            ports.kept = kept->kept;
        app.start();
        host.open({width, height, 1, true});
    }
    void to_the_machine() {
        press("places/Order");
        press("order/to-the-machine");
        REQUIRE(app.state().place == views::Place::at_machine);
    }
    [[nodiscard]] const ui::Node* node(const std::string& id) {
        return stage.ui().semantics().find(id);
    }
    [[nodiscard]] const ui::Node& must(const std::string& id) {
        const ui::Node* found = node(id);
        REQUIRE_MESSAGE(found != nullptr, id);
        return *found;
    }
    /// By its whole id or by the end of it.
    void press(const std::string& id) {
        for (std::size_t i = 0; i < stage.ui().semantics().size(); ++i) {
            const std::string known = stage.ui().semantics().at(i).id;
            const bool same = known.size() >= id.size() &&
                              known.compare(known.size() - id.size(), id.size(), id) == 0;
            if (!same)
                continue;
            stage.activate(known);
            host.settle();
            return;
        }
        FAIL("nothing to press: " << id);
    }
    void key(const char* name) {
        stage.key({name, false, false, false});
        host.settle();
    }
    [[nodiscard]] int steps() {
        const std::string place = must_words("step 1 of ");
        return std::stoi(place.substr(place.rfind(' ') + 1));
    }
    [[nodiscard]] std::string must_words(const std::string& begins) {
        for (std::size_t i = 0; i < stage.ui().semantics().size(); ++i)
            if (stage.ui().semantics().at(i).name.rfind(begins, 0) == 0)
                return stage.ui().semantics().at(i).name;
        FAIL("nothing begins with " << begins);
        return {};
    }
    [[nodiscard]] std::string count() { return must("at-machine/count").name; }
    [[nodiscard]] job::Progress record() {
        return archive::read_progress(ports.kept.at("progress/guest")).value().front();
    }
};

bool apart(const ui::Rect& a, const ui::Rect& b, float gap) {
    return a.right() + gap <= b.x + 0.01F || b.right() + gap <= a.x + 0.01F ||
           a.bottom() + gap <= b.y + 0.01F || b.bottom() + gap <= a.y + 0.01F;
}

} // namespace

TEST_CASE("figures of every step are high enough for two metres, and no key moves") {
    for (const auto& size : k_tablets) {
        CAPTURE(size[0]);
        Page page(size[0], size[1]);
        page.to_the_machine();
        std::vector<ui::Rect> keys;
        for (const char* id : k_keys)
            keys.push_back(page.must(id).rect);
        const int steps = page.steps();
        REQUIRE(steps > 40);
        int figures = 0;
        for (int step = 1; step <= steps; ++step) {
            CAPTURE(step);
            for (const char* id : {"at-machine/figure-0", "at-machine/figure-1"})
                if (const ui::Node* figure = page.node(id)) {
                    ++figures;
                    CHECK(figure->rect.h >= 96);
                    CHECK(figure->rect.right() <= size[0]);
                }
            for (std::size_t i = 0; i < keys.size(); ++i)
                CHECK(page.must(k_keys[i]).rect == keys[i]);
            if (step < steps)
                page.press("at-machine/next");
        }
        CHECK(figures > steps);
    }
}

TEST_CASE("keys are large, inside the screen and apart, for both hands, down to 320 wide") {
    for (const auto& size : {std::pair{768.0F, 1024.0F},
                             {800.0F, 1280.0F},
                             {1024.0F, 768.0F},
                             {1280.0F, 800.0F},
                             {390.0F, 844.0F},
                             {320.0F, 568.0F},
                             {700.0F, 500.0F}})
        for (const bool left : {false, true}) {
            CAPTURE(size.first);
            CAPTURE(left);
            Page page(size.first, size.second);
            const ui::Rect screen{0, 0, size.first, size.second};
            const auto keys = views::at_machine_keys(page.stage.ui(), screen, left);
            const ui::Rect list[] = {keys.back, keys.minus, keys.plus, keys.next, keys.count};
            for (std::size_t i = 0; i < 5; ++i) {
                CHECK(list[i].h >= 80);
                CHECK(list[i].w >= 56);
                CHECK(list[i].right() <= size.first + 0.01F);
                CHECK(list[i].x >= 0);
                CHECK(list[i].bottom() <= size.second);
                for (std::size_t other = 0; other < i; ++other)
                    CHECK(apart(list[i], list[other], 12));
            }
            CHECK((keys.next.x > keys.back.x) == !left);
            CHECK((keys.plus.x > keys.minus.x) == !left);
        }
}

TEST_CASE("a tap ticks the next line, the opposite takes it back, and each is in the store") {
    Page page;
    page.to_the_machine();
    CHECK(page.ports.awake);
    CHECK(page.count().rfind("0 of ", 0) == 0);
    page.press("at-machine/plus");
    CHECK(page.count().rfind("1 of ", 0) == 0);
    REQUIRE(page.record().steps.size() == 1);
    CHECK(page.record().steps[0].ticked == 1);
    CHECK(page.record().open);
    page.press("at-machine/minus");
    CHECK(page.count().rfind("0 of ", 0) == 0);
    CHECK(page.record().steps.empty());
    page.press("at-machine/leave");
    CHECK(page.app.state().place == views::Place::order);
    CHECK_FALSE(page.ports.awake);
    CHECK_FALSE(page.record().open);
}

TEST_CASE("ticks carry their figure") {
    Page page;
    page.to_the_machine();
    bool ram = false;
    bool stop = false;
    for (int i = 0; i < 60 && !(ram && stop); ++i) {
        for (std::size_t n = 0; n < page.stage.ui().semantics().size(); ++n) {
            const std::string& name = page.stage.ui().semantics().at(n).name;
            ram = ram || name.find("tick: Ram up: ") != std::string::npos;
            stop = stop || name.find("now: Stop set to ") != std::string::npos;
        }
        page.press("at-machine/next");
    }
    CHECK(ram);
    CHECK(stop);
}

TEST_CASE("the keyboard does all of it, and Escape holds") {
    Page page;
    page.to_the_machine();
    page.key("ArrowRight");
    CHECK(page.must_words("step 2 of ").rfind("step 2", 0) == 0);
    page.key(" ");
    page.key("Enter");
    CHECK(page.count().rfind("2 of ", 0) == 0);
    page.key("Backspace");
    CHECK(page.count().rfind("1 of ", 0) == 0);
    page.key("ArrowLeft");
    CHECK(page.must_words("step 1 of ").rfind("step 1", 0) == 0);
    page.key("ArrowRight");
    page.key("Escape");
    CHECK(page.must_words("On hold since") == "On hold since 26 Nov, 10:41");
    CHECK(page.record().held);
    CHECK(page.must_words("You were at step 2: 1 of ").find("ticked.") != std::string::npos);
    page.key("Enter");
    CHECK(page.count().rfind("1 of ", 0) == 0);
    CHECK_FALSE(page.record().held);
}

TEST_CASE("work on hold is said under every place, with the way back to it") {
    Page page;
    page.to_the_machine();
    page.press("at-machine/hold");
    page.press("at-machine/leave");
    for (const char* place : {"places/Parts", "places/Shop", "places/Order"}) {
        page.press(place);
        CHECK(page.must_words("On hold at the machine since ").find("step 1") != std::string::npos);
    }
    page.press("on-hold/go-on");
    CHECK(page.app.state().place == views::Place::at_machine);
    CHECK(page.must_words("On hold since ").size() > 0);
}

TEST_CASE("a page that was closed in the middle opens at the same step and count") {
    Page before;
    before.to_the_machine();
    for (int i = 0; i < 3; ++i)
        before.press("at-machine/next");
    before.press("at-machine/plus");
    const std::string count = before.count();
    Page after(800, 1280, &before.ports);
    CHECK(after.app.state().place == views::Place::at_machine);
    CHECK(after.must_words("You were at step 4: 1 of ").find("10:41") != std::string::npos);
    CHECK(after.ports.awake);
    after.press("at-machine/next"); // "Go on" stands there
    CHECK(after.count() == count);
    CHECK(after.must_words("step 4 of ").rfind("step 4", 0) == 0);
}

TEST_CASE("checking from the start is at the set-up, with its lines to be ticked again") {
    Page before;
    before.to_the_machine();
    before.press("at-machine/plus");
    before.press("at-machine/next");
    before.press("at-machine/plus");
    Page after(800, 1280, &before.ports);
    after.press("at-machine/back"); // "Check from start" stands there
    CHECK(after.must_words("step 1 of ").rfind("step 1", 0) == 0);
    CHECK(after.count().rfind("0 of ", 0) == 0);
}

TEST_CASE("each new step is said in one sentence") {
    Page page;
    page.to_the_machine();
    CHECK(page.ports.announced.back().rfind("Step 1 of ", 0) == 0);
    page.press("at-machine/next");
    CHECK(page.ports.announced.back().rfind("Step 2 of ", 0) == 0);
    page.press("at-machine/plus");
    CHECK(page.ports.announced.back().rfind("1 of ", 0) == 0);
}

TEST_CASE("where the screen cannot be kept awake, that is said") {
    Page page;
    page.ports.has_wake_lock = false;
    page.to_the_machine();
    CHECK(page.must_words("The screen may sleep").find("settings") != std::string::npos);
}

TEST_CASE("a store that refuses is said, and counting goes on") {
    Page page;
    page.to_the_machine();
    page.ports.store_refuses = true;
    page.press("at-machine/plus");
    CHECK(page.must_words("Counts are not kept on this device").size() > 0);
    CHECK(page.count().rfind("1 of ", 0) == 0);
}

TEST_CASE("a record that cannot be read is put aside, and said") {
    platform::headless::HeadlessPorts kept;
    kept.kept = {{"notice", "accepted"}, {"progress/guest", "rust"}};
    Page page(800, 1280, &kept);
    CHECK(page.ports.kept.at("aside/progress/guest") == "rust");
    REQUIRE(page.app.state().messages.size() == 1);
    CHECK(page.app.state().messages[0].title.find("put aside") != std::string::npos);
}

TEST_CASE("nothing is drawn while nobody touches the step") {
    Page page;
    page.to_the_machine();
    const long before = page.host.frames();
    for (int turn = 0; turn < 100; ++turn)
        page.host.tick();
    CHECK(page.host.frames() == before);
}
