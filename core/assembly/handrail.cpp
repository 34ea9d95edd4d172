// A handrail of pipe up a flight: along the slope, level on beyond the top nosing, and on at the
// slope beyond the bottom one; on brackets, its ends open or returned.
//
// Rail      (run + bottom extension) / cos A on the axis               card rake-along
// Knuckle   mitred A / 2 each side: long point at the upper side, D / 2 tan(A / 2) beyond the axis
// Return    square, mitred: wall clearance + D, long point to the square end

#include <cmath>

#include "assembly/infill.h"
#include "assembly/inputs.h"
#include "assembly/kinds.h"
#include "assembly/pieces.h"
#include "assembly/rule_lines.h"

namespace treadle::assembly {

namespace {

using base::Refusal;
using base::Result;
using calc::InputKind;

enum class Rule { ada, osha };
enum class Ends { open, returned };
struct RuleNames {
    const char* height;
    const char* wall;
};
constexpr RuleNames k_rules[] = {{"ada-handrail-height", "ada-wall-clearance"},
                                 {"osha-handrail-height", "osha-finger-room"}};

constexpr calc::InputSpec k_inputs[] = {
    {"rule", InputKind::word, true, "whose limits are looked at", "ada|osha"},
    {"riser", InputKind::length, true, "of one step", "", "7 in"},
    {"tread", InputKind::length, true, "level, nosing to nosing", "", "11 in"},
    {"run", InputKind::length, true, "level, bottom nosing to top nosing", "", "10 ft"},
    {"height", InputKind::length, true, "nosing line to the top of the rail, upright", "", "36 in"},
    {"pipe", InputKind::section, true, "of the rail", "", "pipe 1.66 x 0.14 in"},
    {"wall_clear", InputKind::length, true, "between rail and wall", "", "2-1/4 in"},
    {"top_extension",
     InputKind::length,
     false,
     "level, beyond the top nosing; 12 in or 305 mm if not given",
     "",
     "12 in"},
    {"bottom_extension",
     InputKind::length,
     false,
     "level, beyond the bottom nosing; one tread if not given",
     "",
     "11 in"},
    {"ends", InputKind::word, false, "open, or returned to the wall", "open|returned"},
    {"bracket_spacing",
     InputKind::length,
     false,
     "at most; 4 ft or 1.2 m if not given",
     "",
     "4 ft"},
    {"count", InputKind::count, false, "of rails; 1 if not given", "", "2"},
    {"grade", InputKind::material, true, "of the pipe", "", "A53-B"},
};

struct Rail {
    Rule rule = Rule::ada;
    layout::Slope steps{};
    Rake rake;
    Length run, height, wall_clear, top, bottom, spacing;
    Section pipe;
    Ends ends = Ends::open;
    int count = 1;
    std::string grade;
    [[nodiscard]] Length od() const { return pipe.width; }
    /// What a mitre's long point stands beyond the axis.
    [[nodiscard]] Length knuckle() const {
        return od() / 2.0 * std::tan(rake.angle.in_radians() / 2.0);
    }
    [[nodiscard]] Length corner() const { return ends == Ends::returned ? od() / 2.0 : Length{}; }
};

Rail read(Inputs& in) {
    Rail r;
    r.rule = in.word<Rule>("rule");
    r.steps = {in.size("riser"), in.size("tread")};
    r.run = in.size("run");
    r.height = in.size("height");
    r.pipe = in.section("pipe");
    r.wall_clear = in.size("wall_clear");
    r.top = in.place_or("top_extension", in.usual(12.0, 305.0));
    r.bottom = in.place_or("bottom_extension", r.steps.run);
    r.ends = in.word<Ends>("ends");
    r.spacing = in.size_or("bracket_spacing", in.usual(48.0, 1200.0));
    r.count = in.count_or("count", 1, 1000, 1);
    r.grade = in.grade("grade");
    if (in.failed())
        return r;
    if (r.pipe.shape != section::Shape::pipe && r.pipe.shape != section::Shape::round)
        in.refuse({"pipe", "A handrail is of pipe or round bar here.", "pipe 1.66 x 0.14 in"});
    const auto rake = rake_of(r.steps);
    if (!rake.ok())
        in.refuse_at("riser", rake.refusal());
    else
        r.rake = *rake;
    return r;
}

void add_parts(Made& made, const Rail& r, const std::string& mark) {
    const std::string half = quantity::print(r.rake.angle / 2.0, {});
    const std::string ended = r.ends == Ends::returned ? "far end 45 deg" : "far end square";
    const std::string knuckled = "mitred " + half + " at the knuckle, " + ended;
    const Piece piece{"rail", "R", "handrail, sloping"};
    // Without a level piece both its ends are far ends.
    const bool has_level = r.top > Length{};
    const Length upper = has_level ? r.knuckle() : r.corner();
    const Length sloping = r.rake.along(r.run + r.bottom) + upper + r.corner();
    job::Part part = straight_part(piece, mark, r.grade, r.pipe, sloping, r.count);
    cut_ends(part);
    add_note(part, (has_level ? knuckled : "each " + ended) + "; long point to long point");
    add(made, piece, std::move(part));
    if (has_level) {
        const Piece level{"top-extension", "E", "handrail, level at the top"};
        job::Part on =
            straight_part(level, mark, r.grade, r.pipe, r.top + r.knuckle() + r.corner(), r.count);
        cut_ends(on);
        add_note(on, knuckled + "; long point to long point");
        add(made, level, std::move(on));
    }
    if (r.ends == Ends::open)
        return;
    const Piece back{"return", "W", "return to the wall"};
    job::Part part_back =
        straight_part(back, mark, r.grade, r.pipe, r.wall_clear + r.od(), 2 * r.count);
    cut_ends(part_back);
    add_note(part_back, "mitred 45 deg at one end; long point to the square end at the wall");
    add(made, back, std::move(part_back));
}

void hold_rules(Made& made, const Rail& r) {
    const RuleNames& names = k_rules[static_cast<int>(r.rule)];
    hold(made.rules, names.height, "height of the rail over the nosing line", r.height);
    hold(made.rules, names.wall, "rail to the wall", r.wall_clear);
    hold(made.rules, "ada-round-grip", "outside of the rail, for a hand", r.od());
    if (r.rule != Rule::ada)
        return;
    hold(made.rules, "ada-extension", "level on beyond the top nosing", r.top);
    hold(made.rules,
         {"one-tread-on",
          r.steps.run,
          false,
          false,
          "ada-505",
          base::Evidence::from_memory,
          "At the slope, one tread beyond the last nosing."},
         "on beyond the bottom nosing, level",
         r.bottom);
}

void add_figures(Made& made, const Rail& r) {
    const Length axis = r.rake.along(r.run + r.bottom);
    const double brackets = std::ceil((axis + r.top) / r.spacing - 1e-9) + 1.0;
    made.figures = {{"slope", r.rake.angle},
                    {"axis along the slope", axis},
                    {"mitre of the knuckle, each side", r.rake.angle / 2.0},
                    {"brackets on each rail", whole(static_cast<int>(brackets))}};
    for (const auto& working :
         {layout::slope_working(r.steps), layout::along_rail_working(r.run + r.bottom, r.steps)})
        if (working.ok())
            made.workings.push_back(*working);
}

void draw(Made& made, const Rail& r, const std::string& mark) {
    Elevation& out = made.elevation;
    const Length od = r.od();
    const Length high = r.run * r.rake.tangent; // of the top nosing over the bottom one
    const Length low = r.bottom * r.rake.tangent;
    out.outlines.push_back(marked(
        box({-r.bottom, r.height - od - low}, r.run + r.bottom, r.rake.upright(od), r.rake.tangent),
        mark + "-R"));
    if (r.top > Length{})
        out.outlines.push_back(marked(box({r.run, r.height - od + high}, r.top, od), mark + "-E"));
    const Length zero;
    out.outlines.push_back(
        line({{-r.bottom, zero}, {zero, zero}, {r.run, high}, {r.run + r.top, high}}));
    // Far enough under the floor that a figure finds room between.
    const Length under = -(low + r.height / 3.0);
    out.spans = {{{zero, under}, {r.run, under}, "run"},
                 {{-r.bottom, under}, {zero, under}, ""},
                 {{r.run, high + r.height * 1.125}, {r.run + r.top, high + r.height * 1.125}, ""}};
    out.description = "Handrail up a flight, level beyond the top nosing.";
}

Result<Made> make_handrail(Inputs& in, const std::string& mark) {
    const Rail r = read(in);
    if (in.failed())
        return in.refusal();
    Made made;
    add_parts(made, r, mark);
    hold_rules(made, r);
    add_figures(made, r);
    made.cautions.emplace_back(k_code_governs);
    draw(made, r, mark);
    return made;
}

} // namespace

const Kind k_handrail{"handrail",
                      "Handrail up a flight",
                      "A rail of pipe on brackets, with its extensions and returns.",
                      k_inputs,
                      make_handrail};

} // namespace treadle::assembly
