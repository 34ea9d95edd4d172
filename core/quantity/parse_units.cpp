// Everything of parse.h that is one number and one unit.

#include "base/text.h"
#include "quantity/amount_text.h"
#include "quantity/parse.h"

#include <cmath>
#include <string>

namespace treadle::quantity {

namespace {

/// One number and the unit text behind it ("" when bare), in lower case.
struct Measured {
    double number = 0.0;
    std::string unit;
};

base::Refusal refuse(std::string_view field, const char* reason, const char* detail) {
    return {std::string(field), reason, detail};
}

base::Result<Measured> measured(std::string_view text, std::string_view field) {
    const base::Result<std::string> plain = plain_text(text, field);
    if (!plain)
        return plain.refusal();
    AmountReader reader(*plain);
    const bool negative = reader.take_minus();
    const std::optional<Amount> amount = reader.take_amount();
    if (!amount)
        return refuse(
            field, reader.fault(), "a number such as 12.5 or 1/2, with or without its unit");
    reader.skip_blanks();
    const double number = negative ? -amount->value : amount->value;
    return Measured{number, std::string(reader.take_rest())};
}

template <class Q>
base::Result<Q> finite(Q value, std::string_view field) {
    if (!is_finite(value))
        return refuse(field, "The number is too large.", "a number with fewer figures");
    return value;
}

/// The unit to go by: the one typed, or the one a bare number means; "" when neither is known.
std::string unit_or(const Measured& m, BareUnit bare, const char* in_inch, const char* in_metric) {
    if (!m.unit.empty() || !bare)
        return m.unit;
    return *bare == UnitSystem::inch ? in_inch : in_metric;
}

base::Refusal no_such_unit(std::string_view field, const std::string& unit, const char* units) {
    return refuse(
        field, unit.empty() ? "The unit is missing." : "The unit does not fit here.", units);
}

} // namespace

base::Result<Force> parse_force(std::string_view text, BareUnit bare, std::string_view field) {
    const base::Result<Measured> m = measured(text, field);
    if (!m)
        return m.refusal();
    const std::string unit = unit_or(*m, bare, "ton", "kn");
    if (unit == "kn")
        return finite(kilonewtons(m->number), field);
    if (unit == "n")
        return finite(newtons(m->number), field);
    if (unit == "lbf")
        return finite(pounds_force(m->number), field);
    if (unit == "kip" || unit == "kips")
        return finite(pounds_force(m->number * 1000.0), field);
    if (unit == "ton" || unit == "tons" || unit == "us ton" || unit == "us tons")
        return finite(us_tons(m->number), field);
    if (unit == "t" || unit == "tonne" || unit == "tonnes" || unit == "metric ton" ||
        unit == "metric tons")
        return finite(tonnes_force(m->number), field);
    return no_such_unit(field, unit, "kN, N, lbf, kip, ton (US) or t (metric)");
}

base::Result<Stress> parse_stress(std::string_view text, BareUnit bare, std::string_view field) {
    const base::Result<Measured> m = measured(text, field);
    if (!m)
        return m.refusal();
    const std::string unit = unit_or(*m, bare, "ksi", "mpa");
    if (unit == "ksi")
        return finite(ksi(m->number), field);
    if (unit == "psi")
        return finite(ksi(m->number / 1000.0), field);
    if (unit == "mpa" || unit == "n/mm2" || unit == "n/mm^2")
        return finite(megapascals(m->number), field);
    if (unit == "gpa")
        return finite(megapascals(m->number * 1000.0), field);
    return no_such_unit(field, unit, "ksi, psi, MPa, N/mm2 or GPa");
}

base::Result<Angle> parse_angle(std::string_view text, std::string_view field) {
    const base::Result<Measured> m = measured(text, field);
    if (!m)
        return m.refusal();
    if (m->unit.empty() || m->unit == "deg" || m->unit == "degree" || m->unit == "degrees")
        return degrees(m->number);
    if (m->unit == "rad")
        return finite(degrees(m->number * (180.0 / std::numbers::pi)), field);
    return no_such_unit(field, m->unit, "deg or rad");
}

base::Result<Mass> parse_mass(std::string_view text, BareUnit bare, std::string_view field) {
    const base::Result<Measured> m = measured(text, field);
    if (!m)
        return m.refusal();
    const std::string unit = unit_or(*m, bare, "lb", "kg");
    if (unit == "kg")
        return finite(kilograms(m->number), field);
    if (unit == "g")
        return finite(kilograms(m->number / 1000.0), field);
    if (unit == "t" || unit == "tonne" || unit == "tonnes")
        return finite(kilograms(m->number * 1000.0), field);
    if (unit == "lb" || unit == "lbs")
        return finite(pounds(m->number), field);
    return no_such_unit(field, unit, "kg, g, t or lb");
}

base::Result<Density> parse_density(std::string_view text, std::string_view field) {
    const base::Result<Measured> m = measured(text, field);
    if (!m)
        return m.refusal();
    const std::string& unit = m->unit;
    if (unit == "kg/m3" || unit == "kg/m^3")
        return finite(kilograms_per_cubic_metre(m->number), field);
    if (unit == "kg/mm3" || unit == "kg/mm^3")
        return finite(Density::from_base(m->number), field);
    if (unit == "g/cm3" || unit == "g/cm^3")
        return finite(kilograms_per_cubic_metre(m->number * 1000.0), field);
    if (unit == "lb/in3" || unit == "lb/in^3")
        return finite(pounds(m->number) / (inches(1.0) * inches(1.0) * inches(1.0)), field);
    if (unit == "lb/ft3" || unit == "lb/ft^3")
        return finite(pounds(m->number) / (feet(1.0) * feet(1.0) * feet(1.0)), field);
    return no_such_unit(field, unit, "kg/m3, g/cm3, lb/in3 or lb/ft3");
}

base::Result<Voltage> parse_voltage(std::string_view text, std::string_view field) {
    const base::Result<Measured> m = measured(text, field);
    if (!m)
        return m.refusal();
    if (m->unit == "v" || m->unit == "volt" || m->unit == "volts")
        return volts(m->number);
    if (m->unit == "kv")
        return finite(volts(m->number * 1000.0), field);
    return no_such_unit(field, m->unit, "V or kV");
}

base::Result<Current> parse_current(std::string_view text, std::string_view field) {
    const base::Result<Measured> m = measured(text, field);
    if (!m)
        return m.refusal();
    if (m->unit == "a" || m->unit == "amp" || m->unit == "amps")
        return amperes(m->number);
    return no_such_unit(field, m->unit, "A");
}

base::Result<Power> parse_power(std::string_view text, std::string_view field) {
    const base::Result<Measured> m = measured(text, field);
    if (!m)
        return m.refusal();
    if (m->unit == "hp")
        return finite(horsepower(m->number), field);
    if (m->unit == "kw")
        return finite(watts(m->number * 1000.0), field);
    if (m->unit == "w")
        return watts(m->number);
    return no_such_unit(field, m->unit, "hp, kW or W");
}

base::Result<double> parse_ratio(std::string_view text, std::string_view field) {
    const base::Result<Measured> m = measured(text, field);
    if (!m)
        return m.refusal();
    if (m->unit.empty())
        return m->number;
    if (m->unit == "%")
        return m->number / 100.0;
    return refuse(field, "A ratio has no unit.", "Write 0.42, 1/3 or 15 %.");
}

base::Result<int> parse_whole(std::string_view text, std::string_view field) {
    const std::optional<double> number = base::read_number(base::trim(text));
    constexpr double k_largest = 1'000'000;
    if (!number || !(*number >= -k_largest && *number <= k_largest) ||
        *number != static_cast<double>(static_cast<int>(*number)))
        return base::Refusal{
            std::string(field), "A whole number is needed here.", "0, 1, 2 and so on, no parts"};
    return static_cast<int>(*number);
}

} // namespace treadle::quantity
