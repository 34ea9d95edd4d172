// read_parts of parts_list.h.

#include "archive/beginning.h"
#include "archive/parts_list.h"
#include "archive/parts_list_section.h"
#include "base/text.h"
#include "quantity/parse.h"

#include <algorithm>
#include <array>
#include <unordered_map>
#include <utility>

namespace treadle::archive {

namespace {

using base::Refusal;
using base::Result;

/// The field of a refusal leads back to the column.
Refusal said_of(Column column, Refusal refusal) {
    refusal.field = column_word(column);
    return refusal;
}

std::string unit_word(const std::optional<UnitSystem>& units) {
    if (!units)
        return "";
    return *units == UnitSystem::inch ? "in" : "mm";
}

/// Words around a grade that name the body or say that a grade follows.
const Grade*
grade_named(std::string_view text, const ListOptions& options, const job::Catalog& catalog) {
    for (const Grade& own : options.own_grades)
        if (own.id == text)
            return &own;
    if (const Grade* known = catalog.grades.find(text))
        return known;
    std::string bare;
    for (std::size_t at = 0; at < text.size();) {
        const std::size_t end = std::min(text.find(' ', at), text.size());
        std::string word = base::to_lower_ascii(text.substr(at, end - at));
        if (word != "astm" && word != "gr" && word != "gr." && word != "grade" && word != "en")
            bare += word + " ";
        at = end + 1;
    }
    return catalog.grades.find(base::trim(bare));
}

/// First words of a row that adds up the rows above it.
bool adds_up(std::string_view text) {
    constexpr std::array<std::string_view, 9> k_words{"total",
                                                      "subtotal",
                                                      "sub-total",
                                                      "sub total",
                                                      "sum",
                                                      "summe",
                                                      "zwischensumme",
                                                      "gesamt",
                                                      "suma"};
    const std::string lower = base::to_lower_ascii(text);
    return std::any_of(k_words.begin(), k_words.end(), [&lower](std::string_view word) {
        return lower.substr(0, word.size()) == word &&
               (lower.size() == word.size() ||
                std::string_view(" :.").find(lower[word.size()]) != std::string_view::npos);
    });
}

/// Letters behind a count that say pieces: "4 pcs", "2 off", "6x".
std::string_view without_pieces(std::string_view text) {
    const std::size_t end = text.find_first_not_of("0123456789");
    if (end == 0 || end == std::string_view::npos)
        return text;
    const std::string word = base::to_lower_ascii(base::trim(text.substr(end)));
    for (const std::string_view known :
         {"pcs", "pcs.", "pc", "pieces", "off", "ea", "ea.", "x", "stk", "stk.", "stück", "uds"})
        if (word == known)
            return text.substr(0, end);
    return text;
}

/// Reads the rows of one table, one after the other.
class RowReader {
public:
    RowReader(const Table& table,
              const Mapping& mapping,
              const ListOptions& options,
              const job::Catalog& catalog)
        : table_(table),
          mapping_(mapping),
          options_(options),
          catalog_(catalog),
          points_may_group_(options.mark == DecimalMark::not_said && has_decimal_commas()) {
        for (int i = 0; i < k_columns_known; ++i)
            column_of_[static_cast<std::size_t>(i)] = mapping.column_of(static_cast<Column>(i));
    }

    void read(int row) {
        row_ = row;
        if (table_.blank(row))
            return pass("This row is blank.");
        if (row < mapping_.heading_row)
            return pass("This row stands above the headings.");
        if (row == mapping_.heading_row)
            return pass("These are the headings.");
        if (mapping_.heading_row >= 0 && repeats_headings())
            return pass("These are the headings again.");
        if (adds_up(first_filled()) && (cell(Column::section).empty() ||
                                        cell(Column::mark).empty() || cell(Column::length).empty()))
            return pass("This row adds up the rows above it.");
        auto part = part_in_row();
        if (part.ok()) {
            part_number_ += 1;
            job::Part made = std::move(part).value();
            made.id = "p" + std::to_string(part_number_);
            return answer_.taken.push_back({row_ + 1, std::move(made)});
        }
        refuse(part.refusal());
    }

    [[nodiscard]] ReadParts take() && { return std::move(answer_); }

private:
    void pass(const char* reason) { answer_.passed.push_back({row_ + 1, reason}); }

    void refuse(const Refusal& refusal) {
        RefusedRow refused{row_ + 1, -1, "", refusal};
        // "section.width" belongs to the section's column.
        if (const auto holds = column_named(refusal.field.substr(0, refusal.field.find('.'))))
            refused.column = column_of_[static_cast<std::size_t>(*holds)];
        if (refused.column >= 0)
            refused.heading = mapping_.columns[static_cast<std::size_t>(refused.column)].heading;
        answer_.refused.push_back(std::move(refused));
    }

    [[nodiscard]] std::string cell(Column holds) const {
        const int column = column_of_[static_cast<std::size_t>(holds)];
        return column < 0 ? "" : cell_text(table_.cell(row_, column));
    }
    [[nodiscard]] std::string unit_of(Column holds) const {
        const int column = column_of_[static_cast<std::size_t>(holds)];
        if (column >= 0)
            if (const auto& unit = mapping_.columns[static_cast<std::size_t>(column)].unit;
                !unit.empty())
                return unit;
        return unit_word(options_.units);
    }

    [[nodiscard]] std::string first_filled() const {
        for (int column = 0; column < table_.columns; ++column)
            if (std::string text = cell_text(table_.cell(row_, column)); !text.empty())
                return text;
        return "";
    }

    [[nodiscard]] bool repeats_headings() const {
        for (int column = 0; column < table_.columns; ++column)
            if (table_.cell(row_, column) != table_.cell(mapping_.heading_row, column))
                return false;
        return true;
    }

