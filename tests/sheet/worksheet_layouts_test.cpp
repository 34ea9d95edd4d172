// Layouts on paper: worksheet_layouts.cpp.

#include "archive/archive.h"
#include "sheet/sample.h"
#include "sheet/worksheet.h"

using namespace treadle;
using sheet_test::Sample;

namespace {

std::string html_of(const Sample& sample) {
    static const job::Catalog catalog = archive::read_catalog().value();
    return sheet::worksheet_html(sample.plan, sample.job, sample.shop, catalog, {});
}

bool has(const std::string& text, const std::string& words) {
    return text.find(words) != std::string::npos;
}

job::Layout rail() {
    return {"l1",
            "pipe-rail",
            "R<1>",
            {{"rule", "osha"},
             {"run", "20 ft"},
             {"height", "38 in"},
             {"spacing", "6 ft"},
             {"pipe", "pipe 1.9 x 0.145 in"},
             {"grade", "A53-B"}},
            {{"post", "", true}}};
}

} // namespace

TEST_CASE("a job without layouts has no such section") {
    CHECK_FALSE(has(html_of(Sample{}), "<h2>Layouts</h2>"));
}

TEST_CASE("a layout stands on paper with its picture, its rules and what was changed by hand") {
    Sample sample;
    job::Layout layout = rail();
    layout.made[0].part = sample.job.parts[0]->id;
    sample.job.layouts.push_back(layout);
    const std::string html = html_of(sample);
    CHECK(has(html, "<h2>Layouts</h2>"));
    CHECK(has(html, "R&lt;1&gt;  Rail of pipe"));
    CHECK(has(html, "Height of the top edge: 38 in, at least 39 in: breaks OSHA, top edge of a guardrail"));
    CHECK(has(html, "osha-1910-29"));
    CHECK(has(html, "no longer as drawn here: " + sample.job.parts[0]->mark));
    CHECK(has(html, "The adopted local code governs"));
}

TEST_CASE("figures and places to be marked stand with the layout") {
    Sample sample;
    sample.job.layouts.push_back({"l1",
                                  "even-frame",
                                  "G1",
                                  {{"sides", "8"},
                                   {"side", "12 in"},
                                   {"corner", "notch-and-fold"},
                                   {"bar", "angle 2 x 2 x 1/4 in"},
                                   {"grade", "A36"}},
                                  {}});
    const std::string html = html_of(sample);
    CHECK(has(html, "Inside angle of a corner: 135"));
    CHECK(has(html, "Middles of the notches, from the start: 11-"));
}

TEST_CASE("one that cannot be made again says why, and the sheet goes on") {
    Sample sample;
    job::Layout layout = rail();
    layout.kind = "spiral-stair";
    sample.job.layouts.push_back(layout);
    const std::string html = html_of(sample);
    CHECK(has(html, "It cannot be made again"));
    CHECK(has(html, "</html>"));
}
