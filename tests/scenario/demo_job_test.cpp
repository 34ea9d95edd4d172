// The invented demo jobs from file to plan: they must show everything that the program can do, and
// every kind of answer.

#include "archive/archive.h"
#include "plan/explain.h"
#include "plan/machines.h"
#include "plan/plan.h"
#include "plan/remedy.h"
#include "plan/stock_plan.h"
#include "plan/trial_use.h"
#include "plan/words.h"
#include "sheet/worksheet.h"

#include <doctest/doctest.h>

#include <algorithm>
#include <fstream>
#include <iterator>
#include <map>
#include <set>

#include "remedy_holds.h"

using namespace treadle;
using plan::Outcome;

namespace {

const job::Catalog& catalog() {
    static const job::Catalog read = archive::read_catalog().value();
    return read;
}

archive::File demo(const char* name) {
    std::ifstream stream(std::string(TREADLE_SOURCE_DIR "/assets/demo/") + name, std::ios::binary);
    const std::string bytes{std::istreambuf_iterator<char>(stream), {}};
    auto file = archive::read_file(bytes);
    if (!file.ok())
        FAIL(name << ": " << file.refusal().field << ": " << file.refusal().reason);
    return std::move(file).value();
}

struct Planned {
    archive::File file;
    plan::Plan plan;
};
Planned planned(const char* name) {
    archive::File file = demo(name);
    plan::Plan made = plan::make_plan(file.job, file.shop, catalog());
    return {std::move(file), std::move(made)};
}

const plan::PartPlan& part(const plan::Plan& plan, std::string_view mark) {
    for (const auto& one : plan.parts)
        if (one->part->mark == mark)
            return *one;
    FAIL("no part " << mark);
    return *plan.parts.front();
}

} // namespace

TEST_CASE("both demos say that they are invented, and so is their machine") {
    for (const char* name : {"demo-inch.json", "demo-metric.json"}) {
        CAPTURE(name);
        const archive::File file = demo(name);
        CHECK(file.job.invented);
        CHECK(file.shop.machine.invented);
        CHECK(file.shop.machine.name.find("invented") != std::string::npos);
        for (const equipment::Machine& machine : file.shop.other_machines) {
            CHECK(machine.invented);
            CHECK(machine.name.find("invented") != std::string::npos);
        }
    }
}

TEST_CASE(
    "each demo shows bars to pull and to buy, a drop that is used, and a rack that lacks one") {
    for (const char* name : {"demo-inch.json", "demo-metric.json"}) {
        CAPTURE(name);
        const Planned demo = planned(name);
        const auto groups = plan::stock_groups(demo.plan, demo.file.job, demo.file.shop, catalog());
        const plan::StockPlan stock =
            plan::stock_plan(groups, plan::stock_answers(groups, plan::k_sheet_work));
        int pull = 0;
        int buy = 0;
        int drops = 0;
        int kept = 0;
        std::set<std::string> problems;
        for (std::size_t i = 0; i < groups.size(); ++i) {
            const plan::GroupPlan& group = stock.groups[i];
            CHECK(group.proven == !groups[i].problem.has_value());
            if (groups[i].problem)
                problems.insert(groups[i].problem->field);
            for (const plan::KindUse& use : group.use) {
                pull += use.pull;
                buy += use.buy;
            }
            drops += group.drops_used;
            kept += static_cast<int>(group.kept.size());
        }
        CHECK(pull > drops);
        CHECK(buy > 0);
        CHECK(drops > 0);
        CHECK(kept > 0);
        CHECK(problems == std::set<std::string>{"rack"});
        CHECK(stock.sums.price.value_or(0.0) > 0.0);
        CHECK_FALSE(plan::not_from_bars(demo.plan).empty());
    }
}

TEST_CASE("each demo shows a second machine that does not do everything, and why") {
    for (const char* name : {"demo-inch.json", "demo-metric.json"}) {
        CAPTURE(name);
        Planned demo = planned(name);
        const auto answers = plan::compare_machines(demo.file.job, demo.file.shop, catalog());
        REQUIRE(answers.size() == 2);
        for (const Outcome outcome :
             {Outcome::fits, Outcome::fits_up_to, Outcome::cannot_be_said, Outcome::does_not_fit})
            CHECK(plan::count_of(answers[1], outcome) > 0);
        // The machine in use is not moved by what stands beside it.
        demo.file.shop.other_machines.clear();
        const plan::Plan alone = plan::make_plan(demo.file.job, demo.file.shop, catalog());
        CHECK(sheet::plan_json(alone, demo.file.job, demo.file.shop) ==
              sheet::plan_json(demo.plan, demo.file.job, demo.file.shop));
    }
}

