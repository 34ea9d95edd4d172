#include "plan/batches.h"

#include <algorithm>
#include <cmath>

namespace treadle::plan {

namespace {

constexpr double k_whole = 1e-9;        // three pieces of a third of the mass are three
constexpr int k_most_in_batch = 100000; // as many as a part may have pieces

const PartPlan& part_of(const Plan& plan, const Step& step) {
    return *plan.parts[static_cast<std::size_t>(step.part)];
}

/// First and last hole: what lies between is on the same stops.
void measure_holes(std::vector<Measure>& list, const PartPlan& part, int operation) {
    const Mark* first = nullptr;
    const Mark* last = nullptr;
    for (const Mark& mark : part.marks) {
        if (mark.operation != operation)
            continue;
        if (first == nullptr)
            first = &mark;
        last = &mark;
    }
    const auto add = [&](const Mark& mark) {
        list.push_back({"along", mark.x});
        list.push_back({"across", mark.y});
    };
    if (first != nullptr)
        add(*first);
    if (last != first)
        add(*last);
}

void measure_cut(std::vector<Measure>& list, const PartPlan& part, const job::Cut& cut) {
    if (cut.side == job::CutSide::width) {
        list.push_back({"width", part.blank_width});
        return;
    }
    list.push_back({"length", part.blank_length});
    if (cut.start_mitre != Angle{})
        list.push_back({"datum end from square", cut.start_mitre});
    if (cut.finish_mitre != Angle{})
        list.push_back({"far end from square", cut.finish_mitre});
}

/// Angle, and both legs beside the bend outside to outside.
void measure_bend(std::vector<Measure>& list, const job::Part& part, int operation) {
    const auto index = static_cast<std::size_t>(operation);
    std::size_t number = 0;
    for (std::size_t i = 0; i < index; ++i)
        number += std::holds_alternative<job::Bend>(part.operations[i]) ? 1u : 0u;
    list.push_back({"angle", std::get<job::Bend>(part.operations[index]).angle});
    for (std::size_t leg = number; leg < part.legs.size() && leg <= number + 1; ++leg)
        list.push_back({"leg", part.legs[leg]});
}

} // namespace

int batch_of(const equipment::HouseRules& rules, Mass piece) {
    double most = rules.batch_pieces ? static_cast<double>(*rules.batch_pieces) : 0.0;
    if (rules.batch_mass && piece > Mass{}) {
        const double carried = std::max(1.0, std::floor(*rules.batch_mass / piece + k_whole));
        most = most > 0.0 ? std::min(most, carried) : carried;
    }
    return static_cast<int>(std::min(most, static_cast<double>(k_most_in_batch)));
}

Batches batches_of(const Plan& plan, const Step& step) {
    const int batch = part_of(plan, step).batch;
    if (batch <= 0 || step.pieces <= batch)
        return {1, step.pieces, step.pieces};
    const int count = (step.pieces + batch - 1) / batch;
    return {count, batch, step.pieces - (count - 1) * batch};
}

std::string batch_words(const Batches& batches) {
    if (batches.count <= 1)
        return "";
    std::string words =
        std::to_string(batches.count) + " batches of " + std::to_string(batches.pieces);
    if (batches.last != batches.pieces)
        words += ", the last of " + std::to_string(batches.last);
    return words;
}

int pieces_measured(int pieces, const equipment::HouseRules& rules) {
    if (pieces <= 0)
        return 0;
    return 1 + (rules.check_every ? (pieces - 1) / *rules.check_every : 0);
}

std::string check_words(const Step& step, const equipment::HouseRules& rules) {
    if (step.pieces <= 1)
        return "Measure the piece";
    std::string words = "First piece: measure before the rest";
    if (pieces_measured(step.pieces, rules) > 1)
        words += *rules.check_every == 1 ? ", then every piece"
                                         : ", then 1 in " + std::to_string(*rules.check_every);
    return words;
}

std::vector<Measure> first_piece(const PartPlan& part, int operation) {
    std::vector<Measure> list;
    const job::Operation& made = part.part->operations[static_cast<std::size_t>(operation)];
    if (const auto* cut = std::get_if<job::Cut>(&made)) {
        measure_cut(list, part, *cut);
    } else if (const auto* punch = std::get_if<job::Punch>(&made)) {
        list.push_back({"hole", punch->hole.size});
        if (punch->hole.size2 > Length{})
            list.push_back({"by", punch->hole.size2});
        measure_holes(list, part, operation);
    } else if (const auto* notch = std::get_if<job::Notch>(&made)) {
        if (notch->along > Length{})
            list.push_back({"along the edge", notch->along});
        list.push_back({"deep", notch->depth});
    } else if (std::holds_alternative<job::Bend>(made)) {
        measure_bend(list, *part.part, operation);
    } else {
        list.push_back({"run", std::get<job::Saddle>(made).run_diameter});
    }
    return list;
}

std::string mark_words(const Plan& plan, const Step& step, const equipment::HouseRules& rules) {
    if (!step.begins)
        return "";
    const std::string words = "Mark each piece " + part_of(plan, step).part->mark;
    return rules.marking.empty() ? words : words + ": " + rules.marking;
}

} // namespace treadle::plan
