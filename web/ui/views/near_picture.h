// The picture of a part for how closely it is looked at.

#pragma once

#include "ui/views/reading.h"

namespace treadle::views {

/// For a place of this size, text laid out for `zoom`; its bounds are those of the whole drawing.
/// Made anew when size or zoom change.
[[nodiscard]] PartReading::Kept& near_picture(
    PartReading& reading, bool finished_shape, PrintStyle style, PictureRoom room, float zoom);

} // namespace treadle::views
