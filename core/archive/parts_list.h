// Parts lists: a table from a spreadsheet to parts, one answer a row, and back.
//
//   read_table        bytes to cells (parts_list_table.h)
//   propose_mapping   which column is what, with the reason; what fits two meanings is left open
//   read_parts        a part, a refusal or a word why it was passed over, for each row
//
// No unit is ever assumed: a number takes the one in its cell, else the one in its column's
// heading, else the one that the user has said, and is refused without any.

#pragma once

#include "archive/parts_list_cell.h"
#include "archive/parts_list_table.h"
#include "base/result.h"
#include "job/job.h"

#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace treadle::archive {

/// What a column holds. `nothing`: it is not read.
enum class Column { nothing, mark, count, section, length, grade, note, width, thickness };
inline constexpr int k_columns_known = 9;
[[nodiscard]] const char* column_word(Column column); ///< "mark", "count", …
[[nodiscard]] std::optional<Column> column_named(std::string_view word);

struct MappedColumn {
    Column holds = Column::nothing;
    std::string heading; ///< as in the table; "column 3" where it has none
    std::string unit;    ///< of bare numbers, as the heading says: mm, cm, m, in, ft; else empty
    std::string why;     ///< one sentence
    bool open = false;   ///< fits more than one meaning: the user says which
};

struct Mapping {
    int heading_row = -1; ///< from 0; none: the table has no headings
    std::vector<MappedColumn> columns;

    [[nodiscard]] int column_of(Column holds) const; ///< -1 when there is none
};
[[nodiscard]] Mapping propose_mapping(const Table& table, const job::Catalog& catalog);
/// Gives a column another meaning; one that had it before holds nothing then.
[[nodiscard]] Mapping with_column(Mapping mapping, int column, Column holds);
/// What is missing or said twice before rows can be read: the field is the meaning's word.
[[nodiscard]] std::optional<base::Refusal> mapping_fault(const Mapping& mapping);

struct ListOptions {
    std::optional<UnitSystem> units; ///< of numbers that neither cell nor heading gives one
    std::string grade;               ///< of rows that name none; empty: such a row is refused
    DecimalMark mark = DecimalMark::not_said;
    std::vector<Grade> own_grades; ///< of the job that the parts go to
};

struct TakenRow {
    int row = 0; ///< as a spreadsheet counts, from 1
    job::Part part;
};
struct RefusedRow {
    int row = 0;
    int column = -1;     ///< from 0; none: the row as a whole
    std::string heading; ///< of the column
    base::Refusal refusal;
};
struct PassedRow {
    int row = 0;
    std::string reason;
};
struct ReadParts {
    std::vector<TakenRow> taken; ///< ids p1, p2, …; with one cut to length each
    std::vector<RefusedRow> refused;
    std::vector<PassedRow> passed; ///< blank, headings, sub-totals
};

/// Refuses as a whole only for the mapping's own fault or a grade that is not known.
[[nodiscard]] base::Result<ReadParts> read_parts(const Table& table,
                                                 const Mapping& mapping,
                                                 const ListOptions& options,
                                                 const job::Catalog& catalog);

/// The parts as a list that read_parts gives back with the same marks, counts, sections, lengths,
/// grades and notes. A bent part's legs stand where its length would be, and are refused there.
[[nodiscard]] std::string write_parts_csv(const job::Job& job, const job::Catalog& catalog);
/// The rows that were refused as they stood, with the reason behind each.
[[nodiscard]] std::string
write_refused_rows_csv(const Table& table, const Mapping& mapping, const ReadParts& read);

} // namespace treadle::archive
