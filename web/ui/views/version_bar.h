// A quiet line about this page itself: a new version, or what this form of it cannot do.

#pragma once

#include "ui/views/desk.h"

#include <string>

namespace treadle::views {

/// Returns the height used; 0 when there is nothing to say.
float version_bar(Desk& desk, const ui::Rect& rect);

/// For the line under the job's name: "works offline", "online only", or empty.
[[nodiscard]] std::string offline_words(const VersionBoard& board);

/// Version, use without a network, and keys for what comes with the page, under Help. Returns
/// where it ended.
float version_words(Desk& desk, ui::Rect rest);

} // namespace treadle::views
