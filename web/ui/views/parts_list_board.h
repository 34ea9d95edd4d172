// A parts list on its way into the job, as it is shown: plain data that the page fills.

#pragma once

#include <cstddef>
#include <string>
#include <vector>

namespace treadle::views {

struct PartsListColumn {
    std::string heading;
    std::string why;   ///< it was taken so
    int holds = 0;     ///< of PartsListBoard::meanings
    bool open = false; ///< the user has to say
};

struct PartsListRow {
    enum class Became { part, refused, passed };
    Became became = Became::part;
    std::string title;  ///< "Row 14 taken: HB3 × 4"
    std::string detail; ///< section, length and grade, or the reason
};

struct PartsListBoard {
    bool open = false;
    std::string name;    ///< of the file
    std::string letters; ///< how its bytes were read
    std::vector<PartsListColumn> columns;
    std::vector<std::string> meanings;
    std::vector<std::string> units; ///< of numbers that name none; the first: nobody has said
    int unit = 0;
    std::vector<std::string> grades; ///< of rows that name none; the first: nobody has said
    int grade = 0;
    std::vector<std::string> decimals; ///< what stands before them; the first: nobody has said
    int decimal = 0;
    std::string fault; ///< why no row can be read yet; empty: they are read
    std::vector<PartsListRow> rows;
    std::size_t parts = 0;
    std::size_t refused = 0;
    std::size_t passed = 0;
};

/// What was chosen or pressed while a parts list is open.
struct PartsListAsk {
    enum class Do { column, unit, grade, decimal, add, save_refused, cancel };
    Do what = Do::cancel;
    int choice = 0;
    int column = 0;
};

} // namespace treadle::views
