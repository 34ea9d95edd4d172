// The inks and sizes that every widget draws with. Views name an ink, never a colour.
//
// Ink for what is, one blue-green for what can be pressed, four verdict inks, paper and steel.
// A verdict ink never stands alone: the widgets put a shape and a word with it.

#pragma once

#include <array>
#include <cstddef>
#include <cstdint>

namespace treadle::ui {

/// 0xAABBGGRR, the order that Dear ImGui draws.
using Colour = std::uint32_t;

enum class Ink : std::uint8_t {
    paper,
    bench, ///< ground behind lists
    ink,
    quiet, ///< second line of text
    line,
    touch, ///< what can be pressed
    steel, ///< fill of metal in a drawing
    cut,   ///< outline of metal in a drawing
    fits,
    up_to,
    does_not_fit,
    not_known,
};
constexpr std::size_t k_ink_count = static_cast<std::size_t>(Ink::not_known) + 1;

enum class ThemeKind : std::uint8_t { light, dark, sun };

/// Desk: fine pointer. Shop: fingers, thin gloves.
enum class Density : std::uint8_t { desk, shop };

enum class TextSize : std::uint8_t { small, body, large, title, figure, huge };
constexpr std::size_t k_text_size_count = static_cast<std::size_t>(TextSize::huge) + 1;

struct Palette {
    std::array<Colour, k_ink_count> colours{};
    [[nodiscard]] Colour operator[](Ink ink) const {
        return colours[static_cast<std::size_t>(ink)];
    }
};

[[nodiscard]] const Palette& palette(ThemeKind kind);

/// Ratio of luminances by WCAG 2.2, 1 to 21.
[[nodiscard]] double contrast(Colour a, Colour b);

/// Lengths in CSS pixels.
struct Metrics {
    float target = 32;     ///< least height of what can be pressed
    float primary = 44;    ///< height of the main action
    float row = 84;        ///< list row with picture and verdict
    float gap = 8;         ///< between things that can be pressed
    float danger_gap = 24; ///< between a destructive key and any other
    float margin = 16;
    float stroke = 2;     ///< rule between regions
    float key_stroke = 3; ///< outline of a key
    float text_scale = 1; ///< the user's own, 1 to 2
};

[[nodiscard]] Metrics metrics(Density density, float text_scale);

/// Height of a line of type in CSS pixels before the user's scale.
[[nodiscard]] float text_px(TextSize size);

struct Theme {
    ThemeKind kind = ThemeKind::light;
    Density density = Density::desk;
    Palette palette;
    Metrics metrics;
};

[[nodiscard]] Theme make_theme(ThemeKind kind, Density density, float text_scale);

} // namespace treadle::ui
