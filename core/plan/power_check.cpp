#include "plan/power_check.h"

#include "base/text.h"

#include <cmath>
#include <string_view>

#include "supply/cord.h"
#include "supply/generator.h"

namespace treadle::plan {

namespace {

using equipment::PowerSupply;

constexpr double k_running_stop = 0.05;
constexpr double k_start_warn = 0.15;
constexpr double k_start_stop = 0.30;

PowerLine not_known(const char* what, const std::string& datum) {
    return {Outcome::cannot_be_said, false, std::string(what) + ": not known: " + datum, {}};
}

/// Position in the list of sizes, which is the order of supply::Wire.
std::optional<supply::Wire> wire_of(std::string_view word) {
    std::string_view rest = supply::k_wire_words;
    for (int index = 0; !rest.empty(); ++index) {
        const std::size_t end = rest.find('|');
        if (rest.substr(0, end) == word)
            return static_cast<supply::Wire>(index);
        rest = end == std::string_view::npos ? std::string_view{} : rest.substr(end + 1);
    }
    return std::nullopt;
}

/// The motor, or the first datum of it that is missing.
struct Fed {
    supply::Motor motor;
    std::optional<char> letter;
    std::string missing;
};
Fed fed(const PowerSupply& from) {
    Fed out;
    if (!from.motor)
        out.missing = "power of the motor";
    else if (!from.voltage)
        out.missing = "voltage of the motor";
    else
        out.motor = {*from.motor,
                     *from.voltage,
                     from.phases == 3 ? supply::Phases::three : supply::Phases::single};
    if (!from.code.empty())
        out.letter = from.code[0];
    return out;
}

PowerLine judged(const char* what, double share, double warn, double stop) {
    PowerLine line;
    line.outcome = share > stop ? Outcome::does_not_fit : Outcome::fits;
    line.warning = share > warn && share <= stop;
    line.words = std::string(what) + " loses " + supply::lost_per_cent(share) + " of the voltage" +
                 (share > stop   ? ", over the limit of " + supply::lost_per_cent(stop)
                  : line.warning ? ", over the usual " + supply::lost_per_cent(warn)
                                 : "");
    return line;
}

PowerLine running_line(const supply::Cord& cord, const supply::Motor& motor) {
    constexpr const char* k_what = "Cord, running";
    const auto may = supply::cord_ampacity(cord.wire, cord.carrying);
    if (!may)
        return not_known(k_what, may.refusal().reason);
    if (cord.current > *may)
        return {Outcome::does_not_fit,
                false,
                "Cord, running: the motor draws " +
                    base::write_fixed(quantity::to_amperes(cord.current), 1) +
                    " A, the cord may carry " + base::write_fixed(quantity::to_amperes(*may), 1) +
                    " A",
                {*supply::full_load_working(motor),
                 *supply::cord_ampacity_working(cord.wire, cord.carrying)}};
    const auto drop = supply::cord_drop_working(cord);
    if (!drop)
        return not_known(k_what, drop.refusal().reason);
    const double share = std::get<Voltage>(drop->result.value) / cord.voltage;
    PowerLine line = judged("Cord, running:", share, supply::k_usual_drop, k_running_stop);
    line.workings = {*supply::full_load_working(motor), *drop};
    return line;
}

PowerLine start_line(const supply::Cord& cord, const Fed& machine) {
    constexpr const char* k_what = "Cord, start";
    const auto locked = supply::locked_rotor(machine.motor, machine.letter);
    if (!locked)
        return not_known(k_what, locked.refusal().reason);
    const auto drop = supply::cord_start_working(cord, locked->current);
    if (!drop)
        return not_known(k_what, drop.refusal().reason);
    const double share = std::get<Voltage>(drop->result.value) / cord.voltage;
    PowerLine line = judged("Cord, start:", share, k_start_warn, k_start_stop);
    line.workings = {*supply::locked_current_working(machine.motor, machine.letter), *drop};
    return line;
}

PowerLine generator_line(const PowerSupply& from, const Fed& machine) {
    const auto surge = supply::generator_surge_working(machine.motor, machine.letter);
    if (!surge)
        return not_known("Generator", surge.refusal().reason);
    const auto needed = std::get<ApparentPower>(surge->result.value);
    const double up = std::ceil(quantity::to_kilovolt_amperes(needed) * 10.0 - 1e-9) / 10.0;
    const std::string words =
        "Generator: the motor's start takes " + base::write_fixed(up, 1) + " kVA";
    std::vector<Working> workings{*supply::locked_power_working(machine.motor, machine.letter),
                                  *surge};
    if (!from.generator)
        return {Outcome::cannot_be_said,
                false,
                words + "; not known: what the generator gives (on the mains none is needed)",
                std::move(workings)};
    const double given =
        std::floor(quantity::to_kilovolt_amperes(*from.generator) * 10.0 + 1e-9) / 10.0;
    return {needed <= *from.generator ? Outcome::fits : Outcome::does_not_fit,
            false,
            words + ", it gives " + base::write_fixed(given, 1) + " kVA",
            std::move(workings)};
}

} // namespace

std::vector<PowerLine> check_power(const PowerSupply& from) {
    const Fed machine = fed(from);
    if (!machine.missing.empty())
        return {not_known("Power at the machine", machine.missing)};
    const auto current = supply::full_load_current(machine.motor);
    if (!current)
        return {not_known("Power at the machine", current.refusal().reason)};
    std::vector<PowerLine> lines;
    const auto wire = wire_of(from.cord);
    if (from.cord.empty() || !wire)
        lines.push_back(not_known("Cord", "size of its wires, such as 10 AWG"));
    else if (!from.cord_length)
        lines.push_back(not_known("Cord", "its length"));
    else {
        const supply::Cord cord{machine.motor.voltage,
                                *current,
                                *from.cord_length,
                                *wire,
                                machine.motor.phases,
                                from.phases == 3 ? 3 : 2};
        lines.push_back(running_line(cord, machine.motor));
        lines.push_back(start_line(cord, machine));
    }
    lines.push_back(generator_line(from, machine));
    return lines;
}

} // namespace treadle::plan
