// Rows asked by name with text, as the command does, and the figure that comes back.

#pragma once

#include "calc/calculation.h"

#include <doctest/doctest.h>

#include <cmath>
#include <string>

#include "evidence_rows.h"

namespace treadle::test {

inline base::Result<calc::Answer> answer_of(const char* calculation,
                                            const calc::Input::Object& in) {
    static const material::GradeTable k_no_grades;
    static const section::SectionTable k_no_sections;
    return calc::run(calculation, calc::Input(in), {k_no_grades, k_no_sections});
}

struct InUnits {
    double operator()(quantity::Number q) const { return q.value; }
    double operator()(quantity::Share q) const { return q.value; }
    double operator()(Voltage q) const { return quantity::to_volts(q); }
    double operator()(Current q) const { return quantity::to_amperes(q); }
    double operator()(ApparentPower q) const { return quantity::to_kilovolt_amperes(q); }
    double operator()(Power q) const { return quantity::to_kilowatts(q); }
    double operator()(Resistance q) const { return quantity::to_ohms(q); }
    double operator()(ResistancePerLength q) const {
        return quantity::to_ohms_per_thousand_feet(q);
    }
    double operator()(Length q) const { return quantity::to_inches(q); }
    double operator()(Mass q) const { return quantity::to_pounds(q); }
    template <class Other>
    double operator()(Other) const {
        return NAN; // no figure of this folder
    }
};

/// In V, A, kVA, kW, ohm, ohm per 1000 ft, inches or pounds; not a number when it is not there.
inline double asked(const char* calculation, const calc::Input::Object& in, const char* figure) {
    const auto answer = answer_of(calculation, in);
    if (answer.ok())
        for (const calc::Figure& f : answer->figures)
            if (f.name == figure)
                return std::visit(InUnits{}, f.value);
    return NAN;
}

/// One row: what is asked, and what was printed.
struct AskedRow {
    const char* where;
    calc::Input::Object in;
    const char* figure;
    double printed;
    double tolerance;
};

template <class Rows>
void check_asked(const char* calculation, const char* grade, const Rows& rows) {
    for (const AskedRow& row : rows) {
        CAPTURE(row.where);
        const double ours = asked(calculation, row.in, row.figure);
        CAPTURE(ours);
        CAPTURE(row.printed);
        CHECK(std::abs(ours - row.printed) <= row.tolerance);
    }
    count_rows(grade, std::size(rows), calculation);
}

} // namespace treadle::test
