// Which unit a number was meant in, when it is right in another one than it was written in.

#pragma once

#include "quantity/print.h"

#include <optional>
#include <string>
#include <string_view>

namespace treadle::lesson {

struct MixedUnits {
    std::string meant;
    std::string written;
};

/// `typed`: the answer that was read, in base units; `text`: as it was written. None when the
/// number is right in no other unit of the trade, or when the unit cannot be told from the text.
[[nodiscard]] std::optional<MixedUnits>
mixed_units(const AnyQuantity& answer, double typed, double tolerance, std::string_view text);

} // namespace treadle::lesson
