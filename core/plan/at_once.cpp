#include "plan/at_once.h"

#include "base/text.h"
#include "plan/job_time.h"

#include <algorithm>
#include <cmath>
#include <map>
#include <tuple>

namespace treadle::plan {

namespace {

using equipment::Shop;
using equipment::Station;

std::size_t at(int index) { return static_cast<std::size_t>(index); }

bool names(const Station& station, const Station& other) {
    return std::find(station.excludes.begin(), station.excludes.end(), other.id) !=
           station.excludes.end();
}

/// Either may name the other; a station is never free beside itself.
bool stations_apart(const Shop& shop, int a, int b) {
    if (a == k_none || b == k_none || a == b)
        return true;
    const Station& one = shop.machine.stations[at(a)];
    const Station& other = shop.machine.stations[at(b)];
    return names(one, other) || names(other, one);
}

/// A tool by kind and row of the crib, or by its size where it is still to be bought.
using Tool = std::tuple<int, int, double, double>;

struct ToolInUse {
    Tool tool;
    int count = 1;
};

template <class Row>
int count_of(const std::vector<Row>& rows, int index) {
    return rows[at(index)].count;
}

Tool bought(int kind, Length size, Length size2 = {}) {
    return {kind, k_none, quantity::to_millimetres(size), quantity::to_millimetres(size2)};
}

/// In fixed places, so that a list of numbers holds them.
std::vector<ToolInUse> tools_of(const Shop& shop, const Tooling& t) {
    std::vector<ToolInUse> used;
    const auto owned = [&](int kind, int index, int count) {
        used.push_back({{kind, index, 0.0, 0.0}, count});
    };
    if (t.attachment != k_none)
        owned(0, t.attachment, 1);
    if (t.punch != k_none)
        owned(1, t.punch, count_of(shop.crib.punches, t.punch));
    else if (t.punch_size.size > Length{})
        used.push_back({bought(1, t.punch_size.size, t.punch_size.size2), 1});
    if (t.die != k_none)
        owned(2, t.die, count_of(shop.crib.dies, t.die));
    else if (t.die_size.size > Length{})
        used.push_back({bought(2, t.die_size.size, t.die_size.size2), 1});
    if (t.vee != k_none)
        owned(3, t.vee, count_of(shop.crib.vees, t.vee));
    else if (t.opening > Length{})
        used.push_back({bought(3, t.opening), 1});
    if (t.brake_punch != k_none)
        owned(4, t.brake_punch, count_of(shop.crib.brake_punches, t.brake_punch));
    else if (t.nose > Length{})
        used.push_back({bought(4, t.nose), 1});
    if (t.saddle_die != k_none)
        owned(5, t.saddle_die, 1);
    else if (t.saddle_run > Length{})
        used.push_back({bought(5, t.saddle_run), 1});
    return used;
}

struct PartStages {
    int task = 0;
    int first = 0;
    int last = 0;
};

/// Which stages of its parts each set-up does.
std::vector<std::vector<PartStages>> stages_by_part(const Plan& plan) {
    std::vector<std::vector<int>> stage_of(plan.parts.size());
    for (std::size_t p = 0; p < plan.parts.size(); ++p) {
        stage_of[p].resize(plan.parts[p]->operations.size());
        for (const WorkItem& item : plan.parts[p]->work)
            stage_of[p][at(item.operation)] = item.stage;
    }
    std::vector<std::vector<PartStages>> stages(plan.parts.size());
    for (std::size_t i = 0; i < plan.order.size(); ++i)
        for (const Step& step : plan.order[i].steps) {
            const int task = static_cast<int>(i);
            const int stage = stage_of[at(step.part)][at(step.operation)];
            std::vector<PartStages>& list = stages[at(step.part)];
            if (list.empty() || list.back().task != task)
                list.push_back({task, stage, stage});
            list.back().first = std::min(list.back().first, stage);
            list.back().last = std::max(list.back().last, stage);
        }
    return stages;
}

void put_precedence(const Plan& plan, LaneWork& work) {
    for (const std::vector<PartStages>& list : stages_by_part(plan))
        for (std::size_t b = 1; b < list.size(); ++b)
            for (std::size_t a = 0; a < b; ++a) {
                if (list[a].first < list[b].last)
                    work.tasks[at(list[b].task)].before.push_back(list[a].task);
                else
                    work.one_way = false;
            }
    for (LaneTask& task : work.tasks) {
        std::sort(task.before.begin(), task.before.end());
        task.before.erase(std::unique(task.before.begin(), task.before.end()), task.before.end());
    }
}

LaneWork lane_work(const Plan& plan, const Shop& shop, int people, const JobTime* time) {
    LaneWork work;
    work.lanes = people;
    work.parts = static_cast<int>(plan.parts.size());
    const auto stations = static_cast<int>(shop.machine.stations.size());
    work.stations = stations + 1; // the last: not known, so nothing runs beside it
    for (int a = 0; a <= stations; ++a)
        for (int b = 0; b <= stations; ++b)
            work.apart.push_back(
                stations_apart(shop, a == stations ? k_none : a, b == stations ? k_none : b));
    if (time != nullptr) {
        work.small_change = quantity::to_seconds(*shop.rules.times.new_tool);
        work.full_change = quantity::to_seconds(*shop.rules.times.new_station);
    }
    std::map<Tool, int> scarce;
    std::map<std::pair<int, int>, int> places;
    for (std::size_t i = 0; i < plan.order.size(); ++i) {
        const SetUp& set_up = plan.order[i];
        LaneTask task;
        task.station = set_up.tools.station == k_none ? stations : set_up.tools.station;
        task.place = places
                         .try_emplace({set_up.tools.station, set_up.tools.attachment},
                                      static_cast<int>(places.size()))
                         .first->second;
        std::size_t next = 0;
        for (const ToolInUse& used : tools_of(shop, set_up.tools))
            if (used.count < people)
                task.scarce[next++] =
                    scarce.try_emplace(used.tool, static_cast<int>(scarce.size())).first->second;
        for (std::size_t s = 0; s < set_up.steps.size(); ++s)
            task.steps.push_back({set_up.steps[s].part,
                                  time != nullptr ? quantity::to_seconds(time->set_ups[i].steps[s])
                                                  : static_cast<double>(set_up.steps[s].strokes)});
        work.tasks.push_back(std::move(task));
    }
    put_precedence(plan, work);
    return work;
}

std::vector<std::pair<int, int>> pairs_of(const Plan& plan, const Shop& shop) {
    std::vector<char> used(shop.machine.stations.size());
    for (const SetUp& set_up : plan.order)
        if (set_up.tools.station != k_none)
            used[at(set_up.tools.station)] = 1;
    std::vector<std::pair<int, int>> pairs;
    const auto count = static_cast<int>(used.size());
    for (int a = 0; a < count; ++a)
        for (int b = a + 1; b < count; ++b)
            if (used[at(a)] != 0 && used[at(b)] != 0 && !stations_apart(shop, a, b))
                pairs.emplace_back(a, b);
    return pairs;
}

} // namespace

AtOnce at_once(const Plan& plan, const Shop& shop) {
    AtOnce shared;
    shared.people = std::clamp(shop.machine.operators, 1, k_most_lanes);
    const auto time = job_time(plan, shop);
    shared.timed = time.ok();
    shared.lanes =
        share_out(lane_work(plan, shop, shared.people, time.ok() ? &time.value() : nullptr));
    if (shared.people > 1)
        shared.stations = pairs_of(plan, shop);
    return shared;
}

bool may_run_at_once(const Shop& shop, const Tooling& a, const Tooling& b, int people) {
    if (stations_apart(shop, a.station, b.station))
        return false;
    for (const ToolInUse& one : tools_of(shop, a))
        for (const ToolInUse& other : tools_of(shop, b))
            if (one.tool == other.tool && one.count < people)
                return false;
    return true;
}

std::string lane_words(const AtOnce& shared, double figure) {
    if (shared.timed)
        return duration_words(quantity::seconds(figure));
    return base::write_fixed(figure, 0) + (figure == 1.0 ? " stroke" : " strokes");
}

std::string at_once_words(const AtOnce& shared) {
    const Lanes& lanes = shared.lanes;
    return lane_words(shared, lanes.length) + " with " + std::to_string(shared.people) +
           " people, " + lane_words(shared, lanes.alone) + " alone; " +
           (lanes.proven() ? std::string("proven shortest for these set-ups")
                           : "at least " + lane_words(shared, lanes.least));
}

const char* at_once_caution() {
    return "Only where the machine's plate or manual allows both stations at once, with the force "
           "and oil for both: that is not computed here.";
}

} // namespace treadle::plan
