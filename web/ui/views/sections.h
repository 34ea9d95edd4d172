// Pieces that places made of headed sections share: a title with a line under it, and keys side by
// side on as many lines as they need.

#pragma once

#include "ui/views/desk.h"
#include "ui/widgets/controls.h"

#include <span>
#include <string_view>

namespace treadle::views {

/// Both return where they ended.
float section_title(ui::Ui& ui, ui::Rect rest, std::string_view words, std::string_view more);

struct SectionKey {
    const char* label;
    const char* name;
    Ask ask;
    ui::Icon icon = ui::Icon::none;
    ui::KeyLook look = ui::KeyLook::normal;
    bool enabled = true;
    const char* why_not = "";
};
float section_keys(Desk& desk, const ui::Rect& rect, std::span<const SectionKey> keys);

} // namespace treadle::views
