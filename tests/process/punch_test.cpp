#include "process/cards.h"
#include "process/punch.h"

#include <doctest/doctest.h>

#include <cmath>
#include <random>

using namespace treadle;
using geometry::HoleShape;

namespace {

process::PunchCut good() { return {{HoleShape::round, inches(1.0), {}}, inches(0.25), ksi(50.0)}; }

} // namespace

TEST_CASE("punching refuses by field") {
    auto cut = good();
    cut.thickness = {};
    CHECK(process::punch_force(cut).refusal().field == "thickness");
    CHECK(process::stripping_force(cut).refusal().field == "thickness");
    CHECK(process::punch_work(cut).refusal().field == "thickness");
    CHECK(process::punch_force_working(cut).refusal().field == "thickness");
    cut = good();
    cut.shear_strength = ksi(-50.0);
    CHECK(process::punch_force(cut).refusal().field == "shear_strength");
    cut = good();
    cut.hole.size = millimetres(std::nan(""));
    CHECK(process::punch_force(cut).refusal().field == "size");
    cut = good();
    cut.hole.shape = HoleShape::rectangle;
    CHECK(process::punch_force(cut).refusal().field == "size2");
    CHECK(process::punch_work(good(), 0.0).refusal().field == "penetration");
    CHECK(process::punch_work(good(), 1.01).refusal().field == "penetration");
    CHECK(process::smallest_hole({inches(0.5), ksi(60.0), {}}).refusal().field == "punch_strength");
    CHECK(process::largest_round_hole({inches(0.5), ksi(60.0), {}}).refusal().field == "capacity");
}

TEST_CASE("thicker, stronger and larger never need less") {
    std::mt19937 random(20); // fixed seed
    std::uniform_real_distribution<double> size(1.0, 80.0);
    std::uniform_real_distribution<double> strength(50.0, 900.0);
    std::uniform_real_distribution<double> more(1.0, 2.0);
    for (int i = 0; i < 500; ++i) {
        const process::PunchCut cut{
            {HoleShape::obround, millimetres(size(random)), millimetres(200)},
            millimetres(size(random)),
            megapascals(strength(random))};
        process::PunchCut larger_cut = cut;
        larger_cut.hole.size = more(random) * cut.hole.size;
        larger_cut.thickness = more(random) * cut.thickness;
        larger_cut.shear_strength = more(random) * cut.shear_strength;
        if (larger_cut.hole.size > larger_cut.hole.size2)
            continue;
        CHECK(*process::punch_force(larger_cut) >= *process::punch_force(cut));
        CHECK(*process::punch_work(larger_cut) >= *process::punch_work(cut));
        const Stress limit = process::k_punch_stress_limit;
        CHECK(*process::smallest_hole({larger_cut.thickness, larger_cut.shear_strength, limit}) >=
              *process::smallest_hole({cut.thickness, cut.shear_strength, limit}));
        const Force offer = kilonewtons(400.0);
        CHECK(*process::largest_round_hole(
                  {larger_cut.thickness, larger_cut.shear_strength, offer}) <=
              *process::largest_round_hole({cut.thickness, cut.shear_strength, offer}));
    }
}

TEST_CASE("the largest hole for a force needs that force") {
    const auto size = process::largest_round_hole({inches(0.375), ksi(60.0), us_tons(50.0)});
    REQUIRE(size.ok());
    const auto force =
        process::punch_force({{HoleShape::round, *size, {}}, inches(0.375), ksi(60.0)});
    CHECK(quantity::to_us_tons(*force) == doctest::Approx(50.0).epsilon(1e-12));
}

TEST_CASE("a working shows its card and the formula's own result") {
    const auto force = process::punch_force_working(good());
    REQUIRE(force.ok());
    CHECK(force->card == &process::k_punch_force_card);
    CHECK(std::get<Force>(force->result.value) == *process::punch_force(good()));
    const auto strip = process::stripping_working(good());
    CHECK(std::get<Force>(strip->result.value) == *process::stripping_force(good()));
    const auto work = process::punch_work_working(good());
    CHECK(std::get<Energy>(work->result.value) == *process::punch_work(good()));
    CHECK_FALSE(work->note.empty());
}

TEST_CASE("the smallest hole says which rule decides") {
    const auto by_thickness = process::smallest_hole_working({inches(0.5), ksi(20.0), ksi(180.0)});
    const auto by_stress = process::smallest_hole_working({inches(0.5), ksi(64.0), ksi(180.0)});
    REQUIRE(by_thickness.ok());
    REQUIRE(by_stress.ok());
    CHECK(by_thickness->note != by_stress->note);
    const auto largest = process::largest_hole_working({inches(0.5), ksi(50.0), us_tons(40.0)});
    CHECK(largest->card == &process::k_punch_largest_card);
}
