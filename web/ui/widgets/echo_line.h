// What the figure that is being typed would be read as, in words that can be checked before it is
// taken; and one key for each meaning when it has two.

#pragma once

#include "ui/widgets/entry.h"
#include "ui/widgets/ui.h"

#include <optional>
#include <string>

namespace treadle::ui {

/// Room at the top of the pad: name of the field, what is typed, and the echo or two keys.
[[nodiscard]] float echo_height(const Ui& ui);
/// Returns the text to be typed for the meaning that was chosen.
std::optional<std::string> echo_on_pad(Ui& ui, const Rect& rect, const Entering& entry);
/// A slip below the field, or above it where there is no room; only once something was typed.
std::optional<std::string> echo_beside(Ui& ui, const Rect& screen, const Entering& entry);

} // namespace treadle::ui
