#include "job/job.h"

#include <doctest/doctest.h>

#include <limits>
#include <string>

using namespace treadle;
using namespace treadle::job;

namespace {

Punch two_by_three() {
    Punch punch;
    punch.hole = {geometry::HoleShape::round, inches(0.5625), Length{}};
    punch.at = {inches(1.5), inches(1.0), 3, 2, inches(2.0), inches(4.0)};
    return punch;
}

Part flat_part() {
    Part part;
    part.id = "p1";
    part.mark = "A1";
    part.grade = "A36";
    part.section.shape = section::Shape::flat;
    part.section.width = inches(6.0);
    part.section.thickness = inches(0.375);
    part.length = inches(24.0);
    part.count = 4;
    part.operations = {Cut{}, two_by_three()};
    return part;
}

Part bent_part() {
    Part part = flat_part();
    part.length = Length{};
    part.legs = {inches(6.0), inches(10.0), inches(6.0)};
    part.operations = {Bend{degrees(90.0), inches(0.5), true},
                       Bend{degrees(45.0), Length{}, false}};
    return part;
}

Job job_of(std::vector<Part> parts) {
    Job job;
    job.name = "Frame";
    for (Part& part : parts)
        job.parts.push_back(std::make_shared<const Part>(std::move(part)));
    return job;
}

/// Field of the refusal that a changed sound part gets.
template <class Change>
std::string fault_after(Part part, Change change) {
    change(part);
    const auto result = checked(std::move(part));
    if (result.ok())
        return "none";
    CHECK_FALSE(result.refusal().reason.empty());
    return result.refusal().field;
}

Punch& punch_of(Part& part) { return std::get<Punch>(part.operations[1]); }

const double k_nan = std::numeric_limits<double>::quiet_NaN();
const double k_inf = std::numeric_limits<double>::infinity();

} // namespace

TEST_CASE("sound parts and jobs pass") {
    CHECK(checked(flat_part()).ok());
    CHECK(checked(bent_part()).ok());
    CHECK(checked(Job{}).ok());
    Part second = bent_part();
    second.id = "p2";
    CHECK(checked(job_of({flat_part(), second})).ok());
}

TEST_CASE("hole centres run row by row from the first") {
    const auto all = centres(two_by_three().at);
    REQUIRE(all.size() == 6);
    CHECK(hole_count(two_by_three().at) == 6);
    CHECK(all[0].x == inches(1.5));
    CHECK(all[0].y == inches(1.0));
    CHECK(all[1].x == inches(3.5));
    CHECK(all[1].y == inches(1.0));
    CHECK(all[3].x == inches(1.5));
    CHECK(all[3].y == inches(5.0));
    CHECK(all[5].x == inches(5.5));
    CHECK(all[5].y == inches(5.0));
    CHECK(centres(HolePattern{}).size() == 1);
}

TEST_CASE("a part's first fault is named by its field") {
    const auto fault = [](auto change) { return fault_after(flat_part(), change); };
    CHECK(fault([](Part& p) { p.mark = " "; }) == "mark");
    CHECK(fault([](Part& p) { p.mark = std::string(201, 'x'); }) == "mark");
    CHECK(fault([](Part& p) { p.note = "\x02"; }) == "note");
    CHECK(fault([](Part& p) { p.note = std::string(2000, 'x'); }) == "none");
    CHECK(fault([](Part& p) { p.note = std::string(2001, 'x'); }) == "note");
    CHECK(fault([](Part& p) { p.grade.clear(); }) == "grade");
    CHECK(fault([](Part& p) { p.section.width = Length{}; }) == "section.width");
    CHECK(fault([](Part& p) { p.count = 0; }) == "count");
    CHECK(fault([](Part& p) { p.count = 100000; }) == "none");
    CHECK(fault([](Part& p) { p.count = 100001; }) == "count");
    for (const double bad : {0.0, -1.0, k_nan, k_inf, 1e5}) {
        CAPTURE(bad);
        CHECK(fault([=](Part& p) { p.length = millimetres(bad); }) == "length");
    }
    CHECK(fault([](Part& p) { p.certified_tensile = ksi(-1.0); }) == "certified_tensile");
    CHECK(fault([](Part& p) { p.certified_tensile = ksi(k_nan); }) == "certified_tensile");
    // Two faults: the first in the order of the form
    CHECK(fault([](Part& p) {
              p.mark.clear();
              p.count = 0;
          }) == "mark");
}

