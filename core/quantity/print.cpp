#include "quantity/print.h"

#include "base/contracts.h"
#include "base/text.h"

#include <cmath>
#include <numeric>

namespace treadle::quantity {

namespace {

constexpr double k_metric_steps_per_millimetre = 10.0;

/// Whole number of steps. A count within 1e-9 of a whole one is that whole one: arithmetic dust
/// must not push an exact 3/8 up to the next sixteenth.
double whole_steps(double count, Rounding rounding) {
    const double nearest = std::round(count);
    if (std::fabs(count - nearest) <= 1e-9 * std::fmax(1.0, std::fabs(count)))
        return nearest;
    switch (rounding) {
    case Rounding::up:
        return std::ceil(count);
    case Rounding::down:
        return std::floor(count);
    case Rounding::nearest:
        break;
    }
    return nearest;
}

double to_decimals(double value, int decimals, Rounding rounding) {
    const double power = std::pow(10.0, decimals);
    return whole_steps(value * power, rounding) / power;
}

std::string
fixed(double value, int decimals, const char* unit, Rounding rounding = Rounding::nearest) {
    return base::write_fixed(to_decimals(value, decimals, rounding), decimals) + unit;
}

std::string
shortest(double value, int decimals, const char* unit, Rounding rounding = Rounding::nearest) {
    return base::write_short(to_decimals(value, decimals, rounding), decimals) + unit;
}

/// Whole and reduced fraction of a count of 1/denominator, `joint` between them.
std::string mixed(long long count, int denominator, char joint) {
    const long long whole = count / denominator;
    const long long part = count % denominator;
    if (part == 0)
        return std::to_string(whole);
    const long long common = std::gcd(part, static_cast<long long>(denominator));
    std::string out;
    if (whole != 0) {
        out = std::to_string(whole);
        out += joint;
    }
    return out + std::to_string(part / common) + '/' + std::to_string(denominator / common);
}

/// Signed count of 1/denominator inch, or none when too large to be a sensible fraction.
struct InchCount {
    bool negative = false;
    long long count = 0;
    bool sensible = false;
};
InchCount inch_count(Length value, int denominator, Rounding rounding) {
    TREADLE_EXPECT(denominator > 0 && denominator <= 64);
    const double steps = whole_steps(to_inches(value) * denominator, rounding);
    if (!(std::fabs(steps) < 1e15))
        return {};
    return {steps < 0.0, static_cast<long long>(std::fabs(steps)), true};
}

/// "1-1/2 in (38.1 mm)", where `print` says it in one system.
template <class Print>
std::string in_both(PrintStyle style, Print print) {
    const std::string first = print(one_system(style));
    const std::string second = print(other_system(style));
    return first == second ? first : first + " (" + second + ")";
}

} // namespace

PrintStyle one_system(PrintStyle style) {
    style.both = false;
    return style;
}

PrintStyle other_system(PrintStyle style) {
    style.both = false;
    style.system = style.system == UnitSystem::inch ? UnitSystem::metric : UnitSystem::inch;
    return style;
}

Length round_to_step(Length value, PrintStyle style, Rounding rounding) {
    if (style.system == UnitSystem::metric)
        return millimetres(
            whole_steps(to_millimetres(value) * k_metric_steps_per_millimetre, rounding) /
            k_metric_steps_per_millimetre);
    TREADLE_EXPECT(style.denominator > 0 && style.denominator <= 64);
    return inches(whole_steps(to_inches(value) * style.denominator, rounding) / style.denominator);
}

std::string print_bare(Length value, PrintStyle style, Rounding rounding) {
    if (style.both)
        return in_both(style, [&](PrintStyle one) { return print_bare(value, one, rounding); });
    if (style.system == UnitSystem::metric)
        return shortest(to_millimetres(value), 1, "", rounding);
    const InchCount n = inch_count(value, style.denominator, rounding);
    if (!n.sensible)
        return shortest(to_inches(value), 3, "", rounding);
    return (n.negative ? "-" : "") + mixed(n.count, style.denominator, '-');
}

std::string print(Length value, PrintStyle style, Rounding rounding) {
    if (style.both)
        return in_both(style, [&](PrintStyle one) { return print(value, one, rounding); });
    return print_bare(value, style, rounding) +
           (style.system == UnitSystem::metric ? " mm" : " in");
}

std::string print_decimal(Length value, PrintStyle style, Rounding rounding) {
    if (style.both)
        return in_both(style, [&](PrintStyle one) { return print_decimal(value, one, rounding); });
    return style.system == UnitSystem::metric ? shortest(to_millimetres(value), 2, " mm", rounding)
                                              : fixed(to_inches(value), 3, " in", rounding);
}

std::string print_feet(Length value, PrintStyle style, Rounding rounding) {
    if (style.both)
        return in_both(style, [&](PrintStyle one) { return print_feet(value, one, rounding); });
    if (style.system == UnitSystem::metric)
        return print(value, style, rounding);
    const InchCount n = inch_count(value, style.denominator, rounding);
    if (!n.sensible)
        return print(value, style, rounding);
    const long long per_foot = 12LL * style.denominator;
    std::string out = n.negative ? "-" : "";
    if (n.count >= per_foot)
        out += std::to_string(n.count / per_foot) + "'-";
    // `0 3/16"` after feet: without the nought the fraction is easily overlooked.
    const long long rest = n.count % per_foot;
    if (n.count >= per_foot && rest != 0 && rest < style.denominator)
        out += "0 ";
    return out + mixed(rest, style.denominator, ' ') + '"';
}

std::string print(Area value, PrintStyle style) {
    if (style.both)
        return in_both(style, [&](PrintStyle one) { return print(value, one); });
    return style.system == UnitSystem::metric ? shortest(to_square_millimetres(value), 1, " mm²")
                                              : fixed(to_square_inches(value), 3, " in²");
}

std::string print(Force value, PrintStyle style, Rounding rounding) {
    if (style.both)
        return in_both(style, [&](PrintStyle one) { return print(value, one, rounding); });
    return style.system == UnitSystem::metric ? fixed(to_kilonewtons(value), 1, " kN", rounding)
                                              : fixed(to_us_tons(value), 1, " ton", rounding);
}

std::string print(Stress value, PrintStyle style, Rounding rounding) {
    if (style.both)
        return in_both(style, [&](PrintStyle one) { return print(value, one, rounding); });
    const bool metric = style.system == UnitSystem::metric;
    const double number = metric ? to_megapascals(value) : to_ksi(value);
    const int decimals = std::fabs(number) < 10.0 ? 1 : 0;
    return fixed(number, decimals, metric ? " MPa" : " ksi", rounding);
}

std::string print(Energy value, PrintStyle style) {
    if (style.both)
        return in_both(style, [&](PrintStyle one) { return print(value, one); });
    return style.system == UnitSystem::metric ? fixed(to_joules(value), 0, " J")
                                              : fixed(to_foot_pounds(value), 0, " ft-lbf");
}

std::string print(Mass value, PrintStyle style, Rounding rounding) {
    if (style.both)
        return in_both(style, [&](PrintStyle one) { return print(value, one, rounding); });
    const bool metric = style.system == UnitSystem::metric;
    const double number = metric ? to_kilograms(value) : to_pounds(value);
    const int decimals = std::fabs(number) < 10.0 ? 2 : 1;
    return fixed(number, decimals, metric ? " kg" : " lb", rounding);
}

std::string print(MassPerLength value, PrintStyle style) {
    if (style.both)
        return in_both(style, [&](PrintStyle one) { return print(value, one); });
    return style.system == UnitSystem::metric ? fixed(to_kilograms_per_metre(value), 2, " kg/m")
                                              : fixed(to_pounds_per_foot(value), 2, " lb/ft");
}

std::string print(Angle value, PrintStyle /*style*/) {
    return shortest(to_degrees(value), 2, " deg");
}

namespace {

/// More digits than on a sheet: a working shows what was computed.
struct WorkingPrinter {
    PrintStyle style;
    [[nodiscard]] bool metric() const { return style.system == UnitSystem::metric; }

