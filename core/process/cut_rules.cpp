#include "process/cut_rules.h"

#include "process/cards.h"
#include "process/input_check.h"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace treadle::process {

namespace {

using base::Evidence;

constexpr base::CardSymbol k_mitre_symbols[] = {
    {"cut", "length of the cut"},
    {"w", "width of the flat"},
    {"theta", "angle of the cut from square"},
};
constexpr base::CardSymbol k_mitred_angle_symbols[] = {
    {"F", "peak force, both legs at once"},
    {"Fsq", "force of the square cut"},
    {"theta", "angle of the cut from square"},
};
constexpr base::CardSymbol k_tube_symbols[] = {
    {"F", "force"},
    {"D", "outside diameter"},
    {"t", "wall"},
    {"S", "shear strength, upper bound of the metal"},
    {"Fy", "yield strength"},
};
constexpr base::CardSymbol k_gap_symbols[] = {
    {"gap", "between the knives"},
    {"t", "thickness"},
};
constexpr base::CardSymbol k_trim_symbols[] = {
    {"trim", "shortest piece to cut off"},
    {"t", "thickness"},
};
constexpr base::CardSymbol k_rating_symbols[] = {
    {"t'", "thickness for this strength"},
    {"w'", "width for this strength"},
    {"t", "published thickness"},
    {"w", "published width"},
    {"Fr", "tensile strength that the pair was published for"},
    {"Fu", "tensile strength of the stock, upper bound"},
};
constexpr double k_flattening = 55.0;
constexpr Length k_least_trim = inches(0.5);

InputCheck checked(const TubeShear& cut, const char* strength) {
    InputCheck check;
    check.length(cut.outside, "outside").length(cut.wall, "wall").stress(cut.strength, strength);
    return check;
}

base::Refusal no_bore() {
    return {"wall", "The wall leaves no bore: this is a bar.", "below half of the outside"};
}

InputCheck checked(const ShearRating& pair) {
    InputCheck check;
    check.length(pair.thickness, "thickness")
        .length(pair.width, "width")
        .stress(pair.rated_strength, "rated_strength")
        .stress(pair.tensile_strength, "tensile_strength");
    return check;
}

double strength_share(const ShearRating& pair) {
    return std::min(1.0, pair.rated_strength / pair.tensile_strength);
}

Working rating_working(const base::FormulaCard& card,
                       const ShearRating& pair,
                       const char* symbol,
                       Length result,
                       const char* note) {
    return Working{&card,
                   {{"t", pair.thickness},
                    {"w", pair.width},
                    {"Fr", pair.rated_strength},
                    {"Fu", pair.tensile_strength}},
                   {symbol, result},
                   note};
}

} // namespace

const base::FormulaCard k_mitre_cut_card{"mitre-cut",
                                         "Length of a mitred cut across a flat",
                                         "cut = w / cos(theta)",
                                         k_mitre_symbols,
                                         "plane cut, below 60 degrees from square",
                                         "derived-geometry",
                                         Evidence::derived,
                                         ""};
const base::FormulaCard k_mitred_angle_card{
    "shear-angle-mitred",
    "Force to shear an angle on a mitre",
    "F = Fsq / cos(theta), Fsq = S t (a + b - t)",
    k_mitred_angle_symbols,
    "below 60 degrees from square; a mitre is cut only where the maker allows it",
    "derived-mechanics",
    Evidence::derived,
    ""};
const base::FormulaCard k_tube_shear_card{
    "shear-tube",
    "Force to shear the wall of a tube",
    "F = pi (D - t) t S",
    k_tube_symbols,
    "blades that hold the tube's shape: plain blades crush it",
    "derived-mechanics",
    Evidence::derived,
    ""};
const base::FormulaCard k_tube_flattening_card{"tube-flattening",
                                               "Load that flattens a tube between plain jaws",
                                               "F = 55 (Fy t^2 / 4) sqrt(D / t)",
                                               k_tube_symbols,
                                               "plain jaws, thin round tube",
                                               "tu-delft-2338",
                                               Evidence::published,
                                               ""};
const base::FormulaCard k_knife_gap_card{"knife-gap",
                                         "Gap between shear knives",
                                         "gap = t / 20 to t / 10",
                                         k_gap_symbols,
                                         "flat shear, each side",
                                         "common-practice-shear",
                                         Evidence::common_practice,
                                         ""};
const base::FormulaCard k_least_trim_card{
    "least-trim",
    "Shortest piece to shear off",
    "trim = max(1/2 in, t)",
    k_trim_symbols,
    "supported drop; the piece kept is gripped over about 2 in",
    "common-practice-shear",
    Evidence::common_practice,
    ""};
const base::FormulaCard k_rating_thickness_card{
    "shear-rating-thickness",
    "Published thickness, for stock of another strength",
    "t' = t min(1, Fr / Fu)",
    k_rating_symbols,
    "width up to the published one; weaker metal never above the published thickness",
    "derived-mechanics",
    Evidence::derived,
    "down"};
