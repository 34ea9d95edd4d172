#include "plan/bend_order.h"

#include "base/contracts.h"
#include "plan/bend_sweep.h"

#include <algorithm>
#include <cstring>

namespace treadle::plan {

namespace {

constexpr int k_never = 1000000;

/// How the part lies: which face up, which end to the stop.
constexpr std::size_t k_ways = 4;
std::size_t way_of(bool datum_up, bool start_gauged) {
    return (datum_up ? 2U : 0U) + (start_gauged ? 1U : 0U);
}

/// The cheapest way to have made a set of bends, the last of them lying some way.
struct Reached {
    int turns = k_never;
    int bend = -1;            ///< made last
    std::size_t way = k_ways; ///< before it; k_ways for the first bend
};

class Table {
public:
    explicit Table(const BendProblem& problem)
        : problem_(problem),
          sweep_(problem),
          cells_((std::size_t{1} << problem.bends.size()) * k_ways) {}

    BendSequence run() {
        // A set's number is larger than that of every set it grows from.
        const std::size_t sets = std::size_t{1} << problem_.bends.size();
        std::size_t farthest = 0;
        for (std::size_t made = 0; made + 1 < sets; ++made) {
            if (made != 0 && !is_reached(made))
                continue;
            if (size_of(made) > size_of(farthest))
                farthest = made;
            for (std::size_t bend = 0; bend < problem_.bends.size(); ++bend)
                if ((made >> bend & 1U) == 0)
                    extend(made, bend);
        }
        return is_reached(sets - 1) ? walk_back(sets - 1) : blocked_at(farthest);
    }

private:
    static int size_of(std::size_t made) {
        int count = 0;
        for (; made != 0; made &= made - 1)
            ++count;
        return count;
    }
    [[nodiscard]] Reached& cell(std::size_t made, std::size_t way) {
        return cells_[made * k_ways + way];
    }
    [[nodiscard]] bool is_reached(std::size_t made) {
        for (std::size_t way = 0; way < k_ways; ++way)
            if (cell(made, way).turns < k_never)
                return true;
        return false;
    }

    void extend(std::size_t made, std::size_t bend) {
        const auto set = static_cast<MadeBends>(made);
        if (sweep_.hit(bend, set))
            return;
        for (const bool start_gauged : {true, false}) {
            if (!sweep_.gauge(bend, set, start_gauged))
                continue;
            const std::size_t way = way_of(problem_.bends[bend].up, start_gauged);
            Reached& next = cell(made | std::size_t{1} << bend, way);
            const auto offer = [&](int turns, std::size_t before) {
                if (turns < next.turns)
                    next = {turns, static_cast<int>(bend), before};
            };
            if (made == 0)
                offer(0, k_ways);
            else
                for (std::size_t before = 0; before < k_ways; ++before)
                    offer(cell(made, before).turns + (before == way ? 0 : 1), before);
        }
    }

    BendSequence walk_back(std::size_t made) {
        BendSequence found;
        std::size_t way = 0;
        for (std::size_t other = 1; other < k_ways; ++other)
            if (cell(made, other).turns < cell(made, way).turns)
                way = other;
        found.turns = cell(made, way).turns;
        while (made != 0) {
            const Reached last = cell(made, way);
            const auto bend = static_cast<std::size_t>(last.bend);
            made &= ~(std::size_t{1} << bend);
            BendStep step;
            step.bend = last.bend;
            step.datum_up = problem_.bends[bend].up;
            step.start_gauged = (way & 1U) != 0;
            step.turned = last.way != k_ways && last.way != way;
            const auto gauge = sweep_.gauge(bend, static_cast<MadeBends>(made), step.start_gauged);
            TREADLE_EXPECT(gauge.has_value());
            step.against = gauge->against;
            step.stop = gauge->stop;
            found.steps.push_back(step);
            way = last.way;
        }
        std::reverse(found.steps.begin(), found.steps.end());
        return found;
    }

    /// Why none of the bends left can follow the most bends that any order makes.
    BendSequence blocked_at(std::size_t made) {
        BendSequence found;
        for (std::size_t bend = 0; bend < problem_.bends.size(); ++bend) {
            if ((made >> bend & 1U) != 0)
                continue;
            const auto& hit = sweep_.hit(bend, static_cast<MadeBends>(made));
            found.blocked.push_back(
                hit ? *hit : BendBlock{static_cast<int>(bend), -1, BendObstacle::stop});
        }
        return found;
    }

    const BendProblem& problem_;
    BendSweep sweep_;
    std::vector<Reached> cells_;
};

/// All that the problem says, bit by bit.
void write_key(const BendProblem& problem, std::string& key) {
    key.clear();
    const auto add = [&](double number) {
        char bytes[sizeof number];
        std::memcpy(bytes, &number, sizeof number);
        key.append(bytes, sizeof bytes);
    };
    add(problem.thickness.in_base());
    add(problem.blank_length.in_base());
    for (const OrderedBend& bend : problem.bends) {
        const BrakeOutline& tools = bend.tools;
        for (const Length length : {bend.line,
                                    bend.allowance,
                                    bend.half_deduction,
                                    bend.radius,
                                    tools.opening,
                                    tools.die_width,
                                    tools.die_height,
                                    tools.punch_width,
                                    tools.punch_height,
                                    tools.nose,
                                    tools.bed_width,
                                    tools.ram_width,
                                    tools.open_height,
                                    tools.least_gauge})
            add(length.in_base());
        add(bend.angle.in_radians());
        add(tools.punch_included.in_radians());
        key.push_back(bend.up ? 'u' : 'd');
    }
}

} // namespace

const BendSequence& BendOrders::of(const BendProblem& problem) {
    write_key(problem, key_);
    const auto [found, is_new] = found_.try_emplace(key_);
    if (is_new)
        found->second = order_bends(problem);
    return found->second;
}

BendSequence order_bends(const BendProblem& problem) {
    TREADLE_EXPECT(problem.bends.size() <= k_most_ordered_bends);
    if (problem.bends.empty())
        return {};
    return Table(problem).run();
}

} // namespace treadle::plan
