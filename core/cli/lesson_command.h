// `treadle lesson FILE [--seed N]`: a lesson with its answers, for whoever teaches it, and what is
// wrong with the file.

#pragma once

#include "base/result.h"

#include <string>
#include <string_view>
#include <vector>

namespace treadle::cli {

[[nodiscard]] base::Result<std::string> lesson_answer(const std::vector<std::string>& words);
/// What `check` says of a lesson: tried with the seeds from 1 to 20. Refuses with the first fault.
[[nodiscard]] base::Result<std::string> check_lesson(std::string_view bytes);

} // namespace treadle::cli
