// The printed page: worksheet.cpp, worksheet_summary.cpp, worksheet_setups.cpp,
// worksheet_at_once.cpp, worksheet_drawings.cpp, worksheet_style.cpp, worksheet_checks.cpp
// and cautions.cpp.

#include "base/text.h"
#include "plan/words.h"
#include "sheet/sample.h"
#include "sheet/worksheet.h"

using namespace treadle;
using sheet_test::count_of;
using sheet_test::Sample;

namespace {

std::string html_of(const Sample& sample, const sheet::SheetOptions& options = {}) {
    return sheet::worksheet_html(sample.plan, sample.job, sample.shop, sample.catalog, options);
}

} // namespace

TEST_CASE("the worksheet is a whole page in which every tag is closed") {
    const Sample sample;
    const std::string html = html_of(sample);
    CHECK(html.rfind("<!DOCTYPE html>", 0) == 0);
    CHECK(html.find("<html lang=\"en\">") != std::string::npos);
    CHECK(html.find("<title>Worksheet: Test job</title>") != std::string::npos);
    CHECK(sheet_test::fault_in_markup(html) == "");
    CHECK(html.find(" style=") == std::string::npos);
    CHECK(count_of(html, "<table") == count_of(html, "<caption>"));
    CHECK(count_of(html, "<th ") == count_of(html, " scope="));
}

TEST_CASE("every part is on the worksheet with its verdict and its drawing") {
    const Sample sample;
    const std::string html = html_of(sample);
    for (const auto& part : sample.plan.parts) {
        CAPTURE(part->part->mark);
        CHECK(html.find(">" + part->part->mark + "</th>") != std::string::npos);
        CHECK(html.find("Flat view of " + part->part->mark) != std::string::npos);
        CHECK(html.find(base::escape_markup(plan::verdict_words(*part, sample.job.style))) !=
              std::string::npos);
    }
}

TEST_CASE("every set-up is there with a box to tick for each step") {
    const Sample sample;
    REQUIRE(sample.plan.order.size() >= 3);
    const std::string html = html_of(sample);
    for (std::size_t i = 0; i < sample.plan.order.size(); ++i)
        CHECK(html.find("Steps of set-up " + std::to_string(i + 1) + "<") != std::string::npos);
    std::size_t steps = 0;
    for (const plan::SetUp& set_up : sample.plan.order)
        steps += set_up.steps.size();
    CHECK(count_of(html, "<td><span class=\"tick\">") == static_cast<int>(steps));
    CHECK(count_of(html, "<strong>Hold: </strong>") == static_cast<int>(sample.plan.order.size()));
}

TEST_CASE("a part that is not to be made is named with its reason, and is in no set-up") {
    Sample sample;
    sample.change(0, [](job::Part& part) {
        part.section.thickness = inches(2.0); // far beyond the shear's largest thickness
    });
    REQUIRE(sample.plan.parts[0]->outcome > plan::Outcome::fits_up_to);
    const std::string html = html_of(sample);
    CHECK(html.find("Not to be made as it stands") != std::string::npos);
    bool reason = false;
    for (const plan::OperationPlan& operation : sample.plan.parts[0]->operations)
        for (const plan::Check& check : operation.checks)
            if (!check.warning && check.outcome > plan::Outcome::fits_up_to) {
                reason = true;
                CHECK(html.find(base::escape_markup(plan::sentence(check, sample.job.style))) !=
                      std::string::npos);
            }
    CHECK(reason);
}

TEST_CASE("a job without parts and name is a worksheet all the same, without an empty section") {
    Sample sample;
    sample.job.name.clear();
    sample.job.parts.clear();
    sample.make();
    const std::string html = html_of(sample);
    CHECK(html.find("<h1>Worksheet</h1>") != std::string::npos);
    CHECK(html.find("> · worksheet") == std::string::npos);
    CHECK(html.find("Part drawings") == std::string::npos);
    CHECK(sheet_test::fault_in_markup(html) == "");
}

TEST_CASE("names from a job never become markup") {
    Sample sample;
    const std::string evil = "<script>alert(1)</script>\" onload='x' &";
    sample.job.name = sample.job.note = sample.job.due = evil;
    sample.shop.name = sample.shop.machine.name = evil;
    for (equipment::Station& station : sample.shop.machine.stations)
        station.name = evil;
    sample.change(0, [&](job::Part& part) { part.mark = part.note = part.grade = evil; });
    sample.change(1, [&](job::Part& part) { part.mark = part.note = evil; });
    const std::string html = html_of(sample);
    CHECK(html.find("<script") == std::string::npos);
    CHECK(html.find("&lt;script&gt;") != std::string::npos);
    CHECK(sheet_test::fault_in_markup(html) == "");
}

