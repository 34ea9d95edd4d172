// Trial strips as they were measured, what they give, and which blanks go by them.

#pragma once

#include "ui/views/desk.h"

namespace treadle::views {

/// Returns where the form ends.
float trials_form(Desk& desk, const ui::Rect& rect);

} // namespace treadle::views
