// `treadle layout`: what a layout would make, in words, or as a job that holds it.

#pragma once

#include "base/result.h"

#include <string>
#include <vector>

namespace treadle::cli {

/// The words after the command's own: `--list`, or KIND name=value… with --metric, --mark M, --job.
[[nodiscard]] base::Result<std::string> layout_answer(const std::vector<std::string>& words);

} // namespace treadle::cli