TEST_CASE("holes are checked down to their size and pitch") {
    const auto fault = [](auto change) { return fault_after(flat_part(), change); };
    CHECK(fault([](Part& p) { punch_of(p).hole.size = Length{}; }) == "operations[1].hole.size");
    CHECK(fault([](Part& p) { punch_of(p).hole.size = quantity::metres(100.0); }) ==
          "operations[1].hole.size");
    CHECK(fault([](Part& p) { punch_of(p).hole.shape = geometry::HoleShape::obround; }) ==
          "operations[1].hole.size2");
    CHECK(fault([](Part& p) { punch_of(p).hole.shape = geometry::HoleShape::perimeter; }) ==
          "operations[1].hole.shape");
    CHECK(fault([](Part& p) { punch_of(p).at.x = inches(-1.0); }) == "operations[1].at.x");
    CHECK(fault([](Part& p) { punch_of(p).at.y = inches(k_nan); }) == "operations[1].at.y");
    CHECK(fault([](Part& p) { punch_of(p).at.columns = 0; }) == "operations[1].at.columns");
    CHECK(fault([](Part& p) { punch_of(p).at.rows = -1; }) == "operations[1].at.rows");
    CHECK(fault([](Part& p) { punch_of(p).at.column_pitch = Length{}; }) ==
          "operations[1].at.column_pitch");
    CHECK(fault([](Part& p) { punch_of(p).at.row_pitch = Length{}; }) ==
          "operations[1].at.row_pitch");
    CHECK(fault([](Part& p) {
              punch_of(p).at.rows = 1;
              punch_of(p).at.row_pitch = Length{};
          }) == "none");
    CHECK(fault([](Part& p) { punch_of(p).leg = 1; }) == "operations[1].leg");
}

TEST_CASE("holes and operations are limited, without overflow on the way") {
    const auto fault = [](auto change) { return fault_after(flat_part(), change); };
    CHECK(fault([](Part& p) { punch_of(p).at.columns = punch_of(p).at.rows = 100; }) == "none");
    CHECK(fault([](Part& p) {
              punch_of(p).at.columns = 100;
              punch_of(p).at.rows = 101;
          }) == "operations[1].at.rows");
    CHECK(fault([](Part& p) { punch_of(p).at.columns = 2147483647; }) ==
          "operations[1].at.columns");
    CHECK(fault([](Part& p) {
              punch_of(p).at.columns = punch_of(p).at.rows = 100;
              p.operations.push_back(two_by_three());
          }) == "operations[2]");
    CHECK(fault([](Part& p) { p.operations.assign(500, Cut{}); }) == "none");
    CHECK(fault([](Part& p) { p.operations.assign(501, Cut{}); }) == "operations");
}

TEST_CASE("cuts, notches and saddles are checked") {
    const auto fault = [](const Operation& operation) {
        return fault_after(flat_part(), [&](Part& p) { p.operations = {operation}; });
    };
    CHECK(fault(Cut{CutSide::length, degrees(90.0), Angle{}}) == "operations[0].start_mitre");
    CHECK(fault(Cut{CutSide::length, Angle{}, degrees(k_nan)}) == "operations[0].finish_mitre");
    CHECK(fault(Cut{CutSide::length, degrees(45.0), degrees(-45.0)}) == "none");
    Notch notch;
    notch.edge = NotchEdge::near_edge;
    notch.at = inches(3.0);
    notch.along = inches(2.0);
    notch.depth = inches(1.0);
    CHECK(fault(notch) == "none");
    Notch bad = notch;
    bad.at = inches(-1.0);
    CHECK(fault(bad) == "operations[0].at");
    bad.edge = NotchEdge::start_far; // a corner has no place along an edge
    CHECK(fault(bad) == "none");
    bad = notch;
    bad.along = Length{};
    CHECK(fault(bad) == "operations[0].along");
    bad = notch;
    bad.depth = inches(k_inf);
    CHECK(fault(bad) == "operations[0].depth");
    bad = notch;
    bad.shape = geometry::NotchShape::vee;
    CHECK(fault(bad) == "operations[0].included");
    bad.included = degrees(90.0);
    CHECK(fault(bad) == "none");
    bad.edge = NotchEdge::finish_near;
    CHECK(fault(bad) == "operations[0].edge");
    CHECK(fault(Saddle{}) == "operations[0].run_diameter");
}

