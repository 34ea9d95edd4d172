// Signs of the trade that the typeface lacks, drawn into its atlas by hand.

#pragma once

#include "ui/theme/theme.h"

#include <vector>

struct ImFont;
struct ImFontAtlas;

namespace treadle::ui {

/// Keeps room for the signs in every size, and draws them once the atlas is built.
class Signs {
public:
    /// Before the atlas is built. `px` as on the screen, `density` device pixels to one of them.
    void reserve(ImFontAtlas& atlas, ImFont& font, float px, bool bold, float density);
    /// After the atlas is built.
    void paint(ImFontAtlas& atlas) const;

private:
    struct Place {
        ImFont* font;
        int rect;
        unsigned sign;
        float density;
        bool bold;
    };
    std::vector<Place> places_;
};

} // namespace treadle::ui
