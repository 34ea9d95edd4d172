// Private to the room: lengths as they are set at a stop or read on stock.

#pragma once

#include "plan/batches.h"
#include "quantity/print.h"

#include <string>
#include <vector>

namespace treadle::sheet {

/// What a stop is set to: in fractions of up to 1/64 where the job says so, else to the nearest of
/// the shop's fraction, at least 1/32. Without unit.
[[nodiscard]] std::string setting_text(Length value, PrintStyle style);
/// What is measured on stock: a wall of 0.140 is not called 1/8. Without unit.
[[nodiscard]] std::string stock_text(Length value, PrintStyle style);

/// A setting with its unit: "8 in", "203.2 mm".
[[nodiscard]] std::string with_unit(Length value, PrintStyle style);
/// What is measured, without its name.
[[nodiscard]] std::string measure_value(const plan::Measure& measure, PrintStyle style);
/// ": length 8, width 3": what is measured on a piece; empty for nothing.
[[nodiscard]] std::string measures_text(const std::vector<plan::Measure>& measures,
                                        PrintStyle style);

} // namespace treadle::sheet
