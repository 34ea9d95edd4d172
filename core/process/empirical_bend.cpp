#include "process/empirical_bend.h"

#include "process/cards.h"

namespace treadle::process {

namespace {

using base::Evidence;

constexpr base::CardSymbol k_symbols[] = {
    {"BA", "length of the neutral line round the bend"},
    {"v", "taken off the sum of the outside legs"},
    {"A", "angle turned through, in degrees"},
    {"r", "inside radius"},
    {"t", "thickness"},
    {"K", "neutral line from the inside over thickness"},
};

bool straight_line(EmpiricalRule rule) {
    return rule == EmpiricalRule::school_sheet || rule == EmpiricalRule::us_shop;
}

const base::FormulaCard& card(EmpiricalRule rule) {
    switch (rule) {
    case EmpiricalRule::faa:
        return k_allowance_faa_card;
    case EmpiricalRule::groover:
        return k_allowance_groover_card;
    case EmpiricalRule::school_sheet:
        return k_deduction_school_card;
    case EmpiricalRule::us_shop:
        return k_deduction_us_card;
    }
    return k_allowance_faa_card;
}

Length rule_allowance(const SharpBend& bend, EmpiricalRule rule) {
    if (rule == EmpiricalRule::faa)
        return quantity::to_degrees(bend.angle) * (0.01743 * bend.radius + 0.0078 * bend.thickness);
    const double k = bend.radius < 2.0 * bend.thickness ? 0.33 : 0.50;
    return bend.angle.in_radians() * (bend.radius + k * bend.thickness);
}

Working working_of(const SharpBend& bend, EmpiricalRule rule, const char* symbol, Length result) {
    return Working{&card(rule),
                   {{"A", bend.angle}, {"r", bend.radius}, {"t", bend.thickness}},
                   {symbol, result},
                   "A rule of thumb by name: a K from a trial strip is better."};
}

} // namespace

const base::FormulaCard k_allowance_faa_card{"bend-allowance-faa",
                                             "Length of metal in a bend, aircraft sheet rule",
                                             "BA = (0.01743 r + 0.0078 t) A",
                                             k_symbols,
                                             "about K = 0.4475",
                                             "faa-43-13",
                                             Evidence::published,
                                             ""};
const base::FormulaCard k_allowance_groover_card{
    "bend-allowance-groover",
    "Length of metal in a bend, Groover",
    "BA = (pi / 180) A (r + K t); K = 0.33 for r under 2 t, else 0.50",
    k_symbols,
    "steps by 0.17 t at r = 2 t",
    "groover",
    Evidence::published,
    ""};
const base::FormulaCard k_deduction_school_card{"bend-deduction-school",
                                                "What a bend takes off, German school sheet",
                                                "v = 0.43 r + 1.48 t",
                                                k_symbols,
                                                "90 degrees only; K = 0.331",
                                                "school-sheet-bending",
                                                Evidence::published,
                                                ""};
const base::FormulaCard k_deduction_us_card{"bend-deduction-us",
                                            "What a bend takes off, old US shop rule",
                                            "v = 0.43 r + 1.37 t",
                                            k_symbols,
                                            "90 degrees only; K = 0.400",
                                            "common-practice-bending",
                                            Evidence::common_practice,
                                            ""};

base::Result<BendFigures>
empirical_figures(const SharpBend& bend, EmpiricalRule rule, LegsTo legs_to) {
    const auto setback = outside_setback(bend, legs_to);
    if (!setback.ok())
        return setback.refusal();
    BendFigures figures;
    figures.setback = *setback;
    if (straight_line(rule)) {
        if (bend.angle != degrees(90.0))
            return base::Refusal{"angle", "This rule knows 90 degrees only.", "90 deg"};
        const double per_thickness = rule == EmpiricalRule::school_sheet ? 1.48 : 1.37;
        figures.deduction = 0.43 * bend.radius + per_thickness * bend.thickness;
        figures.allowance = 2.0 * figures.setback - figures.deduction;
    } else {
        figures.allowance = rule_allowance(bend, rule);
        figures.deduction = 2.0 * figures.setback - figures.allowance;
    }
    figures.k = (figures.allowance / bend.angle.in_radians() - bend.radius) / bend.thickness;
    return figures;
}

base::Result<Working>
empirical_allowance_working(const SharpBend& bend, EmpiricalRule rule, LegsTo legs_to) {
    const auto figures = empirical_figures(bend, rule, legs_to);
    if (!figures.ok())
        return figures.refusal();
    if (!straight_line(rule))
        return working_of(bend, rule, "BA", figures->allowance);
    // The rule gives the deduction; the allowance is what it leaves.
    return Working{&k_bend_allowance_given_card,
                   {{"A", bend.angle},
                    {"r", bend.radius},
                    {"K", quantity::Number{figures->k, 4}},
                    {"t", bend.thickness}},
                   {"BA", figures->allowance},
                   "K as the rule of the deduction comes to."};
}

base::Result<Working>
empirical_deduction_working(const SharpBend& bend, EmpiricalRule rule, LegsTo legs_to) {
    const auto figures = empirical_figures(bend, rule, legs_to);
    if (!figures.ok())
        return figures.refusal();
    if (straight_line(rule))
        return working_of(bend, rule, "v", figures->deduction);
    return Working{&k_bend_deduction_card,
                   {{"SB", figures->setback}, {"BA", figures->allowance}, {"A", bend.angle}},
                   {"v", figures->deduction},
                   ""};
}

} // namespace treadle::process
