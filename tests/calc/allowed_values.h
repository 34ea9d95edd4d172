// Values that look like nonsense and have a meaning for one input, each with its reason.
//
// The test of refusals tries every other one, and fails when a line here is no longer true.

#pragma once

#include <array>
#include <string_view>

namespace treadle::test {

struct AllowedValue {
    std::string_view calculation;
    std::string_view input;
    std::string_view trial; ///< zero, negative, absurd, wrong dimension
    std::string_view reason;
};

inline constexpr std::array k_allowed_values{
    AllowedValue{"bend.radius", "nose", "zero", "a sharp nose; the V decides the radius"},
    AllowedValue{"shear.mitre", "angle", "zero", "a square cut"},
    AllowedValue{"notch.bites", "overlap", "zero", "bites side by side; the working warns"},
    AllowedValue{"bar.ring", "straight", "zero", "an arc without straight ends"},
    AllowedValue{"bar.hook", "straight", "zero", "an eye without a shank"},
    AllowedValue{"bar.hook", "tail", "zero", "a hook without a tail"},
    AllowedValue{"bend.least_leg", "radius", "zero", "a sharp inside corner; the V alone counts"},
};

} // namespace treadle::test
