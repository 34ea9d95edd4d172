// In which order to visit the set-ups of a job, so that the fewest changes are needed.
//
// Each part runs through groups (a group: all work that needs no change between) in stages; what
// stands in one stage may be done in any order, a stage only after the one before. A visit to a
// group does all that is ready there. Asked for: the shortest list of visits that does everything,
// a shortest common supersequence of the parts' routes.
//
// Method  Groups that wait for each other in a circle form a knot; everything outside of knots
//         needs one visit and its place follows. Each knot is solved by itself (order_knot.h), and
//         the fewest visits of the whole are the sum over its knots.
// Valid   any number of groups and parts; work is counted, not timed: same input, same output.

#pragma once

#include <cstdint>
#include <vector>

namespace treadle::plan {

/// Groups of one stage, without repeats.
using RouteStage = std::vector<int>;
/// Stages of one part, in order.
using Route = std::vector<RouteStage>;

struct WorkGroup {
    int kind = 0;    ///< earlier kinds of work come first where it makes no difference
    int station = 0; ///< for the station-by-station order
};

struct Visits {
    std::vector<int> order; ///< groups
    int least = 0;          ///< no list is shorter
    [[nodiscard]] bool proven() const { return static_cast<int>(order.size()) == least; }
};

/// The shortest list found; never longer than `known` (a list that does everything) nor than the
/// station-by-station order.
[[nodiscard]] Visits fewest_visits(const std::vector<WorkGroup>& groups,
                                   const std::vector<Route>& routes,
                                   const std::vector<int>& known);

/// Round the shop: at each station all that is ready, group after group, then the next station.
[[nodiscard]] std::vector<int> station_by_station(const std::vector<WorkGroup>& groups,
                                                  const std::vector<Route>& routes);

} // namespace treadle::plan
