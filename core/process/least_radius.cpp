// The smallest-radius tables of air_bend.h, small and closed: one standard each.

#include "process/air_bend.h"
#include "process/cards.h"
#include "process/input_check.h"

#include <array>
#include <cstddef>
#include <span>
#include <string_view>

namespace treadle::process {

namespace {

using material::Grain;

constexpr base::CardSymbol k_symbols[] = {
    {"r", "smallest inside radius"},
    {"t", "thickness"},
    {"A", "angle turned through"},
};

/// Refusals and answers carry the rule that made them into the working.
struct Found {
    Length radius;
    const base::FormulaCard* card = nullptr;
    const char* note = "";
};

base::Refusal not_covered(const char* range) {
    return {
        "thickness", "The least-radius table of this metal does not cover the thickness.", range};
}

// --- Structural plate ------------------------------------------------------------------------

/// Radius over thickness up to a thickness; a row is a rising list of them.
struct Step {
    double up_to_in;
    double ratio;
};

// ASTM A6/A6M appendix X4, suggested minimum inside radii, bend line across the final rolling
// direction, as seen in a scan of an older edition. The last column is "over 2 in".
constexpr double k_no_end = 1e9;
using PlateRow = std::array<Step, 4>;
constexpr PlateRow k_a6_a{{{0.75, 1.5}, {1.0, 1.5}, {2.0, 1.5}, {k_no_end, 1.5}}};
constexpr PlateRow k_a6_b{{{0.75, 1.5}, {1.0, 1.5}, {2.0, 1.5}, {k_no_end, 2.0}}};
constexpr PlateRow k_a6_c{{{0.75, 1.5}, {1.0, 1.5}, {2.0, 2.0}, {k_no_end, 2.5}}};
constexpr PlateRow k_a6_d{{{0.75, 1.5}, {1.0, 1.5}, {2.0, 2.5}, {k_no_end, 3.0}}};
constexpr PlateRow k_a6_e{{{0.75, 1.5}, {1.0, 1.5}, {2.0, 3.0}, {k_no_end, 3.5}}};
constexpr PlateRow k_a6_f{{{0.75, 1.75}, {1.0, 2.25}, {2.0, 4.5}, {k_no_end, 5.5}}};

// Service-centre practice for A36 and for grade 50: common practice, no source. In grade 50 it is
// stricter than A6, so the larger of the two counts.
constexpr std::array<Step, 3> k_practice_a36{{{0.25, 1.0}, {0.5, 1.5}, {1.0, 2.0}}};
constexpr std::array<Step, 3> k_practice_50{{{0.1875, 1.5}, {0.229, 2.0}, {0.5, 2.5}}};

/// Radius by a stepped row; thicker metal never gets a smaller radius than thinner metal had.
Length by_steps(std::span<const Step> steps, Length t) {
    Length radius;
    for (const Step& step : steps) {
        const Length edge = inches(step.up_to_in);
        if (t <= edge)
            return larger(radius, step.ratio * t);
        radius = larger(radius, step.ratio * edge);
    }
    return radius;
}

Found plate(const PlateRow& row, std::span<const Step> practice, Length t, Grain grain) {
    const Length printed = by_steps(row, t);
    const Length shop = by_steps(practice, t);
    // Along the rolling direction A6 asks for half as much again; unknown counts as along.
    const double along = grain == Grain::across ? 1.0 : 1.5;
    if (shop > printed)
        return {along * shop,
                &k_least_radius_practice_card,
                "Service-centre practice is stricter than ASTM A6 X4 here, so it decides."};
    return {along * printed, &k_least_radius_plate_card, "Bend lines over 36 in want more."};
}

// --- Columns of thickness --------------------------------------------------------------------

/// Index of the first column that reaches the thickness; the count of columns when none does.
std::size_t column_for(std::span<const double> up_to_mm, Length t) {
    std::size_t column = 0;
    while (column < up_to_mm.size() && clearly_below(millimetres(up_to_mm[column]), t))
        ++column;
    return column;
}

// DIN 6935 (1975-10), smallest inside radii in mm, bend angle up to 120 degrees and across the
// rolling direction; along it or over 120 degrees the next thicker column. Rows by minimum Rm.
constexpr std::array<double, 15> k_din_up_to_mm{
    1, 1.5, 2.5, 3, 4, 5, 6, 7, 8, 10, 12, 14, 16, 18, 20};
using DinRow = std::array<double, 15>;
constexpr DinRow k_din_390{1, 1.6, 2.5, 3, 5, 6, 8, 10, 12, 16, 20, 25, 28, 36, 40};
constexpr DinRow k_din_490{1.2, 2, 3, 4, 5, 8, 10, 12, 16, 20, 25, 28, 32, 40, 45};
constexpr DinRow k_din_640{1.6, 2.5, 4, 5, 6, 8, 10, 12, 16, 20, 25, 32, 36, 45, 50};

base::Result<Found> din(const DinRow& row, Length t, Grain grain, Angle angle) {
    std::size_t column = column_for(k_din_up_to_mm, t);
    const bool next = grain != Grain::across || angle > degrees(120.0);
    if (next)
        ++column;
    if (column >= row.size())
        return not_covered(next ? "up to 18 mm along the rolling direction, or over 120 degrees"
                                : "up to 20 mm");
    return Found{millimetres(row[column]),
                 &k_least_radius_din_card,
                 next ? "Next thicker column: along the rolling direction (or unknown), "
                        "or over 120 degrees."
                      : "Across the rolling direction."};
}

// Aluminium, 90-degree cold bends, radius over thickness at these thicknesses: Aluminum Association
// table as reproduced in an open design note. 0 (a sharp bend) is taken as 0.5.
// 3003-H14 is the printed row of 1100-H14, from memory. 6063-T6 is treated as 6061-T6: its own row
// (from memory) is the smaller.
constexpr std::array<double, 8> k_aluminium_at_mm{25.4 / 64.0,
                                                  25.4 / 32.0,
                                                  25.4 / 16.0,
                                                  25.4 / 8.0,
                                                  25.4 * 3.0 / 16.0,
                                                  25.4 / 4.0,
                                                  25.4 * 3.0 / 8.0,
                                                  25.4 / 2.0};
using AluminiumRow = std::array<double, 8>;
constexpr AluminiumRow k_al_3003_h14{0.5, 0.5, 0.5, 1, 1, 1.5, 2, 2.5};
constexpr AluminiumRow k_al_5052_h32{0.5, 0.5, 1, 1.5, 1.5, 1.5, 1.5, 2};
constexpr AluminiumRow k_al_6061_t6{1, 1, 1.5, 2.5, 3, 3.5, 4.5, 5};

base::Result<Found> aluminium(const AluminiumRow& row, Length t, Grain grain, Angle angle) {
    if (angle > degrees(90.0))
        return base::Refusal{"angle",
                             "The aluminium table is for bends of up to 90 degrees turned.",
                             "up to 90 degrees"};
    std::size_t column = column_for(k_aluminium_at_mm, t);
    if (grain != Grain::across)
        ++column;
    if (column >= row.size())
        return not_covered(grain == Grain::across ? "up to 1/2 in"
                                                  : "up to 3/8 in along the rolling direction");
    return Found{row[column] * t,
                 &k_least_radius_aluminium_card,
                 "Next thicker column of the aluminium table, one more along the rolling "
                 "direction (or unknown). Tempered plate may crack all the same: try it."};
}

/// Annealed 304 and 316: 1 t to 3/8 in, 2 t above (EN 1090-2 and ASTM A480 bend test, both quoted
/// or from memory); half as much again along the rolling direction, common practice.
Found austenitic(Length t, Grain grain) {
    const double ratio = t > inches(3.0 / 8.0) ? 2.0 : 1.0;
    return {(grain == Grain::across ? ratio : 1.5 * ratio) * t,
            &k_least_radius_austenitic_card,
            "Annealed austenitic sheet and plate; cold-worked metal asks for more."};
}

base::Result<Found> look_up(std::string_view group, Length t, Grain grain, Angle angle) {
    if (group == "A6-A")
        return plate(k_a6_a, {}, t, grain);
    if (group == "A6-B")
        return plate(k_a6_b, k_practice_a36, t, grain);
    if (group == "A6-C")
        return plate(k_a6_c, k_practice_50, t, grain);
    if (group == "A6-D")
        return plate(k_a6_d, k_practice_50, t, grain);
    if (group == "A6-E")
        return plate(k_a6_e, k_practice_50, t, grain);
    if (group == "A6-F")
        return plate(k_a6_f, k_practice_50, t, grain);
    if (group == "din-390")
        return din(k_din_390, t, grain, angle);
    if (group == "din-490")
        return din(k_din_490, t, grain, angle);
    if (group == "din-640")
        return din(k_din_640, t, grain, angle);
    if (group == "austenitic")
        return austenitic(t, grain);
    if (group == "al-3003-H14")
        return aluminium(k_al_3003_h14, t, grain, angle);
    if (group == "al-5052-H32")
        return aluminium(k_al_5052_h32, t, grain, angle);
    if (group == "al-6061-T6" || group == "al-6063-T6")
        return aluminium(k_al_6061_t6, t, grain, angle);
    return base::Refusal{
        "material", "No table of least radii is known for this metal: ask its producer.", ""};
}

base::Result<Found> find(Length thickness, const Grade& grade, Grain grain, Angle angle) {
    InputCheck check;
    check.length(thickness, "thickness").angle_within(angle, 0.0, 180.0, "angle");
    if (check.failed())
        return check.refusal();
    if (grade.refusal.bending)
        return base::Refusal{"material", grade.refusal.reason, ""};
    return look_up(grade.bend_group, thickness, grain, angle);
}

} // namespace

const base::FormulaCard k_least_radius_plate_card{
    "least-radius-plate",
    "Smallest inside radius, structural plate",
    "r = 1.5 t (groups A to E to 1 in), 1.75-5.5 t by group and thickness; x 1.5 along the rolling "
    "direction",
    k_symbols,
    "cold bends, sound edges, burr inside; unknown rolling direction counts as along the bend",
    "astm-a6-x4",
    base::Evidence::published,
    ""};
const base::FormulaCard k_least_radius_practice_card{
    "least-radius-practice",
    "Smallest inside radius, service-centre practice",
    "r = 1-2 t (A36 to 1 in), 1.5-2.5 t (grade 50 to 1/2 in); x 1.5 along the rolling direction",
    k_symbols,
    "cold bends, sound edges, burr inside; used where it is stricter than the standard",
    "common-practice-bending",
    base::Evidence::common_practice,
    ""};
const base::FormulaCard k_least_radius_din_card{
    "least-radius-din",
    "Smallest inside radius, unalloyed structural steel",
    "r = table by least tensile strength and thickness",
    k_symbols,
    "to 20 mm, up to 120 degrees and across the rolling direction; else the next thicker column",
    "din-6935",
    base::Evidence::published,
    ""};
const base::FormulaCard k_least_radius_aluminium_card{
    "least-radius-aluminium",
    "Smallest inside radius, aluminium",
    "r = table ratio of alloy, temper and thickness x t; not under 0.5 t",
    k_symbols,
    "to 1/2 in, up to 90 degrees; along the rolling direction the next thicker column",
    "aluminum-association-bend",
    base::Evidence::published,
    ""};
const base::FormulaCard k_least_radius_austenitic_card{
    "least-radius-austenitic",
    "Smallest inside radius, austenitic stainless steel",
    "r = 1 t to 3/8 in, 2 t above; x 1.5 along the rolling direction",
    k_symbols,
    "annealed metal, sound edges; cold-worked metal asks for more",
    "common-practice-bending",
    base::Evidence::common_practice,
    ""};

base::Result<Length> least_radius(Length thickness, const Grade& grade, Grain grain, Angle angle) {
    const auto found = find(thickness, grade, grain, angle);
    if (!found.ok())
        return found.refusal();
    return found->radius;
}

base::Result<Working>
least_radius_working(Length thickness, const Grade& grade, Grain grain, Angle angle) {
    const auto found = find(thickness, grade, grain, angle);
    if (!found.ok())
        return found.refusal();
    return Working{
        found->card, {{"t", thickness}, {"A", angle}}, {"r", found->radius}, found->note};
}

} // namespace treadle::process
