#include "process/die_clearance.h"

#include "process/cards.h"
#include "process/input_check.h"

namespace treadle::process {

namespace {

constexpr base::CardSymbol k_symbols[] = {
    {"C", "die opening less punch size"},
    {"t", "thickness"},
};

constexpr Length k_thickest = inches(1.5);
constexpr Length k_hard_from = inches(3.0 / 8.0);
constexpr Stress k_hard_minimum = ksi(70.0);

/// Common practice, no source.
Length total_step(Length thickness, bool harder) {
    if (thickness > inches(1.0))
        return inches(3.0 / 32.0);
    if (thickness >= inches(0.5) || (harder && thickness >= k_hard_from))
        return inches(1.0 / 16.0);
    if (thickness >= inches(3.0 / 16.0))
        return inches(1.0 / 32.0);
    return inches(1.0 / 64.0);
}

DieClearance from_total(Length total, Length thickness) {
    return {total, total / 2.0, total / thickness};
}

const char* share_note(double share) {
    if (share < k_least_clearance_share)
        return "Under 6 % of the thickness in all: tight, expect a chipped die and hard stripping.";
    if (share > k_most_clearance_share)
        return "Over 25 % of the thickness in all: loose, expect roll-over and burr.";
    return "";
}

} // namespace

const base::FormulaCard k_die_clearance_card{
    "die-clearance",
    "Clearance between punch and die, both sides together",
    "C = 1/64 in under 3/16, 1/32 from 3/16, 1/16 from 1/2 (harder metal from 3/8), 3/32 over 1 in",
    k_symbols,
    "up to 1-1/2 in thick; the punch carries the size of the hole",
    "common-practice-clearance",
    base::Evidence::common_practice,
    ""};

/// Looks at the bands that reach the thickness where it matters, so that the answer is one for the
/// grade and the clearance never falls as the metal gets thicker.
bool is_harder(const Grade& grade) {
    if (grade.family == material::Family::stainless_steel)
        return true;
    for (const material::StrengthBand& band : grade.bands)
        if (band.up_to >= k_hard_from && band.tensile_minimum >= k_hard_minimum)
            return true;
    return false;
}

base::Result<DieClearance> die_clearance(Length thickness, const Grade* grade) {
    InputCheck check;
    check.length(thickness, "thickness");
    if (check.failed())
        return check.refusal();
    if (grade != nullptr && grade->refusal.cutting)
        return base::Refusal{"material", grade->refusal.reason, ""};
    if (thickness > k_thickest)
        return base::Refusal{"thickness",
                             "The usual clearance steps do not reach so thick a metal.",
                             "up to 1-1/2 in"};
    return from_total(total_step(thickness, grade != nullptr && is_harder(*grade)), thickness);
}

base::Result<DieClearance> clearance_of_pair(Length punch, Length die, Length thickness) {
    InputCheck check;
    check.length(punch, "punch").length(die, "die").length(thickness, "thickness");
    if (check.failed())
        return check.refusal();
    // Rounding of a conversion must not turn an equal pair into a hair of clearance.
    if (!clearly_below(punch, die))
        return base::Refusal{"die", "The die is not larger than the punch: they would strike.", ""};
    return from_total(die - punch, thickness);
}

base::Result<Working> die_clearance_working(Length thickness, const Grade* grade) {
    const auto clearance = die_clearance(thickness, grade);
    if (!clearance.ok())
        return clearance.refusal();
    return Working{&k_die_clearance_card,
                   {{"t", thickness}},
                   {"C", clearance->total},
                   share_note(clearance->share)};
}

} // namespace treadle::process
