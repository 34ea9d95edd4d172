// What the tests of layouts stand on: the catalogue, the demo shops, and values by name.

#pragma once

#include "archive/archive.h"

#include "assets/embedded.h"

#include <doctest/doctest.h>

#include <string>
#include <vector>

#include "assembly/kind.h"

namespace treadle::test {

inline const job::Catalog& catalog() {
    static const job::Catalog whole = archive::read_catalog().value();
    return whole;
}

inline const std::vector<Grade>& no_grades() {
    static const std::vector<Grade> none;
    return none;
}

inline assembly::Ground ground(UnitSystem units = UnitSystem::inch) {
    return {catalog(), no_grades(), units};
}

inline archive::File demo(UnitSystem units) {
    const auto bytes = assets::embedded(units == UnitSystem::inch ? "demo/demo-inch.json"
                                                                  : "demo/demo-metric.json");
    return archive::read_file(*bytes).value();
}

inline void set(assembly::Values& values, const std::string& name, const std::string& text) {
    for (job::LayoutValue& value : values)
        if (value.name == name) {
            value.text = text;
            return;
        }
    values.push_back({name, text});
}

inline assembly::Made
made(const std::string& kind, const assembly::Values& values, UnitSystem units = UnitSystem::inch) {
    auto result = assembly::make(kind, "L1", values, ground(units));
    if (!result.ok())
        FAIL(kind << ": " << result.refusal().field << ": " << result.refusal().reason << " "
                  << result.refusal().detail);
    return std::move(result).value();
}

inline base::Refusal refused(const std::string& kind, const assembly::Values& values) {
    const auto result = assembly::make(kind, "L1", values, ground());
    REQUIRE_FALSE(result.ok());
    return result.refusal();
}

inline const job::Part& part(const assembly::Made& made, const std::string& role) {
    for (const assembly::RolePart& part : made.parts)
        if (part.role == role)
            return part.part;
    FAIL("no part with the role " << role);
    return made.parts.front().part;
}

inline const assembly::RuleLine& rule(const assembly::Made& made, const std::string& name) {
    for (const assembly::RuleLine& line : made.rules)
        if (line.rule == name)
            return line;
    FAIL("no line of the rule " << name);
    return made.rules.front();
}

/// The worse of a rule's two bounds.
inline assembly::Held worst_of(const assembly::Made& made, const std::string& name) {
    std::vector<assembly::RuleLine> lines;
    for (const assembly::RuleLine& line : made.rules)
        if (line.rule == name)
            lines.push_back(line);
    REQUIRE_FALSE(lines.empty());
    return assembly::worst(lines);
}

inline Length figure(const assembly::Made& made, const std::string& words) {
    for (const assembly::Figure& figure : made.figures)
        if (figure.words == words)
            return std::get<Length>(figure.value);
    FAIL("no figure " << words);
    return {};
}

/// The length that the working of this card ends in.
inline Length worked(const assembly::Made& made, const std::string& card) {
    for (const Working& working : made.workings)
        if (working.card->id == card && std::holds_alternative<Length>(working.result.value))
            return std::get<Length>(working.result.value);
    FAIL("no working of " << card);
    return {};
}

} // namespace treadle::test
