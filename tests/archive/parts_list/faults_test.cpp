// parts_list_read.cpp: each row a part or a reason.

#include "archive/parts_list/lists.h"

#include <map>

using namespace treadle;
using archive::ListOptions;
using archive::ReadParts;
using parts_list_test::catalog;
using parts_list_test::parts;

namespace {

constexpr const char* k_heading = "Mark,Qty,Section,Length,Grade,Note\n";

ListOptions inch() {
    ListOptions options;
    options.units = UnitSystem::inch;
    return options;
}

struct Faulty {
    const char* row;
    const char* heading; ///< of the column that is at fault
};
constexpr Faulty k_faulty[] = {
    {",4,FB 3 x 1/2,12,A36,", "Mark"},
    {"2-Jan,4,FB 3 x 1/2,12,A36,", "Mark"},
    {"#REF!,4,FB 3 x 1/2,12,A36,", "Mark"},
    {"1.00E+05,4,FB 3 x 1/2,12,A36,", "Mark"},
    {"1/2/2026,4,FB 3 x 1/2,12,A36,", "Mark"},
    {"#####,4,FB 3 x 1/2,12,A36,", "Mark"},
    {"X,,FB 3 x 1/2,12,A36,", "Qty"},
    {"X,0,FB 3 x 1/2,12,A36,", "Qty"},
    {"X,-4,FB 3 x 1/2,12,A36,", "Qty"},
    {"X,1.5,FB 3 x 1/2,12,A36,", "Qty"},
    {"X,100001,FB 3 x 1/2,12,A36,", "Qty"},
    {"X,4 m,FB 3 x 1/2,12,A36,", "Qty"},
    {"X,1E+02,FB 3 x 1/2,12,A36,", "Qty"},
    {"X,50%,FB 3 x 1/2,12,A36,", "Qty"},
    {"X,4-Jan,FB 3 x 1/2,12,A36,", "Qty"},
    {"X,=A1,FB 3 x 1/2,12,A36,", "Qty"},
    {"X,\"1,000\",FB 3 x 1/2,12,A36,", "Qty"},
    {"X,some,FB 3 x 1/2,12,A36,", "Qty"},
    {"X,4,,12,A36,", "Section"},
    {"X,4,W8x10,12,A36,", "Section"},
    {"X,4,3 x 1/2,12,A36,", "Section"},
    {"X,4,FB 3,12,A36,", "Section"},
    {"X,4,FB 3 x 1/2 x 2,12,A36,", "Section"},
    {"X,4,FB 3 x 1/0,12,A36,", "Section"},
    {"X,4,FB 0 x 0,12,A36,", "Section"},
    {"X,4,L 3 x 3 x 3,12,A36,", "Section"},
    {"X,4,pipe 1 x 0.133,12,A36,", "Section"},
    {"X,4,#N/A,12,A36,", "Section"},
    {"X,4,2-Mar,12,A36,", "Section"},
    {"X,4,RD 200 m,12,A36,", "Section"},
    {"X,4,FB 3 x 1/2,,A36,", "Length"},
    {"X,4,FB 3 x 1/2,2-Jan,A36,", "Length"},
    {"X,4,FB 3 x 1/2,Jan-02,A36,", "Length"},
    {"X,4,FB 3 x 1/2,1/2/2026,A36,", "Length"},
    {"X,4,FB 3 x 1/2,2026-01-02,A36,", "Length"},
    {"X,4,FB 3 x 1/2,02.01.2026,A36,", "Length"},
    {"X,4,FB 3 x 1/2,2. Jan,A36,", "Length"},
    {"X,4,FB 3 x 1/2,46024,A36,", "Length"},
    {"X,4,FB 3 x 1/2,1.5E+03,A36,", "Length"},
    {"X,4,FB 3 x 1/2,#REF!,A36,", "Length"},
    {"X,4,FB 3 x 1/2,#####,A36,", "Length"},
    {"X,4,FB 3 x 1/2,\"1,250\",A36,", "Length"},
    {"X,4,FB 3 x 1/2,5-3,A36,", "Length"},
    {"X,4,FB 3 x 1/2,0,A36,", "Length"},
    {"X,4,FB 3 x 1/2,-12,A36,", "Length"},
    {"X,4,FB 3 x 1/2,101 m,A36,", "Length"},
    {"X,4,FB 3 x 1/2,12 kg,A36,", "Length"},
    {"X,4,FB 3 x 1/2,4 in + 6 in,A36,", "Length"},
    {"X,4,FB 3 x 1/2,12,,", "Grade"},
    {"X,4,FB 3 x 1/2,12,unobtainium,", "Grade"},
};

std::string good_row(int i) { return "M" + std::to_string(i) + ",4,FB 3 x 1/2,12-1/2,A36,"; }

} // namespace

