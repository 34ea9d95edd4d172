// The keys of the number pad: which there are, and where each stands.

#pragma once

#include "platform/ports.h"
#include "ui/widgets/entry.h"
#include "ui/widgets/ui.h"

#include <optional>
#include <string_view>

namespace treadle::ui {

struct PadKey {
    std::string_view id;
    std::string_view label;
    std::string_view name; ///< spoken
    platform::TextEdit::Kind kind = platform::TextEdit::Kind::insert;
    std::string_view text; ///< to insert
    int steps = 0;         ///< a key that goes up or down by so many steps
    bool for_feet = false; ///< of use only where feet and inches are written
};

/// high: four columns, the signs above the digits. wide: six columns, the signs beside them.
enum class PadShape : std::uint8_t { high, wide };

/// What a digit is high where there is room.
[[nodiscard]] float pad_digit_height(const Ui& ui);
[[nodiscard]] float pad_keys_height(const Ui& ui, PadShape shape, float digit_height);
/// Fills `rect`. Returns the key that was pressed.
std::optional<PadKey> pad_keys(Ui& ui, const Rect& rect, PadShape shape, const Entering& entry);

} // namespace treadle::ui
