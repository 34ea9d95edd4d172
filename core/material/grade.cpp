#include "material/grade.h"

#include "base/ascii.h"
#include "base/text.h"

#include <cmath>
#include <cstddef>

namespace treadle::material {

using base::Refusal;
using base::Result;

namespace {

/// Lower case without spaces and dashes, so that "A572 Gr" habits of typing don't matter.
std::string bare_word(std::string_view text) {
    std::string out;
    for (const char c : base::to_lower_ascii(text)) {
        if (c != ' ' && c != '-')
            out.push_back(c);
    }
    return out;
}

/// Whether a text's bare word is this one; asked of every row, so without making it.
bool reads_as(std::string_view text, std::string_view bare) {
    std::size_t at = 0;
    for (const char c : text) {
        if (c == ' ' || c == '-')
            continue;
        if (at == bare.size() || base::to_lower(c) != bare[at])
            return false;
        ++at;
    }
    return at == bare.size();
}

// Below half, a shear strength would understate every force; above one no metal is known.
constexpr double k_least_shear_ratio = 0.5;
constexpr double k_most_shear_ratio = 1.0;
// A wider inside radius than a quarter of the opening has never been claimed for air bending.
constexpr double k_most_air_bend_share = 0.25;

bool positive(double value) { return std::isfinite(value) && value > 0.0; }
bool within(double value, double low, double high) { return value >= low && value <= high; }

Result<bool> check_band(const StrengthBand& band, Length below, const std::string& field) {
    if (!(is_finite(band.up_to) && band.up_to > below))
        return Refusal{field + ".up_to",
                       "Thickness limits must rise from band to band.",
                       "more than the one before"};
    if (!positive(band.yield_minimum.in_base()))
        return Refusal{
            field + ".yield_minimum", "The yield strength must be above zero.", "above 0"};
    if (!(is_finite(band.tensile_minimum) && band.tensile_minimum >= band.yield_minimum))
        return Refusal{field + ".tensile_minimum",
                       "The least tensile strength cannot be below the yield strength.",
                       "the yield strength or more"};
    if (!(is_finite(band.tensile_upper) && band.tensile_upper >= band.tensile_minimum))
        return Refusal{field + ".tensile_upper",
                       "The upper tensile strength cannot be below the least one.",
                       "the least tensile strength or more"};
    return true;
}

Result<bool> check_numbers(const Grade& grade) {
    if (!within(grade.shear_ratio, k_least_shear_ratio, k_most_shear_ratio))
        return Refusal{
            "shear_ratio", "Shear strength over tensile strength is out of range.", "0.5 to 1"};
    if (!within(grade.elongation_pct, 0.0, 100.0))
        return Refusal{"elongation_pct", "The elongation is out of range.", "0 to 100 per cent"};
    if (!positive(grade.density.in_base()))
        return Refusal{"density", "The density must be above zero.", "above 0"};
    if (!positive(grade.modulus.in_base()))
        return Refusal{"modulus", "The modulus of elasticity must be above zero.", "above 0"};
    if (!within(grade.air_bend_share, 0.0, k_most_air_bend_share))
        return Refusal{"air_bend_share",
                       "The inside radius over the V opening is out of range.",
                       "0 (unknown) to 0.25"};
    return true;
}

Result<bool> check_words(const Grade& grade) {
    if (base::trim(grade.id).empty() || !base::is_clean_text(grade.id))
        return Refusal{"id", "A grade needs an id.", "one letter or figure at least"};
    if (base::trim(grade.name).empty() || !base::is_clean_text(grade.name))
        return Refusal{"name", "A grade needs a name.", "one letter or figure at least"};
    const bool refused = grade.refusal.cutting || grade.refusal.bending;
    if (refused && base::trim(grade.refusal.reason).empty())
        return Refusal{"refusal.reason", "A refused grade must say why.", "a few words"};
    return true;
}

} // namespace

const Grade* GradeTable::find(std::string_view id_or_name) const {
    const std::string wanted = bare_word(id_or_name);
    if (wanted.empty())
        return nullptr;
    for (const Grade& row : rows) {
        if (reads_as(row.id, wanted))
            return &row;
    }
    for (const Grade& row : rows) {
        if (reads_as(row.name, wanted))
            return &row;
    }
    return nullptr;
}

Result<StrengthBand> band_for(const Grade& grade, Length thickness) {
    if (!(is_finite(thickness) && thickness > Length{}))
        return Refusal{"thickness", "The thickness must be above zero.", ""};
    if (grade.bands.empty()) {
        const std::string why = grade.refusal.reason.empty()
                                    ? "No strength is known for " + grade.name + "."
                                    : grade.refusal.reason;
        return Refusal{"grade", why, ""};
    }
    for (const StrengthBand& band : grade.bands) {
        if (thickness <= band.up_to)
            return band;
    }
    return Refusal{"thickness",
                   "The strength of " + grade.name + " is not known at this thickness.",
                   "known up to " +
                       base::write_short(quantity::to_millimetres(grade.bands.back().up_to), 2) +
                       " mm"};
}

namespace {

/// Some standards print a stronger range for thinner metal. Metal just over such a limit would then
/// ask for less force than metal just under it, and a verdict would turn easier with thickness. So
/// a thinner band's strength is carried on, falling as the thickness grows, until the printed one
/// is reached: strength times thickness never falls.
Stress carried(const Grade& grade, Length thickness, Stress StrengthBand::*strength) {
    Stress most;
    for (const StrengthBand& band : grade.bands) {
        if (thickness <= band.up_to)
            return larger(most, band.*strength);
        most = larger(most, band.*strength * (band.up_to / thickness));
    }
    return most;
}

} // namespace

Result<UpperTensile> upper_tensile(const Grade& grade, Length thickness) {
    const Result<StrengthBand> band = band_for(grade, thickness);
    if (!band)
        return band.refusal();
    return UpperTensile{carried(grade, thickness, &StrengthBand::tensile_upper)};
}

Result<MinimumTensile> careful_minimum(const Grade& grade, Length thickness) {
    const Result<StrengthBand> band = band_for(grade, thickness);
    if (!band)
        return band.refusal();
    return MinimumTensile{carried(grade, thickness, &StrengthBand::tensile_minimum)};
}

Result<MinimumTensile> minimum_tensile(const Grade& grade, Length thickness) {
    const Result<StrengthBand> band = band_for(grade, thickness);
    if (!band)
        return band.refusal();
    return MinimumTensile{band->tensile_minimum};
}

Stress shear_strength(const Grade& grade, Stress tensile) { return tensile * grade.shear_ratio; }

Result<Grade> checked(Grade grade) {
    if (const Result<bool> words = check_words(grade); !words)
        return words.refusal();
    if (const Result<bool> numbers = check_numbers(grade); !numbers)
        return numbers.refusal();
    // Only a grade that is refused for everything may leave its strengths out.
    if (grade.bands.empty() && !(grade.refusal.cutting && grade.refusal.bending))
        return Refusal{"bands", "A grade needs its strengths for at least one thickness.", ""};
    Length below;
    for (std::size_t i = 0; i < grade.bands.size(); ++i) {
        const std::string field = "bands[" + std::to_string(i) + "]";
        if (const Result<bool> band = check_band(grade.bands[i], below, field); !band)
            return band.refusal();
        below = grade.bands[i].up_to;
    }
    return grade;
}

} // namespace treadle::material
