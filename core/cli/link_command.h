// `treadle link`: a job as an address, and back.

#pragma once

#include <string>
#include <vector>

namespace treadle::cli {

/// The words after `treadle`, `link` first; answers as commands.h says.
[[nodiscard]] int link_command(const std::vector<std::string>& words);

} // namespace treadle::cli
