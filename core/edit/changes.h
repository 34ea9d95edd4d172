// Private to the room: what differs between two states, in words for the undo button.

#pragma once

#include "job/job.h"

#include <string>
#include <vector>

namespace treadle::edit {

/// "thickness of BP2", "operation 2 of CL1 removed"; empty when nothing differs.
[[nodiscard]] std::string change_words(const job::Part& before, const job::Part& after);
[[nodiscard]] bool same(const std::vector<Grade>& a, const std::vector<Grade>& b);

} // namespace treadle::edit
