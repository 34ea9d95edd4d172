// Tables built by hand, and one good input for each calculation.

#pragma once

#include "calc/calculation.h"

#include <cmath>
#include <string>

namespace treadle::test {

struct TestTables {
    material::GradeTable grades;
    section::SectionTable sections;
    [[nodiscard]] calc::Tables view() const { return {grades, sections}; }
};

inline Grade steel(const char* id, const char* group, Stress minimum, Stress upper, Length up_to) {
    Grade grade;
    grade.id = id;
    grade.name = id;
    grade.bands.push_back({up_to, minimum, minimum, upper});
    grade.shear_ratio = 0.8;
    grade.density = quantity::kilograms_per_cubic_metre(7850.0);
    grade.modulus = megapascals(200'000.0);
    grade.bend_group = group;
    grade.air_bend_share = 0.16;
    return grade;
}

inline TestTables tables() {
    TestTables out;
    out.grades.rows.push_back(steel("A36", "A6-B", ksi(58.0), ksi(80.0), inches(8.0)));
    out.grades.rows.push_back(steel("thin-only", "", ksi(58.0), ksi(80.0), inches(0.5)));
    out.grades.rows.back().air_bend_share = 0.0;
    out.grades.rows.push_back(steel("wear-plate", "", ksi(180.0), ksi(200.0), inches(8.0)));
    out.grades.rows.back().refusal = {true, true, "Too hard for this."};
    section::CatalogSection angle;
    angle.section.shape = section::Shape::angle;
    angle.section.width = inches(3.0);
    angle.section.height = inches(3.0);
    angle.section.thickness = inches(0.25);
    angle.section.designation = "L3x3x1/4";
    out.sections.rows.push_back(angle);
    return out;
}

inline base::Result<calc::Answer> ask(const char* name, const calc::Input::Object& in) {
    const TestTables made = tables();
    return calc::run(name, calc::Input(in), made.view());
}

/// "" when there was an answer.
inline std::string field_of(const base::Result<calc::Answer>& answer) {
    return answer.ok() ? "" : answer.refusal().field;
}

/// In kN, mm, mm2, J, kg, kg/m, V, A, kVA, kW, ohm or ohm/km; not a number when it is not there.
inline double figure(const base::Result<calc::Answer>& answer, const char* name) {
    struct {
        double operator()(Force q) const { return quantity::to_kilonewtons(q); }
        double operator()(Energy q) const { return quantity::to_joules(q); }
        double operator()(quantity::Number q) const { return q.value; }
        double operator()(quantity::Share q) const { return q.value; }
        double operator()(Angle q) const { return quantity::to_degrees(q); }
        double operator()(MassPerLength q) const { return quantity::to_kilograms_per_metre(q); }
        double operator()(Voltage q) const { return q.in_base(); }
        double operator()(Current q) const { return q.in_base(); }
        double operator()(ApparentPower q) const { return quantity::to_kilovolt_amperes(q); }
        double operator()(Power q) const { return quantity::to_kilowatts(q); }
        double operator()(Resistance q) const { return q.in_base(); }
        double operator()(ResistancePerLength q) const {
            return quantity::to_ohms_per_kilometre(q);
        }
        double operator()(Length q) const { return q.in_base(); }
        double operator()(Area q) const { return q.in_base(); }
        double operator()(Stress q) const { return q.in_base(); }
        double operator()(Mass q) const { return q.in_base(); }
    } in_unit;
    if (answer.ok())
        for (const calc::Figure& f : answer->figures)
            if (f.name == name)
                return std::visit(in_unit, f.value);
    return NAN;
}

inline calc::Input::Object good_input(const std::string& name) {
    using calc::Input;
    const char* s = "50 ksi";
    if (name == "punch.force")
        return {{"shape", "rectangle"},
                {"size", "1 in"},
                {"size2", "2 in"},
                {"thickness", "1/4 in"},
                {"shear_strength", s},
                {"penetration", "0.4"}};
    if (name == "punch.smallest")
        return {{"thickness", "1/4 in"}, {"shear_strength", s}, {"punch_strength", "180 ksi"}};
    if (name == "punch.largest")
        return {{"thickness", "1/4 in"}, {"material", "A36"}, {"capacity", "50 ton"}};
    if (name == "punch.die")
        return {{"size", "13/16 in"}, {"thickness", "3/8 in"}, {"material", "A36"}};
    if (name == "shear.flat")
        return {{"width", "4 in"},
                {"thickness", "1/2 in"},
                {"shear_strength", s},
                {"rake", "3"},
                {"penetration", "0.38"}};
    if (name == "shear.bar")
        return {{"shape", "square"}, {"size", "1 in"}, {"shear_strength", "60 ksi"}};
    if (name == "shear.angle")
        return {{"leg_a", "3 in"}, {"leg_b", "2 in"}, {"thickness", "1/4 in"}, {"material", "A36"}};
    if (name == "notch.force")
        return {{"shape", "vee"},
                {"depth", "1 in"},
                {"angle", "90"},
                {"thickness", "1/4 in"},
                {"shear_strength", s}};
    if (name == "bend.force")
        return {{"thickness", "1/4 in"},
                {"length", "12 in"},
                {"opening", "2 in"},
                {"tensile_strength", "60 ksi"},
                {"method", "textbook"},
                {"k", "1.33"}};
    if (name == "bend.opening")
        return {{"thickness", "1/4 in"}, {"material", "A36"}};
    if (name == "bend.radius")
        return {
            {"thickness", "1/4 in"}, {"opening", "2 in"}, {"material", "A36"}, {"nose", "1/8 in"}};
    if (name == "bend.least_leg")
        return {
            {"opening", "2 in"}, {"thickness", "1/4 in"}, {"radius", "0.32 in"}, {"angle", "90"}};
    if (name == "bend.least_radius")
        return {{"thickness", "1/2 in"}, {"material", "A36"}, {"grain", "along"}, {"angle", "90"}};
    if (name == "bend.blank")
        return {{"thickness", "4 mm"},
                {"legs", Input::List{"50 mm", "100 mm", "50 mm"}},
                {"bends",
                 Input::List{Input::Object{{"angle", "90"}, {"radius", "6 mm"}},
                             Input::Object{{"angle", "90"}, {"radius", "6 mm"}}}}};
    if (name == "section.weight")
        return {{"section", "l3x3x1/4"}, {"length", "20 ft"}, {"material", "A36"}};
    return {{"thickness", "6 mm"}, {"radius", "6 mm"}, {"angle", "45"}, {"k", "0.42"}};
}

} // namespace treadle::test
