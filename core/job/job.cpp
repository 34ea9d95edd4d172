#include "job/job.h"

#include "base/result.h"
#include "quantity/input_limits.h"

#include <algorithm>
#include <set>

namespace treadle::job {

namespace {

using quantity::count_fault;
using quantity::Fault;
using quantity::inside;
using quantity::item;
using quantity::place_fault;
using quantity::Presence;
using quantity::size_fault;
using quantity::text_fault;

constexpr int k_most_pieces = 100000;
constexpr int k_most_holes = 10000;
constexpr std::size_t k_most_operations = 500;

Fault mitre_fault(Angle value, const char* field) {
    if (value > degrees(-90.0) && value < degrees(90.0))
        return std::nullopt;
    return base::Refusal{field, "A mitre lies between square and lengthwise.", "below 90 deg"};
}

Fault pattern_fault(const HolePattern& at) {
    if (auto fault = place_fault(at.x, "x"))
        return fault;
    if (auto fault = place_fault(at.y, "y"))
        return fault;
    if (auto fault = count_fault(at.columns, 1, k_most_holes, "columns"))
        return fault;
    if (auto fault = count_fault(at.rows, 1, k_most_holes, "rows"))
        return fault;
    if (at.rows > k_most_holes / at.columns)
        return base::Refusal{"rows", "There are too many holes in one pattern.", "at most 10000"};
    // A pitch that no second hole uses may stay empty.
    if (auto fault = at.columns > 1 ? size_fault(at.column_pitch, "column_pitch")
                                    : place_fault(at.column_pitch, "column_pitch"))
        return fault;
    return at.rows > 1 ? size_fault(at.row_pitch, "row_pitch")
                       : place_fault(at.row_pitch, "row_pitch");
}

bool at_corner(NotchEdge edge) {
    return edge == NotchEdge::start_near || edge == NotchEdge::start_far ||
           edge == NotchEdge::finish_near || edge == NotchEdge::finish_far;
}

/// Faults of one operation, with fields as they are named inside it.
struct OperationCheck {
    int last_leg = 0;

