// The order of bends against parts that can be worked through on paper, and against every order
// there is.

#include "plan/bend_order.h"
#include "plan/bend_sweep.h"

#include <algorithm>
#include <random>

#include "bend_problems.h"

using namespace treadle;
using namespace treadle::test;
using plan::BendObstacle;
using plan::BendSequence;

namespace {

/// Tries every order of the bends and either end to the stop, remembers nothing.
class EveryOrder {
public:
    explicit EveryOrder(const plan::BendProblem& problem)
        : problem_(problem),
          sweep_(problem),
          made_(problem.bends.size(), false) {}

    /// Fewest turns of the part; below zero when no order works.
    int fewest() {
        go(0, 0, false, false);
        return fewest_;
    }
    [[nodiscard]] std::size_t most_made() const { return most_made_; }

private:
    void go(std::size_t count, int turns, bool datum_up, bool start_gauged) {
        most_made_ = std::max(most_made_, count);
        if (count == made_.size() && (fewest_ < 0 || turns < fewest_))
            fewest_ = turns;
        plan::MadeBends set = 0;
        for (std::size_t i = 0; i < made_.size(); ++i)
            set |= made_[i] ? plan::MadeBends{1} << i : 0U;
        for (std::size_t bend = 0; bend < made_.size(); ++bend) {
            if (made_[bend] || sweep_.hit(bend, set))
                continue;
            for (const bool start : {false, true}) {
                if (!sweep_.gauge(bend, set, start))
                    continue;
                const bool up = problem_.bends[bend].up;
                const bool turned = count > 0 && (up != datum_up || start != start_gauged);
                made_[bend] = true;
                go(count + 1, turns + (turned ? 1 : 0), up, start);
                made_[bend] = false;
            }
        }
    }

    const plan::BendProblem& problem_;
    plan::BendSweep sweep_;
    std::vector<bool> made_;
    int fewest_ = -1;
    std::size_t most_made_ = 0;
};

/// An answer must hold when it is worked through step by step.
void check_steps(const plan::BendProblem& problem, const BendSequence& found) {
    plan::BendSweep sweep(problem);
    plan::MadeBends made = 0;
    int turns = 0;
    for (std::size_t i = 0; i < found.steps.size(); ++i) {
        const plan::BendStep& step = found.steps[i];
        const auto bend = static_cast<std::size_t>(step.bend);
        CHECK((made >> bend & 1U) == 0);
        CHECK_FALSE(sweep.hit(bend, made));
        const auto gauge = sweep.gauge(bend, made, step.start_gauged);
        REQUIRE(gauge);
        CHECK(gauge->stop == step.stop);
        CHECK(gauge->against == step.against);
        CHECK(step.datum_up == problem.bends[bend].up);
        const bool turned = i > 0 && (found.steps[i - 1].datum_up != step.datum_up ||
                                      found.steps[i - 1].start_gauged != step.start_gauged);
        CHECK(step.turned == turned);
        turns += turned ? 1 : 0;
        made |= plan::MadeBends{1} << bend;
    }
    CHECK(turns == found.turns);
}

bool blocked_by(const BendSequence& found, int bend, int leg, BendObstacle obstacle) {
    return std::any_of(found.blocked.begin(), found.blocked.end(), [&](const auto& block) {
        return block.bend == bend && block.leg == leg && block.obstacle == obstacle;
    });
}

} // namespace

TEST_CASE("a U narrower than the punch is deep cannot be bent, and its leg is named") {
    const auto found = plan::order_bends(bend_problem({60, 16, 60}, {{}, {}}));
    CHECK(found.steps.empty());
    REQUIRE(found.blocked.size() == 1);
    CHECK(blocked_by(found, 1, 0, BendObstacle::punch));
}

TEST_CASE("a wide U is bent without turning it over") {
    const auto problem = bend_problem({40, 120, 40}, {{}, {}});
    const auto found = plan::order_bends(problem);
    REQUIRE(found.steps.size() == 2);
    check_steps(problem, found);
    CHECK(found.blocked.empty());
}

TEST_CASE("a Z is turned over once") {
    const auto problem = bend_problem({40, 70, 40}, {{90, true}, {90, false}});
    const auto found = plan::order_bends(problem);
    REQUIRE(found.steps.size() == 2);
    check_steps(problem, found);
    CHECK(found.turns == 1);
    CHECK(found.steps[0].datum_up != found.steps[1].datum_up);
}

