#include "ui/views/find_text.h"

#include "quantity/parse.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <cstdint>

namespace treadle::views {

namespace {

/// Letters of the alphabets around us, by ranges of code points that share a plain letter.
struct Letters {
    std::uint32_t first;
    std::uint32_t last;
    const char* plain;
};
constexpr std::array k_letters = {
    Letters{0x00B2, 0x00B2, "2"},    Letters{0x00B3, 0x00B3, "3"},
    Letters{0x00BC, 0x00BC, " 1/4"}, Letters{0x00BD, 0x00BD, " 1/2"},
    Letters{0x00BE, 0x00BE, " 3/4"}, Letters{0x00C0, 0x00C5, "a"},
    Letters{0x00C6, 0x00C6, "ae"},   Letters{0x00C7, 0x00C7, "c"},
    Letters{0x00C8, 0x00CB, "e"},    Letters{0x00CC, 0x00CF, "i"},
    Letters{0x00D0, 0x00D0, "d"},    Letters{0x00D1, 0x00D1, "n"},
    Letters{0x00D2, 0x00D6, "o"},    Letters{0x00D8, 0x00D8, "o"},
    Letters{0x00D9, 0x00DC, "u"},    Letters{0x00DD, 0x00DD, "y"},
    Letters{0x00DF, 0x00DF, "ss"},   Letters{0x00E0, 0x00E5, "a"},
    Letters{0x00E6, 0x00E6, "ae"},   Letters{0x00E7, 0x00E7, "c"},
    Letters{0x00E8, 0x00EB, "e"},    Letters{0x00EC, 0x00EF, "i"},
    Letters{0x00F0, 0x00F0, "d"},    Letters{0x00F1, 0x00F1, "n"},
    Letters{0x00F2, 0x00F6, "o"},    Letters{0x00F8, 0x00F8, "o"},
    Letters{0x00F9, 0x00FC, "u"},    Letters{0x00FD, 0x00FD, "y"},
    Letters{0x00FF, 0x00FF, "y"},    Letters{0x0100, 0x0105, "a"},
    Letters{0x0106, 0x010D, "c"},    Letters{0x010E, 0x0111, "d"},
    Letters{0x0112, 0x011B, "e"},    Letters{0x011C, 0x0123, "g"},
    Letters{0x0124, 0x0127, "h"},    Letters{0x0128, 0x0131, "i"},
    Letters{0x0134, 0x0135, "j"},    Letters{0x0136, 0x0138, "k"},
    Letters{0x0139, 0x0142, "l"},    Letters{0x0143, 0x014B, "n"},
    Letters{0x014C, 0x0151, "o"},    Letters{0x0152, 0x0153, "oe"},
    Letters{0x0154, 0x0159, "r"},    Letters{0x015A, 0x0161, "s"},
    Letters{0x0162, 0x0167, "t"},    Letters{0x0168, 0x0173, "u"},
    Letters{0x0174, 0x0175, "w"},    Letters{0x0176, 0x0178, "y"},
    Letters{0x0179, 0x017E, "z"},    Letters{0x0300, 0x036F, ""}, // accents of their own
    Letters{0x2010, 0x2015, "-"},    Letters{0x2018, 0x201B, "'"},
    Letters{0x201C, 0x201F, "\""},   Letters{0x2032, 0x2032, "'"},
    Letters{0x2033, 0x2033, "\""},   Letters{0x2044, 0x2044, "/"},
    Letters{0x215B, 0x215B, " 1/8"}, Letters{0x215C, 0x215C, " 3/8"},
    Letters{0x215D, 0x215D, " 5/8"}, Letters{0x215E, 0x215E, " 7/8"},
};

/// Reads one code point; a broken byte counts as a space.
std::uint32_t next_point(std::string_view text, std::size_t& at) {
    const auto byte = [&](std::size_t i) { return static_cast<unsigned char>(text[i]); };
    const unsigned char lead = byte(at++);
    const int more = lead < 0x80 ? 0 : lead >= 0xF0 ? 3 : lead >= 0xE0 ? 2 : lead >= 0xC0 ? 1 : -1;
    if (more < 0 || at + static_cast<std::size_t>(more) > text.size())
        return ' ';
    std::uint32_t point = more == 0 ? lead : lead & (0x3FU >> more);
    for (int i = 0; i < more; ++i)
        point = (point << 6) | (byte(at++) & 0x3FU);
    return point;
}

bool is_digit(char c) { return c >= '0' && c <= '9'; }
bool is_letter(char c) { return c >= 'a' && c <= 'z'; }

/// Signs that belong to a word when they stand inside a size: 1-3/8", 4'-6, 0.8125, 12,5.
bool joins(std::string_view text, std::size_t at) {
    const char c = text[at];
    const bool after_digit = at > 0 && is_digit(text[at - 1]);
    const bool before_digit = at + 1 < text.size() && is_digit(text[at + 1]);
    if (c == '"' || c == '\'')
        return after_digit;
    if (c == '-')
        return at > 0 && (after_digit || text[at - 1] == '\'') && before_digit;
    if (c == '.' || c == ',')
        return before_digit && (after_digit || c == '.');
    return c == '/' && after_digit && before_digit;
}

std::vector<std::string> words_of(std::string_view folded) {
    std::vector<std::string> words;
    std::string word;
    for (std::size_t i = 0; i <= folded.size(); ++i) {
        const bool inside = i < folded.size() &&
                            (is_letter(folded[i]) || is_digit(folded[i]) ||
                             static_cast<unsigned char>(folded[i]) >= 0x80 || joins(folded, i));
        if (inside) {
            word += folded[i];
        } else if (!word.empty()) {
            words.push_back(std::move(word));
            word.clear();
        }
    }
    return words;
}

bool has_digit(std::string_view word) { return std::any_of(word.begin(), word.end(), is_digit); }
bool is_fraction(std::string_view word) {
    return !word.empty() && is_digit(word[0]) && word.find('/') != std::string_view::npos &&
           word.find('-') == std::string_view::npos;
}
bool is_whole(std::string_view word) { return std::all_of(word.begin(), word.end(), is_digit); }
bool is_unit(std::string_view word) {
    constexpr std::array<std::string_view, 6> k_units = {"mm", "cm", "m", "in", "ft", "inch"};
    return std::find(k_units.begin(), k_units.end(), word) != k_units.end();
}

/// "1 1/8" is one size, and so is "20.6 mm".
void join_sizes(std::vector<std::string>& words) {
    for (std::size_t i = 0; i + 1 < words.size();) {
        std::string& word = words[i];
        const std::string& next = words[i + 1];
        if (is_whole(word) && is_fraction(next))
            word += "-" + next;
        else if (is_unit(next) && has_digit(word) && is_digit(word.back()))
            word += next == "inch" ? "in" : next;
        else {
            ++i;
            continue;
        }
        words.erase(words.begin() + static_cast<long>(i) + 1);
    }
}

void read_size(std::string_view word, UnitSystem system, std::vector<double>& sizes) {
    if (!has_digit(word))
        return;
    if (const auto size = quantity::parse_length(word, system, ""))
        sizes.push_back(to_millimetres(*size));
}

/// Half of the last figure that a size in millimetres is printed with.
constexpr double k_same_mm = 0.051;

bool same_size(const FindWord& word, const FindText& text) {
    for (const double wanted : word.sizes_mm)
        for (const double there : text.sizes_mm)
            if (std::fabs(wanted - there) <= k_same_mm)
                return true;
    return false;
}

} // namespace

std::string find_fold(std::string_view text) {
    std::string folded;
    folded.reserve(text.size());
    for (std::size_t at = 0; at < text.size();) {
        const std::size_t from = at;
        const std::uint32_t point = next_point(text, at);
        if (point < 0x80) {
            const char c = static_cast<char>(point);
            folded += c >= 'A' && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : c;
            continue;
        }
        const auto* known = std::find_if(k_letters.begin(), k_letters.end(), [&](const auto& one) {
            return point >= one.first && point <= one.last;
        });
        if (known != k_letters.end())
            folded += known->plain;
        else if (point == 0xD7 || point == 0xA0 || (point >= 0x2000 && point <= 0x206F))
            folded += ' '; // × and other signs between words
        else
            folded += text.substr(from, at - from);
    }
    return folded;
}

FindText find_text(std::string_view line, UnitSystem system) {
    FindText text;
    std::vector<std::string> words = words_of(find_fold(line));
    for (const std::string& word : words)
        text.words += " " + word;
    text.words += ' ';
    join_sizes(words);
    for (const std::string& word : words)
        read_size(word, system, text.sizes_mm);
    return text;
}

FindQuery find_query(std::string_view typed, UnitSystem system) {
    FindQuery query;
    std::vector<std::string> words = words_of(find_fold(typed));
    join_sizes(words);
    const UnitSystem other = system == UnitSystem::inch ? UnitSystem::metric : UnitSystem::inch;
    for (std::string& word : words) {
        FindWord one;
        read_size(word, system, one.sizes_mm);
        read_size(word, other, one.sizes_mm);
        // The mark of inches is no part of the word: 13/16" begins no other word than 13/16.
        while (!word.empty() && (word.back() == '"' || word.back() == '\''))
            word.pop_back();
        one.word = std::move(word);
        if (!one.word.empty())
            query.push_back(std::move(one));
    }
    return query;
}

int find_rank(const FindWord& word, const FindText& text) {
    constexpr std::size_t k_least_inside = 3; ///< fewer letters stand inside of anything
    const std::string start = " " + word.word;
    bool begins = false;
    for (std::size_t at = text.words.find(start); at != std::string::npos;
         at = text.words.find(start, at + 1)) {
        if (text.words[at + start.size()] == ' ')
            return at == 0 ? 6 : 4;
        begins = true;
    }
    if (begins)
        return text.words.compare(0, start.size(), start) == 0 ? 5 : 3;
    if (same_size(word, text))
        return 3;
    const bool inside = word.word.size() >= k_least_inside && !has_digit(word.word) &&
                        text.words.find(word.word) != std::string::npos;
    return inside ? 1 : 0;
}

int find_rank(const FindQuery& query, const FindText& text) {
    int sum = 0;
    for (const FindWord& word : query) {
        const int rank = find_rank(word, text);
        if (rank == 0)
            return 0;
        sum += rank;
    }
    return sum;
}

} // namespace treadle::views
