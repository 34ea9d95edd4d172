// Where an operation can be put by hand: what its place catches on, how far it may go, and the part
// that comes of it.
//
// Places lie on the flat blank, along from its start end and across from the face's datum edge. A
// pattern of holes moves by its first hole, and all of it stays on the metal. A bend moves between
// its two legs, whose sum stays; the cut to length moves the finish end, the slit the far edge.

#pragma once

#include "base/formula_card.h"
#include "base/result.h"
#include "edit/session.h"
#include "job/job.h"
#include "plan/plan.h"
#include "quantity/print.h"

#include <optional>
#include <string>
#include <vector>

namespace treadle::edit {

enum class Axis { along, across };

/// In the order in which they win when two are equally near.
enum class SnapKind {
    gauge_line,    ///< usual line of bolts in the leg of an angle
    edge_distance, ///< what a bolt hole keeps from an edge
    middle,
    in_line,  ///< with another operation
    mirrored, ///< of another operation about the middle
    step,     ///< nothing near: the nearest 1/16 in or 1 mm
    limit,    ///< as far as it may go
    as_it_is
};

struct FlatPlace {
    Length along;
    Length across;
};

/// Something that a place can catch on.
struct SnapLine {
    Axis axis = Axis::along;
    Length value; ///< of the operation's own dimension there
    Length flat;  ///< the same on the blank
    SnapKind kind = SnapKind::step;
    std::string words;                       ///< "gauge line 1-3/4"
    const base::FormulaCard* card = nullptr; ///< where a figure has a source
};

struct Placing {
    const plan::PartPlan& plan;
    int operation = 0;
    PrintStyle style;
};

/// Where it is now and which ways it can go.
struct Movable {
    section::Face face = section::Face::flat;
    FlatPlace at;
    bool along = false;
    bool across = false;
};
/// Refuses what has no place of its own (a saddle, a corner notch), and what has no room.
[[nodiscard]] base::Result<Movable> movable(const Placing& placing);

/// Everything in reach, no two at one place; along first, each way in rising order.
[[nodiscard]] std::vector<SnapLine> candidates(const Placing& placing);

/// One way of a place that was found.
struct Settled {
    Length value; ///< from the datum that the operation counts from
    Length flat;
    Length to_edge; ///< from there, or from the far end of the pattern, to the nearer end or edge
    SnapKind kind = SnapKind::step;
    std::string words;
    const base::FormulaCard* card = nullptr;
};
struct Placed {
    job::Part part; ///< sound, with the operation there
    FlatPlace at;
    std::optional<Settled> along;
    std::optional<Settled> across;
};

/// The place that it has, and what that happens to lie on.
[[nodiscard]] base::Result<Placed> as_it_is(const Placing& placing);
/// Catches on what is within `tolerance` of the wished place, else on the nearest step. Beyond the
/// metal it stays on it.
[[nodiscard]] base::Result<Placed>
place(const Placing& placing, FlatPlace wished, Length tolerance);
/// Puts one dimension on a line and leaves the other where `from` has it.
[[nodiscard]] base::Result<Placed>
place_on(const Placing& placing, FlatPlace from, const SnapLine& line);
/// Moves by one step of 1/16 in or 1 mm, from a place between two steps to the next; `way` is 1 or
/// -1.
[[nodiscard]] base::Result<Placed>
nudge(const Placing& placing, FlatPlace from, Axis axis, int way);
/// To the next line that way; where there is none, nothing moves.
[[nodiscard]] base::Result<Placed>
to_next_line(const Placing& placing, FlatPlace from, Axis axis, int way);

/// The part planned alone, on this session's machine.
[[nodiscard]] plan::PartPlan trial_plan(const Session& session, const job::Part& part);
/// Whether that is quick enough to be done while a finger moves: many bends have many orders.
[[nodiscard]] bool is_quick_to_plan(const job::Part& part);

/// "at 2, 1-3/4" where it is now; empty for what has no place of its own.
[[nodiscard]] std::string at_words(const Placing& placing);
/// "2, 1-3/4": along and across, as they are set.
[[nodiscard]] std::string figure_words(const Placed& placed, PrintStyle style);
/// "gauge line 1-3/4 across; middle of the length along".
[[nodiscard]] std::string caught_words(const Placed& placed);
/// "2 along and 1-1/4 across to the nearest edges".
[[nodiscard]] std::string edge_words(const Placed& placed, PrintStyle style);

} // namespace treadle::edit
