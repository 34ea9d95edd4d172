// Sections, holes and grades: what jobs, racks and cribs have in common.

#include "archive/readers.h"

namespace treadle::archive {

namespace {

/// What the file calls a size of a section: an angle has legs, not a width.
std::string name_in_file(section::Shape shape, std::string_view inside) {
    using section::Shape;
    if (shape == Shape::angle)
        return inside == "width" ? "leg_a" : inside == "height" ? "leg_b" : std::string(inside);
    if (shape == Shape::channel)
        return inside == "width"       ? "flange"
               : inside == "height"    ? "depth"
               : inside == "thickness" ? "web"
                                       : std::string(inside);
    if (shape == Shape::round)
        return "diameter";
    if (shape == Shape::square)
        return "side";
    if (shape == Shape::pipe)
        return inside == "width" ? "outside_diameter" : "wall";
    if (shape == Shape::square_tube)
        return inside == "thickness"     ? "wall"
               : inside == "root_radius" ? "corner_radius"
                                         : std::string(inside);
    return std::string(inside);
}

void read_sizes(Members& members, section::Section& out) {
    switch (out.shape) {
    case section::Shape::flat:
    case section::Shape::plate:
        members.need("width", out.width).need("thickness", out.thickness);
        return;
    case section::Shape::angle:
        members.need("leg_a", out.width).need("leg_b", out.height);
        members.need("thickness", out.thickness).may("root_radius", out.root_radius);
        return;
    case section::Shape::channel:
        members.need("depth", out.height).need("flange", out.width);
        members.need("web", out.thickness).need("flange_thickness", out.flange_thickness);
        return;
    case section::Shape::round:
        members.need("diameter", out.width);
        return;
    case section::Shape::square:
        members.need("side", out.width);
        return;
    case section::Shape::pipe:
        members.need("outside_diameter", out.width).need("wall", out.thickness);
        return;
    case section::Shape::square_tube:
        members.need("width", out.width).need("height", out.height);
        members.need("wall", out.thickness).may("corner_radius", out.root_radius);
        return;
    }
}

} // namespace

void read_value(const Place& at, material::GradeRefusal& out) {
    Members members(at);
    members.may("cutting", out.cutting).may("bending", out.bending).need("reason", out.reason);
    members.finish();
}

void read_value(const Place& at, section::Section& out) {
    Members members(at);
    members.need("shape", out.shape).may("designation", out.designation);
    read_sizes(members, out);
    members.finish();
    if (at.failed())
        return;
    auto made = section::checked(out);
    if (made.ok()) {
        out = std::move(made).value();
        return;
    }
    std::string_view inside = made.refusal().field;
    if (const std::size_t dot = inside.rfind('.'); dot != std::string_view::npos)
        inside.remove_prefix(dot + 1);
    at.refuse(made.refusal().reason, made.refusal().detail, name_in_file(out.shape, inside));
}

void read_value(const Place& at, geometry::HoleOutline& out) {
    using geometry::HoleShape;
    Members members(at);
    members.need("shape", out.shape).need("size", out.size);
    if (out.shape == HoleShape::rectangle || out.shape == HoleShape::obround)
        members.need("length", out.size2);
    members.finish();
    if (at.failed())
        return;
    const auto made = geometry::checked(out);
    if (made.ok())
        out = made.value();
    else
        at.refuse(made.refusal().reason,
                  made.refusal().detail,
                  made.refusal().field == "size2" ? "length" : made.refusal().field);
}

void read_value(const Place& at, material::RatingBase& out) { read_value(at, out.value); }

void read_value(const Place& at, material::StrengthBand& out) {
    Members members(at);
    members.need("up_to", out.up_to)
        .need("yield_minimum", out.yield_minimum)
        .need("tensile_minimum", out.tensile_minimum)
        .need("tensile_upper", out.tensile_upper);
    members.finish();
}

void read_value(const Place& at, material::Grade& out) {
    Members members(at);
    members.need("id", out.id).need("name", out.name).may("standard", out.standard);
    members.need("family", out.family).need("bands", out.bands);
    members.need("shear_ratio", out.shear_ratio).may("elongation_pct", out.elongation_pct);
    members.need("density", out.density).need("modulus", out.modulus);
    members.may("bend_group", out.bend_group).may("air_bend_share", out.air_bend_share);
    members.may("refusal", out.refusal).may("source", out.source);
    members.may("evidence", out.evidence).may("note", out.note);
    members.finish();
    if (at.failed())
        return;
    auto made = material::checked(out);
    if (made.ok())
        out = std::move(made).value();
    else
        at.refuse(made.refusal());
}

} // namespace treadle::archive
