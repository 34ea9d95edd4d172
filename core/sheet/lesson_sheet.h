// What somebody answered in a lesson, on paper.

#pragma once

#include "sheet/worksheet.h"

#include <string>

#include "lesson/record.h"

namespace treadle::sheet {

/// A page that stands alone; a line for the name is left to be written by hand, so that none is
/// asked for. Of the options paper, style and the title of a source count.
[[nodiscard]] std::string lesson_html(const lesson::Results& results, const SheetOptions& options);

} // namespace treadle::sheet
