// Private to the room: the rack's bars as kinds, and a group as whole numbers.

#pragma once

#include "plan/stock.h"

#include <vector>

namespace treadle::plan {

/// Sizes alike, whatever they are called.
[[nodiscard]] bool same_section(const Section& a, const Section& b);

/// Of the rack, for this section and grade. Bars to buy and bars owned of one length are one kind,
/// at the price of those to buy.
[[nodiscard]] std::vector<BarKind>
bar_kinds(const Section& section, const std::string& grade, const equipment::Shop& shop);

/// What pieces may fill of a bar: its length less trims and what shared mitres take once.
[[nodiscard]] Length usable(const StockGroup& group, const BarKind& kind);
[[nodiscard]] std::int64_t usable_steps(const StockGroup& group, const BarKind& kind);
/// Of pieces, kerfs and ends.
[[nodiscard]] std::int64_t steps_up(Length length, Length step);

/// Aim, step and list of a group whose other members stand; or its problem. Kinds too short for
/// every piece are left out.
void make_list(StockGroup& group, const Plan& plan, const job::Job& job);

} // namespace treadle::plan
