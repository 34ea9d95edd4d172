// How one wants the screen to look and to be held. Of the device, not of the job.

#pragma once

#include "ui/theme/theme.h"
#include "ui/widgets/entry.h"

#include <array>
#include <cstdint>
#include <optional>

namespace treadle::views {

enum class Hand : std::uint8_t { right, left };
using ui::PadWish;

struct ScreenWishes {
    std::optional<ui::ThemeKind> theme; ///< none: as the device
    std::optional<ui::Density> density; ///< none: as the device
    int text_percent = 100;             ///< one of k_text_percents
    Hand hand = Hand::right;            ///< which thumb the keys of the machine view lie under
    PadWish pad = PadWish::by_touch;
    friend bool operator==(const ScreenWishes& a, const ScreenWishes& b) {
        return a.theme == b.theme && a.density == b.density && a.text_percent == b.text_percent &&
               a.hand == b.hand && a.pad == b.pad;
    }
};

inline constexpr std::array k_text_percents{100, 115, 130, 150, 175, 200};

} // namespace treadle::views
