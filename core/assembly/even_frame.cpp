// A frame of equal sides: three to twelve of them, mitred, or notched and folded from one bar.
//
// Corner    inside angle A = 180 - 360 / n, turned through d = 360 / n
// Across    n even: s / tan(180 / n), heel to heel                      card even-frame-across

#include <cmath>
#include <numbers>

#include "assembly/cards.h"
#include "assembly/folded.h"
#include "assembly/inputs.h"
#include "assembly/kinds.h"
#include "assembly/pieces.h"
#include "layout/frame.h"

namespace treadle::assembly {

namespace {

using base::Refusal;
using base::Result;
using calc::InputKind;
using section::Shape;

enum class Corner { mitre, notch };

constexpr calc::InputSpec k_inputs[] = {
    {"sides", InputKind::count, true, "three to twelve", "", "6"},
    {"side", InputKind::length, true, "outside, or along the heel", "", "12 in"},
    {"corner", InputKind::word, true, "how the corners are made", "mitre|notch-and-fold"},
    {"bar",
     InputKind::section,
     true,
     "angle, heel outside, or flat bar",
     "",
     "angle 2 x 2 x 1/4 in"},
    {"k", InputKind::ratio, false, "neutral line of folded corners; 0.5 if not given", "", "0.33"},
    {"radius", InputKind::length, false, "inside, of folded corners", "", "1/4 in"},
    {"count", InputKind::count, false, "of frames; 1 if not given", "", "2"},
    {"grade", InputKind::material, true, "of the bar", "", "A36"},
};

constexpr base::CardSymbol k_symbols[] = {
    {"s", "side, outside"}, {"n", "sides, an even number"}, {"D", "across two opposite sides"}};

struct Question {
    int sides = 6;
    Length side;
    Corner corner = Corner::mitre;
    Section bar;
    double k = 0.5;
    Length radius;
    int count = 1;
    std::string grade;
    [[nodiscard]] Angle turn() const { return degrees(360.0 / sides); }
    [[nodiscard]] Angle inside() const { return degrees(180.0 - 360.0 / sides); }
};

FoldedBar folded(const Question& q) {
    return {q.bar,
            q.grade,
            std::vector<Length>(static_cast<std::size_t>(q.sides), q.side),
            q.turn(),
            q.turn() / 2.0,
            q.radius,
            q.k,
            q.count};
}

Question read(Inputs& in) {
    Question q;
    q.sides = in.count_or("sides", 3, 12, 6);
    q.side = in.size("side");
    q.corner = in.word<Corner>("corner");
    q.bar = in.section("bar");
    q.k = in.ratio_or("k", 0.5);
    q.radius = in.place_or("radius", Length{});
    q.count = in.count_or("count", 1, 1000, 1);
    q.grade = in.grade("grade");
    if (in.failed())
        return q;
    if (q.bar.shape != Shape::angle && q.bar.shape != Shape::flat)
        in.refuse({"bar", "Frames are of angle or flat bar here.", "angle 2 x 2 x 1/4 in"});
    if (q.corner == Corner::notch && q.bar.shape != Shape::angle)
        in.refuse({"bar", "Only an angle is notched and folded.", "angle 2 x 2 x 1/4 in"});
    for (const char* name : {"k", "radius"})
        if (in.has(name) && q.corner != Corner::notch)
            in.refuse({name, "Only a folded frame asks for this.", ""});
    return q;
}

/// As many pieces as sides, long point to long point along the outside.
void make_mitred(Made& made, const Question& q, const std::string& mark) {
    const Piece piece{"side", "S", "frame side"};
    job::Part part = straight_part(piece, mark, q.grade, q.bar, q.side, q.sides * q.count);
    cut_ends(part, q.turn() / 2.0, q.turn() / 2.0);
    add_note(part, "long point to long point");
    add(made, piece, std::move(part));
    if (const auto cut = layout::mitre_cut_working(q.bar.width, q.inside()); cut.ok())
        made.workings.push_back(*cut);
}

/// One bar of angle, a notch at every corner but the one that closes.
std::optional<Refusal> make_folded(Made& made, const Question& q, const std::string& mark) {
    const auto bar = add_folded(made, folded(q), mark);
    if (!bar.ok())
        return renamed_for_frame(bar.refusal(), "side");
    made.marks.push_back({"middles of the notches, from the start", bar->middles});
    made.figures.push_back({"depth of a notch", bar->notch.depth});
    made.figures.push_back({"width of a notch at the toe", bar->notch.width});
    return std::nullopt;
}

void add_across(Made& made, const Question& q) {
    if (q.sides % 2 != 0)
        return;
    const Length across = q.side / std::tan(std::numbers::pi / q.sides);
    made.figures.push_back({"across two sides, outside", across});
    made.workings.push_back(
        {&k_even_frame_across_card, {{"s", q.side}, {"n", whole(q.sides)}}, {"D", across}, ""});
}

void draw(Made& made, const Question& q, Length setback) {
    Elevation& out = made.elevation;
    const double turn = q.turn().in_radians();
    const Length outer = q.side / (2.0 * std::sin(turn / 2.0));
    const Length inner = (q.side - 2.0 * setback) / (2.0 * std::sin(turn / 2.0));
    // The first side lies level at the bottom.
    const auto corner = [&](Length radius, int i) {
        const double at = -std::numbers::pi / 2.0 + turn * (i - 0.5);
        return Spot{radius * std::cos(at), radius * std::sin(at)};
    };
    for (int i = 0; i < q.sides; ++i)
        out.outlines.push_back(
            {{corner(outer, i), corner(outer, i + 1), corner(inner, i + 1), corner(inner, i)},
             Shade::steel,
             ""});
    const Length below = corner(outer, 0).y - q.side / 8.0;
    out.spans = {{{corner(outer, 0).x, below}, {corner(outer, 1).x, below}, ""}};
    out.description = "Frame of " + std::to_string(q.sides) + " equal sides.";
}

Result<Made> make_even_frame(Inputs& in, const std::string& mark) {
    const Question q = read(in);
    if (in.failed())
        return in.refusal();
    const auto setback = layout::mitre_setback_working(q.bar.width, q.inside());
    if (!setback.ok())
        return renamed_for_frame(setback.refusal(), "side");
    const Length back = std::get<Length>(setback->result.value);
    if (!(q.side > 2.0 * back))
        return Refusal{"side", "A side so short leaves no opening.", ""};
    Made made;
    made.figures = {{"inside angle of a corner", q.inside()},
                    {"mitre's setback", back},
                    {"side of the opening", q.side - 2.0 * back}};
    made.workings.push_back(*setback);
    if (q.corner == Corner::mitre)
        make_mitred(made, q, mark);
    else if (auto fault = make_folded(made, q, mark))
        return *fault;
    add_across(made, q);
    made.cautions.emplace_back("Lay the first frame on a full-size drawing before the others are "
                               "cut: a small error in the angle comes back at every corner.");
    draw(made, q, back);
    return made;
}

} // namespace

const base::FormulaCard k_even_frame_across_card{"even-frame-across",
                                                 "Across a frame of equal sides",
                                                 "D = s / tan(180 / n)",
                                                 k_symbols,
                                                 "an even number of sides",
                                                 "derived-geometry",
                                                 base::Evidence::derived,
                                                 ""};

const Kind k_even_frame{"even-frame",
                        "Frame of equal sides",
                        "Three to twelve equal sides: mitred, or notched and folded from one bar.",
                        k_inputs,
                        make_even_frame};

} // namespace treadle::assembly
