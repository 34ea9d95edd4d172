#include "base/text.h"

#include "base/ascii.h"
#include "base/contracts.h"

#include <array>
#include <cmath>
#include <cstdint>
#include <cstdio>
#include <cstdlib>
#include <limits>

namespace treadle::base {

namespace {

// Every power here is exact in a double, so one multiplication or division by it is rounded once.
constexpr std::array<double, 23> k_powers{1e0,  1e1,  1e2,  1e3,  1e4,  1e5,  1e6,  1e7,
                                          1e8,  1e9,  1e10, 1e11, 1e12, 1e13, 1e14, 1e15,
                                          1e16, 1e17, 1e18, 1e19, 1e20, 1e21, 1e22};
constexpr double k_exact_limit = 1e15; ///< whole numbers below are exact, with room to spare

bool is_digit(char c) { return c >= '0' && c <= '9'; }

/// A number taken apart; `digits` holds the value only while `significant` stays within 15.
struct Decimal {
    bool negative = false;
    std::uint64_t digits = 0;
    int significant = 0;
    int exponent = 0;
    bool plain = true; ///< no written exponent, so `exponent` is the whole story
};

/// The grammar is ours: strtod alone would let hex, inf, nan and leading blanks through.
std::optional<Decimal> take_apart(std::string_view text) {
    Decimal d;
    std::size_t at = 0;
    if (at < text.size() && (text[at] == '-' || text[at] == '+'))
        d.negative = text[at++] == '-';
    bool any = false;
    bool after_point = false;
    for (; at < text.size() && (is_digit(text[at]) || (text[at] == '.' && !after_point)); ++at) {
        if (text[at] == '.') {
            after_point = true;
            continue;
        }
        any = true;
        if (d.significant < 16) {
            d.digits = d.digits * 10 + static_cast<std::uint64_t>(text[at] - '0');
            if (d.digits != 0)
                ++d.significant;
        }
        if (after_point)
            --d.exponent;
    }
    if (!any)
        return std::nullopt;
    if (at == text.size())
        return d;
    if (text[at] != 'e' && text[at] != 'E')
        return std::nullopt;
    d.plain = false;
    ++at;
    if (at < text.size() && (text[at] == '-' || text[at] == '+'))
        ++at;
    if (at == text.size())
        return std::nullopt;
    for (; at < text.size(); ++at)
        if (!is_digit(text[at]))
            return std::nullopt;
    return d;
}

void append_digits(std::string& out, std::uint64_t value, int least) {
    std::array<char, 24> buffer{};
    std::size_t at = buffer.size();
    do {
        buffer[--at] = static_cast<char>('0' + value % 10);
        value /= 10;
        --least;
    } while (value != 0 || least > 0);
    out.append(&buffer[at], buffer.size() - at);
}

/// `scaled` whole and below 2^53, meaning scaled / 10^decimals.
std::string place_point(double scaled, int decimals, bool negative) {
    const auto all = static_cast<std::uint64_t>(scaled);
    const auto power = static_cast<std::uint64_t>(k_powers[static_cast<std::size_t>(decimals)]);
    std::string out;
    if (negative)
        out += '-';
    append_digits(out, all / power, 1);
    if (decimals > 0) {
        out += '.';
        append_digits(out, all % power, decimals);
    }
    return out;
}

/// Fewest digits that read back, tried one after the other.
std::string shortest_by_trial(double value, int fewest) {
    std::array<char, 40> buffer{};
    for (int digits = fewest; digits <= 17; ++digits) {
        std::snprintf(buffer.data(), buffer.size(), "%.*g", digits, value);
        if (std::strtod(buffer.data(), nullptr) == value)
            break;
    }
    return buffer.data();
}

/// The same, soonest for what comes out of a formula: most of that needs 17 digits, and when 16 do
/// not read back 15 do not either. Powers of two are left out of this: they have a nearer neighbour
/// on one side, so that a coarser number may read back where a finer one does not.
std::string shortest_digits(double value) {
    int exponent = 0;
    if (std::fabs(value) < std::numeric_limits<double>::min())
        return shortest_by_trial(value, 1); // fewer than 15 digits can be enough
    if (std::fabs(std::frexp(value, &exponent)) == 0.5)
        return shortest_by_trial(value, 15);
    std::array<char, 40> sixteen{};
    std::snprintf(sixteen.data(), sixteen.size(), "%.16g", value);
    if (std::strtod(sixteen.data(), nullptr) != value) {
        std::snprintf(sixteen.data(), sixteen.size(), "%.17g", value);
        return sixteen.data();
    }
    std::array<char, 40> fifteen{};
    std::snprintf(fifteen.data(), fifteen.size(), "%.15g", value);
    return std::strtod(fifteen.data(), nullptr) == value ? fifteen.data() : sixteen.data();
}

/// Length of the well-formed UTF-8 character at `at`, or 0.
std::size_t character_length(std::string_view text, std::size_t at) {
    const auto byte = [&](std::size_t i) { return static_cast<unsigned char>(text[i]); };
    const unsigned lead = byte(at);
    if (lead < 0x80)
        return (lead < 0x20 && lead != '\t' && lead != '\n') || lead == 0x7F ? 0 : 1;
    const std::size_t length = lead >= 0xF0 ? 4 : lead >= 0xE0 ? 3 : 2;
    if (lead < 0xC2 || lead > 0xF4 || at + length > text.size())
        return 0;
    unsigned code = lead & (0xFFU >> (length + 1));
    for (std::size_t i = 1; i < length; ++i) {
        if ((byte(at + i) & 0xC0U) != 0x80U)
            return 0;
        code = (code << 6U) | (byte(at + i) & 0x3FU);
    }
    const bool overlong = (length == 3 && code < 0x800) || (length == 4 && code < 0x10000);
    const bool surrogate = code >= 0xD800 && code <= 0xDFFF;
    if (overlong || surrogate || code > 0x10FFFF || code < 0xA0)
        return 0;
    return length;
}

} // namespace

std::optional<double> read_number(std::string_view text) {
    constexpr std::size_t k_longest = 400;
    if (text.size() > k_longest)
        return std::nullopt;
    const std::optional<Decimal> d = take_apart(text);
    if (!d)
        return std::nullopt;
    if (d->plain && d->significant <= 15 && -d->exponent < static_cast<int>(k_powers.size())) {
        // Both operands exact: the one division rounds correctly, as strtod would.
        const double value =
            static_cast<double>(d->digits) / k_powers[static_cast<std::size_t>(-d->exponent)];
        return d->negative ? -value : value;
    }
    const std::string terminated(text);
    const double value = std::strtod(terminated.c_str(), nullptr);
    if (!std::isfinite(value))
        return std::nullopt;
    return value;
}

std::string write_number(double value) {
    TREADLE_EXPECT(std::isfinite(value));
    const double size = std::fabs(value);
    if (size < k_exact_limit && (size >= 1e-4 || size == 0.0)) {
        // Most figures of the trade have few decimals: no printing and reading back for those.
        for (int decimals = 0; decimals <= 6; ++decimals) {
            const double power = k_powers[static_cast<std::size_t>(decimals)];
            const double scaled = std::round(size * power);
            if (scaled >= k_exact_limit)
                break;
            if (scaled / power == size)
                return place_point(scaled, decimals, std::signbit(value));
        }
    }
    return shortest_digits(value);
}

std::string write_fixed(double value, int decimals) {
    TREADLE_EXPECT(std::isfinite(value));
    TREADLE_EXPECT(decimals >= 0 && decimals <= 15);
    const double scaled =
        std::round(std::fabs(value) * k_powers[static_cast<std::size_t>(decimals)]);
    if (scaled < k_exact_limit)
        return place_point(scaled, decimals, value < 0.0 && scaled > 0.0);
    std::array<char, 400> buffer{};
    std::snprintf(buffer.data(), buffer.size(), "%.*f", decimals, value);
    return buffer.data();
}

std::string write_short(double value, int most_decimals) {
    std::string out = write_fixed(value, most_decimals);
    if (out.find('.') == std::string::npos)
        return out;
    while (out.back() == '0')
        out.pop_back();
    if (out.back() == '.')
        out.pop_back();
    return out;
}

std::string capital(std::string words) {
    if (!words.empty() && words[0] >= 'a' && words[0] <= 'z')
        words[0] = static_cast<char>(words[0] - 'a' + 'A');
    return words;
}

std::string_view trim(std::string_view text) {
    constexpr std::string_view k_blanks = " \t\r\n";
    const std::size_t first = text.find_first_not_of(k_blanks);
    if (first == std::string_view::npos)
        return {};
    return text.substr(first, text.find_last_not_of(k_blanks) - first + 1);
}

std::string to_lower_ascii(std::string_view text) {
    std::string out(text);
    for (char& c : out)
        c = to_lower(c);
    return out;
}

std::string escape_markup(std::string_view text) {
    std::string out;
    out.reserve(text.size());
    for (const char c : text) {
        switch (c) {
        case '&':
            out += "&amp;";
            break;
        case '<':
            out += "&lt;";
            break;
        case '>':
            out += "&gt;";
            break;
        case '"':
            out += "&quot;";
            break;
        case '\'':
            out += "&#39;";
            break;
        default:
            out += c;
        }
    }
    return out;
}

bool is_clean_text(std::string_view text) {
    for (std::size_t at = 0; at < text.size();) {
        const std::size_t length = character_length(text, at);
        if (length == 0)
            return false;
        at += length;
    }
    return true;
}

} // namespace treadle::base