    std::string operator()(Length v) const {
        return metric() ? fixed(to_millimetres(v), 2, " mm") : fixed(to_inches(v), 4, " in");
    }
    std::string operator()(Area v) const {
        return metric() ? fixed(to_square_millimetres(v), 1, " mm²")
                        : fixed(to_square_inches(v), 4, " in²");
    }
    std::string operator()(Force v) const {
        return metric() ? fixed(to_kilonewtons(v), 2, " kN") : fixed(to_us_tons(v), 2, " ton");
    }
    std::string operator()(Stress v) const {
        return metric() ? fixed(to_megapascals(v), 1, " MPa") : fixed(to_ksi(v), 1, " ksi");
    }
    std::string operator()(Energy v) const {
        return metric() ? fixed(to_joules(v), 1, " J") : fixed(to_foot_pounds(v), 1, " ft-lbf");
    }
    std::string operator()(Mass v) const {
        return metric() ? fixed(to_kilograms(v), 3, " kg") : fixed(to_pounds(v), 3, " lb");
    }
    std::string operator()(MassPerLength v) const {
        return metric() ? fixed(to_kilograms_per_metre(v), 3, " kg/m")
                        : fixed(to_pounds_per_foot(v), 3, " lb/ft");
    }
    std::string operator()(Angle v) const { return shortest(to_degrees(v), 3, " deg"); }
    std::string operator()(Voltage v) const { return fixed(to_volts(v), 2, " V"); }
    std::string operator()(Current v) const { return fixed(to_amperes(v), 2, " A"); }
    std::string operator()(ApparentPower v) const {
        return fixed(to_kilovolt_amperes(v), 2, " kVA");
    }
    std::string operator()(Power v) const {
        return metric() ? fixed(to_kilowatts(v), 2, " kW") : fixed(to_horsepower(v), 2, " hp");
    }
    std::string operator()(Resistance v) const { return fixed(to_ohms(v), 4, " ohm"); }
    std::string operator()(ResistancePerLength v) const {
        return metric() ? fixed(to_ohms_per_kilometre(v), 3, " ohm/km")
                        : fixed(to_ohms_per_thousand_feet(v), 3, " ohm/1000 ft");
    }
    std::string operator()(Number v) const { return fixed(v.value, v.decimals, ""); }
    std::string operator()(Share v) const { return shortest(v.value * 100.0, 1, " %"); }
};

} // namespace

std::string print_working(const AnyQuantity& value, PrintStyle style) {
    if (style.both)
        return in_both(style, [&](PrintStyle one) { return print_working(value, one); });
    return std::visit(WorkingPrinter{style}, value);
}

} // namespace treadle::quantity
