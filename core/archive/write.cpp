#include "archive/archive.h"
#include "archive/writers.h"
#include "base/text.h"
#include "quantity/print.h"

namespace treadle::archive {

std::string Writer::text_of(Length value) const { return quantity::write_exact(value, units_); }
std::string Writer::text_of(Force value) const { return quantity::write_exact(value, units_); }
std::string Writer::text_of(Stress value) const { return quantity::write_exact(value, units_); }
std::string Writer::text_of(material::RatingBase value) const { return text_of(value.value); }
std::string Writer::text_of(Angle value) const { return quantity::write_exact(value); }
std::string Writer::text_of(Mass value) const { return quantity::write_exact(value, units_); }
/// In horsepower where that reads back the same, as a motor's plate says it.
std::string Writer::text_of(Power value) {
    const std::string plate = base::write_short(quantity::to_horsepower(value), 4);
    const auto read = base::read_number(plate);
    if (read && quantity::horsepower(*read) == value)
        return plate + " hp";
    return base::write_number(value.in_base()) + " W";
}
std::string Writer::text_of(Voltage value) {
    return base::write_number(quantity::to_volts(value)) + " V";
}
std::string Writer::text_of(Density value) const { return quantity::write_exact(value); }

void write_section(Writer& out, const section::Section& section) {
    using section::Shape;
    out.json.begin_object();
    out.word("shape", section.shape);
    switch (section.shape) {
    case Shape::flat:
    case Shape::plate:
        out.quantity("width", section.width);
        out.quantity("thickness", section.thickness);
        break;
    case Shape::angle:
        out.quantity("leg_a", section.width);
        out.quantity("leg_b", section.height);
        out.quantity("thickness", section.thickness);
        out.unless_zero("root_radius", section.root_radius);
        break;
    case Shape::channel:
        out.quantity("depth", section.height);
        out.quantity("flange", section.width);
        out.quantity("web", section.thickness);
        out.quantity("flange_thickness", section.flange_thickness);
        break;
    case Shape::round:
        out.quantity("diameter", section.width);
        break;
    case Shape::square:
        out.quantity("side", section.width);
        break;
    case Shape::pipe:
        out.quantity("outside_diameter", section.width);
        out.quantity("wall", section.thickness);
        break;
    case Shape::square_tube:
        out.quantity("width", section.width);
        out.quantity("height", section.height);
        out.quantity("wall", section.thickness);
        out.unless_zero("corner_radius", section.root_radius);
        break;
    }
    out.unless_empty("designation", section.designation);
    out.json.end_object();
}

void write_hole(Writer& out, const geometry::HoleOutline& hole) {
    using geometry::HoleShape;
    out.json.begin_object();
    out.word("shape", hole.shape);
    out.quantity("size", hole.size);
    if (hole.shape == HoleShape::rectangle || hole.shape == HoleShape::obround)
        out.quantity("length", hole.size2);
    out.json.end_object();
}

namespace {

/// The members of an operation after "do".
struct OperationWriter {
    Writer& out;

