#include <doctest/doctest.h>

#include "layout/stock.h"

using namespace treadle;

TEST_CASE("pieces, cuts and drop never take more than the bar, and one piece more would") {
    for (double piece = 3.7; piece < 260.0; piece += 3.31) {
        for (const double kerf : {0.0, 0.063, 0.125, 0.75}) {
            const layout::EqualPieces q{
                {inches(252), inches(0.5), inches(1)}, inches(piece), inches(kerf), Length{}};
            const auto made = layout::pieces_of_bar(q);
            REQUIRE(made.ok());
            CAPTURE(piece);
            CAPTURE(kerf);
            const double usable = 250.5;
            const double used = made->count * piece + (made->count - 1) * kerf;
            if (made->count > 0)
                CHECK(used <= usable + 1e-6);
            CHECK((made->count + 1) * piece + made->count * kerf > usable - 1e-6);
            CHECK(made->drop >= Length{});
            CHECK(to_inches(made->drop) <= usable - made->count * piece + 1e-6);
        }
    }
}

TEST_CASE("a rest too short to hold costs a piece; no rest at all costs none") {
    layout::EqualPieces q{{inches(240), {}, {}}, inches(47.5), {}, inches(4)};
    CHECK(layout::pieces_of_bar(q)->count == 4);
    CHECK(layout::pieces_of_bar(q)->drop == inches(50));
    q.holdable = inches(2.5);
    CHECK(layout::pieces_of_bar(q)->count == 5);
    q.piece = inches(60);
    q.holdable = inches(4);
    CHECK(layout::pieces_of_bar(q)->count == 4);
    CHECK(layout::pieces_of_bar(q)->drop == Length{});
}

TEST_CASE("bars refuse by name") {
    CHECK(layout::usable_length({Length{}, {}, {}}).refusal().field == "length");
    CHECK(layout::usable_length({inches(10), inches(10), {}}).refusal().field == "trim_start");
    CHECK(layout::usable_length({inches(10), inches(2), inches(8)}).refusal().field == "trim_end");
    const layout::Bar bar{inches(240), {}, {}};
    CHECK(layout::pieces_of_bar({bar, Length{}, {}, {}}).refusal().field == "piece");
    CHECK(layout::pieces_of_bar({bar, inches(0.0001), {}, {}}).refusal().field == "piece");
    CHECK(layout::pieces_of_bar({bar, inches(10), -inches(1), {}}).refusal().field == "kerf");
    const auto none = layout::pieces_working({bar, inches(250), {}, {}});
    REQUIRE(none.ok());
    CHECK(none->note.find("shorter") != std::string::npos);
}
