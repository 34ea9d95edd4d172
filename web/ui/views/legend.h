// What the fills of a picture mean: samples drawn by the core as the picture is, with words.

#pragma once

#include "ui/views/picture.h"
#include "ui/widgets/ui.h"

#include <span>

namespace treadle::views {

struct Sample {
    const char* words;
    sheet::Drawing (*draw)(sheet::PictureBox box);
};

/// In a line or more; the height used. `kept` has a picture for each sample.
float legend(ui::Ui& ui,
             const ui::Rect& rect,
             std::span<const Sample> samples,
             std::span<KeptPicture> kept,
             ui::Ink hatch = ui::Ink::quiet);

} // namespace treadle::views
