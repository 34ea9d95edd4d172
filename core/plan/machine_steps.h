// A plan's order as the one at the machine works it off: set-up, stop, first piece, the rest, mark.
//
// Method  Set-up by set-up in the plan's order. A step of the plan is split where a stop is set
//         anew: each hole of a pattern in running order, each end of a mitre or saddle. The first
//         piece is a step of its own wherever the plan has something to measure on it.
// Valid   parts that fit or fit up to a strength; every other part is listed with its reason. With
//         two people the plain order: lanes share set-ups out, they do not change what is in one
// Source  common practice, no source; figures are the plan's marks, stops and settings

#pragma once

#include "plan/batches.h"
#include "plan/plan.h"

#include <string>
#include <vector>

namespace treadle::plan {

/// A figure to set, and what it is measured from. The drawing shows the datum end and edge heavy.
struct SetFigure {
    enum class Kind { stop, stock, ram_up, ram_down };
    Kind kind = Kind::stop;
    std::string what; ///< "along", "across", "length", "stop", "ram up", …
    std::string from; ///< "from the heavy end"
    AnyQuantity value;
};

/// What goes into a station, one by one.
enum class ToolItem { attachment, holder, punch, die, vee, brake_punch, saddle_die, mitre };

/// A line to tick before the pieces of a step are made.
struct Tick {
    enum class Kind {
        take_off,    ///< `item`, of the set-up that was at this station before
        mount,       ///< `item`
        setting,     ///< `index`: line of plan::setting_lines
        by_hand,     ///< what is tried by hand before the first stroke
        certificate, ///< read, and the strength on it low enough
        stop,        ///< `index`: of the step's figures
        first_made,
        measured,
        marked
    };
    Kind kind = Kind::stop;
    ToolItem item = ToolItem::punch;
    int index = 0;
};

/// What stays the same while other parts are planned anew.
struct StepKey {
    std::string place;   ///< part, operation, position and kind; or the tools of a set-up
    std::string content; ///< sum of everything that is set, cut and mounted there
    friend bool operator==(const StepKey& a, const StepKey& b) {
        return a.place == b.place && a.content == b.content;
    }
};

enum class MachineWork { set_up, certificate, first_piece, run, mark };

struct MachineStep {
    MachineWork kind = MachineWork::run;
    StepKey key;
    int set_up = 0;            ///< of the plan's order
    int tools_before = k_none; ///< set-up that was last at the same station
    int step = k_none;         ///< of the set-up; none for the set-up itself
    int part = k_none;
    int operation = k_none;
    int position = 0; ///< of the operation's, in running order
    int positions = 1;
    section::Face face = section::Face::flat;
    int pieces = 0;      ///< made in this step
    int made_before = 0; ///< at this position, in the step before
    int strokes = 0;     ///< for one piece, here
    std::vector<SetFigure> figures;
    std::vector<Tick> ticks;
    std::vector<Measure> measures; ///< first piece
};

/// A part that is not made here, and why.
struct NotHere {
    int part = 0;
    Outcome outcome = Outcome::does_not_fit;
    std::string reason;
};

struct MachineSteps {
    std::vector<MachineStep> steps;
    std::vector<NotHere> not_here;
};

[[nodiscard]] MachineSteps
machine_steps(const Plan& plan, const job::Job& job, const equipment::Shop& shop);

} // namespace treadle::plan
