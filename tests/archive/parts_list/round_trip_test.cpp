// parts_list_write.cpp: a list that reads back to the same parts.

#include "archive/demo_files.h"
#include "archive/parts_list/lists.h"

#include <memory>
#include <random>

using namespace treadle;
using parts_list_test::catalog;
using parts_list_test::parts;

namespace {

void check_same(const job::Part& read, const job::Part& written) {
    CAPTURE(written.mark);
    CHECK(read.mark == written.mark);
    CHECK(read.count == written.count);
    CHECK(read.note == written.note);
    CHECK(read.grade == written.grade);
    CHECK(read.length == written.length);
    CHECK(read.section.shape == written.section.shape);
    CHECK(read.section.width == written.section.width);
    CHECK(read.section.height == written.section.height);
    CHECK(read.section.thickness == written.section.thickness);
    CHECK(read.section.flange_thickness == written.section.flange_thickness);
    CHECK(read.section.root_radius == written.section.root_radius);
    CHECK(read.section.designation == written.section.designation);
}

/// Straight parts come back in their sequence, bent ones are refused with their row.
void check_round_trip(const job::Job& job, const job::Catalog& known) {
    archive::ListOptions options;
    options.own_grades = job.own_grades;
    const archive::ReadParts read = parts(archive::write_parts_csv(job, known), known, options);
    std::size_t taken = 0;
    std::size_t refused = 0;
    for (std::size_t i = 0; i < job.parts.size(); ++i) {
        const int row = static_cast<int>(i) + 2;
        if (!job.parts[i]->legs.empty()) {
            REQUIRE(refused < read.refused.size());
            CHECK(read.refused[refused].row == row);
            CHECK(read.refused[refused++].heading == "Length");
            continue;
        }
        REQUIRE(taken < read.taken.size());
        CHECK(read.taken[taken].row == row);
        check_same(read.taken[taken++].part, *job.parts[i]);
    }
    CHECK(read.taken.size() == taken);
    CHECK(read.refused.size() == refused);
}

class MadeUp {
public:
    explicit MadeUp(unsigned seed) : engine_(seed) {}

    job::Job job(const job::Catalog& known) {
        job::Job made;
        made.style.system = below(2) == 0 ? UnitSystem::inch : UnitSystem::metric;
        for (int i = 0, most = 1 + below(12); i < most; ++i)
            made.parts.push_back(std::make_shared<const job::Part>(part(i, known)));
        return made;
    }

private:
    int below(int n) { return static_cast<int>(engine_() % static_cast<unsigned>(n)); }

    /// Fractions, decimals, whole millimetres, and lengths that no short text says.
    Length length(int most_64ths) {
        switch (below(4)) {
        case 0:
            return inches((1 + below(most_64ths)) / 64.0);
        case 1:
            return millimetres(1 + below(most_64ths / 2));
        case 2:
            return inches((1 + below(most_64ths * 10)) / 1000.0);
        default:
            return millimetres((1 + below(most_64ths)) / 3.0);
        }
    }

    Section section(const job::Catalog& known) {
        if (below(3) == 0) {
            const auto& rows = known.sections.rows;
            return rows[static_cast<std::size_t>(below(static_cast<int>(rows.size())))].section;
        }
        for (;;) {
            Section made;
            made.shape = static_cast<section::Shape>(below(8));
            made.width = length(640);
            made.height = length(640);
            made.thickness = length(64);
            made.flange_thickness = length(64);
            made.root_radius = below(2) == 0 ? Length{} : length(40);
            if (below(4) == 0)
                made.designation = "Own (shape), 2";
            if (auto sound = section::checked(made); sound.ok())
                return std::move(sound).value();
        }
    }

    std::string words() {
        static constexpr const char* k_words[] = {"HB",
                                                  "=1+1",
                                                  "-4",
                                                  "@home",
                                                  "'s",
                                                  "a,b",
                                                  "\"x\"",
                                                  "L\u00E4nge",
                                                  "+",
                                                  "tab\tin",
                                                  "<b>",
                                                  "two\nlines"};
        std::string made = k_words[below(12)];
        for (int i = below(3); i > 0; --i)
            made += std::string(" ") + k_words[below(12)];
        return made;
    }

