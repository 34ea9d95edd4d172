// Reproduces: NIOSH publication 94-110 (Waters, Putz-Anderson, Garg; revised 9/2021)
// How read:   a public transcription with its page numbers; couplings other than fair from memory
// Tolerance:  0.2 lb where the manual multiplies rounded multipliers; 0.05 for worked rows

#include <array>

#include "published_supply/ask.h"

using namespace treadle;
using namespace treadle::test;

namespace {

using Object = calc::Input::Object;

struct FrequencyRow {
    const char* per_minute;
    double low[3]; // V below 30 in: up to 1 h, to 2 h, to 8 h
    double high[3];
};

// NIOSH 94-110 table 5, keyed row by row.
constexpr std::array k_frequency{
    FrequencyRow{"0.2", {1.00, .95, .85}, {1.00, .95, .85}},
    FrequencyRow{"0.5", {.97, .92, .81}, {.97, .92, .81}},
    FrequencyRow{"1", {.94, .88, .75}, {.94, .88, .75}},
    FrequencyRow{"2", {.91, .84, .65}, {.91, .84, .65}},
    FrequencyRow{"3", {.88, .79, .55}, {.88, .79, .55}},
    FrequencyRow{"4", {.84, .72, .45}, {.84, .72, .45}},
    FrequencyRow{"5", {.80, .60, .35}, {.80, .60, .35}},
    FrequencyRow{"6", {.75, .50, .27}, {.75, .50, .27}},
    FrequencyRow{"7", {.70, .42, .22}, {.70, .42, .22}},
    FrequencyRow{"8", {.60, .35, .18}, {.60, .35, .18}},
    FrequencyRow{"9", {.52, .30, 0}, {.52, .30, .15}},
    FrequencyRow{"10", {.45, .26, 0}, {.45, .26, .13}},
    FrequencyRow{"11", {.41, 0, 0}, {.41, .23, 0}},
    FrequencyRow{"12", {.37, 0, 0}, {.37, .21, 0}},
    FrequencyRow{"13", {0, 0, 0}, {.34, 0, 0}},
    FrequencyRow{"14", {0, 0, 0}, {.31, 0, 0}},
    FrequencyRow{"15", {0, 0, 0}, {.28, 0, 0}},
    FrequencyRow{"16", {0, 0, 0}, {0, 0, 0}},
};

Object lift(const char* h,
            const char* v,
            const char* d,
            const char* a,
            const char* f,
            const char* duration,
            const char* coupling) {
    return {{"horizontal", h},
            {"vertical", v},
            {"travel", d},
            {"asymmetry", a},
            {"frequency", f},
            {"duration", duration},
            {"coupling", coupling}};
}

Object with(Object in, const char* name, const char* value) {
    in.emplace_back(name, value);
    return in;
}

/// All else at its best, so that the limit over 51 lb is the multiplier.
double frequency_multiplier(const char* per_minute, const char* duration, const char* origin) {
    const Object in = with(lift("10 in", "30 in", "10 in", "0", per_minute, duration, "good"),
                           "origin_vertical",
                           origin);
    return asked("lift.limit", in, "limit") / 51.0;
}

} // namespace

