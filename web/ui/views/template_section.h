// Pages at full size: which, on which printer, and what its bars measured.

#pragma once

#include "ui/views/desk.h"

namespace treadle::views {

/// Returns where it ended.
float template_section(Desk& desk, ui::Rect rest);

} // namespace treadle::views
