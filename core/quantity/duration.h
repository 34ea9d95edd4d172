// How long work takes. A type of its own, seconds inside: no time mixes with a length or a count.

#pragma once

#include <cmath>
#include <compare>

namespace treadle::quantity {

class Duration {
public:
    constexpr Duration() = default;
    [[nodiscard]] static constexpr Duration from_base(double value) {
        Duration d;
        d.seconds_ = value;
        return d;
    }
    [[nodiscard]] constexpr double in_base() const { return seconds_; }
    constexpr Duration& operator+=(Duration o) { return seconds_ += o.seconds_, *this; }
    friend constexpr Duration operator+(Duration a, Duration b) {
        return from_base(a.seconds_ + b.seconds_);
    }
    friend constexpr Duration operator*(Duration a, double s) { return from_base(a.seconds_ * s); }
    friend constexpr bool operator==(Duration a, Duration b) { return a.seconds_ == b.seconds_; }
    friend constexpr std::partial_ordering operator<=>(Duration a, Duration b) {
        return a.seconds_ <=> b.seconds_;
    }

private:
    double seconds_ = 0.0;
};

// Make and read by unit.
constexpr Duration seconds(double v) { return Duration::from_base(v); }
constexpr Duration minutes(double v) { return Duration::from_base(v * 60.0); }
constexpr double to_seconds(Duration q) { return q.in_base(); }
constexpr double to_minutes(Duration q) { return q.in_base() / 60.0; }
constexpr double to_hours(Duration q) { return q.in_base() / 3600.0; }

[[nodiscard]] inline bool is_finite(Duration q) { return std::isfinite(q.in_base()); }

} // namespace treadle::quantity

namespace treadle {
using quantity::Duration;
} // namespace treadle
