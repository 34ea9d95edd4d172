#include "ui/views/places.h"

#include <array>

namespace treadle::views {

namespace {

const std::array<std::string, 7> k_places = {
    "Parts", "Order", "Bars", "Limits", "Shop", "Sheets", "Help"};

} // namespace

std::span<const std::string> place_names() { return k_places; }

const std::string& place_name(Place place) { return k_places[static_cast<std::size_t>(place)]; }

} // namespace treadle::views
