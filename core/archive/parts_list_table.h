// A table of text as a spreadsheet saves it or copies it: cells, whatever they mean.
//
// RFC 4180, and what spreadsheets make of it: comma, semicolon or tab (found by itself, or said by
// a first line "sep=;"), any line end, UTF-8, UTF-16 or Windows-1252. Everything is counted before
// anything is built on it; a refusal says row and column as a spreadsheet counts them, from 1.

#pragma once

#include "archive/parts_list_text.h"
#include "base/result.h"

#include <cstddef>
#include <cstdint>
#include <string>
#include <string_view>
#include <vector>

namespace treadle::archive {

inline constexpr std::size_t k_largest_list = 16u * 1024u * 1024u;
inline constexpr int k_most_rows = 20'000;
inline constexpr int k_most_columns = 64;
inline constexpr std::size_t k_longest_cell = 4000; ///< bytes

/// All cells lie in one text, so that a large table is three pieces of memory.
struct Table {
    struct Cell {
        std::uint32_t at = 0;
        std::uint32_t size = 0;
    };
    std::string text;
    std::vector<Cell> cells;               ///< row by row; a row may be shorter than the widest
    std::vector<std::uint32_t> row_starts; ///< into cells, and its end
    int columns = 0;                       ///< of the widest row
    char delimiter = ',';
    Letters letters = Letters::utf8;

    [[nodiscard]] int rows() const {
        return row_starts.empty() ? 0 : static_cast<int>(row_starts.size()) - 1;
    }
    /// Empty where the row is shorter. Both count from 0.
    [[nodiscard]] std::string_view cell(int row, int column) const;
    [[nodiscard]] bool blank(int row) const;
};

[[nodiscard]] base::Result<Table> read_table(std::string_view bytes);

/// "row 12, column 3", from places that count from 0.
[[nodiscard]] std::string place_in_table(int row, int column);

} // namespace treadle::archive
