// What can be pressed: keys, tabs, list rows, toggles.
//
// Every one returns true (or a value) in the frame in which it was pressed, by mouse, finger,
// keyboard or screen reader alike. Give each an id that stays the same while it means the same.

#pragma once

#include "ui/widgets/icons.h"
#include "ui/widgets/text.h"
#include "ui/widgets/ui.h"

#include <optional>
#include <span>
#include <string>
#include <string_view>

namespace treadle::ui {

enum class KeyLook : std::uint8_t {
    normal,  ///< outlined
    primary, ///< filled with ink: the one main action of a screen
    quiet,   ///< only words in the colour of touch
    danger,  ///< outlined in the colour of "does not fit": keep danger_gap around it
};

struct Button {
    std::string_view label;
    KeyLook look = KeyLook::normal;
    Icon icon = Icon::none;
    TextSize size = TextSize::body;
    bool enabled = true;
    std::string_view why_not; ///< said when not enabled
    std::string_view name;    ///< spoken name when the label alone is too short ("Add one piece")
    bool icon_only = false;   ///< draws only the icon; the label is still the name
};

/// Width that the label and icon ask for, with margins.
[[nodiscard]] float button_width(const Ui& ui, const Button& button);
bool button(Ui& ui, std::string_view id, const Rect& rect, const Button& button);
bool button(Ui& ui, std::string_view id, const Rect& rect, std::string_view label);

/// Makes words that are drawn over it a key: to be called before they are drawn.
bool press_area(Ui& ui, std::string_view id, const Rect& rect, std::string_view name);

/// Places of the page side by side; the chosen one stands on a heavy rule. Returns a new choice.
std::optional<int> tabs(Ui& ui,
                        std::string_view id,
                        const Rect& rect,
                        std::string_view name,
                        std::span<const std::string> labels,
                        int selected);
/// Width that the labels ask for.
[[nodiscard]] float tabs_width(const Ui& ui, std::span<const std::string> labels);
/// Width under which the labels do not stand whole any more.
[[nodiscard]] float least_tabs_width(const Ui& ui, std::span<const std::string> labels);

struct ListRow {
    std::string_view title;
    std::string_view beside; ///< after the title, not bold: "× 8"
    std::string_view detail; ///< second line, quiet
    std::string_view spoken; ///< all of the row in one sentence; title and detail when empty
    bool selected = false;
    float slots_width = 0; ///< room kept at the right for what the view draws
};

struct RowTouch {
    bool pressed = false;
    Rect slots;           ///< the room kept at the right
    float first_rest = 0; ///< width that the first line's words left; 0 of a row out of sight
};

/// Height of a row that leaves room between itself and the next, at least `least`.
[[nodiscard]] float row_height(const Ui& ui, float least);

RowTouch list_row(Ui& ui, std::string_view id, const Rect& rect, const ListRow& row);

/// Pressed: the caller flips its value. Box at the left, label beside it.
/// Ground and edge of a list at the left of what it chooses; returns the room within.
Rect side_ground(Ui& ui, const Rect& rect);

[[nodiscard]] float toggle_width(const Ui& ui, std::string_view label);
bool toggle(Ui& ui, std::string_view id, const Rect& rect, std::string_view label, bool on);

/// A block of controls that a screen reader announces together.
class Group {
public:
    Group(Ui& ui,
          std::string_view id,
          const Rect& rect,
          std::string_view name,
          Role role = Role::group)
        : ui_(ui) {
        ui_.begin_container(id, role, rect, name);
    }
    ~Group() { ui_.end_container(); }
    Group(const Group&) = delete;
    Group& operator=(const Group&) = delete;

private:
    Ui& ui_;
};

/// A sheet of paper over the page: nothing under it answers while it is drawn. Draw it last.
class Dialog {
public:
    Dialog(Ui& ui, std::string_view id, const Rect& rect, std::string_view name);
    ~Dialog() { ui_.end_container(); }
    Dialog(const Dialog&) = delete;
    Dialog& operator=(const Dialog&) = delete;

private:
    Ui& ui_;
};

/// Clips and scrolls what is drawn until finish(). Wheel, finger with inertia, keyboard focus.
///
///     ScrollArea list(ui, "parts", rect, "Parts");
///     Rect rest = list.content();
///     for (...) list_row(ui, id, rest.cut_top(ui.size().row), row);
///     list.finish(rest.y);
class ScrollArea {
public:
    ScrollArea(Ui& ui, std::string_view id, const Rect& rect, std::string_view name)
        : ui_(ui),
          content_(ui.begin_scroll(id, rect, name)) {}
    ~ScrollArea() { ui_.end_scroll(height_); }
    ScrollArea(const ScrollArea&) = delete;
    ScrollArea& operator=(const ScrollArea&) = delete;

    /// As wide as the area and as high as anyone could want.
    [[nodiscard]] const Rect& content() const { return content_; }
    /// `bottom`: where the content ended, in the same coordinates.
    void finish(float bottom) { height_ = bottom - content_.y; }

private:
    Ui& ui_;
    Rect content_;
    float height_ = 0;
};

} // namespace treadle::ui
