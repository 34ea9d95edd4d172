#include "ui/views/places.h"

#include <array>

namespace treadle::views {

namespace {

const std::array<std::string, 8> k_places = {
    "Parts", "Order", "Bars", "Limits", "Shop", "Sheets", "Help", "At the machine"};

} // namespace

/// The machine has the whole screen and no tab.
std::span<const std::string> place_names() {
    return std::span<const std::string>(k_places).first(k_places.size() - 1);
}

const std::string& place_name(Place place) { return k_places[static_cast<std::size_t>(place)]; }

} // namespace treadle::views
