// One step at the machine on the whole screen: what to set, large; counter; keys that stay put.

#pragma once

#include "ui/views/desk.h"

namespace treadle::views {

/// Where the keys at the bottom are: the same for every step, by size of the screen and hand alone.
struct AtMachineKeys {
    ui::Rect bar;
    ui::Rect back;
    ui::Rect minus;
    ui::Rect count;
    ui::Rect plus;
    ui::Rect next;
};
[[nodiscard]] AtMachineKeys
at_machine_keys(const ui::Ui& ui, const ui::Rect& screen, bool left_handed);

void at_machine(Desk& desk, const ui::Rect& screen);

} // namespace treadle::views
