#include "ui/widgets/number_pad.h"

#include "ui/widgets/controls.h"
#include "ui/widgets/echo_line.h"
#include "ui/widgets/pad_keys.h"

#include <cmath>

namespace treadle::ui {

namespace {

using Side = NumberPad::Side;
using Edit = platform::TextEdit;

constexpr float k_side_width = 440;
constexpr float k_margin = 12;
constexpr float k_most_of_height = 0.62F; ///< of a screen, at its bottom
constexpr float k_least_left = 150;       ///< of a low screen: a field with its label

bool is_at_side(Side side) { return side == Side::left || side == Side::right; }

/// Four columns where it is narrow, six where there is no height to spare.
PadShape shape_at(Side side, const Rect& screen) {
    return is_at_side(side) || screen.w < 560 ? PadShape::high : PadShape::wide;
}

float height_at_bottom(const Ui& ui, const Rect& screen) {
    const PadShape shape = shape_at(Side::bottom, screen);
    const float whole =
        echo_height(ui) + pad_keys_height(ui, shape, pad_digit_height(ui)) + 3 * k_margin;
    const float least =
        echo_height(ui) + pad_keys_height(ui, shape, ui.size().target) + 3 * k_margin;
    const float most = std::min(screen.h * k_most_of_height, screen.h - k_least_left);
    // Whole pixels: the mirror has no others.
    return std::floor(std::min(std::clamp(whole, 0.0F, std::max(least, most)), screen.h));
}

Rect place_at(const Ui& ui, const Rect& screen, Side side) {
    Rect rest = screen;
    if (side == Side::left)
        return rest.cut_left(k_side_width);
    if (side == Side::right)
        return rest.cut_right(k_side_width);
    return rest.cut_bottom(height_at_bottom(ui, screen));
}

std::optional<Edit> edit_for(const Entering& entry, const PadKey& key) {
    if (key.steps == 0)
        return Edit{key.kind, entry.id, std::string(key.text)};
    if (!entry.kind.step)
        return std::nullopt;
    auto stepped = entry.kind.step(entry.typed, key.steps);
    if (!stepped)
        return std::nullopt;
    return Edit{Edit::Kind::replace, entry.id, std::move(*stepped)};
}

} // namespace

Side NumberPad::side_for(const Ui& ui, const Rect& screen, const Rect& box) const {
    const auto is_free = [&](Side side) {
        const Rect around{box.x - k_margin, box.y, box.w + 2 * k_margin, box.h};
        return place_at(ui, screen, side).common(around).is_empty();
    };
    if (side_ == Side::bottom || screen.w < screen.h || screen.w < 2 * k_side_width)
        return Side::bottom;
    if (side_ != Side::none && is_free(side_))
        return side_;
    const bool is_left = box.x + box.w / 2 < screen.w / 2;
    const Side away = is_left ? Side::right : Side::left;
    return is_free(away) ? away : Side::bottom;
}

Rect NumberPad::room_for_page(const Ui& ui, const Rect& screen) const {
    Rect rest = screen;
    if (side_ == Side::bottom)
        rest.cut_bottom(height_at_bottom(ui, screen));
    return rest; // at the side it lies over what is not being filled in
}

std::optional<Edit>
NumberPad::draw(Ui& ui, const Rect& screen, const std::optional<Entering>& entry) {
    const bool wanted = entry && (ui.pad_wish() == PadWish::always ||
                                  (ui.pad_wish() == PadWish::by_touch && entry->by_touch));
    const Side wish = wanted ? side_for(ui, screen, entry->box) : Side::none;
    if (wish != side_) {
        side_ = wish; // the page makes room first
        ui.want_frame();
        return std::nullopt;
    }
    if (!entry)
        return std::nullopt;
    if (side_ == Side::none) {
        auto chosen = echo_beside(ui, screen, *entry);
        return chosen ? std::optional<Edit>({Edit::Kind::replace, entry->id, std::move(*chosen)})
                      : std::nullopt;
    }
    Rect place = place_at(ui, screen, side_);
    ui.fill(place, Ink::bench);
    if (side_ == Side::bottom)
        ui.fill({place.x, place.y, place.w, ui.size().stroke}, Ink::ink);
    else
        ui.fill({side_ == Side::left ? place.right() - ui.size().stroke : place.x,
                 place.y,
                 ui.size().stroke,
                 place.h},
                Ink::ink);
    const Group group(ui, "pad", place, "Number pad");
    ui.semantics().last().keeps_focus = true;
    Rect rest = place.inset(k_margin);
    std::optional<Edit> edit;
    if (auto chosen = echo_on_pad(ui, rest.cut_top(echo_height(ui), k_margin), *entry))
        edit = Edit{Edit::Kind::replace, entry->id, std::move(*chosen)};
    if (const auto key = pad_keys(ui, rest, shape_at(side_, screen), *entry))
        edit = edit_for(*entry, *key);
    return edit;
}

} // namespace treadle::ui
