// Two people at one machine: at_once.cpp, lanes.cpp.
//
// Small jobs are checked against a search over every state of the shop floor, one unit of time
// after the other, which knows nothing of lanes.cpp; larger ones against the rules alone.

#include "plan/at_once.h"
#include "plan/job_time.h"

#include <map>
#include <random>
#include <set>

#include "fixture.h"

using namespace treadle;
using namespace treadle::test;

namespace {

std::size_t at(int index) { return static_cast<std::size_t>(index); }

int below(std::mt19937& random, int end) {
    return static_cast<int>(random() % static_cast<unsigned>(end));
}

equipment::Shop floor_of(int stations, int operators) {
    equipment::Shop shop;
    shop.machine.operators = operators;
    for (int s = 0; s < stations; ++s) {
        equipment::Station station;
        station.id = station.name = "S" + std::to_string(s);
        shop.machine.stations.push_back(station);
    }
    return shop;
}

/// Which parts a set-up works on, at which stage and for how many strokes.
struct Step {
    int part = 0;
    int stage = 0;
    int strokes = 1;
};
struct SetUp {
    int station = 0;
    std::vector<Step> steps;
};

/// A plan of nothing but its order; set-ups in an order that one person could work through.
plan::Plan plan_of(int parts, const std::vector<SetUp>& set_ups) {
    std::vector<plan::PartPlan> planned(at(parts));
    plan::Plan plan;
    for (const SetUp& set_up : set_ups) {
        plan::SetUp one;
        one.tools.station = set_up.station;
        for (const Step& step : set_up.steps) {
            plan::PartPlan& part = planned[at(step.part)];
            const auto operation = static_cast<int>(part.operations.size());
            part.operations.emplace_back();
            plan::WorkItem item;
            item.operation = operation;
            item.stage = step.stage;
            part.work.push_back(item);
            one.steps.push_back({step.part, operation, 1, step.strokes});
            one.strokes += step.strokes;
        }
        plan.order.push_back(one);
    }
    for (plan::PartPlan& part : planned) {
        part.part = std::make_shared<const job::Part>();
        plan.parts.push_back(std::make_shared<const plan::PartPlan>(part));
    }
    return plan;
}

int stage_of(const plan::Plan& plan, const plan::Step& step) {
    for (const plan::WorkItem& item : plan.parts[at(step.part)]->work)
        if (item.operation == step.operation)
            return item.stage;
    return plan::k_none;
}

bool apart(const equipment::Shop& shop, const plan::Plan& plan, int a, int b) {
    return !plan::may_run_at_once(
        shop, plan.order[at(a)].tools, plan.order[at(b)].tools, shop.machine.operators);
}

/// Random work; parts run through their stages in turn. Small when `few`.
struct RandomFloor {
    equipment::Shop shop;
    plan::Plan plan;
};
RandomFloor random_floor(std::mt19937& random, int most_set_ups, int most_parts, int people) {
    const int stations = 2 + below(random, 3);
    RandomFloor floor{floor_of(stations, people), {}};
    for (auto& station : floor.shop.machine.stations)
        if (below(random, 3) == 0) {
            const std::string other = "S" + std::to_string(below(random, stations));
            if (other != station.id)
                station.excludes.push_back(other);
        }
    const int parts = 1 + below(random, most_parts);
    std::vector<int> stage(at(parts), 0);
    std::vector<SetUp> set_ups(at(2 + below(random, most_set_ups - 1)));
    for (SetUp& set_up : set_ups) {
        set_up.station = below(random, stations);
        for (int p = 0; p < parts; ++p)
            if (below(random, 2) == 0) // the same stage as before, or the next
                set_up.steps.push_back(
                    {p, stage[at(p)] += below(random, 4) == 0 ? 0 : 1, 1 + below(random, 3)});
        if (set_up.steps.empty())
            set_up.steps.push_back({0, ++stage[0], 1});
    }
    floor.plan = plan_of(parts, set_ups);
    return floor;
}

/// Every state of the floor, a stroke at a time: the least time in which all is done.
class BruteForce {
public:
    BruteForce(const RandomFloor& floor, int people) : floor_(floor), people_(people) {}

