#include "parts_list_work.h"

#include "quantity/print.h"
#include "section/section.h"

#include <utility>

namespace treadle::web {

namespace {

using views::PartsListRow;
using Do = views::PartsListAsk::Do;

std::string with_detail(const base::Refusal& refusal) {
    return refusal.reason + (refusal.detail.empty() ? "" : " (" + refusal.detail + ")");
}

/// "L3X3X1/4", or the shape with the sizes that tell it from others.
std::string section_words(const Section& section, PrintStyle style) {
    if (!section.designation.empty())
        return section.designation;
    std::string words = section::shape_word(section.shape);
    const char* between = " ";
    for (const Length size : {section.width, section.height, section.thickness})
        if (size != Length{}) {
            words += between + quantity::print(size, style);
            between = " x ";
        }
    return words;
}

PartsListRow row_of(const archive::TakenRow& taken, UnitSystem units) {
    const PrintStyle style{units, 64};
    const job::Part& part = taken.part;
    return {PartsListRow::Became::part,
            "Row " + std::to_string(taken.row) + " taken: " + part.mark + " \u00D7 " +
                std::to_string(part.count),
            section_words(part.section, style) + ", " + quantity::print(part.length, style) +
                " long, " + part.grade};
}

PartsListRow row_of(const archive::RefusedRow& refused) {
    return {PartsListRow::Became::refused,
            "Row " + std::to_string(refused.row) + " refused" +
                (refused.heading.empty() ? "" : ": " + refused.heading),
            with_detail(refused.refusal)};
}

PartsListRow row_of(const archive::PassedRow& passed) {
    return {PartsListRow::Became::passed,
            "Row " + std::to_string(passed.row) + " passed over",
            passed.reason};
}

} // namespace

std::optional<base::Refusal>
PartsListWork::open(const std::string& name, std::string_view bytes, const edit::Session& session) {
    auto table = archive::read_table(bytes);
    if (!table.ok())
        return table.refusal();
    table_ = std::move(table).value();
    mapping_ = archive::propose_mapping(table_, session.catalog());
    options_ = {};
    options_.own_grades = session.job().own_grades;
    board_ = {};
    board_.open = true;
    board_.name = name;
    board_.letters = std::string("The letters are ") + archive::letters_words(table_.letters) + ".";
    for (int i = 0; i < archive::k_columns_known; ++i)
        board_.meanings.emplace_back(archive::column_word(static_cast<archive::Column>(i)));
    board_.units = {"not said", "inches", "millimetres"};
    board_.decimals = {"not said", "a point", "a comma"};
    board_.grades = {"not said"};
    for (const Grade& grade : session.job().own_grades)
        board_.grades.push_back(grade.id);
    for (const Grade& grade : session.catalog().grades.rows)
        board_.grades.push_back(grade.id);
    read(session);
    return std::nullopt;
}

void PartsListWork::read(const edit::Session& session) {
    shown_in_ = session.job().style.system;
    auto made = archive::read_parts(table_, mapping_, options_, session.catalog());
    board_.fault = made.ok() ? "" : with_detail(made.refusal());
    read_ = made.ok() ? std::move(made).value() : archive::ReadParts{};
    show_columns();
    show_rows();
}

void PartsListWork::show_columns() {
    board_.columns.clear();
    for (const archive::MappedColumn& column : mapping_.columns)
        board_.columns.push_back(
            {column.heading, column.why, static_cast<int>(column.holds), column.open});
}

/// In the sequence of the table, as the user has it beside the page.
void PartsListWork::show_rows() {
    board_.rows.clear();
    std::size_t taken = 0;
    std::size_t refused = 0;
    std::size_t passed = 0;
    for (int row = 1; row <= table_.rows(); ++row) {
        if (taken < read_.taken.size() && read_.taken[taken].row == row)
            board_.rows.push_back(row_of(read_.taken[taken++], shown_in_));
        else if (refused < read_.refused.size() && read_.refused[refused].row == row)
            board_.rows.push_back(row_of(read_.refused[refused++]));
        else if (passed < read_.passed.size() && read_.passed[passed].row == row)
            board_.rows.push_back(row_of(read_.passed[passed++]));
    }
    board_.parts = taken;
    board_.refused = refused;
    board_.passed = passed;
}

void PartsListWork::close() {
    table_ = {};
    mapping_ = {};
    read_ = {};
    board_ = {};
}

std::optional<edit::AddParts> PartsListWork::take(const views::PartsListAsk& ask,
                                                  const edit::Session& session) {
    if (!board_.open)
        return std::nullopt;
    switch (ask.what) {
    case Do::column:
        mapping_ = archive::with_column(
            std::move(mapping_), ask.column, static_cast<archive::Column>(ask.choice));
        break;
    case Do::unit:
        board_.unit = ask.choice;
        options_.units = ask.choice == 0   ? std::optional<UnitSystem>()
                         : ask.choice == 1 ? UnitSystem::inch
                                           : UnitSystem::metric;
        break;
    case Do::grade:
        board_.grade = ask.choice;
        options_.grade = ask.choice == 0 ? "" : board_.grades[static_cast<std::size_t>(ask.choice)];
        break;
    case Do::decimal:
        board_.decimal = ask.choice;
        options_.mark = static_cast<archive::DecimalMark>(ask.choice);
        break;
    case Do::save_refused:
        ports_.download("refused-rows.csv",
                        "text/csv",
                        archive::write_refused_rows_csv(table_, mapping_, read_));
        return std::nullopt;
    case Do::cancel:
        close();
        return std::nullopt;
    case Do::add:
        if (read_.taken.empty())
            return std::nullopt;
        edit::AddParts edit;
        for (archive::TakenRow& taken : read_.taken)
            edit.parts.push_back(std::move(taken.part));
        close();
        return edit;
    }
    read(session);
    return std::nullopt;
}

} // namespace treadle::web
