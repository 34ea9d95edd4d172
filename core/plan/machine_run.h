// Working off the steps at the machine: ticks and pieces, one tap after the other, and back.
//
// Every tap can be taken back by its opposite. What was done stays with a step for as long as its
// key stays; a step that has the same place but another content is said to have changed, and
// counts from zero.

#pragma once

#include "job/progress.h"
#include "plan/machine_steps.h"

#include <string>
#include <vector>

namespace treadle::plan {

struct MachineRun {
    struct Done {
        int ticked = 0;
        int pieces = 0;
        std::string content_before; ///< another one than the step's: it changed since it was begun
    };
    MachineSteps list;
    std::vector<Done> done; ///< of each step
    int at = 0;             ///< the step shown; of no meaning when there is none
};

/// Steps with what has been done of them. A place that is gone leaves the work at the first step
/// that is not complete.
[[nodiscard]] MachineRun resume(MachineSteps list, const job::Progress& progress);
/// Puts steps and place into the record; the rest of it stays as it is.
void record(const MachineRun& run, job::Progress& progress);

[[nodiscard]] bool is_complete(const MachineRun& run, int step);
[[nodiscard]] bool is_begun(const MachineRun& run, int step);
[[nodiscard]] bool has_changed(const MachineRun& run, int step);
/// Pieces that are finished at this position, with those of the step before.
[[nodiscard]] int pieces_done(const MachineRun& run, int step);
[[nodiscard]] int pieces_of(const MachineStep& step);
/// Line to be ticked next; k_none when all are.
[[nodiscard]] int next_tick(const MachineRun& run, int step);

/// The next line, and when all are ticked the next piece. False when there is nothing left.
bool add_one(MachineRun& run);
/// The last of either. False when nothing has been done here.
bool take_back(MachineRun& run);
bool go_next(MachineRun& run);
bool go_back(MachineRun& run);
/// Back to the set-up: its lines and those of the step shown are ticked anew; pieces stay counted.
void check_from_start(MachineRun& run);

struct SetUpProgress {
    int complete = 0;
    int steps = 0;
};
[[nodiscard]] SetUpProgress set_up_progress(const MachineRun& run, int set_up);
/// Steps that are not complete, in order.
[[nodiscard]] std::vector<int> open_steps(const MachineRun& run);

} // namespace treadle::plan
