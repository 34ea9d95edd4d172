#include "ui/views/crib_form.h"

#include "ui/views/hole_fields.h"
#include "ui/views/shop_draft.h"
#include "ui/views/shop_pages.h"
#include "ui/widgets/controls.h"

#include <algorithm>

namespace treadle::views {

namespace {

using equipment::Crib;

template <class Tool>
void count_field(Form& form,
                 const std::string& path,
                 const Tool& tool,
                 std::optional<Tool>& changed) {
    if (const auto typed = form.whole("How many", path + ".count", tool.count)) {
        changed = tool;
        changed->count = *typed;
    }
}

template <class Tool>
void length_field(Form& form,
                  const std::string& path,
                  const char* label,
                  const char* name,
                  const Tool& tool,
                  Length Tool::*member,
                  std::optional<Tool>& changed) {
    if (const auto typed = form.length(label, path + "." + name, tool.*member)) {
        changed = tool;
        (*changed).*member = *typed;
    }
}

/// A size that may stay unknown.
template <class Tool, class Size>
void maybe_field(Form& form,
                 const std::string& path,
                 const char* label,
                 const char* name,
                 const Tool& tool,
                 std::optional<Size> Tool::*member,
                 std::optional<Tool>& changed) {
    if (const auto typed = form.maybe(label, path + "." + name, tool.*member)) {
        changed = tool;
        (*changed).*member = *typed;
    }
}

/// Strokes of a cutting edge: empty ones are not counted.
template <class Tool>
void edge_fields(Form& form,
                 const std::string& path,
                 const Tool& tool,
                 std::optional<Tool>& changed) {
    maybe_field(form,
                path,
                "Strokes since ground",
                "strokes_since_grind",
                tool,
                &Tool::strokes_since_grind,
                changed);
    maybe_field(
        form, path, "Grind after, strokes", "regrind_after", tool, &Tool::regrind_after, changed);
}

template <class Tool>
std::optional<Tool> hole_tool_fields(Form& form, const std::string& path, const Tool& tool) {
    std::optional<Tool> changed;
    if (const auto hole = hole_fields(form, path + ".hole", tool.hole)) {
        changed = tool;
        changed->hole = *hole;
    }
    count_field(form, path, tool, changed);
    edge_fields(form, path, tool, changed);
    return changed;
}

std::optional<equipment::PunchTool>
fields(Form& form, const std::string& path, const equipment::PunchTool& tool) {
    return hole_tool_fields(form, path, tool);
}
std::optional<equipment::DieTool>
fields(Form& form, const std::string& path, const equipment::DieTool& tool) {
    return hole_tool_fields(form, path, tool);
}
std::optional<equipment::VBlock>
fields(Form& form, const std::string& path, const equipment::VBlock& tool) {
    using equipment::VBlock;
    std::optional<VBlock> changed;
    length_field(form, path, "Opening", "opening", tool, &VBlock::opening, changed);
    length_field(form, path, "Length", "length", tool, &VBlock::length, changed);
    maybe_field(form, path, "Width of the block", "width", tool, &VBlock::width, changed);
    maybe_field(form, path, "Height of the block", "height", tool, &VBlock::height, changed);
    count_field(form, path, tool, changed);
    return changed;
}
std::optional<equipment::BrakePunch>
fields(Form& form, const std::string& path, const equipment::BrakePunch& tool) {
    using equipment::BrakePunch;
    std::optional<BrakePunch> changed;
    length_field(form, path, "Nose radius", "nose", tool, &BrakePunch::nose, changed);
    length_field(form, path, "Length", "length", tool, &BrakePunch::length, changed);
    maybe_field(form, path, "Width of the body", "width", tool, &BrakePunch::width, changed);
    maybe_field(form, path, "Height, nose to ram", "height", tool, &BrakePunch::height, changed);
    maybe_field(form, path, "Angle of the wedge", "included", tool, &BrakePunch::included, changed);
    count_field(form, path, tool, changed);
    return changed;
}
std::optional<equipment::SaddleDie>
fields(Form& form, const std::string& path, const equipment::SaddleDie& tool) {
    using equipment::SaddleDie;
    std::optional<SaddleDie> changed;
    length_field(form,
                 path,
                 "Pipe that is shaped, outside",
                 "branch_diameter",
                 tool,
                 &SaddleDie::branch_diameter,
                 changed);
    length_field(form,
                 path,
                 "Pipe it sits on, outside",
                 "run_diameter",
                 tool,
                 &SaddleDie::run_diameter,
                 changed);
    length_field(
        form, path, "Thickest wall", "largest_wall", tool, &SaddleDie::largest_wall, changed);
    maybe_field(form, path, "Thinnest wall", "least_wall", tool, &SaddleDie::least_wall, changed);
    edge_fields(form, path, tool, changed);
    return changed;
}

/// Only a tool with a count of strokes has the key.
void ground_key(Desk& desk,
                Form& form,
                const std::string& path,
                const std::string& words,
                plan::EdgeKind kind,
                std::size_t tool) {
    if (form.key("Ground", path + ".ground", "Ground: " + words + " counts from zero"))
        desk.ask(PlainEdit{edit::GroundTool{kind, static_cast<int>(tool)}, "", false});
}
plan::EdgeKind edge_of(const equipment::PunchTool*) { return plan::EdgeKind::punch; }
plan::EdgeKind edge_of(const equipment::DieTool*) { return plan::EdgeKind::die; }
plan::EdgeKind edge_of(const equipment::SaddleDie*) { return plan::EdgeKind::saddle_die; }

/// What a new tool starts with when there is none to copy.
equipment::PunchTool first_of(const equipment::PunchTool*) {
    return {{geometry::HoleShape::round, inches(0.5), Length{}}, 1};
}
equipment::DieTool first_of(const equipment::DieTool*) {
    return {{geometry::HoleShape::round, inches(0.5625), Length{}}, 1};
}
equipment::VBlock first_of(const equipment::VBlock*) { return {inches(1), inches(12), 1}; }
equipment::BrakePunch first_of(const equipment::BrakePunch*) {
    return {inches(0.0625), inches(12), 1};
}
equipment::SaddleDie first_of(const equipment::SaddleDie*) {
    return {inches(1.66), inches(1.66), inches(0.14)};
}

/// One list of tools; `list` is its place in the crib, `path` its path in a refusal.
template <class Tool>
float tool_list(Desk& desk,
                const ui::Rect& rect,
                std::vector<Tool> Crib::*list,
                const std::string& path) {
    ui::Ui& ui = desk.ui;
    const std::vector<Tool>& tools = desk.session.shop().crib.*list;
    ShopDraft draft(desk);
    const auto all = [&]() -> std::vector<Tool>& { return draft.change().crib.*list; };
    std::string field;
    std::string typed;
    ui::Rect rest = rect;
    const float height = ui::row_height(ui, 44);
    for (std::size_t i = 0; i < tools.size(); ++i) {
        const bool chosen = static_cast<int>(i) == desk.state.tool;
        const ui::Rect place{rest.x, rest.y, rest.w, height};
        rest.y += height;
        if (chosen || ui.is_visible(place)) {
            const std::string words = tool_words(tools[i], desk.style());
            ui::ListRow row;
            row.title = words;
            row.spoken = words;
            row.selected = chosen;
            if (ui::list_row(ui, path + "-" + std::to_string(i), place, row).pressed) {
                desk.state.tool = static_cast<int>(i);
                ui.want_frame();
            }
        }
        if (!chosen)
            continue;
        const std::string tool_path = "crib." + path + "[" + std::to_string(i) + "]";
        Form form(desk, {rest.x + 16, rest.y + 4, rest.w - 16, rest.h}, "shop", 150);
        if (const auto changed = fields(form, tool_path, tools[i]))
            all()[i] = *changed;
        if constexpr (requires { tools[i].strokes_since_grind; }) {
            if (tools[i].strokes_since_grind.value_or(0) > 0)
                ground_key(desk,
                           form,
                           tool_path,
                           tool_words(tools[i], desk.style()),
                           edge_of(&tools[i]),
                           i);
        }
        if (form.key("Remove",
                     tool_path + ".remove",
                     "Remove " + tool_words(tools[i], desk.style()),
                     true))
            all().erase(all().begin() + static_cast<int>(i));
        rest.y = form.bottom();
        field = form.field();
        typed = form.typed();
    }
    rest.y += desk.ui.size().gap;
    Form foot(desk, {rest.x, rest.y, rest.w, rest.h}, "shop/" + path);
    if (tools.empty())
        foot.words("The shop has none of these yet. Add the first one; its sizes are then typed "
                   "over.");
    if (foot.key("Add one", "add", "Add one more to this list")) {
        all().push_back(tools.empty() ? first_of(static_cast<const Tool*>(nullptr)) : tools.back());
        desk.state.tool = static_cast<int>(tools.size());
    }
    draft.send(field, typed);
    return foot.bottom();
}

} // namespace

float crib_form(Desk& desk, const ui::Rect& rect, CribPage page) {
    switch (page) {
    case CribPage::punches:
        return tool_list(desk, rect, &Crib::punches, "punches");
    case CribPage::dies:
        return tool_list(desk, rect, &Crib::dies, "dies");
    case CribPage::vees:
        return tool_list(desk, rect, &Crib::vees, "vees");
    case CribPage::brake_punches:
        return tool_list(desk, rect, &Crib::brake_punches, "brake_punches");
    case CribPage::saddle_dies:
        return tool_list(desk, rect, &Crib::saddle_dies, "saddle_dies");
    }
    return rect.y;
}

} // namespace treadle::views
