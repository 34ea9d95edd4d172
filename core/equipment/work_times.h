// How long this shop's own hands take. Every figure is the shop's; none is a standard, so none has
// a usual value: what stays empty makes the time of a job "not computed", never a guess.

#pragma once

#include "quantity/duration.h"
#include "quantity/input_limits.h"
#include "quantity/quantity.h"

#include <optional>
#include <vector>

namespace treadle::equipment {

/// One piece onto the machine and off again, for pieces up to a weight.
struct HandlingTime {
    Mass up_to;
    Duration each;
};

struct WorkTimes {
    bool invented = false;                 ///< an example, said beside every time made from it
    std::optional<Duration> new_station;   ///< set-up at another station or attachment
    std::optional<Duration> new_tool;      ///< other tools or settings at the same one
    std::optional<Duration> stroke;        ///< down, up and the foot
    std::optional<Duration> position;      ///< to the next mark or stop, each stroke
    std::optional<Duration> first_piece;   ///< measuring the first of each part, once
    std::vector<HandlingTime> handling;    ///< weights rise
    std::optional<double> labour_per_hour; ///< in the shop's own money
};

/// Times from zero to a day; weights that rise, up to 10 t.
[[nodiscard]] quantity::Fault times_fault(const WorkTimes& times);

} // namespace treadle::equipment
