// Groups, kinds and lists of what is cut from bars: stock.cpp, stock_list.cpp.
//
// Rows named 7-.. are examples of one-dimensional cutting in a shear shop, worked by arithmetic.

#include "plan/stock_bench.h"

using namespace treadle;
using test::fault_in;
using test::StockBench;

namespace {

const job::Cut k_frame{job::CutSide::length, degrees(45.0), degrees(45.0)};
const job::Cut k_slope{job::CutSide::length, degrees(45.0), degrees(-45.0)};

/// Sawn: no operation cuts it on this machine.
StockBench sawn(Length kerf) {
    StockBench bench;
    bench.shop.rules.saw_kerf = kerf;
    return bench;
}

StockBench frame(Length bar) {
    StockBench bench;
    bench.section.shape = section::Shape::flat;
    bench.section.width = inches(1.5);
    bench.section.thickness = inches(0.25);
    bench.add(inches(15.0), 2, {k_frame});
    bench.add(inches(12.0), 2, {k_frame});
    bench.bar(bar);
    return bench;
}

} // namespace

TEST_CASE("a shear loses nothing, a saw its kerf, a parting blade its slug") {
    StockBench shear; // 4 x 60 = 240
    shear.add(inches(60.0), 8);
    shear.bar(inches(240.0));
    CHECK(shear.bars() == 2);
    CHECK(shear.group().parting == plan::Parting::shear);

    StockBench saw = sawn(inches(0.125)); // 4 x 60 + 3 x 1/8 > 240
    saw.add(inches(60.0), 8, {});
    saw.bar(inches(240.0));
    CHECK(saw.bars() == 3);
    CHECK(saw.group().parting == plan::Parting::saw);

    StockBench blade; // 8 x 29-1/2 = 236; with 7 slugs of 3/4 241-1/4
    blade.add(inches(29.5), 16);
    blade.bar(inches(240.0));
    CHECK(blade.bars() == 2);
    blade.shear().slug_loss = inches(0.75);
    CHECK(blade.bars() == 3);
    CHECK(blade.group().parting == plan::Parting::slug);
}

TEST_CASE("an end that the hold-down cannot grip is left to another bar") {
    StockBench bench; // 5 x 47-1/2 leaves 2-1/2
    bench.add(inches(47.5), 5);
    bench.bar(inches(240.0));
    bench.shear().least_piece = inches(2.5);
    CHECK(bench.bars() == 1);
    bench.shear().least_piece = inches(4.0);
    CHECK(bench.bars() == 2);
    CHECK(fault_in(bench.group(), bench.stock.groups[0]) == "");
}

TEST_CASE("the fewest bars are found where longest first takes one more") {
    StockBench four;
    four.bar(inches(240.0));
    four.add(inches(67.5), 4);
    four.add(inches(52.5), 4);
    four.add(inches(97.5), 4);
    CHECK(four.bars() == 4);
    StockBench three;
    three.bar(inches(240.0));
    three.add(inches(52.5), 4);
    three.add(inches(31.5), 3);
    three.add(inches(84.0), 3);
    three.add(inches(49.5), 3);
    CHECK(three.bars() == 3);
}

TEST_CASE("long lists come out at the numbers printed for them") {
    // Chvatal, Linear Programming, chapter 13 (from memory): 453 of length 100.
    StockBench many;
    many.bar(inches(100.0));
    many.add(inches(45.0), 97);
    many.add(inches(36.0), 610);
    many.add(inches(31.0), 395);
    many.add(inches(14.0), 211);
    CHECK(many.bars() == 453);
    // The example of a public encyclopedia (from memory): 73 of 5600.
    StockBench metric;
    metric.job.style = {UnitSystem::metric, 16};
    metric.bar(millimetres(5600.0));
    const int rows[][2] = {{1380, 22},
                           {1520, 25},
                           {1560, 12},
                           {1710, 14},
                           {1820, 18},
                           {1880, 18},
                           {1930, 20},
                           {2000, 10},
                           {2050, 12},
                           {2100, 14},
                           {2140, 16},
                           {2150, 18},
                           {2200, 20}};
    for (const auto& [length, count] : rows)
        metric.add(millimetres(length), count);
    CHECK(metric.bars() == 73);
    CHECK(fault_in(metric.group(), metric.stock.groups[0]) == "");
}

