// Keys for figures, drawn by the page in place of the system's keyboard, and what the figure that
// is being typed would be read as: on the pad, or beside the field for whoever has a keyboard.
//
// The pad stands at the bottom, or at the side where the field is not. It stays there from field to
// field, so that no key moves under the finger.

#pragma once

#include "platform/ports.h"
#include "ui/widgets/entry.h"
#include "ui/widgets/ui.h"

#include <optional>

namespace treadle::ui {

class NumberPad {
public:
    enum class Side : std::uint8_t { none, bottom, left, right };

    /// What the pad leaves of the screen to the page in this frame.
    [[nodiscard]] Rect room_for_page(const Ui& ui, const Rect& screen) const;
    /// To be called after the page was drawn, with the field that has the keyboard, if any does.
    /// What a key asks of the text of that field.
    std::optional<platform::TextEdit>
    draw(Ui& ui, const Rect& screen, const std::optional<Entering>& entry);

    [[nodiscard]] Side side() const { return side_; }

private:
    [[nodiscard]] Side side_for(const Ui& ui, const Rect& screen, const Rect& box) const;

    Side side_ = Side::none;
};

} // namespace treadle::ui
