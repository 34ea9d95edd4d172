#include "sheet/figures.h"

#include <algorithm>

namespace treadle::sheet {

namespace {

/// Finest fraction that a tape shows, and the coarsest that a computed place is rounded to.
constexpr int k_finest = 64;
constexpr int k_coarsest_for_places = 32;
/// A typed 0.328 means 21/64: anything closer than this to a fraction is that fraction.
constexpr Length k_same = inches(0.0005);

std::string in_both(Length value, PrintStyle style, std::string (*text)(Length, PrintStyle)) {
    return text(value, quantity::one_system(style)) + " (" +
           text(value, quantity::other_system(style)) + ")";
}

bool on_step(Length value, PrintStyle style) {
    const Length step = quantity::round_to_step(value, style, Rounding::nearest);
    return larger(step, value) - smaller(step, value) <= k_same;
}

} // namespace

std::string setting_text(Length value, PrintStyle style) {
    if (style.both)
        return in_both(value, style, setting_text);
    if (style.system == UnitSystem::metric)
        return quantity::print_bare(value, style);
    const PrintStyle finest{style.system, k_finest};
    if (on_step(value, finest))
        return quantity::print_bare(value, finest);
    return quantity::print_bare(value,
                                {style.system, std::max(style.denominator, k_coarsest_for_places)});
}

std::string stock_text(Length value, PrintStyle style) {
    if (style.both)
        return in_both(value, style, stock_text);
    const PrintStyle finest{style.system, k_finest};
    if (style.system == UnitSystem::metric || on_step(value, finest))
        return quantity::print_bare(value, finest);
    const std::string text = quantity::print_decimal(value, style);
    return text.substr(0, text.find(' '));
}

std::string with_unit(Length value, PrintStyle style) {
    if (style.both)
        return in_both(value, style, with_unit);
    return setting_text(value, style) + (style.system == UnitSystem::inch ? " in" : " mm");
}

std::string measure_value(const plan::Measure& measure, PrintStyle style) {
    const auto* length = std::get_if<Length>(&measure.value);
    return length != nullptr ? stock_text(*length, style)
                             : quantity::print_working(measure.value, style);
}

std::string measures_text(const std::vector<plan::Measure>& measures, PrintStyle style) {
    std::string words;
    for (const plan::Measure& measure : measures) {
        words += std::string(words.empty() ? ": " : ", ") + measure.what + " ";
        words += measure_value(measure, style);
    }
    return words;
}

} // namespace treadle::sheet