TEST_CASE("trims come off both ends, and what is left is what the arithmetic says") {
    StockBench bench; // 6000 - 2 x 5 - 5 x 1195 = 15
    bench.job.style = {UnitSystem::metric, 16};
    bench.shop.rules.end_trim = millimetres(5.0);
    bench.bar(millimetres(6000.0));
    bench.add(millimetres(1195.0), 5);
    bench.shear().least_piece = millimetres(15.0);
    CHECK(bench.bars() == 1);
    CHECK(quantity::to_millimetres(bench.stock.groups[0].bars[0].drop) == doctest::Approx(15.0));
    bench.shear().least_piece = millimetres(16.0);
    CHECK(bench.bars() == 2);

    StockBench saw = sawn(inches(0.063)); // 252 - 6 x 36 - 6 x 0.063 = 35.622
    saw.bar(inches(252.0));
    job::Part& part = saw.add(inches(36.0), 6, {});
    CHECK(saw.bars() == 1);
    CHECK(quantity::to_inches(saw.stock.groups[0].bars[0].drop) == doctest::Approx(35.622));
    part.count = 7; // 252.378 with six cuts
    CHECK(saw.bars() == 2);

    StockBench shear;
    shear.bar(inches(252.0));
    shear.add(inches(36.0), 7);
    CHECK(shear.bars() == 1);
    CHECK(shear.stock.groups[0].bars[0].drop == Length{});
    CHECK(shear.stock.groups[0].bars[0].cuts.back().last_is_end);
}

TEST_CASE("a frame's mitres share their cuts: 49-1/2 for an opening of 12 by 9") {
    // 2 (15 - 1-1/2) + 2 (12 - 1-1/2) + 1-1/2 = 49-1/2
    StockBench exact = frame(inches(49.5));
    CHECK(exact.bars() == 1);
    CHECK(exact.group().turned);
    CHECK(exact.stock.groups[0].bars[0].drop == Length{});
    CHECK(exact.stock.groups[0].bars[0].cuts[0].from == Length{});
    StockBench shorter = frame(inches(49.5 - 1.0 / 64.0));
    CHECK(shorter.bars() == 2);
    StockBench longer = frame(inches(60.0));
    CHECK(longer.bars() == 1);
    CHECK(quantity::to_inches(longer.stock.groups[0].bars[0].cuts[3].stop) ==
          doctest::Approx(49.5));
    CHECK(fault_in(longer.group(), longer.stock.groups[0]) == "");
}

TEST_CASE("mitres that cannot nest count their long length") {
    StockBench mixed = frame(inches(54.0)); // 15 + 15 + 12 + 12
    mixed.add(inches(4.0), 1);
    CHECK(mixed.bars() == 2);
    CHECK(mixed.group().shared_mitre == Length{});
    // Turned over, an angle has its standing leg on the wrong side.
    const auto angle = [](const job::Cut& cut) {
        StockBench bench;
        bench.section.shape = section::Shape::angle;
        bench.section.width = bench.section.height = inches(2.0);
        bench.section.thickness = inches(0.25);
        bench.bar(inches(62.0)); // 3 (22 - 2) + 2
        bench.add(inches(22.0), 3, {cut});
        return bench.bars();
    };
    CHECK(angle(k_frame) == 2);
    CHECK(angle(k_slope) == 1);
    // One piece has nobody to share with, and takes its own length.
    StockBench alone = frame(inches(15.0));
    alone.job.parts.pop_back();
    CHECK(alone.bars() == 2);
}

TEST_CASE("a slanting cut takes more of the bar than its kerf") {
    StockBench bench = sawn(inches(0.125));
    bench.section.shape = section::Shape::square_tube;
    bench.section.width = bench.section.height = inches(2.0);
    bench.section.thickness = inches(0.125);
    bench.bar(inches(240.0));
    bench.add(inches(30.0), 2, {k_frame});
    bench.solve();
    CHECK(quantity::to_inches(bench.group().kerf) == doctest::Approx(0.17678).epsilon(1e-4));
}

