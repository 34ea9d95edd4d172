#include "quantity/amount_text.h"

#include "base/text.h"

#include <array>
#include <cmath>

namespace treadle::quantity {

namespace {

constexpr std::size_t k_most_bytes = 64;

bool is_digit(char c) { return c >= '0' && c <= '9'; }
bool is_letter(char c) { return c >= 'a' && c <= 'z'; }

struct Spelling {
    std::string_view typed;
    std::string_view plain;
};

// Fractions end in a blank, so that a digit typed after one cannot join its denominator.
constexpr std::array<Spelling, 43> k_spellings{{
    {"’", "'"},      {"‘", "'"},      {"′", "'"},      {"´", "'"},      {"”", "\""},
    {"“", "\""},     {"″", "\""},     {"„", "\""},     {"–", "-"},      {"—", "-"},
    {"‐", "-"},      {"‑", "-"},      {"‒", "-"},      {"−", "-"},      {"⁄", "/"},
    {"∕", "/"},      {"½", "1/2 "},   {"¼", "1/4 "},   {"¾", "3/4 "},   {"⅛", "1/8 "},
    {"⅜", "3/8 "},   {"⅝", "5/8 "},   {"⅞", "7/8 "},   {"⅓", "1/3 "},   {"⅔", "2/3 "},
    {"\u00A0", " "}, {"\u2007", " "}, {"\u2009", " "}, {"\u200A", " "}, {"\u202F", " "},
    {"°", " deg"},   {"²", "2"},      {"³", "3"},      {"×", "x"},      {"·", "*"},
    {"\u2002", " "}, {"\u2003", " "}, {"\u2005", " "}, {"\u2006", " "}, {"\u2008", " "},
    {"\u2004", " "}, {"\u3000", " "}, {"㎜", "mm"},
}};

const Spelling* spelling_at(std::string_view text) {
    for (const Spelling& s : k_spellings)
        if (text.substr(0, s.typed.size()) == s.typed)
            return &s;
    return nullptr;
}

} // namespace

base::Result<std::string> plain_text(std::string_view text, std::string_view field) {
    const auto refuse = [&](const char* reason, const char* detail) {
        return base::Refusal{std::string(field), reason, detail};
    };
    if (text.size() > k_most_bytes)
        return refuse("This is too long for a figure.", "at most 64 characters");
    std::string out;
    for (std::size_t at = 0; at < text.size();) {
        const char c = text[at];
        if (c >= ' ' && c <= '~') {
            out += c;
            ++at;
        } else if (c == '\t') {
            out += ' ';
            ++at;
        } else if (const Spelling* s = spelling_at(text.substr(at))) {
            if (s->plain.find('/') != std::string_view::npos && s->plain.size() > 1 &&
                !out.empty() && is_digit(out.back()))
                out += ' ';
            out += s->plain;
            at += s->typed.size();
        } else {
            return refuse("This holds a character that belongs to no figure.",
                          "figures, a point or a comma, a fraction, and the unit");
        }
    }
    out = base::to_lower_ascii(out);
    if (base::trim(out).empty())
        return refuse("Nothing is entered.", "a figure");
    return std::string(base::trim(out));
}

bool AmountReader::skip_blanks() {
    const std::size_t from = at_;
    while (peek() == ' ')
        ++at_;
    return at_ != from;
}

bool AmountReader::take(char c) {
    if (peek() != c || at_end())
        return false;
    ++at_;
    return true;
}

bool AmountReader::take_minus() {
    skip_blanks();
    const bool minus = peek() == '-';
    if (minus || peek() == '+') {
        ++at_;
        skip_blanks();
    }
    return minus;
}

bool AmountReader::at_number() const {
    return is_digit(peek()) ||
           ((peek() == '.' || peek() == ',') && at_ + 1 < text_.size() && is_digit(text_[at_ + 1]));
}

std::string_view AmountReader::take_word() {
    const std::size_t from = at_;
    while (is_letter(peek()))
        ++at_;
    return text_.substr(from, at_ - from);
}

std::string_view AmountReader::take_rest() {
    const std::string_view rest = base::trim(text_.substr(at_));
    at_ = text_.size();
    return rest;
}

/// `1,250` is 1.25 to one reader and 1250 to the next; `0,125` and `12,5` can only be decimals.
bool AmountReader::comma_groups_thousands(std::size_t from, std::size_t comma) const {
    std::size_t end = comma + 1;
    while (end < text_.size() && is_digit(text_[end]))
        ++end;
    const bool three_after = end - comma == 4;
    const std::size_t before = comma - from;
    return three_after && before >= 1 && before <= 3 && text_[from] != '0';
}

std::optional<Amount> AmountReader::take_plain() {
    if (!at_number()) {
        fault_ = "There is no number where one is expected.";
        return std::nullopt;
    }
    const std::size_t from = at_;
    Amount amount;
    amount.whole = true;
    std::string digits;
    for (; is_digit(peek()) || (amount.whole && (peek() == '.' || peek() == ',')); ++at_) {
        if (is_digit(peek())) {
            digits += peek();
            continue;
        }
        if (peek() == ',' && comma_groups_thousands(from, at_)) {
            fault_ = "The comma can mean thousands or decimals.";
            return std::nullopt;
        }
        digits += '.';
        amount.whole = false;
    }
    if (peek() == ',' || peek() == '.') {
        fault_ = "There is more than one decimal point or comma.";
        return std::nullopt;
    }
    // An exponent only where a digit follows: otherwise the letter starts a unit.
    std::size_t look = at_ + 1;
    if (peek() == 'e' && look < text_.size() && (text_[look] == '-' || text_[look] == '+'))
        ++look;
    if (peek() == 'e' && look < text_.size() && is_digit(text_[look])) {
        amount.whole = false;
        while (look < text_.size() && is_digit(text_[look]))
            ++look;
        digits += text_.substr(at_, look - at_);
        at_ = look;
    }
    const std::optional<double> value = base::read_number(digits);
    if (!value) {
        fault_ = "The number is too large.";
        return std::nullopt;
    }
    amount.value = *value;
    return amount;
}

std::optional<Amount> AmountReader::take_fraction_after(Amount top) {
    skip_blanks();
    const std::optional<Amount> bottom = take_plain();
    if (!bottom)
        return std::nullopt;
    if (!top.whole || !bottom->whole) {
        fault_ = "A fraction is written with whole numbers.";
        return std::nullopt;
    }
    if (bottom->value == 0.0) {
        fault_ = "The bottom number of a fraction cannot be zero.";
        return std::nullopt;
    }
    return Amount{top.value / bottom->value, false, true};
}

std::optional<Amount> AmountReader::take_amount() {
    const std::optional<Amount> first = take_plain();
    if (!first)
        return std::nullopt;
    const std::size_t after_first = at_;
    bool joined = skip_blanks();
    if (take('/'))
        return take_fraction_after(*first);
    joined = take('-') || joined;
    skip_blanks();
    if (first->whole && joined && at_number()) {
        const std::optional<Amount> top = take_plain();
        if (!top)
            return std::nullopt;
        skip_blanks();
        if (take('/')) {
            const std::optional<Amount> part = take_fraction_after(*top);
            if (!part)
                return std::nullopt;
            if (part->value >= 1.0) {
                fault_ = "The fraction beside a whole number has to be below 1.";
                return std::nullopt;
            }
            return Amount{first->value + part->value, false, true};
        }
    }
    at_ = after_first;
    return first;
}

} // namespace treadle::quantity
