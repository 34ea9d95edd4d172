// The code on the sheet: qr.cpp, worksheet_code.cpp. tests/link/run.mjs reads it with zbar.

#include "sheet/qr.h"
#include "sheet/sample.h"
#include "sheet/worksheet.h"

#include <algorithm>
#include <string>

using namespace treadle;
using sheet::qr_code;
using sheet_test::count_of;
using sheet_test::Sample;

namespace {

std::string html_of(const sheet::SheetOptions& options) {
    const Sample sample;
    return sheet::worksheet_html(sample.plan, sample.job, sample.shop, sample.catalog, options);
}

/// The finder pattern with its top left module there: a ring of dark, one of light, a dark middle.
bool finder_at(const sheet::QrCode& code, int column, int row) {
    for (int y = 0; y < 7; ++y)
        for (int x = 0; x < 7; ++x) {
            const int ring = std::min(std::min(x, y), std::min(6 - x, 6 - y));
            if (code.at(column + x, row + y) != (ring != 1))
                return false;
        }
    return true;
}

} // namespace

// ISO/IEC 18004, table 7, byte mode at level M: 14 bytes in version 1, 26 in 2, 997 in 25.
TEST_CASE("a code has the version that the standard gives its length") {
    CHECK(qr_code(std::string(14, 'a'))->side == 21);
    CHECK(qr_code(std::string(15, 'a'))->side == 25);
    CHECK(qr_code(std::string(26, 'a'))->side == 25);
    CHECK(qr_code(std::string(27, 'a'))->side == 29);
    CHECK(qr_code(std::string(997, 'a'))->side == 17 + 4 * 25);
    CHECK_FALSE(qr_code(std::string(998, 'a')).has_value());
    CHECK_FALSE(qr_code(std::string(100'000, 'a')).has_value());
}

TEST_CASE("a code has its finders in three corners, and is as large as a phone needs") {
    for (const std::size_t size : {1U, 100U, 997U}) {
        const auto code = qr_code(std::string(size, 'z'));
        REQUIRE(code.has_value());
        CHECK(finder_at(*code, 0, 0));
        CHECK(finder_at(*code, code->side - 7, 0));
        CHECK(finder_at(*code, 0, code->side - 7));
        CHECK(sheet::module_mm(*code) >= 0.5);
        CHECK(sheet::module_mm(*code) * (code->side + 8) <= 63.0);
    }
}

TEST_CASE("the drawing is its dark modules and four light ones around") {
    const auto code = qr_code("treadle");
    REQUIRE(code.has_value());
    const std::string svg = sheet::qr_svg(*code, "a <b>");
    CHECK(svg.find("viewBox=\"0 0 29 29\"") != std::string::npos);
    CHECK(svg.find("<title>a &lt;b&gt;</title>") != std::string::npos);
    CHECK(svg.find("M4 4h7v1h-7z") != std::string::npos);
    CHECK(svg.find("M3 ") == std::string::npos);
    CHECK(sheet_test::fault_in_markup(svg) == "");
}

TEST_CASE("the sheet has the code only where it is known what opens the job") {
    sheet::SheetOptions options;
    CHECK(html_of(options).find("figure class=\"code\"") == std::string::npos);
    CHECK(html_of(options).find("for a code") == std::string::npos);
    options.link_page = "https://host/a&b/";
    options.link = options.link_page + "#j=1.AAAA";
    const std::string html = html_of(options);
    CHECK(count_of(html, "<figure class=\"code\">") == 1);
    CHECK(html.find("Scan to open this job at https://host/a&amp;b/<") != std::string::npos);
    CHECK(sheet_test::fault_in_markup(html) == "");
}

TEST_CASE("a job that is too long for a code leaves one line about it") {
    sheet::SheetOptions options;
    options.link_page = "https://host/";
    const char* const words =
        "This job is too long for a code to scan; keep its file with this sheet.";
    CHECK(count_of(html_of(options), words) == 1);
    options.link = "https://host/#" + std::string(2000, 'a');
    CHECK(count_of(html_of(options), words) == 1);
    CHECK(html_of(options).find("<figure class=\"code\">") == std::string::npos);
}
