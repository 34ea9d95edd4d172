// The entries of the shop's list, and the tools of the crib in words.

#pragma once

#include "equipment/shop.h"
#include "quantity/print.h"

#include <string>
#include <vector>

namespace treadle::views {

struct ShopPage {
    enum class Kind { machine, station, attachment, crib, rack, rules, times, power, trials };
    Kind kind = Kind::machine;
    int index = 0; ///< of the station, the attachment, or the list of the crib
    std::string title;
    std::string detail;
};
[[nodiscard]] std::vector<ShopPage> shop_pages(const equipment::Shop& shop);

/// Full id of the row of a tool of the crib, in the list of the page at this index.
[[nodiscard]] std::string tool_row_id(const equipment::Shop& shop, int page, int tool);
/// Name of a list of the crib, as paths and ids have it.
[[nodiscard]] const char* crib_list_path(int list);

[[nodiscard]] std::string tool_words(const equipment::PunchTool& tool, PrintStyle style);
[[nodiscard]] std::string tool_words(const equipment::DieTool& tool, PrintStyle style);
[[nodiscard]] std::string tool_words(const equipment::VBlock& tool, PrintStyle style);
[[nodiscard]] std::string tool_words(const equipment::BrakePunch& tool, PrintStyle style);
[[nodiscard]] std::string tool_words(const equipment::SaddleDie& tool, PrintStyle style);

} // namespace treadle::views
