#include "plan/wear.h"

#include "plan/words.h"

#include <limits>

namespace treadle::plan {

namespace {

/// Counts and interval of a tool; false where the crib has no such tool.
struct Edge {
    std::optional<int> before;
    std::optional<int> interval;
};

template <class Tool>
Edge edge_of(const Tool& tool, const equipment::HouseRules& rules) {
    return {tool.strokes_since_grind,
            tool.regrind_after ? tool.regrind_after : rules.regrind_after};
}

int tool_of(const Tooling& tools, EdgeKind kind) {
    switch (kind) {
    case EdgeKind::punch:
        return tools.punch;
    case EdgeKind::die:
        return tools.die;
    case EdgeKind::saddle_die:
        return tools.saddle_die;
    }
    return k_none;
}

/// By tool of one kind, all strokes of the job; tools that it does not use have none.
std::vector<long long> strokes_by_tool(const Plan& plan, EdgeKind kind, std::size_t tools) {
    std::vector<long long> strokes(tools, 0);
    for (const SetUp& set_up : plan.order) {
        const int tool = tool_of(set_up.tools, kind);
        if (tool != k_none)
            strokes[static_cast<std::size_t>(tool)] += set_up.strokes;
    }
    return strokes;
}

/// Finds the set-up in which the last stroke before grinding is made.
void find_due(ToolWear& wear, const Plan& plan) {
    long long left = static_cast<long long>(*wear.interval) - *wear.before;
    for (std::size_t i = 0; i < plan.order.size(); ++i) {
        const SetUp& set_up = plan.order[i];
        if (tool_of(set_up.tools, wear.kind) != wear.tool)
            continue;
        if (left <= set_up.strokes) {
            wear.set_up = static_cast<int>(i);
            wear.into = static_cast<int>(left);
            return;
        }
        left -= set_up.strokes;
    }
}

template <class Tool>
void add_wear(std::vector<ToolWear>& list,
              EdgeKind kind,
              const std::vector<Tool>& tools,
              const Plan& plan,
              const equipment::HouseRules& rules) {
    const std::vector<long long> strokes = strokes_by_tool(plan, kind, tools.size());
    for (std::size_t i = 0; i < tools.size(); ++i) {
        if (strokes[i] == 0)
            continue;
        const Edge edge = edge_of(tools[i], rules);
        ToolWear wear;
        wear.kind = kind;
        wear.tool = static_cast<int>(i);
        wear.strokes = static_cast<int>(strokes[i]);
        wear.before = edge.before;
        wear.interval = edge.interval;
        if (edge.before && edge.interval) {
            wear.state = *edge.before >= *edge.interval               ? WearState::over
                         : *edge.before + strokes[i] < *edge.interval ? WearState::within
                                                                      : WearState::reached;
            if (wear.state == WearState::reached)
                find_due(wear, plan);
        }
        list.push_back(wear);
    }
}

template <class Tool>
void count(std::vector<Tool>& tools, EdgeKind kind, const Plan& plan) {
    const std::vector<long long> strokes = strokes_by_tool(plan, kind, tools.size());
    for (std::size_t i = 0; i < tools.size(); ++i)
        if (tools[i].strokes_since_grind) {
            const long long sum = *tools[i].strokes_since_grind + strokes[i];
            constexpr long long k_most = std::numeric_limits<int>::max();
            tools[i].strokes_since_grind = static_cast<int>(sum < k_most ? sum : k_most);
        }
}

} // namespace

std::vector<ToolWear> tool_wear(const Plan& plan, const equipment::Shop& shop) {
    std::vector<ToolWear> list;
    add_wear(list, EdgeKind::punch, shop.crib.punches, plan, shop.rules);
    add_wear(list, EdgeKind::die, shop.crib.dies, plan, shop.rules);
    add_wear(list, EdgeKind::saddle_die, shop.crib.saddle_dies, plan, shop.rules);
    return list;
}

equipment::Crib with_strokes(const Plan& plan, const equipment::Shop& shop) {
    equipment::Crib crib = shop.crib;
    count(crib.punches, EdgeKind::punch, plan);
    count(crib.dies, EdgeKind::die, plan);
    count(crib.saddle_dies, EdgeKind::saddle_die, plan);
    return crib;
}

std::string edge_words(EdgeKind kind, int tool, const equipment::Shop& shop, PrintStyle style) {
    const auto index = static_cast<std::size_t>(tool);
    switch (kind) {
    case EdgeKind::punch:
        return "Punch " + hole_words(shop.crib.punches[index].hole, style);
    case EdgeKind::die:
        return "Die " + hole_words(shop.crib.dies[index].hole, style);
    case EdgeKind::saddle_die: {
        const equipment::SaddleDie& die = shop.crib.saddle_dies[index];
        return need_words({Need::Kind::saddle_die, {}, die.run_diameter, die.branch_diameter},
                          style);
    }
    }
    return "";
}

std::string wear_words(const ToolWear& wear) {
    const std::string strokes =
        std::to_string(wear.strokes) + (wear.strokes == 1 ? " stroke" : " strokes");
    if (!wear.before)
        return strokes + " in this job; not known how many since the last grinding";
    const long long total = static_cast<long long>(*wear.before) + wear.strokes;
    const std::string sum = strokes + " in this job, " + std::to_string(total) + " since grinding";
    if (!wear.interval)
        return sum + "; no regrind interval is set";
    const std::string interval = std::to_string(*wear.interval);
    switch (wear.state) {
    case WearState::within:
        return sum + ", due at " + interval;
    case WearState::reached:
        return sum + ": due at " + interval + ", in set-up " + std::to_string(wear.set_up + 1) +
               " after " + std::to_string(wear.into) + (wear.into == 1 ? " stroke" : " strokes");
    case WearState::over:
        return std::to_string(*wear.before) + " since grinding, due at " + interval +
               ": grind before the job";
    case WearState::not_computed:
        break;
    }
    return sum;
}

const char* wear_key(WearState state) {
    switch (state) {
    case WearState::not_computed:
        return "not_computed";
    case WearState::within:
        return "within";
    case WearState::reached:
        return "reached";
    case WearState::over:
        return "over";
    }
    return "";
}

const char* edge_key(EdgeKind kind) {
    switch (kind) {
    case EdgeKind::punch:
        return "punch";
    case EdgeKind::die:
        return "die";
    case EdgeKind::saddle_die:
        return "saddle_die";
    }
    return "";
}

} // namespace treadle::plan
