// A parts list before it goes into the job: its columns, what each row becomes, and the keys.

#pragma once

#include "ui/views/parts_list_board.h"
#include "ui/views/state.h"
#include "ui/widgets/ui.h"

#include <vector>

namespace treadle::views {

/// Over the page while the board is open; to be drawn after it.
void parts_list_view(ui::Ui& ui, const PartsListBoard& board, std::vector<Ask>& asks);

} // namespace treadle::views
