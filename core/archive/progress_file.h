// Progress at the machine to bytes and back: what the page keeps of work that is going on.
//
// Format: one JSON object, "format": "treadle-progress", "version": 1, "jobs": a list. Never sent
// to anybody, but a browser's store holds what an older or newer page left there: foreign bytes.

#pragma once

#include "archive/versions.h"
#include "base/result.h"
#include "job/progress.h"

#include <string>
#include <string_view>
#include <vector>

namespace treadle::archive {

/// The latest first; older ones are not written.
inline constexpr std::size_t k_most_progress = 20;

/// Job names once each, counts in range; anything else is refused with its place.
[[nodiscard]] base::Result<std::vector<job::Progress>> read_progress(std::string_view bytes);
[[nodiscard]] std::string write_progress(const std::vector<job::Progress>& jobs);

} // namespace treadle::archive
