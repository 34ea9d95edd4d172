// Which of the shop's machines do the whole job, and what stops the others.

#include "plan/machines.h"

#include <random>

#include "fixture.h"

using namespace treadle;
using namespace treadle::test;
using plan::Outcome;

namespace {

job::PartRef shared(job::Part part) { return std::make_shared<const job::Part>(std::move(part)); }

/// 13/16 hole through 3/8 A36 asks for pi x 0.8125 x 0.375 x 64 ksi = 61.3 kip: 30.7 tons.
job::Part hole_plate() {
    job::Part part = plate(inches(0.375), inches(6.0), inches(10.0));
    part.mark = "BP1";
    part.operations = {job::Cut{}, one_hole(inches(0.8125), inches(3.0), inches(3.0))};
    return part;
}

job::Part bent_plate() {
    job::Part part = plate(inches(0.25), inches(6.0), Length{});
    part.mark = "BK1";
    part.legs = {inches(4.0), inches(4.0)};
    part.operations = {job::Bend{degrees(90.0), Length{}, true}};
    return part;
}

equipment::Machine small_machine() {
    equipment::Machine machine = shop().machine;
    machine.name = "Truck machine";
    machine.stations[0].force = us_tons(25.0);
    return machine;
}

std::vector<plan::MachineAnswer> answers(const Bench& bench) {
    return plan::compare_machines(bench.job, bench.shop, bench.catalog);
}

} // namespace

TEST_CASE("the machine in use answers first, the others in their order") {
    Bench bench;
    bench.job.parts = {shared(hole_plate())};
    bench.shop.other_machines = {small_machine(), bench.shop.machine};
    const auto all = answers(bench);
    REQUIRE(all.size() == 3);
    CHECK(all[0].does_whole_job);
    CHECK_FALSE(all[1].does_whole_job);
    CHECK(all[2].does_whole_job);
    CHECK(plan::machine_at(bench.shop, 1).name == "Truck machine");
    CHECK(plan::shop_with(bench.shop, 1).machine.name == "Truck machine");
    CHECK(plan::shop_with(bench.shop, 1).other_machines[0].name == "Test machine");
}

TEST_CASE("what stops a machine is named with part, operation and the check that decides") {
    Bench bench;
    bench.job.parts = {shared(bent_plate()), shared(hole_plate())};
    bench.shop.other_machines = {small_machine()};
    const auto all = answers(bench);
    REQUIRE(all[1].stops.size() == 1);
    const plan::Stop& stop = all[1].stops[0];
    CHECK(stop.part == 1);
    CHECK(stop.operation == 1);
    // 58 of 80 ksi: the weakest of the grade asks for 22.2 tons, so a certificate may help.
    CHECK(stop.outcome == Outcome::fits_up_to);
    REQUIRE(stop.deciding);
    CHECK(stop.deciding->rule == plan::Rule::force);
    CHECK(plan::count_of(all[1], Outcome::fits) == 2);
    CHECK(plan::count_of(all[1], Outcome::fits_up_to) == 1);
    CHECK(plan::stop_words(stop, all[1], bench.job, bench.shop) ==
          "BP1, Punch 13/16 round: fits up to 65 ksi, force: The strongest of the grade needs "
          "30.7 ton, the station gives 25.0 ton.");
    CHECK(plan::machine_words(all[1], bench.job, bench.shop) ==
          "does 1 of 3 operations only with a certificate. BP1, Punch 13/16 round: fits up to 65 "
          "ksi, force: The strongest of the grade needs 30.7 ton, the station gives 25.0 ton.");
}

TEST_CASE("a machine without the station is told so") {
    Bench bench;
    bench.job.parts = {shared(bent_plate()), shared(hole_plate())};
    equipment::Machine bare = bench.shop.machine;
    bare.stations.erase(bare.stations.begin()); // the punch
    bare.attachments.clear();
    bench.shop.other_machines = {bare};
    const auto all = answers(bench);
    REQUIRE(all[1].stops.size() == 2);
    for (const plan::Stop& stop : all[1].stops) {
        CHECK(stop.outcome == Outcome::does_not_fit);
        CHECK(stop.deciding->rule == plan::Rule::no_station);
    }
    CHECK(plan::machine_words(all[1], bench.job, bench.shop) ==
          "does not do 2 of 3 operations. BK1, Bend 90 deg up: does not fit, no station for it: No "
          "brake fits this machine.");
}