TEST_CASE("a bent part has one leg more than bends") {
    const auto fault = [](auto change) { return fault_after(bent_part(), change); };
    CHECK(fault([](Part& p) { p.legs.pop_back(); }) == "legs");
    CHECK(fault([](Part& p) { p.legs.clear(); }) == "legs");
    CHECK(fault([](Part& p) { p.operations.clear(); }) == "legs");
    CHECK(fault([](Part& p) { p.legs[1] = Length{}; }) == "legs[1]");
    CHECK(fault([](Part& p) { std::get<Bend>(p.operations[1]).angle = degrees(180.0); }) ==
          "operations[1].angle");
    CHECK(fault([](Part& p) { std::get<Bend>(p.operations[0]).radius = inches(-1.0); }) ==
          "operations[0].radius");
    CHECK(fault([](Part& p) {
              p.operations.push_back(two_by_three());
              std::get<Punch>(p.operations[2]).leg = 2;
          }) == "none");
    CHECK(fault([](Part& p) {
              p.operations.push_back(two_by_three());
              std::get<Punch>(p.operations[2]).leg = 3;
          }) == "operations[2].leg");
}

TEST_CASE("a job's refusal carries the whole path") {
    Part second = flat_part();
    second.id = "p2";
    punch_of(second).hole.size = Length{};
    CHECK(checked(job_of({flat_part(), second})).refusal().field ==
          "parts[1].operations[1].hole.size");
    CHECK(checked(job_of({flat_part(), flat_part()})).refusal().field == "parts[1].id");
    Part nameless = flat_part();
    nameless.id.clear();
    CHECK(checked(job_of({nameless})).refusal().field == "parts[0].id");
    Job hollow;
    hollow.parts.push_back(nullptr);
    CHECK(checked(hollow).refusal().field == "parts[0]");
    Job job = job_of({});
    job.style.denominator = 0;
    CHECK(checked(job).refusal().field == "style.denominator");
    job = job_of({});
    job.due = "\x7F";
    CHECK(checked(job).refusal().field == "due");
    job = job_of({});
    job.own_grades.emplace_back();
    CHECK(checked(job).refusal().field.rfind("own_grades[0].", 0) == 0);
}

TEST_CASE("sizes that a shape does not use are cleared") {
    Part part = flat_part();
    part.section.height = inches(3.0);
    CHECK(checked(part).value().section.height == Length{});
}

TEST_CASE("operations are named as the shop says them") {
    CHECK(std::string(operation_word(Cut{})) == "shear to length");
    CHECK(std::string(operation_word(Cut{CutSide::width, {}, {}})) == "shear to width");
    CHECK(std::string(operation_word(Punch{})) == "punch");
    CHECK(std::string(operation_word(Notch{})) == "notch");
    CHECK(std::string(operation_word(Bend{})) == "bend");
    CHECK(std::string(operation_word(Saddle{})) == "saddle notch");
}

TEST_CASE("the job's own grade wins over the catalogue's") {
    Job job;
    Grade own;
    own.id = "A36";
    own.name = "own";
    job.own_grades.push_back(own);
    Catalog catalog;
    Grade listed;
    listed.id = "A36";
    listed.name = "listed";
    catalog.grades.rows.push_back(listed);
    CHECK(find_grade(job, catalog, "A36")->name == "own");
    CHECK(find_grade(Job{}, catalog, "A36")->name == "listed");
    CHECK(find_grade(job, catalog, "S235") == nullptr);
}
