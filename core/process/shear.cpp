#include "process/shear.h"

#include "process/cards.h"
#include "process/input_check.h"

#include <cmath>
#include <numbers>

namespace treadle::process {

namespace {

using base::Evidence;

constexpr base::CardSymbol k_flat_symbols[] = {
    {"F", "peak force"},
    {"w", "width of the flat"},
    {"w'", "width under the blade at once"},
    {"t", "thickness"},
    {"S", "shear strength, upper bound of the metal"},
    {"a", "rake of the blade"},
    {"p", "share of the thickness to fracture"},
};
constexpr base::CardSymbol k_bar_symbols[] = {
    {"F", "peak force"},
    {"d", "diameter or side"},
    {"A", "area of the bar"},
    {"S", "shear strength, upper bound of the metal"},
};
constexpr base::CardSymbol k_angle_symbols[] = {
    {"F", "peak force, both legs at once"},
    {"a", "one leg"},
    {"b", "other leg"},
    {"t", "thickness"},
    {"S", "shear strength, upper bound of the metal"},
};
constexpr base::CardSymbol k_mitre_symbols[] = {
    {"theta", "angle of the cut from square"},
};

// Steeper blades are no shear blades; the bound only keeps slips out (program rule, no source).
constexpr double k_steepest_rake_deg = 30.0;
constexpr double k_steepest_mitre_deg = 60.0;

/// The width that resists at the same time: beyond p t / tan a the metal has already parted.
Length engaged_width(const FlatShear& cut) {
    if (!cut.rake)
        return cut.width;
    return smaller(cut.width, cut.thickness * (cut.penetration / std::tan(cut.rake->in_radians())));
}

Area bar_area(const BarShear& cut) {
    const Area square = cut.size * cut.size;
    return cut.shape == BarShape::round ? square * (std::numbers::pi / 4.0) : square;
}

} // namespace

const base::FormulaCard k_flat_shear_card{
    "shear-flat",
    "Force to shear a flat or plate",
    "F = S (w' t - w'^2 tan a / 2), w' = min(w, p t / tan a); parallel blades F = w t S",
    k_flat_symbols,
    "sharp blades, cold metal; rake counts only where it is stated; a dull blade adds up to 50 %",
    "asm-handbook-shear",
    Evidence::from_memory,
    ""};
const base::FormulaCard k_bar_shear_card{"shear-bar",
                                         "Force to crop a round or square bar",
                                         "F = A S; A = pi d^2 / 4 round, d^2 square",
                                         k_bar_symbols,
                                         "the whole section at once, cold metal, fitting blades",
                                         "derived-mechanics",
                                         Evidence::derived,
                                         ""};
const base::FormulaCard k_angle_shear_card{
    "shear-angle",
    "Force to shear an angle",
    "F = S t (a + b - t)",
    k_angle_symbols,
    "both legs at once; the rolled fillet adds 1-2 %, which verdicts add",
    "derived-mechanics",
    Evidence::derived,
    ""};
const base::FormulaCard k_mitre_factor_card{"mitre-factor",
                                            "How much a mitre lengthens the cut",
                                            "1 / cos(theta)",
                                            k_mitre_symbols,
                                            "plane cut, below 60 degrees from square",
                                            "derived-geometry",
                                            Evidence::derived,
                                            ""};

base::Result<Force> flat_shear_force(const FlatShear& cut) {
    InputCheck check;
    check.length(cut.width, "width")
        .length(cut.thickness, "thickness")
        .stress(cut.shear_strength, "shear_strength");
    if (cut.rake)
        check.angle_within(*cut.rake, 0.0, k_steepest_rake_deg, "rake");
    check.ratio(cut.penetration, 1.0, "penetration");
    if (check.failed())
        return check.refusal();
    const Length w = engaged_width(cut);
    const double tan_a = cut.rake ? std::tan(cut.rake->in_radians()) : 0.0;
    return cut.shear_strength * (w * cut.thickness - w * w * (tan_a / 2.0));
}

base::Result<Working> flat_shear_working(const FlatShear& cut) {
    const auto force = flat_shear_force(cut);
    if (!force.ok())
        return force.refusal();
    Working working{&k_flat_shear_card,
                    {{"w", cut.width}, {"t", cut.thickness}, {"S", cut.shear_strength}},
                    {"F", *force},
                    "No rake stated: blades taken as parallel, the full area at once."};
    if (cut.rake) {
        working.values.push_back({"a", *cut.rake});
        working.values.push_back({"p", quantity::Share{cut.penetration}});
        working.values.push_back({"w'", engaged_width(cut)});
        working.note = "Credit for the stated rake.";
    }
    return working;
}

base::Result<Force> bar_shear_force(const BarShear& cut) {
    InputCheck check;
    check.length(cut.size, "size").stress(cut.shear_strength, "shear_strength");
    if (check.failed())
        return check.refusal();
    return bar_area(cut) * cut.shear_strength;
}

base::Result<Working> bar_shear_working(const BarShear& cut) {
    const auto force = bar_shear_force(cut);
    if (!force.ok())
        return force.refusal();
    return Working{&k_bar_shear_card,
                   {{"d", cut.size}, {"A", bar_area(cut)}, {"S", cut.shear_strength}},
                   {"F", *force},
                   ""};
}

base::Result<Force> angle_shear_force(const AngleShear& cut) {
    InputCheck check;
    check.length(cut.leg_a, "leg_a")
        .length(cut.leg_b, "leg_b")
        .length(cut.thickness, "thickness")
        .stress(cut.shear_strength, "shear_strength");
    if (check.failed())
        return check.refusal();
    if (!(cut.thickness < smaller(cut.leg_a, cut.leg_b)))
        return base::Refusal{"thickness", "The thickness is not below the shorter leg.", ""};
    return cut.shear_strength * (cut.thickness * (cut.leg_a + cut.leg_b - cut.thickness));
}

base::Result<Working> angle_shear_working(const AngleShear& cut) {
    const auto force = angle_shear_force(cut);
    if (!force.ok())
        return force.refusal();
    return Working{
        &k_angle_shear_card,
        {{"a", cut.leg_a}, {"b", cut.leg_b}, {"t", cut.thickness}, {"S", cut.shear_strength}},
        {"F", *force},
        "Sharp-cornered area; a verdict adds 2 % for the rolled fillet."};
}

base::Result<double> mitre_factor(Angle from_square) {
    const double off = quantity::to_degrees(from_square);
    if (!(off >= 0.0 && off < k_steepest_mitre_deg))
        return base::Refusal{
            "angle", "The cut is too far from square.", "0 or more and below 60 degrees"};
    return 1.0 / std::cos(from_square.in_radians());
}

} // namespace treadle::process
