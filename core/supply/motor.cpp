#include "supply/motor.h"

#include "base/text.h"

#include <array>
#include <numbers>
#include <span>
#include <string>

#include "supply/bounds.h"
#include "supply/cards.h"

namespace treadle::supply {

namespace {

using base::Evidence;

constexpr std::size_t k_none = 4; ///< no column

struct CurrentRow {
    double hp;
    std::array<double, 4> amperes; ///< by column; 0 where the table has nothing
};

/// NEC table 430.248, single phase; columns 115, 200, 208, 230 V.
constexpr CurrentRow k_single_phase[] = {
    {1.0 / 6.0, {4.4, 0.0, 0.0, 2.2}},
    {1.0 / 4.0, {5.8, 0.0, 0.0, 2.9}},
    {1.0 / 3.0, {7.2, 0.0, 0.0, 3.6}},
    {0.5, {9.8, 5.6, 5.4, 4.9}},
    {0.75, {13.8, 7.9, 7.6, 6.9}},
    {1.0, {16.0, 9.2, 8.8, 8.0}},
    {1.5, {20.0, 11.5, 11.0, 10.0}},
    {2.0, {24.0, 13.8, 13.2, 12.0}},
    {3.0, {34.0, 19.6, 18.7, 17.0}},
    {5.0, {56.0, 32.2, 30.8, 28.0}},
    {7.5, {80.0, 46.0, 44.0, 40.0}},
    {10.0, {100.0, 57.5, 55.0, 50.0}},
};

/// NEC table 430.250, three phase; columns 230 and 460 V. Rows of 3/4, 1-1/2, 15 and 20 hp and the
/// odd halves of the 460 V column are from memory.
constexpr CurrentRow k_three_phase[] = {
    {0.5, {2.2, 1.1}},
    {0.75, {3.2, 1.6}},
    {1.0, {4.2, 2.1}},
    {1.5, {6.0, 3.0}},
    {2.0, {6.8, 3.4}},
    {3.0, {9.6, 4.8}},
    {5.0, {15.2, 7.6}},
    {7.5, {22.0, 11.0}},
    {10.0, {28.0, 14.0}},
    {15.0, {42.0, 21.0}},
    {20.0, {54.0, 27.0}},
};

struct Letter {
    char name;
    double most; ///< kVA per hp, top of the band
};

/// NEC 430.7(B). V begins at 22.4 and has no end.
constexpr Letter k_letters[] = {{'A', 3.14},
                                {'B', 3.54},
                                {'C', 3.99},
                                {'D', 4.49},
                                {'E', 4.99},
                                {'F', 5.59},
                                {'G', 6.29},
                                {'H', 7.09},
                                {'J', 7.99},
                                {'K', 8.99},
                                {'L', 9.99},
                                {'M', 11.19},
                                {'N', 12.49},
                                {'P', 13.99},
                                {'R', 15.99},
                                {'S', 17.99},
                                {'T', 19.99},
                                {'U', 22.39}};

struct Band {
    double from;
    double to;
    std::size_t column;
};

/// The columns serve the systems of 110 to 120 V and of 220 to 240 V, as the tables say.
constexpr Band k_single_bands[] = {
    {110.0, 120.0, 0}, {200.0, 200.0, 1}, {208.0, 208.0, 2}, {220.0, 240.0, 3}};
constexpr Band k_three_bands[] = {{220.0, 240.0, 0}, {440.0, 480.0, 1}};

std::size_t column_of(std::span<const Band> bands, double volts) {
    for (const Band& band : bands)
        if (volts >= band.from && volts <= band.to)
            return band.column;
    return k_none;
}

struct Found {
    double row_hp;
    Current current;
};

base::Result<Found> look_up(const Motor& motor) {
    Bounds bounds;
    bounds.power(motor.power, "power").voltage(motor.voltage, "voltage");
    if (bounds.failed())
        return bounds.refusal();
    const bool single = motor.phases == Phases::single;
    const std::size_t column =
        column_of(single ? std::span<const Band>(k_single_bands) : k_three_bands,
                  quantity::to_volts(motor.voltage));
    if (column == k_none)
        return base::Refusal{"voltage",
                             "The table of motor currents has no column for this voltage.",
                             single ? "110 to 120, 200, 208 or 220 to 240 V"
                                    : "220 to 240 or 440 to 480 V"};
    const auto rows = single ? std::span<const CurrentRow>(k_single_phase) : k_three_phase;
    const double hp = quantity::to_horsepower(motor.power) * (1.0 - 1e-9);
    for (const CurrentRow& row : rows)
        if (hp <= row.hp && row.amperes[column] > 0.0)
            return Found{row.hp, quantity::amperes(row.amperes[column])};
    return base::Refusal{"power",
                         "The table of motor currents ends below this.",
                         single ? "10 hp in single phase" : "20 hp in three phase"};
}

/// Highest usual letter (a guide without a source): larger motors start more softly.
char usual_letter(double hp) {
    if (hp <= 1.0)
        return 'M';
    if (hp <= 2.0)
        return 'L';
    if (hp <= 3.0)
        return 'K';
    return hp <= 5.0 ? 'J' : 'H';
}

constexpr double k_most_hp_for_usual_letter = 10.0;

constexpr base::CardSymbol k_full_load_symbols[] = {
    {"I", "full-load current"}, {"P", "rated power"}, {"V", "voltage"}};
constexpr base::CardSymbol k_conductor_symbols[] = {{"Ic", "least ampacity of the conductor"},
                                                    {"I", "full-load current"}};
constexpr base::CardSymbol k_breaker_symbols[] = {{"Ib", "largest inverse-time breaker"},
                                                  {"I", "full-load current"}};
constexpr base::CardSymbol k_locked_power_symbols[] = {
    {"S", "locked-rotor power"},
    {"s", "kVA per horsepower, top of the code letter's band"},
    {"P", "rated power"}};
constexpr base::CardSymbol k_locked_current_symbols[] = {{"Is", "locked-rotor current"},
                                                         {"S", "locked-rotor power"},
                                                         {"k", "1, or 1.732 for three phase"},
                                                         {"V", "voltage"}};

Working factor_working(const base::FormulaCard& card,
                       double factor,
                       const char* symbol,
                       Current current,
                       const char* note) {
    return {&card, {{"I", current}}, {symbol, factor * current}, note};
}

} // namespace

const base::FormulaCard k_motor_full_load_card{"motor-full-load",
                                               "Full-load current of a motor",
                                               "I = table(P, V)",
                                               k_full_load_symbols,
                                               "for conductors and protection; the nameplate "
                                               "governs the overload setting",
                                               "nec",
                                               Evidence::published,
                                               ""};
const base::FormulaCard k_motor_conductor_card{"motor-conductor",
                                               "What the conductors of one motor must carry",
                                               "Ic = 1.25 I",
                                               k_conductor_symbols,
                                               "one motor in continuous duty",
                                               "nec",
                                               Evidence::published,
                                               ""};
const base::FormulaCard k_motor_breaker_card{"motor-breaker",
                                             "Largest inverse-time breaker of one motor",
                                             "Ib = 2.5 I",
                                             k_breaker_symbols,
                                             "take the next standard size down; the code allows "
                                             "more only where the motor cannot start",
                                             "nec",
                                             Evidence::from_memory,
                                             ""};
const base::FormulaCard k_locked_power_card{"motor-locked-power",
                                            "Power that a motor draws at standstill",
                                            "S = s P",
                                            k_locked_power_symbols,
                                            "s is the top of the code letter's band",
                                            "nec",
                                            Evidence::published,
                                            ""};
const base::FormulaCard k_locked_current_card{"motor-locked-current",
                                              "Current that a motor draws at standstill",
                                              "Is = 1000 S / (k V)",
                                              k_locked_current_symbols,
                                              "S in kVA, at the voltage given",
                                              "nec",
                                              Evidence::published,
                                              ""};

double phase_factor(Phases phases) { return phases == Phases::single ? 1.0 : std::numbers::sqrt3; }

base::Result<Current> full_load_current(const Motor& motor) {
    const auto found = look_up(motor);
    if (!found.ok())
        return found.refusal();
    return found->current;
}

base::Result<LockedRotor> locked_rotor(const Motor& motor, std::optional<char> letter) {
    Bounds bounds;
    bounds.power(motor.power, "power").voltage(motor.voltage, "voltage");
    if (bounds.failed())
        return bounds.refusal();
    const double hp = quantity::to_horsepower(motor.power);
    if (!letter && hp > k_most_hp_for_usual_letter * (1.0 + 1e-9))
        return base::Refusal{"code",
                             "The code letter is missing, and none is usual for this power.",
                             "it stands on the nameplate"};
    LockedRotor out;
    out.assumed = !letter;
    out.letter = letter ? *letter : usual_letter(hp * (1.0 - 1e-9));
    if (out.letter == 'V')
        return base::Refusal{
            "code", "Code V has no upper end.", "ask the maker for the locked-rotor current"};
    for (const Letter& row : k_letters) {
        if (row.name != out.letter)
            continue;
        out.power = quantity::kilovolt_amperes(row.most * hp);
        out.current = out.power / (motor.voltage * phase_factor(motor.phases));
        return out;
    }
    return base::Refusal{"code", "There is no such code letter.", "A to V without I, O and Q"};
}

base::Result<Working> full_load_working(const Motor& motor) {
    const auto found = look_up(motor);
    if (!found.ok())
        return found.refusal();
    std::string note = motor.phases == Phases::single
                           ? "NEC table 430.248, single phase."
                           : "NEC table 430.250, three phase (some rows from memory).";
    if (quantity::to_horsepower(motor.power) < found->row_hp * (1.0 - 1e-9))
        note += " No row for this power: the next larger one, " +
                base::write_short(found->row_hp, 3) + " hp, is used.";
    return Working{&k_motor_full_load_card,
                   {{"P", motor.power}, {"V", motor.voltage}},
                   {"I", found->current},
                   note};
}

base::Result<Working> conductor_working(const Motor& motor) {
    const auto current = full_load_current(motor);
    if (!current.ok())
        return current.refusal();
    return factor_working(k_motor_conductor_card, 1.25, "Ic", *current, "");
}

base::Result<Working> breaker_working(const Motor& motor) {
    const auto current = full_load_current(motor);
    if (!current.ok())
        return current.refusal();
    return factor_working(k_motor_breaker_card, 2.5, "Ib", *current, "From memory: look it up.");
}

base::Result<Working> locked_power_working(const Motor& motor, std::optional<char> letter) {
    const auto locked = locked_rotor(motor, letter);
    if (!locked.ok())
        return locked.refusal();
    const double per_hp =
        quantity::to_kilovolt_amperes(locked->power) / quantity::to_horsepower(motor.power);
    std::string note = std::string("Code letter ") + locked->letter + ".";
    if (locked->assumed)
        note += " Assumed, the highest usual one: common practice, no source. The nameplate's goes "
                "before it.";
    return Working{&k_locked_power_card,
                   {{"s", quantity::Number{per_hp, 2}}, {"P", motor.power}},
                   {"S", locked->power},
                   note};
}

base::Result<Working> locked_current_working(const Motor& motor, std::optional<char> letter) {
    const auto locked = locked_rotor(motor, letter);
    if (!locked.ok())
        return locked.refusal();
    return Working{&k_locked_current_card,
                   {{"S", locked->power},
                    {"k", quantity::Number{phase_factor(motor.phases), 3}},
                    {"V", motor.voltage}},
                   {"Is", locked->current},
                   ""};
}

} // namespace treadle::supply
