// The demo jobs worked off at the machine: every stroke once, figures as the plan and sheet have
// them, and nothing for what does not fit.

#include "archive/archive.h"
#include "plan/machine_run.h"
#include "plan/words.h"
#include "sheet/machine_drawing.h"
#include "sheet/machine_words.h"
#include "sheet/worksheet.h"

#include <doctest/doctest.h>

#include <algorithm>
#include <fstream>
#include <iterator>
#include <map>
#include <set>
#include <string>

using namespace treadle;
using plan::MachineStep;
using plan::MachineWork;

namespace {

constexpr const char* k_demos[] = {"demo-inch.json", "demo-metric.json"};

struct AtWork {
    job::Catalog catalog = archive::read_catalog().value();
    archive::File file;
    plan::Plan plan;
    plan::MachineRun run;

    explicit AtWork(const char* name) {
        std::ifstream stream(std::string(TREADLE_SOURCE_DIR "/assets/demo/") + name,
                             std::ios::binary);
        const std::string bytes{std::istreambuf_iterator<char>(stream), {}};
        file = archive::read_file(bytes).value();
        plan = plan::make_plan(file.job, file.shop, catalog);
        run = plan::resume(plan::machine_steps(plan, file.job, file.shop), {});
    }
    [[nodiscard]] const std::vector<MachineStep>& steps() const { return run.list.steps; }
    [[nodiscard]] const plan::PartPlan& part(const MachineStep& step) const {
        return *plan.parts[static_cast<std::size_t>(step.part)];
    }
};

bool makes(const MachineStep& step) {
    return step.kind == MachineWork::first_piece || step.kind == MachineWork::run;
}

/// Places that the plan has for an operation, in running order.
std::vector<std::pair<Length, Length>> holes_of(const plan::PartPlan& part, int operation) {
    std::vector<std::pair<Length, Length>> list;
    for (const plan::Mark& mark : part.marks)
        if (mark.kind == plan::Mark::Kind::hole && mark.operation == operation)
            list.emplace_back(mark.x, mark.y);
    return list;
}

} // namespace

TEST_CASE("every operation of the order is done once for each piece and stroke") {
    for (const char* name : k_demos) {
        CAPTURE(name);
        const AtWork work(name);
        std::map<std::pair<int, int>, int> strokes;
        std::map<std::tuple<int, int, int>, int> pieces; // at each position
        for (const MachineStep& step : work.steps()) {
            if (!makes(step))
                continue;
            strokes[{step.part, step.operation}] += step.pieces * step.strokes;
            pieces[{step.part, step.operation, step.position}] += step.pieces;
        }
        std::size_t planned = 0;
        for (const plan::SetUp& set_up : work.plan.order)
            for (const plan::Step& step : set_up.steps) {
                ++planned;
                CHECK(strokes[{step.part, step.operation}] == step.strokes);
            }
        CHECK(strokes.size() == planned);
        CHECK(planned >= 20);
        for (const auto& [place, count] : pieces)
            CHECK(count ==
                  work.plan.parts[static_cast<std::size_t>(std::get<0>(place))]->part->count);
    }
}

TEST_CASE("figures are the plan's marks, stops and lengths") {
    for (const char* name : k_demos) {
        CAPTURE(name);
        const AtWork work(name);
        std::set<std::string> seen;
        for (const MachineStep& step : work.steps()) {
            if (!makes(step))
                continue;
            CAPTURE(step.key.place);
            const plan::PartPlan& part = work.part(step);
            const job::Operation& made =
                part.part->operations[static_cast<std::size_t>(step.operation)];
            seen.insert(job::operation_word(made));
            if (std::holds_alternative<job::Punch>(made)) {
                const auto holes = holes_of(part, step.operation);
                REQUIRE(holes.size() == static_cast<std::size_t>(step.positions));
                REQUIRE(step.figures.size() == 2);
                const auto& [x, y] = holes[static_cast<std::size_t>(step.position)];
                CHECK(std::get<Length>(step.figures[0].value) == x);
                CHECK(std::get<Length>(step.figures[1].value) == y);
            } else if (std::holds_alternative<job::Bend>(made)) {
                REQUIRE(part.bends);
                const auto& bends = part.bends->steps;
                const auto bend = std::find_if(bends.begin(), bends.end(), [&](const auto& one) {
                    return one.bend == step.operation;
                });
                REQUIRE(bend != bends.end());
                CHECK(std::get<Length>(step.figures[0].value) == bend->stop);
            } else if (const auto* cut = std::get_if<job::Cut>(&made)) {
                if (step.position + 1 == step.positions)
                    CHECK(
                        std::get<Length>(step.figures[0].value) ==
                        (cut->side == job::CutSide::width ? part.blank_width : part.blank_length));
            }
            CHECK(step.figures.size() <= 2);
        }
        CHECK(seen.size() >= 5); // shears, punches, notches, bends, saddles
    }
}