TEST_CASE("a Z whose web is narrower than the die is blocked by the die") {
    // Web 15: the leg that hangs down stands over the block, which reaches 20 from the punch line.
    const auto found = plan::order_bends(bend_problem({40, 15, 40}, {{90, true}, {90, false}}));
    CHECK(found.steps.empty());
    CHECK(blocked_by(found, 1, 0, BendObstacle::die));
}

TEST_CASE("a long hanging leg meets the bed only where the bed reaches") {
    // Web 35: beside the block, which reaches 20, but over the bed, which reaches 40 and lies 60
    // below. A hanging leg of 40 stays above it, one of 90 does not.
    const std::vector<TurnedBend> z{{90, true}, {90, false}};
    CHECK(plan::order_bends(bend_problem({40, 35, 40}, z)).steps.size() == 2);
    const auto deep = plan::order_bends(bend_problem({90, 35, 90}, z));
    CHECK(blocked_by(deep, 1, 0, BendObstacle::bed));
    auto narrow = brake_outline();
    narrow.bed_width = millimetres(40.0);
    CHECK(plan::order_bends(bend_problem({90, 35, 90}, z, narrow)).steps.size() == 2);
}

TEST_CASE("parts of one plan that differ in one number are searched each on its own") {
    const std::vector<TurnedBend> z{{90, true}, {90, false}};
    auto narrow = brake_outline();
    narrow.bed_width = millimetres(40.0);
    plan::BendOrders orders;
    for (int round = 0; round < 2; ++round) { // found, then remembered
        CHECK(orders.of(bend_problem({90, 35, 90}, z)).steps.empty());
        CHECK(orders.of(bend_problem({90, 35, 90}, z, narrow)).steps.size() == 2);
        CHECK(orders.of(bend_problem({40, 70, 40}, z)).turns == 1);
        CHECK(orders.of(bend_problem({40, 120, 40}, {{}, {}})).turns == 0);
        CHECK(orders.of(bend_problem({40, 15, 40}, z)).blocked.size() == 1);
    }
}

TEST_CASE("a hat finds an order") {
    const auto problem =
        bend_problem({40, 50, 120, 50, 40}, {{90, true}, {90, false}, {90, false}, {90, true}});
    const auto found = plan::order_bends(problem);
    REQUIRE(found.steps.size() == 4);
    check_steps(problem, found);
}

TEST_CASE("lips that point inwards are bent before the sides") {
    const auto problem = bend_problem({20, 60, 180, 60, 20}, {{}, {}, {}, {}});
    const auto found = plan::order_bends(problem);
    REQUIRE(found.steps.size() == 4);
    check_steps(problem, found);
    // With its side up, the base stands where punch and ram come down on the lip's bend.
    const auto place = [&](int bend) {
        std::size_t i = 0;
        while (found.steps[i].bend != bend)
            ++i;
        return i;
    };
    CHECK(place(0) < place(1));
    CHECK(place(3) < place(2));
    plan::BendSweep sweep(problem);
    CHECK(sweep.hit(0, 0b0010));
    CHECK_FALSE(sweep.hit(0, 0b0000));
}

TEST_CASE("a wide run is stopped by the ram when the punch is short") {
    auto tools = brake_outline();
    tools.punch_height = millimetres(25.0); // the ram, 30 to each side, hangs lower than 30 rises
    const auto found = plan::order_bends(bend_problem({100, 100}, {{}}, tools));
    REQUIRE(found.blocked.size() == 1);
    CHECK(found.blocked[0].obstacle == BendObstacle::ram);
}

TEST_CASE("a blunt punch does not reach into a sharp bend") {
    const auto found = plan::order_bends(bend_problem({100, 100}, {{120, true}}));
    REQUIRE(found.blocked.size() == 1); // opening angle 60 under a wedge of 85
    CHECK(found.blocked[0].obstacle == BendObstacle::punch);
    auto slim = brake_outline();
    slim.punch_included = degrees(60.0);
    CHECK(plan::order_bends(bend_problem({100, 100}, {{120, true}}, slim)).steps.size() == 1);
}