TEST_CASE("a thousand rows with fifty different faults: 950 parts, and each fault in its place") {
    static_assert(std::size(k_faulty) == 50);
    std::string bytes = k_heading;
    std::map<int, const Faulty*> at; // by row of the spreadsheet; the heading is row 1
    for (int i = 0; i < 1000; ++i) {
        const bool faulty = i % 20 == 7;
        if (faulty)
            at[i + 2] = &k_faulty[i / 20];
        bytes += (faulty ? std::string(k_faulty[i / 20].row) : good_row(i)) + "\n";
    }
    const ReadParts read = parts(bytes, catalog(), inch());
    CHECK(read.taken.size() == 950);
    REQUIRE(read.refused.size() == 50);
    CHECK(read.passed.size() == 1);
    for (const archive::RefusedRow& refused : read.refused) {
        REQUIRE(at.count(refused.row) == 1);
        CAPTURE(at[refused.row]->row);
        CHECK(refused.heading == at[refused.row]->heading);
        CHECK(refused.column >= 0);
        CHECK_FALSE(refused.refusal.reason.empty());
    }
}

TEST_CASE("each row makes one part with its cut") {
    const ReadParts read =
        parts(std::string(k_heading) + "HB1,4 pcs,FB 3 x 1/2,4' 6-1/2\",ASTM A36,top\n",
              catalog(),
              inch());
    REQUIRE(read.taken.size() == 1);
    const job::Part& part = read.taken[0].part;
    CHECK(read.taken[0].row == 2);
    CHECK(part.id == "p1");
    CHECK(part.mark == "HB1");
    CHECK(part.count == 4);
    CHECK(part.length == inches(54.5));
    CHECK(part.grade == "A36");
    CHECK(part.note == "top");
    REQUIRE(part.operations.size() == 1);
    CHECK(std::string(job::operation_word(part.operations[0])) == "shear to length");
}

TEST_CASE("no unit and no grade is assumed") {
    const std::string bytes = std::string(k_heading) + "A,1,FB 3 x 1/2,12,A36,\n";
    const ReadParts none = parts(bytes, catalog());
    REQUIRE(none.refused.size() == 1);
    CHECK(none.refused[0].refusal.reason == "The unit is missing.");
    ListOptions options = inch();
    options.grade = "A36";
    CHECK(parts("Mark,Qty,Section,Length\nA,1,FB 3 x 1/2,12\n", catalog(), options).taken.size() ==
          1);
    CHECK(parts("Mark,Qty,Section,Length\nA,1,FB 3 x 1/2,12\n", catalog(), inch()).refused.size() ==
          1);
    options.grade = "nothing";
    const auto cells = parts_list_test::table(bytes);
    const auto refused = read_parts(cells, propose_mapping(cells, catalog()), options, catalog());
    REQUIRE_FALSE(refused.ok());
    CHECK(refused.refusal().field == "grade");
}

TEST_CASE("a point that can group thousands is asked for where decimals have commas") {
    const std::string bytes = "Mark;Qty;Section;Length\nA;1;FL 50x10;1.250\nB;1;FL 50x10;1250,5\n";
    ListOptions options;
    options.units = UnitSystem::metric;
    options.grade = "S235JR";
    ReadParts read = parts(bytes, catalog(), options);
    REQUIRE(read.refused.size() == 1);
    CHECK(read.refused[0].row == 2);
    options.mark = archive::DecimalMark::comma;
    read = parts(bytes, catalog(), options);
    REQUIRE(read.taken.size() == 2);
    CHECK(read.taken[0].part.length == millimetres(1250.0));
}

