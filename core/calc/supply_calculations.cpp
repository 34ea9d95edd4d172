#include "calc/answer_builder.h"
#include "calc/calculations.h"
#include "calc/reader.h"

#include <algorithm>
#include <optional>
#include <variant>

#include "supply/bounds.h"
#include "supply/cards.h"
#include "supply/cord.h"
#include "supply/generator.h"

namespace treadle::calc {

namespace {

using base::Result;

constexpr const char* k_phases = "single|three"; // in the order of supply::Phases
constexpr const char* k_letters = "A|B|C|D|E|F|G|H|J|K|L|M|N|P|R|S|T|U|V";

supply::Phases phases(Reader& in) {
    return in.choice("phase") == 1 ? supply::Phases::three : supply::Phases::single;
}

/// A letter is a word of one character: its place among the choices, two characters apart.
std::optional<char> letter(Reader& in) {
    const int place = in.choice("code");
    return place < 0 ? std::nullopt : std::optional<char>(k_letters[2 * place]);
}

supply::Motor motor(Reader& in) { return {in.power("power"), in.voltage("voltage"), phases(in)}; }

constexpr InputSpec k_motor_inputs[] = {
    {"power", InputKind::power, true, "rated power of the motor", "", "3 hp"},
    {"voltage", InputKind::voltage, true, "of the supply", "", "230 V"},
    {"phase", InputKind::word, false, "single when not given", k_phases},
    {"code", InputKind::word, false, "letter of the nameplate; else the highest usual", k_letters},
};
constexpr OutputSpec k_motor_outputs[] = {
    {"current", "A", "at full load"},
    {"conductor", "A", "least ampacity of its conductors"},
    {"breaker", "A", "largest inverse-time breaker"},
    {"locked_power", "kVA", "drawn at standstill"},
    {"locked_current", "A", "drawn at standstill"},
};
constexpr const base::FormulaCard* k_motor_cards[] = {&supply::k_motor_full_load_card,
                                                      &supply::k_motor_conductor_card,
                                                      &supply::k_motor_breaker_card,
                                                      &supply::k_locked_power_card,
                                                      &supply::k_locked_current_card};

Result<Answer> answer_motor(Reader& in) {
    const supply::Motor asked = motor(in);
    const std::optional<char> code = letter(in);
    if (in.failed())
        return in.refusal();
    return AnswerBuilder()
        .add("current", supply::full_load_working(asked))
        .add("conductor", supply::conductor_working(asked))
        .add("breaker", supply::breaker_working(asked))
        .add("locked_power", supply::locked_power_working(asked, code))
        .add("locked_current", supply::locked_current_working(asked, code))
        .finish();
}

constexpr InputSpec k_wire_inputs[] = {
    {"wire", InputKind::word, true, "size of the conductor", supply::k_wire_words},
    {"kind",
     InputKind::word,
     false,
     "stranded when not given; formula is 12.9 over circular mils",
     "stranded|solid|formula"}, // in the order of supply::WireKind
    {"length", InputKind::length, false, "of one conductor", "", "100 ft"},
};
constexpr OutputSpec k_wire_outputs[] = {
    {"per_length", "ohm/km", "resistance per length of one conductor"},
    {"resistance", "ohm", "of the length"},
};
constexpr const base::FormulaCard* k_wire_cards[] = {
    &supply::k_wire_table_card, &supply::k_wire_metric_card, &supply::k_wire_formula_card};

Result<Answer> answer_wire(Reader& in) {
    const int wire = in.choice("wire");
    const int kind = in.choice("kind");
    const Length length = in.length("length");
    if (in.failed())
        return in.refusal();
    if (in.has("length")) {
        supply::Bounds bounds;
        bounds.length(length, supply::k_longest_cord, "length");
        if (bounds.failed())
            return bounds.refusal();
    }
    const auto working = supply::wire_resistance_working(
        static_cast<supply::Wire>(wire),
        kind < 0 ? supply::WireKind::stranded : static_cast<supply::WireKind>(kind));
    AnswerBuilder answer;
    answer.add("per_length", working);
    if (working.ok() && in.has("length"))
        answer.figure("resistance", length * std::get<ResistancePerLength>(working->result.value));
    return answer.finish();
}

constexpr InputSpec k_ampacity_inputs[] = {
    {"wire", InputKind::word, true, "size of the conductor", supply::k_awg_words},
    {"conductors", InputKind::word, false, "that carry current; 3 when not given", "3|2"},
};
constexpr OutputSpec k_ampacity_outputs[] = {{"ampacity", "A", "what the cord may carry"}};
constexpr const base::FormulaCard* k_ampacity_cards[] = {&supply::k_cord_ampacity_card};

Result<Answer> answer_ampacity(Reader& in) {
    const int wire = in.choice("wire");
    const int carrying = in.choice("conductors") == 1 ? 2 : 3;
    if (in.failed())
        return in.refusal();
    return AnswerBuilder()
        .add("ampacity", supply::cord_ampacity_working(static_cast<supply::Wire>(wire), carrying))
        .finish();
}

constexpr InputSpec k_cord_inputs[] = {
    {"voltage", InputKind::voltage, true, "of the supply", "", "230 V"},
    {"current", InputKind::current, true, "at full load", "", "17 A"},
    {"length", InputKind::length, true, "of the cord, one way", "", "100 ft"},
    {"wire", InputKind::word, true, "size of the cord", supply::k_awg_words, "10 AWG"},
    {"phase", InputKind::word, false, "single when not given", k_phases},
    {"conductors",
     InputKind::word,
     false,
     "that carry current: 2 in single phase when not given; a loaded neutral makes 3",
     "2|3"},
    {"start_current", InputKind::current, false, "drawn at the start", "", "117 A"},
    {"limit", InputKind::ratio, false, "share that may be lost; 3 % when not given", "", "3 %"},
};
constexpr OutputSpec k_cord_outputs[] = {
    {"drop", "V", "voltage lost"},
    {"share", "", "of the voltage"},
    {"ampacity", "A", "what the cord may carry"},
    {"longest", "mm", "longest cord for the limit, one way"},
    {"start_drop", "V", "voltage lost at the start"},
    {"start_share", "", "of the voltage"},
};
constexpr const base::FormulaCard* k_cord_cards[] = {
    &supply::k_cord_ampacity_card, &supply::k_cord_drop_card, &supply::k_cord_longest_card};

quantity::Share share_of(const Working& working, Voltage voltage) {
    return {std::get<Voltage>(working.result.value) / voltage};
}

Result<Answer> answer_cord(Reader& in) {
    supply::Cord cord;
    cord.voltage = in.voltage("voltage");
    cord.current = in.current("current");
    cord.length = in.length("length");
    cord.wire = static_cast<supply::Wire>(std::max(in.choice("wire"), 0));
    cord.phases = phases(in);
    const bool three = cord.phases == supply::Phases::three;
    cord.carrying = in.has("conductors") ? in.choice("conductors") + 2 : three ? 3 : 2;
    if (three && cord.carrying == 2)
        in.refuse({"conductors", "Three phases take three conductors.", ""});
    const double limit = in.has("limit") ? in.ratio("limit") : supply::k_usual_drop;
    const Current start = in.current("start_current");
    if (in.failed())
        return in.refusal();
    const auto drop = supply::cord_drop_working(cord);
    if (!drop.ok())
        return drop.refusal();
    AnswerBuilder answer;
    answer.add("drop", drop)
        .figure("share", share_of(*drop, cord.voltage))
        .add("ampacity", supply::cord_ampacity_working(cord.wire, cord.carrying))
        .add("longest", supply::longest_cord_working(cord, limit));
    if (in.has("start_current")) {
        const auto dip = supply::cord_start_working(cord, start);
        if (!dip.ok())
            return dip.refusal();
        answer.add("start_drop", dip).figure("start_share", share_of(*dip, cord.voltage));
    }
    return answer.finish();
}

constexpr InputSpec k_generator_inputs[] = {
    {"power", InputKind::power, true, "rated power of the motor", "", "3 hp"},
    {"voltage", InputKind::voltage, true, "of the supply", "", "230 V"},
    {"phase", InputKind::word, false, "single when not given", k_phases},
    {"code", InputKind::word, false, "letter of the nameplate; else the highest usual", k_letters},
    {"efficiency", InputKind::ratio, false, "of the motor; 0.75 when not given", "", "0.75"},
    {"rule",
     InputKind::word,
     false,
     "locked-rotor when not given; triple is a rule of thumb and too low",
     "locked-rotor|triple"},
};
constexpr OutputSpec k_generator_outputs[] = {
    {"running", "kVA", "running load"},
    {"running_power", "kW", "running power"},
    {"surge", "kVA", "least surge rating"},
};
constexpr const base::FormulaCard* k_generator_cards[] = {&supply::k_generator_running_card,
                                                          &supply::k_generator_power_card,
                                                          &supply::k_locked_power_card,
                                                          &supply::k_generator_surge_card,
                                                          &supply::k_generator_triple_card};

Result<Answer> answer_generator(Reader& in) {
    const supply::Motor asked = motor(in);
    const std::optional<char> code = letter(in);
    const double efficiency =
        in.has("efficiency") ? in.ratio("efficiency") : supply::k_assumed_efficiency;
    const bool triple = in.choice("rule") == 1;
    if (triple)
        in.refuse_if_given("code", "The rule of thumb takes no code letter.");
    if (in.failed())
        return in.refusal();
    AnswerBuilder answer;
    answer.add("running", supply::generator_running_working(asked))
        .add("running_power", supply::generator_power_working(asked, efficiency));
    if (triple)
        answer.add("surge", supply::generator_triple_working(asked));
    else
        answer.show(supply::locked_power_working(asked, code))
            .add("surge", supply::generator_surge_working(asked, code));
    return answer.finish();
}

constexpr InputSpec k_derate_inputs[] = {
    {"rating", InputKind::power, true, "of the generator", "", "7 kW"},
    {"altitude", InputKind::length, true, "over the one it is rated at", "", "6000 ft"},
    {"rate", InputKind::ratio, false, "lost for every 1000 ft; 3.5 % when not given", "", "3.5 %"},
    {"over_temperature_f",
     InputKind::ratio,
     false,
     "degrees Fahrenheit over the rated temperature",
     "",
     "20"},
};
constexpr OutputSpec k_derate_outputs[] = {{"available", "kW", "what is left of the rating"}};
constexpr const base::FormulaCard* k_derate_cards[] = {&supply::k_generator_derated_card};

Result<Answer> answer_derate(Reader& in) {
    supply::Derating question;
    question.rating = in.power("rating");
    question.altitude = in.length("altitude");
    if (in.has("rate"))
        question.per_thousand_feet = in.ratio("rate");
    question.fahrenheit_over = in.ratio("over_temperature_f");
    if (in.failed())
        return in.refusal();
    return AnswerBuilder().add("available", supply::derated_working(question)).finish();
}

} // namespace

const Calculation k_motor_current{"motor.current",
                                  "Currents of a motor, running and at the start",
                                  k_motor_inputs,
                                  k_motor_outputs,
                                  k_motor_cards,
                                  answer_motor};
const Calculation k_wire_resistance{"wire.resistance",
                                    "Resistance of a copper conductor",
                                    k_wire_inputs,
                                    k_wire_outputs,
                                    k_wire_cards,
                                    answer_wire};
const Calculation k_cord_ampacity{"cord.ampacity",
                                  "What a flexible cord may carry",
                                  k_ampacity_inputs,
                                  k_ampacity_outputs,
                                  k_ampacity_cards,
                                  answer_ampacity};
const Calculation k_cord_drop{"cord.drop",
                              "Voltage lost in a cord",
                              k_cord_inputs,
                              k_cord_outputs,
                              k_cord_cards,
                              answer_cord};
const Calculation k_generator_size{"generator.size",
                                   "Generator that runs and starts a motor",
                                   k_generator_inputs,
                                   k_generator_outputs,
                                   k_generator_cards,
                                   answer_generator};
const Calculation k_generator_derate{"generator.derate",
                                     "What a generator gives in thin or hot air",
                                     k_derate_inputs,
                                     k_derate_outputs,
                                     k_derate_cards,
                                     answer_derate};

} // namespace treadle::calc
