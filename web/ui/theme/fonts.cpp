#include "ui/theme/fonts.h"

#include "ui/theme/signs.h"

#include <imgui.h>

namespace treadle::ui {

namespace {

// Latin with accents, dashes, quotes, dots, feet and inch marks, eighths, arrows, root, bounds.
constexpr std::array<ImWchar, 29> k_letters{
    0x20,   0x7E,   0xA0,   0x17F,  0x2010, 0x2015, 0x2018, 0x201D, 0x2022, 0x2022,
    0x2026, 0x2026, 0x2032, 0x2033, 0x215B, 0x215E, 0x2190, 0x2193, 0x2212, 0x2212,
    0x221A, 0x221A, 0x2248, 0x2248, 0x2264, 0x2265, 0x2713, 0x2713, 0};
// The figures to set, read from two metres: digits and what stands between them, and unit letters.
constexpr std::array<ImWchar, 13> k_figures{
    0x20, 0x3A, 0x5F, 0x7A, 0xB0, 0xB1, 0xD7, 0xD7, 0x2013, 0x2014, 0x2032, 0x2033, 0};
constexpr std::array<ImWchar, 3> k_digits{0x20, 0x3A, 0};
// Dear ImGui sizes a face by ascent less descent, a style sheet by the em. B612: 2430 of 2000.
constexpr float k_line_per_em = 1.215F;

const ImWchar* range(TextSize size) {
    switch (size) {
    case TextSize::huge:
        return k_digits.data();
    case TextSize::figure:
        return k_figures.data();
    default:
        return k_letters.data();
    }
}

} // namespace

void Fonts::build(const FontFiles& files, float density, float text_scale) {
    ImFontAtlas& atlas = *ImGui::GetIO().Fonts;
    atlas.Clear();
    atlas.Flags |= ImFontAtlasFlags_NoMouseCursors;
    Signs signs;
    for (std::size_t weight = 0; weight < fonts_.size(); ++weight) {
        const std::string& file = weight == 1 && !files.bold.empty() ? files.bold : files.regular;
        for (std::size_t i = 0; i < fonts_[weight].size(); ++i) {
            const auto size = static_cast<TextSize>(i);
            const float px = text_px(size) * (size < TextSize::figure ? text_scale : 1.0F) *
                             (file.empty() ? 1.0F : k_line_per_em);
            ImFontConfig config;
            config.FontDataOwnedByAtlas = false;
            config.RasterizerDensity = density;
            config.OversampleH = 1;
            config.PixelSnapH = false;
            config.GlyphRanges = range(size);
            if (file.empty()) {
                config.SizePixels = px;
                fonts_[weight][i] = atlas.AddFontDefault(&config);
            } else {
                // The atlas only reads, though its signature does not say so.
                fonts_[weight][i] = atlas.AddFontFromMemoryTTF(const_cast<char*>(file.data()),
                                                               static_cast<int>(file.size()),
                                                               px,
                                                               &config,
                                                               config.GlyphRanges);
            }
            if (size < TextSize::figure)
                signs.reserve(atlas, *fonts_[weight][i], px / k_line_per_em, weight == 1, density);
        }
    }
    atlas.Build();
    signs.paint(atlas);
}

} // namespace treadle::ui
