// The search: one field over the page, and what was found by kind. Enter opens the first line.

#pragma once

#include "ui/views/desk.h"

namespace treadle::views {

void open_find(Desk& desk);
/// Over the page while it is open. Draw it after the page.
void find_sheet(Desk& desk);
/// Goes to the thing itself: its place, its part and operation, its panel, and scrolls to it.
void open_found(Desk& desk, const FoundAt& at);

} // namespace treadle::views
