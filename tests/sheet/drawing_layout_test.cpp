#include "archive/archive.h"
#include "sheet/drawing_layout.h"

#include <doctest/doctest.h>

#include <algorithm>

#include "assembly/kind.h"

using namespace treadle;

TEST_CASE(
    "every example of a layout is drawn within its bounds, with a sentence for who sees none") {
    const job::Catalog catalog = archive::read_catalog().value();
    const std::vector<Grade> none;
    for (const assembly::Kind* kind : assembly::kinds()) {
        const auto made = assembly::make(
            kind->id, "L1", assembly::example_values(*kind), {catalog, none, UnitSystem::inch});
        REQUIRE(made.ok());
        const sheet::Drawing drawing =
            sheet::draw_layout(made->elevation, {UnitSystem::inch, 16}, sheet::k_flat_box);
        CAPTURE(std::string(kind->id));
        CHECK_FALSE(drawing.description.empty());
        CHECK(drawing.paths.size() == made->elevation.outlines.size());
        CHECK(drawing.high.x > drawing.low.x);
        CHECK(drawing.high.y > drawing.low.y);
        for (const sheet::Path& path : drawing.paths)
            for (const sheet::Point& point : path.points) {
                CHECK(point.x >= drawing.low.x);
                CHECK(point.x <= drawing.high.x);
                CHECK(point.y >= drawing.low.y);
                CHECK(point.y <= drawing.high.y);
            }
        CHECK(sheet::to_svg(drawing, 122, 62).find("<svg") != std::string::npos);
        CHECK(drawing.labels.size() == made->elevation.spans.size());
    }
}

TEST_CASE("the length of a hook's shank stands beside its bar, not on it") {
    const job::Catalog catalog = archive::read_catalog().value();
    const std::vector<Grade> none;
    for (const char* kind : {"hook", "eye"}) {
        CAPTURE(std::string(kind));
        const auto made = assembly::make(kind,
                                         "L1",
                                         assembly::example_values(*assembly::find_kind(kind)),
                                         {catalog, none, UnitSystem::inch});
        REQUIRE(made.ok());
        const sheet::Drawing drawing =
            sheet::draw_layout(made->elevation, {UnitSystem::inch, 16}, sheet::k_flat_box);
        Length right;
        for (const sheet::Path& path : drawing.paths)
            for (const sheet::Point& point : path.points)
                right = std::max(right, point.x);
        REQUIRE(drawing.labels.size() == 2);
        const sheet::Label& shank = drawing.labels[1];
        CHECK(shank.text == "shank 6 in");
        // On paper a letter is under two thirds of its size wide; the picture is drawn smaller.
        const double smaller =
            std::max((drawing.high.x - drawing.low.x) / millimetres(sheet::k_flat_width_mm),
                     (drawing.high.y - drawing.low.y) / millimetres(sheet::k_flat_height_mm));
        const Length half = inches(shank.points / 72.0) * 0.66 *
                            static_cast<double>(shank.text.size()) / 2.0 * smaller;
        CHECK(shank.at.x - half > right);
    }
}

TEST_CASE("a span carries its words and its length in the style of the job") {
    assembly::Elevation elevation;
    elevation.outlines.push_back(
        {{{}, {inches(48), {}}, {inches(48), inches(10)}, {{}, inches(10)}},
         assembly::Shade::steel,
         ""});
    elevation.spans.push_back({{{}, -inches(2)}, {inches(48), -inches(2)}, "run"});
    elevation.description = "A box.";
    const auto drawing = sheet::draw_layout(elevation, {UnitSystem::inch, 16}, sheet::k_flat_box);
    REQUIRE(drawing.labels.size() == 1);
    CHECK(drawing.labels[0].text == "run 48 in");
    CHECK(drawing.dimensions.size() == 1);
}
