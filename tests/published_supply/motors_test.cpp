// Reproduces: NFPA 70 (National Electrical Code), tables 430.248 and 430.250, 430.7(B), 430.22
// How read:   430.248 in two editions, equal; 430.250 and 430.7(B) read; rows marked so from memory
// Tolerance:  exact for table values; 0.1 A where the source divides and rounds

#include <array>

#include "published_supply/ask.h"

using namespace treadle;
using namespace treadle::test;

namespace {

struct SingleRow {
    const char* power;
    double at_115, at_200, at_208, at_230;
};

// NEC table 430.248, keyed row by row.
constexpr std::array k_single_rows{
    SingleRow{"1/2 hp", 9.8, 5.6, 5.4, 4.9},
    SingleRow{"3/4 hp", 13.8, 7.9, 7.6, 6.9},
    SingleRow{"1 hp", 16, 9.2, 8.8, 8},
    SingleRow{"1-1/2 hp", 20, 11.5, 11, 10},
    SingleRow{"2 hp", 24, 13.8, 13.2, 12},
    SingleRow{"3 hp", 34, 19.6, 18.7, 17},
    SingleRow{"5 hp", 56, 32.2, 30.8, 28},
    SingleRow{"7-1/2 hp", 80, 46, 44, 40},
    SingleRow{"10 hp", 100, 57.5, 55, 50},
};

double current(const char* power, const char* voltage, const char* phase) {
    return asked("motor.current",
                 {{"power", power}, {"voltage", voltage}, {"phase", phase}, {"code", "A"}},
                 "current");
}

} // namespace

