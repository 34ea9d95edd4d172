#include "ui/theme/signs.h"

#include <imgui.h>

#include <algorithm>
#include <array>
#include <cmath>

namespace treadle::ui {

namespace {

constexpr unsigned k_diameter = 0x2300;
constexpr unsigned k_angle = 0x2220;

struct Line {
    float x0, y0, x1, y1;
};

float distance(float px, float py, const Line& line) {
    const float dx = line.x1 - line.x0;
    const float dy = line.y1 - line.y0;
    const float along =
        std::clamp(((px - line.x0) * dx + (py - line.y0) * dy) / (dx * dx + dy * dy), 0.0F, 1.0F);
    return std::hypot(px - line.x0 - along * dx, py - line.y0 - along * dy);
}

/// How far a point of the unit square is from the pen's middle line.
float pen_distance(unsigned sign, float x, float y) {
    if (sign == k_diameter) {
        const float ring = std::fabs(std::hypot(x - 0.5F, y - 0.5F) - 0.34F);
        return std::min(ring, distance(x, y, {0.14F, 0.92F, 0.86F, 0.08F}));
    }
    return std::min(distance(x, y, {0.1F, 0.84F, 0.9F, 0.84F}),
                    distance(x, y, {0.1F, 0.84F, 0.74F, 0.16F}));
}

} // namespace

void Signs::reserve(ImFontAtlas& atlas, ImFont& font, float px, bool bold, float density) {
    // As high as a capital, which is about seven tenths of the size.
    const float side = std::round(px * 0.74F);
    const int pixels = static_cast<int>(side * density);
    for (const unsigned sign : {k_diameter, k_angle}) {
        const int rect = atlas.AddCustomRectFontGlyph(&font,
                                                      static_cast<ImWchar>(sign),
                                                      pixels,
                                                      pixels,
                                                      side + std::round(px * 0.1F),
                                                      ImVec2(0, std::round(px * 0.2F)));
        places_.push_back({&font, rect, sign, density, bold});
    }
}

void Signs::paint(ImFontAtlas& atlas) const {
    unsigned char* pixels = nullptr;
    int width = 0;
    int height = 0;
    atlas.GetTexDataAsAlpha8(&pixels, &width, &height);
    for (const Place& place : places_) {
        const ImFontAtlasCustomRect& rect = *atlas.GetCustomRectByIndex(place.rect);
        const auto side = static_cast<float>(rect.Width);
        // The atlas takes the size of such a glyph from its pixels and forgets the density.
        for (ImFontGlyph& glyph : place.font->Glyphs) {
            if (glyph.Codepoint != place.sign)
                continue;
            glyph.X1 = glyph.X0 + side / place.density;
            glyph.Y1 = glyph.Y0 + side / place.density;
        }
        const float half_pen = (place.bold ? 0.075F : 0.05F) * side;
        for (int y = 0; y < rect.Height; ++y) {
            for (int x = 0; x < rect.Width; ++x) {
                const float away = side * pen_distance(place.sign,
                                                       (static_cast<float>(x) + 0.5F) / side,
                                                       (static_cast<float>(y) + 0.5F) / side);
                const float cover = std::clamp(half_pen - away + 0.5F, 0.0F, 1.0F);
                pixels[(rect.Y + y) * width + rect.X + x] =
                    static_cast<unsigned char>(std::lround(cover * 255));
            }
        }
    }
}

} // namespace treadle::ui
