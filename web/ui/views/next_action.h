// Where there is nothing yet: what to do next, with the keys that do it. And the line of the first
// start. Nothing here stands in the way of anything.

#pragma once

#include "ui/views/desk.h"

#include <optional>
#include <span>
#include <string_view>

namespace treadle::views {

/// Does the command, or goes to the place.
struct NextKey {
    const char* label;
    Command command = Command::none;
    std::optional<Place> place = std::nullopt;
};

/// The first key is the main one. Returns where it ended.
float next_action(Desk& desk,
                  const ui::Rect& rect,
                  std::string_view words,
                  std::span<const NextKey> keys);
/// Of a job without parts, whatever place shows it.
float no_parts_yet(Desk& desk, const ui::Rect& rect, std::string_view words);

/// Under the bar while the demo job is new. Returns the height used, from the top of `rect`.
float first_hint(Desk& desk, const ui::Rect& rect);

} // namespace treadle::views
