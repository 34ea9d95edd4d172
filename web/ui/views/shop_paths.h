// Paths of the shop's data, as a plan names what is missing, in the shop's own words.

#pragma once

#include "equipment/shop.h"

#include <optional>
#include <string>

namespace treadle::views {

/// "needs machine.stations[3].largest_mitre" becomes "needs Bar shear, largest mitre".
[[nodiscard]] std::string in_words(std::string text, const equipment::Shop& shop);

/// The entry of the shop's list where this path can be filled in.
[[nodiscard]] std::optional<int> shop_page_of(const std::string& path, const equipment::Shop& shop);

} // namespace treadle::views