TEST_SUITE("published") {

    TEST_CASE("the frequency multiplier reproduces NIOSH 94-110 table 5") {
        CHECK(k_frequency.size() == 18);
        const std::array k_durations{"short", "moderate", "long"};
        for (const FrequencyRow& row : k_frequency) {
            for (std::size_t i = 0; i < 3; ++i) {
                CAPTURE(row.per_minute);
                CAPTURE(i);
                CHECK(std::abs(frequency_multiplier(row.per_minute, k_durations[i], "29 in") -
                               row.low[i]) < 1e-9);
                CHECK(std::abs(frequency_multiplier(row.per_minute, k_durations[i], "30 in") -
                               row.high[i]) < 1e-9);
            }
        }
        count_rows("published", 6 * k_frequency.size(), "lift.limit");
    }

    TEST_CASE("lift-limit reproduces NIOSH 94-110") {
        const Object origin = lift("10 in", "22 in", "37 in", "0", "1", "moderate", "fair");
        const Object end = with(lift("20 in", "59 in", "37 in", "0", "1", "moderate", "fair"),
                                "origin_vertical",
                                "22 in");
        const Object best = lift("250 mm", "750 mm", "250 mm", "0", "0.2", "short", "good");
        const std::array<AskedRow, 6> k_rows{{
            {"example 4, origin, p. 46: printed 34.9", origin, "limit", 34.9, 0.2},
            {"example 4, destination, p. 46: printed 15.2", end, "limit", 15.2, 0.2},
            {"H over 25 in: nothing",
             lift("26 in", "30 in", "10 in", "0", "1", "short", "good"),
             "limit",
             0.0,
             0.0},
            {"H 8 and D 6 in count as 10 and 10",
             lift("8 in", "30 in", "6 in", "0", "0.2", "short", "good"),
             "limit",
             51.0,
             1e-9},
            {"p. 7, F 2.4 between rows: 0.898 of 51",
             lift("10 in", "30 in", "10 in", "0", "2.4", "short", "good"),
             "limit",
             0.898 * 51.0,
             0.001 * 51.0},
            {"metric printing at its best: 23 kg",
             with(best, "units", "metric"),
             "limit",
             23.0 / 0.45359237,
             1e-9},
        }};
        CHECK(k_rows.size() == 6);
        check_asked("lift.limit", "published", k_rows);
    }

    TEST_CASE("lift-reach reproduces the rule of NIOSH 94-110 for a reach not measured") {
        const std::array<AskedRow, 4> k_rows{{
            {"8 + 12/2", {{"depth", "12 in"}, {"vertical", "30 in"}}, "horizontal", 14.0, 1e-9},
            {"8 + 18/2, at 10 in",
             {{"depth", "18 in"}, {"vertical", "10 in"}},
             "horizontal",
             17.0,
             1e-9},
            {"10 + 12/2, below",
             {{"depth", "12 in"}, {"vertical", "9 in"}},
             "horizontal",
             16.0,
             1e-9},
            {"10 + 20/2, on the floor",
             {{"depth", "20 in"}, {"vertical", "0 in"}},
             "horizontal",
             20.0,
             1e-9},
        }};
        CHECK(k_rows.size() == 4);
        check_asked("lift.reach", "published", k_rows);
    }

    TEST_CASE("lift-team by HSE L23, from memory: two thirds of two, half of three") {
        const std::array<AskedRow, 4> k_rows{{
            {"2/3 of 2 x 60", {{"limit", "60 lb"}, {"people", "2"}}, "together", 80.0, 1e-9},
            {"1/2 of 3 x 60", {{"limit", "60 lb"}, {"people", "3"}}, "together", 90.0, 1e-9},
            {"2/3 of 2 x 51", {{"limit", "51 lb"}, {"people", "2"}}, "together", 68.0, 1e-9},
            {"1/2 of 3 x 51", {{"limit", "51 lb"}, {"people", "3"}}, "together", 76.5, 1e-9},
        }};
        CHECK(k_rows.size() == 4);
        check_asked("lift.team", "from-memory", k_rows);
    }
}

TEST_SUITE("worked") {

    TEST_CASE("lift-limit and lift-index of stock and of a base plate") {
        // L2x2x1/4 x 10 ft, 31.9 lb, from a rack at 15 in to a bench at 35 in:
        // 51 x 10/12 x (1 - 0.0075 x 15) x (0.82 + 1.8/20) x 0.94 x 0.95 = 30.7 lb.
        const Object bar =
            with(lift("12 in", "15 in", "20 in", "0", "1", "short", "fair"), "load", "31.9 lb");
        // PL 1/2 x 12 x 18, 30.6 lb, from 6 in over the floor to 36 in:
        // 51 x 10/16 x (1 - 0.0075 x 24) x (0.82 + 1.8/30) x (1 - 0.0032 x 45) x 0.75 x 0.90
        // = 13.3.
        const Object plate =
            with(lift("16 in", "6 in", "30 in", "45 deg", "1", "long", "poor"), "load", "30.6 lb");
        const std::array<AskedRow, 4> k_rows{{
            {"bar", bar, "limit", 30.7, 0.05},
            {"31.9/30.7", bar, "index", 1.04, 0.05},
            {"plate", plate, "limit", 13.3, 0.05},
            {"30.6/13.3", plate, "index", 2.30, 0.05},
        }};
        CHECK(k_rows.size() == 4);
        check_asked("lift.limit", "worked", k_rows);
        for (const Object& in : {bar, plate})
            CHECK(answer_of("lift.limit", in)->workings.back().note.find("get help") !=
                  std::string::npos);
    }

    TEST_CASE("with a multiplier of nothing no load is blessed") {
        const Object in =
            with(lift("26 in", "30 in", "10 in", "0", "1", "short", "good"), "load", "1 lb");
        CHECK(answer_of("lift.limit", in).refusal().field == "horizontal");
    }
}
