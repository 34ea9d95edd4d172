// The typeface in its sizes, rasterised for the screen's density.
//
// Two files of one family are handed over as bytes at the start. They are not part of the program.

#pragma once

#include "ui/theme/theme.h"

#include <array>
#include <string>

struct ImFont;

namespace treadle::ui {

struct FontFiles {
    std::string regular; ///< bytes of an OpenType or TrueType file; empty: the built-in face
    std::string bold;
};

class Fonts {
public:
    /// Builds the atlas of the current Dear ImGui context anew. The renderer must then load it.
    void build(const FontFiles& files, float density, float text_scale);

    [[nodiscard]] ImFont* get(TextSize size, bool bold) const {
        return fonts_[bold ? 1 : 0][static_cast<std::size_t>(size)];
    }

private:
    std::array<std::array<ImFont*, k_text_size_count>, 2> fonts_{};
};

} // namespace treadle::ui
