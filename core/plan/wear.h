// Strokes on the cutting edges of the crib: how many this job adds, and when one has to be ground.
//
// Formula   total = strokes since the last grinding + strokes of this job; due from the interval on
// Valid     tools of the crib in planned set-ups; where the count or the interval is not known,
//           nothing is said. What is still to be bought has no count
// Source    common practice, no source; the interval is the shop's own

#pragma once

#include "plan/plan.h"

#include <optional>
#include <string>
#include <vector>

namespace treadle::plan {

enum class EdgeKind { punch, die, saddle_die };
enum class WearState {
    not_computed, ///< count or interval not known
    within,       ///< total stays under the interval
    reached,      ///< in this job
    over          ///< before the job starts: grind first
};

struct ToolWear {
    EdgeKind kind = EdgeKind::punch;
    int tool = 0;                ///< index in the crib's list
    int strokes = 0;             ///< of this job
    std::optional<int> before;   ///< since the last grinding
    std::optional<int> interval; ///< the tool's own, else the house rule's
    WearState state = WearState::not_computed;
    int set_up = k_none; ///< reached: index in the order
    int into = 0;        ///< strokes into that set-up when it is due
};

/// A line for every cutting tool of the crib that the job uses, in the order of the crib.
[[nodiscard]] std::vector<ToolWear> tool_wear(const Plan& plan, const equipment::Shop& shop);

/// The crib's tools with the strokes of this job added. Tools whose count is not known stay so.
[[nodiscard]] equipment::Crib with_strokes(const Plan& plan, const equipment::Shop& shop);

/// "Punch 13/16 round".
[[nodiscard]] std::string
edge_words(EdgeKind kind, int tool, const equipment::Shop& shop, PrintStyle style);
/// "120 strokes in this job, 2620 of 3000: within", "…: grind first".
[[nodiscard]] std::string wear_words(const ToolWear& wear);
/// Key for files: "within", "reached", "over", "not_computed".
[[nodiscard]] const char* wear_key(WearState state);
[[nodiscard]] const char* edge_key(EdgeKind kind);

} // namespace treadle::plan
