#include "layout/rake.h"

#include <cmath>
#include <numbers>

#include "layout/cards.h"
#include "layout/first_fault.h"

namespace treadle::layout {

namespace {

using base::Evidence;
using quantity::size_fault;

constexpr base::CardSymbol k_angle_symbols[] = {{"R", "rise"}, {"T", "run"}, {"A", "slope"}};
constexpr base::CardSymbol k_along_symbols[] = {
    {"h", "level length"}, {"A", "slope"}, {"s", "along the rail"}};
constexpr base::CardSymbol k_cut_symbols[] = {{"c", "between the rails, square to them"},
                                              {"w", "picket"},
                                              {"A", "slope"},
                                              {"v", "picket on its centre line"},
                                              {"o", "long side less short side"},
                                              {"B", "long point to the opposite point"}};
constexpr base::CardSymbol k_triangle_symbols[] = {{"r", "riser"},
                                                   {"t", "tread"},
                                                   {"b", "rail over the nosing line, upright"},
                                                   {"D", "sphere that must not pass"},
                                                   {"d", "sphere that just fits"}};
constexpr base::CardSymbol k_step_symbols[] = {
    {"p", "panel, level"}, {"A", "slope"}, {"q", "step from panel to panel"}};

constexpr Angle k_steepest = degrees(80.0); // a ladder; beyond it lengths run away (program rule)

/// Twice the radius of the circle inscribed between riser, tread and nosing line.
Length corner_circle(const StairTriangle& s) {
    return s.riser + s.tread - quantity::square_root(s.riser * s.riser + s.tread * s.tread);
}

quantity::Fault stair_fault(const StairTriangle& s) {
    return first_fault({size_fault(s.riser, "riser"),
                        size_fault(s.tread, "tread"),
                        quantity::place_fault(s.rail_height, "rail_height")});
}

} // namespace

const base::FormulaCard k_rake_angle_card{"rake-angle",
                                          "Slope of a stair or a ramp",
                                          "A = atan(R / T)",
                                          k_angle_symbols,
                                          "over 0 and up to 80 degrees",
                                          "derived-geometry",
                                          Evidence::derived,
                                          ""};
const base::FormulaCard k_rake_along_card{"rake-along",
                                          "A level length, measured along the rail",
                                          "s = h / cos A",
                                          k_along_symbols,
                                          "limits on gaps hold for the level length",
                                          "derived-geometry",
                                          Evidence::derived,
                                          ""};
const base::FormulaCard k_rake_picket_length_card{"rake-picket-length",
                                                  "Upright picket between sloping rails",
                                                  "v = c / cos A",
                                                  k_cut_symbols,
                                                  "parallel rails, centre line of the picket",
                                                  "derived-geometry",
                                                  Evidence::derived,
                                                  ""};
const base::FormulaCard k_rake_bevel_card{"rake-bevel",
                                          "Long side less short side of a bevelled picket",
                                          "o = w tan A",
                                          k_cut_symbols,
                                          "bevel A off square",
                                          "derived-geometry",
                                          Evidence::derived,
                                          ""};
const base::FormulaCard k_rake_blank_card{
    "rake-blank",
    "Picket with two parallel bevels, point to point",
    "B = v + w tan A",
    k_cut_symbols,
    "neighbours share a cut: n of them take n v + w tan A of bar on a shear",
    "derived-geometry",
    Evidence::derived,
    ""};
const base::FormulaCard k_rake_triangle_card{
    "rake-triangle",
    "Sphere that fits between riser, tread and bottom rail",
    "d = (r + t - sqrt(r^2 + t^2)) (1 + b / r)",
    k_triangle_symbols,
    "while d / 2 is not over r",
    "derived-geometry",
    Evidence::derived,
    ""};
const base::FormulaCard k_rake_rail_height_card{
    "rake-rail-height",
    "Highest bottom rail that still stops the sphere",
    "b = r (D / (r + t - sqrt(r^2 + t^2)) - 1)",
    k_triangle_symbols,
    "upright over the nosing line, underside of the rail; while D / 2 is not over r",
    "derived-geometry",
    Evidence::derived,
    ""};
const base::FormulaCard k_rake_step_card{"rake-step",
                                         "Step between level panels on a slope",
                                         "q = p tan A",
                                         k_step_symbols,
                                         "level panels",
                                         "derived-geometry",
                                         Evidence::derived,
                                         ""};

base::Result<Angle> slope_angle(const Slope& slope) {
    if (const auto fault =
            first_fault({size_fault(slope.rise, "rise"), size_fault(slope.run, "run")}))
        return *fault;
    const Angle angle = degrees(std::atan(slope.rise / slope.run) * 180.0 / std::numbers::pi);
    if (angle > k_steepest)
        return base::Refusal{"rise", "So steep a slope is no stair.", "up to 80 degrees"};
    return angle;
}

base::Result<Working> slope_working(const Slope& slope) {
    const auto angle = slope_angle(slope);
    if (!angle.ok())
        return angle.refusal();
    return Working{&k_rake_angle_card, {{"R", slope.rise}, {"T", slope.run}}, {"A", *angle}, ""};
}

base::Result<Length> along_rail(Length level, const Slope& slope, const char* field) {
    const auto angle = slope_angle(slope);
    if (!angle.ok())
        return angle.refusal();
    if (const auto fault = size_fault(level, field))
        return *fault;
    return level / std::cos(angle->in_radians());
}

base::Result<Working> along_rail_working(Length level, const Slope& slope, const char* field) {
    const auto along = along_rail(level, slope, field);
    if (!along.ok())
        return along.refusal();
    return Working{
        &k_rake_along_card, {{"h", level}, {"A", *slope_angle(slope)}}, {"s", *along}, ""};
}

base::Result<Length> level_of(Length along, const Slope& slope) {
    const auto angle = slope_angle(slope);
    if (!angle.ok())
        return angle.refusal();
    return along * std::cos(angle->in_radians());
}

base::Result<RakedCut> raked_cut(const RakedPicket& p) {
    const auto angle = slope_angle(p.slope);
    if (!angle.ok())
        return angle.refusal();
    if (const auto fault = first_fault(
            {size_fault(p.picket, "picket"), size_fault(p.between_rails, "between_rails")}))
        return *fault;
    RakedCut out;
    out.length = p.between_rails / std::cos(angle->in_radians());
    out.bevel_offset = p.picket * std::tan(angle->in_radians());
    out.blank = out.length + out.bevel_offset;
    return out;
}

base::Result<Working> raked_length_working(const RakedPicket& p) {
    const auto cut = raked_cut(p);
    if (!cut.ok())
        return cut.refusal();
    return Working{&k_rake_picket_length_card,
                   {{"c", p.between_rails}, {"A", *slope_angle(p.slope)}},
                   {"v", cut->length},
                   ""};
}

base::Result<Working> raked_bevel_working(const RakedPicket& p) {
    const auto cut = raked_cut(p);
    if (!cut.ok())
        return cut.refusal();
    return Working{&k_rake_bevel_card,
                   {{"w", p.picket}, {"A", *slope_angle(p.slope)}},
                   {"o", cut->bevel_offset},
                   ""};
}

base::Result<Working> raked_blank_working(const RakedPicket& p) {
    const auto cut = raked_cut(p);
    if (!cut.ok())
        return cut.refusal();
    return Working{&k_rake_blank_card,
                   {{"v", cut->length}, {"w", p.picket}, {"A", *slope_angle(p.slope)}},
                   {"B", cut->blank},
                   ""};
}

base::Result<Length> triangle_sphere(const StairTriangle& s) {
    if (const auto fault = stair_fault(s))
        return *fault;
    const Length sphere = corner_circle(s) * (1.0 + s.rail_height / s.riser);
    if (clearly_less(s.riser, sphere / 2.0))
        return base::Refusal{"rail_height",
                             "So high a rail leaves no triangle: the sphere meets the next tread.",
                             "sphere's radius up to the riser"};
    return sphere;
}

base::Result<Working> triangle_working(const StairTriangle& s, Length limit) {
    const auto sphere = triangle_sphere(s);
    if (!sphere.ok())
        return sphere.refusal();
    if (const auto fault = size_fault(limit, "limit"))
        return *fault;
    const bool stops = clearly_less(*sphere, limit);
    return Working{&k_rake_triangle_card,
                   {{"r", s.riser}, {"t", s.tread}, {"b", s.rail_height}, {"D", limit}},
                   {"d", *sphere},
                   stops ? "Under the limit." : "At or over the limit: the sphere passes."};
}

base::Result<Length> highest_rail(const StairTriangle& s, Length limit) {
    if (const auto fault = first_fault({stair_fault(s), size_fault(limit, "limit")}))
        return *fault;
    if (clearly_less(s.riser, limit / 2.0))
        return base::Refusal{"limit", "The triangle cannot hold so large a sphere.", ""};
    const Length height = s.riser * (limit / corner_circle(s) - 1.0);
    if (!(height > Length{}))
        return base::Refusal{
            "limit", "On this stair the sphere passes even with the rail on the nosings.", ""};
    return height;
}

base::Result<Working> highest_rail_working(const StairTriangle& s, Length limit) {
    const auto height = highest_rail(s, limit);
    if (!height.ok())
        return height.refusal();
    return Working{&k_rake_rail_height_card,
                   {{"r", s.riser}, {"t", s.tread}, {"D", limit}},
                   {"b", *height},
                   "Stay below it: at this height the sphere touches all round."};
}

base::Result<Working> step_working(Length panel, const Slope& slope) {
    const auto angle = slope_angle(slope);
    if (!angle.ok())
        return angle.refusal();
    if (const auto fault = size_fault(panel, "panel"))
        return *fault;
    const Length step = panel * (slope.rise / slope.run);
    return Working{&k_rake_step_card,
                   {{"p", panel}, {"A", *angle}},
                   {"q", step},
                   step > inches(2.0)
                       ? "Warning: the gap under the panel grows by the step, past 2 in."
                       : "The gap under the panel grows by the step."};
}

} // namespace treadle::layout
