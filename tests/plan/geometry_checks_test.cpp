#include "fixture.h"

using namespace treadle;
using namespace treadle::test;
using plan::Outcome;
using plan::Rule;

namespace {
plan::PartPlan with(const Bench& bench, job::Part part, std::vector<job::Operation> operations) {
    part.operations = std::move(operations);
    return bench.plan(part);
}
const job::Part k_plate = plate(inches(0.25), inches(8.0), inches(10.0));
} // namespace

TEST_CASE("a hole off the metal is refused, close to the edge it is warned of") {
    Bench bench;
    const auto at = [&](double y) {
        return with(bench, k_plate, {one_hole(inches(0.8125), inches(5.0), inches(y))})
            .operations[0];
    };
    CHECK(outcome_of(at(0.40), Rule::on_metal) == Outcome::does_not_fit);
    CHECK(find(at(0.41), Rule::on_metal) == nullptr);
    // Web of half the hole (0.40625) is wanted: centre at 0.8125 in.
    CHECK(warns(at(0.81), Rule::edge_web));
    CHECK_FALSE(warns(at(0.8126), Rule::edge_web));
    CHECK(at(0.81).outcome == Outcome::fits);
}

TEST_CASE("overlapping holes are refused, a thin web between them is warned of") {
    Bench bench;
    const auto apart = [&](double pitch) {
        return with(bench,
                    k_plate,
                    {one_hole(inches(0.8125), inches(3.0), inches(4.0)),
                     one_hole(inches(0.8125), inches(3.0 + pitch), inches(4.0))});
    };
    CHECK(apart(0.81).outcome == Outcome::does_not_fit);
    CHECK(warns(apart(1.06).operations[1], Rule::hole_web)); // web 0.2475 < 1/4
    CHECK_FALSE(warns(apart(1.07).operations[1], Rule::hole_web));
    CHECK(apart(1.07).outcome == Outcome::fits);
}

TEST_CASE("holes in different legs of an angle do not meet") {
    Bench bench;
    job::Part angle = plate(inches(0.25), inches(3.0), inches(12.0));
    angle.section.shape = section::Shape::angle;
    angle.section.height = inches(3.0);
    auto a = one_hole(inches(0.8125), inches(6.0), inches(1.75));
    auto b = a;
    a.face = section::Face::leg_a;
    b.face = section::Face::leg_b;
    CHECK(with(bench, angle, {a, b}).outcome == Outcome::fits);
    b.face = section::Face::leg_a;
    CHECK(with(bench, angle, {a, b}).outcome == Outcome::does_not_fit);
}

TEST_CASE("a hole near a bend is warned of, and its place counts from its own leg") {
    Bench bench;
    job::Part part = plate(inches(0.25), inches(4.0), Length{});
    part.legs = {inches(6.0), inches(6.0)};
    job::Bend bend;
    bend.angle = degrees(90.0);
    auto hole = one_hole(inches(0.8125), inches(5.0), inches(2.0));
    CHECK(warns(with(bench, part, {hole, bend}).operations[0], Rule::hole_to_bend));
    hole.at.x = inches(3.0);
    CHECK_FALSE(warns(with(bench, part, {hole, bend}).operations[0], Rule::hole_to_bend));
    // In leg 1, 3 in from the outside corner: on the flat 6 in + 3 in less one deduction.
    hole.leg = 1;
    const auto planned = with(bench, part, {hole, bend});
    const Length deduction = planned.operations[1].figures.deduction;
    REQUIRE(planned.marks.size() == 2);
    CHECK(planned.marks[0].kind == plan::Mark::Kind::bend_line);
    CHECK(quantity::to_inches(planned.marks[1].x) ==
          doctest::Approx(9.0 - quantity::to_inches(deduction)));
}

TEST_CASE("a notch larger than the metal is refused, one across a bend line is warned of") {
    Bench bench;
    job::Notch notch;
    notch.edge = job::NotchEdge::far_edge;
    notch.at = inches(0.5);
    notch.along = inches(1.0);
    notch.depth = inches(1.0);
    CHECK(with(bench, k_plate, {notch}).outcome == Outcome::fits);
    notch.at = inches(0.45); // half of it beyond the end
    CHECK(with(bench, k_plate, {notch}).outcome == Outcome::does_not_fit);
    job::Part part = plate(inches(0.25), inches(4.0), Length{});
    part.legs = {inches(6.0), inches(6.0)};
    job::Bend bend;
    bend.angle = degrees(90.0);
    notch.at = inches(5.5);
    CHECK(warns(with(bench, part, {notch, bend}).operations[0], Rule::notch_at_bend));
    notch.at = inches(3.0);
    CHECK_FALSE(warns(with(bench, part, {notch, bend}).operations[0], Rule::notch_at_bend));
}

TEST_CASE("marks come in running order from the datum end") {
    Bench bench;
    const auto planned = with(bench,
                              k_plate,
                              {one_hole(inches(0.5625), inches(8.0), inches(2.0)),
                               one_hole(inches(0.5625), inches(2.0), inches(6.0)),
                               one_hole(inches(0.5625), inches(2.0), inches(2.0))});
    REQUIRE(planned.marks.size() == 3);
    CHECK(planned.marks[0].operation == 2);
    CHECK(planned.marks[1].operation == 1);
    CHECK(planned.marks[2].operation == 0);
}
