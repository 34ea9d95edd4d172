#include "ui/views/operation_form.h"

#include "plan/words.h"

#include "ui/views/form.h"
#include "ui/views/hole_fields.h"
#include "ui/views/parts_edit.h"
#include "ui/widgets/controls.h"

#include <array>

namespace treadle::views {

namespace {

const std::array<std::string, 2> k_cut_sides = {"To length", "To width"};
const std::array<std::string, 2> k_notch_shapes = {"Rectangle", "V"};
const std::array<std::string, 8> k_notch_edges = {"Datum edge",
                                                  "Far edge",
                                                  "Start end",
                                                  "Finish end",
                                                  "Start, datum corner",
                                                  "Start, far corner",
                                                  "Finish, datum corner",
                                                  "Finish, far corner"};
const std::array<std::string, 3> k_ends = {"Start", "Finish", "Both ends"};

/// One operation of one part while its form is drawn.
struct Editing {
    Form& form;
    PartDraft& draft;
    const job::Part& part;
    std::size_t index;
    std::string path; ///< "operations[2]."

    template <class Operation>
    Operation& change() {
        return std::get<Operation>(draft.change().operations[index]);
    }
    [[nodiscard]] std::string key(const char* name) const { return path + name; }
};

template <class Change>
void face_choice(Editing& editing, section::Face face, const Change& change) {
    const std::vector<section::Face> faces = section::faces_of(editing.part.section.shape);
    if (faces.size() < 2)
        return;
    std::vector<std::string> names;
    int selected = -1;
    for (std::size_t i = 0; i < faces.size(); ++i) {
        names.emplace_back(section::face_word(faces[i]));
        if (faces[i] == face)
            selected = static_cast<int>(i);
    }
    if (const auto chosen = editing.form.choice("On", editing.key("face"), names, selected))
        change(faces[static_cast<std::size_t>(*chosen)]);
}

void leg_choice(Editing& editing, const job::Punch& punch) {
    if (editing.part.legs.size() < 2)
        return;
    std::vector<std::string> names;
    for (std::size_t i = 0; i < editing.part.legs.size(); ++i)
        names.push_back("Leg " + std::to_string(i + 1));
    if (const auto chosen =
            editing.form.choice("Measured from", editing.key("leg"), names, punch.leg))
        editing.change<job::Punch>().leg = *chosen;
}

void punch_fields(Desk& desk, Editing& editing, const job::Punch& punch, const PlacingReading& on) {
    Form& form = editing.form;
    if (const auto hole = crib_choice(desk, form, editing.key("crib"), punch.hole))
        editing.change<job::Punch>().hole = *hole;
    if (const auto hole = hole_fields(form, editing.key("hole"), punch.hole))
        editing.change<job::Punch>().hole = *hole;
    if (punch.hole.shape != geometry::HoleShape::round &&
        form.toggle("Turned across the part", editing.key("turned"), punch.turned))
        editing.change<job::Punch>().turned = !punch.turned;
    form.heading("First hole, from the datum");
    leg_choice(editing, punch);
    face_choice(
        editing, punch.face, [&](section::Face face) { editing.change<job::Punch>().face = face; });
    if (const auto typed = form.length("Along", editing.key("at.x"), punch.at.x, on.on_along))
        editing.change<job::Punch>().at.x = *typed;
    if (const auto typed = form.length("Across", editing.key("at.y"), punch.at.y, on.on_across))
        editing.change<job::Punch>().at.y = *typed;
    if (const auto typed = form.whole("Holes along", editing.key("at.columns"), punch.at.columns))
        editing.change<job::Punch>().at.columns = *typed;
    if (const auto typed =
            form.length("Pitch along", editing.key("at.column_pitch"), punch.at.column_pitch))
        editing.change<job::Punch>().at.column_pitch = *typed;
    if (const auto typed = form.whole("Holes across", editing.key("at.rows"), punch.at.rows))
        editing.change<job::Punch>().at.rows = *typed;
    if (const auto typed =
            form.length("Pitch across", editing.key("at.row_pitch"), punch.at.row_pitch))
        editing.change<job::Punch>().at.row_pitch = *typed;
}

void cut_fields(Editing& editing, const job::Cut& cut) {
    Form& form = editing.form;
    if (const auto chosen =
            form.choice("Cut", editing.key("side"), k_cut_sides, static_cast<int>(cut.side)))
        editing.change<job::Cut>().side = static_cast<job::CutSide>(*chosen);
    if (const auto typed = form.angle(
            "Mitre at the start", editing.key("start_mitre"), cut.start_mitre, "0 is square"))
        editing.change<job::Cut>().start_mitre = *typed;
    if (const auto typed = form.angle(
            "Mitre at the finish", editing.key("finish_mitre"), cut.finish_mitre, "0 is square"))
        editing.change<job::Cut>().finish_mitre = *typed;
}

void notch_fields(Editing& editing, const job::Notch& notch, const PlacingReading& on) {
    Form& form = editing.form;
    const bool vee = notch.shape == geometry::NotchShape::vee;
    if (const auto chosen = form.choice("Shape", editing.key("shape"), k_notch_shapes, vee ? 1 : 0))
        editing.change<job::Notch>().shape =
            *chosen == 1 ? geometry::NotchShape::vee : geometry::NotchShape::rectangle;
    if (const auto chosen =
            form.choice("Where", editing.key("edge"), k_notch_edges, static_cast<int>(notch.edge)))
        editing.change<job::Notch>().edge = static_cast<job::NotchEdge>(*chosen);
    face_choice(
        editing, notch.face, [&](section::Face face) { editing.change<job::Notch>().face = face; });
    if (notch.edge < job::NotchEdge::start_near) { // corners have no place of their own
        if (const auto typed = form.length(
                "Centre, from the datum", editing.key("at"), notch.at, on.on_along + on.on_across))
            editing.change<job::Notch>().at = *typed;
    }
    if (!vee) {
        if (const auto typed = form.length("Long", editing.key("along"), notch.along))
            editing.change<job::Notch>().along = *typed;
    }
    if (const auto typed = form.length("Deep", editing.key("depth"), notch.depth))
        editing.change<job::Notch>().depth = *typed;
    if (vee) {
        if (const auto typed =
                form.angle("Included angle", editing.key("included"), notch.included))
            editing.change<job::Notch>().included = *typed;
    }
}

void bend_fields(Editing& editing, const job::Bend& bend) {
    Form& form = editing.form;
    if (const auto typed =
            form.angle("Turned through", editing.key("angle"), bend.angle, "90 is a square corner"))
        editing.change<job::Bend>().angle = *typed;
    std::optional<Length> radius;
    if (bend.radius > Length{})
        radius = bend.radius;
    if (const auto typed = form.maybe(
            "Inside radius", editing.key("radius"), radius, "Empty: as it comes from the V"))
        editing.change<job::Bend>().radius = typed->value_or(Length{});
    if (form.toggle("Next leg rises", editing.key("up"), bend.up))
        editing.change<job::Bend>().up = !bend.up;
}

void saddle_fields(Editing& editing, const job::Saddle& saddle) {
    Form& form = editing.form;
    if (const auto chosen =
            form.choice("End", editing.key("end"), k_ends, static_cast<int>(saddle.end)))
        editing.change<job::Saddle>().end = static_cast<job::End>(*chosen);
    if (const auto typed = form.length(
            "Sits on a pipe of outside diameter", editing.key("run_diameter"), saddle.run_diameter))
        editing.change<job::Saddle>().run_diameter = *typed;
}

} // namespace

float operation_form(Desk& desk, const ui::Rect& rect, int part_index, int operation) {
    const job::Part& part = *desk.session.job().parts[static_cast<std::size_t>(part_index)];
    PartDraft draft(desk, part);
    Form form(desk, rect, "part/" + part.id, 150);
    const auto index = static_cast<std::size_t>(operation);
    Editing editing{form, draft, part, index, "operations[" + std::to_string(operation) + "]."};
    const job::Operation& is = part.operations[index];
    PlacingReading& on = desk.readings.placing;
    on.look_at(
        desk.session.plan().parts[static_cast<std::size_t>(part_index)], operation, desk.style());
    if (const auto* punch = std::get_if<job::Punch>(&is))
        punch_fields(desk, editing, *punch, on);
    else if (const auto* cut = std::get_if<job::Cut>(&is))
        cut_fields(editing, *cut);
    else if (const auto* notch = std::get_if<job::Notch>(&is))
        notch_fields(editing, *notch, on);
    else if (const auto* bend = std::get_if<job::Bend>(&is))
        bend_fields(editing, *bend);
    else if (const auto* saddle = std::get_if<job::Saddle>(&is))
        saddle_fields(editing, *saddle);
    draft.send(form.field(), form.typed());
    form.new_line();
    if (form.key("Copy this operation",
                 editing.key("copy"),
                 "Copy operation " + std::to_string(operation + 1)))
        copy_operation(desk, part, operation);
    form.new_line();
    if (form.key("Remove this operation",
                 editing.key("remove"),
                 "Remove operation " + std::to_string(operation + 1),
                 true))
        remove_operation(desk, part, operation);
    return form.bottom();
}

float operation_choice(Desk& desk, const ui::Rect& rect, int part_index) {
    const job::Part& part = *desk.session.job().parts[static_cast<std::size_t>(part_index)];
    struct Kind {
        const char* label;
        NewOperation kind;
    };
    constexpr std::array k_kinds = {Kind{"Punch", NewOperation::punch},
                                    Kind{"Cut", NewOperation::cut},
                                    Kind{"Notch", NewOperation::notch},
                                    Kind{"Bend", NewOperation::bend},
                                    Kind{"Saddle", NewOperation::saddle}};
    ui::Rect rest = rect;
    const float gap = desk.ui.size().gap;
    for (const Kind& kind : k_kinds) {
        ui::Button key;
        key.label = kind.label;
        const std::string name = std::string("Add operation: ") + kind.label;
        key.name = name;
        const float width = ui::button_width(desk.ui, key);
        if (rest.w < width) {
            rest.x = rect.x;
            rest.w = rect.w;
            rest.y += desk.ui.size().target + gap;
        }
        ui::Rect cell = rest.cut_left(width, gap);
        cell.h = desk.ui.size().target;
        if (ui::button(desk.ui, std::string("add-") + kind.label, cell, key))
            add_operation(desk, part, kind.kind);
    }
    return rest.y + desk.ui.size().target + gap;
}

} // namespace treadle::views
