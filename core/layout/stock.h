// What one bar gives: its usable length, and how many equal pieces.
//
// Symbols   S  bar   a, z  trims   l  piece   k  lost by a cut   m  pieces
// Formula   U = S - a - z                                   card bar-usable
//           m = floor((U + k) / (l + k)), drop = U - m l - m k, the last cut spared when the piece
//           ends the bar                                    card bar-pieces
// Source    sources.json: derived-geometry
// Rounding  pieces down, a fit within 1e-9 counts

#pragma once

#include "base/result.h"
#include "quantity/quantity.h"
#include "quantity/working.h"

namespace treadle::layout {

struct Bar {
    Length length;
    Length trim_start;
    Length trim_end;
};
[[nodiscard]] base::Result<Length> usable_length(const Bar& bar);
[[nodiscard]] base::Result<Working> usable_working(const Bar& bar);

struct EqualPieces {
    Bar bar;
    Length piece;
    Length kerf;     ///< lost by each cut; zero for a shear
    Length holdable; ///< shortest rest that the hold-down still holds; zero: not looked at
};
struct PiecesOfBar {
    int count = 0;
    Length drop;
};
/// A rest too short to hold costs the last piece: it cannot be cut on this machine.
[[nodiscard]] base::Result<PiecesOfBar> pieces_of_bar(const EqualPieces& question);
/// The result is the count.
[[nodiscard]] base::Result<Working> pieces_working(const EqualPieces& question);

} // namespace treadle::layout
