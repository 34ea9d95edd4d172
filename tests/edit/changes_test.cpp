#include "edit/changes.h"
#include "sheet/sample.h"

using namespace treadle;
using edit::change_words;

namespace {

template <class Change>
std::string after(const job::Part& before, Change how) {
    job::Part changed = before;
    how(changed);
    return change_words(before, changed);
}

} // namespace

TEST_CASE("a change is named by what it changes") {
    const job::Part plate = sheet_test::base_plate();
    using job::Part;
    CHECK(after(plate, [](Part&) {}) == "");
    CHECK(after(plate, [](Part& p) { p.section.thickness = inches(0.5); }) == "thickness of BP1");
    CHECK(after(plate, [](Part& p) { p.section.width = inches(9.0); }) == "width of BP1");
    CHECK(after(plate, [](Part& p) { p.length = inches(9.0); }) == "length of BP1");
    CHECK(after(plate, [](Part& p) { p.count = 9; }) == "count of BP1");
    CHECK(after(plate, [](Part& p) { p.grade = "A572-50"; }) == "grade of BP1");
    CHECK(after(plate, [](Part& p) { p.note = "x"; }) == "note of BP1");
    CHECK(after(plate, [](Part& p) { p.certified_tensile = ksi(66.0); }) == "certificate of BP1");
    CHECK(after(plate, [](Part& p) { p.section.shape = section::Shape::flat; }) ==
          "section of BP1");
    CHECK(after(plate, [](Part& p) { p.mark = "BP9"; }) == "mark of BP1");
    CHECK(after(plate, [](Part& p) {
              p.count = 9;
              p.length = inches(9.0);
          }) == "changes of BP1");
}

TEST_CASE("a change of operations says which") {
    const job::Part plate = sheet_test::base_plate();
    using job::Part;
    CHECK(after(plate, [](Part& p) { p.operations.erase(p.operations.begin() + 1); }) ==
          "operation 2 of BP1 removed");
    CHECK(after(plate, [](Part& p) { p.operations.emplace_back(job::Cut{}); }) ==
          "operation 6 of BP1 added");
    CHECK(after(plate, [](Part& p) { std::get<job::Punch>(p.operations[1]).at.columns = 3; }) ==
          "operation 2 of BP1");
    CHECK(after(plate, [](Part& p) {
              std::get<job::Notch>(p.operations[4]).included = degrees(60.0);
          }) == "operation 5 of BP1");
    CHECK(after(plate, [](Part& p) { std::swap(p.operations[1], p.operations[2]); }) ==
          "operations of BP1");
    const job::Part bent = sheet_test::hanger();
    CHECK(after(bent, [](Part& p) { p.legs[1] = inches(4.0); }) == "legs of HG1");
    CHECK(after(bent, [](Part& p) {
              p.operations.pop_back();
              p.legs.pop_back();
          }) == "operation 4 of HG1 removed");
}

TEST_CASE("grades are compared whole") {
    const Grade a = test::a36();
    Grade b = a;
    CHECK(edit::same({a}, {b}));
    CHECK_FALSE(edit::same({a}, {}));
    b.bands[0].tensile_upper = ksi(81.0);
    CHECK_FALSE(edit::same({a}, {b}));
    b = a;
    b.refusal.bending = true;
    CHECK_FALSE(edit::same({a}, {b}));
}