    int least() {
        std::set<State> now{State(floor_.plan.order.size(), Progress{k_waiting, 0, 0})};
        for (int time = 0;; ++time) {
            std::set<State> started;
            for (const State& state : now)
                begin(state, 0, started);
            now.clear();
            for (State state : started) {
                bool all = true;
                for (Progress& one : state)
                    all = all && one.phase == k_done;
                if (all)
                    return time;
                for (std::size_t i = 0; i < state.size(); ++i)
                    work_on(state[i], i);
                now.insert(state);
            }
        }
    }

private:
    enum Phase { k_waiting, k_running, k_done };
    struct Progress {
        int phase;
        int step;
        int left; ///< of the step at hand; 0: not begun
        bool operator<(const Progress& o) const {
            return std::tie(phase, step, left) < std::tie(o.phase, o.step, o.left);
        }
    };
    using State = std::vector<Progress>;

    void work_on(Progress& one, std::size_t set_up) {
        if (one.phase != k_running || one.left == 0)
            return;
        if (--one.left == 0 &&
            ++one.step == static_cast<int>(floor_.plan.order[set_up].steps.size()))
            one.phase = k_done;
    }
    [[nodiscard]] const plan::Step& step(std::size_t set_up, int index) const {
        return floor_.plan.order[set_up].steps[at(index)];
    }
    /// All earlier work on the part is done and nobody has it in hand.
    [[nodiscard]] bool is_free(const State& state, const plan::Step& wanted) const {
        for (std::size_t i = 0; i < state.size(); ++i)
            for (int s = 0; s < static_cast<int>(floor_.plan.order[i].steps.size()); ++s) {
                const plan::Step& other = step(i, s);
                if (other.part != wanted.part || other.operation == wanted.operation)
                    continue;
                const bool done = state[i].phase == k_done || s < state[i].step;
                const bool in_hand = !done && s == state[i].step && state[i].left > 0;
                if (in_hand ||
                    (!done && stage_of(floor_.plan, other) < stage_of(floor_.plan, wanted)))
                    return false;
            }
        return true;
    }
    /// From set-up `first` on: each may stay as it is, or begin (its next step).
    void begin(const State& state, std::size_t first, std::set<State>& out) const {
        if (first == state.size()) {
            out.insert(state);
            return;
        }
        begin(state, first + 1, out);
        State next = state;
        Progress& one = next[first];
        if (one.phase == k_done || one.left > 0)
            return;
        if (one.phase == k_waiting) {
            int running = 0;
            for (std::size_t i = 0; i < state.size(); ++i)
                if (state[i].phase == k_running) {
                    ++running;
                    if (apart(
                            floor_.shop, floor_.plan, static_cast<int>(first), static_cast<int>(i)))
                        return;
                }
            if (running == people_)
                return;
            one.phase = k_running; // the station is taken even while the step still waits
            begin(next, first + 1, out);
        }
        const plan::Step& wanted = step(first, one.step);
        if (!is_free(state, wanted))
            return;
        one.left = wanted.strokes;
        begin(next, first + 1, out);
    }

    const RandomFloor& floor_;
    int people_;
};

/// Walks through the lanes as the sheet says them. Each set-up once; nothing overlaps that must
/// not.
void check_lanes(const RandomFloor& floor, const plan::AtOnce& shared) {
    const auto& runs = shared.lanes.runs;
    REQUIRE(runs.size() == floor.plan.order.size()); // no set-up more than with one person
    std::set<int> seen;
    double last = 0.0;
    for (const plan::LaneRun& run : runs) {
        CHECK(seen.insert(run.task).second);
        CHECK(run.lane < shared.people);
        CHECK(run.finish - run.start ==
              doctest::Approx(floor.plan.order[at(run.task)].strokes + run.waits));
        last = std::max(last, run.finish);
        for (const plan::LaneRun& other : runs)
            if (&other != &run && run.start < other.finish && other.start < run.finish) {
                CHECK(other.lane != run.lane);
                CHECK_FALSE(apart(floor.shop, floor.plan, run.task, other.task));
            }
    }
    CHECK(shared.lanes.length == doctest::Approx(last));
    CHECK(shared.lanes.length <= shared.lanes.alone * (1.0 + 1e-9));
    CHECK(shared.lanes.least <= shared.lanes.length * (1.0 + 1e-9));
}

struct Span {
    double start = 0.0;
    double finish = 0.0;
    int stage = 0;
};

/// Each list is worked through downwards; no part is in two places, none is bent before it is cut.
void check_steps(const RandomFloor& floor, const plan::AtOnce& shared) {
    std::map<int, std::vector<Span>> by_part;
    for (const plan::LaneRun& run : shared.lanes.runs) {
        const auto& steps = floor.plan.order[at(run.task)].steps;
        REQUIRE(run.begins.size() == steps.size());
        double now = run.start;
        for (std::size_t s = 0; s < steps.size(); ++s) {
            CHECK(run.begins[s] >= now);
            now = run.begins[s] + steps[s].strokes;
            by_part[steps[s].part].push_back({run.begins[s], now, stage_of(floor.plan, steps[s])});
        }
        CHECK(now == doctest::Approx(run.finish));
    }
    for (const auto& [part, spans] : by_part)
        for (const Span& a : spans)
            for (const Span& b : spans)
                if (&a != &b) {
                    CHECK((a.finish <= b.start || b.finish <= a.start));
                    CHECK((a.stage >= b.stage || a.finish <= b.start));
                }
}

} // namespace