TEST_CASE("the style is linked or written in, and is the same text") {
    const Sample sample;
    sheet::SheetOptions linked;
    linked.style_address = "sheet.css";
    const std::string with_link = html_of(sample, linked);
    CHECK(with_link.find("<link rel=\"stylesheet\" href=\"sheet.css\">") != std::string::npos);
    CHECK(with_link.find("<style>") == std::string::npos);
    CHECK(html_of(sample).find(sheet::worksheet_style()) != std::string::npos);
}

TEST_CASE("paper, notice and invented mark are on the page") {
    Sample sample;
    sheet::SheetOptions a4;
    a4.paper = sheet::Paper::a4;
    CHECK(html_of(sample).find("<body class=\"letter\">") != std::string::npos);
    CHECK(html_of(sample, a4).find("<body class=\"a4\">") != std::string::npos);
    CHECK(html_of(sample).find(base::escape_markup(sheet::safety_notice())) != std::string::npos);
    CHECK(html_of(sample).find("class=\"invented\"") != std::string::npos);
    sample.job.invented = false;
    CHECK(html_of(sample).find("class=\"invented\"") == std::string::npos);
}

TEST_CASE("cautions are those of the stations in use") {
    Sample sample;
    const auto has = [&](const char* begin) {
        for (const sheet::CautionLine& line :
             sheet::cautions({sample.plan, sample.job, sample.shop, sample.catalog}))
            if (line.words.rfind(begin, 0) == 0)
                return true;
        return false;
    };
    CHECK(has("Punch:"));
    CHECK(has("Brake:"));
    sample.job.parts.resize(1);
    sample.change(0, [](job::Part& part) { part.operations = {job::Cut{}}; });
    CHECK(has("Flat shear:"));
    CHECK_FALSE(has("Punch:"));
    CHECK_FALSE(has("Brake:"));
}

TEST_CASE("steps are set out by the plan's own places") {
    const Sample sample;
    const std::string html = html_of(sample);
    // Four holes, 5 apart both ways from 1-1/2, 1-1/2.
    CHECK(html.find("across 1-1/2: along 1-1/2, 6-1/2<") != std::string::npos);
    CHECK(html.find("across 6-1/2: along 1-1/2, 6-1/2<") != std::string::npos);
}

TEST_CASE("the head says the time and who lifts, or that neither is known") {
    Sample sample;
    const std::string without = html_of(sample);
    CHECK(without.find("<dd>not computed: the house rules have no time for") != std::string::npos);
    CHECK(without.find("<dd>not checked: the house rules have no lift limit") != std::string::npos);
    sample.shop.rules.lift_limit = quantity::kilograms(0.001);
    CHECK(html_of(sample).find(": a hoist</dd>") != std::string::npos);
}

TEST_CASE("cord and generator are on the sheet with their working, or what is not known") {
    Sample sample;
    CHECK(html_of(sample).find("not known: power of the motor") != std::string::npos);
    sample.shop.supply.motor = quantity::horsepower(3.0);
    sample.shop.supply.voltage = quantity::volts(230.0);
    sample.shop.supply.code = "K";
    sample.shop.supply.cord = "14 AWG"; // carries 18 A, the motor draws 17 A
    sample.shop.supply.cord_length = quantity::feet(200.0);
    sample.shop.supply.generator = quantity::kilovolt_amperes(20.0);
    const std::string html = html_of(sample);
    CHECK(html.find("Cord, running: loses 9.3 % of the voltage, over the limit") !=
          std::string::npos); // 2 x 200 x 17 x 3.14/1000 = 21.35 V = 9.28 %
    CHECK(html.find("takes 27.0 kVA, it gives 20.0 kVA") != std::string::npos);
    CHECK(html.find("Least surge of a generator that starts a motor") != std::string::npos);
    CHECK(sheet_test::fault_in_markup(html) == "");
}

TEST_CASE("who does what is on the sheet where two work, with what only the maker can say") {
    Sample sample;
    CHECK(html_of(sample).find("Who does what") == std::string::npos);
    sample.shop.machine.operators = 2;
    const std::string html = html_of(sample);
    CHECK(html.find("<h2>Who does what</h2>") != std::string::npos);
    CHECK(html.find("May run at once: ") != std::string::npos);
    CHECK(html.find("plate or manual allows both stations at once") != std::string::npos);
    CHECK(sheet_test::fault_in_markup(html) == "");
    for (std::size_t i = 0; i < sample.plan.order.size(); ++i) // each begins once
        CHECK(count_of(html, "<td>Set-up " + std::to_string(i + 1) + ", ") == 1);
    for (auto& one : sample.shop.machine.stations)
        for (const auto& other : sample.shop.machine.stations)
            if (one.id != other.id)
                one.excludes.push_back(other.id);
    CHECK(html_of(sample).find("No two stations of this work may run at once") !=
          std::string::npos);
}
