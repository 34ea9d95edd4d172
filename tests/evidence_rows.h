// Counts the check rows held against the world outside this project, for the run's report.
//
// A test of a row table calls count_rows once for each calculation it checks; the line it prints is
// summed by tests/run, by grade of evidence and by calculation.

#pragma once

#include <cstddef>
#include <cstdio>

namespace treadle::test {

/// grade: published, from-memory, worked, common-practice, cross-check, disagreement.
inline void count_rows(const char* grade, std::size_t rows, const char* calculation) {
    std::printf("evidence-rows %s %zu %s\n", grade, rows, calculation);
}

} // namespace treadle::test
