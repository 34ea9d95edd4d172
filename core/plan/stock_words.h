// Bars and their proof in words: the same ones on the page, on the sheet and from the command.

#pragma once

#include "plan/stock_plan.h"

#include <string>

namespace treadle::plan {

/// "Flat 1/4 × 2, A36"
[[nodiscard]] std::string stock_title(const StockGroup& group, PrintStyle style);
/// "sheared, nothing lost", "sheared, 3/4 in lost a cut", "sawn, 1/8 in lost a cut"; with trim,
/// holdable end and shared mitres where there are any.
[[nodiscard]] std::string parting_words(const StockGroup& group, PrintStyle style);
/// "7 bars; no plan needs fewer", "7 bars; at least 6", "2 drops and 3 bars; no plan needs fewer
/// bars", "120.00 for bars; no plan costs less", "3 bars, 60 ft; no plan takes less length"; or why
/// there is none: the problem, "not searched yet", "the stock does not reach".
[[nodiscard]] std::string
proof_words(const StockGroup& group, const GroupPlan& plan, PrintStyle style);
/// Short, for a list or a status: "7 bars, proven", "7 bars, at least 6", "no plan yet", "cannot be
/// said".
[[nodiscard]] std::string
short_proof_words(const StockGroup& group, const GroupPlan& plan, PrintStyle style);
/// "240 bar", "drop 61-1/2"
[[nodiscard]] std::string bar_words(const BarKind& kind, PrintStyle style);
/// "drop 35-5/8, keep", "3/8 scrap", "nothing left".
[[nodiscard]] std::string drop_words(const StockGroup& group, const BarPlan& bar, PrintStyle style);
/// "pull 2 of 240", "buy 5 of 240 at 31.50"; one line a kind, pull before buy.
[[nodiscard]] std::vector<std::string>
use_words(const StockGroup& group, const GroupPlan& plan, PrintStyle style);
/// "412 lb taken: 380 lb parts, 20 lb kept, 12 lb scrap; to buy 102 lb, 157.50". What is not known
/// is named.
[[nodiscard]] std::string sums_words(const StockSums& sums, PrintStyle style);
/// "cannot be made as planned: see its verdict"; empty where the part fits.
[[nodiscard]] std::string piece_caution(const StockPiece& piece);
/// Title of a piece: its mark and length, "HP1 34-1/2".
[[nodiscard]] std::string piece_words(const StockPiece& piece, const Plan& plan, PrintStyle style);
/// For a sheet: "Not nested here: HB1, HB2 (plates)"; empty when there are none.
[[nodiscard]] std::string not_from_bars_words(const Plan& plan);
/// All groups together: "9 groups: 14 bars, all proven"; "2 of 9 cannot be said".
[[nodiscard]] std::string stock_words(const std::vector<StockGroup>& groups, const StockPlan& plan);

} // namespace treadle::plan