TEST_CASE("what is not known is named, and nothing is promised") {
    StockBench saw;
    saw.bar(inches(240.0));
    saw.add(inches(30.0), 2, {});
    CHECK(saw.problem() == "rules.saw_kerf");
    StockBench held;
    held.bar(inches(240.0));
    held.add(inches(30.0), 2);
    held.shear().least_piece.reset();
    CHECK(held.problem() == "machine.stations[2].least_piece");
    StockBench none;
    none.add(inches(30.0), 2);
    CHECK(none.problem() == "rack");
    CHECK(none.group().problem->reason == "The rack has no bar of Square 1, A36.");
    StockBench other = none;
    other.bar(inches(240.0)).grade = "A572-50";
    CHECK(other.problem() == "rack");
    StockBench metal;
    metal.bar(inches(240.0));
    metal.add(inches(30.0), 2).grade = "nobody's";
    CHECK(metal.problem() == "parts[0].grade");
    StockBench longer;
    longer.bar(inches(240.0));
    longer.add(inches(30.0), 2);
    longer.add(inches(241.0), 1);
    CHECK(longer.problem() == "parts[1].length");
    CHECK(longer.group().problem->reason.rfind("P2 ", 0) == 0);
    longer.shop.rack.back().length = inches(10.0);
    CHECK(longer.problem() == "parts[0].length");
}

TEST_CASE("bent parts are cut as their blanks, plates and slit stock are listed apart") {
    StockBench bench;
    bench.section.shape = section::Shape::flat;
    bench.section.width = inches(2.0);
    bench.section.thickness = inches(0.25);
    job::Bend bend;
    bend.angle = degrees(90.0);
    bench.add(Length{}, 1, {job::Cut{}, bend}).legs = {inches(3.0), inches(4.0)};
    bench.add(inches(9.0), 1, {job::Cut{}, job::Cut{job::CutSide::width, {}, {}}});
    bench.add(inches(8.0), 1).section.shape = section::Shape::plate;
    bench.bar(inches(240.0));
    CHECK(bench.bars() == 1);
    CHECK(bench.groups.size() == 1);
    CHECK(bench.group().pieces.size() == 1);
    CHECK(bench.group().pieces[0].length == bench.plan.parts[0]->blank_length);
    CHECK(bench.group().pieces[0].length < inches(7.0));
    CHECK(plan::not_from_bars(bench.plan) == std::vector<int>{1, 2});
}

TEST_CASE("one kind holds the owned bars of a length and those to buy, at the price to buy") {
    StockBench bench;
    bench.add(inches(50.0), 20);
    bench.bar(inches(240.0), 1).price = 9.0;
    bench.bar(inches(240.0)).price = 30.0;
    bench.bar(inches(240.0), 1);
    bench.drop(inches(101.0));
    bench.drop(inches(12.0)); // holds none
    CHECK(bench.bars() == 5); // 20 = 2 on the drop + 4 a bar
    REQUIRE(bench.group().kinds.size() == 2);
    CHECK(bench.group().kinds[0].owned == 2);
    CHECK(bench.group().kinds[0].can_buy);
    CHECK(bench.group().kinds[0].price == 30.0);
    CHECK(bench.group().kinds[1].drop);
    CHECK(bench.group().aim == plan::StockAim::bars);
    CHECK(fault_in(bench.group(), bench.stock.groups[0]) == "");
}

TEST_CASE("with several lengths the price decides if each has one, else the length") {
    StockBench bench; // 3 of 100: one of 300, or three of 120
    bench.add(inches(100.0), 3);
    bench.bar(inches(300.0)).price = 50.0;
    bench.bar(inches(120.0)).price = 15.0;
    CHECK(bench.bars() == 3);
    CHECK(bench.group().aim == plan::StockAim::money);
    CHECK(bench.stock.groups[0].cost == 4500);
    bench.shop.rack.back().price.reset();
    CHECK(bench.bars() == 1);
    CHECK(bench.group().aim == plan::StockAim::length);
}
