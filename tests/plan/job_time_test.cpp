// The time of a job against rows worked by hand: core/plan/job_time.cpp.
//
// The figures of the rows are invented (no time is a standard); the structure is common practice,
// no source. The arithmetic stands beside each.

#include "plan/job_time.h"

#include "fixture.h"

using namespace treadle;
using namespace treadle::test;
using quantity::minutes;
using quantity::pounds;
using quantity::seconds;

namespace {

equipment::WorkTimes round_times() {
    equipment::WorkTimes times;
    times.new_station = minutes(8.0);
    times.new_tool = minutes(4.0);
    times.stroke = seconds(4.0);
    times.position = seconds(5.0);
    times.first_piece = minutes(2.0);
    times.handling = {{pounds(10.0), seconds(10.0)}, {pounds(50.0), seconds(25.0)}};
    times.labour_per_hour = 60.0;
    return times;
}

/// Ten plates of six holes, 3.4 lb each; `second` of the six have the other size.
Bench six_holes(int second) {
    Bench bench;
    bench.shop.rules.times = round_times();
    job::Part part = plate(inches(0.25), inches(4.0), inches(12.0));
    part.count = 10;
    const auto row = [](Length size, Length y, int columns) {
        job::Punch punch = one_hole(size, inches(1.5), y);
        punch.at.columns = columns;
        punch.at.column_pitch = inches(1.75);
        return punch;
    };
    part.operations.emplace_back(row(inches(0.8125), inches(1.25), 6 - second));
    if (second > 0)
        part.operations.emplace_back(row(inches(1.0625), inches(2.75), second));
    bench.job.parts.push_back(std::make_shared<const job::Part>(part));
    return bench;
}

base::Result<plan::JobTime> time_of(const Bench& bench) {
    return plan::job_time(plan::make_plan(bench.job, bench.shop, bench.catalog), bench.shop);
}

} // namespace

TEST_CASE("ten plates of six holes take what the sum by hand says") {
    // 10 x (6 x (4 + 5) + 10) s = 640 s; 8 min set-up, 2 min check: 1240 s = 20.67 min
    const auto time = time_of(six_holes(0));
    REQUIRE(time.ok());
    CHECK(quantity::to_minutes(time->total) == doctest::Approx(1240.0 / 60.0));
    REQUIRE(time->set_ups.size() == 1);
    CHECK(quantity::to_seconds(time->set_ups[0].strokes) == doctest::Approx(540.0));
    CHECK(quantity::to_seconds(time->set_ups[0].handling) == doctest::Approx(100.0));
    REQUIRE(time->labour.has_value()); // 60 an hour is 1 a minute
    CHECK(*time->labour == doctest::Approx(1240.0 / 60.0));
    CHECK(plan::time_words(time) == "20.7 min, labour 20.67");
}

TEST_CASE("a second hole size costs a change of tools and a second handling") {
    // 10 x (6 x 9 + 2 x 10) s = 740 s; 8 + 4 min set-ups, 2 min check: 1580 s = 26.33 min
    const auto time = time_of(six_holes(2));
    REQUIRE(time.ok());
    REQUIRE(time->set_ups.size() == 2);
    CHECK(quantity::to_minutes(time->total) == doctest::Approx(1580.0 / 60.0));
    CHECK(time->set_ups[0].change == minutes(8.0));
    CHECK(time->set_ups[1].change == minutes(4.0));
    CHECK(time->set_ups[1].checks == Duration{});
}

TEST_CASE("two operations in one set-up take a piece in hand once") {
    Bench bench = six_holes(0);
    job::Part part = *bench.job.parts[0];
    part.operations.push_back(part.operations[0]);
    std::get<job::Punch>(part.operations[1]).at.y = inches(2.75);
    bench.job.parts[0] = std::make_shared<const job::Part>(part);
    const auto time = time_of(bench);
    REQUIRE(time.ok());
    REQUIRE(time->set_ups.size() == 1);
    CHECK(quantity::to_seconds(time->set_ups[0].handling) == doctest::Approx(100.0));
    CHECK(quantity::to_seconds(time->set_ups[0].strokes) == doctest::Approx(1080.0));
}

