#include "calc/answer_builder.h"
#include "calc/calculations.h"
#include "calc/reader.h"

#include <algorithm>

#include "supply/cards.h"
#include "supply/lift.h"

namespace treadle::calc {

namespace {

using base::Result;

// In the order of supply::LiftDuration, supply::Coupling and supply::LiftUnits.
constexpr const char* k_durations = "short|moderate|long";
constexpr const char* k_couplings = "good|fair|poor";
constexpr const char* k_printings = "inch|metric";

constexpr InputSpec k_limit_inputs[] = {
    {"horizontal", InputKind::length, true, "from the ankles to the hands", "", "12 in"},
    {"vertical", InputKind::length, true, "from the floor to the hands", "", "15 in"},
    {"travel", InputKind::length, true, "of the hands, up or down", "", "20 in"},
    {"frequency", InputKind::ratio, true, "lifts per minute", "", "1"},
    {"asymmetry", InputKind::angle, false, "turned from straight ahead", "", "45 deg"},
    {"duration",
     InputKind::word,
     false,
     "up to 1 h, 1 to 2 h, 2 to 8 h a day; long when not given",
     k_durations},
    {"coupling", InputKind::word, false, "of the hands; poor when not given", k_couplings},
    {"load", InputKind::mass, false, "for the index", "", "30 lb"},
    {"origin_vertical",
     InputKind::length,
     false,
     "where the lift began, when its end is looked at",
     "",
     "22 in"},
    {"units", InputKind::word, false, "printing of the equation; inch when not given", k_printings},
};
constexpr OutputSpec k_limit_outputs[] = {
    {"limit", "kg", "recommended weight limit"},
    {"index", "", "load over limit"},
};
constexpr const base::FormulaCard* k_limit_cards[] = {&supply::k_lift_limit_card,
                                                      &supply::k_lift_index_card};

Result<Answer> answer_limit(Reader& in) {
    supply::Lift lift;
    lift.horizontal = in.length("horizontal");
    lift.vertical = in.length("vertical");
    lift.travel = in.length("travel");
    lift.per_minute = in.ratio("frequency");
    lift.asymmetry = in.angle("asymmetry");
    if (in.has("duration"))
        lift.duration = static_cast<supply::LiftDuration>(std::max(in.choice("duration"), 0));
    if (in.has("coupling"))
        lift.coupling = static_cast<supply::Coupling>(std::max(in.choice("coupling"), 0));
    lift.origin_vertical = in.has("origin_vertical") ? in.length("origin_vertical") : lift.vertical;
    if (in.choice("units") == 1)
        lift.units = supply::LiftUnits::metric;
    const Mass load = in.mass("load");
    if (in.failed())
        return in.refusal();
    AnswerBuilder answer;
    answer.add("limit", supply::lift_limit_working(lift));
    if (in.has("load"))
        answer.add("index", supply::lift_index_working(lift, load));
    return answer.finish();
}

constexpr InputSpec k_reach_inputs[] = {
    {"depth", InputKind::length, true, "of the load, towards the body", "", "12 in"},
    {"vertical", InputKind::length, true, "from the floor to the hands", "", "30 in"},
};
constexpr OutputSpec k_reach_outputs[] = {{"horizontal", "mm", "from the ankles to the hands"}};
constexpr const base::FormulaCard* k_reach_cards[] = {&supply::k_lift_reach_card};

Result<Answer> answer_reach(Reader& in) {
    const Length depth = in.length("depth");
    const Length vertical = in.length("vertical");
    if (in.failed())
        return in.refusal();
    return AnswerBuilder().add("horizontal", supply::lift_reach_working(depth, vertical)).finish();
}

constexpr InputSpec k_team_inputs[] = {
    {"limit", InputKind::mass, true, "what one of them may lift", "", "51 lb"},
    {"people", InputKind::word, true, "of like size", "2|3"},
};
constexpr OutputSpec k_team_outputs[] = {{"together", "kg", "what they may lift together"}};
constexpr const base::FormulaCard* k_team_cards[] = {&supply::k_lift_team_card};

Result<Answer> answer_team(Reader& in) {
    const Mass limit = in.mass("limit");
    const int people = in.choice("people") + 2;
    if (in.failed())
        return in.refusal();
    return AnswerBuilder().add("together", supply::lift_team_working(limit, people)).finish();
}

} // namespace

const Calculation k_lift_limit{"lift.limit",
                               "What one person may lift, and how a load stands to it",
                               k_limit_inputs,
                               k_limit_outputs,
                               k_limit_cards,
                               answer_limit};
const Calculation k_lift_reach{"lift.reach",
                               "Reach of a lift that was not measured",
                               k_reach_inputs,
                               k_reach_outputs,
                               k_reach_cards,
                               answer_reach};
const Calculation k_lift_team{"lift.team",
                              "What two or three people lift together",
                              k_team_inputs,
                              k_team_outputs,
                              k_team_cards,
                              answer_team};

} // namespace treadle::calc
