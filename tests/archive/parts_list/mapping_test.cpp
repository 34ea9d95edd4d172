// parts_list_mapping.cpp, parts_list_headings.cpp: which column is what.

#include "archive/parts_list/lists.h"
#include "archive/parts_list_headings.h"

using namespace treadle;
using archive::Column;
using archive::Mapping;
using parts_list_test::catalog;
using parts_list_test::table;

namespace {

std::string proposed(std::string_view bytes) {
    const Mapping mapping = archive::propose_mapping(table(bytes), catalog());
    std::string words;
    for (const archive::MappedColumn& column : mapping.columns) {
        CHECK_FALSE(column.why.empty());
        words += (words.empty() ? "" : " ") + std::string(column.open ? "?" : "") +
                 archive::column_word(column.holds);
    }
    return words;
}

} // namespace

TEST_CASE("headings of the trade say what a column is") {
    CHECK(proposed("Pc Mark,Qty.,Profile,Length,Grade,Remarks\nA,1,L3X3X1/4,12 in,A36,x\n") ==
          "mark count section length grade note");
    CHECK(proposed(
              "Pos;Menge;Profil;L\u00E4nge [mm];Werkstoff;Bemerkung\nA;1;FL 50x10;12;S235JR;\n") ==
          "mark count section length grade note");
    CHECK(proposed("Marca\tCantidad\tPerfil\tLongitud\tCalidad\nA\t1\tL3X3X1/4\t12\tA36\n") ==
          "mark count section length grade");
    CHECK(proposed("ITEM,NO. OFF,THK,WIDTH,LEN,MATL\nA,1,3/8,3,12,A36\n") ==
          "mark count thickness width length grade");
    CHECK(proposed("Mark,Qty,Description,Length,Material,Weight\nA,1,FB 3 x 1/2,12,A36,40\n") ==
          "mark count section length grade nothing");
}

TEST_CASE("a heading with two meanings is settled by its cells") {
    CHECK(proposed("Mark,Qty,Material,Length\nA,1,FB 3 x 1/2,12\n") == "mark count section length");
    CHECK(proposed("Mark,Qty,Section,Material,Length\nA,1,FB 3 x 1/2,A36,12\n") ==
          "mark count section grade length");
    CHECK(proposed("Mark,Qty,Section,Length,Description\nA,1,FB 3 x 1/2,12,for the gate\n") ==
          "mark count section length note");
}

TEST_CASE("a column that fits two meanings equally is left open") {
    // Both columns of numbers can be pieces or positions.
    CHECK(proposed("No,Section,Length\n1,FB 3 x 1/2,12\n2,FB 3 x 1/2,12\n") ==
          "?nothing section length");
    CHECK(proposed("Qty,Count,Mark,Section,Length\n1,1,A,FB 3 x 1/2,12\n") ==
          "?nothing ?nothing mark section length");
    const Mapping open = archive::propose_mapping(
        table("Qty,Count,Mark,Section,Length\n1,1,A,FB 3 x 1/2,12\n"), catalog());
    REQUIRE(mapping_fault(open));
    CHECK(mapping_fault(open)->field == "count");
    const Mapping said = with_column(open, 1, Column::count);
    CHECK_FALSE(mapping_fault(said));
    CHECK(with_column(said, 0, Column::count).columns[1].holds == Column::nothing);
}

TEST_CASE("without headings the cells say it, and two columns of whole numbers are left open") {
    CHECK(proposed("HB1,4,FB 3 x 1/2,12-1/2\",A36\nHB2,2,FB 3 x 1/2,10\",A36\n") ==
          "mark count section length grade");
    CHECK(proposed("HB1,4,FL 50x10,1200,S235JR\nHB2,2,FL 50x10,800,S235JR\n") ==
          "mark ?nothing section ?nothing grade");
}

TEST_CASE("rows above the headings are passed over, and a heading says its unit") {
    const std::string bytes = "Job 14\nMark,Qty,Section,Length (in),Grade\nA,1,L3X3X1/4,12,A36\n";
    const Mapping mapping = archive::propose_mapping(table(bytes), catalog());
    CHECK(mapping.heading_row == 1);
    CHECK(mapping.columns[3].unit == "in");
    const auto read = parts_list_test::parts(bytes, catalog());
    REQUIRE(read.taken.size() == 1);
    CHECK(read.taken[0].part.length == inches(12.0));
    CHECK(read.passed.size() == 2);
    CHECK(archive::heading_in("Length, ft").unit == "ft");
    CHECK(archive::heading_in("L\u00C4NGE (mm)").word == "l\u00E4nge");
    CHECK(archive::heading_in("No. Req'd").word == "no reqd");
}

TEST_CASE("each meaning has one word, and the word leads back") {
    for (int i = 0; i < archive::k_columns_known; ++i)
        CHECK(archive::column_named(archive::column_word(static_cast<Column>(i))) ==
              static_cast<Column>(i));
    CHECK_FALSE(archive::column_named("weight"));
}
