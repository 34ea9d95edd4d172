#include "ui/views/version_bar.h"

#include "ui/widgets/controls.h"
#include "ui/widgets/text.h"

#include <algorithm>
#include <optional>
#include <string_view>

namespace treadle::views {

namespace {

constexpr const char* k_needs_host =
    "Online only: this page works while its server can be reached. For use without a network take "
    "the one-file copy.";
constexpr const char* k_one_file =
    "One-file copy: what this browser keeps of it is no record. Save the file.";
constexpr const char* k_new = "A new version is ready.";
constexpr const char* k_switching = "Storing everything, then the new version opens.";
constexpr const char* k_could_not =
    "The version was not changed: edits in this tab or another are not stored. Save the file "
    "there, then try again.";

struct Key {
    const char* id;
    const char* label;
    const char* name;
    Ask ask;
};

struct Line {
    std::string_view words;
    std::optional<Key> key;
    bool can_dismiss = false;
};

const Key k_switch{"switch",
                   "Switch now",
                   "Switch now: everything is stored and all tabs open again",
                   VersionAsk::switch_now};
const Key k_copy{"copy", "Take the copy", "Take the one-file copy", VersionAsk::take_copy};
const Key k_save{"save", "Save the file", "Save the file of this job", Wish::export_file};
const Key k_dismiss{
    "dismiss", "Dismiss", "Dismiss this line; Help has it under About", VersionAsk::dismiss};

std::optional<Line> line_of(const VersionBoard& board) {
    if (board.is_switching)
        return Line{k_switching, {}, false};
    if (board.is_waiting)
        return Line{board.could_not ? k_could_not : k_new, k_switch, false};
    if (!board.hint_open)
        return {};
    if (board.offline == Offline::one_file)
        return Line{k_one_file, k_save, true};
    if (board.offline == Offline::needs_host && !board.is_secure && board.can_hand_copy)
        return Line{k_needs_host, k_copy, true};
    return {};
}

ui::Button button_of(const Key& key) {
    ui::Button button;
    button.label = key.label;
    button.name = key.name;
    return button;
}

void press(Desk& desk, const Key& key, const ui::Rect& rect) {
    if (ui::button(desk.ui, key.id, rect, button_of(key)))
        desk.ask(key.ask);
}

std::string_view offline_sentence(const VersionBoard& board) {
    switch (board.offline) {
    case Offline::works:
        return "Works offline: everything the page needs is kept on this device.";
    case Offline::one_file:
        return k_one_file;
    case Offline::needs_host:
        return board.is_secure
                   ? "Online only: this browser did not keep the page for use without a network. A "
                     "private window or a full disk may be why."
                   : k_needs_host;
    case Offline::not_known:
        break;
    }
    return "Whether it works offline is being found out.";
}

} // namespace

std::string offline_words(const VersionBoard& board) {
    switch (board.offline) {
    case Offline::works:
        return "works offline";
    case Offline::needs_host:
        return "online only";
    case Offline::one_file:
        return "one-file copy";
    case Offline::not_known:
        break;
    }
    return "";
}

float version_bar(Desk& desk, const ui::Rect& rect) {
    ui::Ui& ui = desk.ui;
    const auto line = line_of(desk.version);
    if (!line)
        return 0;
    const ui::Scope scope(ui, "version");
    const float gap = std::max(12.0F, ui.size().gap);
    float keys = line->key ? ui::button_width(ui, button_of(*line->key)) : 0;
    if (line->can_dismiss)
        keys += gap + ui::button_width(ui, button_of(k_dismiss));
    const bool below = keys > 0 && rect.w - keys < 300 * ui.size().text_scale;
    const float beside = below || keys <= 0 ? 0 : keys + gap;
    const float text =
        ui::paragraph_height(ui, rect.w - 2 * ui.size().margin - beside, line->words);
    ui::Rect strip = rect;
    strip.h = below ? text + ui.size().target + 2.5F * gap : std::max(text, ui.size().target) + gap;
    ui.fill(strip, ui::Ink::steel);
    ui.rule(strip.x, strip.bottom() - 1, strip.right(), strip.bottom() - 1, ui::Ink::ink, 1);
    ui::Rect inner = strip.inset(ui.size().margin, gap / 2);
    ui::Rect row = below ? inner.cut_bottom(ui.size().target) : inner.cut_right(keys, gap);
    row = {row.x, row.y + (row.h - ui.size().target) / 2, row.w, ui.size().target};
    ui::paragraph(
        ui, inner.inset(0, below ? 0 : std::max(0.0F, (inner.h - text) / 2)), line->words);
    if (line->key)
        press(desk, *line->key, row.cut_left(ui::button_width(ui, button_of(*line->key)), gap));
    if (line->can_dismiss)
        press(desk, k_dismiss, row.cut_left(ui::button_width(ui, button_of(k_dismiss))));
    return strip.h;
}

float version_words(Desk& desk, ui::Rect rest) {
    ui::Ui& ui = desk.ui;
    const VersionBoard& board = desk.version;
    const float gap = std::max(12.0F, ui.size().gap);
    rest.y += ui::paragraph(ui,
                            rest,
                            "Version " + board.version + ", build " + board.build +
                                ", made from sources " + board.sources + ".") +
              ui.size().gap;
    rest.y += ui::paragraph(ui, rest, offline_sentence(board)) + ui.size().gap;
    ui::Rect row{rest.x, rest.y, rest.w, ui.size().target};
    const Key licences{
        "licences", "Read the licences", "Read the licences in full", VersionAsk::read_licences};
    if (board.can_hand_copy)
        press(desk, k_copy, row.cut_left(ui::button_width(ui, button_of(k_copy)), gap));
    press(desk, licences, row.cut_left(ui::button_width(ui, button_of(licences))));
    return row.bottom() + ui.size().gap;
}

} // namespace treadle::views
