// The tooling crib: one list to a kind of tool, the chosen tool with its sizes.

#pragma once

#include "ui/views/desk.h"

namespace treadle::views {

enum class CribPage { punches, dies, vees, brake_punches, saddle_dies };

/// Returns where it ended.
float crib_form(Desk& desk, const ui::Rect& rect, CribPage page);

} // namespace treadle::views