    Fault operator()(const Cut& cut) const {
        if (auto fault = mitre_fault(cut.start_mitre, "start_mitre"))
            return fault;
        return mitre_fault(cut.finish_mitre, "finish_mitre");
    }
    Fault operator()(const Punch& punch) const {
        const auto hole = geometry::checked(punch.hole);
        if (!hole)
            return inside("hole", hole.refusal());
        if (punch.hole.shape == geometry::HoleShape::perimeter)
            return base::Refusal{"hole.shape",
                                 "A length of edge alone is no hole that could be drawn or placed.",
                                 "round, square, rectangle, obround or hexagon"};
        if (auto fault = size_fault(punch.hole.size, "size"))
            return inside("hole", *fault);
        if (auto fault = place_fault(punch.hole.size2, "size2"))
            return inside("hole", *fault);
        if (auto fault = pattern_fault(punch.at))
            return inside("at", *fault);
        return count_fault(punch.leg, 0, last_leg, "leg");
    }
    Fault operator()(const Notch& notch) const {
        const bool vee = notch.shape == geometry::NotchShape::vee;
        if (vee && at_corner(notch.edge))
            return base::Refusal{"edge",
                                 "A V notch goes in from an edge, not from a corner.",
                                 "datum edge, far edge, start end or finish end"};
        if (!at_corner(notch.edge))
            if (auto fault = place_fault(notch.at, "at"))
                return fault;
        if (auto fault = vee ? std::nullopt : size_fault(notch.along, "along"))
            return fault;
        if (auto fault = size_fault(notch.depth, "depth"))
            return fault;
        if (vee && !(notch.included > Angle{} && notch.included < degrees(180.0)))
            return base::Refusal{
                "included", "The angle is out of range.", "above 0, below 180 deg"};
        return std::nullopt;
    }
    Fault operator()(const Bend& bend) const {
        if (!(bend.angle > Angle{} && bend.angle < degrees(180.0)))
            return base::Refusal{"angle", "The angle is out of range.", "above 0, below 180 deg"};
        return place_fault(bend.radius, "radius");
    }
    Fault operator()(const Saddle& saddle) const {
        return size_fault(saddle.run_diameter, "run_diameter");
    }
};

Fault text_faults(const Part& part) {
    if (auto fault = text_fault(part.id, "id"))
        return fault;
    if (auto fault = text_fault(part.mark, "mark", Presence::required))
        return fault;
    if (auto fault = text_fault(part.note, "note", Presence::optional, quantity::k_longest_note))
        return fault;
    return text_fault(part.grade, "grade", Presence::required);
}

int bend_count(const Part& part) {
    return static_cast<int>(
        std::count_if(part.operations.begin(), part.operations.end(), [](const Operation& o) {
            return std::holds_alternative<Bend>(o);
        }));
}

Fault length_faults(const Part& part, int bends) {
    if (bends == 0 && part.legs.empty())
        return size_fault(part.length, "length");
    if (bends == 0)
        return base::Refusal{"legs",
                             "A part without bends has no legs.",
                             "a length and no legs, or one bend at least"};
    if (part.legs.size() != static_cast<std::size_t>(bends) + 1)
        return base::Refusal{"legs",
                             "A bent part has one leg more than it has bends.",
                             std::to_string(bends + 1) + " legs"};
    for (std::size_t i = 0; i < part.legs.size(); ++i)
        if (auto fault = size_fault(part.legs[i], "")) {
            fault->field = item("legs", i);
            return fault;
        }
    return std::nullopt;
}

Fault operation_faults(const Part& part, int bends) {
    if (part.operations.size() > k_most_operations)
        return base::Refusal{
            "operations", "There are too many operations on one part.", "at most 500"};
    int holes = 0;
    for (std::size_t i = 0; i < part.operations.size(); ++i) {
        const Operation& operation = part.operations[i];
        if (auto fault = std::visit(OperationCheck{bends}, operation))
            return inside("operations", i, *fault);
        if (const auto* punch = std::get_if<Punch>(&operation))
            holes += hole_count(punch->at);
        if (holes > k_most_holes)
            return base::Refusal{
                item("operations", i), "There are too many holes in one part.", "at most 10000"};
    }
    return std::nullopt;
}

Fault part_fault(const Part& part) {
    if (auto fault = text_faults(part))
        return fault;
    const auto sound_section = section::checked(part.section);
    if (!sound_section)
        return sound_section.refusal();
    if (auto fault = text_fault(part.section.designation, "section.designation"))
        return fault;
    const int bends = bend_count(part);
    if (auto fault = length_faults(part, bends))
        return fault;
    if (auto fault = count_fault(part.count, 1, k_most_pieces, "count"))
        return fault;
    if (!(part.certified_tensile >= Stress{}) || !is_finite(part.certified_tensile))
        return base::Refusal{"certified_tensile",
                             "The strength on a certificate cannot be below zero.",
                             "above 0, or empty when none has been read"};
    return operation_faults(part, bends);
}

Fault grade_faults(const std::vector<Grade>& grades) {
    std::set<std::string_view> ids;
    for (std::size_t i = 0; i < grades.size(); ++i) {
        const auto sound = material::checked(grades[i]);
        if (!sound)
            return inside("own_grades", i, sound.refusal());
        if (!ids.insert(grades[i].id).second)
            return inside("own_grades", i, {"id", "Another grade has the same id.", ""});
    }
    return std::nullopt;
}

Fault parts_faults(const std::vector<PartRef>& parts) {
    std::set<std::string_view> ids;
    for (std::size_t i = 0; i < parts.size(); ++i) {
        if (parts[i] == nullptr)
            return base::Refusal{item("parts", i), "The part is empty.", ""};
        if (auto fault = text_fault(parts[i]->id, "id", Presence::required))
            return inside("parts", i, *fault);
        if (auto fault = part_fault(*parts[i]))
            return inside("parts", i, *fault);
        if (!ids.insert(parts[i]->id).second)
            return inside("parts", i, {"id", "Another part has the same id.", ""});
    }
    return std::nullopt;
}

Fault job_fault(const Job& job) {
    if (auto fault = text_fault(job.name, "name"))
        return fault;
    if (auto fault = text_fault(job.note, "note", Presence::optional, quantity::k_longest_note))
        return fault;
    if (auto fault = text_fault(job.due, "due"))
        return fault;
    if (auto fault = quantity::denominator_fault(job.style.denominator, "style.denominator"))
        return fault;
    if (auto fault = parts_faults(job.parts))
        return fault;
    if (auto fault = grade_faults(job.own_grades))
        return fault;
    if (const auto layouts = checked(job.layouts); !layouts.ok())
        return layouts.refusal();
    return std::nullopt;
}

} // namespace

std::vector<HoleCentre> centres(const HolePattern& pattern) {
    std::vector<HoleCentre> out;
    out.reserve(static_cast<std::size_t>(std::max(0, hole_count(pattern))));
    for (int row = 0; row < pattern.rows; ++row)
        for (int column = 0; column < pattern.columns; ++column)
            out.push_back(
                {pattern.x + pattern.column_pitch * column, pattern.y + pattern.row_pitch * row});
    return out;
}

int hole_count(const HolePattern& pattern) { return pattern.columns * pattern.rows; }

base::Result<Part> checked(Part part) {
    if (auto fault = part_fault(part))
        return *fault;
    part.section = section::checked(part.section).value(); // sizes its shape does not use are zero
    return part;
}

base::Result<Job> checked(Job job) {
    if (auto fault = job_fault(job))
        return *fault;
    return job;
}

const char* operation_word(const Operation& operation) {
    struct Word {
        const char* operator()(const Cut& cut) const {
            return cut.side == CutSide::length ? "shear to length" : "shear to width";
        }
        const char* operator()(const Punch&) const { return "punch"; }
        const char* operator()(const Notch&) const { return "notch"; }
        const char* operator()(const Bend&) const { return "bend"; }
        const char* operator()(const Saddle&) const { return "saddle notch"; }
    };
    return std::visit(Word{}, operation);
}

const Grade* find_grade(const Job& job, const Catalog& catalog, std::string_view id) {
    for (const Grade& grade : job.own_grades)
        if (grade.id == id)
            return &grade;
    return catalog.grades.find(id);
}

} // namespace treadle::job
