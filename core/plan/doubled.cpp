// The same stroke twice: the second one falls into a cut that is open already.
//
// A punch, blade or notcher that cuts on part of its edge only is pushed aside and breaks; common
// practice, no source. Holes are looked at with their neighbours (geometry_checks.cpp).

#include "plan/part_checks.h"

namespace treadle::plan {

namespace {

bool same(const job::Cut& a, const job::Cut& b) {
    return a.side == b.side && a.start_mitre == b.start_mitre && a.finish_mitre == b.finish_mitre;
}

bool same(const job::Notch& a, const job::Notch& b) {
    const bool corner = a.edge >= job::NotchEdge::start_near;
    const bool vee = a.shape == geometry::NotchShape::vee;
    return a.shape == b.shape && a.edge == b.edge && a.face == b.face && a.depth == b.depth &&
           (corner || a.at == b.at) && (vee ? a.included == b.included : a.along == b.along);
}

/// Both at one end, whatever they are shaped for.
bool same(const job::Saddle& a, const job::Saddle& b) {
    return a.end == b.end || a.end == job::End::both || b.end == job::End::both;
}

template <class Kind>
bool doubles(const job::Operation& a, const job::Operation& b) {
    const auto* first = std::get_if<Kind>(&a);
    const auto* second = std::get_if<Kind>(&b);
    return first != nullptr && second != nullptr && same(*first, *second);
}

} // namespace

void check_doubled(const Question& question, PartPlan& plan) {
    const std::vector<job::Operation>& operations = question.part.operations;
    for (std::size_t i = 1; i < operations.size(); ++i) {
        if (std::holds_alternative<job::Punch>(operations[i]) ||
            std::holds_alternative<job::Bend>(operations[i]))
            continue;
        for (std::size_t j = 0; j < i; ++j)
            if (doubles<job::Cut>(operations[j], operations[i]) ||
                doubles<job::Notch>(operations[j], operations[i]) ||
                doubles<job::Saddle>(operations[j], operations[i]))
                say_once(plan.operations[i],
                         refused_check(Rule::doubled_stroke,
                                       "This is done already, further up in the list: a second "
                                       "stroke into an open cut breaks the tool. Take one out."));
    }
}

} // namespace treadle::plan
