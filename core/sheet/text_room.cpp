#include "sheet/text_room.h"

#include <algorithm>

namespace treadle::sheet {

namespace {

constexpr std::string_view k_ellipsis = "\u2026";

bool continues(char c) { return (static_cast<unsigned char>(c) & 0xC0U) == 0x80U; }

/// Bytes of the letter that begins here.
std::size_t letter_at(std::string_view text, std::size_t at) {
    std::size_t end = at + 1;
    while (end < text.size() && continues(text[end]))
        ++end;
    return end - at;
}

/// Latin, Greek and Cyrillic letters, and no marks that stand on the letter before them.
bool stands_alone(std::string_view letter) {
    const auto lead = static_cast<unsigned char>(letter.front());
    return lead < 0x80 || (lead >= 0xC3 && lead <= 0xD4 && lead != 0xCC && lead != 0xCD);
}

/// Rounded up from the bold of the usual faces without serifs, from memory of their tables.
double ems_of(std::string_view letter) {
    constexpr std::string_view k_slim = "iIjl.,:;'|! ()[]ft-";
    constexpr std::string_view k_broad = "MW@%mw";
    if (letter.size() == 4)
        return 1.4; // pictures
    if (letter.size() > 1 || k_broad.find(letter.front()) != std::string_view::npos)
        return 1.0;
    if (k_slim.find(letter.front()) != std::string_view::npos)
        return 0.4;
    return letter.front() >= 'A' && letter.front() <= 'Z' ? 0.82 : 0.66;
}

} // namespace

std::size_t letters_of(std::string_view text) {
    return static_cast<std::size_t>(
        std::count_if(text.begin(), text.end(), [](char c) { return !continues(c); }));
}

std::size_t parting(std::string_view word, std::size_t letters) {
    std::size_t at = 0;
    for (std::size_t i = 0; i <= letters; ++i) {
        if (at >= word.size())
            return 0;
        const std::size_t bytes = letter_at(word, at);
        if (!stands_alone(word.substr(at, bytes)))
            return 0;
        if (i < letters)
            at += bytes;
    }
    return at;
}

double em_count(std::string_view text) {
    double sum = 0.0;
    for (std::size_t at = 0; at < text.size();) {
        const std::size_t bytes = letter_at(text, at);
        sum += ems_of(text.substr(at, bytes));
        at += bytes;
    }
    return sum;
}

std::string shortened(std::string_view text, double ems) {
    if (em_count(text) <= ems)
        return std::string(text);
    double room = ems - ems_of(k_ellipsis);
    std::size_t at = 0;
    while (at < text.size()) {
        const std::size_t bytes = letter_at(text, at);
        room -= ems_of(text.substr(at, bytes));
        if (room < 0.0)
            break;
        at += bytes;
    }
    return std::string(text.substr(0, at)) + std::string(k_ellipsis);
}

} // namespace treadle::sheet
