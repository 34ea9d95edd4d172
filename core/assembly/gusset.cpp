// A right-angled gusset: two legs, the long edge across, and the corner clipped clear of a weld.
//
// Clip      c x c at 45 degrees: edge c sqrt 2; at least the weld's leg and 1/8 in or 3 mm

#include <cmath>
#include <numbers>

#include "assembly/inputs.h"
#include "assembly/kinds.h"
#include "assembly/pieces.h"
#include "assembly/rule_lines.h"
#include "layout/frame.h"

namespace treadle::assembly {

namespace {

using base::Refusal;
using base::Result;
using calc::InputKind;

constexpr calc::InputSpec k_inputs[] = {
    {"leg_a", InputKind::length, true, "along the bar that it is cut from", "", "8 in"},
    {"leg_b", InputKind::length, true, "across: the width of that bar", "", "6 in"},
    {"thickness", InputKind::length, true, "of the bar", "", "1/4 in"},
    {"clip",
     InputKind::length,
     false,
     "off the square corner, each way; none if not given",
     "",
     "1/2 in"},
    {"weld", InputKind::length, false, "leg of the fillet weld that the clip clears", "", "1/4 in"},
    {"count", InputKind::count, false, "of gussets; 1 if not given", "", "4"},
    {"grade", InputKind::material, true, "of the bar", "", "A36"},
};

struct Gusset {
    Length leg_a, leg_b, thickness, clip, weld, room;
    int count = 1;
    std::string grade;
};

Gusset read(Inputs& in) {
    Gusset g;
    g.leg_a = in.size("leg_a");
    g.leg_b = in.size("leg_b");
    g.thickness = in.size("thickness");
    g.clip = in.size("clip");
    g.weld = in.size("weld");
    g.room = in.usual(1.0 / 8.0, 3.0);
    g.count = in.count_or("count", 1, 10000, 1);
    g.grade = in.grade("grade");
    if (in.failed())
        return g;
    if (!(g.clip < std::min(g.leg_a, g.leg_b)))
        in.refuse({"clip", "So large a clip takes a whole leg.", ""});
    if (in.has("weld") && !in.has("clip"))
        in.refuse({"weld", "Only a clipped corner clears a weld.", "clip first"});
    return g;
}

void hold_clip(Made& made, const Gusset& g) {
    if (g.clip == Length{})
        return;
    made.figures.push_back({"edge of the clip", g.clip * std::numbers::sqrt2});
    if (g.weld > Length{})
        hold(made.rules,
             {"clip-over-weld",
              g.weld + g.room,
              false,
              false,
              "common-practice-layout",
              base::Evidence::common_practice,
              ""},
             "clip of the square corner",
             g.clip);
}

void draw(Made& made, const Gusset& g, const std::string& mark) {
    Elevation& out = made.elevation;
    const Length none{};
    std::vector<Spot> spots{{g.clip, none}, {g.leg_a, none}, {none, g.leg_b}};
    if (g.clip > none)
        spots.push_back({none, g.clip});
    out.outlines.push_back({std::move(spots), Shade::steel, mark + "-G"});
    const Length off = g.leg_b / 8.0;
    out.spans = {{{none, -off}, {g.leg_a, -off}, ""}, {{-off, none}, {-off, g.leg_b}, ""}};
    out.description = "Right-angled gusset, its square corner at the lower left.";
}

Result<Made> make_gusset(Inputs& in, const std::string& mark) {
    const Gusset g = read(in);
    if (in.failed())
        return in.refusal();
    const auto edge = layout::gusset_edge_working(g.leg_a, g.leg_b);
    const auto angle = layout::gusset_angle_working(g.leg_a, g.leg_b);
    if (!edge.ok() || !angle.ok())
        return edge.ok() ? angle.refusal() : edge.refusal();
    const Angle at_a = std::get<Angle>(angle->result.value);
    Made made;
    const Piece piece{"gusset", "G", "gusset"};
    const Section section{section::Shape::flat, g.leg_b, {}, g.thickness, {}, {}, ""};
    job::Part part = straight_part(piece, mark, g.grade, section, g.leg_a, g.count);
    cut_ends(part, Angle{}, degrees(90.0) - at_a);
    add_note(part, "cut corner to corner; the next one is turned and shares the cut");
    if (g.clip > Length{})
        add_note(part, "square corner clipped at 45 degrees, as the layout has it");
    add(made, piece, std::move(part));
    made.figures = {{"long edge", std::get<Length>(edge->result.value)}, {"angle at leg a", at_a}};
    hold_clip(made, g);
    made.workings = {*edge, *angle};
    made.cautions.emplace_back("Sharp points: take them off before anybody carries it.");
    made.cautions.emplace_back(k_code_governs);
    draw(made, g, mark);
    return made;
}

} // namespace

const Kind k_gusset{"gusset",
                    "Gusset",
                    "A right-angled plate cut corner to corner, its square corner clipped.",
                    k_inputs,
                    make_gusset};

} // namespace treadle::assembly
