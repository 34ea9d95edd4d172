// The working sheets: worksheet_workings.cpp.

#include "base/text.h"
#include "plan/explain.h"
#include "quantity/working_text.h"
#include "sheet/sample.h"
#include "sheet/worksheet.h"

using namespace treadle;
using sheet_test::count_of;
using sheet_test::Sample;

namespace {

std::string html_of(const Sample& sample, const sheet::SheetOptions& options) {
    return sheet::worksheet_html(sample.plan, sample.job, sample.shop, sample.catalog, options);
}

} // namespace

TEST_CASE("every working says formula, result, range, source and evidence") {
    const Sample sample;
    std::size_t seen = 0;
    const std::string html = html_of(sample, {});
    for (const auto& part : sample.plan.parts)
        for (std::size_t i = 0; i < part->operations.size(); ++i)
            for (const Working& working :
                 plan::explain_operation(*part, i, sample.job, sample.shop, sample.catalog)) {
                ++seen;
                const auto lines = quantity::working_lines(working, sample.job.style);
                REQUIRE(lines.size() >= 6);
                CHECK(lines.front() == working.card->title);
                CHECK(lines.back() ==
                      std::string("Evidence: ") + base::evidence_words(working.card->evidence));
                CHECK(lines[lines.size() - 2] == std::string("Source: ") + working.card->source);
                CHECK(std::string(working.card->source) != "");
                CHECK(html.find(base::escape_markup(working.card->expression)) !=
                      std::string::npos);
                const std::string result =
                    working.result.symbol + " = " +
                    quantity::print_working(working.result.value, sample.job.style);
                CHECK(html.find(base::escape_markup(result)) != std::string::npos);
            }
    CHECK(seen >= 10);
}

TEST_CASE("sources are named by title where the shell knows it") {
    const Sample sample;
    sheet::SheetOptions options;
    std::vector<std::string> asked;
    options.source_title = [&](std::string_view key) {
        asked.emplace_back(key);
        return key == asked.front() ? std::string("The <first> book") : std::string();
    };
    const std::string html = html_of(sample, options);
    REQUIRE(!asked.empty());
    CHECK(html.find("The &lt;first&gt; book") != std::string::npos);
    for (const std::string& key : asked) // unknown to the shell: the key stands for it
        if (key != asked.front())
            CHECK(html.find(">" + base::escape_markup(key) + "<") != std::string::npos);
}

TEST_CASE("workings are left out when not wanted") {
    const Sample sample;
    sheet::SheetOptions options;
    options.kinds.workings = false;
    CHECK(html_of(sample, options).find("Working sheets") == std::string::npos);
    CHECK(html_of(sample, {}).find("Working sheets") != std::string::npos);
}

TEST_CASE("equal workings of a part stand once") {
    Sample sample; // two bends of the same angle and V
    sample.job.parts = {sample.job.parts[1]};
    sample.make();
    const auto first =
        plan::explain_operation(*sample.plan.parts[0], 2, sample.job, sample.shop, sample.catalog);
    REQUIRE(!first.empty());
    CHECK(count_of(html_of(sample, {}),
                   "<div class=\"small\">" + base::escape_markup(first[0].card->title) +
                       "</div>") == 1);
}
