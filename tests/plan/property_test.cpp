// What must hold for any job: harder work never turns a refusal into a fit.

#include <random>

#include "fixture.h"

using namespace treadle;
using namespace treadle::test;
using plan::Outcome;

namespace {

/// Seeded and printed, so that a failure can be repeated.
class Random {
public:
    explicit Random(unsigned seed) : engine_(seed) { INFO("seed ", seed); }
    double between(double low, double high) {
        return low + (high - low) * (static_cast<double>(engine_()) / 4294967295.0);
    }
    int below(int n) { return static_cast<int>(engine_() % static_cast<unsigned>(n)); }

private:
    std::mt19937 engine_;
};

struct Case {
    job::Part part;
    job::Operation operation;
};

Case random_case(Random& random) {
    Case c;
    c.part = plate(inches(random.between(0.05, 0.9)),
                   inches(random.between(1.0, 14.0)),
                   inches(random.between(1.0, 40.0)));
    switch (random.below(4)) {
    case 0:
        c.operation = one_hole(inches(random.between(0.2, 2.6)),
                               inches(random.between(0.0, 40.0)),
                               inches(random.between(0.0, 14.0)));
        break;
    case 1:
        c.operation = job::Cut{};
        break;
    case 2: {
        job::Notch notch;
        notch.along = inches(random.between(0.2, 5.0));
        notch.depth = inches(random.between(0.2, 3.5));
        c.operation = notch;
        break;
    }
    default: {
        job::Bend bend;
        bend.angle = degrees(random.between(10.0, 120.0));
        c.part.legs = {inches(random.between(0.5, 8.0)), inches(random.between(0.5, 8.0))};
        c.operation = bend;
        break;
    }
    }
    return c;
}

/// No outcome may get better from `easy` to `hard`.
void never_easier(Outcome easy, Outcome hard) { CHECK(hard >= easy); }

} // namespace

TEST_CASE("stronger metal never makes anything easier") {
    Random random(41);
    for (int i = 0; i < 10000; ++i) {
        const Case c = random_case(random);
        Bench easy;
        Bench hard;
        const double low = random.between(30.0, 70.0);
        const double high = low + random.between(0.0, 40.0);
        easy.catalog.grades.rows[0].bands = {{inches(4.0), ksi(30.0), ksi(low), ksi(high)}};
        const double more = random.between(1.0, 1.5);
        hard.catalog.grades.rows[0].bands = {
            {inches(4.0), ksi(30.0), ksi(low * more), ksi(high * more)}};
        never_easier(easy.plan(c.part, c.operation).outcome,
                     hard.plan(c.part, c.operation).outcome);
    }
}

TEST_CASE("thicker metal never makes anything easier") {
    Random random(43);
    for (int i = 0; i < 10000; ++i) {
        const Case c = random_case(random);
        Bench bench;
        bench.shop.crib.vees = {{inches(random.between(0.3, 4.0)), inches(10.0), 1},
                                {inches(random.between(0.3, 4.0)), inches(10.0), 1}};
        job::Part thick = c.part;
        thick.section.thickness = thick.section.thickness * random.between(1.0, 1.6);
        never_easier(bench.plan(c.part, c.operation).outcome,
                     bench.plan(thick, c.operation).outcome);
    }
}

TEST_CASE("a larger hole or a wider cut never asks for less force") {
    Random random(44);
    for (int i = 0; i < 10000; ++i) {
        const Case c = random_case(random);
        Bench bench;
        const auto force = [](const plan::OperationPlan& plan) {
            const auto* check = find(plan, plan::Rule::force);
            const auto* value = check ? std::get_if<Force>(&check->demand_high) : nullptr;
            return value ? *value : Force{};
        };
        if (const auto* punch = std::get_if<job::Punch>(&c.operation)) {
            job::Punch larger_hole = *punch;
            larger_hole.hole.size = larger_hole.hole.size * random.between(1.0, 1.6);
            CHECK(force(bench.plan(c.part, larger_hole)) >= force(bench.plan(c.part, *punch)));
        }
        if (std::holds_alternative<job::Cut>(c.operation)) {
            job::Part wide = c.part;
            wide.section.width = wide.section.width * random.between(1.0, 1.6);
            never_easier(bench.plan(c.part, job::Cut{}).outcome,
                         bench.plan(wide, job::Cut{}).outcome);
        }
    }
}

TEST_CASE("taking a datum away from the machine never turns into a fit") {
    Random random(45);
    for (int i = 0; i < 10000; ++i) {
        const Case c = random_case(random);
        Bench full;
        Bench less;
        auto& station = less.shop.machine.stations[static_cast<std::size_t>(random.below(5))];
        switch (random.below(6)) {
        case 0:
            station.force.reset();
            break;
        case 1:
            station.base.reset();
            break;
        case 2:
            station.throat.reset();
            break;
        case 3:
            station.stroke.reset();
            break;
        case 4:
            station.rated.clear();
            break;
        default:
            station.least_piece.reset();
            break;
        }
        const Outcome with = full.plan(c.part, c.operation).outcome;
        const Outcome without = less.plan(c.part, c.operation).outcome;
        if (with != Outcome::fits && with != Outcome::fits_up_to)
            CHECK(without >= Outcome::cannot_be_said);
    }
}

TEST_CASE("inch and metric jobs get the same verdicts") {
    Random random(46);
    for (int i = 0; i < 2000; ++i) {
        const Case c = random_case(random);
        Bench inch;
        Bench metric;
        metric.job.style.system = UnitSystem::metric;
        CHECK(inch.plan(c.part, c.operation).outcome == metric.plan(c.part, c.operation).outcome);
    }
}