TEST_CASE("a datum that another machine lacks is named as that machine's") {
    Bench bench;
    bench.job.parts = {shared(hole_plate())};
    equipment::Machine unread = bench.shop.machine;
    unread.stations[0].name = "Truck punch";
    unread.stations[0].throat.reset();
    bench.shop.other_machines = {unread};
    const auto all = answers(bench);
    REQUIRE(all[1].stops.size() == 1);
    CHECK(all[1].stops[0].outcome == Outcome::cannot_be_said);
    CHECK(all[1].stops[0].deciding->missing == "machine.stations[0].throat");
    CHECK(plan::machine_words(all[1], bench.job, bench.shop) ==
          "cannot be said for 1 of 2 operations. BP1, Punch 13/16 round: cannot be said, throat: "
          "Not known: throat of Truck punch.");
}

TEST_CASE("the worst of the stops is the one that is said") {
    Bench bench;
    bench.job.parts = {shared(hole_plate()), shared(bent_plate())};
    equipment::Machine mixed = small_machine();
    mixed.attachments.clear();
    bench.shop.other_machines = {mixed};
    const auto all = answers(bench);
    REQUIRE(all[1].stops.size() == 2);
    CHECK(all[1].stops[0].outcome == Outcome::fits_up_to);
    CHECK(plan::machine_words(all[1], bench.job, bench.shop).rfind("does not do 1 of 3", 0) == 0);
}

TEST_CASE("how much is left over is that of the tightest force") {
    Bench bench;
    bench.job.parts = {shared(hole_plate())};
    bench.shop.machine.stations[1].rated = {{inches(2.0), inches(12.0), {}, {}}};
    const auto all = answers(bench);
    REQUIRE(all[0].does_whole_job);
    REQUIRE(all[0].least_margin);
    CHECK(*all[0].least_margin == doctest::Approx(1.0 - 30.63 / 50.0).epsilon(0.001));
    CHECK(plan::machine_words(all[0], bench.job, bench.shop) ==
          "does the whole job, 38 % to spare where it is tightest");
}

TEST_CASE("a part that cannot be planned stops every machine once") {
    Bench bench;
    job::Part part = hole_plate();
    part.grade = "nobody's";
    bench.job.parts = {shared(part)};
    bench.shop.other_machines = {small_machine()};
    for (const plan::MachineAnswer& answer : answers(bench)) {
        CHECK_FALSE(answer.does_whole_job);
        REQUIRE(answer.stops.size() == 1);
        CHECK(answer.stops[0].operation == plan::k_none);
        CHECK(plan::stop_words(answer.stops[0], answer, bench.job, bench.shop).rfind("BP1: ", 0) ==
              0);
        CHECK(plan::count_of(answer, Outcome::cannot_be_said) == 2);
    }
}

TEST_CASE("without work nothing is promised") {
    Bench bench;
    CHECK_FALSE(answers(bench)[0].does_whole_job);
    CHECK(plan::machine_words(answers(bench)[0], bench.job, bench.shop) == "no work here");
}

TEST_CASE("200 random machines answer as the plan does with each of them in use") {
    std::mt19937 engine(4711);
    const auto between = [&engine](double low, double high) {
        return low + (high - low) * (static_cast<double>(engine()) / 4294967295.0);
    };
    Bench bench;
    bench.job.parts = {shared(bent_plate()), shared(hole_plate())};
    std::array<int, 2> seen{};
    for (int i = 0; i < 10; ++i) {
        bench.shop.other_machines.assign(20, bench.shop.machine);
        for (equipment::Machine& machine : bench.shop.other_machines) {
            machine.stations[0].force = us_tons(between(15.0, 60.0));
            machine.stations[0].throat = inches(between(2.0, 6.0));
            machine.attachments[0].force = us_tons(between(5.0, 40.0));
            if (between(0.0, 1.0) < 0.2)
                machine.stations[1].blade.reset();
        }
        const auto all = answers(bench);
        REQUIRE(all.size() == 21);
        for (const plan::MachineAnswer& answer : all) {
            const auto made = plan::make_plan(
                bench.job, plan::shop_with(bench.shop, answer.machine), bench.catalog);
            CHECK(answer.does_whole_job == (made.outcome == Outcome::fits));
            Outcome worst = Outcome::fits;
            for (const plan::Stop& stop : answer.stops)
                worst = plan::worse(worst, stop.outcome);
            CHECK(worst == made.outcome);
            ++seen[answer.does_whole_job ? 1 : 0];
        }
    }
    CHECK(seen[0] > 20); // both answers were asked for
    CHECK(seen[1] > 20);
}
