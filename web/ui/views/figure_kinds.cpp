#include "ui/views/figure_kinds.h"

#include "quantity/parse.h"
#include "quantity/reading.h"

#include <utility>

namespace treadle::views {

namespace {

ui::Echo said(quantity::Reading reading) {
    ui::Echo echo;
    echo.words = std::move(reading.words);
    echo.trouble = std::move(reading.trouble);
    echo.allowed = std::move(reading.allowed);
    for (quantity::Meaning& meaning : reading.choices)
        echo.choices.push_back({std::move(meaning.typed), std::move(meaning.words)});
    return echo;
}

/// `parse` reads a text; with its units, the one of the shop first.
template <class Parse>
ui::FigureKind kind_of(UnitSystem system, Parse parse, std::string_view inch, std::string_view mm) {
    ui::FigureKind kind;
    kind.echo = [system, parse](std::string_view typed) {
        return said(quantity::reading_of(parse(typed, system), system));
    };
    kind.units = {inch, mm};
    if (system == UnitSystem::metric)
        std::swap(kind.units[0], kind.units[1]);
    return kind;
}

} // namespace

ui::FigureKind figure_kind(const Length*, UnitSystem system) {
    ui::FigureKind kind;
    kind.echo = [system](std::string_view typed) {
        return said(quantity::reading_of_length(typed, system));
    };
    kind.step = [system](std::string_view typed, int steps) {
        return quantity::step_length(typed, system, steps);
    };
    const bool inch = system == UnitSystem::inch;
    kind.step_words = inch ? "1/16" : "0.5";
    kind.units = {inch ? "in" : "mm", inch ? "mm" : "in"};
    kind.feet = true;
    return kind;
}

ui::FigureKind figure_kind(const Force*, UnitSystem system) {
    const auto parse = [](std::string_view typed, UnitSystem bare) {
        return quantity::parse_force(typed, bare, "");
    };
    return kind_of(system, parse, "ton", "kN");
}

ui::FigureKind figure_kind(const Stress*, UnitSystem system) {
    const auto parse = [](std::string_view typed, UnitSystem bare) {
        return quantity::parse_stress(typed, bare, "");
    };
    return kind_of(system, parse, "ksi", "MPa");
}

ui::FigureKind figure_kind(const Mass*, UnitSystem system) {
    const auto parse = [](std::string_view typed, UnitSystem bare) {
        return quantity::parse_mass(typed, bare, "");
    };
    return kind_of(system, parse, "lb", "kg");
}

ui::FigureKind figure_kind(const Density*, UnitSystem system) {
    const auto parse = [](std::string_view typed, UnitSystem) {
        return quantity::parse_density(typed, "");
    };
    return kind_of(system, parse, "lb/in3", "kg/m3");
}

ui::FigureKind figure_kind(const Angle*, UnitSystem system) {
    const auto parse = [](std::string_view typed, UnitSystem) {
        return quantity::parse_angle(typed, "");
    };
    ui::FigureKind kind = kind_of(system, parse, "deg", "");
    kind.units = {"deg", ""};
    return kind;
}

ui::FigureKind figure_kind(const double*, UnitSystem system) {
    const auto parse = [](std::string_view typed, UnitSystem) {
        return quantity::parse_ratio(typed, "");
    };
    return kind_of(system, parse, "", "");
}

ui::FigureKind figure_kind(const int*, UnitSystem system) {
    const auto parse = [](std::string_view typed, UnitSystem) {
        return quantity::parse_whole(typed, "");
    };
    return kind_of(system, parse, "", "");
}

} // namespace treadle::views
