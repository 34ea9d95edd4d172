// The sizes of a part, each by typing: mark, count, grade, section, length or legs, grain,
// certificate.

#pragma once

#include "ui/views/desk.h"

namespace treadle::views {

/// Returns where it ended.
float part_form(Desk& desk, const ui::Rect& rect, int part);

} // namespace treadle::views
