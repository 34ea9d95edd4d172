// A step at the machine in words: the same figures as on the worksheet, for a screen that is read
// from two metres.

#pragma once

#include "plan/machine_run.h"

#include <string>
#include <vector>

namespace treadle::sheet {

/// A figure to set. Digits stand alone, so that they can be drawn large.
struct FigureText {
    std::string what;   ///< "along"
    std::string from;   ///< "from the heavy end"
    std::string digits; ///< "2-1/4", "57.2"
    std::string unit;   ///< "in", "mm", "deg"
};
[[nodiscard]] FigureText figure_text(const plan::SetFigure& figure, PrintStyle style);

struct MachineWords {
    std::string mark;  ///< of the part; "Set-up 3" where there is none
    std::string place; ///< "step 3 of 40"
    std::string title; ///< "Punch 13/16 round, hole 2 of 4"
    std::string tools; ///< station and tooling in one line
    std::vector<FigureText> figures;
    std::vector<std::string> ticks; ///< each carries its figure
    std::vector<std::string> notes; ///< how it lies, batches, what else is measured
    std::string verdict;            ///< empty for a set-up
    plan::Outcome outcome = plan::Outcome::fits;
    std::vector<std::string> warnings; ///< the plan's own, of this operation
    std::vector<std::string> safety;   ///< for this station, and the last word of the manual
    std::string done;                  ///< "punched", "bent", …
    std::string spoken;                ///< all of the step in one sentence
};

/// Everything but the counts.
[[nodiscard]] MachineWords machine_words(const plan::MachineRun& run,
                                         int step,
                                         const plan::Plan& plan,
                                         const job::Job& job,
                                         const equipment::Shop& shop,
                                         const job::Catalog& catalog);

/// "You were at step 3: 4 of 12 punched.", with when it was, as the shell said it.
[[nodiscard]] std::string
resume_words(const plan::MachineRun& run, const plan::Plan& plan, const std::string& when);
/// "Left open: step 3, 4 of 12 punched; step 7, 1 of 5 lines ticked."; empty when all is done.
[[nodiscard]] std::string open_words(const plan::MachineRun& run, const plan::Plan& plan);
/// "BP3 is not at this machine, does not fit: …"
[[nodiscard]] std::string
not_here_words(const plan::NotHere& entry, const plan::Plan& plan, PrintStyle style);

/// What is tried by hand before the first stroke of a set-up; empty where nothing is.
[[nodiscard]] std::string by_hand_words(const job::Operation& first);

} // namespace treadle::sheet
