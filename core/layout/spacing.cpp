#include "layout/spacing.h"

#include "layout/cards.h"
#include "layout/first_fault.h"

namespace treadle::layout {

namespace {

using base::Evidence;
using quantity::size_fault;

constexpr base::CardSymbol k_spacing_symbols[] = {
    {"d", "bolt diameter"}, {"l", "hole or slot along the row"}, {"s", "centre to centre"}};
constexpr base::CardSymbol k_en_symbols[] = {{"d0", "hole"}, {"s", "centre to centre"}};
constexpr base::CardSymbol k_pitch_symbols[] = {{"t", "thickness of the thinner part"},
                                                {"s", "centre to centre"}};
constexpr base::CardSymbol k_clear_symbols[] = {{"s", "centre to centre"},
                                                {"e", "centre to the edge"},
                                                {"l", "hole or slot along the row"},
                                                {"lc", "metal between"}};

} // namespace

const base::FormulaCard k_hole_spacing_card{
    "hole-spacing",
    "Least distance between bolt holes",
    "s = 2-2/3 d (3 d preferred), not below l + d",
    k_spacing_symbols,
    "l + d from 360-16 on (from memory); slots taken as lying along the row",
    "aisc-360-16",
    Evidence::published,
    ""};
const base::FormulaCard k_hole_spacing_en_card{"hole-spacing-en",
                                               "Least distance between bolt holes",
                                               "s = 2.2 d0",
                                               k_en_symbols,
                                               "EN 1993-1-8 table 3.3, along the force; across it "
                                               "2.4 d0",
                                               "en-1993-1-8",
                                               Evidence::from_memory,
                                               ""};
const base::FormulaCard k_hole_greatest_pitch_card{
    "hole-greatest-pitch",
    "Greatest distance between bolts that hold two parts together",
    "s = 24 t, at most 12 in (300 mm); bare weathering steel 14 t, 7 in (180 mm)",
    k_pitch_symbols,
    "a plate with a shape or two plates in contact; not two shapes",
    "aisc-360-16",
    Evidence::published,
    ""};
const base::FormulaCard k_hole_clear_card{"hole-clear",
                                          "Metal left between holes, or to the edge",
                                          "lc = s - l; lc = e - l / 2",
                                          k_clear_symbols,
                                          "between holes not below d, from 360-16 on (from memory)",
                                          "derived-geometry",
                                          Evidence::derived,
                                          ""};

base::Result<Length> least_spacing(const Bolt& bolt, Length hole_length) {
    if (const auto fault = layout::first_fault(
            {size_fault(bolt.diameter, "bolt"), size_fault(hole_length, "hole")}))
        return *fault;
    return larger(bolt.diameter * 8.0 / 3.0, hole_length + bolt.diameter);
}

base::Result<Working> least_spacing_working(const Bolt& bolt, Length hole_length) {
    const auto spacing = least_spacing(bolt, hole_length);
    if (!spacing.ok())
        return spacing.refusal();
    return Working{&k_hole_spacing_card,
                   {{"d", bolt.diameter}, {"l", hole_length}},
                   {"s", *spacing},
                   "AISC 360-16."};
}

base::Result<Working> least_spacing_en_working(Length hole) {
    if (const auto fault = size_fault(hole, "hole"))
        return *fault;
    return Working{&k_hole_spacing_en_card, {{"d0", hole}}, {"s", 2.2 * hole}, "EN 1993-1-8."};
}

base::Result<Working> preferred_spacing_working(const Bolt& bolt) {
    if (const auto fault = size_fault(bolt.diameter, "bolt"))
        return *fault;
    return Working{&k_hole_spacing_card,
                   {{"d", bolt.diameter}},
                   {"s", 3.0 * bolt.diameter},
                   "The preferred distance, 3 d."};
}

base::Result<Length> greatest_pitch(Length thickness, Surface surface, BoltSystem system) {
    if (const auto fault = size_fault(thickness, "thickness"))
        return *fault;
    const bool inch = system == BoltSystem::inch;
    if (surface == Surface::weathering)
        return smaller(14.0 * thickness, inch ? inches(7.0) : millimetres(180.0));
    return smaller(24.0 * thickness, inch ? inches(12.0) : millimetres(300.0));
}

base::Result<Working> greatest_pitch_working(Length thickness, Surface surface, BoltSystem system) {
    const auto pitch = greatest_pitch(thickness, surface, system);
    if (!pitch.ok())
        return pitch.refusal();
    return Working{&k_hole_greatest_pitch_card,
                   {{"t", thickness}},
                   {"s", *pitch},
                   surface == Surface::painted ? "Painted, or not exposed to corrosion."
                                               : "Careful: bare weathering steel."};
}

base::Result<Working> clear_between_working(const Bolt& bolt, Length hole_length, Length spacing) {
    if (const auto fault = first_fault({size_fault(bolt.diameter, "bolt"),
                                        size_fault(hole_length, "hole"),
                                        size_fault(spacing, "spacing")}))
        return *fault;
    const Length clear = spacing - hole_length;
    if (clearly_less(clear, bolt.diameter))
        return base::Refusal{"spacing",
                             "Less than a bolt's diameter stays between the holes.",
                             "AISC 360-16 keeps the bolt diameter clear"};
    return Working{&k_hole_clear_card,
                   {{"s", spacing}, {"l", hole_length}},
                   {"lc", clear},
                   "Between two holes."};
}

base::Result<Working> clear_to_edge_working(Length hole_length, Length edge_distance) {
    if (const auto fault = first_fault(
            {size_fault(hole_length, "hole"), size_fault(edge_distance, "edge_distance")}))
        return *fault;
    const Length clear = edge_distance - hole_length / 2.0;
    if (!(clear > Length{}))
        return base::Refusal{"edge_distance", "The hole breaks out of the edge.", ""};
    return Working{&k_hole_clear_card,
                   {{"e", edge_distance}, {"l", hole_length}},
                   {"lc", clear},
                   "To the edge."};
}

} // namespace treadle::layout
