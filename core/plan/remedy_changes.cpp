#include "plan/remedy_changes.h"

#include "base/stable_sort.h"
#include "plan/words.h"

#include <algorithm>
#include <array>
#include <cmath>

namespace treadle::plan {

namespace {

using quantity::print;

std::string length_words(Length value, PrintStyle style) {
    return print(value, {style.system, 64, style.both}, Rounding::nearest);
}

/// Marking out goes no finer by hand: common practice, no source.
Length step_of(PrintStyle style) {
    return style.system == UnitSystem::inch ? inches(1.0 / 16.0) : millimetres(1.0);
}

bool fails(const OperationPlan& plan, Rule rule) {
    return std::any_of(plan.checks.begin(), plan.checks.end(), [&](const Check& check) {
        return check.rule == rule && !check.warning && check.outcome == Outcome::does_not_fit;
    });
}

/// Largest whole figure that a certificate may show: the lowest limit of the part's operations.
Stress readable_limit(const PartPlan& plan, PrintStyle style) {
    Stress limit;
    for (const OperationPlan& operation : plan.operations)
        for (const Check& check : operation.checks)
            if (!check.warning && check.outcome == Outcome::fits_up_to)
                limit = limit > Stress{} ? smaller(limit, check.limit) : check.limit;
    return style.system == UnitSystem::inch
               ? ksi(std::floor(quantity::to_ksi(limit)))
               : megapascals(std::floor(quantity::to_megapascals(limit)));
}

/// How many places each way are worth planning: a part with very many holes is planned less often.
int most_steps(const job::Part& part) {
    std::size_t work = part.operations.size();
    for (const job::Operation& operation : part.operations)
        if (const auto* punch = std::get_if<job::Punch>(&operation))
            work += static_cast<std::size_t>(job::hole_count(punch->at));
    return static_cast<int>(std::clamp<std::size_t>(20000 / std::max<std::size_t>(work, 1), 8, 64));
}

struct Direction {
    double x;
    double y;
    const char* words;
};
constexpr std::array<Direction, 4> k_directions{{{0.0, 1.0, " away from the datum edge"},
                                                 {0.0, -1.0, " towards the datum edge"},
                                                 {1.0, 0.0, " away from the start end"},
                                                 {-1.0, 0.0, " towards the start end"}}};

double nearness(const geometry::HoleOutline& a, const geometry::HoleOutline& b) {
    return std::abs(quantity::to_millimetres(a.size - b.size)) +
           std::abs(quantity::to_millimetres(a.size2 - b.size2));
}

Length hole_length(const geometry::HoleOutline& hole) { return hole.size + hole.size2; }

} // namespace

void add_note(job::Part& part, const std::string& sentence) {
    part.note += (part.note.empty() ? "" : ". ") + sentence;
}

void try_certificate(const Trouble& trouble, const Offer& offer) {
    if (trouble.planned().outcome != Outcome::fits_up_to)
        return;
    const PrintStyle style = trouble.job.style;
    Change change{Remedy::Kind::certificate, 0, "", trouble.part()};
    change.part.certified_tensile = readable_limit(trouble.plan, style);
    const std::string limit = print(change.part.certified_tensile, style);
    change.words = "Read the certificate: at most " + limit;
    // Nobody has read it yet: the sheet must say what this verdict stands on.
    add_note(change.part, "Read the mill certificate first: at most " + limit + " tensile");
    (void)offer(std::move(change));
}

void try_places(const Trouble& trouble, const Offer& offer) {
    const auto* punch = std::get_if<job::Punch>(&trouble.part().operations[trouble.operation]);
    const OperationPlan& planned = trouble.planned();
    if (punch == nullptr ||
        !(fails(planned, Rule::on_metal) || fails(planned, Rule::hole_web) ||
          fails(planned, Rule::cut_web) || fails(planned, Rule::flange_clearance) ||
          fails(planned, Rule::throat)))
        return;
    const PrintStyle style = trouble.job.style;
    const bool several = job::hole_count(punch->at) > 1;
    for (int step = 1; step <= most_steps(trouble.part()); ++step) {
        const Length by = step_of(style) * static_cast<double>(step);
        for (const Direction& direction : k_directions) {
            Change change{Remedy::Kind::place, 0, "", trouble.part()};
            auto& moved = std::get<job::Punch>(change.part.operations[trouble.operation]);
            moved.at.x += by * direction.x;
            moved.at.y += by * direction.y;
            change.words = std::string(several ? "Move the holes " : "Move the hole ") +
                           length_words(by, style) + direction.words;
            if (offer(std::move(change)))
                return;
        }
    }
}

void try_grain(const Trouble& trouble, const Offer& offer) {
    if (trouble.part().grain == material::Grain::across ||
        !std::holds_alternative<job::Bend>(trouble.part().operations[trouble.operation]))
        return;
    Change change{Remedy::Kind::grain,
                  0,
                  "Lay the part out so that it bends across the grain",
                  trouble.part()};
    change.part.grain = material::Grain::across;
    (void)offer(std::move(change));
}

void try_holes(const Trouble& trouble, const Offer& offer) {
    const auto* punch = std::get_if<job::Punch>(&trouble.part().operations[trouble.operation]);
    if (punch == nullptr)
        return;
    std::vector<geometry::HoleOutline> sizes;
    for (const equipment::PunchTool& tool : trouble.shop.crib.punches)
        if (tool.count > 0 && tool.hole.shape == punch->hole.shape &&
            nearness(tool.hole, punch->hole) > 0.0)
            sizes.push_back(tool.hole);
    base::stable_sort(sizes, [&](const auto& a, const auto& b) {
        return nearness(a, punch->hole) < nearness(b, punch->hole);
    });
    const PrintStyle style = trouble.job.style;
    for (const bool smaller_ones : {true, false}) {
        for (const geometry::HoleOutline& size : sizes) {
            if ((hole_length(size) < hole_length(punch->hole)) != smaller_ones)
                continue;
            Change change{Remedy::Kind::hole, smaller_ones ? 0 : 1, "", trouble.part()};
            std::get<job::Punch>(change.part.operations[trouble.operation]).hole = size;
            change.words = "Punch " + hole_words(size, style) + " instead of " +
                           hole_words(punch->hole, style);
            if (offer(std::move(change)))
                break;
        }
    }
}

void try_legs(const Trouble& trouble, const Offer& offer) {
    const job::Part& part = trouble.part();
    if (!std::holds_alternative<job::Bend>(part.operations[trouble.operation]) ||
        !fails(trouble.planned(), Rule::least_leg))
        return;
    std::size_t first = 0; // leg before the bend; the other one is after it
    for (std::size_t i = 0; i < trouble.operation; ++i)
        first += std::holds_alternative<job::Bend>(part.operations[i]) ? 1U : 0U;
    const PrintStyle style = trouble.job.style;
    const bool first_is_short = part.legs[first] <= part.legs[first + 1];
    const std::size_t short_leg = first_is_short ? first : first + 1;
    const std::size_t other = first_is_short ? first + 1 : first;
    for (int step = 1; step <= most_steps(part); ++step) {
        Change change{Remedy::Kind::leg, 0, "", part};
        const Length length = part.legs[short_leg] + step_of(style) * static_cast<double>(step);
        change.part.legs[short_leg] = length;
        change.words = "Leg " + std::to_string(short_leg + 1) + " " + length_words(length, style) +
                       " instead of " + length_words(part.legs[short_leg], style);
        if (part.legs[other] < length) { // both are too short for the V
            change.part.legs[other] = length;
            change.words += ", leg " + std::to_string(other + 1) + " as long";
        }
        if (offer(std::move(change)))
            return;
    }
}

} // namespace treadle::plan
