#include "ui/views/find_figures.h"

#include <array>

namespace treadle::views {

namespace {

using plan::Rule;

constexpr unsigned k_cut = 1;
constexpr unsigned k_punch = 2;
constexpr unsigned k_notch = 4;
constexpr unsigned k_bend = 8;
constexpr unsigned k_saddle = 16;

constexpr FigureName
worked(const char* name, const char* also, const char* working, unsigned operations) {
    return {name, also, working, operations};
}
constexpr FigureName checked(const char* name, const char* also, Rule rule) {
    return {name, also, "", 0, rule};
}

constexpr std::array k_figures = {
    worked("Tonnage to punch", "force press ton kN", "Force to punch", k_punch),
    worked("Tonnage to shear", "force press ton kN crop cut", "Force to", k_cut),
    worked("Tonnage to notch", "force press ton kN bite", "Force of one notching", k_notch),
    worked("Tonnage to bend", "force press ton kN brake", "Force to bend", k_bend),
    worked("Stripping force", "strip stripper", "Force to strip", k_punch),
    worked("Work of a stroke", "energy punching", "Work of one punching", k_punch),
    worked("Die clearance", "gap die punch", "Clearance between punch", k_punch),
    worked("Smallest hole", "least hole thickness", "Smallest round hole", k_punch),
    worked("V opening", "usual V block die", "Usual opening", k_bend),
    worked("Inside radius", "air bending radius", "Inside radius", k_bend),
    worked("Least inside radius", "crack grain smallest", "Smallest inside radius", k_bend),
    worked("Shortest leg", "least flange leg", "Shortest outside leg", k_bend),
    worked("Outside setback", "OSSB", "Outside setback", k_bend),
    worked("Bend allowance", "BA length of metal K factor", "Length of metal", k_bend),
    worked("Bend deduction", "BD K factor", "What a bend takes off", k_bend),
    worked("Blank length", "flat length developed", "Flat length", k_bend),
    worked("Mass of the part",
           "weight kg lb",
           "Theoretical mass",
           k_cut | k_punch | k_notch | k_bend | k_saddle),
    checked("Rated size", "plate capacity", Rule::rated_size),
    checked("Blade length", "shear", Rule::blade),
    checked("Mitre angle", "miter", Rule::mitre),
    checked("Shortest piece", "hold-down grip", Rule::least_piece),
    checked("End of the bar", "drop", Rule::bar_end),
    checked("Thinnest metal", "shear gap", Rule::thin_stock),
    checked("Stress in the punch", "break", Rule::punch_stress),
    checked("Holder", "largest punch", Rule::holder),
    checked("Punch alignment", "keyed turn", Rule::alignment),
    checked("Throat", "reach", Rule::throat),
    checked("Daylight", "open height", Rule::daylight),
    checked("Stroke", "travel", Rule::stroke),
    checked("Room beside the leg", "flange clearance", Rule::flange_clearance),
    checked("Hole on the metal", "whole off", Rule::on_metal),
    checked("Hole to edge", "edge distance web", Rule::edge_web),
    checked("Hole to hole", "distance web", Rule::hole_web),
    checked("Hole to notch or mitre", "web", Rule::cut_web),
    checked("Same stroke twice", "double", Rule::doubled_stroke),
    checked("Slug", "falls stuck", Rule::slug),
    checked("Snap of the break", "shock", Rule::snap_through),
    checked("Hole to bend", "distance near", Rule::hole_to_bend),
    checked("Notch tool", "depth angle", Rule::notch_tool),
    checked("Overlap of bites", "fin nibble", Rule::notch_overlap),
    checked("Notch at a bend", "relief", Rule::notch_at_bend),
    checked("Length of bend", "brake", Rule::brake_length),
    checked("Largest thickness", "attachment", Rule::thickness_limit),
    checked("Radius asked for", "wanted", Rule::wanted_radius),
    checked("Trial strip", "K measured", Rule::trial_strip),
    checked("Order of bends", "collision", Rule::bend_order),
    checked("Saddle die", "pipe cope", Rule::saddle_die),
    checked("Wall of the tube", "collapse", Rule::tube_wall),
    checked("Tool to buy", "not in the crib missing", Rule::tool_in_crib),
    checked("Lifting", "weight two people heavy", Rule::handling),
    checked("Hoist", "crane weight heavy", Rule::hoist),
    checked("Support", "stand long", Rule::support),
    checked("Tipping", "overhang", Rule::tipping),
};

} // namespace

std::span<const FigureName> figure_names() { return k_figures; }

unsigned operation_bit(const job::Operation& operation) {
    return 1U << static_cast<unsigned>(operation.index());
}

} // namespace treadle::views
