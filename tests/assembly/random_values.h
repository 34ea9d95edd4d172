// Values for a thousand layouts of each kind: a fixed seed, sizes that a shop would ask for.

#pragma once

#include <cstdint>
#include <string>
#include <vector>

#include "assembly/kind.h"

namespace treadle::test {

/// The same numbers on every machine, in sizes of the shop's own system.
class Dice {
public:
    explicit Dice(std::uint64_t seed, UnitSystem units = UnitSystem::inch)
        : state_(seed),
          units_(units) {}
    /// From low to high, both reached, in steps.
    double roll(double low, double high, double step) {
        const auto steps = static_cast<std::uint64_t>((high - low) / step + 0.5) + 1;
        return low + static_cast<double>(next() % steps) * step;
    }
    /// From low to high in inches by sixteenths; in millimetres, 25 of them to the inch, by one.
    std::string length(double low, double high) {
        return units_ == UnitSystem::inch
                   ? std::to_string(roll(low, high, 1.0 / 16.0)) + " in"
                   : std::to_string(roll(25.0 * low, 25.0 * high, 1.0)) + " mm";
    }
    template <std::size_t N>
    std::string pick(const char* const (&list)[N]) {
        return list[next() % N];
    }
    template <std::size_t N, std::size_t M>
    std::string pick(const char* const (&inch)[N], const char* const (&metric)[M]) {
        return units_ == UnitSystem::inch ? pick(inch) : pick(metric);
    }
    [[nodiscard]] const char* either(const char* inch, const char* metric) const {
        return units_ == UnitSystem::inch ? inch : metric;
    }
    [[nodiscard]] bool metric() const { return units_ == UnitSystem::metric; }
    bool chance() { return next() % 2 == 0; }

private:
    std::uint64_t next() {
        state_ = state_ * 6364136223846793005ULL + 1442695040888963407ULL;
        return state_ >> 33U;
    }
    std::uint64_t state_;
    UnitSystem units_;
};

struct RandomKind {
    const char* kind;
    assembly::Values (*values)(Dice& dice);
};
[[nodiscard]] const std::vector<RandomKind>& random_kinds();

} // namespace treadle::test
