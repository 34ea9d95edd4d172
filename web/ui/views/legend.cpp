#include "ui/views/legend.h"

#include "ui/views/paint.h"
#include "ui/widgets/text.h"

#include <cmath>

namespace treadle::views {

namespace {

constexpr ui::TextStyle k_words{ui::TextSize::small, false, ui::Ink::ink, ui::Align::left};

} // namespace

float legend(ui::Ui& ui,
             const ui::Rect& rect,
             std::span<const Sample> samples,
             std::span<KeptPicture> kept,
             ui::Ink hatch) {
    const float line = ui::line_height(ui, ui::TextSize::small) + 4;
    const float side = std::round(line * 1.4F);
    ui::Rect rest{rect.x, rect.y, rect.w, line};
    for (std::size_t i = 0; i < samples.size() && i < kept.size(); ++i) {
        const float width = side + 8 + ui::text_width(ui, samples[i].words, k_words);
        if (rest.x > rect.x && rest.w < width)
            rest = {rect.x, rest.bottom(), rect.w, line};
        ui::Rect place = rest.cut_left(width, 20);
        const ui::Rect box = place.cut_left(side, 8);
        if (ui.is_visible(box))
            paint_silent(ui, box, kept[i].in({box.w, box.h, type_of(ui)}, samples[i].draw), hatch);
        ui::text(ui, place, samples[i].words, k_words);
    }
    return rest.bottom() - rect.y;
}

} // namespace treadle::views
