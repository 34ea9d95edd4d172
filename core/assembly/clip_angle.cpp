// A clip angle: a short angle with one line of bolts in each leg at its usual gage.

#include "assembly/bolted.h"
#include "assembly/kinds.h"
#include "assembly/pieces.h"
#include "assembly/rule_lines.h"
#include "layout/angle_gage.h"

namespace treadle::assembly {

namespace {

using base::Refusal;
using base::Result;
using calc::InputKind;

constexpr calc::InputSpec k_inputs[] = {
    {"angle", InputKind::section, true, "the bar", "", "angle 3 x 3 x 1/4 in"},
    {"bolt", InputKind::bolt, true, "in both legs", "", "5/8 in"},
    {"bolts", InputKind::count, true, "in each leg", "", "2"},
    {"spacing", InputKind::length, true, "of the bolts", "", "3 in"},
    {"end", InputKind::length, true, "hole centre to the ends", "", "1-1/4 in"},
    {"gage_a",
     InputKind::length,
     false,
     "heel to the line in leg a; the usual gage if not given",
     "",
     "1-3/4 in"},
    {"gage_b",
     InputKind::length,
     false,
     "heel to the line in leg b; the usual gage if not given",
     "",
     "1-3/4 in"},
    {"edge", InputKind::word, false, "how the ends are cut", "sheared|rolled"},
    {"count", InputKind::count, false, "of clips; 1 if not given", "", "4"},
    {"grade", InputKind::material, true, "of the angle", "", "A36"},
};

struct Clip {
    Section angle;
    BoltChoice bolt;
    int bolts = 1, count = 1;
    Length spacing, end, gage_a, gage_b;
    std::string grade;
    [[nodiscard]] Length length() const { return 2.0 * end + spacing * (bolts - 1.0); }
};

Length gage(Inputs& in, const char* name, Length leg) {
    if (in.has(name) || in.failed())
        return in.size(name);
    const auto usual = layout::angle_gages(leg);
    if (usual.ok())
        return usual->single;
    in.refuse(
        {name, "No usual gage is known for a leg of this size: give one.", usual.refusal().detail});
    return {};
}

Clip read(Inputs& in) {
    Clip c;
    c.angle = in.section("angle");
    c.bolt = read_bolt(in, true);
    c.bolts = in.count_or("bolts", 1, 20, 1);
    c.spacing = in.size("spacing");
    c.end = in.size("end");
    c.count = in.count_or("count", 1, 10000, 1);
    c.grade = in.grade("grade");
    if (!in.failed() && c.angle.shape != section::Shape::angle)
        in.refuse({"angle", "A clip is cut from an angle.", "angle 3 x 3 x 1/4 in"});
    c.gage_a = gage(in, "gage_a", c.angle.width);
    c.gage_b = gage(in, "gage_b", c.angle.height);
    if (in.failed())
        return c;
    const Length half = c.bolt.hole.width / 2.0;
    if (c.bolts > 1 && !(c.spacing > c.bolt.hole.width))
        in.refuse({"spacing", "The holes run into each other.", ""});
    if (!(c.end > half))
        in.refuse({"end", "The holes run off the end.", ""});
    for (const auto& [name, line, leg] :
         {std::tuple{"gage_a", c.gage_a, c.angle.width}, {"gage_b", c.gage_b, c.angle.height}})
        if (!(line > half + c.angle.thickness) || !(line + half < leg))
            in.refuse({name, "The holes leave the flat of the leg.", "clear of heel and toe"});
    return c;
}

void draw(Made& made, const Clip& c, const std::string& mark) {
    Elevation& out = made.elevation;
    const Length gap = c.angle.width / 3.0;
    const std::pair<Length, Length> legs[] = {{c.angle.width, c.gage_a},
                                              {c.angle.height, c.gage_b}};
    Length low;
    for (const auto& [leg, line_at] : legs) {
        out.outlines.push_back(marked(box({Length{}, low}, c.length(), leg), mark + "-CA"));
        out.outlines.push_back(
            line({{Length{}, low + c.angle.thickness}, {c.length(), low + c.angle.thickness}}));
        for (int i = 0; i < c.bolts; ++i)
            out.rounds.push_back({{c.end + c.spacing * static_cast<double>(i), low + line_at},
                                  c.bolt.hole.width / 2.0,
                                  true});
        out.spans.push_back({{-(gap / 2.0), low}, {-(gap / 2.0), low + line_at}, "gage"});
        low += leg + gap;
    }
    out.spans.push_back({{Length{}, -(gap / 2.0)}, {c.length(), -(gap / 2.0)}, ""});
    out.description =
        "Clip angle, both legs seen from outside, " + std::to_string(c.bolts) + " holes in each.";
}

Result<Made> make_clip(Inputs& in, const std::string& mark) {
    const Clip c = read(in);
    if (in.failed())
        return in.refusal();
    Made made;
    const Piece piece{"clip", "CA", "clip angle"};
    job::Part part = straight_part(piece, mark, c.grade, c.angle, c.length(), c.count);
    cut_ends(part);
    const Length pitch = c.bolts > 1 ? c.spacing : Length{};
    for (const auto& [face, line_at] :
         {std::pair{section::Face::leg_a, c.gage_a}, {section::Face::leg_b, c.gage_b}}) {
        job::Punch punch = round_holes(c.bolt, {c.end, line_at, c.bolts, 1, pitch, {}});
        punch.face = face;
        part.operations.emplace_back(punch);
    }
    add(made, piece, std::move(part));
    show_hole(made, c.bolt);
    made.figures.push_back({"length", c.length()});
    hold_edge(made, c.bolt, "hole to the end", c.end);
    BoltChoice toe = c.bolt;
    toe.edge = layout::EdgeKind::rolled; // a rolled bar's own edge
    hold_edge(made, toe, "hole to the toe of leg a", c.angle.width - c.gage_a);
    hold_edge(made, toe, "hole to the toe of leg b", c.angle.height - c.gage_b);
    if (c.bolts > 1)
        hold_spacing(made, c.bolt, "holes apart", c.spacing);
    if (const auto working = layout::angle_gage_working(c.angle.width, 0); working.ok())
        made.workings.push_back(*working);
    made.cautions = {k_code_governs};
    draw(made, c, mark);
    return made;
}

} // namespace

const Kind k_clip_angle{"clip-angle",
                        "Clip angle",
                        "A short angle with a line of bolts at the gage in each leg.",
                        k_inputs,
                        make_clip};

} // namespace treadle::assembly
