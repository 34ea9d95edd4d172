// Bars and their proof in words: stock_words.cpp.

#include "plan/stock_bench.h"
#include "plan/stock_words.h"

using namespace treadle;
using test::StockBench;

namespace {

constexpr PrintStyle k_inch{UnitSystem::inch, 16};

std::string proof(StockBench& bench) {
    const plan::GroupPlan& made = bench.solve();
    return plan::proof_words(bench.group(), made, k_inch);
}

} // namespace

TEST_CASE("the proof is said in bars, and in the gap while there is one") {
    StockBench bench;
    bench.add(inches(60.0), 25);
    bench.bar(inches(240.0));
    CHECK(proof(bench) == "7 bars; no plan needs fewer");
    CHECK(plan::short_proof_words(bench.group(), bench.stock.groups[0], k_inch) ==
          "7 bars, proven");
    CHECK(plan::stock_words(bench.groups, bench.stock) == "1 section: 7 bars, proven");
    plan::GroupPlan open = bench.stock.groups[0];
    open.proven = false;
    open.bound = 6;
    CHECK(plan::proof_words(bench.group(), open, k_inch) == "7 bars; at least 6");
    CHECK(plan::short_proof_words(bench.group(), open, k_inch) == "7 bars, at least 6");
    bench.drop(inches(61.5));
    CHECK(proof(bench) == "1 drop and 6 bars; no plan needs fewer bars");
    bench.drop(inches(240.0), 20);
    CHECK(proof(bench) == "7 drops; no whole bar needed");
    bench.shop.rack.erase(bench.shop.rack.begin());
    CHECK(proof(bench) == "7 drops; no plan needs fewer");
}

TEST_CASE("with several lengths the proof is said in money or in length") {
    StockBench bench;
    bench.add(inches(100.0), 3);
    bench.bar(inches(300.0)).price = 50.0;
    bench.bar(inches(120.0)).price = 15.5;
    CHECK(proof(bench) == "3 bars at 46.50; no plan costs less");
    plan::GroupPlan open = bench.stock.groups[0];
    open.proven = false;
    open.bound = 4000;
    CHECK(plan::proof_words(bench.group(), open, k_inch) == "3 bars at 46.50; at least 40.00");
    bench.shop.rack.back().price.reset();
    CHECK(proof(bench) == "1 bar, 300 in; no plan takes less");
}

TEST_CASE("without a plan the words say why") {
    StockBench bench;
    bench.add(inches(60.0), 9);
    CHECK(proof(bench) == "The rack has no bar of Square 1, A36.");
    CHECK(plan::short_proof_words(bench.group(), bench.stock.groups[0], k_inch) ==
          "cannot be said");
    CHECK(plan::stock_words(bench.groups, bench.stock) == "1 section; 1 of 1 without a plan");
    bench.bar(inches(240.0), 1);
    CHECK(proof(bench) == "The rack does not reach: enter more bars, or a length to buy.");
    plan::GroupPlan none;
    CHECK(plan::proof_words(bench.group(), none, k_inch) == "No plan yet.");
    CHECK(plan::short_proof_words(bench.group(), none, k_inch) == "no plan yet");
    CHECK(plan::stock_words({}, {}) == "No part is cut from a bar");
}

TEST_CASE("how it is cut is said with what it loses and what it cannot hold") {
    StockBench bench;
    bench.add(inches(60.0), 9);
    bench.bar(inches(240.0));
    bench.solve();
    CHECK(plan::stock_title(bench.group(), k_inch) == "Square 1, A36");
    CHECK(plan::parting_words(bench.group(), k_inch) ==
          "Sheared, nothing lost; no end trim; no rule which drops are kept");
    bench.shear().slug_loss = inches(0.75);
    bench.shear().least_piece = inches(2.0);
    bench.shop.rules.end_trim = inches(0.5);
    bench.shop.rules.keep_drop = inches(12.0);
    bench.solve();
    CHECK(plan::parting_words(bench.group(), k_inch) ==
          "Sheared, 0.750 in lost a cut; ends under 2 cannot be held; 1/2 trimmed off each end; "
          "drops kept from 12");
}

TEST_CASE("what is left, what to pull and what to buy") {
    StockBench bench;
    bench.add(inches(60.0), 5);
    bench.bar(inches(241.0), 1);
    bench.bar(inches(241.0)).price = 31.5;
    bench.drop(inches(60.0));
    bench.drop(inches(63.0));
    bench.solve(); // four of one bar, the fifth of the drop that leaves nothing
    const plan::GroupPlan& made = bench.stock.groups[0];
    CHECK(plan::use_words(bench.group(), made, k_inch) ==
          std::vector<std::string>{"Pull 1 of 241", "Pull 1 drop of 60"});
    CHECK(plan::drop_words(bench.group(), made.bars[0], k_inch) == "nothing left");
    CHECK(plan::drop_words(bench.group(), made.bars[1], k_inch) == "1 left");
    bench.shop.rules.keep_drop = inches(100.0);
    bench.job.parts.clear();
    bench.add(inches(60.0), 9);
    bench.shop.rack.pop_back();
    bench.shop.rack.pop_back();
    bench.solve();
    const plan::GroupPlan& bought = bench.stock.groups[0];
    CHECK(plan::use_words(bench.group(), bought, k_inch) ==
          std::vector<std::string>{"Pull 1 of 241", "Buy 2 of 241 at 31.50"});
    CHECK(plan::drop_words(bench.group(), bought.bars[0], k_inch) == "1 scrap");
    CHECK(plan::drop_words(bench.group(), bought.bars.back(), k_inch) == "drop 181, keep");
    CHECK(plan::bar_words(bench.group().kinds[0], k_inch) == "Bar 241");
    CHECK(plan::piece_words(bench.group().pieces[0], bench.plan, k_inch) == "P1 60");
}

TEST_CASE("sums name what is not known") {
    plan::StockSums sums;
    CHECK(plan::sums_words(sums, k_inch) == "Weight not known. To buy bars, price not known.");
    sums.price = 0.0;
    CHECK(plan::sums_words(sums, k_inch) == "Weight not known. Nothing to buy.");
    sums = {quantity::pounds(412.0),
            quantity::pounds(102.0),
            quantity::pounds(380.0),
            quantity::pounds(20.0),
            quantity::pounds(12.0),
            157.5};
    CHECK(plan::sums_words(sums, k_inch) ==
          "Taken 412.0 lb: parts 380.0 lb, drops to keep 20.0 lb, scrap 12.0 lb. To buy 102.0 lb, "
          "157.50.");
}

TEST_CASE("what cannot be made and what is no bar is said") {
    plan::StockPiece piece;
    CHECK(plan::piece_caution(piece).empty());
    piece.outcome = plan::Outcome::does_not_fit;
    CHECK(plan::piece_caution(piece) == "cannot be made as planned");
    piece.outcome = plan::Outcome::cannot_be_said;
    CHECK(plan::piece_caution(piece) == "not said yet whether it can be made");
    StockBench bench;
    bench.add(inches(60.0), 5);
    bench.bar(inches(241.0));
    bench.solve();
    CHECK(plan::not_from_bars_words(bench.plan).empty());
    bench.add(inches(8.0), 1).section.shape = section::Shape::plate;
    bench.solve();
    CHECK(plan::not_from_bars_words(bench.plan) ==
          "Plates and what is slit to width are not nested here: P2");
}
