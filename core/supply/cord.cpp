#include "supply/cord.h"

#include "base/text.h"

#include <cmath>
#include <numbers>
#include <optional>
#include <string>
#include <vector>

#include "supply/bounds.h"
#include "supply/cards.h"

namespace treadle::supply {

namespace {

using base::Evidence;

struct WireRow {
    const char* name;
    double circular_mils; ///< 0 for mm2 sizes
    double stranded;      ///< ohm per 1000 ft at 75 C; mm2 sizes: ohm per km at 20 C
    double solid;
    double three; ///< ampacity with three conductors that carry, A
    double two;
    Evidence resistance;
    Evidence ampacity; ///< of two conductors; three are from memory throughout
};

constexpr Evidence k_read = Evidence::published;
constexpr Evidence k_memory = Evidence::from_memory;

/// NEC chapter 9 table 8 (uncoated copper, 75 C) and table 400.5(A)(1), columns A and B;
/// mm2: IEC 60228 class 5, from memory.
constexpr WireRow k_wires[] = {
    {"18 AWG", 1620.0, 7.95, 7.77, 7.0, 10.0, k_memory, k_read},
    {"16 AWG", 2580.0, 4.99, 4.89, 10.0, 13.0, k_memory, k_read},
    {"14 AWG", 4110.0, 3.14, 3.07, 15.0, 18.0, k_memory, k_read},
    {"12 AWG", 6530.0, 1.98, 1.93, 20.0, 25.0, k_memory, k_read},
    {"10 AWG", 10380.0, 1.24, 1.21, 25.0, 30.0, k_memory, k_memory},
    {"8 AWG", 16510.0, 0.778, 0.764, 35.0, 40.0, k_memory, k_memory},
    {"6 AWG", 26240.0, 0.491, 0.0, 45.0, 55.0, k_read, k_memory},
    {"4 AWG", 41740.0, 0.308, 0.0, 60.0, 70.0, k_read, k_memory},
    {"2 AWG", 66360.0, 0.194, 0.0, 80.0, 95.0, k_memory, k_memory},
    {"1.5 mm2", 0.0, 13.3, 0.0, 0.0, 0.0, k_memory, k_memory},
    {"2.5 mm2", 0.0, 7.98, 0.0, 0.0, 0.0, k_memory, k_memory},
    {"4 mm2", 0.0, 4.95, 0.0, 0.0, 0.0, k_memory, k_memory},
    {"6 mm2", 0.0, 3.30, 0.0, 0.0, 0.0, k_memory, k_memory},
};

const WireRow& row_of(Wire wire) { return k_wires[static_cast<std::size_t>(wire)]; }

constexpr double k_ohm_circular_mils_per_foot = 12.9;
constexpr double k_drop_warned = 0.03;
constexpr double k_drop_stopped = 0.05;
constexpr double k_dip_warned = 0.15;
constexpr double k_dip_stopped = 0.30;

double path_factor(Phases phases) { return phases == Phases::single ? 2.0 : std::numbers::sqrt3; }

/// Everything but the length; the ampacity before any drop.
std::optional<base::Refusal> fault_of(const Cord& cord) {
    Bounds bounds;
    bounds.voltage(cord.voltage, "voltage").current(cord.current, "current");
    if (bounds.failed())
        return bounds.refusal();
    const auto ampacity = cord_ampacity(cord.wire, cord.carrying);
    if (!ampacity.ok())
        return ampacity.refusal();
    if (cord.current > *ampacity)
        return base::Refusal{"wire",
                             "This cord may not carry so much current.",
                             "at most " + base::write_short(quantity::to_amperes(*ampacity), 1) +
                                 " A"};
    return std::nullopt;
}

Voltage lost(const Cord& cord, Current current) {
    const ResistancePerLength r = *wire_resistance(cord.wire, WireKind::stranded);
    return path_factor(cord.phases) * (current * (cord.length * r));
}

std::vector<quantity::WorkingValue> drop_values(const Cord& cord, Current current) {
    return {{"k", quantity::Number{path_factor(cord.phases), 3}},
            {"L", cord.length},
            {"I", current},
            {"R", *wire_resistance(cord.wire, WireKind::stranded)}};
}

constexpr base::CardSymbol k_table_symbols[] = {{"R", "resistance per length of one conductor"}};
constexpr base::CardSymbol k_formula_symbols[] = {
    {"R", "resistance per foot of one conductor, in ohm"}, {"c", "area in circular mils"}};
constexpr base::CardSymbol k_ampacity_symbols[] = {{"Ia", "current that the cord may carry"},
                                                   {"n", "conductors that carry current"}};
constexpr base::CardSymbol k_drop_symbols[] = {
    {"Vd", "voltage lost"},
    {"k", "2 for single phase (out and back), 1.732 for three phase"},
    {"L", "length of the cord, one way"},
    {"I", "current"},
    {"R", "resistance per length of one conductor"}};
constexpr base::CardSymbol k_longest_symbols[] = {
    {"L", "longest cord, one way"},
    {"p", "share of the voltage that may be lost"},
    {"V", "voltage"},
    {"k", "2 for single phase (out and back), 1.732 for three phase"},
    {"I", "current"},
    {"R", "resistance per length of one conductor"}};

} // namespace

const base::FormulaCard k_wire_table_card{"wire-resistance",
                                          "Resistance of a copper conductor",
                                          "R = table(wire)",
                                          k_table_symbols,
                                          "uncoated copper, AWG at 75 C and mm2 at 20 C; cold "
                                          "copper has about 0.82 of its resistance at 75 C",
                                          "nec",
                                          Evidence::published,
                                          ""};
const base::FormulaCard k_wire_metric_card{"wire-resistance-metric",
                                           "Resistance of a flexible metric conductor",
                                           "R = table(wire)",
                                           k_table_symbols,
                                           "class 5 copper at 20 C; warm copper has more",
                                           "iec-60228",
                                           Evidence::from_memory,
                                           ""};
const base::FormulaCard k_wire_formula_card{"wire-resistance-formula",
                                            "Resistance of a copper conductor by its area",
                                            "R = 12.9 / c",
                                            k_formula_symbols,
                                            "stranded copper at 75 C, within 1 % of the table",
                                            "common-practice-supply",
                                            Evidence::common_practice,
                                            ""};
const base::FormulaCard k_cord_ampacity_card{
    "cord-ampacity",
    "Current that a flexible cord may carry",
    "Ia = table(wire, n)",
    k_ampacity_symbols,
    "types S, SJ, SO, ST, SJOOW, SOOW in air of 30 C, unrolled: coiled on the drum count on half",
    "nec",
    Evidence::published,
    ""};
const base::FormulaCard k_cord_drop_card{"cord-drop",
                                         "Voltage lost in a cord",
                                         "Vd = k L I R",
                                         k_drop_symbols,
                                         "resistance only, copper at 75 C; 3 % on a branch and "
                                         "5 % in all are the code's advice",
                                         "derived-mechanics",
                                         Evidence::derived,
                                         ""};
const base::FormulaCard k_cord_longest_card{"cord-longest",
                                            "Longest cord for a share of the voltage",
                                            "L = p V / (k I R)",
                                            k_longest_symbols,
                                            "as the drop, solved for the length",
                                            "derived-mechanics",
                                            Evidence::derived,
                                            ""};

base::Result<ResistancePerLength> wire_resistance(Wire wire, WireKind kind) {
    const WireRow& row = row_of(wire);
    const bool metric = !(row.circular_mils > 0.0);
    if (kind == WireKind::formula) {
        if (metric)
            return base::Refusal{"kind", "The formula takes AWG sizes only.", ""};
        return quantity::ohms_per_thousand_feet(1000.0 * k_ohm_circular_mils_per_foot /
                                                row.circular_mils);
    }
    const double value = kind == WireKind::solid ? row.solid : row.stranded;
    if (!(value > 0.0))
        return base::Refusal{"kind", "No solid wire of this size is in the table.", ""};
    return metric ? quantity::ohms_per_kilometre(value) : quantity::ohms_per_thousand_feet(value);
}

base::Result<Working> wire_resistance_working(Wire wire, WireKind kind) {
    const auto resistance = wire_resistance(wire, kind);
    if (!resistance.ok())
        return resistance.refusal();
    const WireRow& row = row_of(wire);
    if (kind == WireKind::formula)
        return Working{&k_wire_formula_card,
                       {{"c", quantity::Number{row.circular_mils, 0}}},
                       {"R", *resistance},
                       std::string(row.name) + "."};
    const bool metric = !(row.circular_mils > 0.0);
    std::string note = std::string(row.name) +
                       (kind == WireKind::solid ? ", solid." : ", stranded, as cords are.");
    if (!metric && row.resistance == Evidence::from_memory)
        note += " This row from memory, borne out by 12.9 / c within 1 %.";
    return Working{metric ? &k_wire_metric_card : &k_wire_table_card, {}, {"R", *resistance}, note};
}

base::Result<Current> cord_ampacity(Wire wire, int carrying) {
    if (carrying != 2 && carrying != 3)
        return base::Refusal{"conductors", "Two or three conductors carry current.", "2 or 3"};
    const WireRow& row = row_of(wire);
    const double value = carrying == 2 ? row.two : row.three;
    if (!(value > 0.0))
        return base::Refusal{"wire", "No ampacity of this cord is known here.", "AWG sizes only"};
    return quantity::amperes(value);
}

base::Result<Working> cord_ampacity_working(Wire wire, int carrying) {
    const auto ampacity = cord_ampacity(wire, carrying);
    if (!ampacity.ok())
        return ampacity.refusal();
    const WireRow& row = row_of(wire);
    std::string note = std::string(row.name) + (carrying == 2 ? ", column B." : ", column A.");
    if (carrying == 3 || row.ampacity == Evidence::from_memory)
        note += " From memory: look it up.";
    if (carrying == 2)
        note += " A neutral that carries load makes three.";
    return Working{&k_cord_ampacity_card,
                   {{"n", quantity::Number{carrying * 1.0, 0}}},
                   {"Ia", *ampacity},
                   note};
}

base::Result<Voltage> cord_drop(const Cord& cord) {
    if (auto fault = fault_of(cord))
        return *fault;
    Bounds bounds;
    bounds.length(cord.length, k_longest_cord, "length");
    if (bounds.failed())
        return bounds.refusal();
    const Voltage drop = lost(cord, cord.current);
    if (drop > cord.voltage)
        return base::Refusal{"length", "The whole voltage is lost on this length.", ""};
    return drop;
}

std::string lost_per_cent(double share) {
    return base::write_fixed(std::ceil(share * 1000.0 - 1e-9) / 10.0, 1) + " %";
}

base::Result<Working> cord_drop_working(const Cord& cord) {
    const auto drop = cord_drop(cord);
    if (!drop.ok())
        return drop.refusal();
    const double share = *drop / cord.voltage;
    std::string note = lost_per_cent(share) + " of the voltage.";
    if (share > k_drop_stopped)
        note += " Over 5 %: do not run the machine on this cord.";
    else if (share > k_drop_warned)
        note += " Over 3 %: take a thicker or a shorter cord.";
    if (1.25 * cord.current > *cord_ampacity(cord.wire, cord.carrying) * (1.0 + 1e-9))
        note += " For a motor the cord is too thin: it has to carry 125 % of its current.";
    return Working{&k_cord_drop_card, drop_values(cord, cord.current), {"Vd", *drop}, note};
}

base::Result<Working> cord_start_working(const Cord& cord, Current start) {
    const auto running = cord_drop(cord);
    if (!running.ok())
        return running.refusal();
    Bounds bounds;
    bounds.current(start, "start_current");
    if (bounds.failed())
        return bounds.refusal();
    if (start < cord.current)
        return base::Refusal{"start_current", "A motor starts with more than it runs on.", ""};
    const Voltage dip = lost(cord, start);
    const double share = dip / cord.voltage;
    if (share > 1.0)
        return base::Refusal{"start_current", "The whole voltage is lost on this cord.", ""};
    std::string note = "At the start " + lost_per_cent(share) +
                       " of the voltage, the generator's own "
                       "dip not counted.";
    if (share > k_dip_stopped)
        note += " Over 30 %: the motor may not start at all.";
    else if (share > k_dip_warned)
        note += " Over 15 %: the start may be slow or fail.";
    return Working{&k_cord_drop_card, drop_values(cord, start), {"Vd", dip}, note};
}

base::Result<Length> longest_cord(const Cord& cord, double share) {
    if (auto fault = fault_of(cord))
        return *fault;
    Bounds bounds;
    bounds.number(share, 0.2, "limit");
    if (bounds.failed())
        return bounds.refusal();
    const ResistancePerLength r = *wire_resistance(cord.wire, WireKind::stranded);
    return cord.voltage * share / (path_factor(cord.phases) * cord.current) / r;
}

base::Result<Working> longest_cord_working(const Cord& cord, double share) {
    const auto longest = longest_cord(cord, share);
    if (!longest.ok())
        return longest.refusal();
    return Working{&k_cord_longest_card,
                   {{"p", quantity::Share{share}},
                    {"V", cord.voltage},
                    {"k", quantity::Number{path_factor(cord.phases), 3}},
                    {"I", cord.current},
                    {"R", *wire_resistance(cord.wire, WireKind::stranded)}},
                   {"L", *longest},
                   ""};
}

} // namespace treadle::supply
