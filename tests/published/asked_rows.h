// A check row put as a question by name, the way the command puts it.

#pragma once

#include "calc/tables_for_tests.h"

#include <doctest/doctest.h>

#include <cmath>
#include <cstddef>
#include <map>
#include <string>
#include <vector>

#include "evidence_rows.h"

namespace treadle::test {

// The units of the answers are kN, mm, MPa, degrees and J.
inline constexpr double k_kn_per_ton = 8.896443230521;
inline constexpr double k_mm_per_in = 25.4;
inline constexpr double k_mpa_per_ksi = 6.894757293168;

struct Asked {
    const char* where; ///< the publication or the arithmetic
    const char* calculation;
    calc::Input::Object in;
    const char* output;
    double expected; ///< in the unit that it is written in
    double unit;     ///< of the answer for one of it
    double tolerance;
};

inline void check_asked(const std::vector<Asked>& rows) {
    for (const Asked& row : rows) {
        CAPTURE(row.where);
        CAPTURE(row.calculation);
        const auto answer = ask(row.calculation, row.in);
        const std::string refused = answer.ok() ? "" : answer.refusal().field;
        CAPTURE(refused);
        const double ours = figure(answer, row.output) / row.unit;
        CAPTURE(ours);
        CAPTURE(row.expected);
        CHECK(std::abs(ours - row.expected) <= row.tolerance);
    }
}

/// Checks and counts. Rows that another table counts already are only checked.
inline void check_and_count(const char* grade, const std::vector<Asked>& rows) {
    check_asked(rows);
    std::map<std::string, std::size_t> by_name;
    for (const Asked& row : rows)
        ++by_name[row.calculation];
    for (const auto& [name, count] : by_name)
        count_rows(grade, count, name.c_str());
}

} // namespace treadle::test
