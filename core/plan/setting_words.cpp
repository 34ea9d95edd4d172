#include "plan/checks.h"
#include "plan/settings.h"
#include "plan/words.h"

namespace treadle::plan {

namespace {

using Kind = Settings::Kind;

/// A stop is set to 1/32 at the finest that a rule shows.
std::string figure(Length value, PrintStyle style, Rounding rounding) {
    return quantity::print(value, {style.system, 32, style.both}, rounding);
}

const char* over(Kind kind) {
    switch (kind) {
    case Kind::punch:
        return " over the die";
    case Kind::brake:
        return " over the V";
    default:
        return " over the lower blade";
    }
}

std::string up_line(const Settings& settings, PrintStyle style) {
    if (settings.stroke_up) {
        std::string line =
            "Ram up: " + figure(*settings.stroke_up, style, Rounding::down) + over(settings.kind);
        if (settings.kind == Kind::brake)
            line += settings.out_along ? "; the piece comes out along the bend line"
                                       : "; the piece comes out to the front";
        return line;
    }
    return settings.kind == Kind::brake
               ? "Ram up: set for each bend by itself, the stroke does not serve all of them"
               : "Ram up: all the way, the stroke is less than stock and gap";
}

/// Of the ram down: blades go through the stock, how far is the machine's own.
std::string down_line(const Settings& settings, PrintStyle style) {
    if (!settings.stroke_down)
        return "";
    const std::string down = "Ram down: " + figure(*settings.stroke_down, style, Rounding::nearest);
    return settings.kind == Kind::punch
               ? down + " into the die"
               : down + " from touching the sheet at the deepest; a trial strip decides";
}

} // namespace

std::vector<std::string>
setting_lines(const SetUp& set_up, const equipment::Shop& shop, PrintStyle style) {
    const Settings& settings = set_up.settings;
    std::vector<std::string> lines;
    if (settings.kind == Kind::none)
        return lines;
    if (settings.kind == Kind::shaped_blade)
        return {"Ram up until the openings of the blades are in line"};
    if (settings.kind == Kind::punch)
        lines.push_back(shop.rules.stripper_gap
                            ? "Stripper gap above the stock: " +
                                  quantity::print(*shop.rules.stripper_gap, style)
                            : "Stripper gap above the stock: as small as the stock slides, never "
                              "over " +
                                  quantity::print(k_default_stripper_gap, style));
    if (!settings.missing.empty()) {
        lines.push_back("Ram: cannot be said. " + missing_sentence(settings.missing, shop));
        return lines;
    }
    lines.push_back(up_line(settings, style));
    std::string down = down_line(settings, style);
    if (!down.empty())
        lines.push_back(std::move(down));
    return lines;
}

} // namespace treadle::plan
