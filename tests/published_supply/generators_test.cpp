// Rows of generators: the code's motor data, then common practice without a source
// Tolerance: as the arithmetic beside each row is rounded

#include <array>

#include "published_supply/ask.h"

using namespace treadle;
using namespace treadle::test;

TEST_SUITE("worked") {

    TEST_CASE("generator-running and generator-surge from NEC 430.248 and 430.7(B)") {
        const calc::Input::Object three_hp{{"power", "3 hp"}, {"voltage", "230 V"}, {"code", "K"}};
        const calc::Input::Object two_hp{{"power", "2 hp"}, {"voltage", "115 V"}, {"code", "K"}};
        const calc::Input::Object small{{"power", "1-1/2 hp"}, {"voltage", "115 V"}, {"code", "L"}};
        const std::array<AskedRow, 7> k_rows{{
            {"230 x 17/1000", three_hp, "running", 3.91, 0.01},
            {"8.99 x 3", three_hp, "surge", 26.97, 0.01},
            {"0.746 x 3/0.75", three_hp, "running_power", 2.98, 0.01},
            {"115 x 24/1000", two_hp, "running", 2.76, 0.005},
            {"8.99 x 2, printed 18", two_hp, "surge", 17.98, 0.01},
            {"115 x 20/1000", small, "running", 2.30, 0.005},
            {"9.99 x 1.5", small, "surge", 14.98, 0.01},
        }};
        CHECK(k_rows.size() == 7);
        check_asked("generator.size", "worked", k_rows);
    }

    TEST_CASE("three times the running load is too low: five to seven times is drawn") {
        // Common practice, no source: code K and L motors draw 5 to 7 times their running load.
        const calc::Input::Object by_letter{{"power", "3 hp"}, {"voltage", "230 V"}, {"code", "K"}};
        const calc::Input::Object by_rule{
            {"power", "3 hp"}, {"voltage", "230 V"}, {"rule", "triple"}};
        const double running = asked("generator.size", by_letter, "running");
        const double drawn = asked("generator.size", by_letter, "surge") / running;
        CHECK(drawn > 5.0);
        CHECK(drawn < 7.0);
        CHECK(asked("generator.size", by_rule, "surge") == doctest::Approx(3.0 * 3.91));
        count_rows("disagreement", 1, "generator.size");
    }

    TEST_CASE("generator-derated, common practice without a source") {
        const std::array<AskedRow, 4> k_rows{{
            {"7 x (1 - 0.035 x 6)",
             {{"rating", "7 kW"}, {"altitude", "6000 ft"}},
             "available",
             5.53,
             0.01},
            {"7 x (1 - 0.03 x 6), the milder rule",
             {{"rating", "7 kW"}, {"altitude", "6000 ft"}, {"rate", "3 %"}},
             "available",
             5.74,
             0.01},
            {"10 x (1 - 0.035 x 2 - 0.02), 20 F over",
             {{"rating", "10 kW"}, {"altitude", "2000 ft"}, {"over_temperature_f", "20"}},
             "available",
             9.10,
             0.01},
            {"at the rated height nothing is lost",
             {{"rating", "7 kW"}, {"altitude", "0 ft"}},
             "available",
             7.0,
             1e-9},
        }};
        CHECK(k_rows.size() == 4);
        check_asked("generator.derate", "common-practice", k_rows);
    }
}