    /// Where decimals have commas, 1.250 may be a thousand.
    [[nodiscard]] bool has_decimal_commas() const {
        if (table_.delimiter == ';')
            return true;
        for (const Column holds : {Column::length, Column::width, Column::thickness}) {
            const int column = mapping_.column_of(holds);
            for (int row = 0; column >= 0 && row < table_.rows(); ++row)
                if (has_decimal_comma(table_.cell(row, column)))
                    return true;
        }
        return false;
    }

    /// The text of a figure's cell, or why it is none.
    [[nodiscard]] Result<std::string> figure_in(Column holds) const {
        std::string text = cell(holds);
        if (const auto damage = damage_in(text, Holds::figure))
            return said_of(holds, *damage);
        if (holds != Column::section && points_may_group_ && point_may_group(text))
            return said_of(holds,
                           {"",
                            "The point can mean thousands or decimals.",
                            "say which sign stands before decimals in this list"});
        return text;
    }

    [[nodiscard]] Result<std::string> words_in(Column holds) const {
        std::string text = cell(holds);
        if (const auto damage = damage_in(text, Holds::words))
            return said_of(holds, *damage);
        return text;
    }

    [[nodiscard]] Result<int> count_in_row() const {
        const auto text = figure_in(Column::count);
        if (!text.ok())
            return text.refusal();
        if (text->empty())
            return Refusal{"count", "The count is missing.", "1 to 100000"};
        return quantity::parse_whole(without_pieces(*text), "count");
    }

    [[nodiscard]] Result<Length> length_in_row() const {
        const auto text = figure_in(Column::length);
        if (!text.ok())
            return text.refusal();
        if (text->empty())
            return Refusal{"length", "The length is missing.", "for example 4' 6-1/2\" or 1200 mm"};
        if (text->find(" + ") != std::string::npos)
            return Refusal{"length",
                           "These are the legs of a bent part, whose angles a list does not say.",
                           "enter bent parts by hand"};
        const std::string unit = unit_of(Column::length);
        if (unit == "in")
            if (const auto date = date_number_in(*text))
                return said_of(Column::length, *date);
        return length_in(*text, unit, options_.mark, "length");
    }

    [[nodiscard]] Result<Section> section_in_row() {
        SectionCells cells;
        for (const auto& [holds, text, unit] :
             {std::tuple{Column::section, &cells.text, &cells.unit},
              std::tuple{Column::width, &cells.width, &cells.width_unit},
              std::tuple{Column::thickness, &cells.thickness, &cells.thickness_unit}}) {
            auto read = figure_in(holds);
            if (!read.ok())
                return read.refusal();
            *text = std::move(read).value();
            *unit = unit_of(holds);
            if (holds != Column::section && *unit == "in")
                if (const auto date = date_number_in(*text))
                    return said_of(holds, *date);
        }
        cells.mark = options_.mark;
        // A list has few sections and many rows.
        const std::string key = cells.text + '\n' + cells.width + '\n' + cells.thickness;
        const auto known = sections_.find(key);
        if (known != sections_.end())
            return known->second;
        return sections_.emplace(key, section_in(cells, catalog_.sections)).first->second;
    }

    [[nodiscard]] Result<std::string> grade_in_row() {
        const auto text = words_in(Column::grade);
        if (!text.ok())
            return text.refusal();
        const std::string& said = text->empty() ? options_.grade : *text;
        if (said.empty())
            return Refusal{"grade", "The grade is missing.", "or say one for all rows without it"};
        const auto known = grades_.find(said);
        if (known != grades_.end())
            return known->second;
        const Grade* grade = grade_named(said, options_, catalog_);
        return grades_
            .emplace(said,
                     grade != nullptr
                         ? Result<std::string>(grade->id)
                         : Refusal{"grade", "This grade is not known here.", beginning(said, 60)})
            .first->second;
    }

    [[nodiscard]] Result<job::Part> part_in_row() {
        job::Part part;
        auto mark = words_in(Column::mark);
        if (!mark.ok())
            return mark.refusal();
        part.mark = std::move(mark).value();
        if (part.mark.empty())
            return Refusal{"mark", "The mark is missing.", "as painted on the piece"};
        const auto count = count_in_row();
        if (!count.ok())
            return count.refusal();
        part.count = count.value();
        auto section = section_in_row();
        if (!section.ok())
            return section.refusal();
        part.section = std::move(section).value();
        const auto length = length_in_row();
        if (!length.ok())
            return length.refusal();
        part.length = length.value();
        auto grade = grade_in_row();
        if (!grade.ok())
            return grade.refusal();
        part.grade = std::move(grade).value();
        part.note = cell(Column::note);
        part.operations.emplace_back(job::Cut{});
        return job::checked(std::move(part));
    }

    const Table& table_;
    const Mapping& mapping_;
    const ListOptions& options_;
    const job::Catalog& catalog_;
    bool points_may_group_;
    std::array<int, k_columns_known> column_of_{};
    std::unordered_map<std::string, Result<Section>> sections_;
    std::unordered_map<std::string, Result<std::string>> grades_;
    ReadParts answer_;
    int row_ = 0;
    int part_number_ = 0;
};

} // namespace

Result<ReadParts> read_parts(const Table& table,
                             const Mapping& mapping,
                             const ListOptions& options,
                             const job::Catalog& catalog) {
    if (auto fault = mapping_fault(mapping))
        return *fault;
    if (!options.grade.empty() && grade_named(options.grade, options, catalog) == nullptr)
        return Refusal{"grade", "This grade is not known here.", options.grade};
    RowReader reader(table, mapping, options, catalog);
    for (int row = 0; row < table.rows(); ++row)
        reader.read(row);
    return std::move(reader).take();
}

} // namespace treadle::archive
