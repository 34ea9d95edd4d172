// Parts of a layout and their outlines, put together the same way by every kind: private.

#pragma once

#include <string>

#include "assembly/made.h"

namespace treadle::assembly {

struct Piece {
    const char* role;
    const char* code; ///< behind the layout's mark: "P" makes "G1-P"
    const char* name; ///< "post": begins the note
    int side = 1;     ///< above 1 it stands behind role and mark
};

/// A straight part without operations yet.
[[nodiscard]] job::Part straight_part(const Piece& piece,
                                      const std::string& mark,
                                      const std::string& grade,
                                      const Section& section,
                                      Length length,
                                      int count);
/// Whether a shear of ours can cut it; tubes, pipes and channels are sawn, and their note says so.
[[nodiscard]] bool is_sheared(const Section& section);
/// Cut to length with these ends: an operation where a shear does it, words in the note where not.
void cut_ends(job::Part& part, Angle start, Angle finish);
void cut_ends(job::Part& part); ///< both square
void add_note(job::Part& part, const std::string& words);
void add(Made& made, const Piece& piece, job::Part part);

/// A count as a figure.
[[nodiscard]] inline quantity::Number whole(int value) { return {static_cast<double>(value), 0}; }

/// How high the section stands in an elevation when its wide face lies: a rail.
[[nodiscard]] Length rail_depth(const Section& section);
/// Across that face: what a hole for a picket has to keep within.
[[nodiscard]] Length rail_face(const Section& section);
/// The face that is punched for pickets, and the metal there; none for tubes, pipes and bars.
[[nodiscard]] bool can_be_punched(const Section& section);
[[nodiscard]] section::Face punched_face(const Section& section);

/// What an elevation holds at most; more is a grey band at any size, and values come from files.
inline constexpr std::size_t k_most_outlines = 2000;
[[nodiscard]] inline bool is_full(const Elevation& elevation) {
    return elevation.outlines.size() >= k_most_outlines;
}

/// A box from its low corner, steeper by `slope` (rise over run): upright sides, leaning ends.
[[nodiscard]] Outline
box(Spot low, Length width, Length height, double slope = 0.0, Shade shade = Shade::steel);
[[nodiscard]] Outline line(std::vector<Spot> spots);
/// By its code, so that a caller's mark can be read off the drawing.
[[nodiscard]] Outline marked(Outline outline, const std::string& mark);

} // namespace treadle::assembly
