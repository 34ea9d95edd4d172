// Worked by hand, asked by name: neutral lines, allowances, setbacks, deductions and blanks.
// DIN 6935: k = 0.65 + 0.5 log10(r/s), v = 2 (r+s) - pi/2 (r + k s/2) at 90 degrees; K is k / 2.
// Tolerance: half of the last digit written.

#include "published/asked_rows.h"

using namespace treadle;
using namespace treadle::test;

namespace {

calc::Input::Object bend(const char* t, const char* r, const char* angle) {
    return {{"thickness", t}, {"radius", r}, {"angle", angle}};
}

calc::Input::Object with(calc::Input::Object in, const char* name, const char* value) {
    in.emplace_back(name, value);
    return in;
}

} // namespace

TEST_SUITE("worked") {

    TEST_CASE("bend-allowance-din: DIN's k and v at 90 degrees") {
        struct Din {
            const char* r;
            const char* s;
            double k, v;
        };
        const std::vector<Din> k_din{
            {"1 mm", "1 mm", 0.6500, 1.919},     {"1.6 mm", "1 mm", 0.7521, 2.096},
            {"1.6 mm", "1.5 mm", 0.6640, 2.904}, {"2.5 mm", "1 mm", 0.8490, 2.406},
            {"2.5 mm", "2 mm", 0.6985, 3.976},   {"2.5 mm", "2.5 mm", 0.6500, 4.797},
            {"4 mm", "1.5 mm", 0.8630, 3.700},   {"4 mm", "2.5 mm", 0.7521, 5.240},
            {"4 mm", "3.5 mm", 0.6790, 6.850},   {"6 mm", "2 mm", 0.8886, 5.179},
            {"6 mm", "3 mm", 0.8005, 6.689},     {"6 mm", "4 mm", 0.7380, 8.257},
            {"6 mm", "5 mm", 0.6896, 9.867},     {"10 mm", "2 mm", 0.9995, 6.722},
            {"10 mm", "4 mm", 0.8490, 9.625},    {"10 mm", "5 mm", 0.8005, 11.148},
            {"10 mm", "6 mm", 0.7609, 12.706},   {"16 mm", "4 mm", 0.9510, 11.880},
            {"16 mm", "8 mm", 0.8005, 17.837},   {"20 mm", "5 mm", 0.9510, 14.849},
            {"20 mm", "10 mm", 0.8005, 22.297},  {"30 mm", "5 mm", 1.0000, 18.949},
        };
        std::vector<Asked> k_rows;
        for (const Din& row : k_din) {
            const auto in = bend(row.s, row.r, "90");
            k_rows.push_back({row.r, "bend.allowance", in, "k", row.k / 2.0, 1.0, 0.00003});
            k_rows.push_back({row.r, "bend.deduction", in, "deduction", row.v, 1.0, 0.0006});
        }
        CHECK(k_rows.size() == 44);
        check_and_count("worked", k_rows);
    }

    TEST_CASE("bend.allowance, bend.setback and bend.deduction with a K, and by methods") {
        const auto inch = with(bend("0.25 in", "0.25 in", "90"), "k", "0.42");
        const auto obtuse = with(bend("6 mm", "6 mm", "45"), "k", "0.42");
        const auto acute = with(bend("3 mm", "4.5 mm", "120"), "k", "0.40");
        const auto handbook = [](const char* method) {
            return with(bend("0.125 in", "0.125 in", "90"), "method", method);
        };
        // Counted with the formulas themselves.
        const std::vector<Asked> k_again{
            {"1.5708 x 0.355", "bend.allowance", inch, "allowance", .5576, k_mm_per_in, .00005},
            {"0.5 tan 45", "bend.setback", inch, "setback", 0.5, k_mm_per_in, 1e-9},
            {"1 - 0.5576", "bend.deduction", inch, "deduction", .4424, k_mm_per_in, .00005},
            {"0.7854 x 8.52", "bend.allowance", obtuse, "allowance", 6.6916, 1.0, 0.00005},
            {"12 tan 22.5", "bend.setback", obtuse, "setback", 4.9706, 1.0, 0.00005},
            {"2 x 4.9706 - 6.6916", "bend.deduction", obtuse, "deduction", 3.2495, 1.0, 0.0001},
            {"2.0944 x 5.7", "bend.allowance", acute, "allowance", 11.9381, 1.0, 0.00005},
            {"apex: 7.5 tan 60", "bend.setback", acute, "setback", 12.9904, 1.0, 0.00005},
            {"apex", "bend.deduction", acute, "deduction", 14.0427, 1.0, 0.00005},
            {"soft",
             "bend.allowance",
             handbook("handbook-soft"),
             "allowance",
             0.2650,
             k_mm_per_in,
             0.0005},
            {"medium",
             "bend.allowance",
             handbook("handbook-medium"),
             "allowance",
             0.2762,
             k_mm_per_in,
             0.0005},
            {"hard",
             "bend.allowance",
             handbook("handbook-hard"),
             "allowance",
             0.2850,
             k_mm_per_in,
             0.0005},
        };
        check_asked(k_again);
        const std::vector<Asked> k_rows{
            {"0.55 / 1.5708", "bend.allowance", handbook("handbook-soft"), "k", .350, 1, .0005},
            {"0.64 / 1.5708", "bend.allowance", handbook("handbook-medium"), "k", .407, 1, .0005},
            {"0.71 / 1.5708", "bend.allowance", handbook("handbook-hard"), "k", .452, 1, .0005},
            {"t 0.25, r 0.5: 0.75 tan 30",
             "bend.setback",
             bend("0.25 in", "0.5 in", "60"),
             "setback",
             0.4330,
             k_mm_per_in,
             0.00005},
        };
        CHECK(k_rows.size() == 4);
        check_and_count("worked", k_rows);
    }

    TEST_CASE("bend.blank by name") {
        const auto legs = [](const char* a, const char* b) { return calc::Input::List{a, b}; };
        const auto turned = [](const char* angle, const char* r) {
            return calc::Input::List{calc::Input::Object{{"angle", angle}, {"radius", r}}};
        };
        const std::vector<Asked> k_rows{
            {"opening 60, 16 + 21 - 5.823",
             "bend.blank",
             {{"thickness", "5 mm"},
              {"legs", legs("16 mm", "21 mm")},
              {"bends", turned("120", "6 mm")}},
             "blank",
             31.177,
             1.0,
             0.0006},
            {"nothing off at 10 degrees turned: 60 + 40",
             "bend.blank",
             {{"thickness", "5 mm"},
              {"legs", legs("60 mm", "40 mm")},
              {"bends", turned("10", "8 mm")}},
             "blank",
             100.0,
             1.0,
             1e-9},
            {"K 0.42, 3 + 2 - 0.4424 in",
             "bend.blank",
             {{"thickness", "0.25 in"},
              {"legs", legs("3 in", "2 in")},
              {"bends", turned("90", "0.25 in")},
              {"k", "0.42"}},
             "blank",
             4.5576,
             k_mm_per_in,
             0.00005},
        };
        CHECK(k_rows.size() == 3);
        check_and_count("worked", k_rows);
    }

} // TEST_SUITE
