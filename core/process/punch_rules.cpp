#include "process/punch_rules.h"

#include "process/cards.h"
#include "process/die_clearance.h"
#include "process/input_check.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <string>

namespace treadle::process {

namespace {

using base::Evidence;

constexpr base::CardSymbol k_ground_symbols[] = {
    {"F", "peak force"},
    {"Fmax", "force with a flat punch"},
    {"p", "share of the thickness to fracture"},
    {"t", "thickness"},
    {"h", "height of the ground slope over the cut"},
};
constexpr base::CardSymbol k_stripping_symbols[] = {
    {"Fs", "force to pull the punch out"},
    {"L", "length of the cut edge"},
    {"t", "thickness"},
};
constexpr base::CardSymbol k_work_symbols[] = {
    {"E", "work of one stroke"},
    {"F", "cutting force"},
    {"p", "share of the thickness to fracture"},
    {"t", "thickness"},
    {"f", "allowance for the shape of the force and for friction"},
};
constexpr base::CardSymbol k_penetration_symbols[] = {
    {"p t", "penetration to fracture"},
    {"p", "share of the thickness"},
    {"t", "thickness"},
};
constexpr base::CardSymbol k_clearance_symbols[] = {
    {"c", "clearance per side"},
    {"t", "thickness"},
    {"S", "shear strength in MPa, t in mm"},
    {"Ac", "share of the thickness, by metal"},
};
constexpr base::CardSymbol k_pair_symbols[] = {
    {"C", "die opening less punch size"},
    {"die", "opening of the die"},
    {"punch", "size of the punch"},
};

// Program rule, no source: a slope is worn and reground, so not all of it is believed.
constexpr double k_least_ground_share = 0.6;
// 3500 lbf per square inch of cut edge.
constexpr Stress k_stripping_constant = ksi(3.5);
constexpr double k_least_work_factor = 0.5;
constexpr double k_most_work_factor = 1.16;

// Die-design handbooks' shares of the thickness to fracture. Where a range is printed the larger:
// more work, and less credit for a ground slope.
constexpr const char* k_memory = "from memory";
constexpr const char* k_practice = "common practice, no source";
constexpr std::array k_penetrations{
    Penetration{"aluminium", 0.60, "read in excerpt"},
    Penetration{"copper", 0.55, k_memory},
    Penetration{"brass", 0.50, k_memory},
    Penetration{"bronze", 0.25, k_memory},
    Penetration{"zinc", 0.50, k_memory},
    Penetration{"tin", 0.40, k_memory},
    Penetration{"lead", 0.50, k_memory},
    Penetration{"nickel", 0.55, k_memory},
    Penetration{"steel-0.10C-annealed", 0.50, k_memory},
    Penetration{"steel-0.10C-cold-rolled", 0.38, k_memory},
    Penetration{"steel-0.20C-annealed", 0.40, k_memory},
    Penetration{"steel-0.20C-cold-rolled", 0.28, k_memory},
    Penetration{"steel-0.30C-annealed", 0.33, k_memory},
    Penetration{"steel-0.30C-cold-rolled", 0.22, k_memory},
    Penetration{"steel-0.40C-annealed", 0.27, k_memory},
    Penetration{"steel-0.40C-cold-rolled", 0.17, k_memory},
    Penetration{"steel-0.60C-annealed", 0.20, k_memory},
    Penetration{"steel-0.60C-cold-rolled", 0.09, k_memory},
    Penetration{"steel-0.80C-annealed", 0.15, k_memory},
    Penetration{"steel-0.80C-cold-rolled", 0.05, k_memory},
    Penetration{"steel-1.00C-annealed", 0.10, k_memory},
    Penetration{"steel-1.00C-cold-rolled", 0.02, k_memory},
    Penetration{"stainless-annealed", 0.50, k_practice},
    Penetration{"stainless-half-hard", 0.35, k_practice},
};

double ground_share(double free_share, Length height, Length thickness, GroundRule rule) {
    const double depth = free_share * (thickness / height);
    switch (rule) {
    case GroundRule::careful:
        return std::clamp(depth, k_least_ground_share, 1.0);
    case GroundRule::energy:
        return std::min(depth, 1.0);
    case GroundRule::sum:
        return depth / (depth + 1.0);
    }
    return 1.0;
}

const base::FormulaCard& ground_card(GroundRule rule) {
    switch (rule) {
    case GroundRule::careful:
        return k_ground_careful_card;
    case GroundRule::energy:
        return k_ground_energy_card;
    case GroundRule::sum:
        return k_ground_sum_card;
    }
    return k_ground_careful_card;
}

Working clearance_working(const base::FormulaCard& card, Length thickness, double share) {
    const double total = 2.0 * share;
    return Working{&card,
                   {{"t", thickness}},
                   {"c", share * thickness},
                   total < k_least_clearance_share
                       ? "Under 6 % of the thickness in all: tight."
                       : "A textbook's share for clean edges; shops leave more for tool life."};
}

} // namespace

const base::FormulaCard k_ground_careful_card{
    "ground-careful",
    "Force of a punch with a ground slope",
    "F = Fmax min(1, p t / h), not under 0.6 Fmax",
    k_ground_symbols,
    "only for a tool known to be ground so; the work stays the same",
    "program-rule",
    Evidence::derived,
    ""};
const base::FormulaCard k_ground_energy_card{"ground-energy",
                                             "Force of a punch with a ground slope, energy rule",
                                             "F = Fmax min(1, p t / h)",
                                             k_ground_symbols,
                                             "only for a tool known to be ground so",
                                             "entrance-papers",
                                             Evidence::published,
                                             ""};
const base::FormulaCard k_ground_sum_card{
    "ground-sum",
    "Force of a punch with a ground slope, sum rule",
    "F = Fmax p t / (p t + h)",
    k_ground_symbols,
    "credits slopes that the energy rule does not: for comparison",
    "entrance-papers",
    Evidence::published,
    ""};
const base::FormulaCard k_stripping_constant_card{
    "stripping-constant",
    "Force to strip the stock, die handbooks' constant",
    "Fs = 3500 L t (lbf, in)",
    k_stripping_symbols,
    "about 7 % of the cut in mild steel: under the careful 20 %",
    "die-design-handbook",
    Evidence::from_memory,
    ""};
const base::FormulaCard k_punch_work_factor_card{
    "punch-work-factor",
    "Work of one punching stroke",
    "E = F p t f",
    k_work_symbols,
    "f from 0.5 (force falling like a triangle) to 1.16 (die handbooks' allowance)",
    "die-design-handbook",
    Evidence::from_memory,
    ""};
const base::FormulaCard k_penetration_card{"penetration",
                                           "Penetration to fracture",
                                           "p t, p by metal",
                                           k_penetration_symbols,
                                           "usual clearance and sharp tools",
                                           "die-design-handbook",
                                           Evidence::from_memory,
                                           ""};
const base::FormulaCard k_clearance_formula_card{"clearance-formula",
                                                 "Clearance per side by strength",
                                                 "c = 0.0032 t sqrt(S)",
                                                 k_clearance_symbols,
                                                 "t in mm, S in MPa",
                                                 "press-tool-texts",
                                                 Evidence::from_memory,
                                                 ""};
const base::FormulaCard k_clearance_groover_card{
    "clearance-groover",
    "Clearance per side by metal, Groover",
    "c = Ac t; Ac = 0.045 soft, 0.060 medium, 0.075 hard",
    k_clearance_symbols,
    "soft: 1100 and 5052; medium: 2024, 6061, brass, soft steel and stainless; hard: half-hard "
    "steel, hard stainless",
    "groover",
    Evidence::published,
    ""};
const base::FormulaCard k_clearance_handbook_card{"clearance-handbook",
                                                  "Clearance per side by temper",
                                                  "c = t/20 soft, t/16 medium, t/14 hard rolled",
                                                  k_clearance_symbols,
                                                  "steel and brass",
                                                  "machinerys-handbook",
                                                  Evidence::from_memory,
                                                  ""};
const base::FormulaCard k_clearance_pair_card{"clearance-pair",
                                              "Clearance of a punch and a die",
                                              "C = die - punch",
                                              k_pair_symbols,
                                              "warned under 6 % and over 25 % of the thickness",
                                              "derived-geometry",
                                              Evidence::derived,
                                              ""};

base::Result<Working>
ground_force_working(const PunchCut& cut, Length height, double penetration, GroundRule rule) {
    const auto full = punch_force(cut);
    if (!full.ok())
        return full.refusal();
    InputCheck check;
    check.length(height, "shear_depth").ratio(penetration, 1.0, "penetration");
    if (check.failed())
        return check.refusal();
    const double share = ground_share(penetration, height, cut.thickness, rule);
    return Working{
        &ground_card(rule),
        {{"Fmax", *full}, {"p", quantity::Share{penetration}}, {"t", cut.thickness}, {"h", height}},
        {"F", share * *full},
        rule == GroundRule::careful
            ? "The energy rule, the higher of the printed ones; credited to 0.6 at the most."
            : "By the rule named: not the careful choice."};
}

base::Result<Working> stripping_constant_working(const geometry::HoleOutline& hole,
                                                 Length thickness) {
    const auto sound = geometry::checked(hole);
    if (!sound.ok())
        return sound.refusal();
    InputCheck check;
    check.length(geometry::perimeter(hole), "size").length(thickness, "thickness");
    if (check.failed())
        return check.refusal();
    return Working{&k_stripping_constant_card,
                   {{"L", geometry::perimeter(hole)}, {"t", thickness}},
                   {"Fs", geometry::perimeter(hole) * thickness * k_stripping_constant},
                   "By the rule named: the careful choice is 20 % of the cut."};
}

base::Result<Working>
punch_work_factor_working(const PunchCut& cut, double penetration, double factor) {
    const auto work = punch_work(cut, penetration);
    if (!work.ok())
        return work.refusal();
    if (!(factor >= k_least_work_factor && factor <= k_most_work_factor))
        return base::Refusal{"factor", "The factor is outside what is printed.", "0.5 to 1.16"};
    return Working{&k_punch_work_factor_card,
                   {{"F", *punch_force(cut)},
                    {"p", quantity::Share{penetration}},
                    {"t", cut.thickness},
                    {"f", quantity::Number{factor, 2}}},
                   {"E", factor * *work},
                   ""};
}

std::size_t penetration_count() { return k_penetrations.size(); }

const Penetration& penetration_row(std::size_t index) {
    TREADLE_EXPECT(index < k_penetrations.size());
    return k_penetrations[index];
}

base::Result<Working> penetration_working(std::size_t index, Length thickness) {
    InputCheck check;
    check.length(thickness, "thickness");
    if (check.failed())
        return check.refusal();
    const Penetration& row = penetration_row(index);
    return Working{&k_penetration_card,
                   {{"p", quantity::Share{row.share}}, {"t", thickness}},
                   {"p t", row.share * thickness},
                   std::string("Value ") + row.how + "."};
}

base::Result<Working> clearance_formula_working(Length thickness, Stress shear_strength) {
    InputCheck check;
    check.length(thickness, "thickness").stress(shear_strength, "shear_strength");
    if (check.failed())
        return check.refusal();
    Working working =
        clearance_working(k_clearance_formula_card,
                          thickness,
                          0.0032 * std::sqrt(quantity::to_megapascals(shear_strength)));
    working.values.push_back({"S", shear_strength});
    return working;
}

base::Result<Working> clearance_groover_working(Length thickness, Temper temper) {
    InputCheck check;
    check.length(thickness, "thickness");
    if (check.failed())
        return check.refusal();
    const double share = temper == Temper::soft ? 0.045 : temper == Temper::medium ? 0.060 : 0.075;
    Working working = clearance_working(k_clearance_groover_card, thickness, share);
    working.values.push_back({"Ac", quantity::Number{share, 3}});
    return working;
}

base::Result<Working> clearance_handbook_working(Length thickness, Temper temper) {
    InputCheck check;
    check.length(thickness, "thickness");
    if (check.failed())
        return check.refusal();
    const double parts = temper == Temper::soft ? 20.0 : temper == Temper::medium ? 16.0 : 14.0;
    return clearance_working(k_clearance_handbook_card, thickness, 1.0 / parts);
}

base::Result<Working> clearance_pair_working(Length punch, Length die, Length thickness) {
    const auto clearance = clearance_of_pair(punch, die, thickness);
    if (!clearance.ok())
        return clearance.refusal();
    return Working{&k_clearance_pair_card,
                   {{"die", die}, {"punch", punch}},
                   {"C", clearance->total},
                   clearance->share < k_least_clearance_share
                       ? "Warning: under 6 % of the thickness in all, too tight for steel."
                   : clearance->share > k_most_clearance_share
                       ? "Warning: over 25 % of the thickness in all, too loose for steel."
                       : ""};
}

} // namespace treadle::process
