// Where somebody was on the page, as text: place, choices, scrolled lists, and what was typed and
// not taken. Nothing of the job lies in it, so losing it loses no work.

#pragma once

#include "ui/views/state.h"

#include <map>
#include <string>
#include <string_view>

namespace treadle::web {

/// What of a place is not the views' own state.
struct PlaceBeside {
    std::map<std::string, float> scrolls; ///< offsets by the full id of the area
    std::string field;                    ///< full id of the field that is being typed in; or empty
    std::string typed;
};

[[nodiscard]] std::string place_text(const views::State& state, const PlaceBeside& beside);
/// Changes nothing and gives false when it is no such text.
bool read_place_text(std::string_view text, views::State& state, PlaceBeside& beside);

} // namespace treadle::web
