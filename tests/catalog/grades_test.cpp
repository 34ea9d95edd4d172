#include "material/grade.h"

#include <doctest/doctest.h>

#include <cmath>
#include <set>
#include <string>
#include <vector>

#include "catalog/rows.h"

using namespace treadle;
using catalog::Json;

namespace {

const std::set<std::string> k_families{
    "carbon-steel", "stainless-steel", "aluminium", "copper-alloy"};
/// Rows of the least-radius tables; "" says that none is known.
const std::set<std::string> k_bend_groups{"",
                                          "A6-B",
                                          "A6-C",
                                          "din-390",
                                          "din-490",
                                          "din-640",
                                          "austenitic",
                                          "al-3003-H14",
                                          "al-5052-H32",
                                          "al-6061-T6",
                                          "al-6063-T6"};

Grade grade_of(const Json& row) {
    Grade grade;
    grade.id = row.at("id").get<std::string>();
    grade.name = row.at("name").get<std::string>();
    grade.standard = row.at("standard").get<std::string>();
    for (const Json& band : row.at("bands"))
        grade.bands.push_back({millimetres(band.at("up_to_mm").get<double>()),
                               megapascals(band.at("yield_minimum_MPa").get<double>()),
                               megapascals(band.at("tensile_minimum_MPa").get<double>()),
                               megapascals(band.at("tensile_upper_MPa").get<double>())});
    grade.shear_ratio = row.at("shear_ratio").get<double>();
    grade.elongation_pct = row.at("elongation_pct").get<double>();
    grade.density = quantity::kilograms_per_cubic_metre(row.at("density_kg_per_m3").get<double>());
    grade.modulus = megapascals(row.at("modulus_GPa").get<double>() * 1000.0);
    grade.air_bend_share = row.at("air_bend_share").get<double>();
    if (row.contains("refusal")) {
        const Json& refusal = row.at("refusal");
        grade.refusal = {refusal.at("cutting").get<bool>(),
                         refusal.at("bending").get<bool>(),
                         refusal.at("reason").get<std::string>()};
    }
    return grade;
}

material::GradeTable all_grades() {
    material::GradeTable table;
    for (const Json& row : catalog::read("catalog/grades.json"))
        table.rows.push_back(grade_of(row));
    return table;
}

const Grade& grade(const material::GradeTable& table, const char* id) {
    const Grade* found = table.find(id);
    REQUIRE(found != nullptr);
    return *found;
}

double upper_ksi(const Grade& grade, Length t) {
    return quantity::to_ksi(upper_tensile(grade, t).value().value);
}

/// "36 / 58-80 ksi": yield, least tensile, and the largest when one is printed.
std::vector<double> printed_strengths_mpa(const std::string& text) {
    const std::size_t slash = text.find(" / ");
    const std::size_t space = text.rfind(' ');
    REQUIRE(slash != std::string::npos);
    const std::string unit = text.substr(space + 1);
    REQUIRE((unit == "ksi" || unit == "MPa"));
    const double ratio = unit == "ksi" ? quantity::k_megapascals_per_ksi : 1.0;
    const std::string range = text.substr(slash + 3, space - slash - 3);
    std::vector<double> out{std::stod(text) * ratio, std::stod(range) * ratio};
    if (const std::size_t dash = range.find('-'); dash != std::string::npos)
        out.push_back(std::stod(range.substr(dash + 1)) * ratio);
    return out;
}

} // namespace

TEST_CASE("every grade row has its keys, a source and evidence, and passes the room's own check") {
    const Json rows = catalog::read("catalog/grades.json");
    const Json sources = catalog::read("sources.json");
    std::set<std::string> ids;
    for (const Json& row : rows) {
        const std::string id = row.at("id").get<std::string>();
        CAPTURE(id);
        CHECK(ids.insert(id).second);
        CHECK(k_families.count(row.at("family").get<std::string>()) == 1);
        CHECK(k_bend_groups.count(row.at("bend_group").get<std::string>()) == 1);
        CHECK(row.at("note").is_string());
        catalog::check_source_and_evidence(row, sources);
        CHECK(checked(grade_of(row)).ok());
    }
    // 27 graded materials, wear plate among them, and two rows of what is always refused.
    CHECK(ids.size() == 29);
}

TEST_CASE("strengths used are the printed ones, the upper one never below the print") {
    int compared = 0;
    for (const Json& row : catalog::read("catalog/grades.json")) {
        const std::string id = row.at("id").get<std::string>();
        CAPTURE(id);
        for (const Json& band : row.at("bands")) {
            const auto printed = printed_strengths_mpa(band.at("as_printed").get<std::string>());
            CHECK(std::abs(band.at("yield_minimum_MPa").get<double>() - printed[0]) < 1e-9);
            CHECK(std::abs(band.at("tensile_minimum_MPa").get<double>() - printed[1]) < 1e-9);
            CHECK(band.at("tensile_upper_MPa").get<double>() >= printed.back() - 1e-9);
            ++compared;
        }
    }
    CHECK(compared >= 33);
}

