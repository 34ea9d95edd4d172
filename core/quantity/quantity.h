// Quantities that carry their unit in the type.
//
// Base units inside: newton, millimetre, kilogram, degree. Nobody outside this room reads them raw:
// make and read by unit (inches(1.375), to_kilonewtons(f)).
// Ratios are exact and chained from the definitions: 1 in = 25.4 mm, 1 lb = 0.45359237 kg,
// g0 = 9.80665 m/s2. Source: NIST SP 811 (2008), appendix B; from memory, exact by definition.

#pragma once

#include <cmath>
#include <compare>
#include <numbers>

namespace treadle::quantity {

/// newton^F millimetre^L kilogram^M
template <int F, int L, int M>
class Quantity {
public:
    constexpr Quantity() = default;
    [[nodiscard]] static constexpr Quantity from_base(double value) {
        Quantity q;
        q.value_ = value;
        return q;
    }
    [[nodiscard]] constexpr double in_base() const { return value_; }

    constexpr Quantity operator-() const { return from_base(-value_); }
    constexpr Quantity& operator+=(Quantity o) { return value_ += o.value_, *this; }
    constexpr Quantity& operator-=(Quantity o) { return value_ -= o.value_, *this; }
    friend constexpr Quantity operator+(Quantity a, Quantity b) {
        return from_base(a.value_ + b.value_);
    }
    friend constexpr Quantity operator-(Quantity a, Quantity b) {
        return from_base(a.value_ - b.value_);
    }
    friend constexpr Quantity operator*(Quantity a, double s) { return from_base(a.value_ * s); }
    friend constexpr Quantity operator*(double s, Quantity a) { return from_base(a.value_ * s); }
    friend constexpr Quantity operator/(Quantity a, double s) { return from_base(a.value_ / s); }
    friend constexpr bool operator==(Quantity a, Quantity b) { return a.value_ == b.value_; }
    friend constexpr std::partial_ordering operator<=>(Quantity a, Quantity b) {
        return a.value_ <=> b.value_;
    }

private:
    double value_ = 0.0;
};

template <int F, int L, int M, int F2, int L2, int M2>
[[nodiscard]] constexpr auto operator*(Quantity<F, L, M> a, Quantity<F2, L2, M2> b) {
    const double product = a.in_base() * b.in_base();
    if constexpr (F + F2 == 0 && L + L2 == 0 && M + M2 == 0)
        return product;
    else
        return Quantity<F + F2, L + L2, M + M2>::from_base(product);
}

template <int F, int L, int M, int F2, int L2, int M2>
[[nodiscard]] constexpr auto operator/(Quantity<F, L, M> a, Quantity<F2, L2, M2> b) {
    const double ratio = a.in_base() / b.in_base();
    if constexpr (F == F2 && L == L2 && M == M2)
        return ratio;
    else
        return Quantity<F - F2, L - L2, M - M2>::from_base(ratio);
}

using Length = Quantity<0, 1, 0>;
using Area = Quantity<0, 2, 0>;
using Volume = Quantity<0, 3, 0>;
using Force = Quantity<1, 0, 0>;
using Stress = Quantity<1, -2, 0>;
using Energy = Quantity<1, 1, 0>;
using Mass = Quantity<0, 0, 1>;
using MassPerLength = Quantity<0, -1, 1>;
using Density = Quantity<0, -3, 1>;

/// A plane angle. Its own type: a bend angle and a length never mix by accident.
class Angle {
public:
    constexpr Angle() = default;
    [[nodiscard]] static constexpr Angle from_degrees(double value) {
        Angle a;
        a.degrees_ = value;
        return a;
    }
    [[nodiscard]] constexpr double in_degrees() const { return degrees_; }
    [[nodiscard]] constexpr double in_radians() const {
        return degrees_ * (std::numbers::pi / 180.0);
    }
    constexpr Angle operator-() const { return from_degrees(-degrees_); }
    friend constexpr Angle operator+(Angle a, Angle b) {
        return from_degrees(a.degrees_ + b.degrees_);
    }
    friend constexpr Angle operator-(Angle a, Angle b) {
        return from_degrees(a.degrees_ - b.degrees_);
    }
    friend constexpr Angle operator*(Angle a, double s) { return from_degrees(a.degrees_ * s); }
    friend constexpr Angle operator/(Angle a, double s) { return from_degrees(a.degrees_ / s); }
    friend constexpr bool operator==(Angle a, Angle b) { return a.degrees_ == b.degrees_; }
    friend constexpr std::partial_ordering operator<=>(Angle a, Angle b) {
        return a.degrees_ <=> b.degrees_;
    }

private:
    double degrees_ = 0.0;
};

// Make by unit.
constexpr Length millimetres(double v) { return Length::from_base(v); }
constexpr Length metres(double v) { return Length::from_base(v * 1000.0); }
constexpr Length inches(double v) { return Length::from_base(v * 25.4); }
constexpr Length feet(double v) { return Length::from_base(v * 304.8); }
constexpr Force newtons(double v) { return Force::from_base(v); }
constexpr Force kilonewtons(double v) { return Force::from_base(v * 1000.0); }
constexpr double k_newtons_per_pound_force = 0.45359237 * 9.80665;
constexpr Force pounds_force(double v) { return Force::from_base(v * k_newtons_per_pound_force); }
constexpr Force us_tons(double v) {
    return Force::from_base(v * 2000.0 * k_newtons_per_pound_force);
}
constexpr Force tonnes_force(double v) { return Force::from_base(v * 9806.65); }
constexpr double k_megapascals_per_ksi = 1000.0 * k_newtons_per_pound_force / (25.4 * 25.4);
constexpr Stress megapascals(double v) { return Stress::from_base(v); }
constexpr Stress ksi(double v) { return Stress::from_base(v * k_megapascals_per_ksi); }
constexpr Energy joules(double v) { return Energy::from_base(v * 1000.0); }
constexpr Energy foot_pounds(double v) {
    return Energy::from_base(v * k_newtons_per_pound_force * 304.8);
}
constexpr Mass kilograms(double v) { return Mass::from_base(v); }
constexpr Mass pounds(double v) { return Mass::from_base(v * 0.45359237); }
constexpr MassPerLength kilograms_per_metre(double v) {
    return MassPerLength::from_base(v / 1000.0);
}
constexpr MassPerLength pounds_per_foot(double v) {
    return MassPerLength::from_base(v * 0.45359237 / 304.8);
}
constexpr Density kilograms_per_cubic_metre(double v) { return Density::from_base(v * 1e-9); }
constexpr Angle degrees(double v) { return Angle::from_degrees(v); }
constexpr Area square_millimetres(double v) { return Area::from_base(v); }

// Read by unit.
constexpr double to_millimetres(Length q) { return q.in_base(); }
constexpr double to_inches(Length q) { return q.in_base() / 25.4; }
constexpr double to_newtons(Force q) { return q.in_base(); }
constexpr double to_kilonewtons(Force q) { return q.in_base() / 1000.0; }
constexpr double to_us_tons(Force q) { return q.in_base() / (2000.0 * k_newtons_per_pound_force); }
constexpr double to_pounds_force(Force q) { return q.in_base() / k_newtons_per_pound_force; }
constexpr double to_megapascals(Stress q) { return q.in_base(); }
constexpr double to_ksi(Stress q) { return q.in_base() / k_megapascals_per_ksi; }
constexpr double to_joules(Energy q) { return q.in_base() / 1000.0; }
constexpr double to_foot_pounds(Energy q) {
    return q.in_base() / (k_newtons_per_pound_force * 304.8);
}
constexpr double to_kilograms(Mass q) { return q.in_base(); }
constexpr double to_pounds(Mass q) { return q.in_base() / 0.45359237; }
constexpr double to_kilograms_per_metre(MassPerLength q) { return q.in_base() * 1000.0; }
constexpr double to_pounds_per_foot(MassPerLength q) { return q.in_base() * 304.8 / 0.45359237; }
constexpr double to_kilograms_per_cubic_metre(Density q) { return q.in_base() * 1e9; }
constexpr double to_degrees(Angle a) { return a.in_degrees(); }
constexpr double to_square_millimetres(Area q) { return q.in_base(); }
constexpr double to_square_inches(Area q) { return q.in_base() / (25.4 * 25.4); }

template <int F, int L, int M>
[[nodiscard]] inline bool is_finite(Quantity<F, L, M> q) {
    return std::isfinite(q.in_base());
}
[[nodiscard]] inline bool is_finite(Angle a) { return std::isfinite(a.in_degrees()); }

template <int F, int L, int M>
[[nodiscard]] constexpr Quantity<F, L, M> larger(Quantity<F, L, M> a, Quantity<F, L, M> b) {
    return a < b ? b : a;
}
template <int F, int L, int M>
[[nodiscard]] constexpr Quantity<F, L, M> smaller(Quantity<F, L, M> a, Quantity<F, L, M> b) {
    return b < a ? b : a;
}
[[nodiscard]] inline Length square_root(Area a) {
    return Length::from_base(std::sqrt(a.in_base()));
}

} // namespace treadle::quantity

namespace treadle {
using quantity::Angle;
using quantity::Area;
using quantity::degrees;
using quantity::Density;
using quantity::Energy;
using quantity::Force;
using quantity::inches;
using quantity::is_finite;
using quantity::kilonewtons;
using quantity::ksi;
using quantity::larger;
using quantity::Length;
using quantity::Mass;
using quantity::MassPerLength;
using quantity::megapascals;
using quantity::millimetres;
using quantity::smaller;
using quantity::Stress;
using quantity::us_tons;
using quantity::Volume;
} // namespace treadle
