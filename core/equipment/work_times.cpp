#include "equipment/work_times.h"

#include <cmath>

namespace treadle::equipment {

namespace {

using quantity::Fault;
using quantity::inside;

constexpr Duration k_longest_time = quantity::minutes(24.0 * 60.0);
constexpr Mass k_heaviest = quantity::kilograms(10000.0); // more than a portable machine's stand
constexpr double k_dearest_hour = 1e6;

Fault time_fault(Duration time, const char* field) {
    if (time >= Duration{} && time <= k_longest_time)
        return std::nullopt;
    return base::Refusal{field, "The time is out of range.", "0 to 86400 s (a day)"};
}

Fault known_time_fault(const std::optional<Duration>& time, const char* field) {
    return time ? time_fault(*time, field) : std::nullopt;
}

Fault handling_fault(const std::vector<HandlingTime>& handling) {
    Mass last;
    for (std::size_t i = 0; i < handling.size(); ++i) {
        const Mass up_to = handling[i].up_to;
        if (!(up_to > last && up_to <= k_heaviest))
            return inside("handling",
                          i,
                          {"up_to",
                           "The weight is out of range.",
                           "above zero and above the one before, up to 10 t"});
        if (auto fault = time_fault(handling[i].each, "each_s"))
            return inside("handling", i, *fault);
        last = up_to;
    }
    return std::nullopt;
}

} // namespace

Fault times_fault(const WorkTimes& times) {
    if (auto fault = known_time_fault(times.new_station, "new_station_s"))
        return fault;
    if (auto fault = known_time_fault(times.new_tool, "new_tool_s"))
        return fault;
    if (auto fault = known_time_fault(times.stroke, "stroke_s"))
        return fault;
    if (auto fault = known_time_fault(times.position, "position_s"))
        return fault;
    if (auto fault = known_time_fault(times.first_piece, "first_piece_s"))
        return fault;
    if (auto fault = handling_fault(times.handling))
        return fault;
    if (times.labour_per_hour &&
        !(*times.labour_per_hour > 0.0 && *times.labour_per_hour <= k_dearest_hour))
        return base::Refusal{"labour_per_hour", "This is out of range.", "above zero"};
    return std::nullopt;
}

} // namespace treadle::equipment
