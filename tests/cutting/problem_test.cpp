// What is refused, and what the exact transformations leave as it was.

#include <doctest/doctest.h>

#include "cutting/lists.h"

using namespace treadle;
using namespace treadle::test;

namespace {

CutProblem one(std::int64_t length, std::int64_t count, std::int64_t stock) {
    CutProblem problem;
    problem.pieces.push_back({length, count});
    problem.stock.push_back({stock, 1, std::nullopt});
    return problem;
}

std::string field_of(const CutProblem& problem) {
    const auto list = cutting::cut_list(problem);
    return list.ok() ? "" : list.refusal().field;
}

} // namespace

TEST_CASE("a piece that no bar holds is named") {
    CHECK(field_of(one(240, 1, 240)) == "");
    CHECK(field_of(one(241, 1, 240)) == "pieces[0].length");
    CutProblem problem = one(100, 1, 240);
    problem.pieces.push_back({300, 2});
    CHECK(field_of(problem) == "pieces[1].length");
    const auto list = cutting::cut_list(problem);
    REQUIRE(!list.ok());
    CHECK(list.refusal().reason.find("300") != std::string::npos);
}

TEST_CASE("lengths and numbers that cannot be are refused") {
    CHECK(field_of(one(0, 1, 240)) == "pieces[0].length");
    CHECK(field_of(one(-5, 1, 240)) == "pieces[0].length");
    CHECK(field_of(one(5, 0, 240)) == "pieces[0].count");
    CHECK(field_of(one(5, -1, 240)) == "pieces[0].count");
    CHECK(field_of(one(5, 10'000'000, 240)) == "pieces[0].count");
    CHECK(field_of(one(5, 1, 0)) == "stock[0].length");
    CHECK(field_of(one(5, 1, -240)) == "stock[0].length");
    CHECK(field_of(one(INT64_MAX, 1, 240)) == "pieces[0].length");
    CHECK(field_of(one(5, INT64_MAX, 240)) == "pieces[0].count");
    CHECK(field_of(one(5, 1, INT64_MAX)) == "stock[0].length");
    CHECK(field_of(CutProblem{}) == "stock");
    CutProblem problem = one(5, 1, 240);
    problem.kerf = -1;
    CHECK(field_of(problem) == "kerf");
    problem.kerf = 0;
    problem.least_end = -1;
    CHECK(field_of(problem) == "least_end");
    problem.least_end = 0;
    problem.stock[0].cost = -1;
    CHECK(field_of(problem) == "stock[0].cost");
    problem.stock[0].cost = 0;
    CHECK(field_of(problem) == "stock[0].cost");
    problem.stock[0].available = 1;
    CHECK(field_of(problem) == "");
    problem.pieces.clear();
    CHECK(field_of(problem) == "pieces");
}

TEST_CASE("many small numbers that add up to too many are refused") {
    CutProblem problem = one(5, 600'000, 240);
    CHECK(field_of(problem) == "");
    problem.pieces.push_back({6, 600'000});
    CHECK(field_of(problem) == "pieces[1].count");
}

TEST_CASE("lengths without a common measure are refused when the bar has too many steps") {
    CHECK(field_of(one(200'001, 1, 400'002)) == "");
    CutProblem problem = one(200'001, 1, 900'000);
    problem.pieces.push_back({200'002, 1});
    CHECK(field_of(problem) == "stock[0].length");
}

TEST_CASE("equal lengths are one, and the longest comes first") {
    CutProblem problem = one(60, 2, 240);
    problem.pieces.push_back({90, 1});
    problem.pieces.push_back({60, 3});
    const CutList list = list_of(problem);
    REQUIRE(list.size() == 2);
    CHECK(cutting::own_length(list, 0) == 90);
    CHECK(cutting::own_length(list, 1) == 60);
    CHECK(list.demand == cutting::Counts{1, 5});
}

TEST_CASE("a bar is as long as pieces can fill it") {
    const CutList list = list_of(one(70, 9, 240)); // three of 70
    CHECK(list.scale == 70);
    CHECK(list.stock[0].closed == 3);
}
