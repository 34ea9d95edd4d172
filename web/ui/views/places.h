// The places of the page by name, in the order of their tabs.

#pragma once

#include "ui/views/state.h"

#include <span>
#include <string>

namespace treadle::views {

[[nodiscard]] std::span<const std::string> place_names();
[[nodiscard]] const std::string& place_name(Place place);

} // namespace treadle::views
