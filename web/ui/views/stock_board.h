// What is to be cut from bars, and what the search beside the page has come to so far.

#pragma once

#include "plan/stock_plan.h"

#include <cstdint>
#include <vector>

namespace treadle::views {

struct StockSearch {
    enum class State {
        none, ///< there is nothing to search
        looking,
        over,    ///< it has ended, or has had all the work it gets
        missing, ///< it cannot be done in this browser
    };
    State state = State::none;
    double share = 0; ///< of the work it gets
};

struct StockBoard {
    std::vector<plan::StockGroup> groups;
    plan::StockPlan plan;              ///< one for one
    std::vector<StockSearch> searches; ///< one for one
    std::vector<std::uint64_t> news;   ///< one for one: another with each change of plan or search
    std::uint64_t change = 0;          ///< rises with each
};

} // namespace treadle::views
