// A job with every section and every operation, for the sheet's tests. Invented.

#pragma once

#include "archive/archive.h"
#include "plan/fixture.h"
#include "plan/plan.h"

#include "assets/embedded.h"

#include <memory>
#include <string>

namespace treadle::sheet_test {

inline job::Part part(const char* mark, section::Shape shape) {
    job::Part made;
    made.id = made.mark = mark;
    made.grade = "A36";
    made.section.shape = shape;
    made.section.thickness = inches(0.25);
    made.section.width = inches(3.0);
    made.length = inches(20.0);
    made.count = 4;
    return made;
}

inline job::Punch holes(double x_in, double y_in, int columns, int rows, double pitch_in) {
    job::Punch punch = test::one_hole(inches(0.8125), inches(x_in), inches(y_in));
    punch.at.columns = columns;
    punch.at.rows = rows;
    punch.at.column_pitch = punch.at.row_pitch = inches(pitch_in);
    return punch;
}

inline job::Part base_plate() {
    job::Part made = part("BP1", section::Shape::plate);
    made.section.width = inches(8.0);
    made.length = inches(10.0);
    job::Punch slot = test::one_hole(inches(0.5), inches(5.0), inches(4.0));
    slot.hole = {geometry::HoleShape::obround, inches(0.5), inches(0.875)}; // keyed holder: to 1
    slot.turned = true;
    job::Notch corner;
    corner.edge = job::NotchEdge::finish_far;
    corner.along = inches(1.0);
    corner.depth = inches(0.75);
    job::Notch vee;
    vee.shape = geometry::NotchShape::vee;
    vee.edge = job::NotchEdge::near_edge;
    vee.at = inches(5.0);
    vee.depth = inches(0.5);
    vee.included = degrees(90.0);
    made.operations = {job::Cut{}, holes(1.5, 1.5, 2, 2, 5.0), slot, corner, vee};
    return made;
}

inline job::Part hanger() {
    job::Part made = part("HG1", section::Shape::flat);
    made.legs = {inches(2.5), inches(3.0), inches(2.5)};
    made.section.thickness = inches(0.125);
    made.grain = material::Grain::across;
    made.length = Length{};
    job::Punch punch = holes(0.75, 1.5, 1, 1, 1.0);
    job::Bend down;
    down.angle = degrees(90.0);
    down.up = false;
    job::Bend up = down;
    up.up = true;
    made.operations = {job::Cut{}, punch, up, down};
    return made;
}

inline job::Part clip() {
    job::Part made = part("CL1", section::Shape::angle);
    made.section.height = inches(2.0);
    made.length = inches(6.0);
    job::Punch on_a = holes(1.5, 1.75, 2, 1, 3.0);
    on_a.face = section::Face::leg_a;
    job::Punch on_b = holes(3.0, 1.25, 1, 1, 1.0);
    on_b.face = section::Face::leg_b;
    made.operations = {job::Cut{}, on_a, on_b};
    return made;
}

inline job::Part rail() {
    job::Part made = part("RL1", section::Shape::pipe);
    made.section.width = inches(1.66);
    made.section.thickness = inches(0.14);
    job::Saddle saddle;
    saddle.run_diameter = inches(1.9);
    made.operations = {saddle};
    return made;
}

inline job::Part channel() {
    job::Part made = part("GR1", section::Shape::channel);
    made.section.height = inches(4.0);
    made.section.width = inches(1.58);
    made.section.flange_thickness = inches(0.296);
    job::Punch punch = holes(2.0, 2.0, 8, 1, 2.0);
    punch.face = section::Face::web;
    made.operations = {punch};
    return made;
}

inline job::Part mitred_square() {
    job::Part made = part("PK1", section::Shape::square);
    made.section.width = inches(0.625);
    made.section.thickness = Length{};
    made.length = inches(34.5);
    job::Cut cut;
    cut.finish_mitre = degrees(30.0);
    made.operations = {cut};
    return made;
}

struct Sample {
    job::Job job;
    equipment::Shop shop = test::shop();
    job::Catalog catalog;
    plan::Plan plan;

    Sample() {
        job.name = "Test job";
        job.invented = true;
        catalog.grades.rows = {test::a36()};
        catalog.cautions =
            archive::read_cautions(assets::embedded("cautions.json").value_or("")).value();
        for (const job::Part& made :
             {base_plate(), hanger(), clip(), rail(), channel(), mitred_square()}) {
            auto sound = job::checked(made);
            REQUIRE_MESSAGE(sound.ok(), made.mark);
            job.parts.push_back(std::make_shared<const job::Part>(std::move(sound).value()));
        }
        make();
    }
    void make() { plan = plan::make_plan(job, shop, catalog); }

    /// Puts a changed part in the place of one.
    template <class Change>
    void change(std::size_t index, Change how) {
        job::Part changed = *job.parts[index];
        how(changed);
        job.parts[index] = std::make_shared<const job::Part>(std::move(changed));
        make();
    }
};

inline int count_of(const std::string& text, const std::string& what) {
    int count = 0;
    for (std::size_t at = text.find(what); at != std::string::npos; at = text.find(what, at + 1))
        ++count;
    return count;
}

/// Empty when every tag is closed in order and every attribute is quoted; else what is wrong.
inline std::string fault_in_markup(const std::string& text) {
    std::vector<std::string> open;
    std::size_t at = 0;
    while ((at = text.find('<', at)) != std::string::npos) {
        const std::size_t end = text.find('>', at);
        if (end == std::string::npos)
            return "a tag does not end";
        std::string tag = text.substr(at + 1, end - at - 1);
        at = end + 1;
        if (tag.find('<') != std::string::npos)
            return "a bare < in " + tag;
        if (tag.front() == '!')
            continue;
        const bool closing = tag.front() == '/';
        const bool alone = tag.back() == '/';
        if (count_of(tag, "\"") % 2 != 0)
            return "an attribute is not closed in " + tag;
        const std::size_t first = closing ? 1 : 0;
        const std::string name = tag.substr(first, tag.find_first_of(" /", first) - first);
        if (alone || name == "meta" || name == "link")
            continue;
        if (!closing) {
            open.push_back(name);
            continue;
        }
        if (open.empty() || open.back() != name)
            return "closes " + name + " while " + (open.empty() ? "nothing" : open.back()) +
                   " is open";
        open.pop_back();
    }
    return open.empty() ? "" : open.back() + " stays open";
}

} // namespace treadle::sheet_test
