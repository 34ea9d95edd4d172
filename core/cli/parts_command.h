// `treadle parts`: a parts list to parts, with a preview of every row, and a job's parts as a list.

#pragma once

#include "base/result.h"

#include <string>
#include <vector>

namespace treadle::cli {

/// The words after `parts`: the text for standard output.
[[nodiscard]] base::Result<std::string> parts_answer(const std::vector<std::string>& words);

} // namespace treadle::cli
