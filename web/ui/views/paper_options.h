// The wishes for paper as the sheets take them.

#pragma once

#include "sheet/template.h"

#include "ui/views/paper_wishes.h"

namespace treadle::views {

[[nodiscard]] sheet::SheetKinds sheet_kinds(const PaperWishes& wishes);
[[nodiscard]] sheet::Paper paper_of(const PaperWishes& wishes);
[[nodiscard]] sheet::SheetUnits units_of(const PaperWishes& wishes);
[[nodiscard]] sheet::TemplateOptions template_options(const PaperWishes& wishes);

} // namespace treadle::views
