#include <doctest/doctest.h>

#include <cmath>

#include "layout/running.h"

using namespace treadle;

TEST_CASE("places keep the ends, and rounding never moves one by more than half a step") {
    for (int count = 2; count < 60; ++count) {
        layout::RunningQuestion q{inches(119.3), inches(1.5), inches(2.25), count, Length{}};
        const auto exact = layout::running_places(q);
        q.step = inches(1.0 / 16);
        const auto rounded = layout::running_places(q);
        REQUIRE(exact.ok());
        REQUIRE(rounded.ok());
        REQUIRE(exact->places.size() == static_cast<std::size_t>(count));
        CHECK(exact->places.front() == inches(1.5));
        CHECK(to_inches(exact->places.back()) == doctest::Approx(119.3 - 2.25));
        for (std::size_t i = 0; i < exact->places.size(); ++i)
            CHECK(std::abs(to_inches(rounded->places[i] - exact->places[i])) <= 1.0 / 32 + 1e-9);
    }
}

TEST_CASE("a half goes up, and nothing is rounded without a step") {
    CHECK(layout::to_step(inches(0.03125), inches(1.0 / 16)) == inches(1.0 / 16));
    CHECK(layout::to_step(inches(0.03), inches(1.0 / 16)) == Length{});
    CHECK(layout::to_step(inches(0.03), Length{}) == inches(0.03));
}

TEST_CASE("running places refuse by name") {
    const layout::RunningQuestion good{inches(20), inches(1), inches(1), 4, inches(0.125)};
    CHECK(layout::running_places(good).ok());
    const auto field = [&](auto change) {
        layout::RunningQuestion q = good;
        change(q);
        return layout::running_places(q).refusal().field;
    };
    CHECK(field([](auto& q) { q.length = Length{}; }) == "length");
    CHECK(field([](auto& q) { q.first = inches(20); }) == "first");
    CHECK(field([](auto& q) { q.last = inches(19); }) == "last");
    CHECK(field([](auto& q) { q.count = 1; }) == "count");
    CHECK(field([](auto& q) { q.step = inches(6); }) == "step");
    CHECK(field([](auto& q) { q.step = -inches(1); }) == "step");
}
