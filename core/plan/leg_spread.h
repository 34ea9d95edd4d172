// How far each finished leg of a bent part may come out from its size, against the class asked for.
//
// Method    every error that has a size is followed from where it is made to each leg: the cut of
//           the blank, the stop at each bend (against the edge that the order of bends gauges), and
//           half of each bend's deduction on either side of its line. Worst case and root sum of
//           squares: process/leg_error. The blank's rounding up lands whole on the leg at its far
//           end.
// Valid     legs made in the planned order of bends; wear, angle and flatness are not in it
// Source    sources.json: common-practice-bending, iso-2768-1

#pragma once

#include "base/result.h"
#include "plan/plan.h"
#include "quantity/working.h"

#include <optional>
#include <string>
#include <vector>

namespace treadle::plan {

enum class SpreadVerdict {
    within,        ///< by the worst case
    within_by_rss, ///< only by root sum of squares: most pieces, not all
    outside,
    cannot_be_said, ///< see `missing`
    not_asked       ///< the job names no class
};

struct LegSpread {
    int leg = 0;
    Length nominal;
    std::optional<Length>
        limit; ///< either way, of the class; none: not asked, or outside its table
    std::optional<Length> worst; ///< either way; none: see `missing`
    std::optional<Length> rss;
    SpreadVerdict verdict = SpreadVerdict::not_asked;
    std::string
        missing; ///< what is not known, in words: "a trial of …", "the stop's repeatability"
    std::vector<Working> workings;
};

/// One for each leg of a bent part; empty for others and where no blank was made.
[[nodiscard]] std::vector<LegSpread>
leg_spreads(const PartPlan& part, const job::Job& job, const equipment::Shop& shop);

[[nodiscard]] const char* spread_key(SpreadVerdict verdict);
/// "within by the worst case", "within for most pieces (RSS), not for the worst"
[[nodiscard]] const char* spread_words(SpreadVerdict verdict);
[[nodiscard]] const char* tolerance_words(job::ToleranceClass grade); ///< "f (fine)"

} // namespace treadle::plan
