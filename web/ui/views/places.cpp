#include "ui/views/places.h"

#include <array>

namespace treadle::views {

namespace {

const std::array<std::string, 10> k_places = {"Jobs",
                                              "Parts",
                                              "Order",
                                              "Bars",
                                              "Limits",
                                              "Shop",
                                              "Sheets",
                                              "Help",
                                              "At the machine",
                                              "Lessons"};

constexpr std::size_t k_without_tab = 2;

} // namespace

/// The machine and the lessons have the whole screen and no tab.
std::span<const std::string> place_names() {
    return std::span<const std::string>(k_places).first(k_places.size() - k_without_tab);
}

const std::string& place_name(Place place) { return k_places[static_cast<std::size_t>(place)]; }

} // namespace treadle::views
