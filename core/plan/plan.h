// The plan: what becomes of a job on this shop's machine. A value: print it, compare it, draw it.
//
// make_plan plans every part on its own (so one edit re-plans one part), then the order of work.
// Nothing in a plan is text to show: words.h says it, explain.h gives the working.

#pragma once

#include "base/result.h"
#include "equipment/shop.h"
#include "job/job.h"
#include "plan/bend_order.h"
#include "plan/settings.h"
#include "plan/verdict.h"
#include "process/blank.h"

#include <array>
#include <cstdint>
#include <memory>
#include <optional>
#include <vector>

namespace treadle::plan {

inline constexpr int k_none = -1; ///< "no index"

/// What goes into the machine for an operation. Indices into the shop's lists, k_none if unused.
struct Tooling {
    int station = k_none;
    int attachment = k_none;
    int holder = k_none; ///< of the station
    int punch = k_none;  ///< of the crib; k_none with a size below: to be bought
    int die = k_none;
    int vee = k_none;
    int brake_punch = k_none;
    int saddle_die = k_none;
    geometry::HoleOutline punch_size; ///< what is needed
    geometry::HoleOutline die_size;
    Length opening;    ///< V opening used or to be bought
    Length nose;       ///< brake punch nose radius, zero when none is chosen
    Length saddle_run; ///< saddle: diameter of the run
    Angle mitre;
};

/// A place of the machine: a station, or an attachment bolted to one. k_none: any of them.
struct Mounting {
    int station = k_none;
    int attachment = k_none;
};

/// What the crib lacks.
struct Need {
    enum class Kind { punch, die, vee_block, brake_punch, saddle_die, holder };
    Kind kind = Kind::punch;
    geometry::HoleOutline hole;
    Length size;              ///< opening, nose, run diameter; holder: what it has to take
    Length branch;            ///< saddle: diameter of the shaped pipe
    Length length = Length{}; ///< V block and brake punch: of the longest bend
};

/// Where the K of a bend comes from: the first that there is, trial before house before table.
enum class BlankSource { din6935, house_k, trial };

struct OperationPlan {
    Outcome outcome = Outcome::fits;
    bool tight = false;    ///< fits with less than the house's least margin
    int deciding = k_none; ///< index of the check that decides outcome and margin
    std::vector<Check> checks;
    Tooling tools;
    std::vector<Need> needs;
    int strokes = 0;               ///< for one piece
    Length travel;                 ///< bends: of the punch from touching the sheet to the angle
    Length stroke_needed;          ///< bends: the same with what springs back
    process::SharpBend bend;       ///< bends: thickness, radius reached, angle
    process::BendFigures figures;  ///< bends: allowance, deduction, setback, K
    process::BlankRule blank_rule; ///< bends: that the figures are made with
    BlankSource blank_source = BlankSource::din6935;
    int trial = k_none; ///< of the shop's trials, when the source is one
};

/// A place on the flat blank, from the datum end and the datum edge.
struct Mark {
    enum class Kind { hole, bend_line, notch };
    Kind kind = Kind::hole;
    int operation = 0;
    section::Face face = section::Face::flat;
    Length x;
    Length y;
};

/// What has to be set up for an operation; two with the same key need no change between them.
using SetUpKey = std::array<std::int64_t, 14>;

/// An operation in the work on its part.
struct WorkItem {
    int operation = 0;
    int stage = 0; ///< what stands in one stage may be done in any order, stages in theirs
    int kind = 0;  ///< cut, notch, punch, bend, saddle: earlier first where it makes no difference
    SetUpKey key{};
    std::uint64_t hash = 0; ///< of the key
};

struct PartPlan {
    job::PartRef part;
    std::optional<base::Refusal> problem; ///< nothing could be planned: said at its field
    Outcome outcome = Outcome::fits;
    bool tight = false;
    Length blank_length;     ///< rounded up by the house rule; a straight part's own length
    Length blank_exact;      ///< before rounding
    Length blank_width;      ///< plates and flats
    Mass mass_each;          ///< of the blank
    int batch = 0;           ///< pieces that go round together; 0: the house does not split
    process::Blank blank;    ///< bent parts: deductions, bend lines, leg origins
    std::vector<Mark> marks; ///< in running order from the datum end
    std::optional<BendSequence> bends;     ///< of bent parts; bends are indices of operations
    std::vector<OperationPlan> operations; ///< same order as the part's
    std::vector<WorkItem> work;            ///< stage after stage; empty when it cannot be made
};

struct Step {
    int part = 0;
    int operation = 0;
    int pieces = 0;
    int strokes = 0;     ///< pieces x strokes each
    bool begins = false; ///< first work on its part: here every piece gets its mark
};

/// Station, attachment, tooling and settings that stay put while its steps are done.
struct SetUp {
    Tooling tools;
    Settings settings;
    std::vector<Step> steps;
    int strokes = 0;
};

struct Plan {
    std::vector<std::shared_ptr<const PartPlan>> parts;
    std::vector<SetUp> order;  ///< parts and operations that fit, in working order
    int least_set_ups = 0;     ///< no order needs fewer
    bool order_proven = false; ///< this one needs no more than that
    std::vector<Need> shopping;
    Outcome outcome = Outcome::fits;
    int strokes = 0;
    int pieces = 0;
    Mass mass;
};

[[nodiscard]] PartPlan plan_part(const job::PartRef& part,
                                 const job::Job& job,
                                 const equipment::Shop& shop,
                                 const job::Catalog& catalog);

[[nodiscard]] Plan
make_plan(const job::Job& job, const equipment::Shop& shop, const job::Catalog& catalog);

/// As make_plan, taking over the parts of `before` that are the same objects. Only valid when shop,
/// catalogue, print style (it sets how blanks are rounded) and the job's own grades are those that
/// `before` was made with.
[[nodiscard]] Plan replan(const Plan& before,
                          const job::Job& job,
                          const equipment::Shop& shop,
                          const job::Catalog& catalog);

} // namespace treadle::plan
