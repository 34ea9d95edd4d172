#include "process/notch.h"

#include "process/cards.h"
#include "process/input_check.h"

#include <cmath>

namespace treadle::process {

namespace {

constexpr base::CardSymbol k_force_symbols[] = {
    {"F", "peak force of one bite"},
    {"L", "length of the cut edge"},
    {"t", "thickness"},
    {"S", "shear strength, upper bound of the metal"},
};
constexpr base::CardSymbol k_bites_symbols[] = {
    {"n", "bites"},
    {"Ltot", "length of the notch"},
    {"b", "length of the tool"},
    {"o", "overlap of two bites"},
};

constexpr double k_most_bites = 1000.0; ///< more is a slip in a size

} // namespace

const base::FormulaCard k_notch_force_card{
    "notch-force",
    "Force of one notching bite",
    "F = L t S",
    k_force_symbols,
    "sharp tools, cold metal, the whole edge at once: no credit for a tool that starts at a corner",
    "derived-mechanics",
    base::Evidence::derived,
    ""};
const base::FormulaCard k_notch_bites_card{"notch-bites",
                                           "Bites along a notch longer than the tool",
                                           "n = 1 + ceil((Ltot - b) / (b - o))",
                                           k_bites_symbols,
                                           "overlap up to half the tool: more loads one side only",
                                           "derived-geometry",
                                           base::Evidence::derived,
                                           "up"};

base::Result<Force> notch_force(const NotchCut& cut) {
    const auto notch = geometry::checked(cut.notch);
    if (!notch.ok())
        return notch.refusal();
    InputCheck check;
    check.length(geometry::cut_length(*notch), "depth")
        .length(cut.thickness, "thickness")
        .stress(cut.shear_strength, "shear_strength");
    if (check.failed())
        return check.refusal();
    return geometry::cut_length(*notch) * cut.thickness * cut.shear_strength;
}

base::Result<Working> notch_force_working(const NotchCut& cut) {
    const auto force = notch_force(cut);
    if (!force.ok())
        return force.refusal();
    return Working{
        &k_notch_force_card,
        {{"L", geometry::cut_length(cut.notch)}, {"t", cut.thickness}, {"S", cut.shear_strength}},
        {"F", *force},
        ""};
}

base::Result<int> notch_bites(Length along, Length tool, Length overlap) {
    InputCheck check;
    check.length(along, "along").length(tool, "tool").length_or_zero(overlap, "overlap");
    if (check.failed())
        return check.refusal();
    if (overlap > tool / 2.0)
        return base::Refusal{"overlap",
                             "The overlap is more than half of the tool: the bite would be pushed "
                             "sideways.",
                             ""};
    if (along <= tool)
        return 1;
    // A hair over a whole number of bites comes from unit conversion, not from the notch.
    const double steps = std::ceil((along - tool) / (tool - overlap) - 1e-9);
    if (!(steps < k_most_bites))
        return base::Refusal{"tool", "The tool is far too short for this notch.", ""};
    return 1 + static_cast<int>(steps);
}

} // namespace treadle::process
