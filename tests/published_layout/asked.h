// Check rows put to a named calculation as text, the way the command does, and counted by grade.

#pragma once

#include "calc/calculation.h"
#include "calc/tables_for_tests.h"

#include <doctest/doctest.h>

#include <cmath>
#include <map>
#include <string>
#include <utility>

#include "evidence_rows.h"

namespace treadle::test {

// Grades of evidence, as the run's report groups them.
inline constexpr const char* k_published = "published";
inline constexpr const char* k_memory = "from-memory";
inline constexpr const char* k_worked = "worked";
inline constexpr const char* k_practice = "common-practice";
inline constexpr const char* k_differs = "disagreement";

struct AskedRow {
    const char* grade;
    const char* calculation;
    const char* where;
    double ours;
    double expected;
    double tolerance;
};

/// The first figure in millimetres, or its own unit; not a number when there is no answer.
inline double base_figure(const char* calculation, const char* out, const calc::Input::Object& in) {
    return figure(ask(calculation, in), out);
}
inline double inch(const char* calculation, const char* out, const calc::Input::Object& in) {
    return base_figure(calculation, out, in) / 25.4;
}
/// An item of a list, in millimetres.
inline double
item(const char* calculation, const char* out, std::size_t place, const calc::Input::Object& in) {
    const auto answer = ask(calculation, in);
    if (answer.ok())
        for (const calc::Figure& f : answer->figures)
            if (f.name == out && f.list && place < f.list->size())
                return quantity::to_millimetres((*f.list)[place]);
    return NAN;
}
inline double inch_item(const char* calculation,
                        const char* out,
                        std::size_t place,
                        const calc::Input::Object& in) {
    return item(calculation, out, place, in) / 25.4;
}
/// 1 when the question is refused at this field.
inline double refused(const char* calculation, const char* field, const calc::Input::Object& in) {
    return field_of(ask(calculation, in)) == field ? 1.0 : 0.0;
}
/// 1 when the answer stands and a note of its working holds the words.
inline double said(const char* calculation, const char* words, const calc::Input::Object& in) {
    const auto answer = ask(calculation, in);
    if (answer.ok())
        for (const Working& working : answer->workings)
            if (working.note.find(words) != std::string::npos)
                return 1.0;
    return 0.0;
}

/// For values that hold to the arithmetic's last bits.
inline constexpr double k_exact = 1e-9;

template <class Rows>
void check_and_count(const Rows& rows) {
    std::map<std::pair<std::string, std::string>, std::size_t> counts;
    for (const AskedRow& row : rows) {
        CAPTURE(row.where);
        CAPTURE(row.ours);
        CAPTURE(row.expected);
        CHECK(std::abs(row.ours - row.expected) <= row.tolerance);
        ++counts[{row.grade, row.calculation}];
    }
    for (const auto& [key, count] : counts)
        count_rows(key.first.c_str(), count, key.second.c_str());
}

} // namespace treadle::test
