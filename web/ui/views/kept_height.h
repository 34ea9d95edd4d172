// How long lists stay quick: what is far out of sight is left out, and its place is kept.

#pragma once

namespace treadle::views {

/// The height of an entry as it came out last.
struct KeptHeight {
    float width = -1; ///< and the height of the type it was measured with
    float type = 0;
    float height = 0;
};

} // namespace treadle::views
