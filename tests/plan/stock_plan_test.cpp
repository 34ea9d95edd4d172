// Answers put back into bars, stops and sums: stock_plan.cpp.

#include "plan/stock_bench.h"

#include <random>

using namespace treadle;
using test::fault_in;
using test::StockBench;

namespace {

StockBench random_bench(unsigned seed) {
    std::mt19937 random(seed);
    const auto pick = [&](int least, int most) {
        return least + static_cast<int>(random() % static_cast<unsigned>(most - least + 1));
    };
    StockBench bench;
    bench.shop.rules.saw_kerf = inches(0.0625 * pick(1, 3));
    if (pick(0, 1) == 1)
        bench.shop.rules.end_trim = inches(0.5);
    if (pick(0, 1) == 1)
        bench.shop.rules.keep_drop = inches(12.0);
    bench.shear().least_piece = inches(pick(0, 3));
    if (pick(0, 2) == 0)
        bench.shear().slug_loss = inches(0.5);
    const bool sawn = pick(0, 2) == 0;
    for (int i = pick(1, 6); i > 0; --i)
        bench.add(inches(10.0 + 0.0625 * pick(0, 1200)),
                  pick(1, 9),
                  sawn ? std::vector<job::Operation>{} : std::vector<job::Operation>{job::Cut{}});
    bench.bar(inches(240.0));
    if (pick(0, 1) == 1)
        bench.bar(inches(144.0), pick(1, 3));
    for (int i = pick(0, 3); i > 0; --i)
        bench.drop(inches(20.0 + pick(0, 120)));
    return bench;
}

} // namespace

TEST_CASE("in any plan every piece is cut once and the bars add up") {
    int drops = 0;
    for (unsigned seed = 1; seed <= 60; ++seed) {
        CAPTURE(seed);
        StockBench bench = random_bench(seed);
        const plan::GroupPlan& made = bench.solve();
        REQUIRE(made.has_plan);
        CHECK(fault_in(bench.group(), made) == "");
        CHECK(made.bound <= made.cost);
        drops += made.drops_used;
    }
    CHECK(drops > 10);
}

TEST_CASE("one more drop never costs more, one more piece never less") {
    for (unsigned seed = 1; seed <= 25; ++seed) {
        CAPTURE(seed);
        StockBench bench = random_bench(seed);
        const plan::GroupPlan before = bench.solve();
        const plan::StockAim aim = bench.group().aim;
        StockBench with_drop = bench;
        with_drop.drop(inches(90.0));
        const plan::GroupPlan less = with_drop.solve();
        StockBench with_piece = bench;
        with_piece.add(inches(200.0), 1, bench.job.parts[0]->operations);
        const plan::GroupPlan more = with_piece.solve();
        REQUIRE(before.proven);
        REQUIRE(less.proven);
        REQUIRE(more.proven);
        REQUIRE(with_drop.group().aim == aim);
        REQUIRE(with_piece.group().aim == aim);
        CHECK(less.cost <= before.cost);
        CHECK(more.cost >= before.cost);
    }
}

TEST_CASE("a drop is used before a bar is cut, and owned bars before any is bought") {
    StockBench bench;
    bench.add(inches(60.0), 9); // 1 on the drop, 4 a bar
    bench.drop(inches(61.5));
    bench.bar(inches(240.0), 1);
    bench.bar(inches(240.0)).price = 20.0;
    const plan::GroupPlan& made = bench.solve();
    CHECK(made.drops_used == 1);
    CHECK(made.whole_bars == 2);
    REQUIRE(made.use.size() == 2);
    CHECK(made.use[0].pull == 1);
    CHECK(made.use[0].buy == 1);
    CHECK(made.use[1].pull == 1);
    CHECK(made.sums.price == 20.0);
    CHECK(made.bars.front().kind == 1); // the drop first
    CHECK(quantity::to_inches(made.bars.front().drop) == doctest::Approx(1.5));
}

