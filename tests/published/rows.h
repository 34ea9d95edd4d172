// A check row: what this program says beside what was printed, keyed by hand.

#pragma once

#include "base/result.h"
#include "quantity/quantity.h"

#include <doctest/doctest.h>

#include <cmath>

namespace treadle::test {

struct Row {
    const char* where; ///< the publication, and the row in it
    double ours;
    double printed;
    double tolerance; ///< half of the last printed digit, or as the source rounds
};

template <class Rows>
void check_rows(const Rows& rows) {
    for (const Row& row : rows) {
        CAPTURE(row.where);
        CAPTURE(row.ours);
        CAPTURE(row.printed);
        CHECK(std::abs(row.ours - row.printed) <= row.tolerance);
    }
}

// The answer in a unit; a refusal reads as not a number, which no tolerance lets pass.
inline double kilonewtons_of(const base::Result<Force>& r) {
    return r.ok() ? quantity::to_kilonewtons(*r) : NAN;
}
inline double us_tons_of(const base::Result<Force>& r) {
    return r.ok() ? quantity::to_us_tons(*r) : NAN;
}
inline double joules_of(const base::Result<Energy>& r) {
    return r.ok() ? quantity::to_joules(*r) : NAN;
}
inline double millimetres_of(const base::Result<Length>& r) {
    return r.ok() ? quantity::to_millimetres(*r) : NAN;
}
inline double inches_of(const base::Result<Length>& r) {
    return r.ok() ? quantity::to_inches(*r) : NAN;
}

} // namespace treadle::test
