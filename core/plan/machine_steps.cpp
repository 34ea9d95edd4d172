#include "plan/machine_steps.h"

#include "plan/machine_keys.h"
#include "plan/machine_positions.h"
#include "plan/settings.h"
#include "plan/words.h"

#include <algorithm>
#include <map>
#include <utility>

namespace treadle::plan {

namespace {

constexpr ToolItem k_items[] = {ToolItem::attachment,
                                ToolItem::holder,
                                ToolItem::punch,
                                ToolItem::die,
                                ToolItem::vee,
                                ToolItem::brake_punch,
                                ToolItem::saddle_die,
                                ToolItem::mitre};

bool is_used(const Tooling& tools, ToolItem item) {
    switch (item) {
    case ToolItem::attachment:
        return tools.attachment != k_none;
    case ToolItem::holder:
        return tools.holder != k_none;
    case ToolItem::punch:
        return tools.punch_size.size > Length{};
    case ToolItem::die:
        return tools.die_size.size > Length{};
    case ToolItem::vee:
        return tools.opening > Length{};
    case ToolItem::brake_punch:
        return tools.nose > Length{};
    case ToolItem::saddle_die:
        return tools.saddle_run > Length{};
    case ToolItem::mitre:
        return tools.mitre != Angle{};
    }
    return false;
}

bool same_hole(const geometry::HoleOutline& a, const geometry::HoleOutline& b) {
    return a.shape == b.shape && a.size == b.size && a.size2 == b.size2;
}

bool is_same(const Tooling& a, const Tooling& b, ToolItem item) {
    if (is_used(a, item) != is_used(b, item))
        return false;
    switch (item) {
    case ToolItem::attachment:
        return a.attachment == b.attachment;
    case ToolItem::holder:
        return a.holder == b.holder;
    case ToolItem::punch:
        return a.punch == b.punch && same_hole(a.punch_size, b.punch_size);
    case ToolItem::die:
        return a.die == b.die && same_hole(a.die_size, b.die_size);
    case ToolItem::vee:
        return a.vee == b.vee && a.opening == b.opening;
    case ToolItem::brake_punch:
        return a.brake_punch == b.brake_punch && a.nose == b.nose;
    case ToolItem::saddle_die:
        return a.saddle_die == b.saddle_die && a.saddle_run == b.saddle_run;
    case ToolItem::mitre:
        return a.mitre == b.mitre;
    }
    return true;
}

class Maker {
public:
    Maker(const Plan& plan, const job::Job& job, const equipment::Shop& shop)
        : plan_(plan),
          job_(job),
          shop_(shop) {}

    MachineSteps make() {
        for (std::size_t i = 0; i < plan_.order.size(); ++i)
            if (!plan_.order[i].steps.empty())
                add_set_up(static_cast<int>(i));
        for (std::size_t i = 0; i < plan_.parts.size(); ++i)
            add_not_here(static_cast<int>(i));
        return std::move(made_);
    }

private:
    [[nodiscard]] const SetUp& set_up_at(int index) const {
        return plan_.order[static_cast<std::size_t>(index)];
    }

    void add_set_up(int index) {
        const SetUp& set_up = set_up_at(index);
        MachineStep step;
        step.kind = MachineWork::set_up;
        step.set_up = index;
        const auto before = last_at_.find(set_up.tools.station);
        if (before != last_at_.end())
            step.tools_before = before->second;
        last_at_[set_up.tools.station] = index;
        step.figures = ram_figures(set_up.settings);
        step.key = set_up_key(set_up, shop_);
        const int again = ++times_[step.key.place];
        if (again > 1) // the same tools come back later
            step.key.place += "/" + std::to_string(again);
        add_tool_ticks(step, set_up);
        // What is not known stands last, and is nothing to tick.
        const auto lines = setting_lines(set_up, shop_, job_.style);
        const std::size_t known = lines.size() - (set_up.settings.missing.empty() ? 0 : 1);
        for (std::size_t i = 0; i < known; ++i)
            step.ticks.push_back({Tick::Kind::setting, {}, static_cast<int>(i)});
        if (is_tried_by_hand(set_up))
            step.ticks.push_back({Tick::Kind::by_hand, {}, 0});
        made_.steps.push_back(std::move(step));
        for (std::size_t i = 0; i < set_up.steps.size(); ++i)
            add_operation(index, static_cast<int>(i));
    }

    /// What stays in the machine is neither taken off nor mounted. What lies at a station when the
    /// job begins nobody knows: everything is mounted then.
    void add_tool_ticks(MachineStep& step, const SetUp& set_up) {
        const Tooling none;
        const Tooling& before =
            step.tools_before == k_none ? none : set_up_at(step.tools_before).tools;
        for (const ToolItem item : k_items)
            if (is_used(before, item) && !is_same(before, set_up.tools, item))
                step.ticks.push_back({Tick::Kind::take_off, item, 0});
        for (const ToolItem item : k_items)
            if (is_used(set_up.tools, item) && !is_same(before, set_up.tools, item))
                step.ticks.push_back({Tick::Kind::mount, item, 0});
    }

