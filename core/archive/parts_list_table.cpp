#include "archive/parts_list_table.h"

#include "base/text.h"

#include <algorithm>
#include <array>
#include <map>
#include <optional>

namespace treadle::archive {

namespace {

using base::Refusal;

bool ends_line(char c) { return c == '\n' || c == '\r'; }

/// Cuts text into cells, the first `most_rows` of them.
class Cutter {
public:
    Cutter(std::string_view text, char delimiter, int most_rows)
        : text_(text),
          most_rows_(most_rows) {
        table_.delimiter = delimiter;
        table_.row_starts.push_back(0);
    }

    [[nodiscard]] base::Result<Table> cut() && {
        table_.text.reserve(text_.size());
        while (at_ < text_.size() && table_.rows() < most_rows_)
            if (auto fault = take_row())
                return *fault;
        return std::move(table_);
    }

private:
    using Fault = std::optional<Refusal>;

    [[nodiscard]] Refusal refuse(const char* reason, std::string detail) const {
        return {place_in_table(table_.rows(), column_), reason, std::move(detail)};
    }

    Fault take_row() {
        column_ = 0;
        for (;; ++column_) {
            if (column_ >= k_most_columns)
                return refuse("There are more columns than any parts list has.",
                              "at most " + std::to_string(k_most_columns));
            if (auto fault = take_cell())
                return fault;
            if (at_ >= text_.size())
                break;
            if (text_[at_] == table_.delimiter) {
                ++at_;
                continue;
            }
            at_ += text_.substr(at_, 2) == "\r\n" ? 2u : 1u;
            break;
        }
        table_.columns = std::max(table_.columns, column_ + 1);
        table_.row_starts.push_back(static_cast<std::uint32_t>(table_.cells.size()));
        return std::nullopt;
    }

    Fault take_cell() {
        Table::Cell cell;
        cell.at = static_cast<std::uint32_t>(table_.text.size());
        // A quote inside a cell is an inch mark; only one at its beginning opens a quoted cell.
        if (auto fault = at_ < text_.size() && text_[at_] == '"' ? take_quoted() : take_plain())
            return fault;
        const std::string_view made = std::string_view(table_.text).substr(cell.at);
        if (made.size() > k_longest_cell)
            return refuse("This cell is too long.",
                          "at most " + std::to_string(k_longest_cell) + " bytes");
        cell.size = static_cast<std::uint32_t>(made.size());
        table_.cells.push_back(cell);
        return std::nullopt;
    }

    Fault take_plain() {
        const std::size_t from = at_;
        while (at_ < text_.size() && text_[at_] != table_.delimiter && !ends_line(text_[at_]))
            ++at_;
        return keep(text_.substr(from, at_ - from));
    }

    Fault take_quoted() {
        ++at_;
        for (;;) {
            const std::size_t quote = text_.find('"', at_);
            if (quote == std::string_view::npos)
                return refuse("The quote that begins this cell does not end.",
                              "a quote inside a quoted cell is written twice");
            if (auto fault = keep(text_.substr(at_, quote - at_)))
                return fault;
            at_ = quote + 1;
            if (at_ >= text_.size() || text_[at_] != '"')
                break;
            table_.text += '"';
            ++at_;
        }
        if (at_ < text_.size() && text_[at_] != table_.delimiter && !ends_line(text_[at_]))
            return refuse("Something follows the quote that ends this cell.",
                          "a quote inside a quoted cell is written twice");
        return std::nullopt;
    }

    /// Line ends inside a quoted cell become one kind.
    Fault keep(std::string_view piece) {
        for (std::size_t i = 0; i < piece.size(); ++i) {
            const char c = piece[i];
            const bool control = static_cast<unsigned char>(c) < 0x20 || c == '\x7F';
            if (control && c != '\t' && !ends_line(c))
                return refuse("There is a control character in this cell; this is no text.",
                              "text, saved as CSV");
            if (c == '\r' && i + 1 < piece.size() && piece[i + 1] == '\n')
                continue;
            table_.text += c == '\r' ? '\n' : c;
        }
        return std::nullopt;
    }

