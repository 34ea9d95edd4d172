#include <doctest/doctest.h>

#include "layout/picket.h"

using namespace treadle;
using layout::PanelEnds;
using layout::PicketQuestion;

TEST_CASE("panels close, keep the limit, and one picket fewer would not") {
    int tried = 0;
    for (double opening = 10.0; opening < 130.0; opening += 1.37) {
        for (const double picket : {0.5, 0.75, 1.0, 1.9}) {
            for (const PanelEnds ends : {PanelEnds::gap, PanelEnds::picket}) {
                const PicketQuestion q{inches(opening), inches(picket), inches(3.875), ends, {}};
                const auto made = layout::picket_layout(q);
                REQUIRE(made.ok());
                CAPTURE(opening);
                CAPTURE(picket);
                const int n = made->count;
                const int gaps = ends == PanelEnds::gap ? n + 1 : n - 1;
                const double gap = to_inches(made->gap);
                CHECK(n * picket + gaps * gap == doctest::Approx(opening).epsilon(1e-9));
                CHECK(gap <= 3.875 + 1e-6);
                CHECK(gap > 0.0);
                const int fewest = ends == PanelEnds::gap ? 0 : 2;
                if (n > fewest) // the same opening with one fewer
                    CHECK((opening - (n - 1) * picket) / (gaps - 1) > 3.875);
                REQUIRE(made->faces.size() == static_cast<std::size_t>(n));
                const double end = ends == PanelEnds::gap ? gap : 0.0;
                if (n > 0)
                    CHECK(to_inches(made->faces.back()) + picket + end ==
                          doctest::Approx(opening).epsilon(1e-9));
                ++tried;
            }
        }
    }
    CHECK(tried == 704);
}

TEST_CASE("a wider opening never takes fewer pickets, nor a tighter limit") {
    int before = 0;
    for (double opening = 5.0; opening < 200.0; opening += 0.25) {
        const auto made = layout::picket_layout({inches(opening), inches(0.75), inches(4), {}, {}});
        REQUIRE(made.ok());
        CHECK(made->count >= before);
        before = made->count;
        const auto tighter =
            layout::picket_layout({inches(opening), inches(0.75), inches(3.875), {}, {}});
        REQUIRE(tighter.ok());
        CHECK(tighter->count >= made->count);
    }
}

TEST_CASE("an exact fit is no picket more, whatever the units") {
    for (int n = 0; n < 200; ++n) {
        const double opening = n * 0.5 + (n + 1) * 4.0;
        CHECK(layout::picket_layout({inches(opening), inches(0.5), inches(4), {}, {}})->count == n);
        const Length metric = millimetres(n * 16.0) + millimetres((n + 1) * 100.1);
        CHECK(layout::picket_layout({metric, millimetres(16), millimetres(100.1), {}, {}})->count ==
              n);
    }
}

TEST_CASE("rounded places keep the limit, or are refused") {
    int refused = 0;
    for (double opening = 20.0; opening < 120.0; opening += 0.61) {
        const PicketQuestion q{inches(opening), inches(0.75), inches(3.875), {}, inches(0.0625)};
        const auto made = layout::picket_layout(q);
        if (!made.ok()) {
            CHECK(made.refusal().field == "step");
            ++refused;
            continue;
        }
        double last = 0.0;
        for (const Length face : made->faces) {
            CHECK(to_inches(face) - last <= 3.875 + 1e-6);
            last = to_inches(face) + 0.75;
        }
        CHECK(opening - last <= 3.875 + 1e-6);
    }
    CHECK(refused > 0);
    CHECK(refused < 100);
}

TEST_CASE("panels refuse by name") {
    const auto field = [](const PicketQuestion& q) {
        const auto made = layout::picket_layout(q);
        return made.ok() ? "" : made.refusal().field;
    };
    CHECK(field({Length{}, inches(1), inches(4), {}, {}}) == "opening");
    CHECK(field({inches(72), -inches(1), inches(4), {}, {}}) == "picket");
    CHECK(field({inches(72), inches(1), Length{}, {}, {}}) == "limit");
    CHECK(field({inches(6), inches(7), inches(4), {}, {}}) == "picket");
    CHECK(field({inches(1), inches(1), inches(4), PanelEnds::picket, {}}) == "picket");
    CHECK(field({inches(3000), millimetres(1), millimetres(1), {}, {}}) == "opening");
    CHECK(field({inches(72), inches(1), inches(4), {}, inches(4)}) == "step");
}

TEST_CASE("posts stand no farther apart than allowed") {
    for (double run = 50.0; run < 900.0; run += 13.3) {
        const auto made = layout::post_layout({inches(run), inches(2), inches(96)});
        REQUIRE(made.ok());
        const double spacing = to_inches(made->clear) + 2.0;
        CHECK(spacing <= 96.0);
        CHECK(made->panels * to_inches(made->clear) + (made->panels + 1) * 2.0 ==
              doctest::Approx(run));
    }
    CHECK(layout::post_layout({inches(3), inches(2), inches(96)}).refusal().field == "post");
    CHECK(layout::post_layout({inches(3000), inches(2), inches(0.1)}).refusal().field == "run");
    CHECK(layout::per_tread_working(inches(10), 0, inches(1), inches(4)).refusal().field ==
          "count");
    CHECK(layout::per_tread_working(inches(10), 10, inches(1), inches(4)).refusal().field ==
          "picket");
}
