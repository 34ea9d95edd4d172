// What a layout has, held against a bound: private to the room.

#pragma once

#include <string>

#include "assembly/made.h"

namespace treadle::assembly {

/// Every bound of a row of the table of guards; a rule of that name must exist.
void hold(std::vector<RuleLine>& lines, const char* rule, const std::string& words, Length value);

/// The largest opening that a rule of that table allows; its sphere must not pass.
[[nodiscard]] Length opening_limit(const char* rule);

/// Of a pool's barrier: where tops of rails are less than 45 in apart (ISPSC 305) a foot finds the
/// lower one, and the gap between pickets has a limit of its own.
void hold_pool_pickets(std::vector<RuleLine>& lines, Length tops, Length gap);

struct Bound {
    const char* rule;
    Length limit;
    bool at_most = true;
    bool sphere = false;
    const char* source = "common-practice-layout";
    base::Evidence evidence = base::Evidence::common_practice;
    const char* remark = "";
};
void hold(std::vector<RuleLine>& lines, const Bound& bound, const std::string& words, Length value);
/// The bound is the working's result, and its card the source.
void hold(std::vector<RuleLine>& lines,
          const Working& least,
          const std::string& words,
          Length value,
          bool at_most = false);

/// Said by every layout that codes look at.
inline constexpr const char* k_code_governs =
    "The adopted local code governs, and the competent person who answers for the work. Strength "
    "of posts, rails, welds and anchors is not looked at here.";

} // namespace treadle::assembly
