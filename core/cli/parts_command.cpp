#include "cli/parts_command.h"

#include "archive/parts_list.h"
#include "base/json_writer.h"
#include "base/text.h"
#include "cli/files.h"
#include "quantity/print.h"

#include <memory>
#include <optional>

namespace treadle::cli {

namespace {

using archive::Column;
using base::Refusal;
using base::Result;
using Words = std::vector<std::string>;

constexpr const char* k_example =
    "treadle parts LIST.csv [--units inch|metric] [--grade ID] [--decimal point|comma] "
    "[--map mark=1,count=2,...] [--out JOB.json], or treadle parts JOB.json --csv";

struct Asked {
    std::string file;
    std::string out;
    std::string map;
    bool csv = false;
    archive::ListOptions options;
};

Refusal not_known(const std::string& word) {
    return {"command", "This word is not known here.", word + "; " + k_example};
}

std::optional<Refusal>
take_option(const std::string& name, const std::string& value, Asked& asked) {
    if (name == "--grade")
        asked.options.grade = value;
    else if (name == "--out")
        asked.out = value;
    else if (name == "--map")
        asked.map = value;
    else if (name == "--units" && (value == "inch" || value == "metric"))
        asked.options.units = value == "inch" ? UnitSystem::inch : UnitSystem::metric;
    else if (name == "--decimal" && (value == "point" || value == "comma"))
        asked.options.mark =
            value == "point" ? archive::DecimalMark::point : archive::DecimalMark::comma;
    else
        return not_known(name + " " + value);
    return std::nullopt;
}

Result<Asked> asked_in(const Words& words) {
    Asked asked;
    for (std::size_t i = 1; i < words.size(); ++i) {
        if (words[i] == "--csv") {
            asked.csv = true;
        } else if (words[i].rfind("--", 0) == 0) {
            if (i + 1 >= words.size())
                return not_known(words[i]);
            const std::string& name = words[i++];
            if (auto fault = take_option(name, words[i], asked))
                return *fault;
        } else if (asked.file.empty()) {
            asked.file = words[i];
        } else {
            return not_known(words[i]);
        }
    }
    if (asked.file.empty())
        return Refusal{"file", "One parts list or one job file is needed.", k_example};
    if (!asked.out.empty() && !asked.options.units)
        return Refusal{"units", "A new job needs to know its units.", "--units inch or metric"};
    return asked;
}

/// "mark=1,count=2": columns as a spreadsheet counts them.
Result<archive::Mapping> mapped(archive::Mapping mapping, const std::string& said) {
    for (std::size_t from = 0; from < said.size();) {
        const std::size_t comma = std::min(said.find(',', from), said.size());
        const std::string one = said.substr(from, comma - from);
        const std::size_t equals = std::min(one.find('='), one.size());
        const auto holds = archive::column_named(one.substr(0, equals));
        const auto number =
            base::read_number(equals < one.size() ? one.substr(equals + 1) : std::string());
        const auto most = static_cast<double>(mapping.columns.size());
        if (!holds || !number || *number < 1.0 || *number > most ||
            *number != static_cast<int>(*number))
            return Refusal{"map",
                           "This does not say which column holds what.",
                           one + "; for example mark=1,count=2 with columns 1 to " +
                               std::to_string(mapping.columns.size())};
        mapping = with_column(std::move(mapping), static_cast<int>(*number) - 1, *holds);
        from = comma + 1;
    }
    return mapping;
}

/// What is still open, so that it can be said with --map.
std::string open_columns(const archive::Mapping& mapping) {
    std::string words;
    for (std::size_t i = 0; i < mapping.columns.size(); ++i) {
        const archive::MappedColumn& column = mapping.columns[i];
        if (column.holds == Column::nothing)
            words +=
                " Column " + std::to_string(i + 1) + " (" + column.heading + "): " + column.why;
    }
    return words.substr(0, 2000);
}

void write_mapping(base::JsonWriter& json, const archive::Mapping& mapping) {
    json.key("mapping").begin_array();
    for (std::size_t i = 0; i < mapping.columns.size(); ++i) {
        const archive::MappedColumn& column = mapping.columns[i];
        json.begin_object().field("column", static_cast<int>(i) + 1);
        json.field("heading", column.heading).field("holds", archive::column_word(column.holds));
        if (!column.unit.empty())
            json.field("unit", column.unit);
        json.field("open", column.open).field("why", column.why).end_object();
    }
    json.end_array();
}

void write_rows(base::JsonWriter& json, const archive::ReadParts& read, UnitSystem units) {
    json.key("taken").begin_array();
    for (const archive::TakenRow& taken : read.taken) {
        const job::Part& part = taken.part;
        json.begin_object().field("row", taken.row).field("mark", part.mark);
        json.field("count", part.count).field("shape", section::shape_word(part.section.shape));
        json.field("designation", part.section.designation);
        json.field("width", quantity::write_exact(part.section.width, units));
        json.field("thickness", quantity::write_exact(part.section.thickness, units));
        json.field("length", quantity::write_exact(part.length, units));
        json.field("grade", part.grade).field("note", part.note).end_object();
    }
    json.end_array().key("refused").begin_array();
    for (const archive::RefusedRow& refused : read.refused) {
        json.begin_object().field("row", refused.row).field("column", refused.column + 1);
        json.field("heading", refused.heading).field("field", refused.refusal.field);
        json.field("reason", refused.refusal.reason);
        json.field("detail", refused.refusal.detail).end_object();
    }
    json.end_array().key("passed").begin_array();
    for (const archive::PassedRow& passed : read.passed)
        json.begin_object().field("row", passed.row).field("reason", passed.reason).end_object();
    json.end_array();
}

std::optional<Refusal> write_job(const archive::ReadParts& read, const Asked& asked) {
    job::Job job;
    job.style.system = *asked.options.units;
    for (const archive::TakenRow& taken : read.taken)
        job.parts.push_back(std::make_shared<const job::Part>(taken.part));
    return write_bytes(asked.out, archive::write_file(job, {}), asked.file);
}

Result<std::string> list_of_job(const std::string& bytes, const job::Catalog& catalog) {
    const auto file = archive::read_file(bytes);
    if (!file.ok())
        return file.refusal();
    return archive::write_parts_csv(file->job, catalog);
}

} // namespace

Result<std::string> parts_answer(const Words& words) {
    const auto asked = asked_in(words);
    if (!asked.ok())
        return asked.refusal();
    const auto bytes = read_bytes(asked->file);
    if (!bytes.ok())
        return bytes.refusal();
    const auto catalog = archive::read_catalog();
    if (!catalog.ok())
        return catalog.refusal();
    if (asked->csv)
        return list_of_job(*bytes, *catalog);
    const auto table = archive::read_table(*bytes);
    if (!table.ok())
        return table.refusal();
    const auto mapping = mapped(archive::propose_mapping(*table, *catalog), asked->map);
    if (!mapping.ok())
        return mapping.refusal();
    const auto read = archive::read_parts(*table, *mapping, asked->options, *catalog);
    if (!read.ok()) {
        Refusal refusal = read.refusal();
        refusal.detail += "." + open_columns(*mapping);
        return refusal;
    }
    if (!asked->out.empty())
        if (auto fault = write_job(*read, *asked))
            return *fault;
    base::JsonWriter json(1);
    json.begin_object().field("rows", table->rows());
    json.field("delimiter", std::string(1, table->delimiter));
    json.field("letters", archive::letters_words(table->letters));
    write_mapping(json, *mapping);
    write_rows(json, *read, asked->options.units.value_or(UnitSystem::metric));
    json.end_object();
    return json.take() + "\n";
}

} // namespace treadle::cli
