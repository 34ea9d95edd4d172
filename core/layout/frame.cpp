#include "layout/frame.h"

#include <cmath>
#include <numbers>

#include "layout/cards.h"
#include "layout/first_fault.h"

namespace treadle::layout {

namespace {

using base::Evidence;
using quantity::size_fault;

constexpr base::CardSymbol k_frame_symbols[] = {{"W", "width of the frame"},
                                                {"H", "height of the frame"},
                                                {"b", "leg in the frame's plane, or face"},
                                                {"t", "thickness"},
                                                {"L", "piece, long point to long point"},
                                                {"O", "opening, toe to toe"}};
constexpr base::CardSymbol k_setback_symbols[] = {{"b", "leg, or face of the bar"},
                                                  {"A", "corner, inside"},
                                                  {"s", "long point to short point"},
                                                  {"c", "cut off square"}};
constexpr base::CardSymbol k_notch_symbols[] = {{"b", "leg that is notched"},
                                                {"t", "thickness"},
                                                {"d", "angle bent through"},
                                                {"D", "depth from the toe"},
                                                {"N", "width at the toe"}};
constexpr base::CardSymbol k_gusset_symbols[] = {
    {"p", "one leg"}, {"q", "the other"}, {"h", "slant edge"}, {"A", "angle at leg p"}};

constexpr double k_degrees = 180.0 / std::numbers::pi;

quantity::Fault frame_fault(const Frame& f) {
    if (const auto fault = first_fault({size_fault(f.width, "width"),
                                        size_fault(f.height, "height"),
                                        size_fault(f.leg, "leg"),
                                        quantity::place_fault(f.thickness, "thickness")}))
        return fault;
    if (!clearly_less(f.thickness, f.leg))
        return base::Refusal{"thickness", "The leg is no longer than it is thick.", ""};
    const Length most = smaller(f.width, f.height);
    if (f.heel == Heel::outside && !clearly_less(2.0 * f.leg, most))
        return base::Refusal{"leg", "Legs so long leave no opening.", "below half the frame"};
    return std::nullopt;
}

Length pick(const FramePieces& pieces, FrameFigure figure) {
    switch (figure) {
    case FrameFigure::width_piece:
        return pieces.width_piece;
    case FrameFigure::height_piece:
        return pieces.height_piece;
    case FrameFigure::opening_width:
        return pieces.opening_width;
    case FrameFigure::opening_height:
        break;
    }
    return pieces.opening_height;
}

base::Result<Working> working_of(const base::FormulaCard& card,
                                 const Frame& f,
                                 const base::Result<FramePieces>& pieces,
                                 FrameFigure figure,
                                 const char* note) {
    if (!pieces.ok())
        return pieces.refusal();
    const bool piece = figure == FrameFigure::width_piece || figure == FrameFigure::height_piece;
    return Working{&card,
                   {{"W", f.width}, {"H", f.height}, {"b", f.leg}, {"t", f.thickness}},
                   {piece ? "L" : "O", pick(*pieces, figure)},
                   note};
}

} // namespace

const base::FormulaCard k_frame_mitre_card{
    "frame-mitre",
    "Pieces and opening of a mitred frame",
    "L = W, H, O = L - 2 b; heel inside: L = W + 2 b, H + 2 b, O = W, H",
    k_frame_symbols,
    "square corners, cut 45 degrees off square",
    "derived-geometry",
    Evidence::derived,
    ""};
const base::FormulaCard k_frame_butt_card{
    "frame-butt",
    "Pieces and opening of a butted frame of angle",
    "through L = W, between L = H - 2 t, O = W - 2 b, H - 2 b",
    k_frame_symbols,
    "standing legs outside; flat legs of the between pieces notched b - t by b - t",
    "derived-geometry",
    Evidence::derived,
    ""};
const base::FormulaCard k_frame_bar_card{"frame-bar",
                                         "Bar for a mitred frame of flat bar",
                                         "L = 2 (W - b) + 2 (H - b) + b",
                                         k_frame_symbols,
                                         "neighbours share their 45 degree cuts, nothing is lost "
                                         "by a cut",
                                         "derived-geometry",
                                         Evidence::derived,
                                         ""};
const base::FormulaCard k_frame_setback_card{"frame-setback",
                                             "Mitre of a corner",
                                             "s = b / tan(A / 2), c = 90 - A / 2",
                                             k_setback_symbols,
                                             "corners over 0 and below 180 degrees",
                                             "derived-geometry",
                                             Evidence::derived,
                                             ""};
const base::FormulaCard k_frame_notch_card{
    "frame-notch",
    "V-notch in the flat leg for a bent corner",
    "D = b - t, N = 2 (b - t) tan(d / 2)",
    k_notch_symbols,
    "flat leg inside the bend, apex on the standing leg's inside face; try a corner first",
    "derived-geometry",
    Evidence::derived,
    ""};
const base::FormulaCard k_gusset_card{"gusset",
                                      "Slant edge of a right-angled gusset or corner clip",
                                      "h = sqrt(p^2 + q^2), A = atan(q / p)",
                                      k_gusset_symbols,
                                      "a right angle between the legs",
                                      "derived-geometry",
                                      Evidence::derived,
                                      ""};

base::Result<FramePieces> mitred_frame(const Frame& f) {
    if (const auto fault = frame_fault(f))
        return *fault;
    const Length both = 2.0 * f.leg;
    if (f.heel == Heel::inside)
        return FramePieces{f.width + both, f.height + both, f.width, f.height};
    return FramePieces{f.width, f.height, f.width - both, f.height - both};
}

base::Result<FramePieces> butted_frame(const Frame& f) {
    if (const auto fault = frame_fault(f))
        return *fault;
    if (!(f.thickness > Length{}))
        return base::Refusal{"thickness", "A butted frame of angle needs its thickness.", ""};
    if (f.heel == Heel::inside)
        return base::Refusal{"heel", "Butted frames are here with the heel outside.", "outside"};
    const Length both = 2.0 * f.leg;
    return FramePieces{f.width, f.height - 2.0 * f.thickness, f.width - both, f.height - both};
}

base::Result<Working> mitred_working(const Frame& f, FrameFigure figure) {
    return working_of(k_frame_mitre_card,
                      f,
                      mitred_frame(f),
                      figure,
                      f.heel == Heel::inside ? "Standing leg inside: long points at the toes."
                                             : "Standing leg outside: long points at the heel.");
}

base::Result<Working> butted_working(const Frame& f, FrameFigure figure) {
    return working_of(k_frame_butt_card,
                      f,
                      butted_frame(f),
                      figure,
                      "The width pieces go through. Leave the root fillet clear, or grind the "
                      "through piece's toe.");
}

base::Result<Working> flat_frame_bar_working(const Frame& f) {
    const auto pieces = mitred_frame(f);
    if (!pieces.ok())
        return pieces.refusal();
    const Length bar =
        2.0 * (pieces->width_piece - f.leg) + 2.0 * (pieces->height_piece - f.leg) + f.leg;
    return Working{&k_frame_bar_card,
                   {{"W", pieces->width_piece}, {"H", pieces->height_piece}, {"b", f.leg}},
                   {"L", bar},
                   ""};
}

base::Result<Length> mitre_setback(Length leg, Angle corner) {
    if (const auto fault = size_fault(leg, "leg"))
        return *fault;
    const double angle = quantity::to_degrees(corner);
    if (!(angle >= 1.0 && angle < 180.0))
        return base::Refusal{
            "corner", "The corner is outside its range.", "from 1 and below 180 degrees"};
    if (corner == degrees(90.0))
        return leg; // exactly: tan(45) is not quite one
    return leg / std::tan(corner.in_radians() / 2.0);
}

base::Result<Working> mitre_setback_working(Length leg, Angle corner) {
    const auto setback = mitre_setback(leg, corner);
    if (!setback.ok())
        return setback.refusal();
    return Working{&k_frame_setback_card, {{"b", leg}, {"A", corner}}, {"s", *setback}, ""};
}

base::Result<Working> mitre_cut_working(Length leg, Angle corner) {
    const auto setback = mitre_setback(leg, corner);
    if (!setback.ok())
        return setback.refusal();
    return Working{&k_frame_setback_card,
                   {{"b", leg}, {"A", corner}},
                   {"c", degrees(90.0) - corner / 2.0},
                   "Off square."};
}

base::Result<NotchSizes> corner_notch(const CornerNotch& n) {
    if (const auto fault =
            first_fault({size_fault(n.leg, "leg"), size_fault(n.thickness, "thickness")}))
        return *fault;
    if (!clearly_less(n.thickness, n.leg))
        return base::Refusal{"thickness", "The leg is no longer than it is thick.", ""};
    const double bend = quantity::to_degrees(n.bend);
    if (!(bend > 0.0 && bend <= 135.0))
        return base::Refusal{"angle", "The bend is outside its range.", "over 0 up to 135 degrees"};
    const Length depth = n.leg - n.thickness;
    const double half = n.bend == degrees(90.0) ? 1.0 : std::tan(n.bend.in_radians() / 2.0);
    return NotchSizes{depth, 2.0 * depth * half};
}

base::Result<Working> notch_depth_working(const CornerNotch& n) {
    const auto notch = corner_notch(n);
    if (!notch.ok())
        return notch.refusal();
    return Working{&k_frame_notch_card,
                   {{"b", n.leg}, {"t", n.thickness}},
                   {"D", notch->depth},
                   "Hold the apex up to 1/16 in off the standing leg, or punch a relief (common "
                   "practice)."};
}

base::Result<Working> notch_width_working(const CornerNotch& n) {
    const auto notch = corner_notch(n);
    if (!notch.ok())
        return notch.refusal();
    return Working{&k_frame_notch_card,
                   {{"b", n.leg}, {"t", n.thickness}, {"d", n.bend}},
                   {"N", notch->width},
                   ""};
}

base::Result<Working> gusset_edge_working(Length leg_a, Length leg_b) {
    if (const auto fault = first_fault({size_fault(leg_a, "leg_a"), size_fault(leg_b, "leg_b")}))
        return *fault;
    return Working{&k_gusset_card,
                   {{"p", leg_a}, {"q", leg_b}},
                   {"h", quantity::square_root(leg_a * leg_a + leg_b * leg_b)},
                   ""};
}

base::Result<Working> gusset_angle_working(Length leg_a, Length leg_b) {
    if (const auto fault = first_fault({size_fault(leg_a, "leg_a"), size_fault(leg_b, "leg_b")}))
        return *fault;
    return Working{&k_gusset_card,
                   {{"p", leg_a}, {"q", leg_b}},
                   {"A", degrees(std::atan(leg_b / leg_a) * k_degrees)},
                   ""};
}

} // namespace treadle::layout
