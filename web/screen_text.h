// The wishes for the screen as text, to be kept on the device.

#pragma once

#include "ui/views/screen_wishes.h"

#include <optional>
#include <string>
#include <string_view>

namespace treadle::web {

[[nodiscard]] std::string screen_text(const views::ScreenWishes& wishes);
/// None when it is no such text. A wish that is not known stays as the device has it.
[[nodiscard]] std::optional<views::ScreenWishes> read_screen_text(std::string_view text);

} // namespace treadle::web
