#include "process/springback.h"

#include "process/cards.h"
#include "process/input_check.h"

#include <array>
#include <cmath>

namespace treadle::process {

namespace {

using base::Evidence;

constexpr base::CardSymbol k_radius_symbols[] = {
    {"Ri", "inside radius before springback"},
    {"Rf", "inside radius after"},
    {"Y", "yield strength"},
    {"E", "modulus"},
    {"t", "thickness"},
    {"X", "Ri Y / (E t)"},
};
constexpr base::CardSymbol k_angle_symbols[] = {
    {"Ai", "angle turned before springback"},
    {"Af", "angle turned after"},
    {"Ri", "inside radius before springback"},
    {"Rf", "inside radius after"},
    {"t", "thickness"},
};
constexpr base::CardSymbol k_factor_symbols[] = {
    {"Ri", "inside radius before springback"},
    {"Rf", "inside radius after"},
    {"Ai", "angle turned before springback"},
    {"Af", "angle turned after"},
    {"kR", "angle after over angle before"},
    {"t", "thickness"},
};

constexpr const char* k_trial = "An estimate: bend a trial strip.";

// Tabellenbuch Metall: rows read in excerpt, columns from memory. 0 ends a shorter row.
constexpr std::array<double, 11> k_ratios{1, 1.6, 2.5, 4, 6.3, 10, 16, 25, 40, 63, 100};
struct FactorRow {
    const char* metal;
    std::array<double, 11> factor;
};
constexpr std::array k_factors{
    FactorRow{"DC04", {.99, .99, .99, .98, .97, .97, .96, .94, .91, .87, .83}},
    FactorRow{"DC01", {.99, .99, .99, .97, .96, .96, .93, .90, .85, .77, .66}},
    FactorRow{"X12CrNi18-8", {.99, .98, .97, .95, .93, .89, .84, .76, .63, 0, 0}},
    FactorRow{"E-Cu-R20", {.98, .97, .97, .96, .95, .93, .90, .85, .79, .72, .60}},
    FactorRow{"CuZn33-R29", {.97, .97, .96, .95, .94, .93, .89, .86, .83, .77, .73}},
    FactorRow{"EN-AW-Al99.0", {.99, .99, .99, .99, .98, .98, .97, .97, .96, .95, .93}},
    FactorRow{"EN-AW-AlCuMg1", {.98, .98, .98, .98, .97, .97, .96, .95, .93, .91, .87}},
    FactorRow{"EN-AW-AlSiMgMn", {.98, .98, .97, .96, .95, .93, .90, .86, .82, .76, .72}},
};

InputCheck checked_shape(const SpringBend& bend) {
    InputCheck check;
    check.length(bend.thickness, "thickness")
        .length(bend.radius, "radius")
        .angle_within(bend.angle, 0.0, 180.0, "angle");
    return check;
}

base::Refusal past_closing() {
    return {"angle", "Springback would ask for more than a closed bend.", "a smaller angle"};
}

/// The one root between 0 and the radius after: what is left falls steadily as Ri grows.
Length radius_before(const SpringBend& bend) {
    const double per_length = bend.yield_strength / bend.modulus; // X = per_length Ri / t
    Length low;
    Length high = smaller(bend.radius, bend.thickness * (0.5 / per_length));
    for (int halving = 0; halving < 200; ++halving) {
        const Length middle = (low + high) / 2.0;
        const double x = per_length * (middle / bend.thickness);
        const bool below = bend.radius * (4.0 * x * x * x - 3.0 * x + 1.0) > middle;
        (below ? low : high) = middle;
    }
    return (low + high) / 2.0;
}

base::Result<Length> checked_radius_before(const SpringBend& bend) {
    InputCheck check = checked_shape(bend);
    check.stress(bend.yield_strength, "yield_strength").modulus(bend.modulus, "modulus");
    if (check.failed())
        return check.refusal();
    return radius_before(bend);
}

/// By the row, on a straight line between its columns.
base::Result<double> factor(const SpringBend& bend, std::size_t metal) {
    TREADLE_EXPECT(metal < k_factors.size());
    const InputCheck check = checked_shape(bend);
    if (check.failed())
        return check.refusal();
    const std::array<double, 11>& row = k_factors[metal].factor;
    const double ratio = bend.radius / bend.thickness;
    for (std::size_t i = 0; i < row.size() && row[i] > 0.0; ++i) {
        if (std::abs(ratio - k_ratios[i]) <= 1e-9 * ratio)
            return row[i];
        if (ratio < k_ratios[i] && i > 0) {
            const double share = (ratio - k_ratios[i - 1]) / (k_ratios[i] - k_ratios[i - 1]);
            return row[i - 1] + share * (row[i] - row[i - 1]);
        }
        if (ratio < k_ratios[i])
            break;
    }
    return base::Refusal{"radius",
                         "The table of springback factors has no value for this radius.",
                         row[10] > 0.0 ? "1 to 100 times the thickness"
                                       : "1 to 40 times the thickness"};
}

} // namespace

const base::FormulaCard k_springback_radius_card{
    "springback-radius",
    "Inside radius to bend to",
    "Ri / Rf = 4 X^3 - 3 X + 1, X = Ri Y / (E t)",
    k_radius_symbols,
    "pure bending, X below 0.5; at small radii it gives almost none, which is not the whole story",
    "kalpakjian-schmid",
    Evidence::published,
    ""};
const base::FormulaCard k_springback_angle_card{"springback-angle",
                                                "Angle to bend to",
                                                "Ai (Ri + t / 2) = Af (Rf + t / 2)",
                                                k_angle_symbols,
                                                "neutral line in the middle keeps its length",
                                                "kalpakjian-schmid",
                                                Evidence::published,
                                                ""};
const base::FormulaCard k_springback_factor_radius_card{
    "springback-factor-radius",
    "Inside radius to bend to, by the factor table",
    "Ri = kR (Rf + t / 2) - t / 2",
    k_factor_symbols,
    "Rf / t from 1 to 100; between columns on a straight line",
    "tabellenbuch-metall",
    Evidence::from_memory,
    ""};
const base::FormulaCard k_springback_factor_angle_card{
    "springback-factor-angle",
    "Angle to bend to, by the factor table",
    "Ai = Af / kR",
    k_factor_symbols,
    "Rf / t from 1 to 100; between columns on a straight line",
    "tabellenbuch-metall",
    Evidence::from_memory,
    ""};

base::Result<Working> springback_radius_working(const SpringBend& bend) {
    const auto before = checked_radius_before(bend);
    if (!before.ok())
        return before.refusal();
    const double x = bend.yield_strength / bend.modulus * (*before / bend.thickness);
    return Working{&k_springback_radius_card,
                   {{"Rf", bend.radius},
                    {"Y", bend.yield_strength},
                    {"E", bend.modulus},
                    {"t", bend.thickness},
                    {"X", quantity::Number{x, 4}}},
                   {"Ri", *before},
                   k_trial};
}

base::Result<Working> springback_angle_working(const SpringBend& bend) {
    const auto before = checked_radius_before(bend);
    if (!before.ok())
        return before.refusal();
    const Length middle = bend.thickness / 2.0;
    const Angle angle = bend.angle * ((bend.radius + middle) / (*before + middle));
    if (!(angle < degrees(180.0)))
        return past_closing();
    return Working{
        &k_springback_angle_card,
        {{"Af", bend.angle}, {"Rf", bend.radius}, {"Ri", *before}, {"t", bend.thickness}},
        {"Ai", angle},
        k_trial};
}

std::size_t springback_metal_count() { return k_factors.size(); }

const char* springback_metal(std::size_t index) {
    TREADLE_EXPECT(index < k_factors.size());
    return k_factors[index].metal;
}

base::Result<Working> springback_factor_radius_working(const SpringBend& bend, std::size_t metal) {
    const auto kr = factor(bend, metal);
    if (!kr.ok())
        return kr.refusal();
    const Length middle = bend.thickness / 2.0;
    return Working{&k_springback_factor_radius_card,
                   {{"kR", quantity::Number{*kr, 3}}, {"Rf", bend.radius}, {"t", bend.thickness}},
                   {"Ri", *kr * (bend.radius + middle) - middle},
                   k_trial};
}

base::Result<Working> springback_factor_angle_working(const SpringBend& bend, std::size_t metal) {
    const auto kr = factor(bend, metal);
    if (!kr.ok())
        return kr.refusal();
    const Angle angle = bend.angle / *kr;
    if (!(angle < degrees(180.0)))
        return past_closing();
    return Working{&k_springback_factor_angle_card,
                   {{"Af", bend.angle}, {"kR", quantity::Number{*kr, 3}}},
                   {"Ai", angle},
                   k_trial};
}

} // namespace treadle::process
