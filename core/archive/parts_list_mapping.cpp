// propose_mapping of parts_list.h: headings first, then what the cells look like.

#include "archive/parts_list.h"
#include "archive/parts_list_headings.h"
#include "archive/parts_list_section.h"
#include "base/text.h"
#include "quantity/parse.h"

#include <algorithm>
#include <array>

namespace treadle::archive {

namespace {

constexpr std::array<const char*, k_columns_known> k_column_words{
    "nothing", "mark", "count", "section", "length", "grade", "note", "width", "thickness"};

/// The first row with two words of the trade, or with one in a table of one column.
int heading_row_of(const Table& table) {
    constexpr int k_rows_looked_at = 20;
    for (int row = 0; row < std::min(table.rows(), k_rows_looked_at); ++row) {
        int known = 0;
        for (int column = 0; column < table.columns; ++column)
            known += meanings_of(heading_in(table.cell(row, column))).empty() ? 0 : 1;
        if (known >= std::min(2, table.columns))
            return row;
    }
    return -1;
}

/// What the cells of a column look like, as shares of those that are filled.
struct Looks {
    int filled = 0;
    int whole = 0;  ///< a count, or a length in whole millimetres
    int figure = 0; ///< a bare number with parts
    int length = 0; ///< with its unit, or a fraction
    int section = 0;
    int grade = 0;
    int different = 0;

    [[nodiscard]] bool mostly(int some) const { return filled > 0 && some * 10 >= filled * 8; }
};

Looks looks_of(const Table& table, int column, int from, const job::Catalog& catalog) {
    constexpr int k_cells_looked_at = 40;
    Looks looks;
    std::vector<std::string> seen;
    for (int row = from; row < table.rows() && looks.filled < k_cells_looked_at; ++row) {
        const std::string text = cell_text(table.cell(row, column));
        if (text.empty())
            continue;
        ++looks.filled;
        if (std::find(seen.begin(), seen.end(), text) == seen.end())
            seen.push_back(text);
        if (catalog.grades.find(text) != nullptr)
            ++looks.grade;
        if (looks_like_section(text, catalog.sections))
            ++looks.section;
        if (quantity::parse_whole(text, "").ok())
            ++looks.whole;
        else if (base::read_number(text))
            ++looks.figure;
        else if (quantity::parse_length(text, UnitSystem::inch, "").ok() ||
                 base::read_number(plain_figure(text, DecimalMark::comma)) ||
                 base::read_number(plain_figure(text, DecimalMark::point)))
            ++looks.length;
    }
    looks.different = static_cast<int>(seen.size());
    return looks;
}

bool looks_like(const Looks& looks, Column holds) {
    switch (holds) {
    case Column::count:
        return looks.mostly(looks.whole);
    case Column::length:
        return looks.mostly(looks.whole + looks.figure + looks.length);
    case Column::section:
        return looks.mostly(looks.section);
    case Column::grade:
        return looks.mostly(looks.grade);
    case Column::mark:
        return looks.filled > 0 && looks.different * 10 >= looks.filled * 9 &&
               !looks.mostly(looks.section) && !looks.mostly(looks.length);
    case Column::note:
        return !looks.mostly(looks.whole + looks.figure + looks.length) &&
               !looks.mostly(looks.section) && !looks.mostly(looks.grade);
    case Column::nothing:
    case Column::width:
    case Column::thickness:
        break;
    }
    return false;
}

/// One way of taking a column.
struct Choice {
    Column holds;
    bool sure;
    bool looks; ///< the cells look like it too
};

std::vector<Choice> choices_by_heading(const Heading& heading, const Looks& looks) {
    std::vector<Choice> choices;
    for (const HeadingMeaning& meaning : meanings_of(heading))
        choices.push_back({meaning.holds, meaning.sure, looks_like(looks, meaning.holds)});
    if (choices.size() < 2)
        return choices;
    // Two meanings: the cells decide where they look like one and not like the other.
    std::vector<Choice> alike;
    std::copy_if(choices.begin(), choices.end(), std::back_inserter(alike), [](const Choice& c) {
        return c.looks;
    });
    return alike.empty() ? choices : alike;
}

std::vector<Choice> choices_by_looks(const Looks& looks) {
    std::vector<Choice> choices;
    for (const Column holds : {Column::section, Column::grade, Column::length, Column::count})
        if (looks_like(looks, holds) && !(holds == Column::length && looks.mostly(looks.whole)))
            choices.push_back({holds, false, true});
    // Whole numbers alone are pieces, or millimetres, or positions.
    if (looks.mostly(looks.whole))
        choices = {{Column::count, false, true}, {Column::length, false, true}};
    if (choices.empty() && looks_like(looks, Column::mark))
        choices.push_back({Column::mark, false, true});
    return choices;
}

std::string words_of(const std::vector<Choice>& choices) {
    std::string words;
    for (std::size_t i = 0; i < choices.size(); ++i)
        words += (i == 0 ? "" : " or ") + std::string(column_word(choices[i].holds));
    return words;
}

/// All columns with all their choices, thinned out until each is taken or left open.
class Proposal {
public:
    Proposal(const Table& table, const job::Catalog& catalog) {
        mapping_.heading_row = heading_row_of(table);
        for (int column = 0; column < table.columns; ++column) {
            const Looks looks = looks_of(table, column, mapping_.heading_row + 1, catalog);
            MappedColumn mapped;
            if (with_headings()) {
                const Heading heading = heading_in(table.cell(mapping_.heading_row, column));
                mapped.heading = cell_text(table.cell(mapping_.heading_row, column));
                mapped.unit = heading.unit;
                choices_.push_back(choices_by_heading(heading, looks));
            } else {
                choices_.push_back(choices_by_looks(looks));
            }
            if (mapped.heading.empty())
                mapped.heading = "column " + std::to_string(column + 1);
            mapping_.columns.push_back(std::move(mapped));
        }
    }

