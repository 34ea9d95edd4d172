// How long the planned set-ups take on this shop's own times, and what the labour costs.
//
// Symbols   C  change to a set-up    n  pieces of a part    s  strokes a piece   t  time of a
// stroke
//           p  time to a position    h  handling a piece, by its weight    q  first-piece check
// Formula   T = sum over set-ups [ C + sum over its parts ( n (s (t + p) + h) ) ] + sum of q
//           labour = T in hours times the rate
// Valid     one person at a time; a part is taken in hand once for every set-up that works on it,
//           its first piece is checked once; where the house measures one piece in N later on,
//           floor((n - 1) / N) more checks in every set-up of the part, each as long as the first.
//           Parts that cannot be made are not in it
// Source    common practice, no source; only the structure: every figure is the shop's own
// Rounding  none; time_words says minutes to one decimal

#pragma once

#include "plan/plan.h"
#include "quantity/duration.h"

#include <optional>
#include <string>
#include <vector>

namespace treadle::plan {

struct SetUpTime {
    Duration change;
    Duration handling;
    Duration strokes;            ///< with the way to each position
    Duration checks;             ///< first pieces of parts begun here, and one in N of all
    std::vector<Duration> steps; ///< all but the change, as the set-up's steps
    [[nodiscard]] Duration total() const { return change + handling + strokes + checks; }
};

struct JobTime {
    std::vector<SetUpTime> set_ups; ///< as the plan's order
    Duration total;
    std::optional<double> labour; ///< in the shop's own money; none without a rate
    bool invented = false;
};

/// Refuses, naming the rule that is not known, rather than leave a term out.
[[nodiscard]] base::Result<JobTime> job_time(const Plan& plan, const equipment::Shop& shop);

/// "26.3 min", "2 h 05 min".
[[nodiscard]] std::string duration_words(Duration time);
/// "26.3 min, labour 26.33 (invented times)", or "not computed: …".
[[nodiscard]] std::string time_words(const base::Result<JobTime>& time);

} // namespace treadle::plan
