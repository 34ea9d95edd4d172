// One of a few, as keys that all stand in sight: the chosen one is filled and has a tick.

#pragma once

#include "ui/widgets/ui.h"

#include <optional>
#include <span>
#include <string>
#include <string_view>

namespace treadle::ui {

/// Fills `rect` from its top, in as many ranks as the words need. Returns a new choice; `bottom` is
/// set to where it ended.
std::optional<int> choice_keys(Ui& ui,
                               std::string_view id,
                               const Rect& rect,
                               std::string_view name,
                               std::span<const std::string> labels,
                               int selected,
                               float& bottom);

} // namespace treadle::ui
