// What is set at the machine for a set-up, so that the tool clears the stock and no more.
//
// Punch        up t + g over the die, down e into it (card punch-stroke); the largest t counts
// Brake        up so far that the piece comes out to the front, or along the bend line where the
//              stroke is too short for that (card brake-opening); down the punch's travel from
//              touching the sheet (card punch-travel), each bend its own
// Flat shear, notcher   up t + g over the lower blade (card blade-opening); down through the stock
// Angle, bar   the opening in the blades is the stock's own shape: nothing to set
// Valid        gap g: the house's, else the largest there may be, 1/4 in
// Source       common practice, no source; the brake's are geometry

#pragma once

#include "quantity/print.h"
#include "quantity/quantity.h"
#include "quantity/working.h"

#include <optional>
#include <string>
#include <vector>

namespace treadle::equipment {
struct Shop;
}

namespace treadle::plan {

struct Plan;
struct SetUp;

struct Settings {
    enum class Kind { none, punch, brake, blade, shaped_blade };
    Kind kind = Kind::none;
    Length thickness;                   ///< of the thickest stock in the set-up
    std::optional<Length> stripper_gap; ///< over the stock: the most there may be
    /// Tool over the die, the V or the lower blade. None: the whole stroke, or the brake's bends
    /// differ so much that each is set by itself.
    std::optional<Length> stroke_up;
    std::optional<Length> stroke_down; ///< into the die; brake: from touching the sheet
    bool out_along = false;            ///< brake: the piece comes out along the bend line
    std::string missing; ///< path of the stroke that is not known: then no figure of the ram
    int up_step = 0;     ///< step that stroke_up is for
    int down_step = 0;
};

/// Of every set-up of a plan that is in order.
void choose_settings(Plan& plan, const equipment::Shop& shop);

/// "Ram up: 1/2 in over the die", "Ram down: 1/8 in into the die", …; one line for each setting.
[[nodiscard]] std::vector<std::string>
setting_lines(const SetUp& set_up, const equipment::Shop& shop, PrintStyle style);
/// The formulas behind them.
[[nodiscard]] std::vector<Working>
explain_settings(const Plan& plan, const SetUp& set_up, const equipment::Shop& shop);

} // namespace treadle::plan
