// The wishes for paper as text, to be kept on the device.

#pragma once

#include "ui/views/paper_wishes.h"

#include <optional>
#include <string>
#include <string_view>

namespace treadle::web {

[[nodiscard]] std::string paper_text(const views::PaperWishes& wishes);
/// None when it is no such text. Printers with factors that no printer has are left out.
[[nodiscard]] std::optional<views::PaperWishes> read_paper_text(std::string_view text);

} // namespace treadle::web
