// One figure as an answer: typed, printed, compared.

#pragma once

#include "base/result.h"
#include "quantity/print.h"

#include <string>
#include <string_view>

namespace treadle::lesson {

/// An answer carries its unit, as a drawing does; an angle may be a bare number of degrees.
[[nodiscard]] base::Result<AnyQuantity> read_like(const AnyQuantity& like, std::string_view typed);
/// As one writes it: "40.84 ton".
[[nodiscard]] std::string figure_text(const AnyQuantity& figure, PrintStyle style);
/// In the units of `style`, and in the other ones where they differ: "61.80 ton (549.78 kN)".
[[nodiscard]] std::string in_both_systems(const AnyQuantity& figure, PrintStyle style);
/// In base units of its kind, to be compared with another of the same kind.
[[nodiscard]] double base_value(const AnyQuantity& figure);
/// An answer of this kind can be typed and read.
[[nodiscard]] bool can_be_asked(const AnyQuantity& figure);

} // namespace treadle::lesson
