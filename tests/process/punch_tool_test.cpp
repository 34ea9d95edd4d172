#include "process/punch_tool.h"

#include <doctest/doctest.h>

#include <string>

using namespace treadle;
using geometry::HoleShape;

namespace {

Length length_of(const base::Result<Working>& working) {
    REQUIRE(working.ok());
    return *std::get_if<Length>(&working->result.value);
}

process::PunchCut round_cut(double d_mm, double t_mm, double s_mpa) {
    return {{HoleShape::round, millimetres(d_mm), {}}, millimetres(t_mm), megapascals(s_mpa)};
}

bool noted(const base::Result<Working>& working, const char* words) {
    REQUIRE(working.ok());
    return working->note.find(words) != std::string::npos;
}

} // namespace

TEST_CASE("a hole known only by its edge has no stress and no thickest metal") {
    const geometry::HoleOutline edge{HoleShape::perimeter, millimetres(80), {}};
    CHECK(process::hole_edge_working(edge).ok());
    const auto stress = process::punch_stress_working({edge, millimetres(5), megapascals(300)});
    REQUIRE_FALSE(stress.ok());
    CHECK(stress.refusal().field == "shape");
    CHECK_FALSE(process::punch_thickest_working(edge, megapascals(300), megapascals(1200)).ok());
}

TEST_CASE("the stress warns over 180 ksi and not below") {
    // 4 x 400 x 10 / d: 1241 MPa at d = 12.89 mm.
    CHECK(noted(process::punch_stress_working(round_cut(12.8, 10, 400)), "180 ksi"));
    CHECK_FALSE(noted(process::punch_stress_working(round_cut(13.0, 10, 400)), "180 ksi"));
}

TEST_CASE("the thickest metal goes back to the stress that it came from") {
    const geometry::HoleOutline slot{HoleShape::obround, millimetres(14), millimetres(30)};
    const Length t =
        length_of(process::punch_thickest_working(slot, megapascals(320), megapascals(1240)));
    const auto stress = process::punch_stress_working({slot, t, megapascals(320)});
    REQUIRE(stress.ok());
    CHECK(quantity::to_megapascals(*std::get_if<Stress>(&stress->result.value)) ==
          doctest::Approx(1240));
    // Thicker than the slot is wide: the usual rule is named.
    CHECK(noted(process::punch_thickest_working(slot, megapascals(320), megapascals(2000)),
                "usual rule"));
}

TEST_CASE("a free punch is said to be out of range under 1.1 t") {
    const auto at = [](double d) {
        return process::punch_free_length_working(
            {millimetres(d), millimetres(10), megapascals(400), megapascals(200'000)});
    };
    CHECK(noted(at(10.9), "Outside its range"));
    CHECK_FALSE(noted(at(11.0), "Outside its range"));
    CHECK_FALSE(process::punch_free_length_working(
                    {millimetres(20), millimetres(10), megapascals(400), megapascals(2e6)})
                    .ok());
}

TEST_CASE("a stripper gap warns over 1/4 in, not at it") {
    CHECK_FALSE(noted(process::punch_stroke_working({inches(0.25), inches(0.25), inches(0.125)}),
                      "Warning"));
    CHECK(noted(process::punch_stroke_working({inches(0.25), inches(0.26), inches(0.125)}),
                "Warning"));
}

TEST_CASE("a fillet cannot end inside the leg") {
    const auto heel =
        process::punch_from_heel_working({millimetres(10), millimetres(9), millimetres(20), false});
    REQUIRE_FALSE(heel.ok());
    CHECK(heel.refusal().field == "fillet");
    CHECK(process::punch_from_heel_working({millimetres(10), {}, millimetres(20), true}).ok());
}

TEST_CASE("bolt holes refuse nothing at all") {
    CHECK_FALSE(process::bolt_hole_aisc_working({}).ok());
    CHECK_FALSE(process::bolt_hole_en_working({}).ok());
}
