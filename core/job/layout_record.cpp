#include "job/layout_record.h"

#include "quantity/input_limits.h"

#include <algorithm>
#include <set>

namespace treadle::job {

namespace {

using quantity::Fault;
using quantity::inside;
using quantity::item;
using quantity::Presence;
using quantity::text_fault;

Fault too_many(const char* field, std::size_t count, std::size_t most) {
    if (count <= most)
        return std::nullopt;
    return base::Refusal{field, "There are too many of them.", "at most " + std::to_string(most)};
}

Fault value_faults(const std::vector<LayoutValue>& values) {
    if (auto fault = too_many("values", values.size(), k_most_layout_values))
        return fault;
    std::set<std::string_view> names;
    for (std::size_t i = 0; i < values.size(); ++i) {
        if (auto fault = text_fault(values[i].name, "name", Presence::required))
            return inside("values", i, *fault);
        if (auto fault = text_fault(values[i].text, "text"))
            return inside("values", i, *fault);
        if (!names.insert(values[i].name).second)
            return inside("values", i, {"name", "This input is given twice.", ""});
    }
    return std::nullopt;
}

Fault made_faults(const std::vector<MadePart>& made) {
    if (auto fault = too_many("made", made.size(), k_most_made_parts))
        return fault;
    std::set<std::string_view> roles;
    for (std::size_t i = 0; i < made.size(); ++i) {
        if (auto fault = text_fault(made[i].role, "role", Presence::required))
            return inside("made", i, *fault);
        if (auto fault = text_fault(made[i].part, "part"))
            return inside("made", i, *fault);
        if (!roles.insert(made[i].role).second)
            return inside("made", i, {"role", "Another part has the same role.", ""});
    }
    return std::nullopt;
}

Fault layout_fault(const Layout& layout) {
    if (auto fault = text_fault(layout.id, "id", Presence::required))
        return fault;
    if (auto fault = text_fault(layout.kind, "kind", Presence::required))
        return fault;
    if (auto fault = text_fault(layout.mark, "mark", Presence::required, k_longest_layout_mark))
        return fault;
    if (auto fault = value_faults(layout.values))
        return fault;
    return made_faults(layout.made);
}

} // namespace

base::Result<Layout> checked(Layout layout) {
    if (auto fault = layout_fault(layout))
        return *fault;
    return layout;
}

base::Result<std::vector<Layout>> checked(std::vector<Layout> layouts) {
    if (auto fault = too_many("layouts", layouts.size(), k_most_layouts))
        return *fault;
    std::set<std::string_view> ids;
    std::set<std::string_view> parts;
    for (std::size_t i = 0; i < layouts.size(); ++i) {
        if (auto fault = layout_fault(layouts[i]))
            return inside("layouts", i, *fault);
        if (!ids.insert(layouts[i].id).second)
            return inside("layouts", i, {"id", "Another layout has the same id.", ""});
        for (std::size_t k = 0; k < layouts[i].made.size(); ++k) {
            const std::string& part = layouts[i].made[k].part;
            if (!part.empty() && !parts.insert(part).second)
                return inside(
                    "layouts", i, {item("made", k) + ".part", "This part is made twice.", ""});
        }
    }
    return layouts;
}

bool same(const Layout& a, const Layout& b) {
    const auto same_value = [](const LayoutValue& x, const LayoutValue& y) {
        return x.name == y.name && x.text == y.text;
    };
    const auto same_made = [](const MadePart& x, const MadePart& y) {
        return x.role == y.role && x.part == y.part && x.detached == y.detached;
    };
    return a.id == b.id && a.kind == b.kind && a.mark == b.mark &&
           std::equal(
               a.values.begin(), a.values.end(), b.values.begin(), b.values.end(), same_value) &&
           std::equal(a.made.begin(), a.made.end(), b.made.begin(), b.made.end(), same_made);
}

const Layout* find_layout(const std::vector<Layout>& layouts, std::string_view id) {
    for (const Layout& layout : layouts)
        if (layout.id == id)
            return &layout;
    return nullptr;
}

Origin origin_of(const std::vector<Layout>& layouts, std::string_view part_id) {
    for (const Layout& layout : layouts)
        for (const MadePart& made : layout.made)
            if (!part_id.empty() && made.part == part_id)
                return {&layout, &made};
    return {};
}

} // namespace treadle::job
