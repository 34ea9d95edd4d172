// How far the centre of a bolt hole keeps from an edge.
//
// Symbols   d  bolt   d0  hole   C2  more for oversize and slotted holes   t  thickness of the part
// Formula   tables J3.4 and J3.4M; over 1-1/4 in or M36: 1.25 d        card edge-least
//           the sheared-edge column of editions to 2005; 1.75 d above  card edge-least-sheared
//           plus C2 of table J3.5; less half of what a slot is shorter card edge-slot-addition
//           EN 1993-1-8: 1.2 d0                                        card edge-least-en
//           at most 12 t and 6 in (150 mm)                             card edge-greatest
// Careful   a sheared edge takes the older column unless the rule is named
// Source    sources.json: aisc-360-16, aisc-360-05, en-1993-1-8
// Rounding  none

#pragma once

#include "layout/bolt.h"

namespace treadle::layout {

/// Rolled stands for sawn and thermally cut as well.
enum class EdgeKind { sheared, rolled };
/// In the order of the words "careful|360-16|en-1993".
enum class EdgeRule { careful, aisc_2016, en_1993 };
/// In the order of the words "square|parallel": a slot's long axis against the edge.
enum class SlotAxis { square, parallel };

struct EdgeQuestion {
    Bolt bolt;
    Length hole{}; ///< for EN 1993 alone: the hole's width
    HoleKind kind = HoleKind::standard;
    SlotAxis axis = SlotAxis::square;
    Length slot_length{}; ///< zero: as long as the kind allows
    EdgeKind edge = EdgeKind::sheared;
    EdgeRule rule = EdgeRule::careful;
};
[[nodiscard]] base::Result<Length> least_edge(const EdgeQuestion& question);
[[nodiscard]] base::Result<Working> least_edge_working(const EdgeQuestion& question);
/// C2: what an oversize or slotted hole adds. Zero for standard holes.
[[nodiscard]] base::Result<Length> slot_addition(const EdgeQuestion& question);
[[nodiscard]] base::Result<Working> slot_addition_working(const EdgeQuestion& question);

[[nodiscard]] base::Result<Length> greatest_edge(Length thickness, BoltSystem system);
[[nodiscard]] base::Result<Working> greatest_edge_working(Length thickness, BoltSystem system);

} // namespace treadle::layout
