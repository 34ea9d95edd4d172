#include "process/bend_rules.h"

#include "process/cards.h"
#include "process/input_check.h"

#include <algorithm>
#include <string>

namespace treadle::process {

namespace {

using base::Evidence;

constexpr base::CardSymbol k_shop_symbols[] = {
    {"F", "bending force"},
    {"t", "thickness"},
    {"L", "length along the bend"},
    {"V", "opening of the die"},
};
constexpr base::CardSymbol k_bar_symbols[] = {
    {"F", "bending force"},
    {"k", "factor for friction and the width of the V"},
    {"Fu", "tensile strength, upper bound of the metal"},
    {"h", "diameter, side, or width in the plane of bending"},
    {"t", "thickness of a flat"},
    {"V", "span between the supports"},
};
constexpr base::CardSymbol k_bottoming_symbols[] = {
    {"F", "force to bottom or to coin"},
    {"n", "times of the air-bend force"},
    {"Fair", "force of air bending"},
};
constexpr base::CardSymbol k_work_symbols[] = {
    {"W", "work of the bend"},
    {"F", "bending force"},
    {"h", "stroke under load"},
    {"m", "mean over peak force"},
};
constexpr base::CardSymbol k_opening_symbols[] = {
    {"V", "opening of the die"},
    {"r", "inside radius wanted"},
    {"share", "radius over opening, by metal"},
};
constexpr base::CardSymbol k_ductility_symbols[] = {
    {"r", "smallest inside radius"},
    {"t", "thickness"},
    {"q", "reduction of area in the tensile test"},
    {"e", "elongation in the tensile test"},
};
constexpr base::CardSymbol k_hard_way_symbols[] = {
    {"e", "strain of the outer edge"},
    {"b", "width in the plane of bending"},
    {"R", "inside radius"},
};

constexpr double k_least_factor = 1.33;
constexpr double k_most_factor = 20.0; // no printed factor comes near it
constexpr double k_usual_strain = 0.05;

/// Plastic modulus: round d^3/6, square a^3/4, flat t b^2/4.
Volume plastic_modulus(const BarBend& bend) {
    const Area square = bend.size * bend.size;
    switch (bend.shape) {
    case BentBar::round:
        return square * bend.size / 6.0;
    case BentBar::square:
        return square * bend.size / 4.0;
    case BentBar::flat_hard_way:
        return square * bend.thickness / 4.0;
    }
    return {};
}

/// The wording for a radius that comes out below zero: very ductile metal bends flat.
Working by_ductility(const base::FormulaCard& card,
                     const char* symbol,
                     double ductility,
                     Length thickness,
                     double ratio) {
    return Working{&card,
                   {{symbol, quantity::Share{ductility}}, {"t", thickness}},
                   {"r", std::max(ratio, 0.0) * thickness},
                   ratio > 0.0 ? "Sound, dressed edges; burr inside the bend."
                               : "So ductile a metal bends flat on itself by this formula: take "
                                 "half the thickness anyway."};
}

} // namespace

const base::FormulaCard k_shop_force_inch_card{"shop-force-inch",
                                               "Bending force by the shop rule in tons per foot",
                                               "F = 575 t^2 / V per foot (ton, in)",
                                               k_shop_symbols,
                                               "mild steel only, about k = 1.6 at 60 ksi",
                                               "common-practice-bending",
                                               Evidence::common_practice,
                                               ""};
const base::FormulaCard k_shop_force_metric_card{"shop-force-metric",
                                                 "Bending force by the shop rule in kN per metre",
                                                 "F = 650 t^2 / V per metre (kN, mm)",
                                                 k_shop_symbols,
                                                 "mild steel of 450 MPa only, about k = 1.44",
                                                 "common-practice-bending",
                                                 Evidence::common_practice,
                                                 ""};
const base::FormulaCard k_bar_bend_card{
    "bar-bend-force",
    "Force to bend a bar over a span",
    "F = 4 k Fu Zp / V; Zp = d^3/6 round, a^3/4 square, t b^2/4 flat the hard way; "
    "k = max(1.33, 1 + 4 h / V)",
    k_bar_symbols,
    "plastic hinge under a central load, span over the depth; flats the hard way held from tipping",
    "derived-mechanics",
    Evidence::derived,
    ""};
const base::FormulaCard k_bottoming_card{"bottoming-force",
                                         "Force to bottom or to coin",
                                         "F = n Fair; n = 3-5 bottoming, 5-10 coining",
                                         k_bottoming_symbols,
                                         "not on a table brake unless its maker rates it for that",
                                         "common-practice-bending",
                                         Evidence::common_practice,
                                         ""};
const base::FormulaCard k_bend_work_card{"bend-work",
                                         "Work of a bend",
                                         "W = F h m",
                                         k_work_symbols,
                                         "m = 0.75 in the printed example; 1 is the upper estimate",
                                         "lange-oehler",
                                         Evidence::published,
                                         ""};
const base::FormulaCard k_opening_for_radius_card{
    "opening-for-radius",
    "Opening of the V that makes a radius",
    "V = r / share",
    k_opening_symbols,
    "air bending, V from 6 t to 14 t; a trial strip decides",
    "common-practice-bending",
    Evidence::common_practice,
    ""};
const base::FormulaCard k_ductility_reduction_card{
    "least-radius-reduction",
    "Smallest inside radius from the reduction of area",
    "r = t (0.5 / q - 1)",
    k_ductility_symbols,
    "q up to 0.5; sound edges, across the rolling direction",
    "kalpakjian-schmid",
    Evidence::published,
    ""};
const base::FormulaCard k_ductility_elongation_card{
    "least-radius-elongation",
    "Smallest inside radius from the elongation",
    "r = t (1 / e - 1) / 2",
    k_ductility_symbols,
    "outer fibre strained to the elongation; sound edges, across the rolling direction",
    "kalpakjian-schmid",
    Evidence::published,
    ""};
const base::FormulaCard k_hard_way_strain_card{
    "hard-way-strain",
    "Strain of the outer edge of a flat bent the hard way",
    "e = b / (2 R + b)",
    k_hard_way_symbols,
    "neutral axis in the middle; 5-8 % is usual for cold mild steel (common practice)",
    "derived-geometry",
    Evidence::derived,
    ""};
const base::FormulaCard k_hard_way_radius_card{
    "hard-way-radius",
    "Smallest inside radius of a flat bent the hard way",
    "R = b (1 - e) / (2 e)",
    k_hard_way_symbols,
    "neutral axis in the middle; 5-8 % is usual for cold mild steel (common practice)",
    "derived-geometry",
    Evidence::derived,
    ""};

base::Result<Working> shop_force_working(const ShopBend& bend, ShopForce rule) {
    InputCheck check;
    check.length(bend.thickness, "thickness")
        .length(bend.length, "length")
        .length(bend.opening, "opening");
    if (check.failed())
        return check.refusal();
    if (clearly_below(bend.opening, k_least_opening_ratio * bend.thickness))
        return base::Refusal{"opening", "The V is narrower than six times the thickness.", ""};
    const bool inch = rule == ShopForce::tons_per_foot;
    // Each rule is a stress in its own units: ton per foot and inch, kN per metre and millimetre.
    const Stress per = inch ? Stress::from_base(us_tons(575.0 / 12.0).in_base() / (25.4 * 25.4))
                            : megapascals(650.0);
    const Force force = per * (bend.thickness * bend.thickness) * (bend.length / bend.opening);
    return Working{inch ? &k_shop_force_inch_card : &k_shop_force_metric_card,
                   {{"t", bend.thickness}, {"L", bend.length}, {"V", bend.opening}},
                   {"F", force},
                   "By the rule named: it knows mild steel only, stronger metal asks for more."};
}

base::Result<Working> bar_bend_working(const BarBend& bend) {
    InputCheck check;
    check.length(bend.size, "size");
    if (bend.shape == BentBar::flat_hard_way)
        check.length(bend.thickness, "thickness");
    check.length(bend.span, "span").stress(bend.tensile_strength, "tensile_strength");
    if (bend.factor)
        check.ratio(*bend.factor, k_most_factor, "k");
    if (check.failed())
        return check.refusal();
    if (!clearly_below(bend.size, bend.span))
        return base::Refusal{"span", "The span is not longer than the bar is deep.", ""};
    const double k =
        bend.factor.value_or(std::max(k_least_factor, 1.0 + 4.0 * (bend.size / bend.span)));
    const Force force = 4.0 * k * (bend.tensile_strength * plastic_modulus(bend) / bend.span);
    Working working{&k_bar_bend_card,
                    {{"k", quantity::Number{k, 3}},
                     {"Fu", bend.tensile_strength},
                     {"h", bend.size},
                     {"V", bend.span}},
                    {"F", force},
                    bend.factor ? "With a factor as given: not the careful choice."
                                : "The larger of the two printed factors."};
    if (bend.shape == BentBar::flat_hard_way)
        working.values.push_back({"t", bend.thickness});
    return working;
}

base::Result<Working> bottoming_working(Force air_bend, Press press, std::optional<double> times) {
    InputCheck check;
    check.force(air_bend, "force");
    if (check.failed())
        return check.refusal();
    const bool coining = press == Press::coining;
    const double least = coining ? 5.0 : 3.0;
    const double most = coining ? 10.0 : 5.0;
    const double n = times.value_or(most);
    if (!(n >= least && n <= most))
        return base::Refusal{"times",
                             "The factor is outside what is said of this kind of bending.",
                             coining ? "5 to 10" : "3 to 5"};
    return Working{&k_bottoming_card,
                   {{"n", quantity::Number{n, 2}}, {"Fair", air_bend}},
                   {"F", n * air_bend},
                   times ? "With a factor as given." : "The top of the range: the careful choice."};
}

base::Result<Working> bend_work_working(Force force, Length stroke, double share) {
    InputCheck check;
    check.force(force, "force").length(stroke, "stroke").ratio(share, 1.0, "share");
    if (check.failed())
        return check.refusal();
    return Working{&k_bend_work_card,
                   {{"F", force}, {"h", stroke}, {"m", quantity::Number{share, 2}}},
                   {"W", share * (force * stroke)},
                   ""};
}

base::Result<Working>
punch_travel_working(Length opening, Length radius, Length thickness, Angle angle) {
    const auto travel = punch_travel(opening, radius, thickness, angle);
    if (!travel.ok())
        return travel.refusal();
    return Working{&k_punch_travel_card,
                   {{"V", opening}, {"A", angle}, {"r", radius}, {"t", thickness}},
                   {"y", *travel},
                   "For a stroke check add half the thickness: shoulders are round and the bend "
                   "springs back."};
}

base::Result<Working> opening_for_radius_working(const WantedRadius& bend) {
    InputCheck check;
    check.length(bend.thickness, "thickness")
        .length(bend.radius, "radius")
        .ratio(bend.share, 0.5, "share");
    if (check.failed())
        return check.refusal();
    const Length opening = bend.radius / bend.share;
    const char* note = "";
    if (clearly_below(opening, k_least_opening_ratio * bend.thickness))
        note = "Warning: under six times the thickness. Air bending does not make so small a "
               "radius in this metal.";
    else if (clearly_below(k_most_opening_ratio * bend.thickness, opening))
        note = "Warning: over fourteen times the thickness. The bend is imprecise; use a punch "
               "with the radius.";
    return Working{&k_opening_for_radius_card,
                   {{"r", bend.radius}, {"share", quantity::Share{bend.share}}},
                   {"V", opening},
                   note};
}

base::Result<Working> radius_by_reduction_working(Length thickness, double reduction) {
    InputCheck check;
    check.length(thickness, "thickness").ratio(reduction, 1.0, "reduction");
    if (check.failed())
        return check.refusal();
    return by_ductility(
        k_ductility_reduction_card, "q", reduction, thickness, 0.5 / reduction - 1.0);
}

base::Result<Working> radius_by_elongation_working(Length thickness, double elongation) {
    InputCheck check;
    check.length(thickness, "thickness").ratio(elongation, 1.0, "elongation");
    if (check.failed())
        return check.refusal();
    return by_ductility(
        k_ductility_elongation_card, "e", elongation, thickness, (1.0 / elongation - 1.0) / 2.0);
}

base::Result<Working> hard_way_strain_working(Length width, Length radius) {
    InputCheck check;
    check.length(width, "width").length(radius, "radius");
    if (check.failed())
        return check.refusal();
    const double strain = width / (2.0 * radius + width);
    return Working{&k_hard_way_strain_card,
                   {{"b", width}, {"R", radius}},
                   {"e", quantity::Share{strain}},
                   strain > k_usual_strain
                       ? "Warning: over 5 %, the careful limit for cold mild steel. Rolls, heat or "
                         "a larger radius."
                       : ""};
}

base::Result<Working> hard_way_radius_working(Length width, double strain) {
    InputCheck check;
    check.length(width, "width");
    if (check.failed())
        return check.refusal();
    if (!(strain > 0.0 && strain < 1.0))
        return base::Refusal{"strain", "The strain is outside its range.", "over 0 and below 1"};
    return Working{
        &k_hard_way_radius_card,
        {{"b", width}, {"e", quantity::Share{strain}}},
        {"R", (1.0 - strain) / (2.0 * strain) * width},
        strain > k_usual_strain ? "Warning: over 5 %, the careful limit for cold mild steel." : ""};
}

} // namespace treadle::process
