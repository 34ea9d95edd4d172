// The bends of a part one after the other: how it lies, what the stop is set to, what it looks
// like.

#pragma once

#include "ui/views/desk.h"

namespace treadle::views {

[[nodiscard]] inline bool has_bends(const PartReading& part) {
    return part.plan->bends.has_value();
}

/// One stage with keys to the next and the one before; or why there is no order. Returns where it
/// ended.
float bend_stages(Desk& desk, const ui::Rect& rect, PartReading& part);

} // namespace treadle::views
