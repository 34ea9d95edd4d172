// Tasks shared out among people who work side by side: who does which, and when.
//
// A task is a change and then its steps, one after the other; it holds its station and its scarce
// tools from beginning to end. A step waits until its part is free and its earlier work is done.
//
// Method  Tasks are placed one by one at the earliest time that holds; several rules for who is
//         next, and all sequences when the tasks are few. The list in one lane is tried too, so
//         sharing out never takes longer than working alone.
// Bound   work per lane, tasks that never run at once, and the work on a part: none can be shorter.
// Valid   bounded by counted work, not by time: same input, same output.

#pragma once

#include <array>
#include <vector>

namespace treadle::plan {

struct LaneStep {
    int part = 0;
    double length = 0.0; ///< in any unit, the same everywhere
};

struct LaneTask {
    std::vector<LaneStep> steps; ///< done in this order
    std::vector<int> before;     ///< tasks with earlier work on its parts; earlier in the list
    int station = 0;
    int place = 0; ///< a task after one of the same place needs the small change
    std::array<int, 6> scarce{-1, -1, -1, -1, -1, -1}; ///< tools there is only one of, -1 for none
};

struct LaneWork {
    int lanes = 1;
    int parts = 0;
    int stations = 0;
    std::vector<char> apart; ///< stations x stations: 1 when both never run at once
    double small_change = 0.0;
    double full_change = 0.0;
    /// No part has two tasks that could come in either order: then trying all sequences proves.
    bool one_way = true;
    std::vector<LaneTask> tasks; ///< in an order that one person could work through
};

struct LaneRun {
    int task = 0;
    int lane = 0;
    double start = 0.0;
    double finish = 0.0;
    double waits = 0.0;              ///< of it, for parts that others have in hand
    std::vector<double> begins = {}; ///< of each step
};

struct Lanes {
    std::vector<LaneRun> runs; ///< by start
    double length = 0.0;       ///< of the longest lane
    double least = 0.0;        ///< no sharing out is shorter
    double alone = 0.0;        ///< the list in one lane
    [[nodiscard]] bool proven() const { return length <= least * (1.0 + 1e-9); }
};

/// Both never overlap in time.
[[nodiscard]] bool kept_apart(const LaneWork& work, const LaneTask& a, const LaneTask& b);

/// One lane gives the list as it stands.
[[nodiscard]] Lanes share_out(const LaneWork& work);

} // namespace treadle::plan
