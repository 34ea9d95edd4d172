// Zooming and moving a drawing, and dragging a handle: surface.cpp, and gestures.cpp with two
// fingers.

#include "platform/headless/headless.h"
#include "ui/widgets/controls.h"
#include "ui/widgets/drawing.h"
#include "ui/widgets/stage.h"

#include <doctest/doctest.h>

#include <cmath>
#include <vector>

using namespace treadle;
using platform::PointerKind;
using platform::PointerPhase;
using ui::Surface;

namespace {

/// A list of rows with a drawing at its top, as the page has it: 200 by 100 mm on 400 by 200 px.
struct DrawingPage {
    platform::headless::HeadlessPorts ports;
    std::vector<ui::PointMm> taps;
    std::vector<ui::HandleDrag> drags;
    bool handle = false;
    int keys = 0;
    std::string of = "P1";
    ui::Stage stage{ports, [this](ui::Ui& ui) { draw(ui); }};
    platform::headless::Host host{ports, stage};

    static constexpr ui::Rect k_place{100, 50, 400, 200};

    explicit DrawingPage(bool coarse = true) { host.open({800, 600, 1, coarse}); }

    void draw(ui::Ui& ui) {
        ui::ScrollArea area(ui, "view", ui.screen(), "Part");
        const ui::Rect content = area.content();
        const ui::Rect place = k_place.moved(content.x, content.y);
        const ui::Scope scope(ui, "flat");
        Surface& surface = ui.add_surface("surface", place);
        surface.show(of);
        ui::drawing(ui,
                    "drawing",
                    place,
                    surface,
                    {{{0, 0}, {200, 100}}, 0, "A plate"},
                    [](ui::DrawingPainter&) {});
        if (const auto tap = ui.take_tap("surface"))
            taps.push_back(surface.under(tap->x, tap->y));
        if (handle)
            if (const auto drag =
                    ui::knob(ui, "handle", place, {{300, 150}, "Move", true, true}).drag)
                drags.push_back(*drag);
        if (ui.has_attention() && ui.key("+"))
            ++keys;
        area.finish(content.y + 2000);
    }

    void finger(PointerPhase phase, int id, float x, float y) {
        seconds += 0.016;
        stage.pointer({phase, PointerKind::touch, id, x, y, seconds});
        host.tick();
    }
    /// Two fingers around a point, from one distance to the other.
    void pinch(float x, float y, float from, float to) {
        finger(PointerPhase::down, 1, x - from / 2, y);
        finger(PointerPhase::down, 2, x + from / 2, y);
        for (int i = 1; i <= 10; ++i) {
            const float apart = from + (to - from) * static_cast<float>(i) / 10;
            finger(PointerPhase::move, 1, x - apart / 2, y);
            finger(PointerPhase::move, 2, x + apart / 2, y);
        }
        finger(PointerPhase::up, 1, x - to / 2, y);
        finger(PointerPhase::up, 2, x + to / 2, y);
        host.settle();
    }
    [[nodiscard]] float offset() { return stage.ui().semantics().find("view")->offset; }
    [[nodiscard]] Surface& seen() { return stage.ui().surface("flat/surface"); }

    double seconds = 1;
};

bool near(ui::PointMm a, ui::PointMm b) { return std::hypot(a.x - b.x, a.y - b.y) < 0.01; }

} // namespace

TEST_CASE("two fingers zoom by what their distance grows, around their middle") {
    DrawingPage page;
    const ui::PointMm before = page.seen().under(250, 120);
    page.pinch(250, 120, 100, 200);
    CHECK(page.seen().zoom() == doctest::Approx(2.0F));
    CHECK(near(page.seen().under(250, 120), before));
    CHECK(page.taps.empty());
    page.pinch(250, 120, 200, 60);
    CHECK(page.seen().is_whole());
    CHECK(page.offset() == 0);
}

