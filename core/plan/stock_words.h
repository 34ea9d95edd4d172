// Bars and their proof in words: the same ones on the page, on the sheet and from the command.

#pragma once

#include "plan/stock_plan.h"

#include <string>

namespace treadle::plan {

/// "Flat 1/4 × 2, A36"
[[nodiscard]] std::string stock_title(const StockGroup& group, PrintStyle style);
/// "Sheared, nothing lost; ends under 2 cannot be held; no end trim; drops kept from 12".
[[nodiscard]] std::string parting_words(const StockGroup& group, PrintStyle style);
/// "7 bars; no plan needs fewer", "7 bars; at least 6", "2 drops and 3 bars; no plan needs fewer
/// bars", "3 bars at 120.00; no plan costs less", "3 bars, 720 in; no plan takes less"; or why
/// there is none: the problem, "No plan yet.", "The rack does not reach: …".
[[nodiscard]] std::string
proof_words(const StockGroup& group, const GroupPlan& plan, PrintStyle style);
/// For a list: "7 bars, proven", "7 bars, at least 6", "no plan yet", "cannot be said".
[[nodiscard]] std::string
short_proof_words(const StockGroup& group, const GroupPlan& plan, PrintStyle style);
/// "Bar 240", "Drop 61-1/2"
[[nodiscard]] std::string bar_words(const BarKind& kind, PrintStyle style);
/// "drop 35-39/64, keep", "3/8 scrap", "3/8 left" without a rule, "nothing left".
[[nodiscard]] std::string drop_words(const StockGroup& group, const BarPlan& bar, PrintStyle style);
/// "Pull 1 drop of 61-1/2", "Pull 2 of 240", "Buy 5 of 240 at 31.50"; to pull before to buy.
[[nodiscard]] std::vector<std::string>
use_words(const StockGroup& group, const GroupPlan& plan, PrintStyle style);
/// "Taken 412 lb: parts 380 lb, drops to keep 20 lb, scrap 12 lb. To buy 102 lb, 157.50."
[[nodiscard]] std::string sums_words(const StockSums& sums, PrintStyle style);
/// "cannot be made as planned"; empty where the part fits.
[[nodiscard]] std::string piece_caution(const StockPiece& piece);
/// Mark and length: "HP1 34-1/2".
[[nodiscard]] std::string piece_words(const StockPiece& piece, const Plan& plan, PrintStyle style);
/// "Plates and what is slit to width are not nested here: HB1, HB2"; empty when there are none.
[[nodiscard]] std::string not_from_bars_words(const Plan& plan);
/// All together: "9 sections: 1 drop and 14 bars, proven; 2 of 9 without a plan".
[[nodiscard]] std::string stock_words(const std::vector<StockGroup>& groups, const StockPlan& plan);

} // namespace treadle::plan