TEST_CASE("handling goes by the weight of the piece, and ends with the last band") {
    Bench bench = six_holes(0);
    const auto weight = plan::make_plan(bench.job, bench.shop, bench.catalog).parts[0]->mass_each;
    bench.shop.rules.times.handling = {{weight, seconds(7.0)}, {pounds(50.0), seconds(25.0)}};
    CHECK(quantity::to_seconds(time_of(bench)->set_ups[0].handling) == doctest::Approx(70.0));
    bench.shop.rules.times.handling[0].up_to = weight * 0.999;
    CHECK(quantity::to_seconds(time_of(bench)->set_ups[0].handling) == doctest::Approx(250.0));
    bench.shop.rules.times.handling.pop_back();
    const auto none = time_of(bench);
    REQUIRE_FALSE(none.ok());
    CHECK(none.refusal().field == "rules.times.handling");
    CHECK(plan::time_words(none) ==
          "not computed: no handling time in the house rules covers the weight of P1");
}

TEST_CASE("a time that is not known leaves the whole not computed, and is named") {
    const auto field = [](auto forget) {
        Bench bench = six_holes(2);
        forget(bench.shop.rules.times);
        const auto time = time_of(bench);
        return time.ok() ? std::string("computed") : time.refusal().field;
    };
    using Times = equipment::WorkTimes;
    CHECK(field([](Times& t) { t.new_station.reset(); }) == "rules.times.new_station_s");
    CHECK(field([](Times& t) { t.new_tool.reset(); }) == "rules.times.new_tool_s");
    CHECK(field([](Times& t) { t.stroke.reset(); }) == "rules.times.stroke_s");
    CHECK(field([](Times& t) { t.position.reset(); }) == "rules.times.position_s");
    CHECK(field([](Times& t) { t.first_piece.reset(); }) == "rules.times.first_piece_s");
    CHECK(field([](Times& t) { t.labour_per_hour.reset(); }) == "computed");
    CHECK(field([](Times& t) { t = Times{}; }) == "rules.times.new_station_s");
}

TEST_CASE("more pieces, strokes or slower hands never take less time") {
    const auto total = [](auto change) {
        Bench bench = six_holes(2);
        change(bench);
        return quantity::to_seconds(time_of(bench)->total);
    };
    const double usual = total([](Bench&) {});
    CHECK(total([](Bench& b) {
              job::Part part = *b.job.parts[0];
              part.count = 11;
              b.job.parts[0] = std::make_shared<const job::Part>(part);
          }) == doctest::Approx(usual + 74.0)); // one piece more: 6 x 9 + 2 x 10 s
    CHECK(total([](Bench& b) { b.shop.rules.times.stroke = seconds(5.0); }) ==
          doctest::Approx(usual + 60.0)); // 60 strokes, a second each
}

TEST_CASE("one piece in so many costs a check in every set-up of its part") {
    const auto total = [](int second, std::optional<int> every) {
        Bench bench = six_holes(second);
        bench.shop.rules.check_every = every;
        const auto time = time_of(bench);
        REQUIRE(time.ok());
        double sum = 0.0; // what the steps take is what the set-ups take
        for (const plan::SetUpTime& set_up : time->set_ups)
            sum += quantity::to_seconds(set_up.total());
        CHECK(sum == doctest::Approx(quantity::to_seconds(time->total)));
        return quantity::to_seconds(time->total);
    };
    CHECK(total(0, std::nullopt) == doctest::Approx(1240.0));
    CHECK(total(0, 10) == doctest::Approx(1240.0));        // the first of ten is all
    CHECK(total(0, 9) == doctest::Approx(1360.0));         // and the tenth: 2 min
    CHECK(total(0, 5) == doctest::Approx(1360.0));         // and the sixth
    CHECK(total(0, 4) == doctest::Approx(1480.0));         // and the fifth and ninth
    CHECK(total(2, 5) == doctest::Approx(1580.0 + 240.0)); // in both set-ups
}

TEST_CASE("times are said in minutes, long ones in hours, and invented ones as such") {
    CHECK(plan::duration_words(seconds(59.0)) == "1.0 min");
    CHECK(plan::duration_words(minutes(59.94)) == "59.9 min");
    CHECK(plan::duration_words(minutes(59.95)) == "1 h 00 min");
    CHECK(plan::duration_words(minutes(70.3)) == "1 h 11 min");
    CHECK(plan::duration_words(minutes(125.0)) == "2 h 05 min");
    CHECK(plan::duration_words(minutes(119.5)) == "2 h 00 min");
    Bench bench = six_holes(0);
    bench.shop.rules.times.invented = true;
    bench.shop.rules.times.labour_per_hour.reset();
    CHECK(plan::time_words(time_of(bench)) == "20.7 min (invented times)");
}
