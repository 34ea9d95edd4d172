#include <doctest/doctest.h>

#include "layout/frame.h"

using namespace treadle;
using layout::Frame;
using layout::Heel;

namespace {

const Frame k_good{inches(24), inches(18), inches(2), inches(0.25), Heel::outside};

} // namespace

TEST_CASE("a butted frame is never longer than a mitred one, and openings are the same") {
    const auto mitred = layout::mitred_frame(k_good);
    const auto butted = layout::butted_frame(k_good);
    REQUIRE(mitred.ok());
    REQUIRE(butted.ok());
    CHECK(butted->width_piece == mitred->width_piece);
    CHECK(butted->height_piece < mitred->height_piece);
    CHECK(butted->opening_width == mitred->opening_width);
    CHECK(butted->opening_height == mitred->opening_height);
}

TEST_CASE("frames refuse by name") {
    const auto field = [](auto change) {
        Frame f = k_good;
        change(f);
        const auto mitred = layout::mitred_frame(f);
        return mitred.ok() ? std::string() : mitred.refusal().field;
    };
    CHECK(field([](Frame& f) { f.width = Length{}; }) == "width");
    CHECK(field([](Frame& f) { f.height = -inches(1); }) == "height");
    CHECK(field([](Frame& f) { f.leg = Length{}; }) == "leg");
    CHECK(field([](Frame& f) { f.leg = inches(9); }) == "leg");
    CHECK(field([](Frame& f) { f.thickness = inches(2); }) == "thickness");
    CHECK(field([](Frame& f) { f.thickness = Length{}; }).empty());
    Frame flat = k_good;
    flat.thickness = Length{};
    CHECK(layout::butted_frame(flat).refusal().field == "thickness");
    Frame inside = k_good;
    inside.heel = Heel::inside;
    CHECK(layout::butted_frame(inside).refusal().field == "heel");
}

TEST_CASE("a sharper corner asks for a longer mitre, a further bend for a wider notch") {
    Length before = inches(1000);
    for (double corner = 10.0; corner < 180.0; corner += 5.0) {
        const auto setback = layout::mitre_setback(inches(2), degrees(corner));
        REQUIRE(setback.ok());
        CHECK(*setback < before);
        before = *setback;
    }
    Length width;
    for (double bend = 5.0; bend <= 135.0; bend += 5.0) {
        const auto notch = layout::corner_notch({inches(2), inches(0.25), degrees(bend)});
        REQUIRE(notch.ok());
        CHECK(notch->width > width);
        CHECK(notch->depth == inches(1.75));
        width = notch->width;
    }
    CHECK(layout::mitre_setback(inches(2), degrees(180)).refusal().field == "corner");
    CHECK(layout::mitre_setback(inches(2), degrees(0)).refusal().field == "corner");
    CHECK(layout::corner_notch({inches(2), inches(0.25), degrees(140)}).refusal().field == "angle");
    CHECK(layout::corner_notch({inches(2), inches(2), degrees(90)}).refusal().field == "thickness");
    CHECK(layout::gusset_edge_working(inches(6), Length{}).refusal().field == "leg_b");
}