TEST_CASE("two set-ups on parts apart run side by side, and no shorter is possible") {
    const RandomFloor floor{floor_of(2, 2), plan_of(2, {{0, {{0, 0, 6}}}, {1, {{1, 0, 4}}}})};
    const plan::AtOnce shared = plan::at_once(floor.plan, floor.shop);
    CHECK_FALSE(shared.timed);
    CHECK(shared.lanes.length == 6.0);
    CHECK(shared.lanes.alone == 10.0);
    CHECK(shared.lanes.proven());
    CHECK(shared.stations == std::vector<std::pair<int, int>>{{0, 1}});
    CHECK(plan::at_once_words(shared) ==
          "6 strokes with 2 people, 10 strokes alone; proven shortest for these set-ups");
}

TEST_CASE("stations that exclude each other never run at once, whichever of them says so") {
    for (const int says : {0, 1}) {
        RandomFloor floor{floor_of(2, 2), plan_of(2, {{0, {{0, 0, 6}}}, {1, {{1, 0, 4}}}})};
        floor.shop.machine.stations[at(says)].excludes = {says == 0 ? "S1" : "S0"};
        const plan::AtOnce shared = plan::at_once(floor.plan, floor.shop);
        CHECK(shared.lanes.length == 10.0);
        CHECK(shared.lanes.proven());
        CHECK(shared.stations.empty());
    }
}

TEST_CASE("nothing runs beside a set-up whose station is not planned") {
    const RandomFloor floor{floor_of(2, 2),
                            plan_of(2, {{plan::k_none, {{0, 0, 6}}}, {1, {{1, 0, 4}}}})};
    CHECK(plan::at_once(floor.plan, floor.shop).lanes.length == 10.0);
}

TEST_CASE("one attachment, or a tool the crib has once, is at one station at a time") {
    const auto length = [](auto change) {
        RandomFloor floor{floor_of(2, 2), plan_of(2, {{0, {{0, 0, 6}}}, {1, {{1, 0, 4}}}})};
        floor.shop.crib.punches = {{round_hole(inches(0.5)), 1}, {round_hole(inches(0.75)), 2}};
        change(floor.plan.order[0].tools);
        change(floor.plan.order[1].tools);
        return plan::at_once(floor.plan, floor.shop).lanes.length;
    };
    CHECK(length([](plan::Tooling& t) { t.attachment = 0; }) == 10.0);
    CHECK(length([](plan::Tooling& t) { t.punch = 0; }) == 10.0);
    CHECK(length([](plan::Tooling& t) { t.punch = 1; }) == 6.0);
    CHECK(length([](plan::Tooling& t) { t.punch_size = round_hole(inches(1.0)); }) == 10.0);
}

TEST_CASE("the second person takes each part when the first is done with it") {
    // Three parts are cut (2 strokes each), then punched (2 each): the punch follows one part
    // behind, so 2 + 6.
    const RandomFloor floor{
        floor_of(2, 2),
        plan_of(3,
                {{0, {{0, 0, 2}, {1, 0, 2}, {2, 0, 2}}}, {1, {{0, 1, 2}, {1, 1, 2}, {2, 1, 2}}}})};
    const plan::AtOnce shared = plan::at_once(floor.plan, floor.shop);
    CHECK(shared.lanes.length == 8.0);
    CHECK(shared.lanes.alone == 12.0);
    CHECK(shared.lanes.proven());
}

