#include "sheet/figures.h"

#include <algorithm>

namespace treadle::sheet {

namespace {

/// Finest fraction that a tape shows, and the coarsest that a computed place is rounded to.
constexpr int k_finest = 64;
constexpr int k_coarsest_for_places = 32;
/// A typed 0.328 means 21/64: anything closer than this to a fraction is that fraction.
constexpr Length k_same = inches(0.0005);

bool on_step(Length value, PrintStyle style) {
    const Length step = quantity::round_to_step(value, style, Rounding::nearest);
    return larger(step, value) - smaller(step, value) <= k_same;
}

} // namespace

std::string setting_text(Length value, PrintStyle style) {
    if (style.system == UnitSystem::metric)
        return quantity::print_bare(value, style);
    const PrintStyle finest{style.system, k_finest};
    if (on_step(value, finest))
        return quantity::print_bare(value, finest);
    return quantity::print_bare(value,
                                {style.system, std::max(style.denominator, k_coarsest_for_places)});
}

std::string stock_text(Length value, PrintStyle style) {
    const PrintStyle finest{style.system, k_finest};
    if (style.system == UnitSystem::metric || on_step(value, finest))
        return quantity::print_bare(value, finest);
    const std::string text = quantity::print_decimal(value, style);
    return text.substr(0, text.find(' '));
}

std::string measures_text(const std::vector<plan::Measure>& measures, PrintStyle style) {
    std::string words;
    for (const plan::Measure& measure : measures) {
        words += std::string(words.empty() ? ": " : ", ") + measure.what + " ";
        const auto* length = std::get_if<Length>(&measure.value);
        words += length != nullptr ? stock_text(*length, style)
                                   : quantity::print_working(measure.value, style);
    }
    return words;
}

} // namespace treadle::sheet