TEST_CASE("two fingers that move together move what is zoomed, and never beyond its edge") {
    DrawingPage page;
    page.pinch(300, 150, 100, 200);
    const ui::PointMm before = page.seen().under(300, 150);
    page.finger(PointerPhase::down, 1, 250, 150);
    page.finger(PointerPhase::down, 2, 350, 150);
    for (const float x : {10.0F, 20.0F}) {
        page.finger(PointerPhase::move, 1, 250 + x, 150);
        page.finger(PointerPhase::move, 2, 350 + x, 150);
    }
    page.finger(PointerPhase::up, 1, 270, 150);
    page.finger(PointerPhase::up, 2, 370, 150);
    CHECK(near(page.seen().under(320, 150), before));
    CHECK(page.seen().zoom() == doctest::Approx(2.0F));
    for (int i = 0; i < 20; ++i)
        page.seen().pan(300, 300);
    page.host.tick();
    CHECK(near(page.seen().under(100, 50), {0, 100}));
}

TEST_CASE("at whole a drag over the drawing scrolls the page, zoomed it moves the drawing") {
    DrawingPage page;
    page.host.drag(300, 200, 300, 100, 10);
    page.host.settle();
    CHECK(page.offset() > 90);
    CHECK(page.seen().is_whole());
    CHECK(page.taps.empty());

    DrawingPage closer;
    closer.pinch(300, 150, 100, 300);
    const ui::PointMm before = closer.seen().under(300, 150);
    closer.host.drag(300, 150, 340, 120, 10);
    CHECK(closer.offset() == 0);
    // All but what it takes to tell a drag from a tap: at most three steps of 5 px.
    const ui::PointMm after = closer.seen().under(300, 150);
    CHECK((before.x - after.x) * closer.seen().scale() == doctest::Approx(40).epsilon(0.35));
    CHECK((after.y - before.y) * closer.seen().scale() == doctest::Approx(-30).epsilon(0.35));
    const ui::PointMm let_go = closer.seen().under(300, 150);
    closer.host.settle(); // it glides on
    CHECK(closer.seen().under(300, 150).x < let_go.x - 1);
    CHECK(closer.offset() == 0);
    CHECK(closer.taps.empty());
    // Where the drawing ends the page takes over: nobody is caught.
    for (int i = 0; i < 6; ++i) {
        closer.host.drag(300, 200, 300, 60, 10);
        closer.host.settle();
    }
    CHECK(closer.offset() > 0);
}

TEST_CASE("a mouse moves what is zoomed, and only clicks what is whole") {
    DrawingPage page(false);
    const auto mouse = [&](PointerPhase phase, float x, float y) {
        page.seconds += 0.016;
        page.stage.pointer({phase, PointerKind::mouse, 1, x, y, page.seconds});
        page.host.tick();
    };
    page.stage.wheel({300, 150, 0, -2, true});
    page.host.settle();
    CHECK(page.seen().zoom() == doctest::Approx(Surface::k_step * Surface::k_step));
    const ui::PointMm before = page.seen().under(300, 150);
    mouse(PointerPhase::down, 300, 150);
    mouse(PointerPhase::move, 320, 140);
    page.seconds += 0.2; // it rests before it is let go
    mouse(PointerPhase::up, 320, 140);
    CHECK(near(page.seen().under(320, 140), before));
    CHECK(page.taps.empty());
    mouse(PointerPhase::down, 320, 140);
    mouse(PointerPhase::up, 321, 141);
    page.host.settle();
    REQUIRE(page.taps.size() == 1);
}

TEST_CASE("the wheel zooms with Ctrl, and without it once the drawing is zoomed") {
    DrawingPage page(false);
    CHECK(page.stage.wheel({300, 150, 0, 1, false})); // scrolls the page
    page.host.settle();
    CHECK(page.offset() == 100);
    CHECK(page.seen().is_whole());
    page.stage.wheel({300, 150, 0, -1, false});
    page.host.settle();
    CHECK(page.stage.wheel({300, 150, 0, -1, true}));
    page.host.settle();
    CHECK(page.seen().zoom() == doctest::Approx(Surface::k_step));
    page.stage.wheel({300, 150, 0, -1, false});
    page.host.settle();
    CHECK(page.seen().zoom() == doctest::Approx(Surface::k_step * Surface::k_step));
    CHECK(page.offset() == 0);
    page.stage.wheel({300, 150, 0, 4, false});
    page.host.settle();
    CHECK(page.seen().is_whole());
    // Beside a drawing Ctrl and the wheel are the browser's.
    CHECK_FALSE(page.stage.wheel({700, 500, 0, -1, true}));
}

