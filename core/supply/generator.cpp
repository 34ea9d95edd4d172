#include "supply/generator.h"

#include "supply/bounds.h"
#include "supply/cards.h"

namespace treadle::supply {

namespace {

using base::Evidence;

constexpr Length k_highest = quantity::metres(6000.0); ///< over any road
constexpr double k_hottest = 100.0;                    ///< degrees Fahrenheit over the rating
constexpr double k_least_left = 0.2;                   ///< below this the rule says nothing

base::Result<ApparentPower> running(const Motor& motor) {
    const auto current = full_load_current(motor);
    if (!current.ok())
        return current.refusal();
    return phase_factor(motor.phases) * (motor.voltage * *current);
}

constexpr base::CardSymbol k_running_symbols[] = {{"Sr", "running load"},
                                                  {"k", "1, or 1.732 for three phase"},
                                                  {"V", "voltage"},
                                                  {"I", "full-load current"}};
constexpr base::CardSymbol k_surge_symbols[] = {
    {"Ss", "least surge rating of the generator, at a dip of 30 %"},
    {"S", "locked-rotor power of the motor"}};
constexpr base::CardSymbol k_triple_symbols[] = {{"Ss", "surge by the rule of thumb"},
                                                 {"Sr", "running load"}};
constexpr base::CardSymbol k_power_symbols[] = {{"Pr", "power drawn at full load"},
                                                {"P", "rated power of the motor"},
                                                {"n", "efficiency of the motor"}};
constexpr base::CardSymbol k_derated_symbols[] = {
    {"Ga", "rating that is left"},
    {"G", "rating"},
    {"d", "share lost for every 1000 ft"},
    {"h", "height over the rated one"},
    {"T", "degrees Fahrenheit over the rated temperature"}};

} // namespace

const base::FormulaCard k_generator_running_card{"generator-running",
                                                 "Running load of a motor on a generator",
                                                 "Sr = k V I / 1000",
                                                 k_running_symbols,
                                                 "best at 60 to 80 % of the generator's rating; a "
                                                 "120 V outlet of a 120/240 V set gives half of it",
                                                 "common-practice-supply",
                                                 Evidence::common_practice,
                                                 ""};
const base::FormulaCard k_generator_surge_card{
    "generator-surge",
    "Least surge of a generator that starts a motor",
    "Ss = S",
    k_surge_symbols,
    "without a surge rating of the generator this cannot be answered from its running rating",
    "common-practice-supply",
    Evidence::common_practice,
    ""};
const base::FormulaCard k_generator_triple_card{"generator-triple",
                                                "Surge by the rule of thumb",
                                                "Ss = 3 Sr",
                                                k_triple_symbols,
                                                "too low for motors of code K and L, which draw "
                                                "five to seven times their running load",
                                                "common-practice-supply",
                                                Evidence::common_practice,
                                                ""};
const base::FormulaCard k_generator_power_card{"generator-power",
                                               "Power that a motor draws at full load",
                                               "Pr = P / n",
                                               k_power_symbols,
                                               "small single-phase motors: n from 0.70 to 0.85",
                                               "common-practice-supply",
                                               Evidence::common_practice,
                                               ""};
const base::FormulaCard k_generator_derated_card{
    "generator-derated",
    "What a generator gives in thin or hot air",
    "Ga = G (1 - d h / 1000 ft - 0.01 T / 10)",
    k_derated_symbols,
    "engines without a turbocharger; the maker's own figure goes before it",
    "common-practice-supply",
    Evidence::common_practice,
    ""};

base::Result<Working> generator_running_working(const Motor& motor) {
    const auto load = running(motor);
    if (!load.ok())
        return load.refusal();
    return Working{&k_generator_running_card,
                   {{"k", quantity::Number{phase_factor(motor.phases), 3}},
                    {"V", motor.voltage},
                    {"I", *full_load_current(motor)}},
                   {"Sr", *load},
                   ""};
}

base::Result<Working> generator_surge_working(const Motor& motor, std::optional<char> letter) {
    const auto locked = locked_rotor(motor, letter);
    if (!locked.ok())
        return locked.refusal();
    return Working{&k_generator_surge_card, {{"S", locked->power}}, {"Ss", locked->power}, ""};
}

base::Result<Working> generator_triple_working(const Motor& motor) {
    const auto load = running(motor);
    if (!load.ok())
        return load.refusal();
    return Working{&k_generator_triple_card,
                   {{"Sr", *load}},
                   {"Ss", 3.0 * *load},
                   "Asked for by name. The careful rule is the locked-rotor power."};
}

base::Result<Working> generator_power_working(const Motor& motor, double efficiency) {
    Bounds bounds;
    bounds.power(motor.power, "power").number(efficiency, 1.0, "efficiency");
    if (bounds.failed())
        return bounds.refusal();
    return Working{&k_generator_power_card,
                   {{"P", motor.power}, {"n", quantity::Number{efficiency, 2}}},
                   {"Pr", motor.power / efficiency},
                   efficiency == k_assumed_efficiency
                       ? "Efficiency 0.75: an assumption of this program."
                       : ""};
}

base::Result<Power> derated(const Derating& question) {
    Bounds bounds;
    bounds.power(question.rating, "rating")
        .length_or_zero(question.altitude, k_highest, "altitude")
        .number(question.per_thousand_feet, 0.1, "rate")
        .number_or_zero(question.fahrenheit_over, k_hottest, "over_temperature_f");
    if (bounds.failed())
        return bounds.refusal();
    const double left = 1.0 -
                        question.per_thousand_feet * (question.altitude / quantity::feet(1000.0)) -
                        0.01 * question.fahrenheit_over / 10.0;
    if (left < k_least_left)
        return base::Refusal{"altitude", "So high the rule says nothing any more.", ""};
    return question.rating * left;
}

base::Result<Working> derated_working(const Derating& question) {
    const auto left = derated(question);
    if (!left.ok())
        return left.refusal();
    return Working{&k_generator_derated_card,
                   {{"G", question.rating},
                    {"d", quantity::Share{question.per_thousand_feet}},
                    {"h", question.altitude},
                    {"T", quantity::Number{question.fahrenheit_over, 0}}},
                   {"Ga", *left},
                   "Plan for 60 to 80 % of it."};
}

} // namespace treadle::supply
