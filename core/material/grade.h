// Grades of metal, and the three strengths that must never be mixed.
//
// UpperTensile    the strongest metal the grade allows: decides "fits"
// MinimumTensile  the specified minimum: notes, and the weak end of a demand interval
// RatingBase      what a machine's plate was worked out with: converts plate figures, never stock

#pragma once

#include "base/formula_card.h"
#include "base/result.h"
#include "quantity/quantity.h"

#include <string>
#include <string_view>
#include <vector>

namespace treadle::material {

struct UpperTensile {
    Stress value;
};
struct MinimumTensile {
    Stress value;
};
struct RatingBase {
    Stress value;
};

/// How the bend line lies against the rolling direction.
enum class Grain { unknown, across, along };

enum class Family { carbon_steel, stainless_steel, aluminium, copper_alloy };

/// What a grade is refused for, whatever the size.
struct GradeRefusal {
    bool cutting = false; ///< punch, shear, notch
    bool bending = false;
    std::string reason;
};

/// Strengths of one thickness band; bands are "over the last one's limit, up to this one".
struct StrengthBand {
    Length up_to; ///< upper end of the band
    Stress yield_minimum;
    Stress tensile_minimum;
    Stress tensile_upper; ///< careful upper bound used for verdicts (printed maximum or larger)
};

struct Grade {
    std::string id;       ///< stable key, e.g. "A36"
    std::string name;     ///< as said in the shop
    std::string standard; ///< e.g. "ASTM A36"
    Family family = Family::carbon_steel;
    std::vector<StrengthBand> bands; ///< rising limits; the last one covers the thickest known
    double shear_ratio = 0.0;        ///< shear strength over tensile strength
    double elongation_pct = 0.0;     ///< 0 when unknown
    Density density;
    Stress modulus;
    std::string bend_group; ///< row of the least-radius table that applies, "" when none is known
    double air_bend_share = 0.0; ///< inside radius over V opening in air bending; 0 when unknown
    GradeRefusal refusal;
    std::string source; ///< key of assets/sources.json
    base::Evidence evidence = base::Evidence::published;
    std::string note;
};

struct GradeTable {
    std::vector<Grade> rows;
    /// By id or name, without regard to case, spaces and dashes ("a572 50" finds A572-50).
    [[nodiscard]] const Grade* find(std::string_view id_or_name) const;
};

/// The band a thickness falls in. Refuses (field "thickness") above the last band: the source does
/// not cover it, and guessing lower would be wrong in the dangerous direction.
[[nodiscard]] base::Result<StrengthBand> band_for(const Grade& grade, Length thickness);

/// Never less than a thinner band's strength scaled down by thickness: thicker metal is never
/// easier.
[[nodiscard]] base::Result<UpperTensile> upper_tensile(const Grade& grade, Length thickness);
/// The minimum carried on the same way: the weak end of a demand, not the specified minimum.
[[nodiscard]] base::Result<MinimumTensile> careful_minimum(const Grade& grade, Length thickness);
[[nodiscard]] base::Result<MinimumTensile> minimum_tensile(const Grade& grade, Length thickness);
/// Tensile strength times the grade's shear ratio.
[[nodiscard]] Stress shear_strength(const Grade& grade, Stress tensile);

/// A grade a user typed in must hold together: refuses with the field of the first fault.
[[nodiscard]] base::Result<Grade> checked(Grade grade);

} // namespace treadle::material

namespace treadle {
using material::Grade;
}
