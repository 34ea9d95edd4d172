#include "screen_text.h"

#include "kept_text.h"

namespace treadle::web {

namespace {

using ui::Density;
using ui::ThemeKind;
using views::Hand;
using views::PadWish;

constexpr const char* k_title = "treadle-screen 1";
constexpr KeptWord<std::optional<ThemeKind>> k_themes[] = {{"device", std::nullopt},
                                                           {"light", ThemeKind::light},
                                                           {"dark", ThemeKind::dark},
                                                           {"sun", ThemeKind::sun}};
constexpr KeptWord<std::optional<Density>> k_densities[] = {
    {"device", std::nullopt}, {"shop", Density::shop}, {"desk", Density::desk}};
constexpr KeptWord<Hand> k_hands[] = {{"right", Hand::right}, {"left", Hand::left}};
constexpr KeptWord<PadWish> k_pads[] = {
    {"touch", PadWish::by_touch}, {"always", PadWish::always}, {"never", PadWish::never}};

void take_percent(std::string_view text, int& out) {
    for (const int percent : views::k_text_percents)
        if (text == std::to_string(percent))
            out = percent;
}

} // namespace

std::string screen_text(const views::ScreenWishes& wishes) {
    return write_lines(k_title,
                       {{"theme", word_of(k_themes, wishes.theme)},
                        {"density", word_of(k_densities, wishes.density)},
                        {"text", std::to_string(wishes.text_percent)},
                        {"hand", word_of(k_hands, wishes.hand)},
                        {"pad", word_of(k_pads, wishes.pad)}});
}

std::optional<views::ScreenWishes> read_screen_text(std::string_view text) {
    const auto lines = read_lines(k_title, text);
    if (!lines)
        return std::nullopt;
    views::ScreenWishes wishes;
    for (const KeptLine& line : *lines) {
        if (line.name == "theme")
            take_word(k_themes, line.value, wishes.theme);
        else if (line.name == "density")
            take_word(k_densities, line.value, wishes.density);
        else if (line.name == "text")
            take_percent(line.value, wishes.text_percent);
        else if (line.name == "hand")
            take_word(k_hands, line.value, wishes.hand);
        else if (line.name == "pad")
            take_word(k_pads, line.value, wishes.pad);
    }
    return wishes;
}

} // namespace treadle::web