    job::Part part(int i, const job::Catalog& known) {
        job::Part made;
        made.id = "p" + std::to_string(i + 1);
        made.mark = words() + std::to_string(i);
        made.note = below(2) == 0 ? "" : words();
        made.count = 1 + below(100'000);
        made.length = length(6'400);
        made.section = section(known);
        made.grade =
            known.grades
                .rows[static_cast<std::size_t>(below(static_cast<int>(known.grades.rows.size())))]
                .id;
        auto sound = job::checked(made);
        REQUIRE_MESSAGE(sound.ok(), (sound.ok() ? "" : sound.refusal().reason));
        return std::move(sound).value();
    }

    std::mt19937 engine_;
};

} // namespace

TEST_CASE("the parts lists of the demo jobs read back to the same parts") {
    const job::Catalog known = catalog();
    for (const char* name : {"demo-inch.json", "demo-metric.json"}) {
        const auto file = archive::read_file(archive_test::demo(name));
        REQUIRE(file.ok());
        check_round_trip(file->job, known);
    }
}

TEST_CASE("the parts lists of 500 made-up jobs read back to the same parts") {
    const job::Catalog known = catalog();
    for (unsigned seed = 1; seed <= 500; ++seed) {
        CAPTURE(seed);
        check_round_trip(MadeUp(seed).job(known), known);
    }
}

TEST_CASE("no cell of a written list runs in a spreadsheet") {
    const job::Catalog known = catalog();
    for (unsigned seed = 1; seed <= 50; ++seed) {
        const archive::Table cells =
            parts_list_test::table(archive::write_parts_csv(MadeUp(seed).job(known), known));
        for (int row = 0; row < cells.rows(); ++row)
            for (int column = 0; column < cells.columns; ++column)
                if (const std::string_view cell = cells.cell(row, column); !cell.empty())
                    CHECK(std::string_view("=+-@\t\r").find(cell.front()) ==
                          std::string_view::npos);
    }
}

TEST_CASE("refused rows are written as they stood, with their reason, and read again when mended") {
    const job::Catalog known = catalog();
    const std::string bytes = "Mark,Qty,Section,Length,Grade\nA,1,RD 20 mm,100 mm,S235JR\n"
                              "B,1,RD 20 mm,2-Jan,S235JR\nC,0,RD 20 mm,100 mm,S235JR\n";
    const archive::Table cells = parts_list_test::table(bytes);
    const archive::Mapping mapping = archive::propose_mapping(cells, known);
    const auto read = archive::read_parts(cells, mapping, {}, known);
    REQUIRE(read.ok());
    std::string refused = archive::write_refused_rows_csv(cells, mapping, *read);
    CHECK(refused.rfind("Mark,Qty,Section,Length,Grade,Reason\r\n", 0) == 0);
    CHECK(refused.find("B,1,RD 20 mm,2-Jan,S235JR,") != std::string::npos);
    CHECK(refused.find("A,1,") == std::string::npos);
    refused.replace(refused.find("2-Jan"), 5, "1/2 in");
    const archive::ReadParts again = parts(refused, known);
    CHECK(again.taken.size() == 1);
    CHECK(again.refused.size() == 1);
}

TEST_CASE("a note of two lines with semicolons does not turn the list's delimiter") {
    const std::string list = "Mark,Count,Section,Length,Grade,Note\r\n"
                             "FS1,1,UPN 100,800 mm,S235JR,\"see note;\nFS1, 2;x\"\r\n";
    const archive::Table cells = parts_list_test::table(list);
    CHECK(cells.delimiter == ',');
    REQUIRE(cells.rows() == 2);
    CHECK(cells.cell(1, 5) == "see note;\nFS1, 2;x");
    // Where the comma is taken by decimals, the semicolon still wins.
    CHECK(parts_list_test::table("Mark;Count;Length\nA;1;2,5\nB;2;3,5\n").delimiter == ';');
}
