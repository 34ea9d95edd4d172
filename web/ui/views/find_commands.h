// What can be done from the search at once, by name.

#pragma once

#include "ui/views/desk.h"

#include <span>

namespace treadle::views {

struct CommandName {
    Command command;
    const char* name;
    const char* also;  ///< other words for it
    const char* where; ///< where its own key stands
};
[[nodiscard]] std::span<const CommandName> command_names();

void do_command(Desk& desk, Command command);

} // namespace treadle::views
