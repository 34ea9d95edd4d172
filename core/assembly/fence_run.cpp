// A security or picket fence: posts, rails on two or three levels, pickets past the rails.
//
// Raked      rails follow the slope, square-ended between posts            card raked-rail
// Stepped    panels stay level; at the low end the gap under them grows by panel x tan A

#include <algorithm>

#include "assembly/infill.h"
#include "assembly/inputs.h"
#include "assembly/kinds.h"
#include "assembly/pieces.h"
#include "assembly/raked_rail.h"
#include "assembly/rule_lines.h"

namespace treadle::assembly {

namespace {

using base::Refusal;
using base::Result;
using calc::InputKind;

enum class Rule { common, pool };
enum class Manner { raked, stepped };
enum class Joint { face, punched };

constexpr calc::InputSpec k_inputs[] = {
    {"rule", InputKind::word, true, "whose limits are looked at", "common|pool"},
    {"run", InputKind::length, true, "level, over all, a post at either end", "", "32 ft"},
    {"height", InputKind::length, true, "grade to the pickets' tops", "", "6 ft"},
    {"bottom_gap", InputKind::length, true, "grade to the pickets", "", "2 in"},
    {"spacing", InputKind::length, true, "of posts on centres, at most", "", "8 ft"},
    {"post", InputKind::section, true, "tube, pipe, square or round", "", "tube 2-1/2 x 1/8 in"},
    {"rail", InputKind::section, true, "all rails", "", "angle 1-1/2 x 1/8 in"},
    {"rails", InputKind::count, false, "on how many levels; 2 if not given", "", "2"},
    {"picket", InputKind::section, true, "round, square or tube", "", "square 3/4 in"},
    {"joint",
     InputKind::word,
     false,
     "pickets on the rails' face, or through holes",
     "face|punched"},
    {"above",
     InputKind::length,
     false,
     "picket over the top rail; 6 in or 150 mm if not given",
     "",
     "6 in"},
    {"under",
     InputKind::length,
     false,
     "picket under the bottom rail; as above if not given",
     "",
     "4 in"},
    {"slope", InputKind::ratio, false, "of the ground; level if not given", "", "8 %"},
    {"manner", InputKind::word, false, "on a slope", "raked|stepped"},
    {"gap",
     InputKind::length,
     false,
     "largest between pickets; 4 in or 100 mm if not given",
     "",
     "4 in"},
    {"margin",
     InputKind::length,
     false,
     "kept under it; 1/8 in or 3 mm if not given",
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
    {"below", InputKind::length, false, "of a post below grade; none if not given", "", "30 in"},
    {"grade", InputKind::material, true, "of bars", "", "A36"},
    {"post_grade", InputKind::material, false, "of posts; as the bars if not given", "", "A500-B"},
};

struct Fence {
    Rule rule = Rule::common;
    Manner manner = Manner::raked;
    Joint joint = Joint::face;
    Length run, height, bottom_gap, spacing, above, under, limit, margin, step, clearance, below;
    Section post, rail, picket;
    int rails = 2;
    Length picket_width;
    double slope = 0.0;
    Rake rake; ///< of the panels: level where they are stepped
    std::string grade, post_grade;
    // Laid out:
    layout::PostLayout posts;
    InfillMade infill;
};

void read_sections(Inputs& in, Fence& f) {
    f.post = in.section("post");
    f.rail = in.section("rail");
    f.picket = in.section("picket");
    f.grade = in.grade("grade");
    f.post_grade = in.grade("post_grade", f.grade);
    if (in.failed())
        return;
    f.picket_width = picket_width(in, "picket", f.picket);
    if (f.joint == Joint::punched && !can_be_punched(f.rail))
        in.refuse({"rail",
                   "Nothing supports the far wall of this shape under a punch.",
                   "a flat, an angle or a channel, or pickets on the face"});
    else if (f.joint == Joint::punched && !(rail_face(f.rail) > f.picket_width + f.clearance))
        in.refuse({"picket", "The picket's hole is as wide as the rail.", ""});
}

Fence read(Inputs& in) {
    Fence f;
    f.rule = in.word<Rule>("rule");
    f.manner = in.word<Manner>("manner");
    f.joint = in.word<Joint>("joint");
    f.run = in.size("run");
    f.height = in.size("height");
    f.bottom_gap = in.place_or("bottom_gap", Length{});
    f.spacing = in.size("spacing");
    f.above = in.place_or("above", in.usual(6.0, 150.0));
    f.under = in.place_or("under", f.above);
    f.limit = in.size_or("gap", in.usual(4.0, 100.0));
    if (f.rule == Rule::pool)
        f.limit = std::min(f.limit, opening_limit("pool-opening"));
    f.margin = in.place_or("margin", in.usual(1.0 / 8.0, 3.0));
    f.step = in.size("step");
    f.clearance = in.place_or("clearance", in.usual(1.0 / 32.0, 1.0));
    f.below = in.place_or("below", Length{});
    f.rails = in.count_or("rails", 2, 3, 2);
    f.slope = in.ratio_or("slope", 0.0);
    read_sections(in, f);
    if (in.failed())
        return f;
    if (!(f.slope >= 0.0 && f.slope <= 1.0))
        in.refuse({"slope", "The ground is no steeper than this here.", "from 0 to 100 %"});
    else if (f.slope > 0.0 && f.manner == Manner::raked)
        if (const auto rake = rake_of({quantity::metres(f.slope), quantity::metres(1.0)});
            rake.ok())
            f.rake = *rake;
    if (!(f.limit > f.margin))
        in.refuse({"margin", "So wide a margin leaves nothing of the gap.", ""});
    return f;
}

/// Underside of each rail over the grade, from the lowest; upright.
std::vector<Length> rail_levels(const Fence& f) {
    const Length depth = f.rake.upright(rail_depth(f.rail));
    const Length low = f.bottom_gap + f.under;
    const Length high = f.height - f.above - depth;
    if (f.rails == 2)
        return {low, high};
    return {low, (low + high) / 2.0, high};
}

std::optional<Refusal> lay_out(Fence& f) {
    const auto posts = layout::post_layout({f.run, f.post.width, f.spacing});
    if (!posts.ok())
        return Refusal{posts.refusal().field == "greatest_spacing" ? "spacing"
                                                                   : posts.refusal().field,
                       posts.refusal().reason,
                       posts.refusal().detail};
    f.posts = *posts;
    auto made = infill({f.posts.clear, f.picket_width, f.limit - f.margin, f.step, f.rake});
    if (!made.ok())
        return Refusal{made.refusal().field == "opening" ? "run" : made.refusal().field,
                       made.refusal().reason,
                       made.refusal().detail};
    f.infill = std::move(made).value();
    const auto levels = rail_levels(f);
    if (!(levels.back() > levels.front() + f.rake.upright(rail_depth(f.rail)) * 2.0))
        return Refusal{"height", "No rails find room under this height.", "see above and under"};
    return std::nullopt;
}

std::optional<Refusal> add_parts(Made& made, const Fence& f, const std::string& mark) {
    const int panels = f.posts.panels;
    const Piece post{"post", "P", "post"};
    const Piece rail{"rail", "R", "rail"};
    const Piece picket{"picket", "K", "picket"};
    const Length step = f.manner == Manner::stepped ? f.posts.clear * f.slope : Length{};
    job::Part part =
        straight_part(post, mark, f.post_grade, f.post, f.height + step + f.below, panels + 1);
    cut_ends(part);
    add(made, post, std::move(part));
    const auto length = raked_rail(f.posts.clear, rail_depth(f.rail), f.rake);
    if (!length.ok())
        return length.refusal();
    const Length square = lost_by_square_ends(rail_depth(f.rail), f.rake);
    part = straight_part(rail, mark, f.grade, f.rail, *length, panels * f.rails);
    cut_ends(part);
    if (f.joint == Joint::punched && f.infill.count > 0)
        punch_rail(part,
                   {f.infill,
                    picket_hole(f.picket, f.clearance, f.rake),
                    square / 2.0,
                    f.step == Length{}});
    add(made, rail, std::move(part));
    if (f.infill.count == 0)
        return std::nullopt;
    part = straight_part(
        picket, mark, f.grade, f.picket, f.height - f.bottom_gap, panels * f.infill.count);
    cut_ends(part);
    add_note(part, "spikes or caps come on top of this length");
    add(made, picket, std::move(part));
    return std::nullopt;
}

void hold_rules(Made& made, const Fence& f) {
    const bool pool = f.rule == Rule::pool;
    const auto levels = rail_levels(f);
    const Length gap = f.infill.largest_gap;
    const Length step = f.manner == Manner::stepped ? f.posts.clear * f.slope : Length{};
    const Length under = f.bottom_gap + step;
    if (pool)
        hold(made.rules, "pool-opening", "opening between pickets and at posts", gap);
    else
        hold(made.rules, {"picket-gap", f.limit, true, true}, "opening between pickets", gap);
    if (pool)
        hold(made.rules, "pool-bottom-gap", "gap under the pickets at the low end", under);
    else
        hold(made.rules,
             {"fence-bottom-gap", inches(2.0)},
             "gap under the pickets at the low end",
             under);
    if (pool)
        hold(made.rules, "pool-barrier-height", "height of the barrier", f.height);
    else
        hold(made.rules,
             {"fence-post-spacing", quantity::feet(8.0)},
             "posts on centres",
             f.posts.clear + f.post.width);
    // Tops of neighbouring rails apart: what a foot finds.
    const Length tops = levels[1] - levels[0];
    if (pool)
        hold_pool_pickets(made.rules, tops, gap);
    else
        hold(made.rules,
             {"fence-foothold",
              inches(45.0),
              false,
              false,
              "common-practice-layout",
              base::Evidence::common_practice,
              "Borrowed from the rule for pools."},
             "from rail to rail, so that nothing is climbed on",
             tops);
}

void draw(Made& made, const Fence& f, const std::string& mark) {
    Elevation& out = made.elevation;
    const double tangent = f.rake.tangent;
    const double drop = f.manner == Manner::stepped ? f.slope : 0.0;
    Length x;
    for (int i = 0; i <= f.posts.panels; ++i, x += f.post.width + f.posts.clear) {
        const Length ground = x * (tangent + drop);
        out.outlines.push_back(
            marked(box({x, ground - f.below}, f.post.width, f.height + f.below), mark + "-P"));
        if (i == f.posts.panels || is_full(out))
            break;
        // A stepped panel hangs level from its high end.
        const Length left = x + f.post.width;
        const Length base = left * tangent + (left + f.posts.clear) * drop;
        for (const Length level : rail_levels(f))
            out.outlines.push_back(marked(box({left, base + level},
                                              f.posts.clear,
                                              f.rake.upright(rail_depth(f.rail)),
                                              tangent),
                                          mark + "-R"));
        for (const Length along : f.infill.marks) {
            if (is_full(out))
                break;
            const Length centre =
                along / (f.rake.along(quantity::metres(1.0)) / quantity::metres(1.0));
            out.outlines.push_back(marked(
                box({left + centre - f.picket_width / 2.0, base + centre * tangent + f.bottom_gap},
                    f.picket_width,
                    f.height - f.bottom_gap,
                    0.0,
                    Shade::bar),
                mark + "-K"));
        }
    }
    out.outlines.push_back(line({{Length{}, Length{}}, {f.run, f.run * (tangent + drop)}}));
    const Length under = -(f.below + f.height / 10.0);
    out.spans = {{{Length{}, under}, {f.run, under}, "run"},
                 {{-(f.height / 10.0), Length{}}, {-(f.height / 10.0), f.height}, ""}};
    out.description = "Fence of " + std::to_string(f.posts.panels) + " panels with " +
                      std::to_string(f.infill.count) + " pickets in each.";
}

Result<Made> make_fence(Inputs& in, const std::string& mark) {
    Fence f = read(in);
    if (in.failed())
        return in.refusal();
    if (auto fault = lay_out(f))
        return *fault;
    Made made;
    if (auto fault = add_parts(made, f, mark))
        return *fault;
    hold_rules(made, f);
    made.figures = {{"panels", whole(f.posts.panels)},
                    {"clear between posts, level", f.posts.clear},
                    {"pickets in a panel", whole(f.infill.count)},
                    {"clear gap, level", f.infill.gap},
                    {"pitch of pickets along the rail", f.rake.along(f.infill.pitch)}};
    for (const auto& working : {layout::post_working({f.run, f.post.width, f.spacing}),
                                layout::picket_working(f.infill.question)})
        if (working.ok())
            made.workings.push_back(*working);
    if (f.slope > 0.0 && f.manner == Manner::stepped) {
        const auto step =
            layout::step_working(f.posts.clear, {quantity::metres(f.slope), quantity::metres(1.0)});
        if (step.ok()) {
            made.workings.push_back(*step);
            made.figures.push_back({"step from panel to panel", f.posts.clear * f.slope});
        }
    }
    made.cautions = {k_code_governs,
                     "Wind on the pickets, footings and frost depth are not looked at here."};
    draw(made, f, mark);
    return made;
}

} // namespace

const Kind k_fence_run{"fence-run",
                       "Fence of pickets",
                       "Posts, rails and pickets of a security or pool fence, level or on a slope.",
                       k_inputs,
                       make_fence};

} // namespace treadle::assembly
