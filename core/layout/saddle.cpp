#include "layout/saddle.h"

#include <cmath>
#include <numbers>
#include <string>

#include "layout/cards.h"
#include "layout/first_fault.h"

namespace treadle::layout {

namespace {

using base::Evidence;
using quantity::place_fault;
using quantity::size_fault;

constexpr double k_pi = std::numbers::pi;

constexpr base::CardSymbol k_saddle_symbols[] = {
    {"R", "outside radius of the run"},
    {"r", "radius of the branch, outside or bore"},
    {"B", "angle between the axes"},
    {"e", "offset of the axes"},
    {"p", "angle round the branch from the acute side"},
    {"w", "axes' crossing to the cut, along the branch"},
    {"y", "long point to the cut"}};
constexpr base::CardSymbol k_spacing_symbols[] = {{"D", "outside of the branch"},
                                                  {"P", "thickness of the paper"},
                                                  {"N", "stations"},
                                                  {"s", "spacing"}};

constexpr double k_least_angle = 10.0; // degrees; flatter, the cut runs away (program rule)
constexpr double k_knife_edge = 30.0;  // degrees; a sharper tip burns off (common practice)
constexpr int k_least_stations = 4;
constexpr int k_most_stations = 720;

/// What the formulas work in.
struct Cut {
    double run;    ///< R
    double branch; ///< r laid out
    double offset;
    double sine;   ///< of the angle between the axes
    double cosine; ///< zero when square
};

Cut cut_of(const SaddleJoint& joint) {
    const double angle = joint.angle.in_radians();
    const bool square = joint.angle == degrees(90.0);
    const Length bore = joint.branch_od - 2.0 * joint.branch_wall;
    const Length laid_out = joint.edge == SaddleEdge::bore ? bore : joint.branch_od;
    return {quantity::to_millimetres(joint.run_od) / 2.0,
            quantity::to_millimetres(laid_out) / 2.0,
            quantity::to_millimetres(joint.offset),
            square ? 1.0 : std::sin(angle),
            square ? 0.0 : std::cos(angle)};
}

/// w(p): from the axes' crossing to the cut.
double reach(const Cut& c, double p) {
    const double across = c.offset + c.branch * std::sin(p);
    const double under = c.run * c.run - across * across;
    return (std::sqrt(under > 0.0 ? under : 0.0) + c.branch * std::cos(p) * c.cosine) / c.sine;
}

struct LongPoint {
    double at;    ///< radians
    double reach; ///< least w
};

/// Without an offset in closed form: tangent planes of the run at the long point are square to w.
LongPoint closed_long_point(const Cut& c) {
    const double lean = c.run * c.cosine;
    if (c.branch > lean) {
        const double r2 = c.branch * c.branch;
        const double share = (r2 - lean * lean) / (r2 * c.sine * c.sine);
        const double sine = std::sqrt(share > 1.0 ? 1.0 : share);
        const double under = c.run * c.run - r2;
        return {k_pi - std::asin(sine), std::sqrt(under > 0.0 ? under : 0.0)};
    }
    return {k_pi, (c.run - c.branch * c.cosine) / c.sine};
}

/// Where `of` is least: by a sweep, then by thirds round the best place. The reach has one bump a
/// turn or two, each many steps wide, so that none hides between two stations.
template <class Function>
double least_place(Function of) {
    constexpr int k_steps = 720;
    constexpr double k_step = 2.0 * k_pi / k_steps;
    int best = 0;
    double least = of(0.0);
    for (int i = 1; i < k_steps; ++i) {
        const double here = of(i * k_step);
        if (here < least) {
            best = i;
            least = here;
        }
    }
    double low = (best - 1) * k_step;
    double high = (best + 1) * k_step;
    for (int i = 0; i < 100; ++i) {
        const double third = (high - low) / 3.0;
        if (of(low + third) < of(high - third))
            high -= third;
        else
            low += third;
    }
    const double found = (low + high) / 2.0;
    return of(found) < least ? found : best * k_step;
}

LongPoint swept_long_point(const Cut& c) {
    const double at = least_place([&](double p) { return reach(c, p); });
    return {at < 0.0 ? at + 2.0 * k_pi : at, reach(c, at)};
}

double deepest_reach(const Cut& c) {
    if (c.offset == 0.0)
        return reach(c, 0.0); // the acute crown: both terms of w are largest there
    return reach(c, least_place([&](double p) { return -reach(c, p); }));
}

quantity::Fault joint_fault(const SaddleJoint& joint) {
    if (const auto fault = first_fault({size_fault(joint.branch_od, "branch_od"),
                                        size_fault(joint.run_od, "run_od"),
                                        place_fault(joint.branch_wall, "branch_wall"),
                                        place_fault(joint.offset, "offset")}))
        return fault;
    const double angle = quantity::to_degrees(joint.angle);
    if (!(angle >= k_least_angle && angle <= 90.0))
        return base::Refusal{
            "angle", "The angle between the axes is outside its range.", "10 to 90 deg, the acute"};
    if (!(joint.branch_od > 2.0 * joint.branch_wall))
        return base::Refusal{"branch_wall", "The wall leaves no bore.", "below half the outside"};
    if (joint.edge == SaddleEdge::bore && !(joint.branch_wall > Length{}))
        return base::Refusal{"branch_wall", "The bore's edge needs the wall.", ""};
    if (clearly_less(joint.run_od, joint.branch_od))
        return base::Refusal{"branch_od", "The branch is larger than the run.", ""};
    if (clearly_less(joint.run_od / 2.0, joint.branch_od / 2.0 + joint.offset))
        return base::Refusal{
            "offset", "Part of the branch would miss the run.", "branch radius + offset <= run's"};
    return std::nullopt;
}

std::vector<quantity::WorkingValue> joint_values(const SaddleJoint& joint) {
    const Cut cut = cut_of(joint);
    return {{"R", millimetres(cut.run)},
            {"r", millimetres(cut.branch)},
            {"B", joint.angle},
            {"e", joint.offset}};
}

std::string joint_note(const SaddleJoint& joint) {
    const Cut cut = cut_of(joint);
    std::string note = joint.edge == SaddleEdge::bore
                           ? "Laid out on the bore: the outside stands open as a weld groove."
                           : "Laid out on the outside, for a tool that cuts square through.";
    const double share = (cut.branch + cut.offset) / cut.run;
    const double tip = std::asin(std::sqrt(std::fmax(0.0, 1.0 - share * share))) * 180.0 / k_pi;
    if (tip < k_knife_edge)
        note += " Knife edges at the flanks: trim the tips (common practice).";
    return note;
}

} // namespace

const base::FormulaCard k_saddle_ordinate_card{
    "saddle-ordinate",
    "Ordinates of a saddle from its long point",
    "w = (sqrt(R^2 - (e + r sin p)^2) + r cos p cos B) / sin B, y = w - least w",
    k_saddle_symbols,
    "round on round, r + e up to R, B from 10 to 90 degrees",
    "derived-geometry",
    Evidence::derived,
    ""};
const base::FormulaCard k_saddle_throat_card{"saddle-throat",
                                             "Throat of a saddle",
                                             "y at p = 0; square, no offset: R - sqrt(R^2 - r^2)",
                                             k_saddle_symbols,
                                             "long point to the crown on the acute side",
                                             "derived-geometry",
                                             Evidence::derived,
                                             ""};
const base::FormulaCard k_saddle_cut_back_card{
    "saddle-cut-back",
    "From the axes' crossing to the long point",
    "least w; no offset: sqrt(R^2 - r^2) while r > R cos B, else (R - r cos B) / sin B",
    k_saddle_symbols,
    "along the branch; with an offset by a sweep",
    "derived-geometry",
    Evidence::derived,
    ""};
const base::FormulaCard k_saddle_spacing_card{"saddle-spacing",
                                              "Spacing of the stations on the wrapped paper",
                                              "s = pi (D + P) / N",
                                              k_spacing_symbols,
                                              "paper wrapped once round the branch",
                                              "derived-geometry",
                                              Evidence::derived,
                                              ""};

base::Result<SaddleShape> saddle_shape(const SaddleJoint& joint) {
    if (const auto fault = joint_fault(joint))
        return *fault;
    const Cut cut = cut_of(joint);
    const LongPoint point = cut.offset == 0.0 ? closed_long_point(cut) : swept_long_point(cut);
    SaddleShape shape;
    shape.cut_back = millimetres(point.reach);
    shape.long_point = degrees(point.at * 180.0 / k_pi);
    shape.throat = millimetres(reach(cut, 0.0) - point.reach);
    shape.depth = millimetres(deepest_reach(cut) - point.reach);
    return shape;
}

base::Result<SaddleTemplate> saddle_template(const SaddleJoint& joint, int stations, Length paper) {
    const auto shape = saddle_shape(joint);
    if (!shape.ok())
        return shape.refusal();
    if (const auto fault = first_fault(
            {quantity::count_fault(stations, k_least_stations, k_most_stations, "ordinates"),
             place_fault(paper, "paper")}))
        return *fault;
    SaddleTemplate out;
    out.shape = *shape;
    const Cut cut = cut_of(joint);
    for (int i = 0; i < stations; ++i) {
        const Length y = millimetres(reach(cut, 2.0 * k_pi * i / stations)) - shape->cut_back;
        out.ordinates.push_back(larger(y, Length{})); // the long point itself, less its last bit
    }
    out.spacing = k_pi * (joint.branch_od + paper) / static_cast<double>(stations);
    return out;
}

Working ordinate_working(const SaddleJoint& joint, const SaddleShape& shape) {
    return {&k_saddle_ordinate_card, joint_values(joint), {"y", shape.depth}, joint_note(joint)};
}

Working throat_working(const SaddleJoint& joint, const SaddleShape& shape) {
    return {&k_saddle_throat_card, joint_values(joint), {"y", shape.throat}, ""};
}

Working cut_back_working(const SaddleJoint& joint, const SaddleShape& shape) {
    return {&k_saddle_cut_back_card, joint_values(joint), {"w", shape.cut_back}, ""};
}

Working spacing_working(const SaddleJoint& joint, const SaddleTemplate& made, Length paper) {
    return {&k_saddle_spacing_card,
            {{"D", joint.branch_od},
             {"P", paper},
             {"N", quantity::Number{static_cast<double>(made.ordinates.size()), 0}}},
            {"s", made.spacing},
            ""};
}

} // namespace treadle::layout
