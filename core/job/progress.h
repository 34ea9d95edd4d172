// How far the work at the machine has come: what is ticked and counted, and where it stopped.
//
// Belongs to a job by its name, to a step by the key that the plan gives it; knows no plan itself.

#pragma once

#include "base/result.h"

#include <string>
#include <string_view>
#include <vector>

namespace treadle::job {

/// Of a step that has been begun.
struct StepDone {
    std::string place;   ///< of the step's key
    std::string content; ///< the same, as it was when the work was done
    int ticked = 0;      ///< lines
    int pieces = 0;      ///< counted
    friend bool operator==(const StepDone& a, const StepDone& b) {
        return a.place == b.place && a.content == b.content && a.ticked == b.ticked &&
               a.pieces == b.pieces;
    }
};

struct Progress {
    std::string job;
    std::vector<StepDone> steps;
    std::string at;    ///< place of the step that is shown; empty: the first
    bool open = false; ///< somebody was at the machine
    bool held = false; ///< on purpose
    std::string note;  ///< why it is held
    std::string when;  ///< of the last tap, as the shell says it
    friend bool operator==(const Progress& a, const Progress& b) {
        return a.job == b.job && a.steps == b.steps && a.at == b.at && a.open == b.open &&
               a.held == b.held && a.note == b.note && a.when == b.when;
    }
};

/// Boxes of the worksheet lie among the steps, under a place that no step at the machine has.
inline constexpr std::string_view k_sheet_tick = "sheet/";
[[nodiscard]] bool is_sheet_tick(const StepDone& step);
[[nodiscard]] bool is_ticked(const Progress& progress, std::string_view key);
void tick(Progress& progress, std::string_view key, bool on);

/// Counts from 0 to 100000, places named once, at most 100000 steps.
[[nodiscard]] base::Result<Progress> checked(Progress progress);

} // namespace treadle::job
