// A refusal as a field says it: why, what is allowed, and how to mend it.

#pragma once

#include "base/result.h"

#include <string>
#include <string_view>

namespace treadle::views {

/// "This has to be above zero. Allowed: above 0 and below 100 m (328 ft)."
[[nodiscard]] std::string refusal_words(const base::Refusal& refusal);
/// The field that a path ends with: "operations[2].at.row_pitch" -> "Row pitch".
[[nodiscard]] std::string field_words(std::string_view path);
/// How to mend it, and what the field holds until then: what was there before.
[[nodiscard]] std::string mend_words(std::string_view kept);

} // namespace treadle::views
