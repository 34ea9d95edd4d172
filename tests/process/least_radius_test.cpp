#include "process/air_bend.h"
#include "process/cards.h"

#include <doctest/doctest.h>

#include <cmath>
#include <string>

using namespace treadle;
using material::Grain;

namespace {

Grade of_group(const std::string& group) {
    Grade grade;
    grade.id = group;
    grade.bend_group = group;
    return grade;
}

constexpr const char* k_groups[] = {"A6-A",
                                    "A6-B",
                                    "A6-C",
                                    "A6-D",
                                    "A6-E",
                                    "A6-F",
                                    "din-390",
                                    "din-490",
                                    "din-640",
                                    "austenitic",
                                    "al-3003-H14",
                                    "al-5052-H32",
                                    "al-6061-T6",
                                    "al-6063-T6"};

} // namespace

TEST_CASE("thicker metal never gets a smaller radius, and along never a smaller one than across") {
    for (const char* group : k_groups) {
        CAPTURE(group);
        const Grade grade = of_group(group);
        Length before;
        int answered = 0;
        for (double t = 0.2; t < 60.0; t += 0.1) {
            const auto across = process::least_radius(millimetres(t), grade, Grain::across);
            const auto along = process::least_radius(millimetres(t), grade, Grain::along);
            const auto unknown = process::least_radius(millimetres(t), grade, Grain::unknown);
            CHECK(along.ok() == unknown.ok());
            if (!across.ok())
                continue;
            ++answered;
            CHECK(*across >= before);
            before = *across;
            if (along.ok()) {
                CHECK(*along >= *across);
                CHECK(*along == *unknown);
            }
        }
        CHECK(answered > 100);
    }
}

TEST_CASE("beyond a table the answer is a refusal, not the last row") {
    const auto field = [](const char* group, double mm, Grain grain, double angle = 90.0) {
        const auto r =
            process::least_radius(millimetres(mm), of_group(group), grain, degrees(angle));
        return r.ok() ? std::string("answered") : r.refusal().field;
    };
    CHECK(field("din-390", 20.0, Grain::across) == "answered");
    CHECK(field("din-390", 20.01, Grain::across) == "thickness");
    CHECK(field("din-390", 18.0, Grain::along) == "answered");
    CHECK(field("din-390", 18.01, Grain::along) == "thickness");
    CHECK(field("din-390", 18.01, Grain::across, 121.0) == "thickness");
    CHECK(field("din-390", 18.01, Grain::across, 120.0) == "answered");
    CHECK(field("al-5052-H32", 12.7, Grain::across) == "answered");
    CHECK(field("al-5052-H32", 12.71, Grain::across) == "thickness");
    CHECK(field("al-5052-H32", 9.53, Grain::along) == "thickness");
    CHECK(field("al-5052-H32", 3.0, Grain::across, 91.0) == "angle");
    CHECK(field("A6-B", 0.0, Grain::across) == "thickness");
    CHECK(field("A6-B", std::nan(""), Grain::across) == "thickness");
    CHECK(field("A6-B", 6.0, Grain::across, 180.0) == "angle");
}

TEST_CASE("metal without a row, or that must not be bent, is refused by its name") {
    CHECK(process::least_radius(inches(0.25), of_group(""), Grain::across).refusal().field ==
          "material");
    Grade plate = of_group("A6-B");
    plate.refusal = {false, true, "Ask its maker."};
    const auto refused = process::least_radius(inches(0.25), plate, Grain::across);
    REQUIRE_FALSE(refused.ok());
    CHECK(refused.refusal().reason == "Ask its maker.");
}

TEST_CASE("the working names the rule that decided") {
    const auto card = [](const char* group, double t_in) {
        const auto w = process::least_radius_working(inches(t_in), of_group(group), Grain::across);
        return w.ok() ? w->card : nullptr;
    };
    CHECK(card("A6-C", 0.25) == &process::k_least_radius_practice_card);
    CHECK(card("A6-C", 1.5) == &process::k_least_radius_plate_card);
    CHECK(card("din-490", 0.25) == &process::k_least_radius_din_card);
    CHECK(card("al-6061-T6", 0.25) == &process::k_least_radius_aluminium_card);
    CHECK(card("austenitic", 0.25) == &process::k_least_radius_austenitic_card);
}
