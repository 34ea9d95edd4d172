#include "sheet/drafting.h"

#include <doctest/doctest.h>

#include <cmath>
#include <limits>

using namespace treadle;
using sheet::Figure;
using sheet::spread;

namespace {

constexpr double k_anywhere = -std::numeric_limits<double>::infinity();

std::vector<Figure> figures(const std::vector<double>& at, double room) {
    std::vector<Figure> made;
    for (const double where : at) {
        Figure figure;
        figure.at = where;
        figure.room = room;
        made.push_back(figure);
    }
    return made;
}

void check_apart(const std::vector<Figure>& made) {
    for (std::size_t i = 1; i < made.size(); ++i)
        CHECK(made[i].placed - made[i - 1].placed >=
              (made[i].room + made[i - 1].room) / 2.0 - 1e-9);
}

} // namespace

TEST_CASE("figures with room stay where they belong") {
    auto made = figures({0.0, 50.0, 100.0}, 20.0);
    CHECK(spread(made, 1000.0, k_anywhere) == 0);
    for (const Figure& figure : made)
        CHECK(figure.placed == doctest::Approx(figure.at));
}

TEST_CASE("crowded figures move apart by the same on both sides, in order") {
    auto made = figures({52.0, 48.0}, 20.0);
    CHECK(spread(made, 1000.0, k_anywhere) == 0);
    CHECK(made[0].at == 48.0);
    CHECK(made[0].placed == doctest::Approx(40.0)); // middle 50, ten to each side
    CHECK(made[1].placed == doctest::Approx(60.0));
}

TEST_CASE("no figure begins below the lowest place") {
    auto made = figures({0.0, 1.0, 2.0}, 20.0);
    CHECK(spread(made, 1000.0, -5.0) == 0);
    CHECK(made[0].placed == doctest::Approx(5.0));
    check_apart(made);
}

TEST_CASE("the inner ones of equal pitches go first, the ends never") {
    auto made = figures({0.0, 10.0, 20.0, 30.0, 37.0, 50.0}, 12.0);
    CHECK(spread(made, 50.0, k_anywhere) == 2);
    CHECK(made.front().at == 0.0);
    CHECK(made.back().at == 50.0);
    bool kept = false; // 37 is in no pitch: nobody could work it out
    for (const Figure& figure : made)
        kept = kept || figure.at == 37.0;
    CHECK(kept);
    check_apart(made);
}

TEST_CASE("thousands of figures are thinned, not laid over each other") {
    std::vector<double> at;
    for (int i = 0; i <= 5000; ++i)
        at.push_back(i);
    auto made = figures(at, 30.0);
    CHECK(spread(made, 5000.0, k_anywhere) > 4000);
    CHECK(made.back().at == 5000.0);
    check_apart(made);
}

TEST_CASE("a label is not put where another one is") {
    sheet::Drafter draft(1.0);
    draft.label({0.0, 0.0}, "12345", sheet::Anchor::middle);
    CHECK_FALSE(draft.label_where_free({{2.0, 1.0}}, "1", 0));
    CHECK(draft.label_where_free({{2.0, 1.0}, {0.0, 30.0}}, "1", 0));
    const sheet::Drawing drawing = draft.finish("two labels");
    REQUIRE(drawing.labels.size() == 2);
    CHECK(quantity::to_millimetres(drawing.labels[1].at.y) == 30.0);
}
