#include "ui/views/shop_paths.h"

#include <array>
#include <cstdlib>

namespace treadle::views {

namespace {

/// In the order of the shop's list.
constexpr std::array k_pages = {"crib.punches",
                                "crib.dies",
                                "crib.vees",
                                "crib.brake_punches",
                                "crib.saddle_dies",
                                "rack",
                                "rules"};

/// House rules that stand beside the rack.
constexpr std::array k_rack_rules = {"rules.saw_kerf", "rules.end_trim", "rules.keep_drop"};

/// The index that follows `stem` at the beginning of the path.
std::optional<int> index_after(const std::string& path, const std::string& stem) {
    if (path.rfind(stem, 0) != 0)
        return std::nullopt;
    return std::atoi(path.c_str() + stem.size());
}

} // namespace

std::optional<int> shop_page_of(const std::string& path, const equipment::Shop& shop) {
    const int stations = static_cast<int>(shop.machine.stations.size());
    const int attachments = static_cast<int>(shop.machine.attachments.size());
    if (const auto station = index_after(path, "machine.stations["))
        return 1 + *station;
    if (const auto attachment = index_after(path, "machine.attachments["))
        return 1 + stations + *attachment;
    for (const char* rule : k_rack_rules) {
        if (path == rule)
            return shop_page_of("rack", shop);
    }
    for (std::size_t i = 0; i < k_pages.size(); ++i) {
        if (path.rfind(k_pages[i], 0) == 0)
            return 1 + stations + attachments + static_cast<int>(i);
    }
    return std::nullopt;
}

} // namespace treadle::views
