// The fields of a layout: its kind, its mark, and what the kind asks.

#pragma once

#include "ui/views/desk.h"

namespace treadle::views {

/// Opens the board for a new layout, or with one of the job's.
void open_new_layout(Desk& desk);
void open_layout(Desk& desk, const std::string& id);

/// Returns where it ended.
float layouts_form(Desk& desk, const ui::Rect& rect);

} // namespace treadle::views
