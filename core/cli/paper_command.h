// `treadle sheet` and `treadle template`: the plan on paper, and pages at full size.

#pragma once

#include "base/result.h"

#include <string>
#include <vector>

namespace treadle::cli {

/// The words after `treadle`, the command first. A document is written, and the answer is empty;
/// `--list` answers with JSON.
[[nodiscard]] base::Result<std::string> sheet_answer(const std::vector<std::string>& words);
[[nodiscard]] base::Result<std::string> template_answer(const std::vector<std::string>& words);

} // namespace treadle::cli
