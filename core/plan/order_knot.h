// Groups that wait for each other in a circle: some must be visited more than once. Which, and
// when?
//
// Method  Bound: a group needs as many visits as its longest route returns to it; two groups that
//         alternate need one more where routes cross; disjoint pairs add up. Search: shortest first
//         over what is done of every route (A*), after a search of bounded width for a good list.
//         A group that one visit finishes is visited at once.
// Valid   exact while the counted work lasts; then the shortest list found, and a true bound.

#pragma once

#include "plan/order_groups.h"

namespace treadle::plan {

struct Knot {
    int groups = 0;
    std::vector<Route> routes; ///< distinct; groups from 0
};

/// Shortest list for a knot. `known` are lists that do everything, at least one.
/// `most_work`: steps of the search, counted, not timed.
[[nodiscard]] Visits
solve_knot(const Knot& knot, const std::vector<std::vector<int>>& known, long long most_work);

/// True when these visits, each doing all that is ready, do every route. At most
/// 16 groups a stage.
[[nodiscard]] bool does_all(const std::vector<Route>& routes, const std::vector<int>& visits);

} // namespace treadle::plan
