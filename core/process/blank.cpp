#include "process/blank.h"

#include "base/contracts.h"
#include "process/cards.h"
#include "process/input_check.h"

#include <cmath>
#include <numbers>
#include <string>

namespace treadle::process {

namespace {

using base::Evidence;

constexpr base::CardSymbol k_allowance_symbols[] = {
    {"BA", "length of the neutral line round the bend"},
    {"A", "angle turned through"},
    {"r", "inside radius"},
    {"K", "neutral line from the inside over thickness"},
    {"t", "thickness"},
};
constexpr base::CardSymbol k_deduction_symbols[] = {
    {"v", "taken off the sum of the outside legs"},
    {"SB", "outside setback"},
    {"BA", "bend allowance"},
    {"A", "angle turned through"},
};
constexpr base::CardSymbol k_setback_symbols[] = {
    {"SB", "outside setback"},
    {"r", "inside radius"},
    {"t", "thickness"},
    {"A", "angle turned through"},
};
constexpr base::CardSymbol k_blank_symbols[] = {
    {"L", "flat length"},
    {"a", "an outside leg"},
    {"v", "deduction of a bend"},
};

constexpr Angle k_apex_up_to = degrees(90.0);     ///< DIN 6935: opening angle b down to 90
constexpr Angle k_farthest_apex = degrees(175.0); ///< program rule: the apex is 23 (r + t) away
constexpr Angle k_counts_from = degrees(15.0);    ///< DIN 6935: b over 165 takes nothing off
constexpr double k_din_full_ratio = 5.0;

/// K from c in "straight stock c t + 1.57 r": the arc's share of t over a quarter turn.
constexpr double handbook_k(double c) { return c / (std::numbers::pi / 2.0); }

double din_k(double ratio) {
    return ratio > k_din_full_ratio ? 1.0 : 0.65 + 0.5 * std::log10(ratio);
}

base::Result<double> neutral_line(const SharpBend& bend, const BlankRule& rule) {
    switch (rule.method) {
    case BlankMethod::k_factor: {
        InputCheck check;
        check.ratio(rule.k_factor, 0.5, "k");
        if (check.failed())
            return check.refusal();
        return rule.k_factor;
    }
    case BlankMethod::handbook_soft:
        return handbook_k(0.55);
    case BlankMethod::handbook_medium:
        return handbook_k(0.64);
    case BlankMethod::handbook_hard:
        return handbook_k(0.71);
    case BlankMethod::din6935:
        break;
    }
    const double k = bend.radius > Length{} ? din_k(bend.radius / bend.thickness) : 0.0;
    if (!(k > 0.0))
        return base::Refusal{"radius",
                             "DIN 6935 gives no neutral line for so sharp a bend: measure a trial "
                             "strip and give its K.",
                             "radius over 0.05 of the thickness"};
    return k / 2.0;
}

bool takes_nothing_off(const SharpBend& bend, const BlankRule& rule) {
    return rule.method == BlankMethod::din6935 && bend.angle < k_counts_from;
}

std::string rule_note(const SharpBend& bend, const BlankRule& rule) {
    if (rule.method == BlankMethod::k_factor)
        return "K as given, from a trial strip or habit.";
    if (rule.method != BlankMethod::din6935)
        return "Straight stock for a 90 degree bend after Machinery's Handbook (from memory), in "
               "proportion for other angles.";
    std::string note = "DIN 6935; its k is twice K.";
    if (bend.radius / bend.thickness < 0.5)
        note += " Radius under half the thickness: outside the good range, measure a trial strip.";
    if (takes_nothing_off(bend, rule))
        note += " Opening angle over 165 degrees: nothing is taken off.";
    return note;
}

const base::FormulaCard& allowance_card(BlankMethod method) {
    switch (method) {
    case BlankMethod::din6935:
        return k_bend_allowance_din_card;
    case BlankMethod::k_factor:
        return k_bend_allowance_given_card;
    default:
        return k_bend_allowance_handbook_card;
    }
}

base::Refusal at(const std::string& place, base::Refusal refusal) {
    refusal.field = refusal.field.empty() ? place : place + "." + refusal.field;
    return refusal;
}

std::string indexed(const char* list, std::size_t index) {
    return std::string(list) + "[" + std::to_string(index) + "]";
}

/// Figures of every bend, and every leg long enough for its own bends.
base::Result<std::vector<BendFigures>> checked_bends(const BentPart& part,
                                                     const std::vector<BlankRule>& rules) {
    TREADLE_EXPECT(rules.size() == part.bends.size());
    const std::vector<Length>& legs = part.outside_legs;
    if (legs.size() != part.bends.size() + 1)
        return base::Refusal{"legs", "There must be one leg more than there are bends.", ""};
    std::vector<BendFigures> figures;
    for (std::size_t i = 0; i < part.bends.size(); ++i) {
        const auto bend = bend_figures(part.bends[i], rules[i]);
        if (!bend.ok()) // the rule's own K belongs to no single bend
            return bend.refusal().field == "k" ? bend.refusal()
                                               : at(indexed("bends", i), bend.refusal());
        if (part.bends[i].thickness != part.bends[0].thickness)
            return base::Refusal{
                indexed("bends", i) + ".thickness", "All bends of a part have one thickness.", ""};
        figures.push_back(*bend);
    }
    for (std::size_t i = 0; i < legs.size(); ++i) {
        InputCheck check;
        check.length(legs[i], "leg");
        if (check.failed())
            return base::Refusal{
                indexed("legs", i), check.refusal().reason, check.refusal().detail};
        const Length before = i > 0 ? figures[i - 1].setback : Length{};
        const Length after = i < figures.size() ? figures[i].setback : Length{};
        if (clearly_below(legs[i], before + after))
            return base::Refusal{
                indexed("legs", i), "The leg is shorter than the bends at its ends.", ""};
    }
    return figures;
}

} // namespace

const base::FormulaCard k_bend_allowance_din_card{
    "bend-allowance-din",
    "Length of metal in a bend",
    "BA = (pi / 180) A (r + K t), K = k / 2, k = 0.65 + 0.5 log10(r / t), 1 over r / t = 5",
    k_allowance_symbols,
    "flat steel, r / t from 0.5; below it measure a trial strip, from 0.05 down refused",
    "tabellenbuch-metall",
    Evidence::published,
    ""};
const base::FormulaCard k_bend_allowance_given_card{
    "bend-allowance-given",
    "Length of metal in a bend",
    "BA = (pi / 180) A (r + K t)",
    k_allowance_symbols,
    "a K measured for this metal, V and radius; K up to 0.5",
    "derived-geometry",
    Evidence::derived,
    ""};
const base::FormulaCard k_bend_allowance_handbook_card{
    "bend-allowance-handbook",
    "Length of metal in a bend",
    "BA = (c t + 1.57 r) A / 90, K = c / 1.5708; c = 0.55 soft, 0.64 medium, 0.71 hard metal",
    k_allowance_symbols,
    "straight stock for a 90 degree bend, in proportion for other angles",
    "machinerys-handbook",
    Evidence::from_memory,
    ""};
const base::FormulaCard k_bend_deduction_din_card{
    "bend-deduction-din",
    "What a bend takes off the sum of the outside legs",
    "v = 2 SB - BA; 0 for opening angles over 165 degrees",
    k_deduction_symbols,
    "outside legs to the apex up to 90 degrees turned, to the outer tangent planes beyond",
    "tabellenbuch-metall",
    Evidence::published,
    ""};
const base::FormulaCard k_bend_deduction_card{"bend-deduction",
                                              "What a bend takes off the sum of the outside legs",
                                              "v = 2 SB - BA",
                                              k_deduction_symbols,
                                              "outside legs to where the setback is measured",
                                              "derived-geometry",
                                              Evidence::derived,
                                              ""};
const base::FormulaCard k_outside_setback_card{
    "bend-setback",
    "Outside setback of a bend",
    "SB = (r + t) tan(A / 2); r + t for A over 90 degrees",
    k_setback_symbols,
    "to the apex of the outer faces up to 90 degrees turned, to the outer tangent plane beyond",
    "derived-geometry",
    Evidence::derived,
    ""};
const base::FormulaCard k_outside_setback_apex_card{
    "bend-setback-apex",
    "Outside setback of a bend",
    "SB = (r + t) tan(A / 2)",
    k_setback_symbols,
    "to the apex of the outer faces at every angle, up to 175 degrees turned",
    "derived-geometry",
    Evidence::derived,
    ""};
const base::FormulaCard k_blank_length_card{
    "blank-length",
    "Flat length of a bent part",
    "L = sum of a - sum of v",
    k_blank_symbols,
    "one thickness; legs longer than the bends at their ends",
    "derived-geometry",
    Evidence::derived,
    ""};

const char* blank_method_word(BlankMethod method) {
    switch (method) {
    case BlankMethod::din6935:
        return "din6935";
    case BlankMethod::k_factor:
        return "k-factor";
    case BlankMethod::handbook_soft:
        return "handbook-soft";
    case BlankMethod::handbook_medium:
        return "handbook-medium";
    case BlankMethod::handbook_hard:
        return "handbook-hard";
    }
    return "";
}

base::Result<Length> outside_setback(const SharpBend& bend, LegsTo legs_to) {
    InputCheck check;
    check.length(bend.thickness, "thickness")
        .length_or_zero(bend.radius, "radius")
        .angle_within(bend.angle, 0.0, 180.0, "angle");
    if (check.failed())
        return check.refusal();
    // Beyond 90 degrees the apex runs away: legs are measured to the outer tangent planes.
    const bool to_apex = legs_to == LegsTo::apex || bend.angle < k_apex_up_to;
    if (to_apex && bend.angle > k_farthest_apex)
        return base::Refusal{"angle",
                             "So far round, the outer faces meet nowhere near the bend.",
                             "up to 175 deg to the apex, or measure to the tangent planes"};
    const double reach = to_apex ? std::tan(bend.angle.in_radians() / 2.0) : 1.0;
    return (bend.radius + bend.thickness) * reach;
}

base::Result<BendFigures> bend_figures(const SharpBend& bend, const BlankRule& rule) {
    const auto setback = outside_setback(bend, rule.legs_to);
    if (!setback.ok())
        return setback.refusal();
    const auto k = neutral_line(bend, rule);
    if (!k.ok())
        return k.refusal();
    BendFigures figures;
    figures.k = *k;
    figures.setback = *setback;
    figures.allowance = bend.angle.in_radians() * (bend.radius + *k * bend.thickness);
    if (!takes_nothing_off(bend, rule))
        figures.deduction = 2.0 * figures.setback - figures.allowance;
    return figures;
}

base::Result<Working> allowance_working(const SharpBend& bend, const BlankRule& rule) {
    const auto figures = bend_figures(bend, rule);
    if (!figures.ok())
        return figures.refusal();
    return Working{&allowance_card(rule.method),
                   {{"A", bend.angle},
                    {"r", bend.radius},
                    {"K", quantity::Number{figures->k, 4}},
                    {"t", bend.thickness}},
                   {"BA", figures->allowance},
                   rule_note(bend, rule)};
}

base::Result<Working> deduction_working(const SharpBend& bend, const BlankRule& rule) {
    const auto figures = bend_figures(bend, rule);
    if (!figures.ok())
        return figures.refusal();
    return Working{rule.method == BlankMethod::din6935 ? &k_bend_deduction_din_card
                                                       : &k_bend_deduction_card,
                   {{"SB", figures->setback}, {"BA", figures->allowance}, {"A", bend.angle}},
                   {"v", figures->deduction},
                   rule_note(bend, rule)};
}

base::Result<Working> setback_working(const SharpBend& bend, const BlankRule& rule) {
    const auto figures = bend_figures(bend, rule);
    if (!figures.ok())
        return figures.refusal();
    const bool apex = rule.legs_to == LegsTo::apex;
    return Working{apex ? &k_outside_setback_apex_card : &k_outside_setback_card,
                   {{"r", bend.radius}, {"t", bend.thickness}, {"A", bend.angle}},
                   {"SB", figures->setback},
                   bend.angle > k_apex_up_to && !apex ? "To the outer tangent plane."
                                                      : "To the apex."};
}

base::Result<Blank> blank_length(const BentPart& part, const BlankRule& rule) {
    return blank_length_by_bend(part, std::vector<BlankRule>(part.bends.size(), rule));
}

base::Result<Blank> blank_length_by_bend(const BentPart& part,
                                         const std::vector<BlankRule>& rules) {
    auto figures = checked_bends(part, rules);
    if (!figures.ok())
        return figures.refusal();
    Blank blank;
    blank.bends = std::move(figures).value();
    // Each leg's outside dimensions count from its apex (or tangent plane), which lies on the flat
    // where the legs before it end, less what their bends take off.
    Length origin;
    blank.leg_origins.push_back(origin);
    for (std::size_t i = 0; i < blank.bends.size(); ++i) {
        const Length deduction = blank.bends[i].deduction;
        blank.bend_lines.push_back(origin + part.outside_legs[i] - deduction / 2.0);
        origin += part.outside_legs[i] - deduction;
        blank.leg_origins.push_back(origin);
    }
    blank.length = origin + part.outside_legs.back();
    return blank;
}

base::Result<Working> blank_working(const BentPart& part, const BlankRule& rule) {
    return blank_working_by_bend(part, std::vector<BlankRule>(part.bends.size(), rule));
}

base::Result<Working> blank_working_by_bend(const BentPart& part,
                                            const std::vector<BlankRule>& rules) {
    const auto blank = blank_length_by_bend(part, rules);
    if (!blank.ok())
        return blank.refusal();
    Working working{&k_blank_length_card, {}, {"L", blank->length}, ""};
    for (const Length leg : part.outside_legs)
        working.values.push_back({"a", leg});
    for (const BendFigures& bend : blank->bends)
        working.values.push_back({"v", bend.deduction});
    for (std::size_t i = 0; i < part.bends.size(); ++i) {
        const bool other = i == 0 || rules[i].method != rules[i - 1].method;
        if (other)
            working.note += (i == 0 ? "" : " ") + rule_note(part.bends[i], rules[i]);
    }
    return working;
}

} // namespace treadle::process