TEST_CASE("one operator: the lane is the order") {
    std::mt19937 random(20261126);
    for (int round = 0; round < 20; ++round) {
        const RandomFloor floor = random_floor(random, 8, 4, 1);
        const plan::AtOnce shared = plan::at_once(floor.plan, floor.shop);
        check_lanes(floor, shared);
        for (std::size_t i = 0; i < shared.lanes.runs.size(); ++i)
            CHECK(shared.lanes.runs[i].task == static_cast<int>(i));
        CHECK(shared.lanes.length == shared.lanes.alone);
    }
}

TEST_CASE("two hundred small jobs against every state of the floor") {
    std::mt19937 random(20261127);
    int as_short = 0;
    int shorter_than_alone = 0;
    for (int round = 0; round < 200; ++round) {
        CAPTURE(round);
        const RandomFloor floor = random_floor(random, 4, 3, 2);
        const plan::AtOnce shared = plan::at_once(floor.plan, floor.shop);
        check_lanes(floor, shared);
        check_steps(floor, shared);
        const int best = BruteForce(floor, 2).least();
        CHECK(shared.lanes.least <= best * (1.0 + 1e-9));
        CHECK(shared.lanes.length >= best * (1.0 - 1e-9));
        if (shared.lanes.proven())
            CHECK(shared.lanes.length == doctest::Approx(best));
        as_short += shared.lanes.length < best + 0.5 ? 1 : 0;
        shorter_than_alone += shared.lanes.length < shared.lanes.alone ? 1 : 0;
    }
    CHECK(as_short >= 195); // what is left are parts that two stations could take in either order
    CHECK(shorter_than_alone >= 50);
    MESSAGE(as_short, " of 200 as short as can be, ", shorter_than_alone, " shorter than alone");
}

TEST_CASE("large jobs keep every rule, with two people and with three") {
    std::mt19937 random(20261128);
    for (int round = 0; round < 30; ++round) {
        CAPTURE(round);
        const RandomFloor floor = random_floor(random, 40, 30, 2 + round % 2);
        const plan::AtOnce shared = plan::at_once(floor.plan, floor.shop);
        check_lanes(floor, shared);
        check_steps(floor, shared);
        const plan::AtOnce again = plan::at_once(floor.plan, floor.shop); // counted, not timed
        for (std::size_t i = 0; i < shared.lanes.runs.size(); ++i) {
            CHECK(again.lanes.runs[i].task == shared.lanes.runs[i].task);
            CHECK(again.lanes.runs[i].start == shared.lanes.runs[i].start);
        }
    }
}

TEST_CASE("known times are used, with every change; alone they are the time of the job") {
    Bench bench;
    bench.shop.machine.operators = 2;
    equipment::WorkTimes& times = bench.shop.rules.times;
    times.new_station = quantity::minutes(8.0);
    times.new_tool = quantity::minutes(4.0);
    times.stroke = times.position = quantity::seconds(5.0);
    times.first_piece = quantity::minutes(2.0);
    times.handling = {{quantity::pounds(500.0), quantity::seconds(10.0)}};
    for (const double length : {6.0, 8.0}) {
        job::Part part = plate(inches(0.25), inches(4.0), inches(length));
        part.id = part.mark = length < 7.0 ? "A" : "B";
        part.count = 20;
        if (length < 7.0)
            part.operations = {job::Cut{}};
        else
            part.operations = {one_hole(inches(0.8125), inches(2.0), inches(2.0))};
        bench.job.parts.push_back(std::make_shared<const job::Part>(part));
    }
    const plan::Plan plan = plan::make_plan(bench.job, bench.shop, bench.catalog);
    REQUIRE(plan.order.size() == 2);
    const plan::AtOnce shared = plan::at_once(plan, bench.shop);
    REQUIRE(shared.timed);
    // Each: 8 min, 20 x (10 + 10) s, 2 min: 1000 s; side by side, as neither needs the other.
    CHECK(shared.lanes.length == doctest::Approx(1000.0));
    CHECK(shared.lanes.alone == doctest::Approx(2000.0));
    CHECK(shared.lanes.alone ==
          doctest::Approx(quantity::to_seconds(plan::job_time(plan, bench.shop)->total)));
    CHECK(plan::at_once_words(shared) ==
          "16.7 min with 2 people, 33.3 min alone; proven shortest for these set-ups");
}
