// parts_list_cell.cpp: what spreadsheets do to a cell.

#include "archive/parts_list_cell.h"

#include <doctest/doctest.h>

using namespace treadle::archive;

TEST_CASE("what a spreadsheet puts around a text is taken off") {
    CHECK(cell_text("  HB1 ") == "HB1");
    CHECK(cell_text("'0012") == "0012");
    CHECK(cell_text("=\"0012\"") == "0012");
    CHECK(cell_text("=\"3/8\"\" PL\"") == "3/8\" PL");
    CHECK(cell_text("1\u00A0200\u202Fmm\u00A0") == "1 200 mm");
    CHECK(cell_text("'") == "");
    CHECK(cell_text("' HB1") == "HB1");
}

TEST_CASE("a fraction that became a date is told with what it probably was") {
    // 1/2 typed where the month stands first, and 2/1 where the day does: the same day.
    for (const char* date : {"2-Jan",
                             "2-jan",
                             "Jan-02",
                             "02-Jan",
                             "2. Jan",
                             "2-Jan-26",
                             "1/2/2026",
                             "1/2/26",
                             "2026-01-02",
                             "02.01.2026",
                             "2026-01-02 00:00:00",
                             "2-Ene",
                             "1/2/2026 0:00"}) {
        CAPTURE(date);
        const auto damage = damage_in(date, Holds::figure);
        REQUIRE(damage);
        CHECK(damage->detail.find("1/2 or 2/1") != std::string::npos);
    }
    CHECK(damage_in("Mar-99", Holds::figure));
}

TEST_CASE("the number of a day is told in a column of inches") {
    // 46024: 2 January 2026, counted from 30 December 1899.
    REQUIRE(date_number_in("46024"));
    CHECK(date_number_in("46024")->detail.find("1/2 or 2/1") != std::string::npos);
    // 45351: 29 February 2024; 45352: 1 March 2024.
    CHECK(date_number_in("45351")->detail.find("2/29") != std::string::npos);
    CHECK(date_number_in("45352")->detail.find("3/1") != std::string::npos);
    CHECK_FALSE(date_number_in("4602"));
    CHECK_FALSE(date_number_in("99999"));
    CHECK_FALSE(date_number_in("46024 mm"));
}

TEST_CASE("other damage of spreadsheets is told") {
    for (const char* text : {"1.5E+03",
                             "1,5E+03",
                             "2E-04",
                             "#REF!",
                             "#N/A",
                             "#VALUE!",
                             "#DIV/0!",
                             "#####",
                             "=B2*2",
                             "50%"}) {
        CAPTURE(text);
        REQUIRE(damage_in(text, Holds::figure));
        CHECK_FALSE(damage_in(text, Holds::figure)->reason.empty());
    }
    for (const char* text : {"1.50E+05", "#REF!", "####", "2-Jan", "Mar-12", "1/2/2026"}) {
        CAPTURE(text);
        CHECK(damage_in(text, Holds::words));
    }
}

TEST_CASE("what people write is no damage") {
    for (const char* text : {"1-3/8",
                             "1 3/8\"",
                             "4' 6-1/2\"",
                             "5-3-1/2",
                             "35 mm",
                             "1.250",
                             "12,5",
                             "1/2",
                             "3/8 in",
                             "6 ft",
                             "1-1/2-8"}) {
        CAPTURE(text);
        CHECK_FALSE(damage_in(text, Holds::figure));
    }
    for (const char* text :
         {"HB1", "1-2", "MAR-12", "A-1", "1E5", "jan-4", "#1", "50% spare", "12"}) {
        CAPTURE(text);
        CHECK_FALSE(damage_in(text, Holds::words));
    }
}

TEST_CASE("a said decimal mark makes one figure of both habits") {
    CHECK(plain_figure("1.250,5", DecimalMark::comma) == "1250.5");
    CHECK(plain_figure("1,250.5", DecimalMark::point) == "1250.5");
    CHECK(plain_figure("1.250", DecimalMark::comma) == "1250");
    CHECK(plain_figure("1,250", DecimalMark::point) == "1250");
    CHECK(plain_figure("1,250", DecimalMark::comma) == "1.250");
    CHECK(plain_figure("1,250", DecimalMark::not_said) == "1,250");
    CHECK(point_may_group("1.250"));
    CHECK(point_may_group("12.250 mm"));
    CHECK_FALSE(point_may_group("0.125"));
    CHECK_FALSE(point_may_group("1.25"));
    CHECK(has_decimal_comma("12,5"));
    CHECK_FALSE(has_decimal_comma("1,250"));
}

TEST_CASE("a cell that a spreadsheet would run is guarded, and comes back") {
    for (const char* value : {"=1+1", "+1", "-1", "@x", "'quoted", "plain", "=\"x\""}) {
        std::string out;
        add_cell(out, value, true);
        CAPTURE(out);
        CHECK(std::string_view("=+-@").find(out.front() == '"' ? out[1] : out.front()) ==
              std::string_view::npos);
        out.resize(out.size() - 2);
        if (out.front() != '"')
            CHECK(cell_text(out) == value);
    }
    std::string out;
    add_cell(out, "a,\"b\"\n", false);
    CHECK(out == "\"a,\"\"b\"\"\n\",");
}
