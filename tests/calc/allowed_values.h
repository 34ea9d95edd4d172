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
    AllowedValue{"lift.limit", "vertical", "zero", "hands at the floor"},
    AllowedValue{"lift.limit", "travel", "zero", "a lift that goes neither up nor down"},
    AllowedValue{"lift.limit", "asymmetry", "zero", "straight ahead"},
    AllowedValue{"lift.limit", "origin_vertical", "zero", "hands at the floor"},
    AllowedValue{"lift.reach", "vertical", "zero", "hands at the floor"},
    AllowedValue{"generator.derate", "altitude", "zero", "at the rated height"},
    AllowedValue{"generator.derate", "over_temperature_f", "zero", "at the rated temperature"},
    AllowedValue{"running.places", "first", "zero", "the first hole's line is the datum"},
    AllowedValue{"running.places", "last", "zero", "the last place is the part's end"},
    AllowedValue{"bar.usable", "trim_start", "zero", "a sawn end needs no trim"},
    AllowedValue{"bar.usable", "trim_end", "zero", "a sawn end needs no trim"},
    AllowedValue{"bar.pieces", "trim_start", "zero", "a sawn end needs no trim"},
    AllowedValue{"bar.pieces", "trim_end", "zero", "a sawn end needs no trim"},
    AllowedValue{"bar.pieces", "kerf", "zero", "a shear loses nothing"},
    AllowedValue{"rake.opening", "rail_height", "zero", "the rail lies on the nosing line"},
    AllowedValue{"saddle.template", "offset", "zero", "the axes cross"},
    AllowedValue{"saddle.blank", "fit_up", "zero", "no gap is left"},
    AllowedValue{"frame.cut", "radius", "zero", "a corner cut to the face bends sharp"},
};

} // namespace treadle::test
