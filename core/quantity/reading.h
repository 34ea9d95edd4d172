// What was typed, said back in both systems before it is taken.
//
// Nothing is guessed: a text that can mean two things comes back with both as choices, and a text
// that means nothing with the reason and the form that is read.

#pragma once

#include "base/result.h"
#include "quantity/parse.h"
#include "quantity/print.h"
#include "quantity/quantity.h"

#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace treadle::quantity {

/// One thing that an ambiguous text may mean.
struct Meaning {
    std::string typed; ///< to be typed for it
    std::string words; ///< what it is
};

struct Reading {
    std::string words;   ///< `5'-3 1/2" = 1612.9 mm`; empty when it cannot be read
    std::string trouble; ///< why it cannot be read
    std::string allowed; ///< how it is written
    std::vector<Meaning> choices;
};

/// In the units of `first`, then in the other ones: `1-3/8 in = 34.925 mm`. A length in inches is
/// written as a fraction where it is one, and else as a decimal.
[[nodiscard]] std::string in_both(Length value, UnitSystem first);
[[nodiscard]] std::string in_both(Force value, UnitSystem first);
[[nodiscard]] std::string in_both(Stress value, UnitSystem first);
[[nodiscard]] std::string in_both(Mass value, UnitSystem first);
[[nodiscard]] std::string in_both(Density value, UnitSystem first);
/// The same in every system.
[[nodiscard]] std::string in_both(Angle value, UnitSystem first);
[[nodiscard]] std::string in_both(double value, UnitSystem first);
[[nodiscard]] std::string in_both(int value, UnitSystem first);

/// A length as it is being typed; bare numbers are in the units of `system`.
[[nodiscard]] Reading reading_of_length(std::string_view text, UnitSystem system);
/// Any other quantity, by what its parser said.
template <class Value>
[[nodiscard]] Reading reading_of(const base::Result<Value>& read, UnitSystem system) {
    if (read)
        return {in_both(*read, system), "", "", {}};
    return {"", read.refusal().reason, read.refusal().detail, {}};
}

/// The text for a length so many steps further: a step is 1/16 in or 0.5 mm. Nothing typed counts
/// as zero. None when the text cannot be read, or when the step would turn the sign.
[[nodiscard]] std::optional<std::string>
step_length(std::string_view text, UnitSystem system, int steps);

} // namespace treadle::quantity