TEST_CASE("masses are of the bars, price of what is bought; unknown stays unknown") {
    StockBench bench;
    bench.add(inches(60.0), 5);
    bench.bar(inches(240.0)).price = 20.0;
    bench.shop.rules.keep_drop = inches(100.0);
    const plan::GroupPlan made = bench.solve();
    // 1 in square of 7850 kg/m3: 0.12863 kg an inch; 480 taken, 300 parts, 180 kept.
    CHECK(quantity::to_kilograms(*made.sums.taken) ==
          doctest::Approx(480 * 0.128639).epsilon(1e-4));
    CHECK(quantity::to_kilograms(*made.sums.parts) ==
          doctest::Approx(300 * 0.128639).epsilon(1e-4));
    CHECK(quantity::to_kilograms(*made.sums.kept) == doctest::Approx(180 * 0.128639).epsilon(1e-4));
    CHECK(quantity::to_kilograms(*made.sums.scrap) == doctest::Approx(0.0));
    CHECK(*made.sums.bought == *made.sums.taken);
    CHECK(made.sums.price == 40.0);
    CHECK(bench.stock.sums.price == 40.0);
    REQUIRE(made.kept.size() == 1);
    CHECK(made.kept[0].length == inches(180.0));
    bench.shop.rack[0].price.reset();
    bench.catalog.grades.rows[0].density = Density{};
    const plan::GroupPlan& bare = bench.solve();
    CHECK(bare.has_plan);
    CHECK_FALSE(bare.sums.price.has_value());
    CHECK_FALSE(bare.sums.taken.has_value());
    CHECK_FALSE(bench.stock.sums.scrap.has_value());
}

TEST_CASE("a rack that does not reach says so, with or without whole bars in it") {
    StockBench bench;
    bench.add(inches(60.0), 9);
    bench.bar(inches(240.0), 2);
    CHECK(bench.solve().falls_short);
    CHECK(bench.stock.groups[0].done);
    CHECK_FALSE(bench.stock.complete);
    bench.shop.rack[0].drop = true;
    CHECK(bench.solve().falls_short);
    bench.shop.rack[0].count = 3;
    CHECK(bench.solve().drops_used == 3);
    CHECK(bench.stock.complete);
    CHECK(bench.stock.proven);
}

TEST_CASE("an answer to another list is none, and without a search there is no plan") {
    StockBench bench;
    bench.add(inches(60.0), 9);
    bench.bar(inches(240.0));
    bench.solve();
    StockBench other = bench;
    other.add(inches(50.0), 1);
    other.solve();
    const auto answers = plan::stock_answers(bench.groups, test::k_stock_work);
    CHECK(plan::stock_plan(bench.groups, answers).groups[0].has_plan);
    CHECK_FALSE(plan::stock_plan(other.groups, answers).groups[0].has_plan);
    const auto nothing = plan::stock_plan(bench.groups, {cutting::CutAnswer{}});
    CHECK_FALSE(nothing.groups[0].has_plan);
    CHECK_FALSE(nothing.groups[0].falls_short);
    CHECK_FALSE(nothing.groups[0].done);
}

TEST_CASE("a part that cannot be made is listed all the same, and marked") {
    StockBench bench;
    bench.section.width = inches(1.25); // the plate says 1
    bench.add(inches(60.0), 4);
    bench.bar(inches(240.0));
    CHECK(bench.bars() == 1);
    CHECK(bench.group().pieces[0].outcome == plan::Outcome::does_not_fit);
}

TEST_CASE("parts of one length share bars alike, each with its own mark") {
    StockBench bench;
    bench.add(inches(60.0), 6);
    bench.add(inches(60.0), 10);
    bench.bar(inches(240.0));
    CHECK(bench.bars() == 4);
    const plan::GroupPlan& made = bench.stock.groups[0];
    CHECK(fault_in(bench.group(), made) == "");
    REQUIRE(made.bars.size() == 3); // 4 of P1; 2 and 2; 2 x 4 of P2
    CHECK(made.bars[2].times == 2);
    CHECK(made.bars[1].cuts[1].piece == 0);
    CHECK(made.bars[1].cuts[2].piece == 1);
}

TEST_CASE("lengths between two steps are rounded up, and what that saves is no cut") {
    StockBench bench;
    bench.job.style = {UnitSystem::metric, 16};
    bench.shear().least_piece = millimetres(40.0);
    bench.add(millimetres(599.95), 10);
    bench.bar(millimetres(6000.0));
    CHECK(bench.bars() == 1);
    const plan::BarPlan& bar = bench.stock.groups[0].bars[0];
    CHECK(bar.cuts.back().last_is_end);
    CHECK(quantity::to_millimetres(bar.drop) == doctest::Approx(0.5));
    CHECK_FALSE(bar.kept);
    bench.shop.rack[0].length = millimetres(5999.9); // 5999.5 would do, 10 x 600.0 does not
    CHECK(bench.bars() == 2);
}