TEST_CASE("blank rows, headings again and sums are passed over and said so") {
    const std::string bytes = std::string(k_heading) + good_row(1) + "\n,,,,,\n" + k_heading +
                              "Total,8,,,,\nSub-total: ,8,,,,\nTotal 1,4,FB 3 x 1/2,12,A36,\n";
    const ReadParts read = parts(bytes, catalog(), inch());
    CHECK(read.taken.size() == 2); // a mark may begin with the word when the rest is there
    CHECK(read.refused.empty());
    REQUIRE(read.passed.size() == 5);
    for (const archive::PassedRow& passed : read.passed)
        CHECK_FALSE(passed.reason.empty());
}

TEST_CASE("twenty thousand rows are read whole") {
    constexpr int k_rows = 19'999; // how long it takes, tests/bench/storing says
    std::string bytes = k_heading;
    for (int i = 0; i < k_rows; ++i)
        bytes += "M" + std::to_string(i) + ",4,FB " + std::to_string(i % 400 + 1) + " x 1/" +
                 std::to_string(i % 64 + 1) + "," + std::to_string(i % 900 + 1) + "-1/2,A36,\n";
    CHECK(parts(bytes, catalog(), inch()).taken.size() == static_cast<std::size_t>(k_rows));
}

TEST_CASE("what a reason repeats of a foreign word is no half of a letter") {
    // Latin letters of one byte each become two; the 60th byte is then inside one.
    const std::string grade = "S2\xE9" + std::string(60, '\xFF');
    const archive::Table cells =
        parts_list_test::table(std::string(k_heading) + "X,4,FB 3 x 1/2,12," + grade + ",\n");
    const job::Catalog known = catalog();
    const archive::Mapping mapping = archive::propose_mapping(cells, known);
    const auto read = archive::read_parts(cells, mapping, inch(), known);
    REQUIRE(read.ok());
    REQUIRE(read->refused.size() == 1);
    const auto again = archive::read_table(archive::write_refused_rows_csv(cells, mapping, *read));
    REQUIRE(again.ok());
    CHECK(again->cell(1, 4) == cells.cell(1, 4));
}

TEST_CASE("the list of refused rows of as many columns as there may be is read again") {
    std::string text = "Mark,Qty,Section,Length,Grade";
    for (int column = 5; column < archive::k_most_columns; ++column)
        text += ",Colour";
    text += "\nX,0,FB 3 x 1/2,12,A36" + std::string(archive::k_most_columns - 5, ',') + "\n";
    const archive::Table cells = parts_list_test::table(text);
    REQUIRE(cells.columns == archive::k_most_columns);
    const job::Catalog known = catalog();
    const archive::Mapping mapping = archive::propose_mapping(cells, known);
    const auto read = archive::read_parts(cells, mapping, inch(), known);
    REQUIRE(read.ok());
    REQUIRE(read->refused.size() == 1);
    const auto again = archive::read_table(archive::write_refused_rows_csv(cells, mapping, *read));
    REQUIRE(again.ok());
    CHECK(again->cell(1, 0) == "X");
    CHECK(again->cell(0, again->columns - 1) == "Reason");
    CHECK(again->cell(1, again->columns - 1).rfind("Qty: ", 0) == 0);
}

TEST_CASE("a first heading that reads like another kind of file does not make it one") {
    for (const char* heading : {"%PDF", "sep=;"}) {
        const archive::Table cells =
            parts_list_test::table("\"" + std::string(heading) +
                                   "\",Mark,Qty,Section,Length,Grade\n,X,0,FB 3 x 1/2,12,A36\n");
        const job::Catalog known = catalog();
        const archive::Mapping mapping = archive::propose_mapping(cells, known);
        const auto read = archive::read_parts(cells, mapping, inch(), known);
        REQUIRE(read.ok());
        REQUIRE(read->refused.size() == 1);
        const auto again =
            archive::read_table(archive::write_refused_rows_csv(cells, mapping, *read));
        REQUIRE(again.ok());
        CHECK(again->cell(0, 0) == heading);
        CHECK(again->cell(1, 1) == "X");
    }
}
