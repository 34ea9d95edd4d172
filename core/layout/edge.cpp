#include "layout/edge.h"

#include <cmath>
#include <span>

#include "layout/cards.h"
#include "layout/first_fault.h"

namespace treadle::layout {

namespace {

using base::Evidence;

constexpr base::CardSymbol k_edge_symbols[] = {{"d", "bolt diameter"},
                                               {"C2", "more for an oversize or slotted hole"},
                                               {"e", "centre of the hole to the edge"}};
constexpr base::CardSymbol k_en_symbols[] = {{"d0", "hole"},
                                             {"e", "centre of the hole to the edge"}};
constexpr base::CardSymbol k_addition_symbols[] = {{"d", "bolt diameter"},
                                                   {"l", "longest slot of this kind"},
                                                   {"s", "slot"},
                                                   {"C2", "more for an oversize or slotted hole"}};
constexpr base::CardSymbol k_greatest_symbols[] = {{"t", "thickness of the part"},
                                                   {"e", "centre of the hole to the edge"}};

struct EdgeRow {
    double bolt;
    double any_edge; ///< AISC 360-16
    double sheared;  ///< editions to 2005
};
// J3.4, inches; the sheared column from memory.
constexpr EdgeRow k_inch_rows[] = {
    {0.5, 0.75, 0.875},
    {0.625, 0.875, 1.125},
    {0.75, 1.0, 1.25},
    {0.875, 1.125, 1.5},
    {1.0, 1.25, 1.75},
    {1.125, 1.5, 2.0},
    {1.25, 1.625, 2.25},
};
// J3.4M, mm.
constexpr EdgeRow k_metric_rows[] = {
    {16, 22, 28},
    {20, 26, 34},
    {22, 28, 38},
    {24, 30, 42},
    {27, 34, 48},
    {30, 38, 52},
    {36, 46, 64},
};

bool inch(const Bolt& bolt) { return bolt.system == BoltSystem::inch; }
Length in_own_units(const Bolt& bolt, double value) {
    return inch(bolt) ? inches(value) : millimetres(value);
}

bool older_column(const EdgeQuestion& q) {
    return q.edge == EdgeKind::sheared && q.rule == EdgeRule::careful;
}

/// A size between two rows takes the row above it.
Length from_table(const EdgeQuestion& q) {
    const bool in = inch(q.bolt);
    const double d = in ? to_inches(q.bolt.diameter) : to_millimetres(q.bolt.diameter);
    const std::span<const EdgeRow> rows =
        in ? std::span<const EdgeRow>(k_inch_rows) : std::span<const EdgeRow>(k_metric_rows);
    for (const EdgeRow& row : rows)
        if (d < row.bolt + 1e-6)
            return in_own_units(q.bolt, older_column(q) ? row.sheared : row.any_edge);
    return (older_column(q) ? 1.75 : 1.25) * q.bolt.diameter;
}

/// C2 of table J3.5 for holes as large as their kind allows.
Length full_addition(const EdgeQuestion& q) {
    const bool in = inch(q.bolt);
    const double d = in ? to_inches(q.bolt.diameter) : to_millimetres(q.bolt.diameter);
    if (q.kind == HoleKind::standard)
        return Length{};
    if (q.kind == HoleKind::oversize) {
        const bool small = d < (in ? 0.9375 : 22.5);
        return in ? inches(small ? 1.0 / 16 : 0.125) : millimetres(small ? 2.0 : 3.0);
    }
    if (q.axis == SlotAxis::parallel)
        return Length{};
    if (q.kind == HoleKind::long_slot)
        return 0.75 * q.bolt.diameter;
    const bool small = d < (in ? 1.0625 : 25.5);
    return in ? inches(small ? 0.125 : 3.0 / 16) : millimetres(small ? 3.0 : 5.0);
}

bool is_slot(HoleKind kind) { return kind == HoleKind::short_slot || kind == HoleKind::long_slot; }

} // namespace

const base::FormulaCard k_edge_least_card{
    "edge-least",
    "Least distance of a bolt hole from an edge",
    "e by table J3.4 or J3.4M, 1.25 d above it; plus C2",
    k_edge_symbols,
    "any edge. Less only when bearing and tearout are checked, and never below d",
    "aisc-360-16",
    Evidence::published,
    ""};
const base::FormulaCard k_edge_least_sheared_card{
    "edge-least-sheared",
    "Least distance of a bolt hole from a sheared edge",
    "e by the sheared-edge column of table J3.4 or J3.4M, 1.75 d above it; plus C2",
    k_edge_symbols,
    "editions to 2005; later ones do not tell sheared edges apart. Inch column from memory",
    "aisc-360-05",
    Evidence::published,
    ""};
const base::FormulaCard k_edge_slot_addition_card{
    "edge-slot-addition",
    "What an oversize or slotted hole adds to the edge distance",
    "C2 by table J3.5; long slot 0.75 d; less (l - s) / 2 for a shorter slot",
    k_addition_symbols,
    "slots with the long axis square to the edge; along it C2 is 0",
    "aisc-360-16",
    Evidence::published,
    ""};
const base::FormulaCard k_edge_least_en_card{"edge-least-en",
                                             "Least distance of a bolt hole from an edge",
                                             "e = 1.2 d0",
                                             k_en_symbols,
                                             "EN 1993-1-8 table 3.3, round holes",
                                             "en-1993-1-8",
                                             Evidence::from_memory,
                                             ""};
const base::FormulaCard k_edge_greatest_card{"edge-greatest",
                                             "Greatest distance of a bolt hole from an edge",
                                             "e = 12 t, at most 6 in (150 mm)",
                                             k_greatest_symbols,
                                             "t of the part looked at",
                                             "aisc-360-16",
                                             Evidence::published,
                                             ""};

base::Result<Length> slot_addition(const EdgeQuestion& q) {
    const Length full = full_addition(q);
    if (!is_slot(q.kind) || q.slot_length == Length{})
        return full;
    const auto kind = slot_kind(q.bolt, q.slot_length);
    if (!kind.ok())
        return kind.refusal();
    if (q.kind == HoleKind::short_slot && *kind == HoleKind::long_slot)
        return base::Refusal{
            "slot_length", "So long a slot counts as a long slot.", "kind long slot"};
    const auto hole = bolt_hole(q.bolt, q.kind, HoleEdition::aisc_2022);
    if (!hole.ok())
        return hole.refusal();
    return larger(full - (hole->length - q.slot_length) / 2.0, Length{});
}

base::Result<Length> least_edge(const EdgeQuestion& q) {
    if (q.rule == EdgeRule::en_1993) {
        if (q.kind != HoleKind::standard)
            return base::Refusal{"kind", "EN 1993-1-8 is here for round holes alone.", "standard"};
        if (const auto fault = quantity::size_fault(q.hole, "hole"))
            return *fault;
        return 1.2 * q.hole;
    }
    const auto addition = slot_addition(q);
    if (!addition.ok())
        return addition.refusal();
    return from_table(q) + *addition;
}

base::Result<Working> least_edge_working(const EdgeQuestion& q) {
    const auto edge = least_edge(q);
    if (!edge.ok())
        return edge.refusal();
    if (q.rule == EdgeRule::en_1993)
        return Working{&k_edge_least_en_card, {{"d0", q.hole}}, {"e", *edge}, "EN 1993-1-8."};
    return Working{older_column(q) ? &k_edge_least_sheared_card : &k_edge_least_card,
                   {{"d", q.bolt.diameter}, {"C2", *edge - from_table(q)}},
                   {"e", *edge},
                   older_column(q)
                       ? "Careful: a sheared edge by the column of editions to 2005; 360-16 asks "
                         "less (rule 360-16)."
                       : "AISC 360-16."};
}

base::Result<Working> slot_addition_working(const EdgeQuestion& q) {
    const auto addition = slot_addition(q);
    if (!addition.ok())
        return addition.refusal();
    const auto hole = bolt_hole(q.bolt, q.kind, HoleEdition::aisc_2022);
    if (!hole.ok())
        return hole.refusal();
    const Length slot = q.slot_length == Length{} ? hole->length : q.slot_length;
    return Working{&k_edge_slot_addition_card,
                   {{"d", q.bolt.diameter}, {"l", hole->length}, {"s", slot}},
                   {"C2", *addition},
                   std::string("Kind of hole: ") + hole_kind_word(q.kind) + "."};
}

base::Result<Length> greatest_edge(Length thickness, BoltSystem system) {
    if (const auto fault = quantity::size_fault(thickness, "thickness"))
        return *fault;
    return smaller(12.0 * thickness, system == BoltSystem::inch ? inches(6.0) : millimetres(150.0));
}

base::Result<Working> greatest_edge_working(Length thickness, BoltSystem system) {
    const auto edge = greatest_edge(thickness, system);
    if (!edge.ok())
        return edge.refusal();
    return Working{&k_edge_greatest_card, {{"t", thickness}}, {"e", *edge}, "AISC 360-16."};
}

} // namespace treadle::layout
