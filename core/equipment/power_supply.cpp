#include "equipment/power_supply.h"

namespace treadle::equipment {

namespace {

using quantity::Fault;

// Far over anything beside a portable machine: a larger value is a slip in the unit.
constexpr Power k_largest_motor = quantity::watts(1e6);
constexpr Voltage k_highest_voltage = quantity::volts(1000.0);
constexpr ApparentPower k_largest_generator = quantity::kilovolt_amperes(10000.0);

template <class Q>
Fault range_fault(const std::optional<Q>& value, Q most, const char* field, const char* range) {
    if (!value || (*value > Q{} && *value <= most))
        return std::nullopt;
    return base::Refusal{field, "This is out of range.", range};
}

} // namespace

Fault supply_fault(const PowerSupply& supply) {
    if (auto fault = range_fault(supply.motor, k_largest_motor, "motor", "above 0, up to 1000 kW"))
        return fault;
    if (auto fault =
            range_fault(supply.voltage, k_highest_voltage, "voltage", "above 0, up to 1000 V"))
        return fault;
    if (supply.phases != 1 && supply.phases != 3)
        return base::Refusal{"phases", "A motor has one phase or three.", "1 or 3"};
    const bool letter = supply.code.size() == 1 && supply.code[0] >= 'A' && supply.code[0] <= 'V';
    if (!supply.code.empty() && !letter)
        return base::Refusal{
            "code", "The code is one letter.", "one of A to V, or empty when it is not known"};
    if (auto fault = quantity::text_fault(supply.cord, "cord"))
        return fault;
    if (supply.cord_length)
        if (auto fault = quantity::size_fault(*supply.cord_length, "cord_length"))
            return fault;
    return range_fault(
        supply.generator, k_largest_generator, "generator_VA", "above 0, up to 10000 kVA");
}

} // namespace treadle::equipment
