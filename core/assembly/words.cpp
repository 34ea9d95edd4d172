#include "assembly/words.h"

#include <algorithm>

#include "layout/guard_limit.h"

namespace treadle::assembly {

namespace {

/// As a decimal where the style's fraction would hide on which side of the bound it lies.
std::string beside(Length value, Length limit, PrintStyle style) {
    std::string text = print(value, style);
    return text == print(limit, style) && value != limit ? quantity::print_decimal(value, style)
                                                         : text;
}

struct Code {
    std::string_view id; ///< begins the names of its rules, and chooses it
    const char* title;
    const char* where;
};
constexpr Code k_codes[] = {{"irc", "IRC", "IRC, dwellings"},
                            {"ibc", "IBC", "IBC, other buildings"},
                            {"osha", "OSHA", "OSHA 1910.29, workplaces"},
                            {"ada", "ADA", "ADA"},
                            {"pool", "ISPSC", "ISPSC 305, pool barriers"},
                            {"uk", "UK Document K", "UK Document K"},
                            {"common", "common practice", "common practice"}};

std::string spaced(std::string_view words) {
    std::string out(words);
    std::replace(out.begin(), out.end(), '-', ' ');
    return out;
}

/// "IRC, guard of a dwelling", "OSHA, midrail"; a rule of the trade has its words apart.
std::string rule_title(std::string_view rule) {
    const layout::GuardLimit* row = layout::find_guard_limit(rule);
    const std::string_view begins = rule.substr(0, rule.find('-'));
    for (const Code& code : k_codes)
        if (begins == code.id && begins != rule)
            return std::string(code.title) + ", " +
                   (row != nullptr ? row->what : spaced(rule.substr(begins.size() + 1)));
    return spaced(rule);
}

} // namespace

std::string rule_words(const RuleLine& line, PrintStyle style) {
    const char* bound = !line.at_most ? ", at least " : line.sphere ? ", under " : ", at most ";
    return line.words + ": " + beside(line.value, line.limit, style) + bound +
           print(line.limit, style);
}

std::string answer_words(const RuleLine& line) {
    return std::string(held_word(line.held)) + " " + rule_title(line.rule);
}

std::string choice_words(std::string_view choice) {
    for (const Code& code : k_codes)
        if (choice == code.id)
            return code.where;
    return spaced(choice);
}

std::string figure_words(const Figure& figure, PrintStyle style) {
    if (const auto* length = std::get_if<Length>(&figure.value))
        return print(*length, style);
    if (const auto* angle = std::get_if<Angle>(&figure.value))
        return print(*angle, style);
    return quantity::print_working(figure.value, style);
}

std::string marks_words(const Marks& marks, PrintStyle style) {
    std::string out = marks.words + ":";
    for (std::size_t i = 0; i < marks.places.size(); ++i)
        out += (i == 0 ? " " : ", ") + print(marks.places[i], style);
    return out;
}

std::string template_words(const WrapTemplate& wrap, PrintStyle style) {
    return "Paper template for the " + wrap.end + " of " + wrap.mark + ": branch " +
           quantity::print_decimal(wrap.joint.branch_od, style) + " on run " +
           quantity::print_decimal(wrap.joint.run_od, style) + ", " +
           print(wrap.joint.angle, style) + ", offset " +
           quantity::print_decimal(wrap.joint.offset, style);
}

} // namespace treadle::assembly
