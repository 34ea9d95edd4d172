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

/// Takes over the stage and draws. Returns at once; the page must live on. Without WebGL 2 nothing
/// is drawn: the mirror's elements are shown in its place.
void run(Page& page);

} // namespace treadle::platform::browser
