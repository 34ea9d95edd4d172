// Electrical quantities, with their unit in the type like the others.
//
// Base units inside: volt, ampere, metre. Power in watts and in volt-amperes are two types: a motor
// draws more volt-amperes than watts, and a generator is sized by the one and bought by the other.
// 1 hp = 550 ft lbf/s, exact by the definitions of quantity.h.

#pragma once

#include "quantity/quantity.h"

#include <cmath>
#include <compare>

namespace treadle::quantity {

/// volt^V ampere^A metre^M; `F` counts power factors, which tell watts from volt-amperes.
template <int V, int A, int M, int F>
class Electrical {
public:
    constexpr Electrical() = default;
    [[nodiscard]] static constexpr Electrical from_base(double value) {
        Electrical q;
        q.value_ = value;
        return q;
    }
    [[nodiscard]] constexpr double in_base() const { return value_; }

    friend constexpr Electrical operator*(Electrical a, double s) {
        return from_base(a.value_ * s);
    }
    friend constexpr Electrical operator*(double s, Electrical a) {
        return from_base(a.value_ * s);
    }
    friend constexpr Electrical operator/(Electrical a, double s) {
        return from_base(a.value_ / s);
    }
    friend constexpr double operator/(Electrical a, Electrical b) { return a.value_ / b.value_; }
    friend constexpr bool operator==(Electrical a, Electrical b) { return a.value_ == b.value_; }
    friend constexpr std::partial_ordering operator<=>(Electrical a, Electrical b) {
        return a.value_ <=> b.value_;
    }

private:
    double value_ = 0.0;
};

using Voltage = Electrical<1, 0, 0, 0>;
using Current = Electrical<0, 1, 0, 0>;
using ApparentPower = Electrical<1, 1, 0, 0>;
using Power = Electrical<1, 1, 0, 1>;
using Resistance = Electrical<1, -1, 0, 0>;
using ResistancePerLength = Electrical<1, -1, -1, 0>;

constexpr ApparentPower operator*(Voltage v, Current i) {
    return ApparentPower::from_base(v.in_base() * i.in_base());
}
constexpr Current operator/(ApparentPower s, Voltage v) {
    return Current::from_base(s.in_base() / v.in_base());
}
constexpr Voltage operator*(Current i, Resistance r) {
    return Voltage::from_base(i.in_base() * r.in_base());
}
constexpr Resistance operator*(Length l, ResistancePerLength r) {
    return Resistance::from_base(to_millimetres(l) / 1000.0 * r.in_base());
}
constexpr Length operator/(Resistance r, ResistancePerLength per) {
    return metres(r.in_base() / per.in_base());
}
constexpr Resistance operator/(Voltage v, Current i) {
    return Resistance::from_base(v.in_base() / i.in_base());
}

// Make by unit.
constexpr Voltage volts(double v) { return Voltage::from_base(v); }
constexpr Current amperes(double v) { return Current::from_base(v); }
constexpr ApparentPower kilovolt_amperes(double v) { return ApparentPower::from_base(v * 1000.0); }
constexpr Power watts(double v) { return Power::from_base(v); }
constexpr double k_watts_per_horsepower = 550.0 * k_newtons_per_pound_force * 0.3048;
constexpr Power horsepower(double v) { return Power::from_base(v * k_watts_per_horsepower); }
constexpr ResistancePerLength ohms_per_kilometre(double v) {
    return ResistancePerLength::from_base(v / 1000.0);
}
constexpr ResistancePerLength ohms_per_thousand_feet(double v) {
    return ResistancePerLength::from_base(v / 304.8);
}

// Read by unit.
constexpr double to_volts(Voltage q) { return q.in_base(); }
constexpr double to_amperes(Current q) { return q.in_base(); }
constexpr double to_kilovolt_amperes(ApparentPower q) { return q.in_base() / 1000.0; }
constexpr double to_kilowatts(Power q) { return q.in_base() / 1000.0; }
constexpr double to_horsepower(Power q) { return q.in_base() / k_watts_per_horsepower; }
constexpr double to_ohms(Resistance q) { return q.in_base(); }
constexpr double to_ohms_per_kilometre(ResistancePerLength q) { return q.in_base() * 1000.0; }
constexpr double to_ohms_per_thousand_feet(ResistancePerLength q) { return q.in_base() * 304.8; }

template <int V, int A, int M, int F>
[[nodiscard]] inline bool is_finite(Electrical<V, A, M, F> q) {
    return std::isfinite(q.in_base());
}

} // namespace treadle::quantity

namespace treadle {
using quantity::ApparentPower;
using quantity::Current;
using quantity::Power;
using quantity::Resistance;
using quantity::ResistancePerLength;
using quantity::Voltage;
} // namespace treadle