    [[nodiscard]] Mapping make() && {
        // A sure heading first; then, as long as something gets settled, what is the only choice of
        // its column and has no rival.
        for (const bool sure : {true, false})
            while (settle(sure)) {
            }
        for (std::size_t i = 0; i < choices_.size(); ++i)
            leave(i);
        return std::move(mapping_);
    }

private:
    [[nodiscard]] bool with_headings() const { return mapping_.heading_row >= 0; }
    [[nodiscard]] bool settled(std::size_t i) const {
        return mapping_.columns[i].holds != Column::nothing;
    }
    /// Other columns that can be nothing else. One with a second choice gives way to this one.
    [[nodiscard]] bool has_rival(std::size_t self, Column holds, bool sure) const {
        for (std::size_t i = 0; i < choices_.size(); ++i)
            if (i != self && !settled(i) && choices_[i].size() == 1 &&
                choices_[i][0].holds == holds && (choices_[i][0].sure || !sure))
                return true;
        return false;
    }

    bool settle(bool sure) {
        bool any = false;
        for (std::size_t i = 0; i < choices_.size(); ++i) {
            std::vector<Choice>& choices = choices_[i];
            if (settled(i) || choices.size() != 1 || choices[0].sure != sure ||
                has_rival(i, choices[0].holds, sure))
                continue;
            take(i, choices[0]);
            any = true;
        }
        return any;
    }

    void take(std::size_t i, const Choice& choice) {
        MappedColumn& column = mapping_.columns[i];
        column.holds = choice.holds;
        column.why =
            with_headings()
                ? "The heading \"" + column.heading + "\" says so" +
                      (choice.sure || !choice.looks ? "." : ", and its cells look like it.")
                : std::string("Its cells look like it; the table has no headings.");
        for (std::vector<Choice>& others : choices_)
            if (&others != &choices_[i])
                std::erase_if(others, [&](const Choice& c) { return c.holds == choice.holds; });
    }

    void leave(std::size_t i) {
        MappedColumn& column = mapping_.columns[i];
        if (settled(i))
            return;
        column.open = !choices_[i].empty();
        if (column.open && choices_[i].size() == 1)
            column.why = "Another column can be the " + words_of(choices_[i]) + " as well.";
        else if (column.open)
            column.why = "This can be " + words_of(choices_[i]) + ".";
        else
            column.why = "Nothing that a part needs was seen in it.";
    }

    Mapping mapping_;
    std::vector<std::vector<Choice>> choices_;
};

} // namespace

const char* column_word(Column column) { return k_column_words[static_cast<std::size_t>(column)]; }

std::optional<Column> column_named(std::string_view word) {
    for (int i = 0; i < k_columns_known; ++i)
        if (word == k_column_words[static_cast<std::size_t>(i)])
            return static_cast<Column>(i);
    return std::nullopt;
}

int Mapping::column_of(Column holds) const {
    for (std::size_t i = 0; i < columns.size(); ++i)
        if (columns[i].holds == holds)
            return static_cast<int>(i);
    return -1;
}

Mapping propose_mapping(const Table& table, const job::Catalog& catalog) {
    return Proposal(table, catalog).make();
}

Mapping with_column(Mapping mapping, int column, Column holds) {
    for (std::size_t i = 0; i < mapping.columns.size(); ++i) {
        MappedColumn& one = mapping.columns[i];
        const bool self = static_cast<int>(i) == column;
        if (self || (holds != Column::nothing && one.holds == holds)) {
            one.holds = self ? holds : Column::nothing;
            one.why = self ? "You said so." : "You gave its meaning to another column.";
            one.open = false;
        }
    }
    return mapping;
}

std::optional<base::Refusal> mapping_fault(const Mapping& mapping) {
    for (const Column needed : {Column::mark, Column::count, Column::length})
        if (mapping.column_of(needed) < 0)
            return base::Refusal{column_word(needed),
                                 std::string("No column is said to be the ") + column_word(needed) +
                                     ".",
                                 "say which column it is"};
    const bool sizes =
        mapping.column_of(Column::width) >= 0 && mapping.column_of(Column::thickness) >= 0;
    if (mapping.column_of(Column::section) < 0 && !sizes)
        return base::Refusal{"section",
                             "No column is said to be the section.",
                             "say which column it is, or which are width and thickness"};
    return std::nullopt;
}

} // namespace treadle::archive
