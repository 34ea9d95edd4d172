// A small shop and parts for the plan's tests. Invented; every number is round on purpose.

#pragma once

#include "plan/plan.h"

#include <doctest/doctest.h>

namespace treadle::test {

/// ASTM A36: 58 to 80 ksi tensile, shear 0.80 of it.
inline Grade a36() {
    Grade grade;
    grade.id = grade.name = "A36";
    grade.family = material::Family::carbon_steel;
    grade.bands = {{inches(4.0), ksi(36.0), ksi(58.0), ksi(80.0)}};
    grade.shear_ratio = 0.80;
    grade.density = quantity::kilograms_per_cubic_metre(7850.0);
    grade.modulus = megapascals(200000.0);
    grade.bend_group = "A6-B";
    grade.air_bend_share = 0.16;
    return grade;
}

inline equipment::Station punch_station() {
    equipment::Station station;
    station.id = "punch";
    station.name = "Punch station";
    station.kind = equipment::StationKind::punch;
    station.force = us_tons(50.0);
    station.throat = inches(8.0);
    station.stroke = inches(1.5);
    station.daylight = inches(5.0);
    station.flange_clearance = inches(0.75);
    station.holders = {{"small holder", inches(1.0), true}, {"large holder", inches(2.5), false}};
    return station;
}

inline equipment::Station flat_shear() {
    equipment::Station station;
    station.id = "flat";
    station.name = "Flat shear";
    station.kind = equipment::StationKind::flat_shear;
    station.base = material::RatingBase{ksi(65.0)};
    station.rated = {{inches(0.5), inches(8.0), {}, {}}, {inches(0.375), inches(12.0), {}, {}}};
    station.blade = inches(14.0);
    station.least_piece = inches(2.0);
    station.largest_mitre = degrees(30.0);
    return station;
}

inline equipment::Station bar_and_angle(equipment::StationKind kind) {
    equipment::Station station;
    station.id = kind == equipment::StationKind::bar_shear ? "bar" : "angle";
    station.name = kind == equipment::StationKind::bar_shear ? "Bar shear" : "Angle shear";
    station.kind = kind;
    station.base = material::RatingBase{ksi(80.0)};
    station.rated = {{inches(0.375), inches(4.0), inches(1.25), inches(1.0)}};
    station.least_piece = inches(2.0);
    station.largest_mitre = degrees(0.0);
    return station;
}

inline equipment::Station table() {
    equipment::Station station;
    station.id = "table";
    station.name = "Table";
    station.kind = equipment::StationKind::table;
    station.force = us_tons(40.0);
    station.stroke = inches(3.0);
    return station;
}

inline equipment::Attachment attachment(equipment::AttachmentKind kind) {
    equipment::Attachment tool;
    tool.kind = kind;
    tool.id = tool.name = equipment::attachment_word(kind);
    tool.stations = {"table"};
    tool.force = us_tons(40.0);
    tool.length = kind == equipment::AttachmentKind::brake ? inches(10.0) : inches(2.0);
    tool.depth = inches(3.0);
    tool.largest_thickness = inches(0.5);
    tool.vee_included = degrees(90.0);
    tool.base = material::RatingBase{ksi(80.0)};
    return tool;
}

inline geometry::HoleOutline round_hole(Length size) {
    return {geometry::HoleShape::round, size, Length{}};
}

inline equipment::Shop shop() {
    equipment::Shop s;
    s.name = "Test shop";
    s.machine.name = "Test machine";
    s.machine.stations = {punch_station(),
                          flat_shear(),
                          bar_and_angle(equipment::StationKind::bar_shear),
                          bar_and_angle(equipment::StationKind::angle_shear),
                          table()};
    s.machine.attachments = {attachment(equipment::AttachmentKind::brake),
                             attachment(equipment::AttachmentKind::vee_notcher),
                             attachment(equipment::AttachmentKind::rectangular_notcher),
                             attachment(equipment::AttachmentKind::saddle_notcher)};
    s.crib.punches = {{round_hole(inches(0.8125)), 1}, {round_hole(inches(1.0625)), 1}};
    s.crib.dies = {{round_hole(inches(0.84375)), 1}, {round_hole(inches(0.875)), 1}};
    s.crib.vees = {{inches(1.0), inches(10.0), 1},
                   {inches(2.0), inches(10.0), 1},
                   {inches(3.0), inches(10.0), 1}};
    s.crib.brake_punches = {{inches(0.125), inches(10.0), 1}};
    s.crib.saddle_dies = {{inches(1.9), inches(1.66), inches(0.25)}};
    return s;
}

inline job::Part plate(Length thickness, Length width, Length length) {
    job::Part part;
    part.id = part.mark = "P1";
    part.grade = "A36";
    part.section.shape = section::Shape::plate;
    part.section.thickness = thickness;
    part.section.width = width;
    part.length = length;
    part.grain = material::Grain::across;
    return part;
}

inline job::Punch one_hole(Length size, Length x, Length y) {
    job::Punch punch;
    punch.hole = round_hole(size);
    punch.at.x = x;
    punch.at.y = y;
    return punch;
}

struct Bench {
    job::Job job;
    equipment::Shop shop = test::shop();
    job::Catalog catalog;

    Bench() { catalog.grades.rows = {a36()}; }

    [[nodiscard]] plan::PartPlan plan(const job::Part& part) const {
        return plan::plan_part(std::make_shared<const job::Part>(part), job, shop, catalog);
    }
    /// Plan of a part with one operation.
    [[nodiscard]] plan::OperationPlan plan(job::Part part, job::Operation operation) const {
        part.operations = {std::move(operation)};
        return plan(part).operations.at(0);
    }
};

inline const plan::Check* find(const plan::OperationPlan& plan, plan::Rule rule) {
    for (const plan::Check& check : plan.checks)
        if (check.rule == rule)
            return &check;
    return nullptr;
}

inline plan::Outcome outcome_of(const plan::OperationPlan& plan, plan::Rule rule) {
    const plan::Check* check = find(plan, rule);
    REQUIRE(check != nullptr);
    return check->outcome;
}

inline bool warns(const plan::OperationPlan& plan, plan::Rule rule) {
    for (const plan::Check& check : plan.checks)
        if (check.rule == rule && check.warning)
            return true;
    return false;
}

} // namespace treadle::test
