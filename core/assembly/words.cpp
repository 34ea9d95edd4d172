#include "assembly/words.h"

namespace treadle::assembly {

namespace {

/// As a decimal where the style's fraction would hide on which side of the bound it lies.
std::string beside(Length value, Length limit, PrintStyle style) {
    std::string text = print(value, style);
    return text == print(limit, style) && value != limit ? quantity::print_decimal(value, style)
                                                         : text;
}

} // namespace

std::string rule_words(const RuleLine& line, PrintStyle style) {
    const char* bound = !line.at_most ? ", at least " : line.sphere ? ", under " : ", at most ";
    return line.words + ": " + beside(line.value, line.limit, style) + bound +
           print(line.limit, style);
}

std::string answer_words(const RuleLine& line) {
    return std::string(held_word(line.held)) + " " + line.rule;
}

std::string figure_words(const Figure& figure, PrintStyle style) {
    if (const auto* length = std::get_if<Length>(&figure.value))
        return print(*length, style);
    if (const auto* angle = std::get_if<Angle>(&figure.value))
        return print(*angle, style);
    return quantity::print_working(figure.value, style);
}

std::string template_words(const WrapTemplate& wrap, PrintStyle style) {
    return "Paper template for the " + wrap.end + " of " + wrap.mark + ": branch " +
           quantity::print_decimal(wrap.joint.branch_od, style) + " on run " +
           quantity::print_decimal(wrap.joint.run_od, style) + ", " +
           print(wrap.joint.angle, style) + ", offset " +
           quantity::print_decimal(wrap.joint.offset, style);
}

} // namespace treadle::assembly
