#include "ui/views/parts_edit.h"

namespace treadle::views {

namespace {

Length either(UnitSystem system, double inch, double metric_mm) {
    return system == UnitSystem::inch ? inches(inch) : millimetres(metric_mm);
}

/// A mark that no part has yet: painted marks must tell pieces apart.
std::string free_mark(const job::Job& job) {
    for (std::size_t number = job.parts.size() + 1;; ++number) {
        const std::string mark = "P" + std::to_string(number);
        bool taken = false;
        for (const job::PartRef& part : job.parts)
            taken = taken || part->mark == mark;
        if (!taken)
            return mark;
    }
}

job::Operation starting_punch(const Desk& desk, const job::Part& part) {
    const UnitSystem system = desk.style().system;
    job::Punch punch;
    const auto& crib = desk.session.shop().crib.punches;
    if (crib.empty())
        punch.hole.size = either(system, 0.5, 12);
    else
        punch.hole = crib.front().hole;
    punch.at.x = either(system, 2, 50);
    punch.at.y = either(system, 1, 25);
    const std::vector<job::Face> faces = section::faces_of(part.section.shape);
    if (!faces.empty())
        punch.face = faces.front();
    return punch;
}

job::Operation starting_notch(const Desk& desk, const job::Part& part) {
    const UnitSystem system = desk.style().system;
    job::Notch notch;
    notch.along = either(system, 1, 25);
    notch.depth = either(system, 1, 25);
    notch.included = degrees(90);
    const std::vector<job::Face> faces = section::faces_of(part.section.shape);
    if (!faces.empty())
        notch.face = faces.front();
    return notch;
}

int bends_before(const job::Part& part, std::size_t operation) {
    int bends = 0;
    for (std::size_t i = 0; i < operation; ++i)
        bends += std::holds_alternative<job::Bend>(part.operations[i]) ? 1 : 0;
    return bends;
}

} // namespace

void PartDraft::send(const std::string& field, const std::string& typed) {
    if (draft_)
        desk_.ask(FieldEdit{field, typed, edit::ReplacePart{std::move(*draft_)}});
    draft_.reset();
}

void choose_part(Desk& desk, const std::string& id) {
    State& state = desk.state;
    if (state.part != id) {
        state.operation = plan::k_none;
        state.placing = false;
        state.trial.reset();
        for (const auto& part : desk.readings.parts()) {
            if (part->plan->part->id == id)
                state.operation = first_trouble(*part);
        }
        if (state.panel == Panel::operation_form || state.panel == Panel::working)
            state.panel = Panel::checks;
    }
    state.bend_step = state.part == id ? state.bend_step : 0;
    state.part = id;
    state.adding = false;
    state.detail_open = true;
    state.layouts.open = false;
    desk.ui.want_frame();
}

void show_operation(Desk& desk, int part, int operation) {
    choose_part(desk, desk.session.job().parts[static_cast<std::size_t>(part)]->id);
    desk.state.operation = operation;
    desk.state.place = Place::parts;
}

std::string first_grade(const Desk& desk) {
    const int chosen = desk.chosen_part();
    if (chosen != plan::k_none)
        return desk.session.job().parts[static_cast<std::size_t>(chosen)]->grade;
    const auto& rows = desk.session.catalog().grades.rows;
    return rows.empty() ? std::string() : rows.front().id;
}

void add_part(Desk& desk) {
    const UnitSystem system = desk.style().system;
    job::Part part;
    part.mark = free_mark(desk.session.job());
    part.grade = first_grade(desk);
    part.section = starting_section(system, section::Shape::flat);
    part.length = either(system, 12, 300);
    part.operations.push_back(job::Cut{});
    desk.state.panel = Panel::part_form;
    desk.state.detail_open = true;
    desk.state.layouts.open = false;
    desk.ask(PlainEdit{edit::AddPart{std::move(part), -1}, "", true});
}

void copy_part(Desk& desk, const job::Part& part) {
    job::Part copy = part;
    copy.id.clear();
    copy.mark = free_mark(desk.session.job());
    desk.ask(PlainEdit{edit::AddPart{std::move(copy), -1}, "", true});
}

void remove_part(Desk& desk, int index) {
    const auto& parts = desk.session.job().parts;
    const auto at = static_cast<std::size_t>(index);
    const std::size_t beside = at + 1 < parts.size() ? at + 1 : at - 1;
    desk.state.panel = Panel::checks;
    desk.ask(PlainEdit{
        edit::RemovePart{parts[at]->id}, parts.size() > 1 ? parts[beside]->id : "", false});
}

bool can_move_part(const Desk& desk, int index, int by) {
    const int to = index + by;
    return index >= 0 && to >= 0 && to < static_cast<int>(desk.session.job().parts.size());
}

void move_part(Desk& desk, int index, int by) {
    if (!can_move_part(desk, index, by))
        return;
    const std::string& id = desk.session.job().parts[static_cast<std::size_t>(index)]->id;
    desk.ask(PlainEdit{edit::MovePart{id, index + by}, "", false});
}

void move_by_keyboard(Desk& desk) {
    using Mod = ui::Ui::Mod;
    const int by = desk.ui.key("ArrowUp", Mod::control)     ? -1
                   : desk.ui.key("ArrowDown", Mod::control) ? 1
                                                            : 0;
    if (by == 0)
        return;
    const auto& parts = desk.session.job().parts;
    for (std::size_t i = 0; i < parts.size(); ++i) {
        if (!desk.ui.touch(parts[i]->id).focused)
            continue;
        desk.state.focus_next = parts[i]->id; // an element that moves loses the keyboard
        return move_part(desk, static_cast<int>(i), by);
    }
    const int chosen = desk.chosen_part();
    if (chosen == plan::k_none)
        return;
    const job::Part& part = *parts[static_cast<std::size_t>(chosen)];
    for (int i = 0; i < static_cast<int>(part.operations.size()); ++i) {
        if (!desk.ui.touch(operation_row_id(i)).focused)
            continue;
        move_operation(desk, part, i, by);
        desk.state.focus_next = operation_row_id(desk.state.operation);
        return;
    }
}

std::string operation_row_id(int operation) {
    return "part/operations/operation-" + std::to_string(operation);
}

void move_operation(Desk& desk, const job::Part& part, int operation, int by) {
    const int to = operation + by;
    if (to < 0 || to >= static_cast<int>(part.operations.size()))
        return;
    // What was typed and not taken belongs to a place in the list that now holds something else.
    const std::string fields = "part/" + part.id + "/operations[";
    std::erase_if(desk.state.faults,
                  [&](const Fault& fault) { return fault.field.rfind(fields, 0) == 0; });
    desk.state.operation = to;
    desk.ask(PlainEdit{edit::MoveOperation{part.id, operation, to}, part.id, false});
}

void copy_operation(Desk& desk, const job::Part& part, int operation) {
    desk.state.operation = operation + 1;
    desk.ask(PlainEdit{edit::CopyOperation{part.id, operation}, part.id, false});
}

void add_operation(Desk& desk, const job::Part& part, NewOperation kind) {
    const UnitSystem system = desk.style().system;
    PartDraft draft(desk, part);
    job::Part& next = draft.change();
    switch (kind) {
    case NewOperation::punch:
        next.operations.push_back(starting_punch(desk, part));
        break;
    case NewOperation::cut:
        next.operations.push_back(job::Cut{});
        break;
    case NewOperation::notch:
        next.operations.push_back(starting_notch(desk, part));
        break;
    case NewOperation::saddle:
        next.operations.push_back(job::Saddle{job::End::finish, part.section.width});
        break;
    case NewOperation::bend:
        // A bend needs a leg after it: a straight part becomes the first leg.
        if (next.legs.empty())
            next.legs.push_back(next.length);
        next.legs.push_back(either(system, 3, 75));
        next.operations.push_back(job::Bend{degrees(90), Length{}, true});
        break;
    }
    desk.state.operation = static_cast<int>(part.operations.size());
    desk.state.panel = Panel::operation_form;
    desk.state.adding = false;
    draft.send("part/" + part.id + "/operations", "");
}

void remove_operation(Desk& desk, const job::Part& part, int operation) {
    PartDraft draft(desk, part);
    job::Part& next = draft.change();
    const auto at = static_cast<std::size_t>(operation);
    if (std::holds_alternative<job::Bend>(part.operations[at])) {
        const int leg = bends_before(part, at) + 1;
        if (leg < static_cast<int>(next.legs.size()))
            next.legs.erase(next.legs.begin() + leg);
        if (next.legs.size() == 1) {
            next.length = next.legs.front();
            next.legs.clear();
        }
    }
    next.operations.erase(next.operations.begin() + operation);
    desk.state.operation = plan::k_none;
    desk.state.panel = Panel::checks;
    draft.send("part/" + part.id + "/operations", "");
}

Section starting_section(UnitSystem system, section::Shape shape) {
    using section::Shape;
    Section section;
    section.shape = shape;
    const auto size = [&](double inch, double metric_mm) {
        return either(system, inch, metric_mm);
    };
    switch (shape) {
    case Shape::flat:
    case Shape::plate:
        section.width = shape == Shape::flat ? size(2, 50) : size(6, 150);
        section.thickness = size(0.25, 6);
        break;
    case Shape::angle:
        section.width = section.height = size(2, 50);
        section.thickness = size(0.25, 5);
        break;
    case Shape::channel:
        section.height = size(4, 100);
        section.width = size(1.5, 50);
        section.thickness = size(0.1875, 6);
        section.flange_thickness = size(0.3125, 8.5);
        break;
    case Shape::round:
    case Shape::square:
        section.width = size(0.625, 16);
        break;
    case Shape::pipe:
        section.width = size(1.66, 42.4);
        section.thickness = size(0.14, 3.2);
        break;
    case Shape::square_tube:
        section.width = section.height = size(1.5, 40);
        section.thickness = size(0.12, 3);
        break;
    }
    return section;
}

} // namespace treadle::views
