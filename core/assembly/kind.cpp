#include "assembly/kind.h"

#include "base/text.h"
#include "quantity/input_limits.h"
#include "quantity/parse.h"

#include <algorithm>

#include "assembly/inputs.h"
#include "assembly/kinds.h"
#include "assembly/section_text.h"

namespace treadle::assembly {

namespace {

using base::Refusal;
using base::Result;

constexpr std::size_t k_most_roles = 60; // far above any kind's; under what a job may keep

const calc::InputSpec* spec_of(const Kind& kind, std::string_view name) {
    for (const calc::InputSpec& spec : kind.inputs)
        if (name == spec.name)
            return &spec;
    return nullptr;
}

std::string length_with_unit(const std::string& text, UnitSystem units) {
    if (quantity::parse_length(text, {}, "length").ok())
        return text;
    const auto bare = quantity::parse_length(text, units, "length");
    return bare.ok() ? text + (units == UnitSystem::inch ? " in" : " mm") : text;
}

} // namespace

const Kind* find_kind(std::string_view id) {
    for (const Kind* kind : kinds())
        if (id == kind->id)
            return kind;
    return nullptr;
}

Values with_units(const Kind& kind, const Values& values, UnitSystem units) {
    Values out;
    for (const job::LayoutValue& value : values) {
        std::string text(base::trim(value.text));
        if (text.empty())
            continue;
        const calc::InputSpec* spec = spec_of(kind, value.name);
        if (spec != nullptr && spec->kind == calc::InputKind::length)
            text = length_with_unit(text, units);
        if (spec != nullptr && spec->kind == calc::InputKind::section)
            text = section_with_units(text, units);
        out.push_back({value.name, std::move(text)});
    }
    return out;
}

Values example_values(const Kind& kind) {
    Values out;
    for (const calc::InputSpec& spec : kind.inputs) {
        if (!spec.required)
            continue;
        const std::string_view choices = spec.choices;
        out.push_back({spec.name,
                       choices.empty() ? std::string(spec.example)
                                       : std::string(choices.substr(0, choices.find('|')))});
    }
    return out;
}

Result<Made>
make(std::string_view name, const std::string& mark, const Values& values, const Ground& ground) {
    const Kind* kind = find_kind(name);
    if (kind == nullptr)
        return Refusal{"kind", "There is no layout of this name.", ""};
    if (auto fault = quantity::text_fault(
            mark, "mark", quantity::Presence::required, job::k_longest_layout_mark))
        return *fault;
    for (const job::LayoutValue& value : values)
        if (spec_of(*kind, value.name) == nullptr)
            return Refusal{
                value.name.empty() ? "in" : value.name, "This layout has no such input.", ""};
    Inputs in(*kind, values, ground);
    if (in.failed())
        return in.refusal();
    auto made = kind->make(in, mark);
    if (!made.ok())
        return made;
    TREADLE_EXPECT(made->parts.size() <= k_most_roles);
    for (const RolePart& part : made->parts)
        if (auto sound = job::checked(part.part); !sound.ok())
            return Refusal{sound.refusal().field,
                           "Part " + part.role + ": " + sound.refusal().reason,
                           sound.refusal().detail};
    return made;
}

Held worst(const std::vector<RuleLine>& rules) {
    Held held = Held::meets;
    for (const RuleLine& rule : rules)
        held = std::max(held, rule.held);
    return held;
}

const char* held_word(Held held) {
    constexpr const char* k_words[] = {"meets", "is at the limit of", "breaks"};
    return k_words[static_cast<int>(held)];
}

} // namespace treadle::assembly
