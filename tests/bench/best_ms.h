// The shortest of several runs: what else the machine does only ever adds.

#pragma once

#include <algorithm>
#include <chrono>

namespace treadle::bench {

template <class Work>
double best_ms(int rounds, Work work) {
    double best = 0.0;
    for (int i = 0; i < rounds; ++i) {
        const auto start = std::chrono::steady_clock::now();
        work();
        const std::chrono::duration<double, std::milli> took =
            std::chrono::steady_clock::now() - start;
        best = i == 0 ? took.count() : std::min(best, took.count());
    }
    return best;
}

} // namespace treadle::bench
