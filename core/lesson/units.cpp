#include "lesson/units.h"

#include "base/text.h"
#include "quantity/quantity.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <span>

#include "lesson/figure.h"

namespace treadle::lesson {

namespace {

struct Unit {
    const char* word;  ///< as it is said
    double size;       ///< in base units
    const char* marks; ///< how a text with it ends, a blank between two; lower case
};

constexpr std::array k_lengths = {
    Unit{"inches", inches(1.0).in_base(), "in inch inches \" \xE2\x80\xB3"},
    Unit{"millimetres", 1.0, "mm"},
    Unit{"centimetres", 10.0, "cm"},
    Unit{"feet", quantity::feet(1.0).in_base(), "ft '"},
    Unit{"metres", 1000.0, "m"}};
constexpr std::array k_forces = {
    Unit{"US tons", us_tons(1.0).in_base(), "ton tons"},
    Unit{"kilonewtons", kilonewtons(1.0).in_base(), "kn"},
    Unit{"newtons", 1.0, "n"},
    Unit{"pounds", quantity::pounds_force(1.0).in_base(), "lbf lb"},
    Unit{"metric tonnes", quantity::tonnes_force(1.0).in_base(), "t tonne tonnes"}};
constexpr std::array k_stresses = {Unit{"ksi", ksi(1.0).in_base(), "ksi"},
                                   Unit{"psi", ksi(0.001).in_base(), "psi"},
                                   Unit{"MPa", 1.0, "mpa n/mm2"}};
constexpr std::array k_masses = {Unit{"pounds", quantity::pounds(1.0).in_base(), "lb lbs"},
                                 Unit{"kilograms", 1.0, "kg"}};

struct UnitsOf {
    std::span<const Unit> operator()(Length) const { return k_lengths; }
    std::span<const Unit> operator()(Force) const { return k_forces; }
    std::span<const Unit> operator()(Stress) const { return k_stresses; }
    std::span<const Unit> operator()(Mass) const { return k_masses; }
    template <class Q>
    std::span<const Unit> operator()(Q) const {
        return {};
    }
};

/// Whatever stands behind the last digit.
std::string ending_of(std::string_view text) {
    const std::size_t last = text.find_last_of("0123456789");
    return base::to_lower_ascii(base::trim(last == text.npos ? text : text.substr(last + 1)));
}

bool has_mark(const Unit& unit, std::string_view ending) {
    std::string_view marks = unit.marks;
    while (!marks.empty()) {
        const std::size_t blank = std::min(marks.find(' '), marks.size());
        if (marks.substr(0, blank) == ending)
            return true;
        marks.remove_prefix(std::min(blank + 1, marks.size()));
    }
    return false;
}

} // namespace

std::optional<MixedUnits>
mixed_units(const AnyQuantity& answer, double typed, double tolerance, std::string_view text) {
    const std::span<const Unit> units = std::visit(UnitsOf{}, answer);
    const std::string ending = ending_of(text);
    const double right = base_value(answer);
    for (const Unit& written : units) {
        if (!has_mark(written, ending))
            continue;
        for (const Unit& meant : units)
            if (&meant != &written &&
                std::fabs(typed / written.size * meant.size - right) <= tolerance)
                return MixedUnits{meant.word, written.word};
    }
    return std::nullopt;
}

} // namespace treadle::lesson
