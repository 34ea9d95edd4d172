// Rings, hooks and eyes: the bar that they take, and whether they turn too tightly.
//
// Formula   process/bar_length.h, cards ring-length and hook-length
// Machine   no station of a job rolls: the part is a straight bar, and its note says what follows

#include "process/bar_length.h"

#include <cmath>
#include <numbers>

#include "assembly/inputs.h"
#include "assembly/kinds.h"
#include "assembly/pieces.h"
#include "assembly/rule_lines.h"

namespace treadle::assembly {

namespace {

using base::Refusal;
using base::Result;
using calc::InputKind;
using section::Shape;

enum class Given { inside, outside };
enum class Way { easy, hard };

constexpr calc::InputSpec k_bar[] = {
    {"bar", InputKind::section, true, "round, square or flat", "", "round 1/2 in"},
    {"diameter", InputKind::length, true, "of the turn", "", "8 in"},
    {"given", InputKind::word, false, "which diameter", "inside|outside"},
    {"trim",
     InputKind::length,
     false,
     "more at each end, for what does not bend; none if not given",
     "",
     "1 in"},
    {"count", InputKind::count, false, "of pieces; 1 if not given", "", "6"},
    {"grade", InputKind::material, true, "of the bar", "", "A36"},
};
constexpr calc::InputSpec k_ring_only[] = {
    {"way", InputKind::word, false, "of a flat: over its thickness, or its width", "easy|hard"},
    {"gap", InputKind::length, false, "left for the weld; none if not given", "", "1/16 in"},
};
constexpr calc::InputSpec k_hook_only[] = {
    {"shank", InputKind::length, true, "straight, to where the turn begins", "", "6 in"},
    {"tail", InputKind::length, false, "straight, behind the turn; none if not given", "", "2 in"},
};
constexpr calc::InputSpec k_eye_only[] = {
    {"shank", InputKind::length, true, "straight, to where the turn begins", "", "6 in"},
};
constexpr auto k_ring_inputs = joined(k_ring_only, k_bar);
constexpr auto k_hook_inputs = joined(k_hook_only, k_bar);
constexpr auto k_eye_inputs = joined(k_eye_only, k_bar);

struct Turned {
    Section bar;
    Length inside, deep, trim;
    double turns = 1.0;
    bool hard = false;
    int count = 1;
    std::string grade;
};

Turned read(Inputs& in, double turns, bool can_be_flat) {
    Turned t;
    t.turns = turns;
    t.bar = in.section("bar");
    t.hard = can_be_flat && in.word<Way>("way") == Way::hard;
    const Length diameter = in.size("diameter");
    const auto given = in.word<Given>("given");
    t.trim = in.place_or("trim", Length{});
    t.count = in.count_or("count", 1, 10000, 1);
    t.grade = in.grade("grade");
    if (in.failed())
        return t;
    const bool flat = t.bar.shape == Shape::flat;
    if (t.bar.shape != Shape::round && t.bar.shape != Shape::square && !(flat && can_be_flat))
        in.refuse({"bar",
                   can_be_flat ? "Rings are of round, square or flat bar here."
                               : "Hooks and eyes are of round or square bar here.",
                   "round 1/2 in"});
    if (t.hard && !flat)
        in.refuse({"way", "Only a flat has an easy and a hard way.", ""});
    t.deep = flat && !t.hard ? t.bar.thickness : t.bar.width;
    t.inside = given == Given::inside ? diameter : diameter - 2.0 * t.deep;
    if (!(t.inside > Length{}))
        in.refuse({"diameter", "The bar leaves nothing inside.", ""});
    return t;
}

void hold_radius(Made& made, const Turned& t) {
    const Length radius = t.inside / 2.0;
    const char* source = "common-practice-round-bending";
    if (t.hard)
        hold(made.rules,
             {"hard-way-radius",
              t.deep * 4.0,
              false,
              false,
              source,
              base::Evidence::common_practice,
              "Cold, over a flat's width: from 3 to 4 widths in practice; the careful one."},
             "inside radius, hard way",
             radius);
    else if (t.bar.shape != Shape::flat)
        hold(made.rules,
             {"bar-radius",
              t.deep * 1.5,
              false,
              false,
              source,
              base::Evidence::from_memory,
              "Mild steel cold: 1 to 1.5 bar; harder steel asks 2 and more."},
             "inside radius of the bar",
             radius);
    hold(made.rules,
         {"neutral-line-middle",
          t.deep * 5.0,
          false,
          false,
          source,
          base::Evidence::common_practice,
          "Tighter, the neutral line moves inward and the bar comes out long: cut one and try."},
         "inside radius for this formula",
         radius);
}

void draw(Made& made, const Turned& t, Length shank) {
    Elevation& out = made.elevation;
    std::vector<Spot> spots;
    const Length middle = (t.inside + t.deep) / 2.0;
    if (shank > Length{})
        spots.push_back({middle, -shank});
    const int steps = t.turns < 1.0 ? 24 : 48;
    for (int i = 0; i <= steps; ++i) {
        const double angle = 2.0 * std::numbers::pi * t.turns * i / steps;
        spots.push_back({middle * std::cos(angle), middle * std::sin(angle)});
    }
    out.outlines.push_back(line(std::move(spots)));
    out.rounds.push_back({{}, t.inside / 2.0, true});
    out.spans = {{{-(t.inside / 2.0), {}}, {t.inside / 2.0, {}}, "inside"}};
    if (shank > Length{})
        out.spans.push_back({{middle * 1.4, -shank}, {middle * 1.4, {}}, "shank"});
    out.description = "Middle line of the bent bar.";
}

/// What the formula says, less what is left open.
struct Developed {
    Working working;
    Length open;
    Length shank;
};

Result<Made>
finish(const Turned& t, const Piece& piece, const std::string& mark, const Developed& developed) {
    const Length length = std::get<Length>(developed.working.result.value) - developed.open;
    if (!(length > Length{}))
        return Refusal{"gap", "The gap is longer than the ring.", ""};
    Made made;
    job::Part part = straight_part(piece, mark, t.grade, t.bar, length, t.count);
    cut_ends(part);
    add_note(part,
             "bent round a former or in rolls after cutting; the plan looks at the cut alone");
    add(made, piece, std::move(part));
    made.figures = {{"inside diameter", t.inside}, {"outside diameter", t.inside + 2.0 * t.deep}};
    made.workings.push_back(developed.working);
    hold_radius(made, t);
    made.cautions = {
        "Not for lifting: a hook or eye that lifts is rated, marked and tested by its maker.",
        "This machine has no tool that rolls: the bend is work beside it."};
    draw(made, t, developed.shank);
    return made;
}

Result<Made> make_ring(Inputs& in, const std::string& mark) {
    const Turned t = read(in, 1.0, true);
    const Length gap = in.place_or("gap", Length{});
    if (in.failed())
        return in.refusal();
    const process::Ring ring{t.inside,
                             process::Face::inside,
                             t.deep,
                             t.deep / 2.0,
                             degrees(360.0),
                             2.0 * t.trim,
                             t.hard};
    const auto length = process::ring_length_working(ring);
    if (!length.ok())
        return Refusal{"diameter", length.refusal().reason, length.refusal().detail};
    return finish(t, {"ring", "R", "ring"}, mark, {*length, gap, {}});
}

Result<Made> make_hooked(Inputs& in, const std::string& mark, const Piece& piece, Angle turned) {
    const Turned t = read(in, turned.in_degrees() / 360.0, false);
    const Length shank = in.size("shank");
    const Length tail = in.place_or("tail", Length{});
    if (in.failed())
        return in.refusal();
    const process::Hook hook{t.deep, t.inside, shank + t.trim, tail + t.trim, turned};
    const auto length = process::hook_length_working(hook);
    if (!length.ok())
        return Refusal{"diameter", length.refusal().reason, length.refusal().detail};
    return finish(t, piece, mark, {*length, {}, shank});
}

Result<Made> make_hook(Inputs& in, const std::string& mark) {
    return make_hooked(in, mark, {"hook", "K", "hook"}, degrees(180.0));
}

Result<Made> make_eye(Inputs& in, const std::string& mark) {
    return make_hooked(in, mark, {"eye", "E", "eye"}, degrees(360.0));
}

} // namespace

const Kind k_ring{
    "ring", "Ring", "The bar for a ring of round, square or flat bar.", k_ring_inputs, make_ring};
const Kind k_hook{"hook", "Hook", "The bar for a hook of half a turn.", k_hook_inputs, make_hook};
const Kind k_eye{"eye", "Eye", "The bar for an eye of a full turn.", k_eye_inputs, make_eye};

} // namespace treadle::assembly
