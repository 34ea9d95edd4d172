#include "ui/views/layouts_form.h"

#include "base/text.h"
#include "quantity/parse.h"

#include "ui/views/form.h"

#include <algorithm>

namespace treadle::views {

namespace {

using edit::FieldKind;

const std::string& value_of(const LayoutBoard& board, const std::string& name) {
    static const std::string none;
    for (const job::LayoutValue& value : board.values)
        if (value.name == name)
            return value.text;
    return none;
}

void set_value(Desk& desk, const std::string& name, std::string text) {
    LayoutBoard& board = desk.state.layouts;
    ++board.version;
    desk.ui.want_frame();
    for (job::LayoutValue& value : board.values)
        if (value.name == name) {
            value.text = std::move(text);
            return;
        }
    board.values.push_back({name, std::move(text)});
}

/// What was read from a text of the board; nothing where it is empty or cannot be read.
template <class Value>
std::optional<Value> known(const base::Result<Value>& read) {
    return read.ok() ? std::optional<Value>(*read) : std::nullopt;
}

void choice_field(Desk& desk, Form& form, const edit::LayoutField& field) {
    const auto& choices = field.choices;
    const std::string& now = value_of(desk.state.layouts, field.name);
    const auto at = std::find(choices.begin(), choices.end(), now);
    const int selected = at == choices.end() ? 0 : static_cast<int>(at - choices.begin());
    if (const auto chosen =
            form.choice(base::capital(field.title), field.name, field.choice_words, selected))
        set_value(desk, field.name, field.choices[static_cast<std::size_t>(*chosen)]);
}

void grade_field(Desk& desk, Form& form, const edit::LayoutField& field) {
    LimitsReadings& limits = desk.readings.limits;
    const auto& grades = limits.grades(desk.session);
    const std::string& now = value_of(desk.state.layouts, field.name);
    const int selected = now.empty() ? plan::k_none : limits.grade_index(desk.session, now);
    if (const auto chosen = form.choice(base::capital(field.title), field.name, grades, selected))
        set_value(desk, field.name, limits.grade_id(*chosen));
}

void length_field(Desk& desk, Form& form, const edit::LayoutField& field) {
    const std::string label = base::capital(field.title);
    const auto value = known(
        quantity::parse_length(value_of(desk.state.layouts, field.name), desk.style().system, ""));
    if (const auto typed = form.maybe(label, field.name, value, field.meaning))
        set_value(
            desk, field.name, *typed ? quantity::write_exact(**typed, desk.style().system) : "");
}

void one_field(Desk& desk, Form& form, const edit::LayoutField& field) {
    const std::string label = base::capital(field.title);
    const std::string& now = value_of(desk.state.layouts, field.name);
    switch (field.kind) {
    case FieldKind::length:
        return length_field(desk, form, field);
    case FieldKind::choice:
        return choice_field(desk, form, field);
    case FieldKind::grade:
        return grade_field(desk, form, field);
    case FieldKind::angle:
        if (const auto typed =
                form.maybe(label, field.name, known(quantity::parse_angle(now, "")), field.meaning))
            set_value(desk, field.name, *typed ? quantity::write_exact(**typed) : "");
        return;
    case FieldKind::count:
        if (const auto typed =
                form.maybe(label, field.name, known(quantity::parse_whole(now, "")), field.meaning))
            set_value(desk, field.name, *typed ? std::to_string(**typed) : "");
        return;
    case FieldKind::ratio:
    case FieldKind::bolt:
    case FieldKind::section:
        if (const auto typed = form.text(label, field.name, now, field.meaning))
            set_value(desk, field.name, *typed);
        return;
    }
}

void choose_kind(Desk& desk, const std::string& kind) {
    LayoutBoard& board = desk.state.layouts;
    board.kind = kind;
    board.values = edit::layout_example(kind, desk.style().system);
    ++board.version;
    desk.ui.want_frame();
}

std::string fresh_mark(const job::Job& job) {
    std::size_t number = job.layouts.size() + 1;
    const auto taken = [&](const std::string& mark) {
        return std::any_of(job.layouts.begin(), job.layouts.end(), [&](const job::Layout& layout) {
            return layout.mark == mark;
        });
    };
    while (taken("L" + std::to_string(number)))
        ++number;
    return "L" + std::to_string(number);
}

} // namespace

void open_new_layout(Desk& desk) {
    LayoutBoard& board = desk.state.layouts;
    board.open = true;
    board.id.clear();
    board.mark = fresh_mark(desk.session.job());
    choose_kind(desk, desk.readings.layouts.kinds().front().id);
}

void open_layout(Desk& desk, const std::string& id) {
    const job::Layout* layout = job::find_layout(desk.session.job().layouts, id);
    if (layout == nullptr)
        return;
    LayoutBoard& board = desk.state.layouts;
    board.open = true;
    board.id = layout->id;
    board.kind = layout->kind;
    board.mark = layout->mark;
    board.values = layout->values;
    ++board.version;
    desk.ui.want_frame();
}

float layouts_form(Desk& desk, const ui::Rect& rect) {
    LayoutBoard& board = desk.state.layouts;
    LayoutsReadings& readings = desk.readings.layouts;
    Form form(desk, rect, "layout", 168);
    if (board.id.empty()) {
        int selected = 0;
        for (std::size_t i = 0; i < readings.kinds().size(); ++i)
            if (readings.kinds()[i].id == board.kind)
                selected = static_cast<int>(i);
        if (const auto chosen = form.choice("What to make", "kind", readings.titles(), selected))
            choose_kind(desk, readings.kinds()[static_cast<std::size_t>(*chosen)].id);
    }
    if (const auto typed = form.text("Marks begin with", "mark", board.mark)) {
        board.mark = *typed;
        ++board.version;
        desk.ui.want_frame();
    }
    // A copy: a field that is typed makes the reading anew.
    const std::vector<edit::LayoutField> fields =
        readings.of(desk.session, board, desk.readings.source_title).fields;
    form.new_line();
    for (const edit::LayoutField& field : fields)
        if (field.required)
            one_field(desk, form, field);
    form.new_line();
    if (form.toggle("More inputs", "more", board.more)) {
        board.more = !board.more;
        desk.ui.want_frame();
    }
    form.new_line();
    for (const edit::LayoutField& field : fields)
        if (!field.required && board.more)
            one_field(desk, form, field);
    return form.bottom();
}

} // namespace treadle::views
