#include <doctest/doctest.h>

#include "bench_page.h"

using namespace treadle;
using platform::PointerKind;
using platform::PointerPhase;
using tests::BenchPage;

TEST_CASE("a tap on a key presses it once") {
    BenchPage page;
    page.host.tap(340, 45);
    CHECK(page.presses["save"] == 1);
    CHECK(page.presses.size() == 1);
}

TEST_CASE("a click with the mouse presses once") {
    BenchPage page(false);
    page.host.click(340, 30);
    CHECK(page.presses["save"] == 1);
}

TEST_CASE("two taps before the next frame press twice") {
    BenchPage page;
    for (int i = 0; i < 2; ++i) {
        page.stage.pointer({PointerPhase::down, PointerKind::touch, 1, 340, 45, 1.0 + 0.1 * i});
        page.stage.pointer({PointerPhase::up, PointerKind::touch, 1, 340, 45, 1.05 + 0.1 * i});
    }
    page.host.settle();
    CHECK(page.presses["save"] == 2);
}

TEST_CASE("a finger that rolls ten pixels still taps what it started on") {
    BenchPage page;
    page.stage.pointer({PointerPhase::down, PointerKind::touch, 1, 340, 45, 1.0});
    page.stage.pointer({PointerPhase::move, PointerKind::touch, 1, 346, 53, 1.1});
    page.stage.pointer({PointerPhase::up, PointerKind::touch, 1, 346, 53, 1.2});
    page.host.settle();
    CHECK(page.presses["save"] == 1);
}

TEST_CASE("a drag over rows scrolls them and presses none") {
    BenchPage page;
    CHECK(page.offset() == 0);
    page.host.drag(100, 500, 100, 300, 10);
    page.host.settle();
    CHECK(page.offset() >= 200);
    CHECK(page.presses.empty());
}

TEST_CASE("a drag over a row of keys presses none") {
    BenchPage page;
    page.host.drag(340, 45, 700, 45, 12);
    page.host.settle();
    CHECK(page.presses.empty());
}

TEST_CASE("a quick drag glides on, a slow end does not") {
    BenchPage quick;
    quick.host.drag(100, 500, 100, 300, 5);
    const float let_go = quick.offset();
    quick.host.settle();
    CHECK(quick.offset() > let_go + 50);

    BenchPage slow;
    slow.host.drag(100, 500, 100, 499, 1);
    slow.host.settle();
    CHECK(slow.offset() == 0);
}

TEST_CASE("a finger on a gliding list stops it and presses nothing") {
    BenchPage page;
    page.host.drag(100, 550, 100, 100, 4);
    page.host.tick();
    const float gliding = page.offset();
    page.host.tick();
    REQUIRE(page.offset() != gliding);
    page.host.tap(100, 300);
    CHECK(page.presses.empty());
    page.host.tap(100, 300);
    CHECK(page.presses.size() == 1);
}

TEST_CASE("a mouse that slides off a key before it lets go presses nothing") {
    BenchPage page(false);
    page.stage.pointer({PointerPhase::down, PointerKind::mouse, 1, 340, 30, 1.0});
    page.stage.pointer({PointerPhase::move, PointerKind::mouse, 1, 340, 400, 1.1});
    page.stage.pointer({PointerPhase::up, PointerKind::mouse, 1, 340, 400, 1.2});
    page.host.settle();
    CHECK(page.presses.empty());
}

TEST_CASE("a second finger ends the press") {
    BenchPage page;
    page.stage.pointer({PointerPhase::down, PointerKind::touch, 1, 340, 45, 1.0});
    page.stage.pointer({PointerPhase::down, PointerKind::touch, 2, 700, 45, 1.05});
    page.stage.pointer({PointerPhase::up, PointerKind::touch, 1, 340, 45, 1.1});
    page.stage.pointer({PointerPhase::up, PointerKind::touch, 2, 700, 45, 1.1});
    page.host.settle();
    CHECK(page.presses.empty());
    page.host.tap(340, 45);
    CHECK(page.presses["save"] == 1);
}

TEST_CASE("a cancelled touch presses nothing and leaves nothing pressed") {
    BenchPage page;
    page.stage.pointer({PointerPhase::down, PointerKind::touch, 1, 340, 45, 1.0});
    page.host.tick();
    CHECK(page.stage.ui().touch("save").pressed);
    page.stage.pointer({PointerPhase::cancel, PointerKind::touch, 1, 340, 45, 1.1});
    page.host.settle();
    CHECK_FALSE(page.stage.ui().touch("save").pressed);
    CHECK(page.presses.empty());
}

TEST_CASE("the wheel scrolls what lies under it, and stops at the ends") {
    BenchPage page(false);
    page.stage.wheel({100, 300, 0, 2});
    page.host.settle();
    CHECK(page.offset() == 200);
    page.stage.wheel({100, 300, 0, -50});
    page.host.settle();
    CHECK(page.offset() == 0);
    page.stage.wheel({600, 300, 0, 2});
    page.host.settle();
    CHECK(page.offset() == 0);
    for (int i = 0; i < 50; ++i)
        page.stage.wheel({100, 300, 0, 4});
    page.host.settle();
    CHECK(page.offset() == doctest::Approx(40 * 84 - 600));
}