    std::string_view text_;
    std::size_t at_ = 0;
    int most_rows_;
    int column_ = 0;
    Table table_;
};

/// How many more of the rows have the commonest number of cells than have not; none when that
/// number is one.
std::optional<int> likeness(const Table& table) {
    std::map<std::uint32_t, int> rows_of_width;
    int all = 0;
    for (int row = 0; row < table.rows(); ++row)
        if (!table.blank(row)) {
            const auto at = static_cast<std::size_t>(row);
            ++rows_of_width[table.row_starts[at + 1] - table.row_starts[at]];
            ++all;
        }
    int most = 0;
    std::uint32_t width = 1;
    for (const auto& [wide, rows] : rows_of_width)
        if (rows >= most) {
            most = rows;
            width = wide;
        }
    return width == 1 ? std::nullopt : std::optional<int>(2 * most - all);
}

/// The delimiter that cuts the most rows alike and the fewest unlike: a wrong one also parts a note
/// of two lines. Tabs are never typed, and a semicolon stands where the comma is taken by decimals:
/// they win a draw.
char found_delimiter(std::string_view text) {
    constexpr int k_rows_looked_at = 50;
    constexpr std::array k_delimiters{'\t', ';', ','};
    char best = ',';
    std::optional<int> most;
    for (const char delimiter : k_delimiters) {
        const auto table = Cutter(text, delimiter, k_rows_looked_at).cut();
        const auto alike = table.ok() ? likeness(*table) : std::nullopt;
        if (alike && (!most || *alike > *most)) {
            most = alike;
            best = delimiter;
        }
    }
    return best;
}

/// "sep=;" as a first line; taken off the text.
std::optional<char> said_delimiter(std::string_view& text) {
    constexpr std::string_view k_sep = "sep=";
    if (base::to_lower_ascii(text.substr(0, k_sep.size())) != k_sep || text.size() < 5)
        return std::nullopt;
    const char delimiter = text[k_sep.size()];
    const std::string_view rest = text.substr(k_sep.size() + 1);
    if ((delimiter != ',' && delimiter != ';' && delimiter != '\t' && delimiter != '|') ||
        !(rest.empty() || ends_line(rest.front())))
        return std::nullopt;
    text = rest;
    if (!text.empty())
        text.remove_prefix(text.substr(0, 2) == "\r\n" ? 2 : 1);
    return delimiter;
}

} // namespace

std::string_view Table::cell(int row, int column) const {
    const auto at = static_cast<std::size_t>(row);
    const std::uint32_t index = row_starts[at] + static_cast<std::uint32_t>(column);
    if (index >= row_starts[at + 1])
        return {};
    return std::string_view(text).substr(cells[index].at, cells[index].size);
}

bool Table::blank(int row) const {
    for (int column = 0; column < columns; ++column)
        if (!base::trim(cell(row, column)).empty())
            return false;
    return true;
}

base::Result<Table> read_table(std::string_view bytes) {
    if (bytes.size() > k_largest_list)
        return Refusal{"file",
                       "The file is larger than any parts list.",
                       "at most " + std::to_string(k_largest_list / (1024 * 1024)) + " MB"};
    auto read = list_text(bytes);
    if (!read.ok())
        return read.refusal();
    std::string_view text = read->text;
    if (text.find_first_not_of(" \t\r\n,;") == std::string_view::npos)
        return Refusal{"file", "There is nothing in it.", ""};
    const auto said = said_delimiter(text);
    Cutter cutter(text, said ? *said : found_delimiter(text), k_most_rows + 1);
    auto table = std::move(cutter).cut();
    if (!table.ok())
        return table.refusal();
    if (table->rows() > k_most_rows)
        return Refusal{"row " + std::to_string(k_most_rows + 1),
                       "There are more rows than any parts list has.",
                       "at most " + std::to_string(k_most_rows)};
    Table made = std::move(table).value();
    made.letters = read->letters;
    return made;
}

std::string place_in_table(int row, int column) {
    return "row " + std::to_string(row + 1) + ", column " + std::to_string(column + 1);
}

} // namespace treadle::archive
