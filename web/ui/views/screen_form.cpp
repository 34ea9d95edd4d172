#include "ui/views/screen_form.h"

#include "ui/widgets/choice_keys.h"
#include "ui/widgets/text.h"
#include "ui/widgets/verdict.h"

#include <algorithm>
#include <array>
#include <optional>
#include <span>
#include <string>
#include <utility>
#include <vector>

namespace treadle::views {

namespace {

constexpr ui::TextStyle k_label{ui::TextSize::body, true, ui::Ink::ink, ui::Align::left};
constexpr ui::TextStyle k_quiet{ui::TextSize::small, false, ui::Ink::quiet, ui::Align::left};

const std::array<std::string, 4> k_themes = {"As the device", "Light", "Dark", "Sun"};
const std::array<std::string, 3> k_densities = {"As the device", "Shop", "Desk"};
const std::array<std::string, 2> k_hands = {"Right", "Left"};
const std::array<std::string, 3> k_pads = {"By touch", "Always", "Never"};

std::vector<std::string> percents() {
    std::vector<std::string> labels;
    for (const int percent : k_text_percents)
        labels.push_back(std::to_string(percent) + " %");
    return labels;
}

int percent_index(int percent) {
    const auto* const found = std::find(k_text_percents.begin(), k_text_percents.end(), percent);
    return found == k_text_percents.end() ? 0 : static_cast<int>(found - k_text_percents.begin());
}

/// A wish with its words and its keys.
struct Question {
    const char* id;
    const char* label;
    const char* note;
};

class Asking {
public:
    Asking(Desk& desk, const ui::Rect& rect) : desk_(desk), rest_(rect) {}

    std::optional<int>
    ask(const Question& question, std::span<const std::string> labels, int chosen) {
        ui::Ui& ui = desk_.ui;
        rest_.y += ui::paragraph(ui, rest_, question.label, k_label);
        rest_.y += ui::paragraph(ui, rest_, question.note, k_quiet) + 4;
        float bottom = rest_.y;
        const auto answer =
            ui::choice_keys(ui, question.id, rest_, question.label, labels, chosen, bottom);
        rest_.y = bottom + ui.size().margin;
        return answer;
    }
    [[nodiscard]] ui::Rect& rest() { return rest_; }

private:
    Desk& desk_;
    ui::Rect rest_;
};

/// What the choice looks like: a line of each kind that a part has.
float sample(Desk& desk, const ui::Rect& rect) {
    ui::Ui& ui = desk.ui;
    const ui::Scope scope(ui, "sample");
    const float margin = ui.size().margin;
    const ui::Rect inside = rect.inset(margin, margin);
    const std::pair<ui::Verdict, const char*> verdicts[] = {
        {ui::Verdict::fits, "Sample: fits, 38 % of the force is used."},
        {ui::Verdict::up_to, "Sample: fits up to 65 ksi."},
        {ui::Verdict::does_not_fit, "Sample: does not fit, 14 % over."},
        {ui::Verdict::not_known, "Sample: cannot be said, the rating is missing."}};
    ui::Rect rest = inside;
    rest.y += ui::paragraph(ui, rest, "Sample plate 1/2 x 8 x 10, 12.7 x 203 x 254 mm", k_label);
    rest.y +=
        ui::paragraph(ui, rest, "Four holes 13/16, gauge 2 1/4. Type of the second line.", k_quiet);
    for (const auto& [verdict, words] : verdicts)
        rest.y += ui::message_line(ui, rest, verdict, words) + 4;
    ui.outline({rect.x, rect.y, rect.w, rest.y + margin - rect.y}, ui::Ink::ink, ui.size().stroke);
    return rest.y + margin;
}

void look(Asking& form, ScreenWishes& wishes) {
    if (const auto theme = form.ask(
            {"theme", "Theme", "Sun is black on white with heavy lines, for a screen outdoors."},
            k_themes,
            wishes.theme ? static_cast<int>(*wishes.theme) + 1 : 0))
        wishes.theme =
            *theme == 0 ? std::nullopt : std::optional(static_cast<ui::ThemeKind>(*theme - 1));
    if (const auto density =
            form.ask({"density",
                      "Size of the keys",
                      "Shop is for fingers and thin gloves, Desk for a mouse."},
                     k_densities,
                     wishes.density ? (*wishes.density == ui::Density::shop ? 1 : 2) : 0))
        wishes.density = *density == 0   ? std::nullopt
                         : *density == 1 ? std::optional(ui::Density::shop)
                                         : std::optional(ui::Density::desk);
    const std::vector<std::string> sizes = percents();
    if (const auto size =
            form.ask({"text", "Size of the text", "The browser's own zoom comes on top of it."},
                     sizes,
                     percent_index(wishes.text_percent)))
        wishes.text_percent = k_text_percents[static_cast<std::size_t>(*size)];
}

void hold(Asking& form, ScreenWishes& wishes) {
    if (const auto hand =
            form.ask({"hand", "Hand", "At the machine the keys lie under this thumb."},
                     k_hands,
                     wishes.hand == Hand::right ? 0 : 1))
        wishes.hand = *hand == 0 ? Hand::right : Hand::left;
    if (const auto pad =
            form.ask({"pad", "Number pad", "For figures with units. A keyboard works in any case."},
                     k_pads,
                     static_cast<int>(wishes.pad)))
        wishes.pad = static_cast<PadWish>(*pad);
}

} // namespace

float screen_form(Desk& desk, const ui::Rect& rect) {
    ui::Ui& ui = desk.ui;
    const ui::Scope scope(ui, "screen");
    ScreenWishes wishes = desk.state.screen;
    Asking form(desk, rect);
    ui::Rect& rest = form.rest();
    rest.y += ui::paragraph(ui, rest, "Kept on this device. The job stays as it is.", k_quiet) +
              ui.size().gap;
    look(form, wishes);
    rest.y = sample(desk, rest) + ui.size().margin;
    hold(form, wishes);
    if (!(wishes == desk.state.screen))
        desk.ask(wishes);
    return rest.y;
}

} // namespace treadle::views