TEST_CASE("thickness limits are the printed ones") {
    int compared = 0;
    for (const Json& row : catalog::read("catalog/grades.json")) {
        for (const Json& band : row.at("bands")) {
            const std::string printed = band.at("up_to_as_printed").get<std::string>();
            CAPTURE(printed);
            const bool under = printed.rfind("under ", 0) == 0;
            const std::string text = under ? printed.substr(6) : printed;
            const double limit = catalog::printed_lengths_mm(text).at(0);
            const double used = band.at("up_to_mm").get<double>();
            if (under) {
                CHECK(used < limit);
            } else {
                CHECK(std::abs(used - limit) < 1e-9);
            }
            ++compared;
        }
    }
    CHECK(compared >= 33);
}

// EN 10025-2 prints a higher tensile range under 3 mm for S275 and S355; carried on beyond it, so
// that 3 mm metal is never easier than metal just under it.
TEST_CASE("thickness times strength never falls with thickness, in any grade") {
    int compared = 0;
    for (const Grade& g : all_grades().rows) {
        CAPTURE(g.id);
        double upper_before = 0.0;
        double lower_before = 0.0;
        for (int i = 1; i <= 4000; ++i) {
            const Length t = millimetres(0.025 * i);
            const auto upper = upper_tensile(g, t);
            const auto lower = careful_minimum(g, t);
            if (!upper)
                break;
            const double mm = quantity::to_millimetres(t);
            CHECK(upper->value.in_base() * mm >= upper_before * (1.0 - 1e-12));
            CHECK(lower->value.in_base() * mm >= lower_before * (1.0 - 1e-12));
            upper_before = upper->value.in_base() * mm;
            lower_before = lower->value.in_base() * mm;
            ++compared;
        }
    }
    CHECK(compared > 10000);
}

TEST_CASE("wear plate, castings and unknown scrap are refused for every operation") {
    const auto table = all_grades();
    for (const char* id : {"AR400", "grey-iron", "unknown-scrap"}) {
        const Grade& g = grade(table, id);
        CHECK(g.refusal.cutting);
        CHECK(g.refusal.bending);
        CHECK_FALSE(g.refusal.reason.empty());
        CHECK_FALSE(upper_tensile(g, millimetres(5)).ok());
    }
    int refused = 0;
    for (const Grade& g : table.rows)
        refused += g.refusal.cutting || g.refusal.bending ? 1 : 0;
    CHECK(refused == 3);
}

TEST_SUITE("published") {

    // ASTM A36, ASTM A529: tensile ranges, read in excerpt. Exact.
    TEST_CASE("A36 reaches 80 ksi and A529 100 ksi") {
        const auto table = all_grades();
        const Grade& a36 = grade(table, "A36");
        CHECK(std::abs(upper_ksi(a36, inches(0.5)) - 80.0) < 1e-9);
        CHECK(upper_tensile(a36, inches(4)).ok());
        CHECK_FALSE(upper_tensile(a36, inches(4.001)).ok());
        const auto least = minimum_tensile(a36, inches(0.5));
        CHECK(std::abs(quantity::to_ksi(least.value().value) - 58.0) < 1e-9);
        CHECK(std::abs(upper_ksi(grade(table, "A529-50"), inches(0.5)) - 100.0) < 1e-9);
        // common practice, no source: A572 prints no maximum
        CHECK(std::abs(upper_ksi(grade(table, "a572 50"), inches(0.5)) - 85.0) < 1e-9);
    }

    // EN 10025-2 (2004), table 7, read in excerpt: yield falls over 16 mm, tensile range rises
    // under 3 mm. Exact.
    TEST_CASE("EN 10025-2 bands, both sides of 3 mm and 16 mm") {
        const auto table = all_grades();
        const Grade& s235 = grade(table, "S235JR");
        CHECK(band_for(s235, millimetres(16)).value().yield_minimum == megapascals(235));
        CHECK(band_for(s235, millimetres(20)).value().yield_minimum == megapascals(225));
        const Grade& s275 = grade(table, "S275JR");
        CHECK(minimum_tensile(s275, millimetres(2)).value().value == megapascals(430));
        CHECK(upper_tensile(s275, millimetres(2)).value().value == megapascals(580));
        CHECK(minimum_tensile(s275, millimetres(3)).value().value == megapascals(410));
        CHECK(upper_tensile(s275, millimetres(4)).value().value == megapascals(560));
        const Grade& s355 = grade(table, "S355J2");
        CHECK(upper_tensile(s355, millimetres(2)).value().value == megapascals(680));
        const Stress upper = upper_tensile(s355, millimetres(10)).value().value;
        CHECK(std::abs(shear_strength(s355, upper).in_base() - 504.0) < 1e-9);
    }

} // TEST_SUITE
