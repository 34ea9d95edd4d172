#include "equipment/trial_record.h"

#include <utility>

namespace treadle::equipment {

namespace {

using quantity::Fault;
using quantity::inside;
using quantity::size_fault;

Fault strip_fault(const TrialStrip& strip) {
    if (auto fault = size_fault(strip.blank, "blank"))
        return fault;
    if (auto fault = size_fault(strip.leg_a, "leg_a"))
        return fault;
    if (auto fault = size_fault(strip.leg_b, "leg_b"))
        return fault;
    for (const auto& [leg, field] : {std::pair{strip.leg_a, "leg_a"}, {strip.leg_b, "leg_b"}})
        if (!(leg < strip.blank))
            return base::Refusal{field,
                                 "The leg is as long as the whole strip.",
                                 "less than what the strip was cut to"};
    return std::nullopt;
}

} // namespace

Fault trial_record_fault(const TrialRecord& record) {
    if (auto fault = quantity::text_fault(record.grade, "grade", quantity::Presence::required))
        return fault;
    if (auto fault = size_fault(record.thickness, "thickness"))
        return fault;
    if (auto fault = size_fault(record.opening, "opening"))
        return fault;
    if (auto fault = size_fault(record.radius, "radius"))
        return fault;
    if (!(record.angle > Angle{} && record.angle < degrees(180.0)))
        return base::Refusal{"angle", "The angle is out of range.", "above 0, below 180 deg"};
    if (record.strips.empty())
        return base::Refusal{"strips", "There is no strip.", "one at least, two for a spread"};
    if (record.strips.size() > k_most_trial_strips)
        return base::Refusal{"strips", "There are too many strips.", "up to 50"};
    for (std::size_t i = 0; i < record.strips.size(); ++i)
        if (auto fault = strip_fault(record.strips[i]))
            return inside("strips", i, *fault);
    return std::nullopt;
}

} // namespace treadle::equipment