TEST_SUITE("published") {

    TEST_CASE("full-load currents reproduce NEC table 430.248") {
        CHECK(k_single_rows.size() == 9);
        for (const SingleRow& row : k_single_rows) {
            CAPTURE(row.power);
            CHECK(current(row.power, "115 V", "single") == row.at_115);
            CHECK(current(row.power, "200 V", "single") == row.at_200);
            CHECK(current(row.power, "208 V", "single") == row.at_208);
            CHECK(current(row.power, "230 V", "single") == row.at_230);
        }
        count_rows("published", 4 * std::size(k_single_rows), "motor.current");
    }

    TEST_CASE("fractional motors reproduce NEC table 430.248") {
        struct Row {
            const char* power;
            double at_115, at_230;
        };
        constexpr std::array k_rows{
            Row{"1/6 hp", 4.4, 2.2}, Row{"1/4 hp", 5.8, 2.9}, Row{"1/3 hp", 7.2, 3.6}};
        CHECK(k_rows.size() == 3);
        for (const Row& row : k_rows) {
            CAPTURE(row.power);
            CHECK(current(row.power, "115 V", "single") == row.at_115);
            CHECK(current(row.power, "230 V", "single") == row.at_230);
        }
        count_rows("published", 2 * std::size(k_rows), "motor.current");
    }

    TEST_CASE("full-load currents reproduce NEC table 430.250, 230 V") {
        struct Row {
            const char* power;
            double at_230;
        };
        constexpr std::array k_rows{Row{"1/2 hp", 2.2},
                                    Row{"1 hp", 4.2},
                                    Row{"2 hp", 6.8},
                                    Row{"3 hp", 9.6},
                                    Row{"5 hp", 15.2},
                                    Row{"7-1/2 hp", 22},
                                    Row{"10 hp", 28}};
        CHECK(k_rows.size() == 7);
        for (const Row& row : k_rows) {
            CAPTURE(row.power);
            CHECK(current(row.power, "230 V", "three") == row.at_230);
            // The 460 V column is half of it.
            CHECK(current(row.power, "460 V", "three") == row.at_230 / 2.0);
        }
        count_rows("published", 2 * std::size(k_rows), "motor.current");
    }

    TEST_CASE("full-load currents of NEC table 430.250, rows from memory") {
        struct Row {
            const char* power;
            double at_230, at_460;
        };
        constexpr std::array k_rows{Row{"3/4 hp", 3.2, 1.6},
                                    Row{"1-1/2 hp", 6.0, 3.0},
                                    Row{"15 hp", 42, 21},
                                    Row{"20 hp", 54, 27}};
        CHECK(k_rows.size() == 4);
        for (const Row& row : k_rows) {
            CAPTURE(row.power);
            CHECK(current(row.power, "230 V", "three") == row.at_230);
            CHECK(current(row.power, "460 V", "three") == row.at_460);
        }
        count_rows("from-memory", 2 * std::size(k_rows), "motor.current");
    }

    TEST_CASE("locked-rotor code letters reproduce NEC 430.7(B), top of each band") {
        struct Row {
            const char* letter;
            double kva_per_hp;
        };
        constexpr std::array k_rows{Row{"A", 3.14},
                                    Row{"B", 3.54},
                                    Row{"C", 3.99},
                                    Row{"D", 4.49},
                                    Row{"E", 4.99},
                                    Row{"F", 5.59},
                                    Row{"G", 6.29},
                                    Row{"H", 7.09},
                                    Row{"J", 7.99},
                                    Row{"K", 8.99},
                                    Row{"L", 9.99},
                                    Row{"M", 11.19},
                                    Row{"N", 12.49},
                                    Row{"P", 13.99},
                                    Row{"R", 15.99},
                                    Row{"S", 17.99},
                                    Row{"T", 19.99},
                                    Row{"U", 22.39}};
        CHECK(k_rows.size() == 18);
        for (const Row& row : k_rows) {
            CAPTURE(row.letter);
            CHECK(std::abs(asked("motor.current",
                                 {{"power", "1 hp"}, {"voltage", "230 V"}, {"code", row.letter}},
                                 "locked_power") -
                           row.kva_per_hp) <= 1e-9);
        }
        count_rows("published", std::size(k_rows), "motor.current");
    }

    TEST_CASE("a portable machine's motors by NEC 430.248, 430.22 and 430.7(B)") {
        const calc::Input::Object three_hp{{"power", "3 hp"}, {"voltage", "230 V"}, {"code", "K"}};
        const calc::Input::Object small{{"power", "1-1/2 hp"}, {"voltage", "115 V"}, {"code", "L"}};
        const calc::Input::Object two_hp{{"power", "2 hp"}, {"voltage", "115 V"}, {"code", "K"}};
        const calc::Input::Object large{
            {"power", "20 hp"}, {"voltage", "480 V"}, {"phase", "three"}, {"code", "G"}};
        const std::array<AskedRow, 10> k_rows{{
            {"430.248: 3 hp 230 V", three_hp, "current", 17.0, 0.0},
            {"430.22: 125 % of 17 A", three_hp, "conductor", 21.25, 1e-12},
            {"430.7(B): 8.99 x 3 / 230", three_hp, "locked_current", 117.3, 0.1},
            {"430.7(B): 9.99 x 1.5", small, "locked_power", 14.98, 0.01},
            {"430.7(B): 14.98 / 115", small, "locked_current", 130.3, 0.1},
            {"430.22: 125 % of 24 A", two_hp, "conductor", 30.0, 1e-12},
            {"430.7(B): 8.99 x 2", two_hp, "locked_power", 17.98, 1e-9},
            {"430.7(B): 17.98 / 115", two_hp, "locked_current", 156.3, 0.1},
            {"430.7(B): 6.29 x 20", large, "locked_power", 125.8, 0.2},
            {"125.8 / (1.732 x 480)", large, "locked_current", 151.3, 0.2},
        }};
        CHECK(k_rows.size() == 10);
        check_asked("motor.current", "published", k_rows);
    }

    TEST_CASE("a worked example's locked-rotor current belongs to another voltage") {
        // Known disagreement: a public example prints 158 A for 20 hp, code G, and divides by
        // 480 x 1.732 = 831; 158 A is the figure at 460 V.
        const auto at = [](const char* voltage) {
            return asked(
                "motor.current",
                {{"power", "20 hp"}, {"voltage", voltage}, {"phase", "three"}, {"code", "G"}},
                "locked_current");
        };
        CHECK(std::abs(at("480 V") - 158.0) > 5.0);
        CHECK(std::abs(at("460 V") - 158.0) < 0.5);
        count_rows("disagreement", 1, "motor.current");
    }
}
