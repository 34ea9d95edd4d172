// A rail of pipe: a top rail over saddled posts, mid rails saddled between the posts.

#include <vector>

#include "assembly/inputs.h"
#include "assembly/kinds.h"
#include "assembly/pieces.h"
#include "assembly/rule_lines.h"
#include "layout/guard_limit.h"
#include "layout/picket.h"
#include "layout/saddle.h"

namespace treadle::assembly {

namespace {

using base::Refusal;
using base::Result;
using calc::InputKind;

enum class Rule { osha, irc, ibc, uk };
struct RuleNames {
    const char* height;
    const char* opening;
};
/// A mid rail half way up stands for the 19 in of OSHA's rule, so that has no opening here.
constexpr RuleNames k_rules[] = {{"osha-top-edge", nullptr},
                                 {"irc-guard-height", "irc-opening"},
                                 {"ibc-guard-height", "ibc-opening"},
                                 {"uk-guard-height", "uk-opening"}};

constexpr calc::InputSpec k_inputs[] = {
    {"rule", InputKind::word, true, "whose limits are looked at", "osha|irc|ibc|uk"},
    {"run", InputKind::length, true, "over all, a post at either end", "", "20 ft"},
    {"run_2", InputKind::length, false, "round a square corner", "", "8 ft"},
    {"run_3", InputKind::length, false, "round the next corner", "", "8 ft"},
    {"height", InputKind::length, true, "surface to the top of the rail", "", "42 in"},
    {"spacing", InputKind::length, true, "of posts on centres, at most", "", "6 ft"},
    {"pipe", InputKind::section, true, "posts and rails", "", "pipe 1.9 x 0.145 in"},
    {"mid_rails", InputKind::count, false, "how many; 1 if not given", "", "1"},
    {"below",
     InputKind::length,
     false,
     "of a post below the surface; none if not given",
     "",
     "4 in"},
    {"base", InputKind::length, false, "thickness of a base plate under the post", "", "3/8 in"},
    {"fit_up",
     InputKind::length,
     false,
     "gap left at each saddle; none if not given",
     "",
     "1/32 in"},
    {"handrail", InputKind::word, false, "whether a hand has to hold it", "no|yes"},
    {"grade", InputKind::material, true, "of the pipe", "", "A53-B"},
};

/// One side, from corner to corner; neighbours share the post there.
struct Side {
    Length run;
    layout::PostLayout posts;
};

struct PipeRail {
    Rule rule = Rule::osha;
    std::vector<Side> sides;
    Length height, spacing, below, base, fit_up;
    Section pipe;
    int mid_rails = 1;
    bool handrail = false;
    std::string grade;
    [[nodiscard]] Length od() const { return pipe.width; }
    [[nodiscard]] Length centres(const Side& side) const { return side.posts.clear + od(); }
    [[nodiscard]] int panels() const {
        int sum = 0;
        for (const Side& side : sides)
            sum += side.posts.panels;
        return sum;
    }
    /// Axis of the top rail over the surface; the mid rails share what is under it.
    [[nodiscard]] Length axis() const { return height - od() / 2.0; }
    [[nodiscard]] Length mid_axis(int i) const {
        return height * (static_cast<double>(i) / (mid_rails + 1.0));
    }
};

PipeRail read(Inputs& in) {
    PipeRail r;
    r.rule = in.word<Rule>("rule");
    for (const char* name : {"run", "run_2", "run_3"})
        if (in.has(name))
            r.sides.push_back({in.size(name), {}});
    if (in.has("run_3") && !in.has("run_2"))
        in.refuse({"run_3", "A third run follows a second one.", "run_2 first"});
    r.height = in.size("height");
    r.spacing = in.size("spacing");
    r.pipe = in.section("pipe");
    r.mid_rails = in.count_or("mid_rails", 0, 20, 1);
    r.below = in.place_or("below", Length{});
    r.base = in.place_or("base", Length{});
    r.fit_up = in.place_or("fit_up", Length{});
    r.handrail = in.choice("handrail") == 1;
    r.grade = in.grade("grade");
    if (in.failed())
        return r;
    if (r.pipe.shape != section::Shape::pipe)
        in.refuse({"pipe", "A rail of pipe is of pipe.", "pipe 1.9 x 0.145 in"});
    else if (!(r.mid_axis(1) > r.od() * 2.0) || !(r.height > r.base + r.od() * 2.0))
        in.refuse({"height", "So many rails find no room under this height.", ""});
    return r;
}

job::Part saddled(job::Part part, job::End end, Length run) {
    cut_ends(part);
    part.operations.emplace_back(job::Saddle{end, run});
    return part;
}

/// As long as its side: at a corner the mitre's long point is the corner's outside.
void add_top_rail(Made& made, const PipeRail& r, std::size_t i, const std::string& mark) {
    const Piece top{"top-rail", "T", "top rail", static_cast<int>(i) + 1};
    job::Part part = straight_part(top, mark, r.grade, r.pipe, r.sides[i].run, 1);
    cut_ends(part);
    const int corners = static_cast<int>(i > 0) + static_cast<int>(i + 1 < r.sides.size());
    if (corners > 0)
        add_note(part,
                 corners == 1 ? "mitred 45 deg at the corner; long point to the square end"
                              : "mitred 45 deg at both corners; long point to long point");
    add_note(part, "joints over posts only");
    add(made, top, std::move(part));
}

std::optional<Refusal> add_parts(Made& made, const PipeRail& r, const std::string& mark) {
    const layout::SaddleJoint joint{r.od(), r.pipe.thickness, r.od()};
    const auto shape = layout::saddle_shape(joint);
    if (!shape.ok())
        return Refusal{"pipe", shape.refusal().reason, shape.refusal().detail};
    made.workings.push_back(layout::cut_back_working(joint, *shape));
    for (std::size_t i = 0; i < r.sides.size(); ++i)
        add_top_rail(made, r, i, mark);
    const Piece post{"post", "P", "post"};
    const Length length = r.axis() - shape->cut_back - r.fit_up - r.base + r.below;
    add(made,
        post,
        saddled(straight_part(post, mark, r.grade, r.pipe, length, r.panels() + 1),
                job::End::finish,
                r.od()));
    if (r.mid_rails == 0)
        return std::nullopt;
    for (std::size_t i = 0; i < r.sides.size(); ++i) {
        const Side& side = r.sides[i];
        const auto blank = layout::saddle_blank_working({joint, r.od(), r.centres(side), r.fit_up});
        if (!blank.ok())
            return Refusal{blank.refusal().field == "centres" ? "spacing" : "pipe",
                           blank.refusal().reason,
                           blank.refusal().detail};
        made.workings.push_back(*blank);
        const Piece mid{"mid-rail", "M", "mid rail", static_cast<int>(i) + 1};
        job::Part rail = straight_part(mid,
                                       mark,
                                       r.grade,
                                       r.pipe,
                                       std::get<Length>(blank->result.value),
                                       side.posts.panels * r.mid_rails);
        add_note(rail, "long point to long point; trim the knife edges");
        add(made, mid, saddled(std::move(rail), job::End::both, r.od()));
    }
    return std::nullopt;
}

void hold_rules(Made& made, const PipeRail& r) {
    const RuleNames& names = k_rules[static_cast<int>(r.rule)];
    hold(made.rules, names.height, "height of the top edge", r.height);
    if (names.opening != nullptr) {
        const Length top = r.mid_rails > 0 ? r.mid_axis(r.mid_rails) : Length{};
        const Length under = r.mid_rails > 0 ? r.mid_axis(1) - r.od() / 2.0 : r.height - r.od();
        hold(made.rules,
             names.opening,
             "opening under the top rail",
             r.axis() - top - (r.mid_rails > 0 ? r.od() : r.od() / 2.0));
        hold(made.rules, names.opening, "opening over the surface", under);
    } else if (const auto working = layout::midrail_working(r.height); working.ok()) {
        made.workings.push_back(*working);
        hold(made.rules,
             {"osha-midrail",
              std::get<Length>(working->result.value),
              false,
              false,
              "osha-1910-29",
              base::Evidence::published,
              "Midway between top edge and surface, where no wall of 21 in stands."},
             "height of the highest mid rail",
             r.mid_rails > 0 ? r.mid_axis(r.mid_rails) : Length{});
    }
    if (r.handrail)
        hold(made.rules, "ada-round-grip", "outside of the rail, for a hand", r.od());
}

/// The sides one after the other, unfolded at the corners.
void draw(Made& made, const PipeRail& r, const std::string& mark) {
    Elevation& out = made.elevation;
    const auto post = [&](Length x) {
        out.outlines.push_back(
            marked(box({x, r.base - r.below}, r.od(), r.axis() - r.base + r.below, 0.0, Shade::bar),
                   mark + "-P"));
    };
    Length x;
    post(x);
    for (const Side& side : r.sides) {
        out.outlines.push_back(marked(box({x, r.height - r.od()}, side.run, r.od()), mark + "-T"));
        for (int i = 0; i < side.posts.panels && !is_full(out); ++i, x += r.centres(side)) {
            for (int k = 1; k <= r.mid_rails; ++k)
                out.outlines.push_back(marked(box({x + r.od(), r.mid_axis(k) - r.od() / 2.0},
                                                  side.posts.clear,
                                                  r.od(),
                                                  0.0,
                                                  Shade::bar),
                                              mark + "-M"));
            post(x + r.centres(side));
        }
    }
    const Length end = x + r.od();
    out.outlines.push_back(line({{}, {end, {}}}));
    const Length off = r.height / 8.0;
    out.spans = {{{{}, -(off + r.below)}, {r.sides.front().run, -(off + r.below)}, "run"},
                 {{-off, {}}, {-off, r.height}, ""}};
    out.description = "Rail of pipe on " + std::to_string(r.panels() + 1) + " posts.";
}

void add_figures(Made& made, const PipeRail& r) {
    for (std::size_t i = 0; i < r.sides.size(); ++i) {
        const Side& side = r.sides[i];
        const std::string where = r.sides.size() > 1 ? ", side " + std::to_string(i + 1) : "";
        made.figures.push_back({"panels" + where, whole(side.posts.panels)});
        made.figures.push_back({"posts on centres" + where, r.centres(side)});
        made.figures.push_back({"clear between posts" + where, side.posts.clear});
        if (const auto working = layout::post_working({side.run, r.od(), r.spacing}); working.ok())
            made.workings.push_back(*working);
    }
    for (int i = 1; i <= r.mid_rails; ++i)
        made.figures.push_back(
            {"axis of mid rail " + std::to_string(i) + " over the surface", r.mid_axis(i)});
}

Result<Made> make_pipe_rail(Inputs& in, const std::string& mark) {
    PipeRail r = read(in);
    if (in.failed())
        return in.refusal();
    for (Side& side : r.sides) {
        const auto posts = layout::post_layout({side.run, r.od(), r.spacing});
        if (!posts.ok())
            return Refusal{posts.refusal().field == "run"    ? "run"
                           : posts.refusal().field == "post" ? "pipe"
                                                             : "spacing",
                           posts.refusal().reason,
                           posts.refusal().detail};
        side.posts = *posts;
    }
    Made made;
    if (auto fault = add_parts(made, r, mark))
        return *fault;
    hold_rules(made, r);
    add_figures(made, r);
    made.cautions = {k_code_governs};
    draw(made, r, mark);
    return made;
}

} // namespace

const Kind k_pipe_rail{"pipe-rail",
                       "Rail of pipe",
                       "A top rail over saddled posts, with mid rails saddled between them.",
                       k_inputs,
                       make_pipe_rail};

} // namespace treadle::assembly
