#include "plan/job_time.h"

#include "base/text.h"
#include "plan/batches.h"

#include <cmath>
#include <set>

namespace treadle::plan {

namespace {

using base::Refusal;
using equipment::WorkTimes;

/// The times that every set-up needs, all known.
struct Known {
    Duration new_station;
    Duration new_tool;
    Duration stroke;
    Duration position;
    Duration first_piece;
};

base::Result<Known> known_times(const WorkTimes& times) {
    struct Datum {
        const std::optional<Duration>& value;
        const char* field;
        const char* words;
    };
    const Datum data[] = {{times.new_station, "new_station_s", "the change to another station"},
                          {times.new_tool, "new_tool_s", "a change of tools"},
                          {times.stroke, "stroke_s", "a stroke"},
                          {times.position, "position_s", "going to the next position"},
                          {times.first_piece, "first_piece_s", "the check of a first piece"}};
    for (const Datum& datum : data)
        if (!datum.value)
            return Refusal{std::string("rules.times.") + datum.field,
                           std::string("the house rules have no time for ") + datum.words,
                           ""};
    return Known{
        *times.new_station, *times.new_tool, *times.stroke, *times.position, *times.first_piece};
}

/// The band that covers the weight; heavier than all of them is not known.
std::optional<Duration> handling_of(const WorkTimes& times, Mass weight) {
    for (const equipment::HandlingTime& band : times.handling)
        if (weight <= band.up_to)
            return band.each;
    return std::nullopt;
}

/// After the first piece, where the house measures one in so many.
double more_checks(int pieces, const equipment::HouseRules& rules) {
    return static_cast<double>(pieces_measured(pieces, rules) - 1);
}

bool same_place(const Tooling& a, const Tooling& b) {
    return a.station == b.station && a.attachment == b.attachment;
}

} // namespace

base::Result<JobTime> job_time(const Plan& plan, const equipment::Shop& shop) {
    const WorkTimes& times = shop.rules.times;
    const auto known = known_times(times);
    if (!known)
        return known.refusal();
    JobTime time;
    time.invented = times.invented;
    std::set<int> begun;
    const SetUp* before = nullptr;
    for (const SetUp& set_up : plan.order) {
        SetUpTime one;
        one.change = before != nullptr && same_place(before->tools, set_up.tools)
                         ? known->new_tool
                         : known->new_station;
        std::set<int> in_hand;
        one.steps.reserve(set_up.steps.size());
        for (const Step& step : set_up.steps) {
            Duration took = (known->stroke + known->position) * static_cast<double>(step.strokes);
            one.strokes += took;
            const PartPlan& part = *plan.parts[static_cast<std::size_t>(step.part)];
            const auto handling = handling_of(times, part.mass_each);
            if (!handling)
                return Refusal{"rules.times.handling",
                               "no handling time in the house rules covers the weight of " +
                                   part.part->mark,
                               ""};
            if (in_hand.insert(step.part).second) {
                const Duration hands = *handling * static_cast<double>(step.pieces);
                one.handling += hands;
                const Duration more = known->first_piece * more_checks(step.pieces, shop.rules);
                one.checks += more;
                took += hands + more;
            }
            if (begun.insert(step.part).second) {
                one.checks += known->first_piece;
                took += known->first_piece;
            }
            one.steps.push_back(took);
        }
        time.total += one.total();
        time.set_ups.push_back(std::move(one));
        before = &set_up;
    }
    if (times.labour_per_hour)
        time.labour = quantity::to_hours(time.total) * *times.labour_per_hour;
    return time;
}

std::string duration_words(Duration time) {
    constexpr double k_hours_from_min = 59.95; // what would round to 60.0
    const double in_minutes = quantity::to_minutes(time);
    if (in_minutes < k_hours_from_min)
        return base::write_fixed(in_minutes, 1) + " min";
    const double whole = std::ceil(in_minutes - 1e-9);
    const double hours = std::floor(whole / 60.0);
    const double rest = whole - hours * 60.0;
    return base::write_fixed(hours, 0) + " h " + (rest < 10.0 ? "0" : "") +
           base::write_fixed(rest, 0) + " min";
}

std::string time_words(const base::Result<JobTime>& time) {
    if (!time)
        return "not computed: " + time.refusal().reason;
    std::string words = duration_words(time->total);
    if (time->labour)
        words += ", labour " + base::write_fixed(*time->labour, 2);
    return time->invented ? words + " (invented times)" : words;
}

} // namespace treadle::plan
