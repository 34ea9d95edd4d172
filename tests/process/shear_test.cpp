#include "process/cards.h"
#include "process/shear.h"

#include <doctest/doctest.h>

#include <cmath>
#include <random>

using namespace treadle;
using process::BarShape;

namespace {

process::FlatShear flat() { return {inches(4.0), inches(0.5), ksi(50.0), {}, 1.0}; }

} // namespace

TEST_CASE("shearing refuses by field") {
    auto cut = flat();
    cut.width = {};
    CHECK(process::flat_shear_force(cut).refusal().field == "width");
    cut = flat();
    cut.thickness = millimetres(-1.0);
    CHECK(process::flat_shear_force(cut).refusal().field == "thickness");
    cut = flat();
    for (const double rake : {0.0, -3.0, 30.0, std::nan("")}) {
        cut.rake = degrees(rake);
        CHECK(process::flat_shear_force(cut).refusal().field == "rake");
    }
    cut = flat();
    cut.penetration = 0.0;
    CHECK(process::flat_shear_force(cut).refusal().field == "penetration");
    CHECK(process::bar_shear_force({BarShape::round, {}, ksi(60.0)}).refusal().field == "size");
    CHECK(process::angle_shear_force({inches(3.0), {}, inches(0.25), ksi(50.0)}).refusal().field ==
          "leg_b");
    CHECK(process::angle_shear_force({inches(3.0), inches(0.25), inches(0.25), ksi(50.0)})
              .refusal()
              .field == "thickness");
    CHECK(process::mitre_factor(degrees(60.0)).refusal().field == "angle");
    CHECK(process::mitre_factor(degrees(-1.0)).refusal().field == "angle");
    CHECK(process::mitre_factor(degrees(59.99)).ok());
}

TEST_CASE("narrow and wide stock meet without a step") {
    auto cut = flat();
    cut.rake = degrees(3.0);
    cut.penetration = 0.4;
    const double meet_in = 0.4 * 0.5 / std::tan(3.0 * 3.14159265358979 / 180.0);
    cut.width = inches(meet_in * (1.0 - 1e-9));
    const auto narrow = process::flat_shear_force(cut);
    cut.width = inches(meet_in * (1.0 + 1e-9));
    const auto wide = process::flat_shear_force(cut);
    CHECK(quantity::to_newtons(*narrow) ==
          doctest::Approx(quantity::to_newtons(*wide)).epsilon(1e-6));
}

TEST_CASE("rake never needs more than parallel blades, and nothing larger needs less") {
    std::mt19937 random(21); // fixed seed
    std::uniform_real_distribution<double> size(1.0, 300.0);
    std::uniform_real_distribution<double> rake(0.1, 29.0);
    std::uniform_real_distribution<double> share(0.1, 1.0);
    std::uniform_real_distribution<double> more(1.0, 1.5);
    for (int i = 0; i < 500; ++i) {
        const process::FlatShear parallel{millimetres(size(random)),
                                          millimetres(size(random) / 10.0),
                                          megapascals(400.0),
                                          {},
                                          1.0};
        process::FlatShear raked = parallel;
        raked.rake = degrees(rake(random));
        raked.penetration = share(random);
        CHECK(*process::flat_shear_force(raked) <= *process::flat_shear_force(parallel));
        process::FlatShear more_metal = raked;
        more_metal.width = more(random) * raked.width;
        more_metal.thickness = more(random) * raked.thickness;
        more_metal.penetration =
            smaller(Length::from_base(1.0), Length::from_base(more(random) * raked.penetration))
                .in_base();
        // One part in 1e12 for the last bits of the subtraction.
        CHECK(*process::flat_shear_force(more_metal) * (1.0 + 1e-12) >=
              *process::flat_shear_force(raked));
        const process::AngleShear angle{millimetres(50.0 + size(random)),
                                        millimetres(50.0),
                                        millimetres(6.0),
                                        megapascals(400.0)};
        process::AngleShear thicker = angle;
        thicker.thickness = more(random) * angle.thickness;
        CHECK(*process::angle_shear_force(thicker) >= *process::angle_shear_force(angle));
        const process::BarShear bar{BarShape::round, millimetres(size(random)), megapascals(400.0)};
        process::BarShear square = bar;
        square.shape = BarShape::square;
        CHECK(*process::bar_shear_force(square) > *process::bar_shear_force(bar));
    }
}

TEST_CASE("the working says whether rake was credited") {
    auto cut = flat();
    const auto parallel = process::flat_shear_working(cut);
    cut.rake = degrees(3.0);
    const auto raked = process::flat_shear_working(cut);
    REQUIRE(parallel.ok());
    REQUIRE(raked.ok());
    CHECK(parallel->note != raked->note);
    CHECK(raked->values.size() == parallel->values.size() + 3);
    CHECK(std::get<Force>(raked->result.value) == *process::flat_shear_force(cut));
    CHECK(process::bar_shear_working({BarShape::round, inches(1.0), ksi(60.0)})->card ==
          &process::k_bar_shear_card);
    CHECK(process::angle_shear_working({inches(3.0), inches(3.0), inches(0.25), ksi(50.0)})->card ==
          &process::k_angle_shear_card);
}
