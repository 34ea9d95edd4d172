#include "plan/stock.h"

#include "plan/stock_list.h"
#include "plan/words.h"

#include <algorithm>
#include <cmath>

namespace treadle::plan {

namespace {

using base::Refusal;
using section::Shape;

/// How one part is cut off its bar.
struct Cutting {
    Parting parting = Parting::saw;
    Length kerf;
    Length least_end;
    std::optional<Refusal> missing;
};

/// Its ends, where they can share cuts with others that are cut the same.
struct Ends {
    bool alike = false; ///< both lean the same way: no piece has to be turned over
    Angle start;
    Angle widest; ///< of all its length cuts
    bool shares = false;
};

bool from_bars(const job::Part& part) {
    if (part.section.shape == Shape::plate)
        return false;
    return std::none_of(part.operations.begin(), part.operations.end(), [](const auto& operation) {
        const auto* cut = std::get_if<job::Cut>(&operation);
        return cut != nullptr && cut->side == job::CutSide::width;
    });
}

Angle size_of(Angle angle) { return angle < Angle{} ? -angle : angle; }

/// Turned over, it is another piece.
bool is_handed(const Section& section) {
    return section.shape == Shape::angle || section.shape == Shape::channel;
}

/// Where the mitre is seen: the same faces as in the drawing.
Length mitred_width(const Section& section) {
    return section.shape == Shape::channel ? section.height : section.width;
}

Length offset(const Section& section, Angle mitre) {
    return mitred_width(section) * std::tan(size_of(mitre).in_radians());
}

Ends ends_of(const job::Part& part) {
    Ends ends;
    int cuts = 0;
    bool plain = part.legs.empty();
    for (const job::Operation& operation : part.operations) {
        plain = plain && !std::holds_alternative<job::Saddle>(operation);
        const auto* cut = std::get_if<job::Cut>(&operation);
        if (cut == nullptr)
            continue;
        ++cuts;
        const Angle start = size_of(cut->start_mitre);
        const Angle finish = size_of(cut->finish_mitre);
        ends.widest =
            std::max({ends.widest, start, finish}, [](Angle a, Angle b) { return a < b; });
        ends.start = cut->start_mitre;
        ends.alike = cut->start_mitre == -cut->finish_mitre;
        ends.shares = start == finish && start > Angle{};
    }
    const bool handed = part.section.shape == Shape::angle || part.section.shape == Shape::channel;
    // Shorter than two offsets, the short side of a frame's piece would be gone.
    ends.shares = ends.shares && plain && cuts == 1 && (!handed || ends.alike) &&
                  part.length >= offset(part.section, ends.start) * 2.0;
    return ends;
}

/// Finds the offset that every bar takes once, where all pieces of the group share their mitres.
void share_mitres(StockGroup& group, const Plan& plan) {
    std::optional<Ends> first;
    const bool handed = is_handed(group.section);
    for (const StockPiece& piece : group.pieces) {
        const Ends ends = ends_of(*plan.parts[static_cast<std::size_t>(piece.part)]->part);
        if (!first)
            first = ends;
        const bool same =
            handed ? ends.start == first->start : size_of(ends.start) == size_of(first->start);
        if (!ends.shares || !same || ends.alike != first->alike)
            return;
    }
    if (!first)
        return;
    group.shared_mitre = offset(group.section, first->start);
    group.turned = !first->alike;
}

Cutting cutting_of(const PartPlan& plan, const equipment::Shop& shop) {
    Cutting cutting;
    int station = k_none;
    for (std::size_t i = 0; i < plan.operations.size(); ++i)
        if (std::holds_alternative<job::Cut>(plan.part->operations[i]))
            station = plan.operations[i].tools.station;
    if (station == k_none) {
        if (shop.rules.saw_kerf)
            cutting.kerf = *shop.rules.saw_kerf;
        else
            cutting.missing =
                Refusal{"rules.saw_kerf",
                        plan.part->mark + " is sawn, and what a saw cut takes is not known.",
                        "Enter the saw kerf in the house rules."};
        return cutting;
    }
    const auto& shear = shop.machine.stations[static_cast<std::size_t>(station)];
    cutting.parting = shear.slug_loss ? Parting::slug : Parting::shear;
    cutting.kerf = shear.slug_loss.value_or(Length{});
    if (shear.least_piece)
        cutting.least_end = *shear.least_piece;
    else
        cutting.missing = Refusal{"machine.stations[" + std::to_string(station) + "].least_piece",
                                  "The shortest end that " + shear.name + " holds is not known.",
                                  "Enter its shortest piece."};
    return cutting;
}

void add_piece(StockGroup& group, const Plan& plan, int index, const equipment::Shop& shop) {
    const PartPlan& part = *plan.parts[static_cast<std::size_t>(index)];
    if (part.problem && !group.problem) {
        group.problem = part.problem;
        group.problem->field = "parts[" + std::to_string(index) + "]." + part.problem->field;
        group.problem->reason = part.part->mark + ": " + part.problem->reason;
    }
    group.pieces.push_back(
        {index, part.blank_length, part.blank_length, part.part->count, part.outcome});
    if (group.problem)
        return;
    const Cutting cutting = cutting_of(part, shop);
    if (cutting.missing)
        group.problem = cutting.missing;
    // A slanting cut takes more of the bar's length.
    const double slant = std::cos(ends_of(*part.part).widest.in_radians());
    const Length kerf = cutting.kerf / std::max(slant, 1e-3);
    if (group.pieces.size() == 1 || kerf > group.kerf)
        group.parting = cutting.parting;
    group.kerf = larger(group.kerf, kerf);
    group.least_end = larger(group.least_end, cutting.least_end);
}

StockGroup& group_of(std::vector<StockGroup>& groups, const job::Part& part) {
    const auto known = std::find_if(groups.begin(), groups.end(), [&](const StockGroup& group) {
        return group.grade == part.grade && same_section(group.section, part.section);
    });
    if (known != groups.end())
        return *known;
    StockGroup group;
    group.section = part.section;
    group.grade = part.grade;
    groups.push_back(std::move(group));
    return groups.back();
}

} // namespace

std::vector<StockGroup> stock_groups(const Plan& plan,
                                     const job::Job& job,
                                     const equipment::Shop& shop,
                                     const job::Catalog& catalog) {
    std::vector<StockGroup> groups;
    for (std::size_t i = 0; i < plan.parts.size(); ++i)
        if (from_bars(*plan.parts[i]->part))
            add_piece(group_of(groups, *plan.parts[i]->part), plan, static_cast<int>(i), shop);
    for (StockGroup& group : groups) {
        group.trim = shop.rules.end_trim.value_or(Length{});
        group.keep_drop = shop.rules.keep_drop;
        group.kinds = bar_kinds(group.section, group.grade, shop);
        const Grade* grade = job::find_grade(job, catalog, group.grade);
        if (grade != nullptr && grade->density > Density{})
            group.weight = section::mass_per_length(group.section, grade->density);
        if (group.problem)
            continue;
        share_mitres(group, plan);
        for (StockPiece& piece : group.pieces)
            piece.counted = piece.length - group.shared_mitre;
        make_list(group, plan, job);
    }
    return groups;
}

std::vector<int> not_from_bars(const Plan& plan) {
    std::vector<int> parts;
    for (std::size_t i = 0; i < plan.parts.size(); ++i)
        if (!from_bars(*plan.parts[i]->part))
            parts.push_back(static_cast<int>(i));
    return parts;
}

} // namespace treadle::plan
