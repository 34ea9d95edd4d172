#include <algorithm>
#include <set>

#include "lesson/lessons.h"
#include "lesson/numbers.h"

using namespace treadle;
using namespace treadle::lesson;

TEST_CASE("every choice comes up about as often as the others") {
    for (const std::size_t choices : {2U, 5U, 7U, 18U}) {
        std::vector<int> met(choices, 0);
        for (unsigned seed = 0; seed < 2000; ++seed)
            ++met[pick(seed, 3, 0, choices)];
        const int fair = 2000 / static_cast<int>(choices);
        for (const int count : met) {
            CAPTURE(choices);
            CHECK(count > fair / 2);
            CHECK(count < fair * 2);
        }
    }
}

TEST_CASE("a choice lies within its list, whatever the seed") {
    for (unsigned seed = 0; seed < 500; ++seed)
        for (std::size_t step = 0; step < 10; ++step) {
            CHECK(pick(seed, step, 0, 1) == 0);
            CHECK(pick(seed, step, 1, 3) < 3);
        }
}

TEST_CASE("the arithmetic is the one that is written down") {
    // Worked out by the same steps in another language (Python, whole numbers modulo 2^32):
    // state = (seed+1)*2654435769 + (step+1)*2246822519 + (place+1)*3266489917, mixed, times the
    // number of choices, upper half.
    CHECK(pick(1, 0, 0, 1000) == 612);
    CHECK(pick(7, 2, 1, 1000) == 240);
    CHECK(pick(9999, 59, 3, 200) == 142);
}

TEST_CASE("neighbouring seeds, steps and places differ") {
    int same_seed = 0;
    int same_step = 0;
    int same_place = 0;
    for (unsigned i = 0; i < 1000; ++i) {
        same_seed += pick(i, 1, 0, 100) == pick(i + 1, 1, 0, 100) ? 1 : 0;
        same_step += pick(i, 1, 0, 100) == pick(i, 2, 0, 100) ? 1 : 0;
        same_place += pick(i, 1, 0, 100) == pick(i, 1, 1, 100) ? 1 : 0;
    }
    // One in a hundred by chance.
    CHECK(same_seed < 40);
    CHECK(same_step < 40);
    CHECK(same_place < 40);
}

TEST_CASE("a set of inputs goes in whole, over what stands there") {
    Asked asked{"x", {{"a", "1"}, {"b", "2"}}, {}, "y"};
    asked.vary.push_back({{{{"b", "3"}, {"c", "4"}}}});
    const calc::Input::Object in = inputs_of(asked, 5, 0);
    REQUIRE(in.size() == 3);
    CHECK(*find_input(in, "a")->text() == "1");
    CHECK(*find_input(in, "b")->text() == "3");
    CHECK(*find_input(in, "c")->text() == "4");
    CHECK(find_input(in, "d") == nullptr);
}

TEST_CASE("names in braces are filled in, and unknown ones are found") {
    const calc::Input::Object in{{"size", "1 in"}, {"legs", calc::Input::List{"2 in"}}};
    CHECK(filled("a {size} hole, {size} wide", in) == "a 1 in hole, 1 in wide");
    CHECK(filled("open { and {other}", in) == "open { and {other}");
    CHECK(unknown_name("a {size} hole", in).empty());
    CHECK(unknown_name("{size} and {other}", in) == "other");
    CHECK(unknown_name("{legs}", in) == "legs"); // a list is no text
    CHECK(unknown_name("{}", in) == "{}");
}

TEST_CASE("inputs are left out by name") {
    calc::Input::Object in{{"a", "1"}, {"b", "2"}};
    leave_out(in, {"a", "z"});
    REQUIRE(in.size() == 1);
    CHECK(in[0].first == "b");
}
