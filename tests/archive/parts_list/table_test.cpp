// parts_list_table.cpp, parts_list_text.cpp: bytes to cells.

#include "archive/parts_list/lists.h"
#include "archive/parts_list_table.h"

using namespace treadle;
using archive::Letters;
using archive::Table;
using parts_list_test::table;

namespace {

std::string utf16(std::u16string_view text, bool big_end_first) {
    std::string bytes;
    for (const char16_t unit : text) {
        const char low = static_cast<char>(unit & 0xFF);
        const char high = static_cast<char>(unit >> 8);
        bytes += big_end_first ? high : low;
        bytes += big_end_first ? low : high;
    }
    return bytes;
}

void check_refused(std::string_view bytes, const char* field) {
    const auto read = archive::read_table(bytes);
    REQUIRE_FALSE(read.ok());
    CHECK(read.refusal().field == field);
    CHECK_FALSE(read.refusal().reason.empty());
}

} // namespace

TEST_CASE("quoted cells hold delimiters, line ends and doubled quotes") {
    const Table read = table("a,\"b,\"\"c\"\"\nd\",e\r\n1,2,3\r\n");
    REQUIRE(read.rows() == 2);
    CHECK(read.columns == 3);
    CHECK(read.cell(0, 1) == "b,\"c\"\nd");
    CHECK(read.cell(1, 2) == "3");
}

TEST_CASE("an inch mark inside a cell is no quote") {
    const Table read = table("HB1,4' 6-1/2\",A36\nHB2,3/8\" PL,A36\n");
    CHECK(read.cell(0, 1) == "4' 6-1/2\"");
    CHECK(read.cell(1, 1) == "3/8\" PL");
}

TEST_CASE("line ends of any system part the same rows") {
    for (const char* end : {"\n", "\r\n", "\r"}) {
        const Table read = table(std::string("a,b") + end + "1,2" + end + end + "3,4");
        REQUIRE(read.rows() == 4);
        CHECK(read.cell(1, 1) == "2");
        CHECK(read.blank(2));
        CHECK(read.cell(3, 0) == "3");
    }
}

TEST_CASE("the delimiter is found: comma, semicolon with decimal commas, tab") {
    CHECK(table("a,b,c\n1,2,3\n").delimiter == ',');
    CHECK(table("a;b;c\n1;2,5;3\n1;2,5;3,5\n").delimiter == ';');
    CHECK(table("a\tb\tc\n1\t2,5\t3;4\n").delimiter == '\t');
    CHECK(table("only\none\ncolumn\n").columns == 1);
}

TEST_CASE("a first line sep=; says the delimiter and is no row") {
    const Table read = table("sep=;\r\na;b,c\r\n1;2\r\n");
    CHECK(read.delimiter == ';');
    REQUIRE(read.rows() == 2);
    CHECK(read.cell(0, 1) == "b,c");
}

TEST_CASE("the letters are found: UTF-8 with and without mark, UTF-16, Windows-1252") {
    const std::string plain = "Pos,L\u00E4nge\n1,2\n";
    CHECK(table(plain).cell(0, 1) == "L\u00E4nge");
    CHECK(table("\xEF\xBB\xBF" + plain).cell(0, 0) == "Pos");
    for (const bool big : {false, true}) {
        const Table read = table((big ? "\xFE\xFF" : "\xFF\xFE") +
                                 utf16(u"Pos\tL\u00E4nge \u2300\U0001F529\n1\t2\n", big));
        CHECK(read.letters == Letters::utf16);
        CHECK(read.cell(0, 1) == "L\u00E4nge \u2300\U0001F529");
    }
    const Table windows = table("Pos;L\xE4nge;\x96\n1;2;3\n");
    CHECK(windows.letters == Letters::windows_1252);
    CHECK(windows.cell(0, 1) == "L\u00E4nge");
    CHECK(windows.cell(0, 2) == "\u2013");
}

TEST_CASE("a row that is shorter than the others ends in empty cells") {
    const Table read = table("a,b,c\n1\n");
    CHECK(read.cell(1, 0) == "1");
    CHECK(read.cell(1, 2).empty());
}

TEST_CASE("what is no table is refused with row and column") {
    check_refused("", "file");
    check_refused(" \r\n\r\n", "file");
    check_refused("PK\x03\x04zip", "file");
    check_refused("a,b\n1,\"2\n3,4\n", "row 2, column 2");
    check_refused("a,b\n\"1\"x,2\n", "row 2, column 1");
    check_refused(std::string_view("a,b\n1,2\0003\n", 11), "row 2, column 2");
    check_refused("a,b\n1,\x01\n", "row 2, column 2");
    check_refused("\xFF\xFE\x41", "file");
    check_refused(std::string("\xFF\xFE") + utf16(u"a\n", false) + "\x3D\xD8\x41\x01", "file");
    check_refused("a,\x81\xE4\n", "file");
}

TEST_CASE("sizes are bounded before anything is built on them") {
    check_refused("a,b\n1," + std::string(archive::k_longest_cell + 1, 'x'), "row 2, column 2");
    CHECK(table("a,b\n1," + std::string(archive::k_longest_cell, 'x')).rows() == 2);
    check_refused(std::string(64, ',') + "x\n", "row 1, column 65");
    CHECK(table(std::string(63, ',') + "x\n").columns == 64);
    std::string many;
    for (int i = 0; i < archive::k_most_rows; ++i)
        many += "1,2\n";
    CHECK(table(many).rows() == archive::k_most_rows);
    check_refused(many + "1,2\n", "row 20001");
    check_refused(std::string(archive::k_largest_list + 1, '\n'), "file");
}
