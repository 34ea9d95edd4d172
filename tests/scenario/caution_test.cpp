// Each operation of the demo jobs prints its own cautions. What is looked for is written here by
// hand, beside the table in assets/cautions.json; paragraphs are those of 29 CFR that its rows
// name.

#include "archive/archive.h"
#include "base/text.h"
#include "plan/plan.h"
#include "sheet/worksheet.h"

#include <doctest/doctest.h>

#include <fstream>
#include <iterator>
#include <set>

using namespace treadle;

namespace {

const job::Catalog& catalog() {
    static const job::Catalog read = archive::read_catalog().value();
    return read;
}

archive::File demo(const std::string& name) {
    std::ifstream stream(TREADLE_SOURCE_DIR "/assets/demo/" + name, std::ios::binary);
    const std::string bytes{std::istreambuf_iterator<char>(stream), {}};
    return archive::read_file(bytes).value();
}

/// How each kind of work begins in its own caution.
struct WordsOf {
    const char* operator()(const job::Cut&) const { return "hear: "; } // flat, angle, bar
    const char* operator()(const job::Punch&) const { return "Punch: stripper"; }
    const char* operator()(const job::Notch&) const { return "Notch"; }
    const char* operator()(const job::Bend&) const { return "Brake: the sheet whips up"; }
    const char* operator()(const job::Saddle&) const { return "Saddle notcher: "; }
};
struct DoingOf {
    const char* operator()(const job::Cut&) const { return "Cutting "; }
    const char* operator()(const job::Punch&) const { return "Punching "; }
    const char* operator()(const job::Notch&) const { return "Cutting "; }
    const char* operator()(const job::Bend&) const { return "Bending "; }
    const char* operator()(const job::Saddle&) const { return ""; } // pipe is of steel here
};
std::string metal_words(material::Family family) {
    switch (family) {
    case material::Family::stainless_steel:
        return "stainless:";
    case material::Family::aluminium:
        return "aluminium:";
    case material::Family::copper_alloy:
        return "copper alloys:";
    case material::Family::carbon_steel:
        break;
    }
    return "";
}

/// The sheet's text of each set-up, by the place where the next one begins.
std::vector<std::string> set_up_sections(const std::string& html) {
    std::vector<std::string> sections;
    for (int number = 1;; ++number) {
        const std::size_t at = html.find("<h3>Set-up " + std::to_string(number) + ".");
        if (at == std::string::npos)
            return sections;
        const std::size_t end = html.find("<h3>", at + 1);
        sections.push_back(html.substr(at, end - at));
    }
}

} // namespace

TEST_CASE("each operation of the demo jobs prints its own cautions, in its set-up") {
    int with_metal = 0;
    for (const char* name : {"demo-inch.json", "demo-metric.json"}) {
        CAPTURE(name);
        const archive::File file = demo(name);
        const plan::Plan plan = plan::make_plan(file.job, file.shop, catalog());
        const auto sections =
            set_up_sections(sheet::worksheet_html(plan, file.job, file.shop, catalog(), {}));
        REQUIRE(sections.size() == plan.order.size());
        std::set<std::size_t> kinds;
        for (std::size_t i = 0; i < plan.order.size(); ++i)
            for (const plan::Step& step : plan.order[i].steps) {
                const job::Part& part = *plan.parts[static_cast<std::size_t>(step.part)]->part;
                const job::Operation& done =
                    part.operations[static_cast<std::size_t>(step.operation)];
                CAPTURE(part.mark);
                kinds.insert(done.index());
                CHECK(sections[i].find(std::visit(WordsOf{}, done)) != std::string::npos);
                const Grade* grade = job::find_grade(file.job, catalog(), part.grade);
                REQUIRE(grade != nullptr);
                const std::string metal = metal_words(grade->family);
                if (metal.empty())
                    continue;
                ++with_metal;
                CHECK(sections[i].find(std::visit(DoingOf{}, done) + metal) != std::string::npos);
            }
        CHECK(kinds.size() == 5);
    }
    CHECK(with_metal > 0);
}

TEST_CASE("a caution says its paragraph or that it is common practice, and is not for other work") {
    const archive::File file = demo("demo-inch.json");
    const plan::Plan plan = plan::make_plan(file.job, file.shop, catalog());
    const sheet::CautionInputs in{plan, file.job, file.shop, catalog()};
    const auto all = sheet::cautions(in);
    int anchored = 0;
    for (const sheet::CautionLine& line : all) {
        const bool names_one = line.anchor.rfind("29 CFR 19", 0) == 0;
        anchored += names_one ? 1 : 0;
        CHECK((names_one || line.anchor == "common practice, no source"));
    }
    CHECK(anchored >= 10);
    for (const plan::SetUp& set_up : plan.order) {
        bool bends = false;
        for (const plan::Step& step : set_up.steps)
            bends = bends || std::holds_alternative<job::Bend>(
                                 plan.parts[static_cast<std::size_t>(step.part)]
                                     ->part->operations[static_cast<std::size_t>(step.operation)]);
        for (const sheet::CautionLine& line : sheet::set_up_cautions(in, set_up))
            if (line.words.rfind("Brake:", 0) == 0)
                CHECK(bends);
    }
}

TEST_CASE("without a table of cautions the sheet says that they are missing") {
    const archive::File file = demo("demo-metric.json");
    job::Catalog bare = catalog();
    bare.cautions.clear();
    const plan::Plan plan = plan::make_plan(file.job, file.shop, bare);
    const std::string html = sheet::worksheet_html(plan, file.job, file.shop, bare, {});
    CHECK(html.find(base::escape_markup(sheet::k_cautions_missing)) != std::string::npos);
}
