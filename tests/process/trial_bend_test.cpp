#include "process/empirical_bend.h"
#include "process/trial_bend.h"

#include <doctest/doctest.h>

#include <string>

using namespace treadle;
using process::EmpiricalRule;
using process::LegsTo;

namespace {

const process::SharpBend k_bend{millimetres(4), millimetres(6), degrees(90)};

process::Trial trial(std::vector<Length> deductions) {
    return {k_bend, std::move(deductions), LegsTo::tangent_planes};
}

std::string field(const base::Result<Working>& working) {
    return working.ok() ? "" : working.refusal().field;
}

} // namespace

TEST_CASE("a K is refused outside the inner half and warned of under 0.25") {
    // K = ((20 - BD) / 1.5708 - 6) / 4: 0.5 at BD 7.4336, 0.25 at 9.0044, 0 at 10.5752.
    CHECK(field(process::trial_k_working(trial({millimetres(7.43)}))) == "radius");
    CHECK(process::trial_k_working(trial({millimetres(7.44)}))->note.empty());
    CHECK(process::trial_k_working(trial({millimetres(9.00)}))->note.empty());
    CHECK(process::trial_k_working(trial({millimetres(9.01)}))->note.find("Warning") == 0);
    CHECK(field(process::trial_k_working(trial({millimetres(10.58)}))) == "radius");
}

TEST_CASE("strips that lie far apart are warned of, one alone asks for a second") {
    const auto spread = [](double apart) {
        return process::trial_spread_working(trial({millimetres(8.3), millimetres(8.3 + apart)}))
            .value()
            .note;
    };
    CHECK(spread(0.30).empty()); // 0.048
    CHECK(spread(0.33).find("Warning") == 0);
    CHECK(process::trial_spread_working(trial({millimetres(8.3)}))->note.find("second") !=
          std::string::npos);
    CHECK(field(process::trial_deduction_working(trial({}))) == "deduction");
}

TEST_CASE("a leg is shorter than its strip") {
    const auto made =
        process::trial_deductions({{millimetres(200), millimetres(200), millimetres(10)}});
    REQUIRE_FALSE(made.ok());
    CHECK(made.refusal().field == "legs");
    CHECK_FALSE(process::trial_deductions({{{}, millimetres(10), millimetres(10)}}).ok());
}

TEST_CASE("a rule of thumb keeps v = 2 SB - BA, and K is what it comes to") {
    for (const EmpiricalRule rule : {EmpiricalRule::faa,
                                     EmpiricalRule::groover,
                                     EmpiricalRule::school_sheet,
                                     EmpiricalRule::us_shop}) {
        const auto figures = process::empirical_figures(k_bend, rule, LegsTo::apex);
        REQUIRE(figures.ok());
        CHECK(
            quantity::to_millimetres(figures->deduction) ==
            doctest::Approx(quantity::to_millimetres(2.0 * figures->setback - figures->allowance)));
        const auto same = process::bend_figures(
            k_bend, {process::BlankMethod::k_factor, figures->k, LegsTo::apex});
        REQUIRE(same.ok());
        CHECK(quantity::to_millimetres(same->allowance) ==
              doctest::Approx(quantity::to_millimetres(figures->allowance)));
    }
}

TEST_CASE("straight lines know 90 degrees only") {
    process::SharpBend other = k_bend;
    other.angle = degrees(60);
    CHECK(field(process::empirical_deduction_working(
              other, EmpiricalRule::school_sheet, LegsTo::apex)) == "angle");
    CHECK(process::empirical_allowance_working(other, EmpiricalRule::faa, LegsTo::apex).ok());
}
