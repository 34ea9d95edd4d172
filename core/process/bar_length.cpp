#include "process/bar_length.h"

#include "process/cards.h"
#include "process/input_check.h"

#include <numbers>
#include <string>

namespace treadle::process {

namespace {

using base::Evidence;

constexpr base::CardSymbol k_ring_symbols[] = {
    {"L", "developed length"},
    {"Dm", "diameter of the line through the centroid"},
    {"D", "diameter to the face that is measured"},
    {"c", "centroid from that face"},
    {"A", "arc in degrees"},
    {"s", "straight ends"},
};
constexpr base::CardSymbol k_hook_symbols[] = {
    {"L", "developed length"},
    {"s", "shank"},
    {"A", "angle turned through, in degrees"},
    {"Di", "inside diameter"},
    {"d", "depth of the bar in the plane of bending"},
    {"u", "tail"},
};

constexpr Angle k_full_turn = degrees(360.0);
constexpr double k_centroid_ratio = 5.0; // inside radius over depth
constexpr double k_usual_strain = 0.05;
constexpr double k_least_rod_radius = 1.0; // over the diameter, mild steel, common practice

base::Result<Length> centre_diameter(const Ring& ring) {
    InputCheck check;
    check.length(ring.diameter, ring.measured == Face::inside ? "inside" : "outside")
        .length_or_zero(ring.depth, "size")
        .length(ring.centroid, "centroid");
    if (check.failed())
        return check.refusal();
    if (ring.measured == Face::inside)
        return ring.diameter + 2.0 * ring.centroid;
    const Length through = larger(2.0 * ring.centroid, 2.0 * ring.depth);
    if (!clearly_below(through, ring.diameter))
        return base::Refusal{"outside", "The ring would have no inside.", ""};
    return ring.diameter - 2.0 * ring.centroid;
}

base::Refusal arc_outside(const char* field) {
    return {field, "The arc is outside its range.", "over 0 and up to 360 degrees"};
}

std::string ring_note(const Ring& ring, Length inside) {
    std::string note;
    if (clearly_below(inside / 2.0, k_centroid_ratio * ring.depth))
        note = "Inside radius under 5 times the depth: the neutral line moves in, bend a trial.";
    if (ring.hard_way && ring.depth / (inside + ring.depth) > k_usual_strain)
        note += std::string(note.empty() ? "" : " ") +
                "Warning: the outer edge is strained over 5 %, too much for cold mild steel.";
    return note;
}

} // namespace

const base::FormulaCard k_ring_diameter_card{
    "ring-diameter",
    "Diameter of the line that keeps its length",
    "Dm = Di + 2 c; Dm = Do - 2 c",
    k_ring_symbols,
    "neutral line at the centroid: inside radius over 5 times the depth",
    "derived-geometry",
    Evidence::derived,
    ""};
const base::FormulaCard k_ring_length_card{
    "ring-length",
    "Developed length of a ring or an arc",
    "L = (A / 360) pi Dm + s",
    k_ring_symbols,
    "neutral line at the centroid; ends that do not bend want 1-2 depths of trim",
    "tabellenbuch-metall",
    Evidence::published,
    ""};
const base::FormulaCard k_hook_length_card{
    "hook-length",
    "Developed length of a hook or an eye",
    "L = s + (A / 360) pi (Di + d) + u",
    k_hook_symbols,
    "neutral line in the middle of the bar; inside radius of mild steel rod from 1 d",
    "derived-geometry",
    Evidence::derived,
    ""};

base::Result<Working> ring_diameter_working(const Ring& ring) {
    const auto diameter = centre_diameter(ring);
    if (!diameter.ok())
        return diameter.refusal();
    return Working{&k_ring_diameter_card,
                   {{"D", ring.diameter}, {"c", ring.centroid}},
                   {"Dm", *diameter},
                   ring.measured == Face::inside ? "Measured inside." : "Measured outside."};
}

base::Result<Working> ring_length_working(const Ring& ring) {
    const auto diameter = centre_diameter(ring);
    if (!diameter.ok())
        return diameter.refusal();
    if (!(ring.arc > Angle{} && ring.arc <= k_full_turn))
        return arc_outside("arc");
    InputCheck check;
    check.length_or_zero(ring.straight, "straight");
    if (check.failed())
        return check.refusal();
    const Length arc = ring.arc.in_degrees() / 360.0 * std::numbers::pi * *diameter;
    const Length inside =
        ring.measured == Face::inside ? ring.diameter : ring.diameter - 2.0 * ring.depth;
    return Working{&k_ring_length_card,
                   {{"A", ring.arc}, {"Dm", *diameter}, {"s", ring.straight}},
                   {"L", arc + ring.straight},
                   ring_note(ring, inside)};
}

base::Result<Working> hook_length_working(const Hook& hook) {
    InputCheck check;
    check.length(hook.bar, "bar")
        .length(hook.inside_diameter, "inside_diameter")
        .length_or_zero(hook.straight, "straight")
        .length_or_zero(hook.tail, "tail");
    if (check.failed())
        return check.refusal();
    if (!(hook.angle > Angle{} && hook.angle <= k_full_turn))
        return arc_outside("angle");
    const Length arc =
        hook.angle.in_degrees() / 360.0 * std::numbers::pi * (hook.inside_diameter + hook.bar);
    return Working{
        &k_hook_length_card,
        {{"s", hook.straight},
         {"A", hook.angle},
         {"Di", hook.inside_diameter},
         {"d", hook.bar},
         {"u", hook.tail}},
        {"L", hook.straight + arc + hook.tail},
        clearly_below(hook.inside_diameter / 2.0, k_least_rod_radius * hook.bar)
            ? "Warning: the inside radius is under the depth of the bar, too tight for cold mild "
              "steel."
            : ""};
}

} // namespace treadle::process
