// read_guard of guard.h, and the two kinds with their inputs.

#include "assembly/guard.h"
#include "assembly/kinds.h"
#include "assembly/pieces.h"

namespace treadle::assembly {

namespace {

using calc::InputKind;
using calc::InputSpec;

constexpr GuardRules k_level[] = {
    {"irc-opening", "irc-guard-height", nullptr, nullptr},
    {"ibc-opening", "ibc-guard-height", nullptr, nullptr},
    {"osha-opening", "osha-top-edge", nullptr, nullptr},
    {"pool-opening", "pool-barrier-height", "pool-bottom-gap", nullptr},
    {"uk-opening", "uk-guard-height", nullptr, nullptr},
};
/// Where a code has no triangle of its own it is an opening like any other.
constexpr GuardRules k_stair[] = {
    {"irc-stair-opening", "irc-stair-guard-height", nullptr, "irc-stair-triangle"},
    {"ibc-opening", "ibc-guard-height", nullptr, "ibc-stair-triangle"},
    {"osha-opening", "osha-stair-rail-height", nullptr, "osha-opening"},
    {"uk-opening", "uk-stair-guard-height", nullptr, "uk-opening"},
};
constexpr int k_pool = 3;
constexpr int k_level_uk = 4;
constexpr int k_stair_uk = 3;

constexpr InputSpec k_sections[] = {
    {"post", InputKind::section, true, "tube, pipe, square or round", "", "tube 2 x 2 x 1/8 in"},
    {"top_rail", InputKind::section, true, "between the posts", "", "flat 1-1/2 x 3/8 in"},
    {"bottom_rail", InputKind::section, true, "between the posts", "", "flat 1-1/2 x 3/8 in"},
    {"picket", InputKind::section, true, "round, square or tube", "", "square 3/4 in"},
    {"joint",
     InputKind::word,
     false,
     "pickets cropped between the rails, or through holes",
     "welded|punched"},
    {"cap", InputKind::section, false, "a bar over posts and top rail", "", "flat 2 x 3/8 in"},
    {"grade", InputKind::material, true, "of bars", "", "A36"},
    {"post_grade", InputKind::material, false, "of posts; as the bars if not given", "", "A500-B"},
    {"margin",
     InputKind::length,
     false,
     "kept under the opening's limit; 1/8 in or 3 mm if not given",
     "",
     "1/8 in"},
    {"step",
     InputKind::length,
     false,
     "places are rounded to it; an exact pitch if not given",
     "",
     "1/16 in"},
    {"clearance",
     InputKind::length,
     false,
     "of a hole over its picket; 1/32 in or 1 mm if not given",
     "",
     "1/32 in"},
    {"fit_up",
     InputKind::length,
     false,
     "left at each end of a rail; none if not given",
     "",
     "1/32 in"},
    {"below",
     InputKind::length,
     false,
     "of a post below the surface; none if not given",
     "",
     "4 in"},
    {"base", InputKind::length, false, "thickness of a base plate under the post", "", "3/8 in"},
    {"wall_gap", InputKind::length, false, "from the last post to a wall", "", "2 in"},
};
constexpr InputSpec k_run[] = {
    {"rule", InputKind::word, true, "whose limits are looked at", "irc|ibc|osha|pool|uk"},
    {"run", InputKind::length, true, "over all, a post at either end", "", "16 ft"},
    {"run_2", InputKind::length, false, "round a square corner", "", "8 ft"},
    {"run_3", InputKind::length, false, "round the next corner", "", "8 ft"},
    {"height", InputKind::length, true, "surface to the top edge", "", "42 in"},
    {"bottom_gap", InputKind::length, true, "surface to the bottom rail", "", "3 in"},
    {"spacing", InputKind::length, true, "of posts on centres, at most", "", "8 ft"},
    {"fill", InputKind::word, false, "between the rails", "pickets|midrail"},
};
constexpr InputSpec k_flight[] = {
    {"rule", InputKind::word, true, "whose limits are looked at", "irc|ibc|osha|uk"},
    {"riser", InputKind::length, true, "of one step", "", "7 in"},
    {"tread", InputKind::length, true, "level, nosing to nosing", "", "11 in"},
    {"run", InputKind::length, true, "level, over all, a post at either end", "", "10 ft"},
    {"height", InputKind::length, true, "nosing line to the top edge, upright", "", "36 in"},
    {"bottom_gap", InputKind::length, true, "nosing line to the bottom rail, upright", "", "1 in"},
    {"spacing", InputKind::length, true, "of posts on centres, level, at most", "", "6 ft"},
    {"per_tread",
     InputKind::count,
     false,
     "pickets on each tread; by the opening's limit if not given",
     "",
     "2"},
    {"upper_landing",
     InputKind::length,
     false,
     "level, on from the flight's top post, straight or round a corner",
     "",
     "4 ft"},
    {"lower_landing",
     InputKind::length,
     false,
     "level, on from the flight's bottom post",
     "",
     "3 ft"},
    {"landing_height",
     InputKind::length,
     false,
     "surface to the top edge there; the flight's if not given",
     "",
     "42 in"},
};
constexpr auto k_run_inputs = joined(k_run, k_sections);
constexpr auto k_stair_inputs = joined(k_flight, k_sections);

void read_sections(Inputs& in, Guard& guard) {
    guard.post = in.section("post");
    guard.top = in.section("top_rail");
    guard.bottom = in.section("bottom_rail");
    guard.cap = in.section("cap");
    guard.picket = in.section("picket");
    guard.joint = in.word<Joint>("joint");
    guard.grade = in.grade("grade");
    guard.post_grade = in.grade("post_grade", guard.grade);
    if (in.failed())
        return;
    guard.picket_width = picket_width(in, "picket", guard.picket);
    using section::Shape;
    if (guard.post.shape != Shape::square_tube && guard.post.shape != Shape::pipe &&
        guard.post.shape != Shape::square && guard.post.shape != Shape::round)
        in.refuse({"post", "Posts are tube, pipe, square or round here.", "tube 2 x 2 x 1/8 in"});
    if (guard.joint == Joint::welded || guard.fill == Fill::midrail)
        return;
    for (const auto& [name, rail] :
         {std::pair{"top_rail", &guard.top}, {"bottom_rail", &guard.bottom}})
        if (!can_be_punched(*rail))
            in.refuse({name,
                       "Nothing supports the far wall of this shape under a punch.",
                       "a flat, an angle or a channel, or welded pickets"});
        else if (!(rail_face(*rail) > guard.picket_width + guard.clearance))
            in.refuse({"picket", "The picket's hole is as wide as the rail.", ""});
}

} // namespace

Guard read_guard(Inputs& in, bool stair) {
    Guard guard;
    const int rule = in.choice("rule");
    guard.rules = stair ? k_stair[rule] : k_level[rule];
    guard.pool = !stair && rule == k_pool;
    for (const char* name : {"run", "run_2", "run_3"})
        if (in.has(name))
            guard.runs.push_back(in.size(name));
    if (in.has("run_3") && !in.has("run_2"))
        in.refuse({"run_3", "A third run follows a second one.", "run_2 first"});
    guard.height = in.size("height");
    guard.bottom_gap = in.place_or("bottom_gap", Length{});
    guard.spacing = in.size("spacing");
    guard.fill = stair ? Fill::pickets : in.word<Fill>("fill");
    guard.margin = in.place_or("margin", in.usual(1.0 / 8.0, 3.0));
    guard.step = in.size("step");
    guard.clearance = in.place_or("clearance", in.usual(1.0 / 32.0, 1.0));
    guard.below = in.place_or("below", Length{});
    guard.base = in.place_or("base", Length{});
    guard.fit_up = in.place_or("fit_up", Length{});
    guard.wall_gap = in.size("wall_gap");
    read_sections(in, guard);
    if (!stair || in.failed())
        return guard;
    guard.steps = {in.size("riser"), in.size("tread")};
    guard.per_tread = in.count_or("per_tread", 1, 20, 0);
    guard.landing_rules = k_level[rule == k_stair_uk ? k_level_uk : rule];
    guard.landings[0] = in.size("lower_landing");
    guard.landings[1] = in.size("upper_landing");
    guard.landing_height = in.size_or("landing_height", guard.height);
    if (in.has("landing_height") && !in.has("lower_landing") && !in.has("upper_landing"))
        in.refuse({"landing_height", "There is no landing to be so high.", "upper_landing first"});
    if (in.failed())
        return guard;
    const auto rake = rake_of(guard.steps);
    if (rake.ok())
        guard.rake = *rake;
    else
        in.refuse_at("riser", rake.refusal());
    return guard;
}

const Kind k_guard_run{"guard-run",
                       "Guard or railing, level",
                       "Posts, rails and pickets of a level run, round up to two square corners.",
                       k_run_inputs,
                       [](Inputs& in, const std::string& mark) -> base::Result<Made> {
                           const Guard guard = read_guard(in, false);
                           if (in.failed())
                               return in.refusal();
                           return make_guard(in, guard, mark);
                       }};
const Kind k_guard_stair{
    "guard-stair",
    "Guard or railing, up a stair",
    "Posts, raked rails and upright pickets up a flight; punched rails get slots.",
    k_stair_inputs,
    [](Inputs& in, const std::string& mark) -> base::Result<Made> {
        const Guard guard = read_guard(in, true);
        if (in.failed())
            return in.refusal();
        return make_guard(in, guard, mark);
    }};

} // namespace treadle::assembly
