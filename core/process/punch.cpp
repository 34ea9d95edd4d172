#include "process/punch.h"

#include "process/cards.h"
#include "process/input_check.h"

#include <numbers>

namespace treadle::process {

namespace {

using base::Evidence;

// Press-tool texts print 10 to 20 % of the cut, die handbooks a constant of about 7 %: the larger.
constexpr double k_stripping_share = 0.20;

constexpr base::CardSymbol k_force_symbols[] = {
    {"F", "peak force"},
    {"L", "length of the cut edge"},
    {"t", "thickness"},
    {"S", "shear strength, upper bound of the metal"},
};
constexpr base::CardSymbol k_stripping_symbols[] = {
    {"Fs", "force to pull the punch out"},
    {"F", "cutting force"},
};
constexpr base::CardSymbol k_work_symbols[] = {
    {"E", "work of one stroke"},
    {"F", "cutting force"},
    {"p", "share of the thickness to fracture"},
    {"t", "thickness"},
};
constexpr base::CardSymbol k_smallest_symbols[] = {
    {"d", "smallest hole"},
    {"S", "shear strength"},
    {"t", "thickness"},
    {"sc", "mean compressive stress allowed in the punch"},
};
constexpr base::CardSymbol k_largest_symbols[] = {
    {"d", "largest round hole"},
    {"F", "force on offer"},
    {"t", "thickness"},
    {"S", "shear strength"},
};

InputCheck checked_metal(Length thickness, Stress shear_strength) {
    InputCheck check;
    check.length(thickness, "thickness").stress(shear_strength, "shear_strength");
    return check;
}

} // namespace

const base::FormulaCard k_punch_force_card{"punch-force",
                                           "Force to punch a hole",
                                           "F = L t S",
                                           k_force_symbols,
                                           "sharp tools, usual clearance, cold metal, the whole "
                                           "edge cut at once; a blunt edge adds 15-30 %",
                                           "kalpakjian-schmid",
                                           Evidence::published,
                                           ""};
const base::FormulaCard k_punch_stripping_card{"punch-stripping",
                                               "Force to strip the stock from the punch",
                                               "Fs = 0.20 F",
                                               k_stripping_symbols,
                                               "flat stripper close to the stock; printed rules "
                                               "run from 7 to 20 % of the cut, the largest is used",
                                               "common-practice-shear",
                                               Evidence::common_practice,
                                               ""};
const base::FormulaCard k_punch_work_card{"punch-work",
                                          "Work of one punching stroke",
                                          "E = F p t",
                                          k_work_symbols,
                                          "upper estimate: full force over the whole penetration",
                                          "common-practice-shear",
                                          Evidence::common_practice,
                                          ""};
const base::FormulaCard k_punch_smallest_card{
    "punch-smallest",
    "Smallest round hole a punch stands",
    "d = max(4 S t / sc, t)",
    k_smallest_symbols,
    "round flat-ended punch, load along its axis; strong or stainless metal asks for 1.5-2 t",
    "pytel-singer",
    Evidence::published,
    ""};
const base::FormulaCard k_punch_largest_card{
    "punch-largest",
    "Largest round hole for a force",
    "d = F / (pi t S)",
    k_largest_symbols,
    "by force only; the holder, the die opening and the throat set limits of their own",
    "derived-mechanics",
    Evidence::derived,
    ""};

base::Result<Force> punch_force(const PunchCut& cut) {
    const auto hole = geometry::checked(cut.hole);
    if (!hole.ok())
        return hole.refusal();
    InputCheck check;
    check.length(geometry::perimeter(*hole), "size")
        .length(cut.thickness, "thickness")
        .stress(cut.shear_strength, "shear_strength");
    if (check.failed())
        return check.refusal();
    return geometry::perimeter(*hole) * cut.thickness * cut.shear_strength;
}

base::Result<Force> stripping_force(const PunchCut& cut) {
    const auto force = punch_force(cut);
    if (!force.ok())
        return force.refusal();
    return k_stripping_share * *force;
}

base::Result<Energy> punch_work(const PunchCut& cut, double penetration) {
    const auto force = punch_force(cut);
    if (!force.ok())
        return force.refusal();
    InputCheck check;
    check.ratio(penetration, 1.0, "penetration");
    if (check.failed())
        return check.refusal();
    return *force * cut.thickness * penetration;
}

base::Result<Length> smallest_hole(const SmallestHole& question) {
    InputCheck check = checked_metal(question.thickness, question.shear_strength);
    check.stress(question.punch_strength, "punch_strength");
    if (check.failed())
        return check.refusal();
    const Length by_stress =
        4.0 * question.thickness * (question.shear_strength / question.punch_strength);
    return larger(by_stress, question.thickness);
}

base::Result<Length> largest_round_hole(const LargestHole& question) {
    InputCheck check = checked_metal(question.thickness, question.shear_strength);
    check.force(question.capacity, "capacity");
    if (check.failed())
        return check.refusal();
    return question.capacity / (std::numbers::pi * question.thickness * question.shear_strength);
}

base::Result<Working> punch_force_working(const PunchCut& cut) {
    const auto force = punch_force(cut);
    if (!force.ok())
        return force.refusal();
    return Working{
        &k_punch_force_card,
        {{"L", geometry::perimeter(cut.hole)}, {"t", cut.thickness}, {"S", cut.shear_strength}},
        {"F", *force},
        ""};
}

base::Result<Working> stripping_working(const PunchCut& cut) {
    const auto stripping = stripping_force(cut);
    if (!stripping.ok())
        return stripping.refusal();
    return Working{&k_punch_stripping_card,
                   {{"F", *punch_force(cut)}},
                   {"Fs", *stripping},
                   "Sizes the stripper; never taken off the cutting force."};
}

base::Result<Working> punch_work_working(const PunchCut& cut, double penetration) {
    const auto work = punch_work(cut, penetration);
    if (!work.ok())
        return work.refusal();
    return Working{
        &k_punch_work_card,
        {{"F", *punch_force(cut)}, {"p", quantity::Share{penetration}}, {"t", cut.thickness}},
        {"E", *work},
        penetration == k_deepest_penetration
            ? "Deepest printed penetration (soft aluminium): harder metal asks for less."
            : ""};
}

base::Result<Working> smallest_hole_working(const SmallestHole& question) {
    const auto size = smallest_hole(question);
    if (!size.ok())
        return size.refusal();
    const bool by_thickness = *size == question.thickness;
    return Working{&k_punch_smallest_card,
                   {{"S", question.shear_strength},
                    {"t", question.thickness},
                    {"sc", question.punch_strength}},
                   {"d", *size},
                   by_thickness ? "The rule that a hole is not smaller than the thickness decides "
                                  "(common practice, no source)."
                                : "The stress in the punch decides."};
}

base::Result<Working> largest_hole_working(const LargestHole& question) {
    const auto size = largest_round_hole(question);
    if (!size.ok())
        return size.refusal();
    return Working{
        &k_punch_largest_card,
        {{"F", question.capacity}, {"t", question.thickness}, {"S", question.shear_strength}},
        {"d", *size},
        ""};
}

} // namespace treadle::process
