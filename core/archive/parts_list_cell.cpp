#include "archive/parts_list_cell.h"

#include "base/text.h"

#include <array>
#include <vector>

namespace treadle::archive {

namespace {

using base::Refusal;

bool is_digit(char c) { return c >= '0' && c <= '9'; }
bool is_letter(char c) { return (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z'); }

std::string with_plain_blanks(std::string_view text) {
    constexpr std::array<std::string_view, 4> k_blanks{
        "\u00A0", "\u2007", "\u202F", "\u3000"}; // all of two or three bytes
    std::string out;
    for (std::size_t at = 0; at < text.size();) {
        std::size_t taken = 0;
        if (static_cast<unsigned char>(text[at]) >= 0x80)
            for (const std::string_view blank : k_blanks)
                if (text.substr(at, blank.size()) == blank)
                    taken = blank.size();
        if (taken == 0)
            out += text[at];
        else
            out += ' ';
        at += taken == 0 ? 1 : taken;
    }
    return out;
}

/// Runs of digits, of letters, and single signs: "2-Jan" is {"2", "-", "Jan"}.
std::vector<std::string_view> runs_of(std::string_view text) {
    std::vector<std::string_view> runs;
    for (std::size_t at = 0; at < text.size();) {
        std::size_t end = at + 1;
        const auto same = [&](bool (*kind)(char)) {
            while (kind(text[at]) && end < text.size() && kind(text[end]))
                ++end;
        };
        same(is_digit);
        same(is_letter);
        runs.push_back(text.substr(at, end - at));
        at = end;
    }
    return runs;
}

/// 1 to 12 for a month's short name in English, German, French or Spanish, else 0.
int month_of(std::string_view word) {
    struct Month {
        std::string_view name;
        int number;
    };
    constexpr Month k_months[] = {{"jan", 1},  {"feb", 2},  {"mar", 3}, {"apr", 4}, {"may", 5},
                                  {"jun", 6},  {"jul", 7},  {"aug", 8}, {"sep", 9}, {"oct", 10},
                                  {"nov", 11}, {"dec", 12}, {"mrz", 3}, {"mai", 5}, {"okt", 10},
                                  {"dez", 12}, {"ene", 1},  {"abr", 4}, {"ago", 8}, {"dic", 12},
                                  {"avr", 4},  {"sept", 9}};
    const std::string lower = base::to_lower_ascii(word);
    for (const Month& month : k_months)
        if (lower == month.name)
            return month.number;
    return 0;
}

int whole(std::string_view digits, int most) {
    if (digits.empty() || digits.size() > 4 || !is_digit(digits.front()))
        return 0;
    int value = 0;
    for (const char c : digits)
        value = value * 10 + (c - '0');
    return value <= most ? value : 0;
}

Refusal date_refusal(int day, int month) {
    std::string was = "Make the column text in the spreadsheet and type it again";
    if (day > 0 && month > 0)
        was = "It was probably " + std::to_string(month) + "/" + std::to_string(day) + " or " +
              std::to_string(day) + "/" + std::to_string(month) + ". " + was;
    return {"", "The spreadsheet has made a date of this.", was + "."};
}

/// 2-Jan, 2. Jan, Jan-02, 2-Jan-26.
std::optional<Refusal> named_date(const std::vector<std::string_view>& runs, Holds holds) {
    std::vector<std::string_view> words;
    for (const std::string_view run : runs) {
        if (is_digit(run.front()) || is_letter(run.front()))
            words.push_back(run);
        else if (holds == Holds::words ? run != "-" : run.find_first_of("-. /") != 0)
            return std::nullopt;
    }
    if (words.size() < 2 || words.size() > 3 || words.size() == runs.size())
        return std::nullopt;
    const int first = month_of(words[0]);
    const int month = first != 0 ? first : month_of(words[1]);
    const std::string_view name = first != 0 ? words[0] : words[1];
    const int day = whole(first != 0 ? words[1] : words[0], 9999);
    const bool year_after = words.size() == 2 || whole(words[2], 9999) > 0;
    if (month == 0 || day == 0 || !year_after)
        return std::nullopt;
    // MAR-12 is a mark that people paint; a spreadsheet writes Mar-12.
    const bool as_written = name[0] <= 'Z' && name[1] >= 'a';
    if (holds == Holds::words && !as_written)
        return std::nullopt;
    return date_refusal(day <= 31 ? day : 0, month);
}

/// 1/2/2026, 02.01.2026, 2026-01-02, each with or without a time behind it.
std::optional<Refusal> numbered_date(const std::vector<std::string_view>& runs) {
    if (runs.size() < 5 || runs[1] != runs[3] ||
        (runs[1] != "/" && runs[1] != "." && runs[1] != "-"))
        return std::nullopt;
    if (runs.size() > 5 && runs[5] != " " && runs[5] != "T")
        return std::nullopt;
    const bool year_first = runs[0].size() == 4;
    const std::string_view year = year_first ? runs[0] : runs[4];
    const int a = whole(runs[year_first ? 2 : 0], 31);
    const int b = whole(runs[year_first ? 4 : 2], 31);
    // 5-3-1/2 is feet and inches: a year of two digits stands behind slashes or points only.
    const bool year_fits = year.size() == 4
                               ? whole(year, 2199) >= 1900
                               : year.size() == 2 && runs[1] != "-" && runs.size() == 5;
    if (!year_fits || !is_digit(year.front()) || a == 0 || b == 0)
        return std::nullopt;
    return runs[1] == "/" ? date_refusal(b, a)
                          : date_refusal(year_first ? b : a, year_first ? a : b);
}

/// 1.5E+03: digits, and an exponent with its sign, as only a machine writes it.
bool has_exponent(std::string_view text) {
    const std::size_t e = text.find_first_of("eE");
    if (e == std::string_view::npos || e == 0 || e + 2 >= text.size() ||
        (text[e + 1] != '+' && text[e + 1] != '-'))
        return false;
    for (std::size_t i = 0; i < text.size(); ++i)
        if (i != e && i != e + 1 && !is_digit(text[i]) && text[i] != '.' && text[i] != ',')
            return false;
    return is_digit(text[0]) || text[0] == '-';
}

bool is_error(std::string_view text) {
    constexpr std::array<std::string_view, 9> k_errors{
        "#REF!", "#N/A", "#VALUE!", "#DIV/0!", "#NAME?", "#NULL!", "#NUM!", "#BEZUG!", "#WERT!"};
    for (const std::string_view error : k_errors)
        if (text == error)
            return true;
    return false;
}

} // namespace

std::string cell_text(std::string_view cell) {
    std::string text = with_plain_blanks(cell);
    std::string_view inside = base::trim(text);
    if (inside.size() >= 3 && inside.substr(0, 2) == "=\"" && inside.back() == '"') {
        std::string out;
        const std::string_view quoted = inside.substr(2, inside.size() - 3);
        for (std::size_t i = 0; i < quoted.size(); ++i) {
            out += quoted[i];
            if (quoted.substr(i, 2) == "\"\"")
                ++i;
        }
        return std::string(base::trim(out));
    }
    if (!inside.empty() && inside.front() == '\'')
        inside = base::trim(inside.substr(1));
    return std::string(inside);
}

std::optional<Refusal> damage_in(std::string_view text, Holds holds) {
    if (text.empty())
        return std::nullopt;
    if (is_error(text))
        return Refusal{"", "The spreadsheet has an error in this cell.", std::string(text)};
    if (text.size() > 1 && text.find_first_not_of('#') == std::string_view::npos)
        return Refusal{"",
                       "The spreadsheet's column was too narrow, and only its signs came along.",
                       "Widen the column there and save again."};
    if (has_exponent(text))
        return Refusal{"",
                       "The spreadsheet has written this as a power of ten; figures may be lost.",
                       "Make the column text in the spreadsheet and type it again."};
    if (text.size() > 40)
        return std::nullopt;
    const std::vector<std::string_view> runs = runs_of(text);
    if (auto date = named_date(runs, holds))
        return date;
    if (auto date = numbered_date(runs))
        return date;
    if (holds == Holds::words)
        return std::nullopt;
    if (text.front() == '=')
        return Refusal{"", "This is a formula, not the figure that it gives.", "the figure"};
    if (text.back() == '%')
        return Refusal{"", "A share in per cent does not belong here.", "the figure itself"};
    return std::nullopt;
}

std::optional<Refusal> date_number_in(std::string_view text) {
    // Days since 30 December 1899; from 1995 to 2064 no bar is as long as that many inches.
    const auto number = base::read_number(text);
    if (!number || text.size() != 5 || *number < 34700.0 || *number > 60000.0 ||
        *number != static_cast<int>(*number))
        return std::nullopt;
    // Civil date from a day count: years that begin in March, in cycles of 400 years.
    const int days = static_cast<int>(*number) + 693899; // from 1 March 0000
    const int day_of_cycle = days % 146097;
    const int year_of_cycle =
        (day_of_cycle - day_of_cycle / 1460 + day_of_cycle / 36524 - day_of_cycle / 146096) / 365;
    const int day_of_year =
        day_of_cycle - (365 * year_of_cycle + year_of_cycle / 4 - year_of_cycle / 100);
    const int month_from_march = (5 * day_of_year + 2) / 153;
    const int day = day_of_year - (153 * month_from_march + 2) / 5 + 1;
    Refusal refusal =
        date_refusal(day, month_from_march < 10 ? month_from_march + 3 : month_from_march - 9);
    refusal.reason =
        "This is probably the number of a day that the spreadsheet made of a fraction.";
    return refusal;
}

std::string plain_figure(std::string_view text, DecimalMark mark) {
    if (mark == DecimalMark::not_said)
        return std::string(text);
    const char decimal = mark == DecimalMark::point ? '.' : ',';
    const char group = mark == DecimalMark::point ? ',' : '.';
    std::string out;
    for (std::size_t i = 0; i < text.size(); ++i) {
        const bool between = i > 0 && i + 1 < text.size() && is_digit(text[i - 1]);
        if (text[i] == group && between && text.size() >= i + 4 && is_digit(text[i + 1]) &&
            is_digit(text[i + 2]) && is_digit(text[i + 3]) &&
            (i + 4 == text.size() || !is_digit(text[i + 4])))
            continue;
        out += text[i] == decimal ? '.' : text[i];
    }
    return out;
}

bool point_may_group(std::string_view text) {
    const std::size_t point = text.find('.');
    if (point == std::string_view::npos || point == 0 || point > 3 || text[0] == '0')
        return false;
    std::size_t end = point + 1;
    while (end < text.size() && is_digit(text[end]))
        ++end;
    for (std::size_t i = 0; i < point; ++i)
        if (!is_digit(text[i]))
            return false;
    return end == point + 4;
}

bool has_decimal_comma(std::string_view text) {
    const std::size_t comma = text.find(',');
    if (comma == std::string_view::npos || comma + 1 >= text.size() || comma == 0 ||
        !is_digit(text[comma - 1]) || !is_digit(text[comma + 1]))
        return false;
    std::size_t end = comma + 1;
    while (end < text.size() && is_digit(text[end]))
        ++end;
    return end != comma + 4;
}

void add_cell(std::string& out, std::string_view value, bool last) {
    // A leading sign of a formula gets an apostrophe before it, so that it stays text; so does an
    // apostrophe, which the reader takes off.
    std::string cell(value);
    if (!cell.empty() && std::string_view("=+-@\t\r'").find(cell.front()) != std::string_view::npos)
        cell.insert(cell.begin(), '\'');
    // "%PDF" and "sep=" at the beginning of a file mean something else than a cell.
    if (cell.find_first_of(",\"\r\n\t;%=") == std::string::npos) {
        out += cell;
    } else {
        out += '"';
        for (const char c : cell) {
            if (c == '"')
                out += '"';
            out += c;
        }
        out += '"';
    }
    out += last ? "\r\n" : ",";
}

} // namespace treadle::archive
