// Runs a page in the browser: canvas, listeners, frames, mirror.

#pragma once

#include "platform/page.h"
#include "platform/ports.h"

#include <string>

namespace treadle::platform::browser {

/// The browser's answers. One for the whole program.
[[nodiscard]] Ports& ports();

/// A file that the boot script fetched before the program started: 0 regular, 1 bold.
[[nodiscard]] std::string boot_file(int index);

/// Takes over the stage and draws. Returns at once; the page must live on. False when there is no
/// WebGL 2: the user has then been told.
bool run(Page& page);

} // namespace treadle::platform::browser
