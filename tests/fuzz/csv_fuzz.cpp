// Whatever bytes come as a parts list: parts_list_table.h, parts_list.h.
//
// The first two bytes say what the user would: units, decimal mark, a grade, and what a column
// holds where the headings leave it open. Nothing may crash, hang or be undefined. Each row is
// taken, refused with a reason or passed over; what was taken makes a job, and is written as a list
// that gives the same parts back.

#include "archive/archive.h"
#include "archive/parts_list.h"

#include <cstdint>
#include <memory>
#include <string>
#include <string_view>

#include "fuzz/must.h"

using namespace treadle;
using archive::Column;
using archive::DecimalMark;
using fuzz::check_refusal;
using fuzz::must;

namespace {

const job::Catalog& catalog() {
    static const job::Catalog read = archive::read_catalog().value();
    return read;
}

archive::ListOptions options_from(unsigned char said) {
    archive::ListOptions options;
    if (said % 4U != 0)
        options.units = said % 4U == 1 ? UnitSystem::inch : UnitSystem::metric;
    options.mark = static_cast<DecimalMark>(said / 4U % 3U);
    if (said / 16U % 2U == 0)
        options.grade = said / 32U % 2U == 0 ? "A36" : "S235JR";
    return options;
}

job::Job job_of(const archive::ReadParts& read, UnitSystem units) {
    job::Job job;
    job.style.system = units;
    for (const archive::TakenRow& taken : read.taken)
        job.parts.push_back(std::make_shared<const job::Part>(taken.part));
    return job;
}

void check_rows(const archive::Table& table, const archive::ReadParts& read) {
    must(static_cast<int>(read.taken.size() + read.refused.size() + read.passed.size()) <=
         table.rows());
    for (const archive::RefusedRow& row : read.refused) {
        must(row.row >= 1 && row.row <= table.rows() && row.column < table.columns);
        check_refusal(row.refusal);
    }
    for (const archive::PassedRow& row : read.passed)
        must(!row.reason.empty());
}

/// What was taken goes out as a list and comes back.
void check_again(const archive::ReadParts& read, UnitSystem units) {
    const job::Job job = job_of(read, units);
    const std::string file = archive::write_file(job, {});
    must(archive::read_file(file).ok());
    const auto table = archive::read_table(archive::write_parts_csv(job, catalog()));
    must(table.ok());
    archive::ListOptions options;
    options.units = units;
    const auto mapping = archive::propose_mapping(*table, catalog());
    const auto again = archive::read_parts(*table, mapping, options, catalog());
    must(again.ok());
    must(again->taken.size() == read.taken.size());
    must(archive::write_file(job_of(*again, units), {}) == file);
}

} // namespace

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
    if (size < 2)
        return 0;
    const auto table = archive::read_table(std::string(data + 2, data + size));
    if (!table.ok()) {
        check_refusal(table.refusal());
        return 0;
    }
    auto mapping = archive::propose_mapping(*table, catalog());
    must(static_cast<int>(mapping.columns.size()) == table->columns);
    if (data[1] != 0 && table->columns > 0)
        mapping = archive::with_column(
            mapping, data[1] % table->columns, static_cast<Column>(data[1] / 16U % 9U));
    const archive::ListOptions options = options_from(data[0]);
    const auto read = archive::read_parts(*table, mapping, options, catalog());
    if (!read.ok()) {
        check_refusal(read.refusal());
        return 0;
    }
    check_rows(*table, *read);
    const auto refused =
        archive::read_table(archive::write_refused_rows_csv(*table, mapping, *read));
    must(refused.ok() || read->refused.empty());
    if (!read->taken.empty())
        check_again(*read, options.units.value_or(UnitSystem::inch));
    return 0;
}