    void operator()(const job::Cut& cut) const {
        out.word("do", Doing::cut);
        out.word_unless("side", cut.side, job::CutSide::length);
        out.unless_zero("start_mitre", cut.start_mitre);
        out.unless_zero("finish_mitre", cut.finish_mitre);
    }
    void operator()(const job::Punch& punch) const {
        out.word("do", Doing::punch);
        out.json.key("hole");
        write_hole(out, punch.hole);
        out.if_true("turned", punch.turned);
        out.json.key("at").begin_object();
        out.quantity("x", punch.at.x);
        out.quantity("y", punch.at.y);
        out.unless_one("columns", punch.at.columns);
        out.unless_one("rows", punch.at.rows);
        out.unless_zero("column_pitch", punch.at.column_pitch);
        out.unless_zero("row_pitch", punch.at.row_pitch);
        out.json.end_object();
        out.word_unless("face", punch.face, section::Face::flat);
        if (punch.leg != 0)
            out.json.field("leg", punch.leg);
    }
    void operator()(const job::Notch& notch) const {
        out.word("do", Doing::notch);
        out.word("shape", notch.shape);
        out.word("edge", notch.edge);
        out.unless_zero("at", notch.at);
        out.unless_zero("along", notch.along);
        out.quantity("depth", notch.depth);
        out.unless_zero("included", notch.included);
        out.word_unless("face", notch.face, section::Face::flat);
    }
    void operator()(const job::Bend& bend) const {
        out.word("do", Doing::bend);
        out.quantity("angle", bend.angle);
        out.unless_zero("radius", bend.radius);
        out.word_unless("direction", bend.up ? Direction::up : Direction::down, Direction::up);
    }
    void operator()(const job::Saddle& saddle) const {
        out.word("do", Doing::saddle);
        out.word_unless("end", saddle.end, job::End::finish);
        out.quantity("run_diameter", saddle.run_diameter);
    }
};

void write_band(Writer& out, const material::StrengthBand& band) {
    out.json.begin_object();
    out.quantity("up_to", band.up_to);
    out.quantity("yield_minimum", band.yield_minimum);
    out.quantity("tensile_minimum", band.tensile_minimum);
    out.quantity("tensile_upper", band.tensile_upper);
    out.json.end_object();
}

void write_grade(Writer& out, const Grade& grade) {
    out.json.begin_object();
    out.json.field("id", grade.id).field("name", grade.name);
    out.unless_empty("standard", grade.standard);
    out.word("family", grade.family);
    out.list("bands", grade.bands, [&](const auto& band) { write_band(out, band); });
    out.json.field("shear_ratio", grade.shear_ratio).field("elongation_pct", grade.elongation_pct);
    out.quantity("density", grade.density);
    out.quantity("modulus", grade.modulus);
    out.unless_empty("bend_group", grade.bend_group);
    out.json.field("air_bend_share", grade.air_bend_share);
    if (grade.refusal.cutting || grade.refusal.bending || !grade.refusal.reason.empty()) {
        out.json.key("refusal").begin_object();
        out.json.field("cutting", grade.refusal.cutting).field("bending", grade.refusal.bending);
        out.json.field("reason", grade.refusal.reason).end_object();
    }
    out.unless_empty("source", grade.source);
    out.word("evidence", grade.evidence);
    out.unless_empty("note", grade.note);
    out.json.end_object();
}

} // namespace

void write_part(Writer& out, const job::Part& part) {
    out.json.begin_object();
    out.json.field("id", part.id).field("mark", part.mark);
    out.unless_empty("note", part.note);
    out.json.field("grade", part.grade);
    out.json.key("section");
    write_section(out, part.section);
    out.unless_zero("length", part.length);
    if (!part.legs.empty()) {
        out.json.key("legs").begin_array();
        for (const Length leg : part.legs)
            out.text(leg);
        out.json.end_array();
    }
    out.unless_one("count", part.count);
    out.word_unless("grain", part.grain, material::Grain::unknown);
    out.unless_zero("certified_tensile", part.certified_tensile);
    out.list("operations", part.operations, [&](const job::Operation& operation) {
        out.json.begin_object();
        std::visit(OperationWriter{out}, operation);
        out.json.end_object();
    });
    out.json.end_object();
}

namespace {

void write_layout(Writer& out, const job::Layout& layout) {
    out.json.begin_object();
    out.json.field("id", layout.id).field("kind", layout.kind).field("mark", layout.mark);
    out.list("values", layout.values, [&](const job::LayoutValue& value) {
        out.json.begin_object().field("name", value.name).field("text", value.text).end_object();
    });
    out.list("made", layout.made, [&](const job::MadePart& made) {
        out.json.begin_object().field("role", made.role);
        out.unless_empty("part", made.part);
        out.if_true("detached", made.detached);
        out.json.end_object();
    });
    out.json.end_object();
}

} // namespace

void write_header(Writer& out, const job::Job& job) {
    out.word("units", job.style.system);
    out.json.field("denominator", job.style.denominator);
    out.unless_empty("name", job.name);
    out.unless_empty("note", job.note);
    out.unless_empty("due", job.due);
    out.if_true("invented", job.invented);
    if (job.tolerance)
        out.word("tolerance", *job.tolerance);
    out.list("grades", job.own_grades, [&](const Grade& grade) { write_grade(out, grade); });
    out.list("layouts", job.layouts, [&](const job::Layout& layout) { write_layout(out, layout); });
}

namespace {

void begin_file(Writer& out, const job::Job& job) {
    out.json.begin_object();
    out.json.field("format", "treadle-job").field("version", written_version(job));
    write_header(out, job);
}

void write_parts(Writer& out, const job::Job& job) {
    out.json.key("parts").begin_array();
    for (const job::PartRef& part : job.parts)
        write_part(out, *part);
    out.json.end_array();
}

} // namespace

int written_version(const job::Job& job) {
    return job.layouts.empty() ? k_format_without_layouts : k_format_version;
}

std::string write_file(const job::Job& job, const equipment::Shop& shop) {
    Writer out(job.style.system);
    begin_file(out, job);
    write_parts(out, job);
    out.json.key("shop");
    write_shop(out, shop);
    out.json.end_object();
    return out.json.take() + "\n";
}

std::string write_line(const job::Job& job, const equipment::Shop& shop) {
    Writer out(job.style.system, 0);
    begin_file(out, job);
    out.json.key("shop");
    write_shop(out, shop);
    write_parts(out, job);
    out.json.end_object();
    return out.json.take();
}

} // namespace treadle::archive