    [[nodiscard]] bool is_tried_by_hand(const SetUp& set_up) const {
        const Step& first = set_up.steps.front();
        const job::Operation& operation =
            plan_.parts[static_cast<std::size_t>(first.part)]
                ->part->operations[static_cast<std::size_t>(first.operation)];
        return !std::holds_alternative<job::Notch>(operation) &&
               !std::holds_alternative<job::Saddle>(operation);
    }

    void add_operation(int set_up, int index) {
        const Step& planned = set_up_at(set_up).steps[static_cast<std::size_t>(index)];
        const PartPlan& part = *plan_.parts[static_cast<std::size_t>(planned.part)];
        MachineStep step;
        step.set_up = set_up;
        step.step = index;
        step.part = planned.part;
        step.operation = planned.operation;
        const auto& verdict = part.operations[static_cast<std::size_t>(planned.operation)];
        if (verdict.outcome == Outcome::fits_up_to)
            add(step, MachineWork::certificate, {{Tick::Kind::certificate, {}, 0}});
        const std::vector<Position> positions = positions_of(part, planned.operation);
        step.positions = static_cast<int>(positions.size());
        const Position* before = nullptr;
        for (const Position& position : positions) {
            add_position(step, position, before, planned.pieces);
            before = &position;
            ++step.position;
        }
        step.position = 0;
        step.figures.clear();
        step.strokes = 0;
        if (planned.begins)
            add(step, MachineWork::mark, {{Tick::Kind::marked, {}, 0}});
    }

    void
    add_position(MachineStep step, const Position& position, const Position* before, int pieces) {
        step.figures = position.figures;
        step.face = position.face;
        step.strokes = position.strokes;
        std::vector<Tick> ticks;
        for (std::size_t i = 0; i < position.figures.size(); ++i)
            if (before == nullptr || i >= before->figures.size() ||
                !same_figure(before->figures[i], position.figures[i]))
                ticks.push_back({Tick::Kind::stop, {}, static_cast<int>(i)});
        if (!position.measures.empty()) {
            ticks.push_back({Tick::Kind::first_made, {}, 0});
            ticks.push_back({Tick::Kind::measured, {}, 0});
            step.measures = position.measures;
            step.pieces = 1;
            add(step, MachineWork::first_piece, std::move(ticks));
            step.measures.clear();
            step.made_before = 1;
            ticks.clear();
        }
        step.pieces = pieces - step.made_before;
        if (step.pieces > 0)
            add(step, MachineWork::run, std::move(ticks));
    }

    [[nodiscard]] static bool same_figure(const SetFigure& a, const SetFigure& b) {
        const auto* one = std::get_if<Length>(&a.value);
        const auto* other = std::get_if<Length>(&b.value);
        return one != nullptr && other != nullptr && *one == *other && a.what == b.what &&
               a.from == b.from;
    }

    void add(MachineStep step, MachineWork kind, std::vector<Tick> ticks) {
        step.kind = kind;
        step.ticks = std::move(ticks);
        step.key = work_key(
            step, *plan_.parts[static_cast<std::size_t>(step.part)], set_up_at(step.set_up), shop_);
        made_.steps.push_back(std::move(step));
    }

    void add_not_here(int index) {
        const PartPlan& part = *plan_.parts[static_cast<std::size_t>(index)];
        if (part.outcome <= Outcome::fits_up_to && !part.problem)
            return;
        NotHere entry{index, part.outcome, {}};
        if (part.problem) {
            entry.reason = part.problem->reason;
            if (!part.problem->detail.empty())
                entry.reason += " " + part.problem->detail;
        }
        for (std::size_t i = 0; i < part.operations.size(); ++i)
            for (const Check& check : part.operations[i].checks)
                if (!check.warning && check.outcome > Outcome::fits_up_to)
                    entry.reason += (entry.reason.empty() ? "" : " ") +
                                    operation_title(*part.part, i, job_.style) + ": " +
                                    with_names(sentence(check, job_.style), shop_);
        made_.not_here.push_back(std::move(entry));
    }

    const Plan& plan_;
    const job::Job& job_;
    const equipment::Shop& shop_;
    MachineSteps made_;
    std::map<int, int> last_at_;       ///< by station: the last set-up there
    std::map<std::string, int> times_; ///< that a set-up with these tools came up
};

} // namespace

MachineSteps machine_steps(const Plan& plan, const job::Job& job, const equipment::Shop& shop) {
    return Maker(plan, job, shop).make();
}

} // namespace treadle::plan
