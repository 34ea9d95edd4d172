#include "quantity/reading.h"

#include "base/text.h"
#include "quantity/amount_text.h"

#include <cmath>

namespace treadle::quantity {

namespace {

constexpr int k_finest = 64; ///< parts of an inch that a rule shows

std::string with_unit(double value, int most_decimals, const char* unit) {
    return base::write_short(value, most_decimals) + unit;
}

std::string joined(std::string inch, std::string metric, UnitSystem first) {
    return first == UnitSystem::inch ? std::move(inch) + " = " + metric
                                     : std::move(metric) + " = " + inch;
}

/// Whole sixty-fourths, but for what a double loses on the way through millimetres.
bool is_fraction(Length value) {
    constexpr double k_most = 1e9;
    const double parts = to_inches(value) * k_finest;
    return std::fabs(parts) < k_most && std::fabs(parts - std::round(parts)) < 1e-6;
}

std::string in_inches(Length value) {
    const PrintStyle style{UnitSystem::inch, k_finest};
    if (!is_fraction(value))
        return with_unit(to_inches(value), 4, " in");
    return std::fabs(to_inches(value)) < 12.0 - 1e-9 ? print(value, style)
                                                     : print_feet(value, style);
}

void add_meaning(Reading& reading, const std::string& typed, UnitSystem system) {
    const auto length = parse_length(typed, system, "");
    if (length)
        reading.choices.push_back({typed, in_both(*length, system)});
}

/// 5-3: feet and inches, or inches and a fraction whose lower number is still to come.
void add_dashed(Reading& reading, std::string_view text, UnitSystem system) {
    AmountReader reader(text);
    if (reader.take_minus())
        return;
    const auto first = reader.take_amount();
    if (!first || !first->whole)
        return;
    reader.skip_blanks();
    reader.take('-');
    reader.skip_blanks();
    const auto second = reader.take_amount();
    if (!second || !second->whole)
        return;
    reader.take('"');
    if (!reader.at_end())
        return;
    const std::string a = base::write_number(first->value);
    const std::string b = base::write_number(second->value);
    add_meaning(reading, a + "' " + b + '"', system);
    if (second->value > 0)
        reading.choices.push_back({a + "-" + b + "/", a + " in and " + b + "/… in: go on"});
}

/// 1,250: thousands, or a decimal comma.
void add_comma(Reading& reading, const std::string& text, UnitSystem system) {
    const std::size_t comma = text.find(',');
    if (comma == std::string::npos || text.find(',', comma + 1) != std::string::npos)
        return;
    std::string thousands = text;
    thousands.erase(comma, 1);
    std::string decimals = text;
    decimals[comma] = '.';
    add_meaning(reading, thousands, system);
    add_meaning(reading, decimals, system);
}

} // namespace

std::string in_both(Length value, UnitSystem first) {
    return joined(in_inches(value), with_unit(to_millimetres(value), 3, " mm"), first);
}

std::string in_both(Force value, UnitSystem first) {
    return joined(
        with_unit(to_us_tons(value), 2, " ton"), with_unit(to_kilonewtons(value), 2, " kN"), first);
}

std::string in_both(Stress value, UnitSystem first) {
    return joined(
        with_unit(to_ksi(value), 2, " ksi"), with_unit(to_megapascals(value), 1, " MPa"), first);
}

std::string in_both(Mass value, UnitSystem first) {
    return joined(
        with_unit(to_pounds(value), 2, " lb"), with_unit(to_kilograms(value), 2, " kg"), first);
}

std::string in_both(Density value, UnitSystem first) {
    constexpr Density k_pound_per_cubic_inch = pounds(1.0) / (inches(1) * inches(1) * inches(1));
    return joined(with_unit(value / k_pound_per_cubic_inch, 4, " lb/in3"),
                  with_unit(to_kilograms_per_cubic_metre(value), 1, " kg/m3"),
                  first);
}

std::string in_both(Angle value, UnitSystem) { return with_unit(to_degrees(value), 3, "°"); }

std::string in_both(double value, UnitSystem) { return base::write_number(value); }

std::string in_both(int value, UnitSystem) { return std::to_string(value); }

Reading reading_of_length(std::string_view text, UnitSystem system) {
    const auto length = parse_length(text, system, "");
    Reading reading = reading_of(length, system);
    const auto plain = plain_text(text, "");
    if (length || !plain)
        return reading;
    add_dashed(reading, *plain, system);
    add_comma(reading, *plain, system);
    // A bare fraction in a metric shop: most likely of an inch, and asked about all the same.
    const auto as_inches = parse_length(*plain, UnitSystem::inch, "");
    if (reading.choices.empty() && system == UnitSystem::metric && as_inches) {
        add_meaning(reading, *plain + " in", system);
        add_meaning(reading, base::write_number(to_inches(*as_inches)) + " mm", system);
    }
    return reading;
}

std::optional<std::string> step_length(std::string_view text, UnitSystem system, int steps) {
    const bool empty = base::trim(text).empty();
    const auto length = empty ? base::Result<Length>(Length{}) : parse_length(text, system, "");
    if (!length)
        return std::nullopt;
    const Length step = system == UnitSystem::inch ? inches(1.0 / 16.0) : millimetres(0.5);
    Length moved = *length + step * static_cast<double>(steps);
    if (is_fraction(moved)) // no creep from adding in millimetres
        moved = inches(std::round(to_inches(moved) * k_finest) / k_finest);
    const bool turned = (*length < Length{}) != (moved < Length{});
    if (turned && moved != Length{})
        return std::nullopt;
    const bool in_feet = text.find('\'') != std::string_view::npos && is_fraction(moved);
    return in_feet ? print_feet(moved, {UnitSystem::inch, k_finest}) : write_exact(moved, system);
}

} // namespace treadle::quantity
