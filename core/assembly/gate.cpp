// A gate between two posts: stiles, rails, pickets and a brace for one leaf or two.
//
// Leaf     (opening - hinge gaps - latch gap) / leaves                     card gate-leaf
// Stiles   as high as the leaf; rails between them: leaf - 2 stiles
// Brace    from corner to corner inside the frame: sqrt(w^2 + h^2)         card gusset

#include <algorithm>

#include "assembly/cards.h"
#include "assembly/infill.h"
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
    {"opening", InputKind::length, true, "post face to post face", "", "10 ft"},
    {"leaves", InputKind::word, false, "how many", "one|two"},
    {"height", InputKind::length, true, "of the leaf", "", "68 in"},
    {"bottom_gap", InputKind::length, true, "grade to the leaf", "", "2 in"},
    {"hinge_gap",
     InputKind::length,
     false,
     "leaf to hinge post; 1 in or 25 mm if not given",
     "",
     "1 in"},
    {"latch_gap",
     InputKind::length,
     false,
     "leaf to latch post or leaf; 1 in or 25 mm if not given",
     "",
     "1 in"},
    {"frame", InputKind::section, true, "tube, square or pipe", "", "tube 1-1/2 x 1/8 in"},
    {"picket", InputKind::section, true, "round, square or tube", "", "square 3/4 in"},
    {"brace", InputKind::word, false, "a diagonal of flat bar", "none|diagonal"},
    {"brace_bar", InputKind::section, false, "of the diagonal", "", "flat 1-1/4 x 1/4 in"},
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
    {"grade", InputKind::material, true, "of bars", "", "A36"},
    {"frame_grade",
     InputKind::material,
     false,
     "of the frame; as the bars if not given",
     "",
     "A500-B"},
};

constexpr base::CardSymbol k_symbols[] = {{"O", "opening, post face to post face"},
                                          {"n", "leaves"},
                                          {"h", "gap at each hinge post"},
                                          {"l", "gap at the latch"},
                                          {"w", "width of a leaf"}};

struct Gate {
    Length opening, height, bottom_gap, hinge_gap, latch_gap, limit, margin;
    int leaves = 1;
    Section frame, picket, brace; ///< brace without a width: none
    Length face, picket_width;
    std::string grade, frame_grade;
    // Laid out:
    Length leaf, inner_width, inner_height;
    InfillMade infill;
};

Gate read(Inputs& in) {
    Gate g;
    g.opening = in.size("opening");
    g.leaves = in.choice("leaves") + 1;
    g.height = in.size("height");
    g.bottom_gap = in.place_or("bottom_gap", Length{});
    g.hinge_gap = in.place_or("hinge_gap", in.usual(1.0, 25.0));
    g.latch_gap = in.place_or("latch_gap", in.usual(1.0, 25.0));
    g.limit = in.size_or("gap", in.usual(4.0, 100.0));
    g.margin = in.place_or("margin", in.usual(1.0 / 8.0, 3.0));
    g.frame = in.section("frame");
    g.picket = in.section("picket");
    const bool braced = in.choice("brace") == 1;
    g.brace = in.section("brace_bar");
    g.grade = in.grade("grade");
    g.frame_grade = in.grade("frame_grade", g.grade);
    if (in.failed())
        return g;
    if (braced != in.has("brace_bar"))
        in.refuse({"brace_bar", "A diagonal goes with its bar.", "brace diagonal, and a flat"});
    if (braced && g.brace.shape != section::Shape::flat)
        in.refuse({"brace_bar", "The diagonal is a flat bar here.", "flat 1-1/4 x 1/4 in"});
    if (g.frame.shape != section::Shape::square_tube && g.frame.shape != section::Shape::square &&
        g.frame.shape != section::Shape::pipe)
        in.refuse({"frame", "A leaf is framed with tube, square bar or pipe here.", ""});
    if (!(g.limit > g.margin))
        in.refuse({"margin", "So wide a margin leaves nothing of the gap.", ""});
    g.face = rail_depth(g.frame);
    g.picket_width = in.failed() ? Length{} : picket_width(in, "picket", g.picket);
    return g;
}

std::optional<Refusal> lay_out(Gate& g) {
    const double leaves = g.leaves;
    g.leaf = (g.opening - g.hinge_gap * leaves - g.latch_gap) / leaves;
    g.inner_width = g.leaf - 2.0 * g.face;
    g.inner_height = g.height - 2.0 * g.face;
    if (!(g.inner_width > Length{}))
        return Refusal{"opening", "Frame and gaps leave no room in this opening.", ""};
    if (!(g.inner_height > Length{}))
        return Refusal{"height", "The frame leaves no room in this height.", ""};
    auto made = infill({g.inner_width, g.picket_width, g.limit - g.margin, {}, {}});
    if (!made.ok())
        return made.refusal();
    g.infill = std::move(made).value();
    return std::nullopt;
}

