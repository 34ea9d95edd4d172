#include "layout/angle_gage.h"

#include <cmath>

#include "layout/cards.h"
#include "layout/first_fault.h"

namespace treadle::layout {

namespace {

using base::Evidence;

constexpr base::CardSymbol k_gage_symbols[] = {{"a", "leg"},
                                               {"g", "heel to the single line"},
                                               {"g1", "heel to the first of two lines"},
                                               {"g2", "first line to second"}};
constexpr base::CardSymbol k_between_symbols[] = {{"ga", "gage in one leg"},
                                                  {"gb", "gage in the other"},
                                                  {"t", "thickness"},
                                                  {"g", "between the holes, legs laid flat"}};

struct GageRow {
    double leg;
    double single;
    double first; ///< 0: one line only
    double second;
};
// AISC Manual table 1-7A, inches; the whole table from memory.
constexpr GageRow k_rows[] = {
    {8.0, 4.5, 3.0, 3.0},
    {7.0, 4.0, 2.5, 3.0},
    {6.0, 3.5, 2.25, 2.5},
    {5.0, 3.0, 2.0, 1.75},
    {4.0, 2.5, 0, 0},
    {3.5, 2.0, 0, 0},
    {3.0, 1.75, 0, 0},
    {2.5, 1.375, 0, 0},
    {2.0, 1.125, 0, 0},
    {1.75, 1.0, 0, 0},
    {1.5, 0.875, 0, 0},
    {1.375, 0.875, 0, 0},
    {1.25, 0.75, 0, 0},
    {1.0, 0.625, 0, 0},
};

} // namespace

const base::FormulaCard k_angle_gage_card{
    "angle-gage",
    "Usual gage in the leg of an angle",
    "g, g1, g2 of leg a by the table",
    k_gage_symbols,
    "inch legs of the table; others where clearance and edge distance hold",
    "aisc-manual-1-7a",
    Evidence::from_memory,
    ""};
const base::FormulaCard k_angle_gage_between_card{"angle-gage-between",
                                                  "Distance between a hole in each leg of an angle",
                                                  "g = ga + gb - t",
                                                  k_between_symbols,
                                                  "legs laid flat, for the net section",
                                                  "aisc-360-16",
                                                  Evidence::from_memory,
                                                  ""};

base::Result<AngleGages> angle_gages(Length leg, const char* field) {
    if (const auto fault = quantity::size_fault(leg, field))
        return *fault;
    for (const GageRow& row : k_rows)
        if (std::abs(to_inches(leg) - row.leg) < 1e-6)
            return AngleGages{inches(row.single), inches(row.first), inches(row.second)};
    return base::Refusal{field,
                         "The table of gages has no leg of this size.",
                         "8, 7, 6, 5, 4, 3-1/2, 3, 2-1/2, 2, 1-3/4, 1-1/2, 1-3/8, 1-1/4, 1 in"};
}

base::Result<Working> angle_gage_working(Length leg, int line) {
    const auto gages = angle_gages(leg);
    if (!gages.ok())
        return gages.refusal();
    Working working{&k_angle_gage_card, {{"a", leg}}, {"g", gages->single}, "From memory."};
    if (line == 1)
        working.result = {"g1", gages->first};
    if (line == 2)
        working.result = {"g2", gages->first_to_second};
    return working;
}

base::Result<Working> gage_between_working(const BothLegs& legs) {
    const auto a = angle_gages(legs.leg_a, "leg_a");
    if (!a.ok())
        return a.refusal();
    const auto b = angle_gages(legs.leg_b, "leg_b");
    if (!b.ok())
        return b.refusal();
    if (const auto fault = quantity::size_fault(legs.thickness, "thickness"))
        return *fault;
    if (!clearly_less(legs.thickness, smaller(a->single, b->single)))
        return base::Refusal{"thickness", "The other leg covers the line.", "below the gage"};
    return Working{&k_angle_gage_between_card,
                   {{"ga", a->single}, {"gb", b->single}, {"t", legs.thickness}},
                   {"g", a->single + b->single - legs.thickness},
                   "Usual gages, from memory."};
}

} // namespace treadle::layout
