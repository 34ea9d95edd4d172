#include "ui/views/form.h"

#include "base/text.h"

#include "ui/views/figure_kinds.h"
#include "ui/views/refusal_words.h"
#include "ui/widgets/controls.h"
#include "ui/widgets/fields.h"
#include "ui/widgets/text.h"

#include <algorithm>
#include <cmath>
#include <utility>

namespace treadle::views {

namespace {

template <class Value>
const char* unknown(const std::optional<Value>& value) {
    return value ? "" : "not known";
}

} // namespace

Form::Form(Desk& desk, const ui::Rect& rect, std::string scope, float least_width)
    : desk_(desk),
      rest_(rect),
      scope_(std::move(scope)),
      row_y_(rect.y) {
    columns_of(least_width);
}

void Form::columns_of(float least_width) {
    new_line();
    const float scaled = least_width * desk_.ui.size().text_scale;
    const float gap = desk_.ui.size().gap;
    columns_ = std::max(1, static_cast<int>((rest_.w + gap) / (scaled + gap)));
}

std::string Form::full(std::string_view key) const { return scope_ + "/" + std::string(key); }

/// What is wrong in a rank stands below all of it, over the whole width.
void Form::new_line() {
    if (row_height_ > 0)
        row_y_ += row_height_ + desk_.ui.size().gap;
    for (const auto& [id, reason] : wrong_)
        row_y_ += ui::field_error(desk_.ui, id, {rest_.x, row_y_, rest_.w, 0}, reason) +
                  desk_.ui.size().gap;
    wrong_.clear();
    column_ = 0;
    row_height_ = 0;
    keys_x_ = 0;
}

float Form::bottom() {
    new_line();
    return row_y_;
}

void Form::heading(std::string_view words) {
    new_line();
    row_y_ += desk_.ui.size().gap / 2;
    const float height = ui::line_height(desk_.ui, ui::TextSize::body) + 4;
    // A form of a part stands in a panel that has a title of its own.
    const int level = scope_.starts_with("part/") ? 3 : 2;
    ui::heading(desk_.ui,
                {rest_.x, row_y_, rest_.w, height},
                words,
                level,
                {ui::TextSize::body, true, ui::Ink::ink, ui::Align::left});
    row_y_ += height + 4;
}

void Form::words(std::string_view words) {
    new_line();
    row_y_ += ui::paragraph(desk_.ui,
                            {rest_.x, row_y_, rest_.w, 4000},
                            words,
                            {ui::TextSize::small, false, ui::Ink::quiet, ui::Align::left}) +
              desk_.ui.size().gap;
}

int Form::columns_for(float width) const {
    const float gap = desk_.ui.size().gap;
    const float column = (rest_.w + gap) / static_cast<float>(columns_);
    return std::clamp(static_cast<int>(std::ceil((width + gap) / column)), 1, columns_);
}

/// Of a figure all is seen; words may be cut from twice a column on.
float Form::width_of(std::string_view label, std::string_view shown, bool figure) const {
    const ui::Ui& ui = desk_.ui;
    const ui::TextSize size = figure ? ui::TextSize::large : ui::TextSize::body;
    const float value = ui::text_width(ui, shown, {size}) + 2 * ui::k_field_inside;
    const float twice =
        2 * (rest_.w + ui.size().gap) / static_cast<float>(columns_) - ui.size().gap;
    return std::max(ui::text_width(ui, label, {ui::TextSize::small}),
                    figure ? value : std::min(value, twice));
}

ui::Rect Form::next_cell(float least_width, std::string_view below) {
    const int span = columns_for(least_width);
    if (column_ + span > columns_ || keys_x_ > 0)
        new_line();
    const float gap = desk_.ui.size().gap;
    const ui::Rect row{rest_.x, row_y_, rest_.w, ui::field_height(desk_.ui, false)};
    ui::Rect cell = row.column(column_, columns_, gap);
    column_ += span;
    cell.w = row.column(column_ - 1, columns_, gap).right() - cell.x;
    if (!below.empty())
        cell.h += 8 + ui::paragraph_height(
                          desk_.ui, cell.w, below, {ui::TextSize::small, false, ui::Ink::quiet});
    row_height_ = std::max(row_height_, cell.h);
    return cell;
}

std::optional<std::string> Form::box(std::string_view label,
                                     std::string_view key,
                                     const std::string& shown,
                                     std::string_view note,
                                     const ui::FigureKind* kind) {
    const std::string id = full(key);
    const Fault* fault = find_fault(desk_.state, id);
    ui::Field field;
    field.label = label;
    field.value = fault ? std::string_view(fault->typed) : std::string_view(shown);
    field.note = note;
    const std::string error = fault ? fault->reason + " " + mend_words(shown) : std::string();
    field.error = error;
    field.kind = kind;
    const ui::Rect cell = next_cell(width_of(label, field.value, kind != nullptr), note);
    if (fault)
        wrong_.emplace_back(id, std::string(label) + ": " + error);
    std::optional<std::string> typed = kind ? ui::number_field(desk_.ui, id, cell, field)
                                            : ui::text_field(desk_.ui, id, cell, field);
    if (!typed)
        return std::nullopt;
    if (*typed == shown) { // put back as it was: nothing to do, and nothing wrong any more
        clear_fault(desk_.state, id);
        return std::nullopt;
    }
    field_ = id;
    typed_ = *typed;
    return typed;
}

template <class Value, class Parse>
std::optional<Value> Form::entry(std::string_view label,
                                 std::string_view key,
                                 const std::string& shown,
                                 std::string_view note,
                                 const Parse& parse) {
    const ui::FigureKind kind =
        figure_kind(static_cast<const Value*>(nullptr), desk_.style().system);
    const std::optional<std::string> typed = box(label, key, shown, note, &kind);
    if (!typed)
        return std::nullopt;
    const auto read = parse(*typed);
    if (!read) {
        refuse(read.refusal());
        return std::nullopt;
    }
    return Value(*read);
}

void Form::refuse(const base::Refusal& refusal) {
    set_fault(desk_.state, {field_, typed_, refusal_words(refusal)});
    desk_.ui.want_frame();
}

std::optional<std::string> Form::text(std::string_view label,
                                      std::string_view key,
                                      std::string_view value,
                                      std::string_view note) {
    return box(label, key, std::string(value), note, nullptr);
}

std::optional<Length>
Form::length(std::string_view label, std::string_view key, Length value, std::string_view note) {
    const std::string shown = quantity::write_exact(value, desk_.style().system);
    return entry<Length>(label, key, shown, note, [&](const std::string& typed) {
        return quantity::parse_length(typed, bare(), key);
    });
}

/// Empty text is a value: not known.
template <class Value, class Parse>
std::optional<std::optional<Value>> Form::maybe_entry(std::string_view label,
                                                      std::string_view key,
                                                      const std::string& shown,
                                                      std::string_view note,
                                                      const Parse& parse) {
    const ui::FigureKind kind =
        figure_kind(static_cast<const Value*>(nullptr), desk_.style().system);
    const std::optional<std::string> typed = box(label, key, shown, note, &kind);
    if (!typed)
        return std::nullopt;
    if (base::trim(*typed).empty())
        return std::optional<std::optional<Value>>(std::in_place, std::nullopt);
    const auto read = parse(*typed);
    if (!read) {
        refuse(read.refusal());
        return std::nullopt;
    }
    return std::optional<Value>(*read);
}

std::optional<std::optional<Length>> Form::maybe(std::string_view label,
                                                 std::string_view key,
                                                 const std::optional<Length>& value,
                                                 std::string_view note) {
    const std::string shown = value ? quantity::write_exact(*value, desk_.style().system) : "";
    return maybe_entry<Length>(label, key, shown, note, [&](const std::string& typed) {
        return quantity::parse_length(typed, bare(), key);
    });
}

std::optional<std::optional<Force>>
Form::maybe(std::string_view label, std::string_view key, const std::optional<Force>& value) {
    const std::string shown = value ? quantity::write_exact(*value, desk_.style().system) : "";
    return maybe_entry<Force>(label, key, shown, unknown(value), [&](const std::string& typed) {
        return quantity::parse_force(typed, bare(), key);
    });
}

std::optional<std::optional<Angle>> Form::maybe(std::string_view label,
                                                std::string_view key,
                                                const std::optional<Angle>& value,
                                                std::string_view empty) {
    const std::string shown = value ? quantity::write_exact(*value) : "";
    const std::string_view note = value ? std::string_view{} : empty;
    return maybe_entry<Angle>(label, key, shown, note, [&](const std::string& typed) {
        return quantity::parse_angle(typed, key);
    });
}

std::optional<std::optional<Stress>> Form::maybe(std::string_view label,
                                                 std::string_view key,
                                                 const std::optional<Stress>& value,
                                                 std::string_view note) {
    const std::string shown = value ? quantity::write_exact(*value, desk_.style().system) : "";
    return maybe_entry<Stress>(label, key, shown, note, [&](const std::string& typed) {
        return quantity::parse_stress(typed, bare(), key);
    });
}

std::optional<std::optional<Mass>>
Form::maybe(std::string_view label, std::string_view key, const std::optional<Mass>& value) {
    const std::string shown = value ? quantity::write_exact(*value, desk_.style().system) : "";
    return maybe_entry<Mass>(label, key, shown, unknown(value), [&](const std::string& typed) {
        return quantity::parse_mass(typed, bare(), key);
    });
}

std::optional<std::optional<double>>
Form::maybe(std::string_view label, std::string_view key, const std::optional<double>& value) {
    const std::string shown = value ? base::write_number(*value) : "";
    return maybe_entry<double>(label, key, shown, unknown(value), [&](const std::string& typed) {
        return quantity::parse_ratio(typed, key);
    });
}

std::optional<std::optional<int>> Form::maybe(std::string_view label,
                                              std::string_view key,
                                              const std::optional<int>& value,
                                              std::string_view empty) {
    const std::string shown = value ? std::to_string(*value) : "";
    return maybe_entry<int>(label, key, shown, value ? "" : empty, [&](const std::string& typed) {
        return quantity::parse_whole(typed, key);
    });
}

std::optional<Mass> Form::mass(std::string_view label, std::string_view key, Mass value) {
    const std::string shown = quantity::write_exact(value, desk_.style().system);
    return entry<Mass>(label, key, shown, "", [&](const std::string& typed) {
        return quantity::parse_mass(typed, bare(), key);
    });
}

std::optional<Angle>
Form::angle(std::string_view label, std::string_view key, Angle value, std::string_view note) {
    return entry<Angle>(
        label, key, quantity::write_exact(value), note, [&](const std::string& typed) {
            return quantity::parse_angle(typed, key);
        });
}

std::optional<int> Form::whole(std::string_view label, std::string_view key, int value) {
    return entry<int>(label, key, std::to_string(value), "", [&](const std::string& typed) {
        return quantity::parse_whole(typed, key);
    });
}

std::optional<double>
Form::ratio(std::string_view label, std::string_view key, double value, std::string_view note) {
    return entry<double>(
        label, key, base::write_number(value), note, [&](const std::string& typed) {
            return quantity::parse_ratio(typed, key);
        });
}

std::optional<Density> Form::density(std::string_view label, std::string_view key, Density value) {
    return entry<Density>(
        label, key, quantity::write_exact(value), "", [&](const std::string& typed) {
            return quantity::parse_density(typed, key);
        });
}

std::optional<int> Form::choice(std::string_view label,
                                std::string_view key,
                                std::span<const std::string> options,
                                int selected) {
    const std::string id = full(key);
    const Fault* fault = find_fault(desk_.state, id);
    ui::Field field;
    field.label = label;
    field.error = fault ? std::string_view(fault->reason) : std::string_view();
    constexpr float k_arrow = 28;
    const bool known = selected >= 0 && selected < static_cast<int>(options.size());
    const std::string_view shown =
        known ? std::string_view(options[static_cast<std::size_t>(selected)]) : std::string_view();
    const ui::Rect cell = next_cell(width_of(label, shown, false) + k_arrow, {});
    const std::optional<int> chosen = ui::choice(desk_.ui, id, cell, field, options, selected);
    if (fault)
        wrong_.emplace_back(id, std::string(label) + ": " + fault->reason);
    if (!chosen || *chosen == selected || *chosen < 0 ||
        *chosen >= static_cast<int>(options.size()))
        return std::nullopt;
    field_ = id;
    typed_ = options[static_cast<std::size_t>(*chosen)];
    return chosen;
}

bool Form::toggle(std::string_view label, std::string_view key, bool on) {
    const std::string id = full(key);
    const float target = desk_.ui.size().target;
    const bool among_fields = column_ > 0 && column_ < columns_ && row_height_ > target;
    ui::Rect cell = next_cell(ui::toggle_width(desk_.ui, label), {});
    if (among_fields)
        cell.y = cell.y + ui::field_height(desk_.ui, false) - target;
    else
        row_height_ = target; // a rank of toggles has no labels above it
    cell.h = target;
    if (!ui::toggle(desk_.ui, id, cell, label, on))
        return false;
    field_ = id;
    typed_ = label;
    return true;
}

/// Beside the fields of its rank, or else beside the keys before it.
ui::Rect Form::key_place(const ui::Rect& cell, float width) {
    const ui::Metrics& size = desk_.ui.size();
    if (column_ > 0 && column_ < columns_) {
        const ui::Rect place = next_cell(width, {});
        return {place.x, place.bottom() - cell.h, std::min(place.w, width), cell.h};
    }
    if (keys_x_ == 0 || keys_x_ + width > rest_.right())
        new_line();
    const float x = keys_x_ > 0 ? keys_x_ : rest_.x;
    row_height_ = std::max(row_height_, cell.h + size.gap / 2);
    keys_x_ = x + width + size.danger_gap;
    return {x, row_y_, std::min(width, rest_.w), cell.h};
}

bool Form::key(std::string_view label, std::string_view id, std::string_view name, bool danger) {
    ui::Button key;
    key.label = label;
    key.name = name;
    key.look = danger ? ui::KeyLook::danger : ui::KeyLook::normal;
    const ui::Rect size{0, 0, 0, desk_.ui.size().target};
    const ui::Rect place = key_place(size, ui::button_width(desk_.ui, key));
    return ui::button(desk_.ui, full(id), place, key);
}

} // namespace treadle::views