const base::FormulaCard k_rating_root_card{
    "shear-rating-root",
    "Published thickness by the square root",
    "t' = t sqrt(min(1, Fr / Fu))",
    k_rating_symbols,
    "raked blades in full cut: for comparison, not the careful choice",
    "derived-mechanics",
    Evidence::derived,
    ""};
const base::FormulaCard k_rating_width_card{"shear-rating-width",
                                            "Published width, for stock of another strength",
                                            "w' = w min(1, Fr / Fu)",
                                            k_rating_symbols,
                                            "parallel blades, at the published thickness",
                                            "derived-mechanics",
                                            Evidence::derived,
                                            "down"};
base::Result<Working> mitre_cut_working(Length width, Angle from_square) {
    InputCheck check;
    check.length(width, "width");
    if (check.failed())
        return check.refusal();
    const auto factor = mitre_factor(from_square);
    if (!factor.ok())
        return factor.refusal();
    return Working{
        &k_mitre_cut_card, {{"w", width}, {"theta", from_square}}, {"cut", *factor * width}, ""};
}

base::Result<Working> mitred_angle_working(const AngleShear& cut, Angle from_square) {
    const auto square = angle_shear_force(cut);
    if (!square.ok())
        return square.refusal();
    const auto factor = mitre_factor(from_square);
    if (!factor.ok())
        return base::Refusal{"mitre", factor.refusal().reason, factor.refusal().detail};
    return Working{&k_mitred_angle_card,
                   {{"Fsq", *square}, {"theta", from_square}},
                   {"F", *factor * *square},
                   "A square rating says nothing of mitres: ask for a published one."};
}

base::Result<Working> tube_shear_working(const TubeShear& cut) {
    const InputCheck check = checked(cut, "shear_strength");
    if (check.failed())
        return check.refusal();
    if (!(cut.wall < cut.outside / 2.0))
        return no_bore();
    return Working{&k_tube_shear_card,
                   {{"D", cut.outside}, {"t", cut.wall}, {"S", cut.strength}},
                   {"F", std::numbers::pi * (cut.outside - cut.wall) * cut.wall * cut.strength},
                   "Warning: only the wall is counted. Plain blades crush a tube: use tube tooling "
                   "or saw it."};
}

base::Result<Working> tube_flattening_working(const TubeShear& cut) {
    const InputCheck check = checked(cut, "yield_strength");
    if (check.failed())
        return check.refusal();
    if (!(cut.wall < cut.outside / 2.0))
        return no_bore();
    const Force plastic_moment = cut.wall * cut.wall * cut.strength / 4.0; // per unit of length
    return Working{&k_tube_flattening_card,
                   {{"Fy", cut.strength}, {"t", cut.wall}, {"D", cut.outside}},
                   {"F", k_flattening * std::sqrt(cut.outside / cut.wall) * plastic_moment},
                   "Comes before the cut and spoils the end."};
}

base::Result<Working> knife_gap_working(Length thickness, KnifeGap end) {
    InputCheck check;
    check.length(thickness, "thickness");
    if (check.failed())
        return check.refusal();
    return Working{&k_knife_gap_card,
                   {{"t", thickness}},
                   {"gap", thickness / (end == KnifeGap::tight ? 20.0 : 10.0)},
                   end == KnifeGap::tight ? "" : "Thin sheet folds into a gap that is too wide."};
}

base::Result<Working> least_trim_working(Length thickness) {
    InputCheck check;
    check.length(thickness, "thickness");
    if (check.failed())
        return check.refusal();
    return Working{&k_least_trim_card,
                   {{"t", thickness}},
                   {"trim", larger(k_least_trim, thickness)},
                   "Very short trims twist."};
}

base::Result<Working> rating_thickness_working(const ShearRating& pair) {
    const InputCheck check = checked(pair);
    if (check.failed())
        return check.refusal();
    return rating_working(k_rating_thickness_card,
                          pair,
                          "t'",
                          strength_share(pair) * pair.thickness,
                          pair.tensile_strength < pair.rated_strength
                              ? "Weaker stock gains nothing over the published pair."
                              : "In proportion to the strength: the careful rule.");
}

base::Result<Working> rating_root_working(const ShearRating& pair) {
    const InputCheck check = checked(pair);
    if (check.failed())
        return check.refusal();
    return rating_working(k_rating_root_card,
                          pair,
                          "t'",
                          std::sqrt(strength_share(pair)) * pair.thickness,
                          "For comparison: not used for a verdict.");
}

base::Result<Working> rating_width_working(const ShearRating& pair) {
    const InputCheck check = checked(pair);
    if (check.failed())
        return check.refusal();
    return rating_working(k_rating_width_card, pair, "w'", strength_share(pair) * pair.width, "");
}

} // namespace treadle::process
