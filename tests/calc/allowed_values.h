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
    AllowedValue{"bend.least_leg", "radius", "zero", "a sharp inside corner; the V alone counts"},
};

} // namespace treadle::test
