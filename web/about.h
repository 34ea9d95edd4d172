// What the page says about itself.

#pragma once

#include <string>
#include <vector>

namespace treadle::web {

[[nodiscard]] std::vector<std::string> about_lines();

} // namespace treadle::web
