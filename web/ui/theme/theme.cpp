#include "ui/theme/theme.h"

#include <cmath>

namespace treadle::ui {

namespace {

constexpr Colour rgb(std::uint32_t hex) {
    return 0xFF000000U | ((hex & 0xFFU) << 16U) | (hex & 0xFF00U) | ((hex >> 16U) & 0xFFU);
}

//                             paper          bench          ink            quiet
//                             line           touch          steel          cut
//                             fits           up_to          does_not_fit   not_known
constexpr Palette k_light{{rgb(0xffffff),
                           rgb(0xeef0f1),
                           rgb(0x14191d),
                           rgb(0x4d585f),
                           rgb(0xaeb8be),
                           rgb(0x0b4f6c),
                           rgb(0xdde6eb),
                           rgb(0x14191d),
                           rgb(0x1d6438),
                           rgb(0x7d4e00),
                           rgb(0x9c1f17),
                           rgb(0x54457a)}};
constexpr Palette k_dark{{rgb(0x171c20),
                          rgb(0x0f1316),
                          rgb(0xf0f3f4),
                          rgb(0xaab5bb),
                          rgb(0x46525a),
                          rgb(0x8fd0ec),
                          rgb(0x33414a),
                          rgb(0xf0f3f4),
                          rgb(0x7fd49c),
                          rgb(0xf0bd63),
                          rgb(0xff9b90),
                          rgb(0xc5b5f2)}};
// In direct sun only black on white is left; a tint or a grey is lost.
constexpr Palette k_sun{{rgb(0xffffff),
                         rgb(0xffffff),
                         rgb(0x000000),
                         rgb(0x000000),
                         rgb(0x000000),
                         rgb(0x002b3f),
                         rgb(0xffffff),
                         rgb(0x000000),
                         rgb(0x003d16),
                         rgb(0x4a2e00),
                         rgb(0x7a0000),
                         rgb(0x2e1f5c)}};

double linear(double channel) {
    return channel <= 0.04045 ? channel / 12.92 : std::pow((channel + 0.055) / 1.055, 2.4);
}

double luminance(Colour colour) {
    const double red = (colour & 0xFFU) / 255.0;
    const double green = ((colour >> 8U) & 0xFFU) / 255.0;
    const double blue = ((colour >> 16U) & 0xFFU) / 255.0;
    return 0.2126 * linear(red) + 0.7152 * linear(green) + 0.0722 * linear(blue);
}

} // namespace

const Palette& palette(ThemeKind kind) {
    switch (kind) {
    case ThemeKind::dark:
        return k_dark;
    case ThemeKind::sun:
        return k_sun;
    case ThemeKind::light:
        break;
    }
    return k_light;
}

double contrast(Colour a, Colour b) {
    const double la = luminance(a);
    const double lb = luminance(b);
    return (std::fmax(la, lb) + 0.05) / (std::fmin(la, lb) + 0.05);
}

Metrics metrics(Density density, float text_scale) {
    Metrics m;
    if (density == Density::shop) {
        m.target = 56;
        m.primary = 80;
        m.gap = 12;
    }
    m.text_scale = text_scale;
    m.target *= text_scale;
    m.primary *= text_scale;
    m.row *= text_scale;
    return m;
}

float text_px(TextSize size) {
    switch (size) {
    case TextSize::small:
        return 16;
    case TextSize::large:
        return 24;
    case TextSize::title:
        return 30;
    case TextSize::figure:
        return 64;
    case TextSize::huge:
        return 160;
    case TextSize::body:
        break;
    }
    return 20;
}

Theme make_theme(ThemeKind kind, Density density, float text_scale) {
    Theme theme{kind, density, palette(kind), metrics(density, text_scale)};
    if (kind == ThemeKind::sun) {
        theme.metrics.stroke = 3;
        theme.metrics.key_stroke = 4;
    }
    return theme;
}

} // namespace treadle::ui