TEST_CASE("the inch demo uses every section and every operation") {
    const archive::File file = demo("demo-inch.json");
    CHECK(file.job.parts.size() >= 12);
    std::set<section::Shape> shapes;
    std::set<geometry::HoleShape> holes;
    std::set<std::size_t> kinds;
    std::set<std::size_t> bends;
    bool equal = false, unequal = false, mitre = false, width = false, pattern = false;
    bool up = false, down = false, vee = false, corner = false, edge = false;
    for (const job::PartRef& one : file.job.parts) {
        shapes.insert(one->section.shape);
        if (one->section.shape == section::Shape::angle)
            (one->section.width == one->section.height ? equal : unequal) = true;
        if (!one->legs.empty())
            bends.insert(one->legs.size() - 1);
        for (const job::Operation& operation : one->operations) {
            kinds.insert(operation.index());
            if (const auto* cut = std::get_if<job::Cut>(&operation)) {
                mitre = mitre || cut->start_mitre != Angle{} || cut->finish_mitre != Angle{};
                width = width || cut->side == job::CutSide::width;
            } else if (const auto* punch = std::get_if<job::Punch>(&operation)) {
                holes.insert(punch->hole.shape);
                pattern = pattern || (punch->at.columns > 1 && punch->at.rows > 1);
            } else if (const auto* notch = std::get_if<job::Notch>(&operation)) {
                const bool rectangle = notch->shape == geometry::NotchShape::rectangle;
                vee = vee || !rectangle;
                corner = corner || (rectangle && notch->edge >= job::NotchEdge::start_near);
                edge = edge || (rectangle && notch->edge < job::NotchEdge::start_near);
            } else if (const auto* bend = std::get_if<job::Bend>(&operation)) {
                (bend->up ? up : down) = true;
            }
        }
    }
    CHECK(shapes.size() == 8);
    CHECK(kinds.size() == std::variant_size_v<job::Operation>);
    CHECK(holes.size() == 5); // all but a bare perimeter
    CHECK(bends == std::set<std::size_t>{1, 2, 3, 4});
    for (const bool used : {equal, unequal, mitre, width, pattern, up, down, vee, corner, edge})
        CHECK(used);
}

TEST_CASE("every bent part of both demos has an order of its bends, and strips for one of them") {
    for (const char* name : {"demo-inch.json", "demo-metric.json"}) {
        const Planned demo_plan = planned(name);
        int bent = 0;
        int by_strips = 0;
        for (const auto& one : demo_plan.plan.parts) {
            if (one->part->legs.empty())
                continue;
            CAPTURE(one->part->mark);
            ++bent;
            REQUIRE(one->bends);
            CHECK(one->bends->missing.empty());
            CHECK(one->bends->steps.size() + 1 == one->part->legs.size());
            const auto goes = [](const plan::OperationPlan& bend) { return bend.trial == 0; };
            if (std::any_of(one->operations.begin(), one->operations.end(), goes))
                ++by_strips;
        }
        CHECK(bent > 0);
        CHECK(by_strips == 1);
        const auto effects = plan::trial_effects(
            demo_plan.plan, 0, demo_plan.file.job, demo_plan.file.shop, catalog());
        REQUIRE(effects.size() == 1);
        CHECK(effects[0].with_record != effects[0].without_record);
    }
}

TEST_CASE("every part of both demos is planned, operation by operation") {
    for (const char* name : {"demo-inch.json", "demo-metric.json"}) {
        const Planned demo_plan = planned(name);
        REQUIRE(demo_plan.plan.parts.size() == demo_plan.file.job.parts.size());
        for (const auto& one : demo_plan.plan.parts) {
            CAPTURE(one->part->mark);
            CHECK_FALSE(one->problem.has_value());
            CHECK(one->operations.size() == one->part->operations.size());
            CHECK(one->mass_each > Mass{});
            CHECK(one->blank_length >= one->blank_exact);
        }
        CHECK_FALSE(demo_plan.plan.order.empty());
    }
}

TEST_CASE("most of a demo fits, and each other answer is there to be seen") {
    const Planned inch = planned("demo-inch.json");
    std::map<Outcome, int> count;
    int tight = 0;
    for (const auto& one : inch.plan.parts) {
        ++count[one->outcome];
        tight += one->outcome == Outcome::fits && one->tight ? 1 : 0;
    }
    CHECK(count[Outcome::fits] > static_cast<int>(inch.plan.parts.size()) / 2);
    CHECK(count[Outcome::fits_up_to] >= 1);
    CHECK(count[Outcome::cannot_be_said] >= 1);
    CHECK(count[Outcome::does_not_fit] >= 1);
    CHECK(tight >= 1);
}