TEST_CASE("metal must go between the open tools") {
    auto tools = brake_outline();
    tools.open_height = millimetres(162.0); // 60 + 100 + 2 thick
    CHECK(plan::order_bends(bend_problem({50, 50}, {{}}, tools)).steps.size() == 1);
    tools.open_height = millimetres(161.9);
    const auto found = plan::order_bends(bend_problem({50, 50}, {{}}, tools));
    REQUIRE(found.blocked.size() == 1);
    CHECK(found.blocked[0].obstacle == BendObstacle::open_height);
}

TEST_CASE("the stop is set to the flat, then to the outside of a leg that stands") {
    const auto problem = bend_problem({40, 120, 50}, {{}, {}});
    const auto found = plan::order_bends(problem);
    REQUIRE(found.steps.size() == 2);
    // Against a free end: outside leg less half the deduction. Against a standing leg: the outside
    // length between both bends less half the deduction of the one being made.
    const double half = quantity::to_millimetres(problem.bends[0].half_deduction);
    for (const plan::BendStep& step : found.steps) {
        double outside = 120.0;
        if (step.against < 0)
            outside = step.start_gauged ? (step.bend == 0 ? 40.0 : 160.0 - 2.0 * half)
                                        : (step.bend == 1 ? 50.0 : 170.0 - 2.0 * half);
        CHECK(quantity::to_millimetres(step.stop) == doctest::Approx(outside - half));
    }
}

TEST_CASE("a standing leg that leans away gives the stop no edge") {
    const auto problem = bend_problem({40, 60, 40}, {{45, true}, {90, true}});
    const plan::BendSweep sweep(problem);
    CHECK(sweep.gauge(1, 0, true));
    CHECK_FALSE(sweep.gauge(1, 1, true));
    CHECK(sweep.gauge(1, 1, false));
}

TEST_CASE("an edge nearer than the stop comes is no edge") {
    auto tools = brake_outline();
    tools.least_gauge = millimetres(60.0);
    const auto found = plan::order_bends(bend_problem({50, 50}, {{}}, tools));
    REQUIRE(found.blocked.size() == 1);
    CHECK(found.blocked[0].obstacle == BendObstacle::stop);
}

TEST_CASE("500 random parts: the same as every order and end tried") {
    std::mt19937 random(4711);
    const auto below = [&](unsigned n) { return static_cast<int>(random() % n); };
    int possible = 0;
    int impossible = 0;
    for (int part = 0; part < 500; ++part) {
        CAPTURE(part);
        const auto count = static_cast<std::size_t>(1 + below(6));
        std::vector<TurnedBend> bends;
        std::vector<double> legs{14.0 + below(80)};
        for (std::size_t i = 0; i < count; ++i) {
            const double angles[] = {90.0, 90.0, 90.0, 45.0, 30.0, 60.0, 95.0};
            bends.push_back({angles[below(7)], below(2) == 0});
            legs.push_back(14.0 + below(80));
        }
        const auto problem = bend_problem(legs, bends);
        const auto found = plan::order_bends(problem);
        EveryOrder every(problem);
        const int fewest = every.fewest();
        if (fewest >= 0) {
            ++possible;
            REQUIRE(found.steps.size() == count);
            CHECK(found.turns == fewest);
            check_steps(problem, found);
        } else {
            ++impossible;
            CHECK(found.steps.empty());
            CHECK(found.blocked.size() == count - every.most_made());
        }
    }
    CHECK(possible > 100); // both kinds are tried
    CHECK(impossible > 100);
}

TEST_CASE("taller legs and wider tools never unblock a bend") {
    std::mt19937 random(815);
    const auto below = [&](unsigned n) { return static_cast<int>(random() % n); };
    for (int part = 0; part < 300; ++part) {
        CAPTURE(part);
        std::vector<double> legs{20.0 + below(100)};
        std::vector<TurnedBend> bends;
        for (std::size_t i = 0; i < 3; ++i) {
            bends.push_back({90.0, below(2) == 0});
            legs.push_back(20.0 + below(100));
        }
        auto wide = brake_outline();
        wide.die_width += millimetres(below(30));
        wide.punch_width += millimetres(below(30));
        wide.bed_width += millimetres(below(30));
        wide.ram_width += millimetres(below(30));
        const auto usual = plan::order_bends(bend_problem(legs, bends));
        const auto harder = plan::order_bends(bend_problem(legs, bends, wide));
        if (usual.steps.empty())
            CHECK(harder.steps.empty());
    }
}
