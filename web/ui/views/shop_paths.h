// Where in the shop's list a datum stands that a plan names as missing.

#pragma once

#include "equipment/shop.h"

#include <optional>
#include <string>

namespace treadle::views {

/// The entry of the shop's list where this path can be filled in.
[[nodiscard]] std::optional<int> shop_page_of(const std::string& path, const equipment::Shop& shop);

} // namespace treadle::views