TEST_CASE("every figure in digits is printed on the worksheet") {
    for (const char* name : k_demos) {
        CAPTURE(name);
        const AtWork work(name);
        sheet::SheetOptions options;
        options.kinds.workings = false;
        const std::string html =
            sheet::worksheet_html(work.plan, work.file.job, work.file.shop, work.catalog, options);
        int compared = 0;
        for (std::size_t i = 0; i < work.steps().size(); ++i) {
            const MachineStep& step = work.steps()[i];
            if (!makes(step))
                continue;
            const auto& made =
                work.part(step).part->operations[static_cast<std::size_t>(step.operation)];
            const sheet::MachineWords words = sheet::machine_words(work.run,
                                                                   static_cast<int>(i),
                                                                   work.plan,
                                                                   work.file.job,
                                                                   work.file.shop,
                                                                   work.catalog);
            for (const sheet::FigureText& text : words.figures) {
                if (std::holds_alternative<job::Saddle>(made))
                    continue; // the worksheet names the die in the set-up's title
                CAPTURE(text.digits);
                CHECK(html.find(text.digits) != std::string::npos);
                ++compared;
            }
        }
        CHECK(compared > 80);
    }
}

TEST_CASE("a bend is drawn from the side, with a ring round it and no other") {
    int drawn = 0;
    for (const char* name : k_demos) {
        CAPTURE(name);
        const AtWork work(name);
        for (const MachineStep& step : work.steps()) {
            if (!makes(step) ||
                !std::holds_alternative<job::Bend>(
                    work.part(step).part->operations[static_cast<std::size_t>(step.operation)]))
                continue;
            CAPTURE(step.key.place);
            const sheet::Drawing drawing = sheet::draw_machine_step(work.part(step), step);
            int rings = 0;
            for (const sheet::Circle& circle : drawing.circles)
                rings += circle.pen == sheet::Pen::highlight && circle.fill == sheet::Fill::none;
            CHECK(rings == 1);
            ++drawn;
        }
    }
    CHECK(drawn > 10);
}

TEST_CASE("what does not fit, or of which it cannot be said, is in no step and in the list") {
    std::size_t in_all = 0;
    for (const char* name : k_demos) {
        CAPTURE(name);
        const AtWork work(name);
        std::set<int> left_out;
        for (const plan::NotHere& entry : work.run.list.not_here) {
            left_out.insert(entry.part);
            CHECK(entry.reason.size() > 10);
        }
        for (std::size_t i = 0; i < work.plan.parts.size(); ++i)
            CHECK((left_out.count(static_cast<int>(i)) == 1) ==
                  (work.plan.parts[i]->outcome > plan::Outcome::fits_up_to));
        in_all += left_out.size();
        for (const MachineStep& step : work.steps())
            CHECK((step.part == plan::k_none || left_out.count(step.part) == 0));
    }
    CHECK(in_all > 0); // the demo in inches has a part of each kind
}

TEST_CASE("work that fits only up to a strength begins with its certificate") {
    for (const char* name : k_demos) {
        CAPTURE(name);
        const AtWork work(name);
        std::set<std::pair<int, int>> read;
        int asked = 0;
        for (std::size_t i = 0; i < work.steps().size(); ++i) {
            const MachineStep& step = work.steps()[i];
            if (step.part == plan::k_none)
                continue;
            const auto& verdict =
                work.part(step).operations[static_cast<std::size_t>(step.operation)];
            if (step.kind == MachineWork::certificate) {
                ++asked;
                read.insert({step.part, step.operation});
                const auto words = sheet::machine_words(work.run,
                                                        static_cast<int>(i),
                                                        work.plan,
                                                        work.file.job,
                                                        work.file.shop,
                                                        work.catalog);
                CHECK(words.ticks.at(0).find("fits up to ") != std::string::npos);
                CHECK(words.verdict.rfind("fits up to ", 0) == 0);
            } else if (verdict.outcome == plan::Outcome::fits_up_to) {
                CHECK(read.count({step.part, step.operation}) == 1);
            }
        }
        CHECK(asked > 0);
    }
}

TEST_CASE("every line to tick has words, and every key is there once") {
    for (const char* name : k_demos) {
        CAPTURE(name);
        const AtWork work(name);
        std::set<std::string> places;
        for (std::size_t i = 0; i < work.steps().size(); ++i) {
            const MachineStep& step = work.steps()[i];
            CHECK(places.insert(step.key.place).second);
            const auto words = sheet::machine_words(work.run,
                                                    static_cast<int>(i),
                                                    work.plan,
                                                    work.file.job,
                                                    work.file.shop,
                                                    work.catalog);
            REQUIRE(words.ticks.size() == step.ticks.size());
            for (const std::string& line : words.ticks)
                CHECK(line.size() > 5);
            CHECK(words.ticks.size() + static_cast<std::size_t>(step.pieces) > 0);
            CHECK_FALSE(words.safety.empty());
        }
    }
}
