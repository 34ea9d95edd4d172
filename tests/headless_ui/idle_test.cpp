#include <doctest/doctest.h>

#include "bench_page.h"

using treadle::tests::BenchPage;

TEST_CASE("a page that nobody touches draws no frame in 100 turns of the screen") {
    BenchPage page;
    const long before = page.host.frames();
    CHECK(before > 0);
    for (int turn = 0; turn < 100; ++turn)
        page.host.tick();
    CHECK(page.host.frames() == before);
}

TEST_CASE("a page comes to rest after a press, and after a glide") {
    BenchPage page;
    page.host.tap(400, 40);
    CHECK_FALSE(page.host.tick());
    page.host.drag(100, 500, 100, 200, 8);
    page.host.settle();
    CHECK_FALSE(page.host.tick());
}

TEST_CASE("a mouse that moves on empty paper draws nothing") {
    BenchPage page(false);
    const long before = page.host.frames();
    for (int i = 0; i < 20; ++i) {
        const float x = 400 + static_cast<float>(i);
        page.stage.pointer({treadle::platform::PointerPhase::move,
                            treadle::platform::PointerKind::mouse,
                            1,
                            x,
                            500,
                            0.1 * i});
        page.host.tick();
    }
    CHECK(page.host.frames() == before);
}

TEST_CASE("a still picture tells the mirror nothing") {
    BenchPage page;
    CHECK_FALSE(page.host.mirror().empty());
    page.ports.request_frame("test", 1);
    page.ports.pacer.frame_starts();
    page.stage.prepare();
    page.stage.frame(0.016);
    CHECK(page.stage.take_mirror_changes().empty());
}
