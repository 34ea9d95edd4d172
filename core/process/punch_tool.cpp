#include "process/punch_tool.h"

#include "process/cards.h"
#include "process/input_check.h"

#include <cmath>
#include <numbers>

namespace treadle::process {

namespace {

using base::Evidence;

constexpr base::CardSymbol k_edge_symbols[] = {
    {"L", "length of the cut edge"},
    {"size", "diameter, side, width or across flats"},
    {"size2", "other side, or overall length"},
};
constexpr base::CardSymbol k_stress_symbols[] = {
    {"sc", "mean compressive stress in the punch"},
    {"L", "length of the cut edge"},
    {"t", "thickness"},
    {"S", "shear strength, upper bound of the metal"},
    {"A", "area of the hole"},
};
constexpr base::CardSymbol k_free_length_symbols[] = {
    {"l", "longest free length of the punch point"},
    {"d", "diameter of the punch"},
    {"E", "modulus of the punch"},
    {"S", "shear strength, upper bound of the metal"},
    {"t", "thickness"},
};
constexpr base::CardSymbol k_bolt_symbols[] = {
    {"t", "greatest thickness"},
    {"d", "diameter of the bolt"},
};
constexpr base::CardSymbol k_hole_symbols[] = {
    {"t", "greatest thickness"},
    {"D", "diameter of the hole, or smallest size of a slot"},
};
constexpr base::CardSymbol k_stroke_symbols[] = {
    {"s", "least stroke"},
    {"t", "thickness"},
    {"g", "gap of the stripper over the stock"},
    {"e", "entry of the punch into the die"},
};
constexpr base::CardSymbol k_heel_symbols[] = {
    {"x", "least distance of the hole centre from the heel"},
    {"k", "from the heel to the end of the fillet"},
    {"t", "thickness of the standing leg"},
    {"R", "outside radius of the die, or clearance radius of a relieved one"},
};

constexpr double k_stout_ratio = 1.1;
constexpr Length k_over_the_bolt = inches(1.0 / 8.0);

base::Result<geometry::HoleOutline> with_area(const geometry::HoleOutline& hole) {
    auto sound = geometry::checked(hole);
    if (sound.ok() && hole.shape == geometry::HoleShape::perimeter)
        return base::Refusal{
            "shape", "A hole known only by the length of its edge has no area.", "name its shape"};
    return sound;
}

/// Euler's column of a round punch under S t d pi: (pi d / part) sqrt(E d / (S t)).
base::Result<Working>
free_working(const FreePunch& punch, const base::FormulaCard& card, double part) {
    InputCheck check;
    check.length(punch.diameter, "size")
        .length(punch.thickness, "thickness")
        .stress(punch.shear_strength, "shear_strength")
        .modulus(punch.modulus, "modulus");
    if (check.failed())
        return check.refusal();
    const double slenderness =
        (punch.modulus / punch.shear_strength) * (punch.diameter / punch.thickness);
    return Working{&card,
                   {{"d", punch.diameter},
                    {"E", punch.modulus},
                    {"S", punch.shear_strength},
                    {"t", punch.thickness}},
                   {"l", punch.diameter * (std::numbers::pi / part * std::sqrt(slenderness))},
                   clearly_below(punch.diameter, k_stout_ratio * punch.thickness)
                       ? "Outside its range: the diameter is under 1.1 times the thickness."
                       : ""};
}

} // namespace

const base::FormulaCard k_hole_edge_card{"hole-edge",
                                         "Length of the cut edge of a hole",
                                         "L = pi d round; 4 a square; 2 (a + b) rectangle; pi w + "
                                         "2 (l - w) obround; 2 sqrt(3) f hexagon",
                                         k_edge_symbols,
                                         "sharp corners; a corner radius makes it shorter",
                                         "derived-geometry",
                                         Evidence::derived,
                                         ""};
const base::FormulaCard k_punch_stress_card{
    "punch-stress",
    "Mean compressive stress in the punch",
    "sc = L t S / A",
    k_stress_symbols,
    "flat-ended punch, load along its axis; 180 ksi is a cautious limit (common practice)",
    "derived-mechanics",
    Evidence::derived,
    ""};
const base::FormulaCard k_punch_thickest_card{"punch-thickest",
                                              "Thickest metal that a punch stands",
                                              "t = sc A / (L S)",
                                              k_stress_symbols,
                                              "flat-ended punch, load along its axis; a hole is "
                                              "not smaller than the thickness (common practice)",
                                              "pytel-singer",
                                              Evidence::published,
                                              ""};
const base::FormulaCard k_punch_free_length_card{
    "punch-free-length",
    "Longest free length of a punch point",
    "l = (pi d / 8) sqrt(E d / (S t))",
    k_free_length_symbols,
    "round punch, d at least 1.1 t; both ends kept in place, so only for a guided punch",
    "jigs-fixtures-press-tools",
    Evidence::published,
    ""};
const base::FormulaCard k_punch_free_end_card{
    "punch-free-end",
    "Longest length of a punch point that nothing guides",
    "l = (pi d / 16) sqrt(E d / (S t))",
    k_free_length_symbols,
    "round punch, d at least 1.1 t; held at one end, the other free to move sideways",
    "derived-mechanics",
    Evidence::derived,
    ""};
const base::FormulaCard k_bolt_hole_aisc_card{"bolt-hole-aisc",
                                              "Thickest metal for a bolt hole punched full size",
                                              "t = d + 1/8 in",
                                              k_bolt_symbols,
                                              "structural bolt holes; strong metal asks for less",
                                              "structural-handbook-aisc",
                                              Evidence::published,
                                              ""};
const base::FormulaCard k_bolt_hole_en_card{"bolt-hole-en",
                                            "Thickest metal for a hole punched full size",
                                            "t = D",
                                            k_hole_symbols,
                                            "structural steelwork; slots by their smallest size",
                                            "en-1090-2",
                                            Evidence::from_memory,
                                            ""};
const base::FormulaCard k_punch_stroke_card{"punch-stroke",
                                            "Stroke that a hole needs",
                                            "s = t + g + e",
                                            k_stroke_symbols,
                                            "die entry of about 1/8 in, stripper gap up to 1/4 in",
                                            "common-practice-shear",
                                            Evidence::common_practice,
                                            ""};
const base::FormulaCard k_punch_heel_card{
    "punch-from-heel",
    "Least distance of a hole from the heel of an angle",
    "x = k + R; relieved die x = t + R",
    k_heel_symbols,
    "the die lies flat inside the leg; the punch nut wants room on the other side",
    "derived-geometry",
    Evidence::derived,
    ""};

base::Result<Working> hole_edge_working(const geometry::HoleOutline& hole) {
    const auto sound = geometry::checked(hole);
    if (!sound.ok())
        return sound.refusal();
    Working working{&k_hole_edge_card, {{"size", hole.size}}, {"L", perimeter(hole)}, ""};
    if (hole.size2 > Length{})
        working.values.push_back({"size2", hole.size2});
    return working;
}

base::Result<Working> punch_stress_working(const PunchCut& cut) {
    const auto hole = with_area(cut.hole);
    if (!hole.ok())
        return hole.refusal();
    const auto force = punch_force(cut);
    if (!force.ok())
        return force.refusal();
    const Stress stress = *force / geometry::hole_area(cut.hole);
    return Working{&k_punch_stress_card,
                   {{"L", geometry::perimeter(cut.hole)},
                    {"t", cut.thickness},
                    {"S", cut.shear_strength},
                    {"A", geometry::hole_area(cut.hole)}},
                   {"sc", stress},
                   stress > k_punch_stress_limit
                       ? "Over 180 ksi: more than the cautious limit of an unguided punch."
                       : ""};
}

base::Result<Working> punch_thickest_working(const geometry::HoleOutline& hole,
                                             Stress shear_strength,
                                             Stress punch_strength) {
    const auto sound = with_area(hole);
    if (!sound.ok())
        return sound.refusal();
    InputCheck check;
    check.length(hole.size, "size")
        .stress(shear_strength, "shear_strength")
        .stress(punch_strength, "punch_strength");
    if (check.failed())
        return check.refusal();
    const Length thickness =
        geometry::hole_area(hole) / geometry::perimeter(hole) * (punch_strength / shear_strength);
    return Working{&k_punch_thickest_card,
                   {{"sc", punch_strength},
                    {"A", geometry::hole_area(hole)},
                    {"L", geometry::perimeter(hole)},
                    {"S", shear_strength}},
                   {"t", thickness},
                   clearly_below(geometry::least_width(hole), thickness)
                       ? "By stress alone: the usual rule allows no more than the size of the hole."
                       : ""};
}

base::Result<Working> punch_free_length_working(const FreePunch& punch) {
    return free_working(punch, k_punch_free_length_card, 8.0);
}

base::Result<Working> punch_free_end_working(const FreePunch& punch) {
    return free_working(punch, k_punch_free_end_card, 16.0);
}

base::Result<Working> bolt_hole_aisc_working(Length bolt) {
    InputCheck check;
    check.length(bolt, "bolt");
    if (check.failed())
        return check.refusal();
    return Working{&k_bolt_hole_aisc_card,
                   {{"d", bolt}},
                   {"t", bolt + k_over_the_bolt},
                   "The careful rule of the shop is stricter: no thicker than the hole."};
}

base::Result<Working> bolt_hole_en_working(Length hole) {
    InputCheck check;
    check.length(hole, "hole");
    if (check.failed())
        return check.refusal();
    return Working{&k_bolt_hole_en_card, {{"D", hole}}, {"t", hole}, ""};
}

base::Result<Working> punch_stroke_working(const PunchStroke& stroke) {
    InputCheck check;
    check.length(stroke.thickness, "thickness")
        .length(stroke.stripper_gap, "stripper_gap")
        .length(stroke.die_entry, "die_entry");
    if (check.failed())
        return check.refusal();
    return Working{
        &k_punch_stroke_card,
        {{"t", stroke.thickness}, {"g", stroke.stripper_gap}, {"e", stroke.die_entry}},
        {"s", stroke.thickness + stroke.stripper_gap + stroke.die_entry},
        clearly_below(k_most_stripper_gap, stroke.stripper_gap)
            ? "Warning: the stripper stands more than 1/4 in over the stock. It is lifted with the "
              "punch, and fingers fit in."
            : ""};
}

base::Result<Working> punch_from_heel_working(const BesideLeg& leg) {
    InputCheck check;
    check.length(leg.thickness, "thickness");
    if (!leg.relieved)
        check.length(leg.fillet, "fillet");
    check.length(leg.die_radius, "die_radius");
    if (check.failed())
        return check.refusal();
    if (!leg.relieved && clearly_below(leg.fillet, leg.thickness))
        return base::Refusal{
            "fillet", "The fillet ends inside the leg: it counts from the heel.", ""};
    const Length clear = leg.relieved ? leg.thickness : leg.fillet;
    return Working{&k_punch_heel_card,
                   {{leg.relieved ? "t" : "k", clear}, {"R", leg.die_radius}},
                   {"x", clear + leg.die_radius},
                   leg.relieved ? "Relieved die: only its clearance radius reaches the leg." : ""};
}

} // namespace treadle::process
