// What the machine can do: a place's limits for a grade as a picture and as figures, with the job
// in it; and which of the shop's machines does the whole job.

#pragma once

#include "ui/views/desk.h"

namespace treadle::views {

void limits_view(Desk& desk, const ui::Rect& rect);

} // namespace treadle::views
