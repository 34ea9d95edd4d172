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

/// Each ink has one reason to be there; what has none of these reasons is drawn in `ink`.
enum class Ink : std::uint8_t {
    paper, ///< what is worked on: drawing, form, chosen row. White, the most light a screen gives
    bench, ///< what lies around it. One step darker, so that paper is found without a frame
    ink,   ///< what is: text, figures, the rule between regions. Nearly black, for contrast
    quiet, ///< what explains: second lines, units, notes. Read when looked for, still 4.5 on steel
    line,  ///< rules between rows of one list: seen, never read
    touch, ///< what can be pressed, and nothing else. Blue-green: no verdict is near it
    steel, ///< metal in a drawing. A tint of what a mill plate looks like; holes stay paper
    cut,   ///< edges of metal in a drawing
    // Verdicts. Hues that stay apart for eyes that confuse red and green (they differ in
    // lightness and in blue too), and each has a shape and a word of its own beside it.
    fits,         ///< green, as on every gauge
    up_to,        ///< amber, the colour of "look first": fits up to a strength that must be read
    does_not_fit, ///< red
    not_known,    ///< violet: neither good nor bad, and no other thing has it
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

/// Lengths in CSS pixels. Distances are steps of 4: 4 between a thing and its own words, 8 between
/// neighbours at the desk, 12 in the shop, 16 around a region, 24 around what destroys.
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
