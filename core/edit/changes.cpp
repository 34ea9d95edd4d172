#include "edit/changes.h"

#include <algorithm>

namespace treadle::edit {

namespace {

bool same(const geometry::HoleOutline& a, const geometry::HoleOutline& b) {
    return a.shape == b.shape && a.size == b.size && a.size2 == b.size2;
}
bool same(const job::HolePattern& a, const job::HolePattern& b) {
    return a.x == b.x && a.y == b.y && a.columns == b.columns && a.rows == b.rows &&
           a.column_pitch == b.column_pitch && a.row_pitch == b.row_pitch;
}
bool same(const job::Cut& a, const job::Cut& b) {
    return a.side == b.side && a.start_mitre == b.start_mitre && a.finish_mitre == b.finish_mitre;
}
bool same(const job::Punch& a, const job::Punch& b) {
    return same(a.hole, b.hole) && a.turned == b.turned && same(a.at, b.at) && a.face == b.face &&
           a.leg == b.leg;
}
bool same(const job::Notch& a, const job::Notch& b) {
    return a.shape == b.shape && a.edge == b.edge && a.at == b.at && a.along == b.along &&
           a.depth == b.depth && a.included == b.included && a.face == b.face;
}
bool same(const job::Bend& a, const job::Bend& b) {
    return a.angle == b.angle && a.radius == b.radius && a.up == b.up;
}
bool same(const job::Saddle& a, const job::Saddle& b) {
    return a.end == b.end && a.run_diameter == b.run_diameter;
}
bool same(const job::Operation& a, const job::Operation& b) {
    if (a.index() != b.index())
        return false;
    return std::visit(
        [&](const auto& left) { return same(left, std::get<std::decay_t<decltype(left)>>(b)); }, a);
}
bool same(const material::StrengthBand& a, const material::StrengthBand& b) {
    return a.up_to == b.up_to && a.yield_minimum == b.yield_minimum &&
           a.tensile_minimum == b.tensile_minimum && a.tensile_upper == b.tensile_upper;
}
bool same(const Grade& a, const Grade& b) {
    const auto same_band = [](const auto& x, const auto& y) { return same(x, y); };
    return a.id == b.id && a.name == b.name && a.standard == b.standard && a.family == b.family &&
           std::equal(a.bands.begin(), a.bands.end(), b.bands.begin(), b.bands.end(), same_band) &&
           a.shear_ratio == b.shear_ratio && a.elongation_pct == b.elongation_pct &&
           a.density == b.density && a.modulus == b.modulus && a.bend_group == b.bend_group &&
           a.air_bend_share == b.air_bend_share && a.refusal.cutting == b.refusal.cutting &&
           a.refusal.bending == b.refusal.bending && a.refusal.reason == b.refusal.reason &&
           a.source == b.source && a.evidence == b.evidence && a.note == b.note;
}

/// What changed among the operations: "operation 2 of CL1 removed".
std::string operation_change(const job::Part& before, const job::Part& after) {
    const auto& old = before.operations;
    const auto& now = after.operations;
    std::size_t first = 0;
    while (first < old.size() && first < now.size() && same(old[first], now[first]))
        ++first;
    if (first == old.size() && first == now.size())
        return "";
    const std::string name = "operation " + std::to_string(first + 1) + " of " + after.mark;
    if (old.size() < now.size())
        return name + " added";
    if (old.size() > now.size())
        return name + " removed";
    std::size_t last = now.size() - 1;
    while (last > first && same(old[last], now[last]))
        --last;
    return last == first ? name : "operations of " + after.mark;
}

} // namespace

bool same(const std::vector<Grade>& a, const std::vector<Grade>& b) {
    return std::equal(a.begin(), a.end(), b.begin(), b.end(), [](const Grade& x, const Grade& y) {
        return same(x, y);
    });
}

std::string change_words(const job::Part& before, const job::Part& after) {
    std::vector<std::string> changed;
    const auto look = [&](bool equal, const char* what) {
        if (!equal)
            changed.emplace_back(what);
    };
    const Section& a = before.section;
    const Section& b = after.section;
    if (a.shape != b.shape || a.designation != b.designation) {
        changed.emplace_back("section");
    } else {
        look(a.width == b.width, "width");
        look(a.height == b.height, "height");
        look(a.thickness == b.thickness, "thickness");
        look(a.flange_thickness == b.flange_thickness, "flange thickness");
        look(a.root_radius == b.root_radius, "root radius");
    }
    look(before.mark == after.mark, "mark");
    look(before.note == after.note, "note");
    look(before.grade == after.grade, "grade");
    look(before.length == after.length, "length");
    look(before.count == after.count, "count");
    look(before.grain == after.grain, "grain");
    look(before.certified_tensile == after.certified_tensile, "certificate");
    const std::string operations = operation_change(before, after);
    if (operations.empty()) {
        look(before.legs == after.legs, "legs");
    } else if (changed.empty()) {
        return operations; // a bend brings its leg along
    }
    if (changed.empty())
        return "";
    const bool one = changed.size() == 1 && operations.empty();
    return (one ? changed.front() : std::string("changes")) + " of " +
           (before.mark.empty() ? after.mark : before.mark);
}

} // namespace treadle::edit
