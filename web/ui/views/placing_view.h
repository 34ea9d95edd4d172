// Putting the chosen operation in its place: by a handle on the drawing, by arrow keys, or by what
// it can catch on.

#pragma once

#include "ui/views/desk.h"

namespace treadle::views {

/// Over the flat blank: handle, guide lines, and the operation where it would be.
void placing_handle(Desk& desk,
                    const ui::Rect& rect,
                    ui::Surface& surface,
                    const PartReading& part,
                    const Picture& picture);
/// The key that begins and ends it, in what is left of `row`; below it the figure, what it caught
/// on and the list to choose from. `all` is the width of the drawing. Returns where it ended.
float placing_keys(Desk& desk, const ui::Rect& all, ui::Rect row, PartReading& part);

} // namespace treadle::views
