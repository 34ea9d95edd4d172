#include "ui/widgets/pad_keys.h"

#include "ui/widgets/controls.h"

#include <array>
#include <cmath>
#include <string>

namespace treadle::ui {

namespace {

using Kind = platform::TextEdit::Kind;

constexpr std::size_t k_count = 24;
constexpr int k_digit_rows = 4;
constexpr int k_sign_rows = 2; ///< above the digits of the high shape

// Digits stand as on the number block of a keyboard, the nought at the bottom.
constexpr std::array<PadKey, k_count> k_keys{{
    {"down", "", "One step less", Kind::replace, "", -1, false},
    {"up", "", "One step more", Kind::replace, "", 1, false},
    {"unit0", "", "", Kind::insert, "", 0, false},
    {"unit1", "", "", Kind::insert, "", 0, false},
    {"feet", "'", "' feet", Kind::insert, "'", 0, true},
    {"inches", "\"", "\" inches", Kind::insert, "\"", 0, true},
    {"bar", "/", "/ fraction bar", Kind::insert, "/", 0, false},
    {"dash", "-", "- dash", Kind::insert, "-", 0, false},
    {"7", "7", "7", Kind::insert, "7", 0, false},
    {"8", "8", "8", Kind::insert, "8", 0, false},
    {"9", "9", "9", Kind::insert, "9", 0, false},
    {"erase", "Back", "Back one sign", Kind::erase, "", 0, false},
    {"4", "4", "4", Kind::insert, "4", 0, false},
    {"5", "5", "5", Kind::insert, "5", 0, false},
    {"6", "6", "6", Kind::insert, "6", 0, false},
    {"clear", "Clear", "Clear the field", Kind::replace, "", 0, false},
    {"1", "1", "1", Kind::insert, "1", 0, false},
    {"2", "2", "2", Kind::insert, "2", 0, false},
    {"3", "3", "3", Kind::insert, "3", 0, false},
    {"next", "Next", "Next field", Kind::next, "", 0, false},
    {"point", ".", ". point", Kind::insert, ".", 0, false},
    {"0", "0", "0", Kind::insert, "0", 0, false},
    {"space", "space", "space", Kind::insert, " ", 0, false},
    {"done", "Done", "Done", Kind::done, "", 0, false},
}};

struct Cell {
    int column;
    int row;
};

/// Where the key at `index` of the list stands. high: the list read in fours. wide: digits in
/// three columns, then the eight signs in two, then what leaves or clears the field.
Cell cell_of(std::size_t index, PadShape shape) {
    const int at = static_cast<int>(index);
    if (shape == PadShape::high)
        return {at % 4, at / 4};
    if (at < 8) // pairs go down: steps, units, feet and inches, bar and dash
        return {3 + at % 2, at / 2};
    const int column = (at - 8) % 4;
    return {column == 3 ? 5 : column, (at - 8) / 4};
}

float sign_height(const Ui& ui) { return ui.size().target; }

PadKey key_at(std::size_t index, const Entering& entry, std::string& label) {
    PadKey key = k_keys[index];
    if (key.steps != 0) {
        label = (key.steps < 0 ? "− " : "+ ") + std::string(entry.kind.step_words);
        key.label = label;
    } else if (index == 2 || index == 3) {
        const std::string_view unit = entry.kind.units[index - 2];
        key.label = unit;
        key.name = unit;
        key.text = unit;
    }
    return key;
}

bool is_of_use(const PadKey& key, const Entering& entry) {
    if (key.steps != 0)
        return entry.kind.step && entry.kind.step(entry.typed, key.steps).has_value();
    if (key.kind == Kind::insert && key.text.empty())
        return false; // a unit that this field does not have
    return !key.for_feet || entry.kind.feet;
}

bool is_shown(const PadKey& key, const Entering& entry) {
    if (key.steps != 0)
        return static_cast<bool>(entry.kind.step);
    return is_of_use(key, entry);
}

} // namespace

float pad_digit_height(const Ui& ui) {
    return ui.theme().density == Density::shop ? 104.0F : 56.0F;
}

float pad_keys_height(const Ui& ui, PadShape shape, float digit_height) {
    const float gap = ui.size().gap;
    const float digits = k_digit_rows * digit_height + (k_digit_rows - 1) * gap;
    return shape == PadShape::wide ? digits : digits + k_sign_rows * (sign_height(ui) + gap);
}

std::optional<PadKey> pad_keys(Ui& ui, const Rect& rect, PadShape shape, const Entering& entry) {
    const Scope scope(ui, "pad");
    const float gap = ui.size().gap;
    const bool high = shape == PadShape::high;
    const float taken = pad_keys_height(ui, shape, 0);
    const float digit = std::clamp((rect.h - taken) / k_digit_rows, 44.0F, 120.0F);
    std::optional<PadKey> pressed;
    std::string label;
    for (std::size_t i = 0; i < k_count; ++i) {
        const PadKey key = key_at(i, entry, label);
        if (!is_shown(key, entry))
            continue; // its place stays empty: no key moves
        const Cell cell = cell_of(i, shape);
        Rect place = rect.column(cell.column, high ? 4 : 6, gap);
        const int signs = high ? std::min(cell.row, k_sign_rows) : 0;
        place.y += static_cast<float>(signs) * (sign_height(ui) + gap) +
                   static_cast<float>(cell.row - signs) * (digit + gap);
        place.h = high && cell.row < k_sign_rows ? sign_height(ui) : digit;
        Button face;
        face.label = key.label;
        face.name = key.name;
        face.enabled = is_of_use(key, entry);
        face.why_not = "What is typed has no such step";
        face.size = key.label.size() == 1 ? TextSize::title : TextSize::body;
        face.look = key.kind == Kind::next ? KeyLook::primary : KeyLook::normal;
        if (button(ui, key.id, place, face)) {
            pressed = key;
            if (i == 2 || i == 3)
                pressed->text = entry.kind.units[i - 2];
        }
    }
    return pressed;
}

} // namespace treadle::ui
