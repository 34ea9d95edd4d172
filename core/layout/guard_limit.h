// What codes ask of guards, handrails and fences, looked up by the name of the rule.
//
// Formula   a table; each row a card of its own body:
//           guard-limit-irc, -ibc, -osha, -ada, -pool, -uk
// Valid     the adopted local code governs, always
// Source    sources.json: irc-r312, ibc-1015, osha-1910-29, ada-505, ispsc-305, uk-document-k
// Rounding  none

#pragma once

#include "base/result.h"
#include "quantity/quantity.h"
#include "quantity/working.h"

#include <optional>
#include <span>
#include <string_view>

namespace treadle::layout {

struct GuardLimit {
    const char* rule; ///< "osha-top-edge"
    const char* what;
    const base::FormulaCard* card;
    double least; ///< in `unit_mm`; below zero: no such bound
    double greatest;
    double unit_mm = 25.4;
    const char* remark = "";
    bool sphere = false;     ///< must stay under the greatest, not reach it
    bool may_exceed = false; ///< over the greatest is allowed when all else holds
};
[[nodiscard]] std::span<const GuardLimit> guard_limits();
/// All rule names, "a|b|c", in the order of the table.
inline constexpr const char* k_guard_rules =
    "irc-drop|irc-guard-height|irc-stair-guard-height|irc-opening|irc-stair-opening|"
    "irc-stair-triangle|ibc-guard-height|ibc-opening|ibc-upper-opening|ibc-stair-triangle|"
    "ibc-relaxed-opening|ibc-2000-upper-opening|osha-top-edge|osha-opening|osha-stair-rail-height|"
    "osha-handrail-height|osha-finger-room|osha-toeboard-height|osha-toeboard-gap|"
    "ada-handrail-height|ada-round-grip|ada-grip-perimeter|ada-grip-across|ada-wall-clearance|"
    "ada-extension|pool-barrier-height|pool-opening|pool-picket-gap|pool-bottom-gap|uk-opening|"
    "uk-guard-height|uk-stair-guard-height";
[[nodiscard]] const GuardLimit* find_guard_limit(std::string_view rule);

[[nodiscard]] std::optional<Length> least_of(const GuardLimit& limit);
[[nodiscard]] std::optional<Length> greatest_of(const GuardLimit& limit);

/// Refuses "value" outside the rule. A zero value asks for the bounds alone.
[[nodiscard]] base::Result<Working> least_limit_working(const GuardLimit& limit, Length value);
[[nodiscard]] base::Result<Working> greatest_limit_working(const GuardLimit& limit, Length value);

/// Midway between the top edge and the surface; refuses "top_edge" below 39 in.
[[nodiscard]] base::Result<Working> midrail_working(Length top_edge);

} // namespace treadle::layout
