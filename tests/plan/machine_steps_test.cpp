// machine_steps.cpp, machine_positions.cpp and machine_keys.cpp: what the steps are, and by what
// they are known again.

#include "plan/fixture.h"
#include "plan/machine_run.h"
#include "plan/machine_steps.h"

#include <algorithm>
#include <map>
#include <utility>

using namespace treadle;
using plan::MachineStep;
using plan::MachineWork;
using plan::Tick;

namespace {

struct Bench {
    job::Job job;
    equipment::Shop shop = test::shop();
    job::Catalog catalog;
    plan::Plan plan;

    Bench() {
        catalog.grades.rows = {test::a36()};
        job::Part plate = test::plate(inches(0.25), inches(8.0), inches(10.0));
        plate.count = 6;
        job::Punch four = test::one_hole(inches(0.8125), inches(1.5), inches(1.5));
        four.at.columns = four.at.rows = 2;
        four.at.column_pitch = four.at.row_pitch = inches(5.0);
        plate.operations = {job::Cut{}, four};
        add(plate);
    }
    void add(job::Part part) {
        auto sound = job::checked(std::move(part));
        REQUIRE(sound.ok());
        job.parts.push_back(std::make_shared<const job::Part>(std::move(sound).value()));
        make();
    }
    void make() { plan = plan::make_plan(job, shop, catalog); }
    template <class Change>
    void change(std::size_t index, Change how) {
        job::Part part = *job.parts[index];
        how(part);
        job.parts[index] = std::make_shared<const job::Part>(std::move(part));
        make();
    }
    [[nodiscard]] std::vector<MachineStep> steps() const {
        return plan::machine_steps(plan, job, shop).steps;
    }
};

Length length_of(const plan::SetFigure& figure) { return std::get<Length>(figure.value); }

const MachineStep& find(const std::vector<MachineStep>& steps, const std::string& place) {
    const auto found = std::find_if(steps.begin(), steps.end(), [&](const MachineStep& step) {
        return step.key.place == place;
    });
    REQUIRE_MESSAGE(found != steps.end(), place);
    return *found;
}

int count(const MachineStep& step, Tick::Kind kind) {
    return static_cast<int>(std::count_if(
        step.ticks.begin(), step.ticks.end(), [&](const Tick& t) { return t.kind == kind; }));
}

} // namespace

TEST_CASE("every stroke of the plan's order is in exactly one step") {
    const Bench bench;
    std::map<std::pair<int, int>, int> strokes;
    for (const MachineStep& step : bench.steps())
        if (step.kind == MachineWork::first_piece || step.kind == MachineWork::run)
            strokes[{step.part, step.operation}] += step.pieces * step.strokes;
    int planned = 0;
    for (const plan::SetUp& set_up : bench.plan.order)
        for (const plan::Step& step : set_up.steps) {
            CHECK(strokes[{step.part, step.operation}] == step.strokes);
            ++planned;
        }
    CHECK(planned == 2);
    CHECK(strokes.size() == 2);
}

TEST_CASE("a pattern becomes its stops in running order, and only the changed one is set") {
    const Bench bench;
    const auto steps = bench.steps();
    const Length near = inches(1.5);
    const Length far = inches(6.5);
    const Length places[4][2] = {{near, near}, {near, far}, {far, near}, {far, far}};
    for (int i = 0; i < 4; ++i) {
        const bool checked = i == 0 || i == 3; // the plan measures the first and the last hole
        const MachineStep& step =
            find(steps, "part/P1/2." + std::to_string(i + 1) + (checked ? "/first" : "/run"));
        REQUIRE(step.figures.size() == 2);
        CHECK(length_of(step.figures[0]) == places[i][0]);
        CHECK(length_of(step.figures[1]) == places[i][1]);
        CHECK(step.pieces == (checked ? 1 : 6));
        CHECK(count(step, Tick::Kind::stop) == (i == 0 || i == 2 ? 2 : 1));
        CHECK(count(step, Tick::Kind::measured) == (checked ? 1 : 0));
    }
    const MachineStep& rest = find(steps, "part/P1/2.1/run");
    CHECK(rest.pieces == 5);
    CHECK(rest.made_before == 1);
    CHECK(rest.ticks.empty());
}

TEST_CASE("work on a part begins with its mark, once") {
    const Bench bench;
    int marks = 0;
    for (const MachineStep& step : bench.steps())
        marks += step.kind == MachineWork::mark ? 1 : 0;
    CHECK(marks == 1);
}

