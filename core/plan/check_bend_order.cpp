// The order of a part's bends: gathers the sizes of the tools, and says what is missing of them.

#include "plan/checks.h"

namespace treadle::plan {

namespace {

using equipment::Shop;

/// Where a size of the crib stands. Put into words only when it is missing.
struct CribPath {
    const char* list;
    int index;
    const char* datum;

    explicit operator std::string() const {
        return std::string("crib.") + list + "[" + std::to_string(index) + "]." + datum;
    }
};

/// Takes over what is known, keeps the path of the first size that is not.
struct Known {
    std::string missing;

    template <class Value, class Path>
    void take(const std::optional<Value>& from, Value& to, const Path& path) {
        if (from)
            to = *from;
        else if (missing.empty())
            missing = std::string(path);
    }
};

BrakeOutline outline_of(const Shop& shop, const Tooling& tools, Known& known) {
    BrakeOutline outline;
    outline.opening = tools.opening;
    outline.nose = tools.nose;
    if (tools.attachment == k_none || tools.vee == k_none || tools.brake_punch == k_none) {
        if (known.missing.empty())
            known.missing = tools.vee == k_none ? "crib.vees" : "crib.brake_punches";
        return outline;
    }
    const auto& vee = shop.crib.vees[static_cast<std::size_t>(tools.vee)];
    const auto& punch = shop.crib.brake_punches[static_cast<std::size_t>(tools.brake_punch)];
    const auto& brake = shop.machine.attachments[static_cast<std::size_t>(tools.attachment)];
    const auto of_vee = [&](const char* datum) { return CribPath{"vees", tools.vee, datum}; };
    const auto of_punch = [&](const char* datum) {
        return CribPath{"brake_punches", tools.brake_punch, datum};
    };
    const auto of_brake = [&](const char* datum) {
        return attachment_path(tools.attachment, datum);
    };
    known.take(vee.width, outline.die_width, of_vee("width"));
    known.take(vee.height, outline.die_height, of_vee("height"));
    known.take(punch.width, outline.punch_width, of_punch("width"));
    known.take(punch.height, outline.punch_height, of_punch("height"));
    known.take(punch.included, outline.punch_included, of_punch("included"));
    known.take(brake.bed_width, outline.bed_width, of_brake("bed_width"));
    known.take(brake.ram_width, outline.ram_width, of_brake("ram_width"));
    known.take(brake.open_height, outline.open_height, of_brake("open_height"));
    known.take(brake.least_gauge, outline.least_gauge, of_brake("least_gauge"));
    return outline;
}

const char* obstacle_words(BendObstacle obstacle) {
    switch (obstacle) {
    case BendObstacle::punch:
        return "the punch";
    case BendObstacle::ram:
        return "the ram";
    case BendObstacle::die:
        return "the die";
    case BendObstacle::bed:
        return "the brake's bed";
    case BendObstacle::stop:
    case BendObstacle::open_height:
        break;
    }
    return "";
}

std::string block_words(const BendBlock& block) {
    const std::string proof = "No order of the bends works: ";
    if (block.obstacle == BendObstacle::stop)
        return proof + "in the farthest one this bend has no straight edge for the stop.";
    if (block.obstacle == BendObstacle::open_height)
        return proof + "the metal does not go between this punch and die when the ram is up.";
    return proof + "in the farthest one leg " + std::to_string(block.leg + 1) + " meets " +
           obstacle_words(block.obstacle) + " in this bend.";
}

} // namespace

void check_bend_order(const Question& question, BendOrders& orders, PartPlan& plan) {
    BendProblem problem;
    problem.thickness = question.metal.thickness;
    problem.blank_length = plan.blank_length;
    std::vector<int> operations;
    Known known;
    for (std::size_t i = 0; i < plan.operations.size(); ++i) {
        const auto* wanted = std::get_if<job::Bend>(&question.part.operations[i]);
        if (wanted == nullptr)
            continue;
        const std::size_t number = operations.size();
        operations.push_back(static_cast<int>(i));
        if (number >= plan.blank.bends.size())
            return; // the part has no blank to bend
        const OperationPlan& planned = plan.operations[i];
        const process::BendFigures& figures = plan.blank.bends[number];
        problem.bends.push_back({plan.blank.bend_lines[number],
                                 figures.allowance,
                                 figures.deduction / 2.0,
                                 planned.bend.radius,
                                 planned.bend.angle,
                                 wanted->up,
                                 outline_of(question.shop, planned.tools, known)});
    }
    if (operations.empty())
        return;
    plan.bends.emplace();
    if (operations.size() > k_most_ordered_bends) {
        plan.bends->too_many = true;
        return;
    }
    if (!known.missing.empty()) {
        plan.bends->missing = known.missing;
        return;
    }
    *plan.bends = orders.of(problem);
    for (BendStep& step : plan.bends->steps)
        step.bend = operations[static_cast<std::size_t>(step.bend)];
    for (BendBlock& block : plan.bends->blocked) {
        block.bend = operations[static_cast<std::size_t>(block.bend)];
        plan.operations[static_cast<std::size_t>(block.bend)].checks.push_back(
            refused_check(Rule::bend_order, block_words(block)));
    }
}

} // namespace treadle::plan
