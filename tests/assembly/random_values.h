// Values for a thousand layouts of each kind: a fixed seed, sizes that a shop would ask for.

#pragma once

#include <cstdint>
#include <string>
#include <vector>

#include "assembly/kind.h"

namespace treadle::test {

/// The same numbers on every machine.
class Dice {
public:
    explicit Dice(std::uint64_t seed) : state_(seed) {}
    /// From low to high, both reached, in steps.
    double roll(double low, double high, double step) {
        const auto steps = static_cast<std::uint64_t>((high - low) / step + 0.5) + 1;
        return low + static_cast<double>(next() % steps) * step;
    }
    std::string inches(double low, double high, double step = 1.0 / 16.0) {
        return std::to_string(roll(low, high, step)) + " in";
    }
    template <std::size_t N>
    std::string pick(const char* const (&list)[N]) {
        return list[next() % N];
    }
    bool chance() { return next() % 2 == 0; }

private:
    std::uint64_t next() {
        state_ = state_ * 6364136223846793005ULL + 1442695040888963407ULL;
        return state_ >> 33U;
    }
    std::uint64_t state_;
};

struct RandomKind {
    const char* kind;
    assembly::Values (*values)(Dice& dice);
};
[[nodiscard]] const std::vector<RandomKind>& random_kinds();

} // namespace treadle::test