TEST_CASE("what cannot be said names what is missing, and saying it gives an answer") {
    const Planned before = planned("demo-inch.json");
    const plan::OperationPlan& cut = part(before.plan, "HP2").operations[0];
    REQUIRE(cut.outcome == Outcome::cannot_be_said);
    REQUIRE(cut.deciding != plan::k_none);
    CHECK(cut.checks[static_cast<std::size_t>(cut.deciding)].missing ==
          "machine.stations[3].largest_mitre");

    equipment::Shop shop = before.file.shop;
    shop.machine.stations[3].largest_mitre = degrees(45.0);
    const plan::Plan after = plan::make_plan(before.file.job, shop, catalog());
    CHECK(part(after, "HP2").outcome == Outcome::fits);
}

TEST_CASE("a certificate below the stated strength turns fits-up-to into fits") {
    const Planned before = planned("demo-inch.json");
    const plan::PartPlan& seat = part(before.plan, "HB3");
    REQUIRE(seat.outcome == Outcome::fits_up_to);
    job::Part read = *seat.part;
    read.certified_tensile = ksi(68.0);
    const auto with = plan::plan_part(
        std::make_shared<const job::Part>(read), before.file.job, before.file.shop, catalog());
    CHECK(with.outcome == Outcome::fits);
    read.certified_tensile = ksi(79.0);
    const auto above = plan::plan_part(
        std::make_shared<const job::Part>(read), before.file.job, before.file.shop, catalog());
    CHECK(above.outcome == Outcome::does_not_fit);
}

TEST_CASE("each remedy offered in the demo jobs is applied and does what it said") {
    std::map<std::string, std::set<plan::Remedy::Kind>> offered;
    for (const char* name : {"demo-inch.json", "demo-metric.json"}) {
        const Planned demo_plan = planned(name);
        const archive::File& file = demo_plan.file;
        for (const auto& one : demo_plan.plan.parts) {
            for (std::size_t i = 0; i < one->operations.size(); ++i) {
                CAPTURE(one->part->mark);
                const auto list = plan::remedies(*one, i, file.job, file.shop, catalog());
                const Outcome outcome = one->operations[i].outcome;
                if (outcome == Outcome::fits || outcome == Outcome::cannot_be_said)
                    CHECK(list.empty());
                for (const plan::Remedy& remedy : list) {
                    test::check_remedy_holds(*one, i, remedy, file.job, file.shop, catalog());
                    offered[one->part->mark].insert(remedy.kind);
                }
            }
        }
    }
    using Kind = plan::Remedy::Kind;
    CHECK(offered["HB3"] ==
          std::set<Kind>{Kind::certificate, Kind::hole, Kind::thickness, Kind::elsewhere});
    CHECK(offered["HT1"] == std::set<Kind>{Kind::elsewhere}); // no blade takes tube
    CHECK(offered["FB2"].count(Kind::grade) == 1);
}

TEST_CASE("the worksheet lists the remedies of what is not to be made") {
    const Planned inch = planned("demo-inch.json");
    const std::string html =
        sheet::worksheet_html(inch.plan, inch.file.job, inch.file.shop, catalog(), {});
    CHECK(html.find("What would make it fit") != std::string::npos);
    CHECK(html.find("Saw it to length: off this machine") != std::string::npos);
}

TEST_CASE("a job through its file and back has the same plan") {
    for (const char* name : {"demo-inch.json", "demo-metric.json"}) {
        const Planned before = planned(name);
        const auto again =
            archive::read_file(archive::write_file(before.file.job, before.file.shop));
        REQUIRE(again.ok());
        const plan::Plan after = plan::make_plan(again->job, again->shop, catalog());
        CHECK(sheet::plan_json(after, again->job, again->shop) ==
              sheet::plan_json(before.plan, before.file.job, before.file.shop));
    }
}

TEST_CASE("every operation that was computed has a working behind it") {
    const Planned inch = planned("demo-inch.json");
    for (const auto& one : inch.plan.parts) {
        CAPTURE(one->part->mark);
        if (!one->part->legs.empty())
            CHECK_FALSE(plan::explain_part(*one, inch.file.job, inch.file.shop, catalog()).empty());
        for (std::size_t i = 0; i < one->operations.size(); ++i) {
            const plan::OperationPlan& operation = one->operations[i];
            bool by_strength = false;
            for (const plan::Check& check : operation.checks)
                by_strength = by_strength || check.rule == plan::Rule::force;
            CAPTURE(i);
            if (by_strength)
                CHECK_FALSE(
                    plan::explain_operation(*one, i, inch.file.job, inch.file.shop, catalog())
                        .empty());
        }
    }
}