TEST_CASE("a tap says where, a finger that moves does not") {
    DrawingPage page;
    page.host.tap(300, 150);
    REQUIRE(page.taps.size() == 1);
    CHECK(near(page.taps[0], {100, 50}));
    page.host.drag(300, 150, 330, 150, 5);
    page.host.settle();
    CHECK(page.taps.size() == 1);
}

TEST_CASE("another part is seen whole again") {
    DrawingPage page;
    page.pinch(300, 150, 100, 300);
    REQUIRE_FALSE(page.seen().is_whole());
    page.of = "P2";
    page.ports.request_frame("part", 1);
    page.host.settle();
    CHECK(page.seen().is_whole());
}

TEST_CASE("a handle follows a finger and says once that it was let go") {
    DrawingPage page;
    page.handle = true;
    page.ports.request_frame("handle", 2);
    page.host.settle();
    const ui::Rect knob = page.stage.ui().semantics().find("flat/handle")->rect;
    const float x = knob.x + knob.w / 2;
    const float y = knob.y + knob.h / 2;
    page.host.drag(x, y, x + 50, y - 20, 10);
    page.host.settle();
    REQUIRE(page.drags.size() > 2);
    const ui::HandleDrag& last = page.drags.back();
    CHECK(last.phase == ui::HandleDrag::Phase::dropped);
    CHECK(last.dx == doctest::Approx(50));
    CHECK(last.dy == doctest::Approx(-20));
    int dropped = 0;
    for (const ui::HandleDrag& drag : page.drags)
        dropped += drag.phase == ui::HandleDrag::Phase::dropped ? 1 : 0;
    CHECK(dropped == 1);
    CHECK(page.offset() == 0);
    CHECK(page.taps.empty());
}

TEST_CASE("a second finger, Escape and a lost pointer put a handle back") {
    for (const int how : {0, 1, 2}) {
        DrawingPage page;
        page.handle = true;
        page.ports.request_frame("handle", 2);
        page.host.settle();
        const ui::Rect knob = page.stage.ui().semantics().find("flat/handle")->rect;
        const float x = knob.x + knob.w / 2;
        const float y = knob.y + knob.h / 2;
        page.finger(PointerPhase::down, 1, x, y);
        page.finger(PointerPhase::move, 1, x + 40, y);
        if (how == 0)
            page.finger(PointerPhase::down, 2, x + 90, y);
        if (how == 1)
            CHECK(page.stage.key({"Escape", false, false, false}));
        if (how == 2)
            page.finger(PointerPhase::cancel, 1, x + 40, y);
        page.finger(PointerPhase::move, 1, x + 60, y);
        page.finger(PointerPhase::up, 1, x + 60, y);
        page.finger(PointerPhase::up, 2, x + 90, y);
        page.host.settle();
        CAPTURE(how);
        REQUIRE_FALSE(page.drags.empty());
        CHECK(page.drags.back().phase == ui::HandleDrag::Phase::cancelled);
        // And the next touch is a fresh one.
        page.host.tap(150, 80);
        CHECK(page.taps.size() == 1);
    }
}

TEST_CASE("keys are a drawing's own once it was touched") {
    DrawingPage page(false);
    page.stage.key({"+", false, true, false});
    page.host.settle();
    CHECK(page.keys == 0);
    page.host.click(300, 150);
    CHECK(page.stage.key({"+", false, true, false}));
    page.host.settle();
    CHECK(page.keys == 1);
    page.host.click(700, 550);
    CHECK_FALSE(page.stage.key({"+", false, true, false}));
}
