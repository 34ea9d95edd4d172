// Bolt holes in a row: how close, how far apart, and what metal stays between them.
//
// Symbols   d  bolt   d0  hole   l  slot along the row   s  pitch   t  thickness   e  edge distance
// Formula   s >= 2-2/3 d, 3 d preferred; and l + d, so that d stays clear  card hole-spacing
//           EN 1993-1-8: s >= 2.2 d0                                      card hole-spacing-en
//           s <= 24 t and 12 in (300 mm); weathering 14 t and 7 in (180)  card hole-greatest-pitch
//           clear: s - l between holes, e - l / 2 to the edge             card hole-clear
// Source    sources.json: aisc-360-16, en-1993-1-8, derived-geometry
// Rounding  none

#pragma once

#include "layout/bolt.h"

namespace treadle::layout {

/// `hole_length` is what lies along the row; 360-16 keeps a bolt's diameter between holes.
[[nodiscard]] base::Result<Length> least_spacing(const Bolt& bolt, Length hole_length);
[[nodiscard]] base::Result<Working> least_spacing_working(const Bolt& bolt, Length hole_length);
[[nodiscard]] base::Result<Working> least_spacing_en_working(Length hole);
[[nodiscard]] base::Result<Working> preferred_spacing_working(const Bolt& bolt);

/// In the order of the words "weathering|painted"; bare weathering steel is the careful one.
enum class Surface { weathering, painted };
[[nodiscard]] base::Result<Length>
greatest_pitch(Length thickness, Surface surface, BoltSystem system);
[[nodiscard]] base::Result<Working>
greatest_pitch_working(Length thickness, Surface surface, BoltSystem system);

/// Metal left between two holes. Refuses "spacing" when less than the bolt's diameter stays.
[[nodiscard]] base::Result<Working>
clear_between_working(const Bolt& bolt, Length hole_length, Length spacing);
/// Metal left between a hole and the edge. Refuses "edge_distance" when none stays.
[[nodiscard]] base::Result<Working> clear_to_edge_working(Length hole_length, Length edge_distance);

} // namespace treadle::layout
