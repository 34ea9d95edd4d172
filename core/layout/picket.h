// Pickets between two posts with equal clear gaps, and posts along a run.
//
// Symbols   L  clear opening   w  picket across the rail   G  limit on the clear gap   n  pickets
// Formula   n = ceil((L - G) / (w + G)), g = (L - n w) / (n + 1)            card picket-gap
//           pickets against both posts: n = ceil((L + G) / (w + G)), g = (L - n w) / (n - 1)
//                                                                          card picket-gap-closed
//           panels N = ceil(run / most), clear = (run - (N + 1) post) / N  card post-panels
//           pickets on a tread: g = t / n - w                              card picket-per-tread
// Rounding  counts up, an exact fit within 1e-9 is no picket more; places to a step when asked, and
//           then the largest gap is looked at again
// Source    sources.json: derived-geometry

#pragma once

#include "base/result.h"
#include "quantity/quantity.h"
#include "quantity/working.h"

#include <vector>

namespace treadle::layout {

/// In the order of the words "gap|picket": what stands against the posts.
enum class PanelEnds { gap, picket };

struct PicketQuestion {
    Length opening;
    Length picket; ///< the least width across, in the direction of the gap
    Length limit;
    PanelEnds ends = PanelEnds::gap;
    Length step; ///< places are rounded to it; zero: not
};
struct PicketLayout {
    int count = 0;
    Length gap;
    Length pitch;
    Length largest_gap;        ///< after the rounding of the places
    std::vector<Length> faces; ///< near face of each picket, from the first post
};
/// Refuses "picket" or "opening" that leave no gap, "step" when a rounded gap passes the limit.
[[nodiscard]] base::Result<PicketLayout> picket_layout(const PicketQuestion& question);
/// The result is the gap.
[[nodiscard]] base::Result<Working> picket_working(const PicketQuestion& question);

struct PostQuestion {
    Length run; ///< over all, a post at either end
    Length post;
    Length greatest_spacing; ///< centre to centre
};
struct PostLayout {
    int panels = 0;
    Length clear; ///< post face to post face
};
[[nodiscard]] base::Result<PostLayout> post_layout(const PostQuestion& question);
[[nodiscard]] base::Result<Working> post_working(const PostQuestion& question);

/// Refuses "count" when the pickets leave no gap; a gap at or over the limit is said in the note.
[[nodiscard]] base::Result<Working>
per_tread_working(Length tread, int count, Length picket, Length limit);

} // namespace treadle::layout