TEST_CASE("a set-up mounts what is not there yet, and takes off what was") {
    Bench bench;
    job::Part other = test::plate(inches(0.25), inches(8.0), inches(10.0));
    other.id = other.mark = "P2";
    other.operations = {test::one_hole(inches(1.0625), inches(4.0), inches(4.0))};
    bench.add(other);
    const auto steps = bench.steps();
    std::vector<const MachineStep*> punching;
    for (const MachineStep& step : steps)
        if (step.kind == MachineWork::set_up &&
            bench.plan.order[static_cast<std::size_t>(step.set_up)].tools.punch_size.size >
                Length{})
            punching.push_back(&step);
    REQUIRE(punching.size() == 2);
    CHECK(count(*punching[0], Tick::Kind::take_off) == 0);
    CHECK(count(*punching[0], Tick::Kind::mount) == 3); // holder, punch, die
    CHECK(punching[1]->tools_before == punching[0]->set_up);
    CHECK(count(*punching[1], Tick::Kind::take_off) >= 2);
    CHECK(count(*punching[1], Tick::Kind::mount) >= 2);
    for (const MachineStep* step : punching) {
        REQUIRE(step->figures.size() == 2);
        CHECK(length_of(step->figures[0]) ==
              *bench.plan.order[static_cast<std::size_t>(step->set_up)].settings.stroke_up);
    }
}

TEST_CASE("up to a strength: the certificate is read first") {
    Bench bench;
    bench.shop.machine.stations[0].force = us_tons(19.0); // 13/16 in 1/4 A36 needs 15 to 21
    bench.make();
    REQUIRE(bench.plan.parts[0]->operations[1].outcome == plan::Outcome::fits_up_to);
    const auto steps = bench.steps();
    const MachineStep& asked = find(steps, "part/P1/2.1/certificate");
    CHECK(count(asked, Tick::Kind::certificate) == 1);
    CHECK((&asked + 1)->key.place == "part/P1/2.1/first");
}

TEST_CASE("what does not fit is in no step and is listed with its reason") {
    Bench bench;
    bench.shop.machine.stations[0].force = us_tons(5.0);
    bench.make();
    const auto made = plan::machine_steps(bench.plan, bench.job, bench.shop);
    CHECK(made.steps.empty());
    REQUIRE(made.not_here.size() == 1);
    CHECK(made.not_here[0].outcome == plan::Outcome::does_not_fit);
    CHECK(made.not_here[0].reason.find("5 ton") != std::string::npos);
}

TEST_CASE("missing data are no steps either, and the datum is named") {
    Bench bench;
    bench.shop.machine.stations[0].force.reset();
    bench.make();
    const auto made = plan::machine_steps(bench.plan, bench.job, bench.shop);
    CHECK(made.steps.empty());
    REQUIRE(made.not_here.size() == 1);
    CHECK(made.not_here[0].outcome == plan::Outcome::cannot_be_said);
    CHECK(made.not_here[0].reason.find("force") != std::string::npos);
}

TEST_CASE("keys are all different, and stay when another part is planned anew") {
    Bench bench;
    job::Part other = test::plate(inches(0.25), inches(8.0), inches(10.0));
    other.id = other.mark = "P2";
    other.operations = {job::Cut{}};
    bench.add(other);
    std::map<std::string, std::string> keys;
    for (const MachineStep& step : bench.steps())
        CHECK(keys.emplace(step.key.place, step.key.content).second);
    bench.change(1, [](job::Part& part) { part.length = inches(12.0); });
    for (const MachineStep& step : bench.steps()) {
        const auto known = keys.find(step.key.place);
        REQUIRE(known != keys.end());
        const bool of_other =
            step.part != plan::k_none &&
            bench.plan.parts[static_cast<std::size_t>(step.part)]->part->id == "P2";
        if (of_other && step.kind == MachineWork::first_piece)
            CHECK(known->second != step.key.content);
        else if (!of_other)
            CHECK(known->second == step.key.content);
    }
}

TEST_CASE("a punch more in the crib changes no key, another die does") {
    Bench bench;
    const auto before = bench.steps();
    bench.shop.crib.punches.insert(bench.shop.crib.punches.begin(),
                                   {test::round_hole(inches(0.5)), 1});
    bench.make();
    const auto after = bench.steps();
    REQUIRE(before.size() == after.size());
    for (std::size_t i = 0; i < before.size(); ++i)
        CHECK(before[i].key == after[i].key);
    bench.shop.crib.dies = {{test::round_hole(inches(0.875)), 1}};
    bench.make();
    CHECK_FALSE(find(bench.steps(), "part/P1/2.1/first").key ==
                find(before, "part/P1/2.1/first").key);
}

TEST_CASE("a mitre is two ends, a saddle at both ends too") {
    Bench bench;
    job::Part bar;
    bar.id = bar.mark = "B1";
    bar.grade = "A36";
    bar.section.shape = section::Shape::flat;
    bar.section.thickness = inches(0.25);
    bar.section.width = inches(2.0);
    bar.length = inches(20.0);
    job::Cut cut;
    cut.start_mitre = degrees(20.0);
    cut.finish_mitre = degrees(30.0);
    bar.operations = {cut};
    bench.add(bar);
    const auto steps = bench.steps();
    const MachineStep& start = find(steps, "part/B1/1.1/run");
    REQUIRE(start.figures.size() == 1);
    CHECK(std::get<Angle>(start.figures[0].value) == degrees(20.0));
    const MachineStep& finish = find(steps, "part/B1/1.2/first");
    REQUIRE(finish.figures.size() == 2);
    CHECK(length_of(finish.figures[0]) == inches(20.0));
    CHECK(std::get<Angle>(finish.figures[1].value) == degrees(30.0));
    CHECK(start.strokes + finish.strokes == 2);
}
