// The plan's K is the one that the command gives for the same strips: worked by hand and asked.

#include "plan/fixture.h"

#include "evidence_rows.h"
#include "published/asked_rows.h"

using namespace treadle;
using namespace treadle::test;

namespace {

struct Strips {
    const char* where;
    double thickness_mm, radius_mm, blank_mm, leg_a_mm, leg_b_mm;
    double k, half_digit;
};

/// A bend of this thickness on the bench, by the strips where their K is sound.
plan::OperationPlan planned(const Strips& row) {
    Bench bench;
    job::Part part = plate(millimetres(row.thickness_mm), inches(4.0), Length{});
    part.legs = {inches(6.0), inches(6.0)};
    part.operations = {job::Bend{degrees(90.0), {}, true}};
    equipment::TrialRecord record;
    record.grade = "A36";
    record.thickness = millimetres(row.thickness_mm);
    record.opening = bench.plan(part).operations[0].tools.opening;
    record.radius = millimetres(row.radius_mm);
    record.angle = degrees(90.0);
    record.strips = {
        {millimetres(row.blank_mm), millimetres(row.leg_a_mm), millimetres(row.leg_b_mm)}};
    bench.shop.trials = {record};
    return bench.plan(part).operations[0];
}

auto asked(const Strips& row) {
    const auto length = [](double value_mm) { return std::to_string(value_mm) + " mm"; };
    return ask("bend.k_from_trial",
               {{"thickness", length(row.thickness_mm)},
                {"radius", length(row.radius_mm)},
                {"angle", "90"},
                {"blank", length(row.blank_mm)},
                {"legs", calc::Input::List{length(row.leg_a_mm), length(row.leg_b_mm)}}});
}

} // namespace

TEST_SUITE("worked") {

    TEST_CASE("a planned bend goes by K = ((2 SB - BD) / A - r) / t of its strips") {
        // 6.000 in: BD 0.442, BA 0.558, K 0.421. 200 mm: BD 8.3, BA 11.7, K 0.362.
        const std::vector<Strips> k_rows{
            {"0.250 in, legs 3.221", 6.35, 6.35, 152.4, 81.8134, 81.8134, 0.421, 0.0005},
            {"4 mm, legs 104.1 and 104.2", 4, 6, 200, 104.1, 104.2, 0.362, 0.0005}};
        CHECK(k_rows.size() == 2);
        for (const Strips& row : k_rows) {
            CAPTURE(row.where);
            const auto bend = planned(row);
            CHECK(bend.blank_source == plan::BlankSource::trial);
            CHECK(std::abs(bend.figures.k - row.k) <= row.half_digit);
            CHECK(bend.figures.k == doctest::Approx(figure(asked(row), "k")).epsilon(1e-6));
        }
        count_rows("worked", k_rows.size(), "bend.k_from_trial");
    }

    TEST_CASE("strips that the command refuses are not planned by") {
        // BD 6.2: K 0.696, outside the inner half of the metal.
        const Strips wide{"4 mm, legs 103.0 and 103.2", 4, 6, 200, 103.0, 103.2, 0, 0};
        CHECK(field_of(asked(wide)) == "radius");
        const auto bend = planned(wide);
        CHECK(bend.blank_source == plan::BlankSource::din6935);
        CHECK(warns(bend, plan::Rule::trial_strip));
    }
}