void add_parts(Made& made, const Gate& g, const std::string& mark) {
    const auto add_bar = [&](const Piece& piece,
                             const std::string& grade,
                             const Section& section,
                             Length length,
                             int count) {
        job::Part part = straight_part(piece, mark, grade, section, length, count);
        cut_ends(part);
        add(made, piece, std::move(part));
    };
    add_bar({"stile", "S", "gate stile"}, g.frame_grade, g.frame, g.height, 2 * g.leaves);
    add_bar({"rail", "R", "gate rail"}, g.frame_grade, g.frame, g.inner_width, 2 * g.leaves);
    if (g.infill.count > 0)
        add_bar({"picket", "K", "gate picket"},
                g.grade,
                g.picket,
                g.inner_height,
                g.infill.count * g.leaves);
    if (g.brace.width == Length{})
        return;
    const auto edge = layout::gusset_edge_working(g.inner_width, g.inner_height);
    if (!edge.ok())
        return;
    made.workings.push_back(*edge);
    add_bar({"brace", "D", "gate diagonal"},
            g.grade,
            g.brace,
            std::get<Length>(edge->result.value),
            g.leaves);
    add_note(made.parts.back().part, "corner to corner inside the frame; trim its ends to fit");
}

void draw(Made& made, const Gate& g, const std::string& mark) {
    Elevation& out = made.elevation;
    Length x = g.hinge_gap;
    for (int leaf = 0; leaf < g.leaves; ++leaf, x += g.leaf + g.latch_gap) {
        const Length low = g.bottom_gap;
        for (const Length at : {x, x + g.leaf - g.face})
            out.outlines.push_back(marked(box({at, low}, g.face, g.height), mark + "-S"));
        for (const Length at : {low, low + g.height - g.face})
            out.outlines.push_back(
                marked(box({x + g.face, at}, g.inner_width, g.face), mark + "-R"));
        for (const Length centre : g.infill.marks)
            out.outlines.push_back(
                marked(box({x + g.face + centre - g.picket_width / 2.0, low + g.face},
                           g.picket_width,
                           g.inner_height,
                           0.0,
                           Shade::bar),
                       mark + "-K"));
        if (g.brace.width > Length{}) {
            // Up towards the latch: the brace stands in compression on the lower hinge.
            const bool left = leaf == 0;
            const Length foot = left ? x + g.face : x + g.leaf - g.face;
            const Length head = left ? x + g.leaf - g.face : x + g.face;
            out.outlines.push_back(line({{foot, low + g.face}, {head, low + g.height - g.face}}));
        }
    }
    out.outlines.push_back(line({{Length{}, Length{}}, {g.opening, Length{}}}));
    out.spans = {
        {{Length{}, -(g.height / 10.0)}, {g.opening, -(g.height / 10.0)}, "opening"},
        {{-(g.height / 10.0), g.bottom_gap}, {-(g.height / 10.0), g.bottom_gap + g.height}, ""}};
    out.description = g.leaves == 1 ? "Gate with one leaf." : "Gate with two leaves.";
}

Result<Made> make_gate(Inputs& in, const std::string& mark) {
    Gate g = read(in);
    if (in.failed())
        return in.refusal();
    if (auto fault = lay_out(g))
        return *fault;
    Made made;
    add_parts(made, g, mark);
    const Bound gap{"picket-gap", g.limit, true, true};
    hold(made.rules, gap, "opening between pickets and at stiles", g.infill.largest_gap);
    hold(made.rules, gap, "opening at the hinges", g.hinge_gap);
    hold(made.rules, gap, "opening at the latch", g.latch_gap);
    hold(made.rules, {"fence-bottom-gap", inches(2.0)}, "gap under the leaf", g.bottom_gap);
    made.figures = {{"width of a leaf", g.leaf},
                    {"clear inside the frame", g.inner_width},
                    {"pickets in a leaf", whole(g.infill.count)},
                    {"clear gap", g.infill.gap}};
    made.workings.push_back(
        {&k_gate_leaf_card,
         {{"O", g.opening}, {"n", whole(g.leaves)}, {"h", g.hinge_gap}, {"l", g.latch_gap}},
         {"w", g.leaf},
         ""});
    if (const auto working = layout::picket_working(g.infill.question); working.ok())
        made.workings.push_back(*working);
    made.cautions = {k_code_governs,
                     "Hinges, latch and stops are not looked at here; a gate that is driven by a "
                     "motor has rules of its own."};
    draw(made, g, mark);
    return made;
}

} // namespace

const base::FormulaCard k_gate_leaf_card{"gate-leaf",
                                         "Width of a gate's leaf",
                                         "w = (O - n h - l) / n",
                                         k_symbols,
                                         "one latch; the rails are two stiles shorter",
                                         "derived-geometry",
                                         base::Evidence::derived,
                                         ""};

const Kind k_gate{"gate",
                  "Gate",
                  "Stiles, rails, pickets and a brace for one leaf or two in an opening.",
                  k_inputs,
                  make_gate};

} // namespace treadle::assembly
