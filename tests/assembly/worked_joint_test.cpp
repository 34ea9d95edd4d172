// Check values of saddles, frames and bars, by hand from trade/layout-shapes-codes.md 5.5 and 6.5
// (derived there), reproduced by layouts. Covers pipe_branch.cpp, pipe_rail.cpp, frame.cpp,
// even_frame.cpp, folded.cpp, gusset.cpp, rounds.cpp, brackets.cpp, bent_flat.cpp, base_plate.cpp,
// clip_angle.cpp, bolted.cpp and gate.cpp.

#include <cmath>
#include <numbers>

#include "assembly/ground.h"

using namespace treadle;
using assembly::Held;
using assembly::Values;
using test::made;
using test::part;

namespace {

bool near(Length a, double in, double within) { return std::abs(to_inches(a) - in) <= within; }

Values branch(const std::string& pipe, const std::string& run) {
    return {{"branch", pipe}, {"run", run}, {"centres", "48 in"}, {"grade", "A53-B"}};
}

Values frame(const std::string& corner, const std::string& bar) {
    return {{"corner", corner},
            {"width", "24 in"},
            {"height", "18 in"},
            {"bar", bar},
            {"grade", "A36"}};
}

const job::Cut& cut(const job::Part& part) { return std::get<job::Cut>(part.operations.front()); }

} // namespace

TEST_CASE("5-09 to 5-11: branches between two posts") {
    Values values = branch("pipe 1.9 x 0.145 in", "2.375 in");
    test::set(values, "second_run", "2.375 in");
    const auto joint = made("pipe-branch", values);
    CHECK(near(part(joint, "branch").length, 46.5750, 0.001));
    CHECK(near(test::figure(joint, "crown to crown"), 45.6250, 0.001));
    test::set(values, "lay_out", "bore");
    CHECK(near(part(made("pipe-branch", values), "branch").length, 46.2540, 0.001));
    Values equal = branch("pipe 1.9 x 0.145 in", "1.9 in");
    test::set(equal, "second_run", "1.9 in");
    const auto same = made("pipe-branch", equal);
    CHECK(near(part(same, "branch").length, 48.0, 1e-9));
    CHECK(near(test::figure(same, "crown to crown"), 46.1, 1e-9));
    CHECK(part(same, "branch").operations.size() == 2);
    CHECK(same.templates.empty());
}

TEST_CASE("5-01, 5-03, 5-04 and 5-05: throats of square and slanted joints") {
    struct Row {
        const char* pipe;
        const char* run;
        const char* angle;
        double throat_in;
    };
    constexpr Row k_rows[] = {{"pipe 1.9 x 0.145 in", "2.375 in", "90 deg", 0.4750},
                              {"pipe 1.9 x 0.145 in", "1.9 in", "90 deg", 0.950},
                              {"pipe 2 x 0.1 in", "6 in", "90 deg", 0.1716},
                              {"pipe 1.9 x 0.145 in", "2.375 in", "45 deg", 1.9169}};
    CHECK(std::size(k_rows) == 4);
    for (const Row& row : k_rows) {
        CAPTURE(row.run);
        Values values = branch(row.pipe, row.run);
        test::set(values, "angle", row.angle);
        const auto joint = made("pipe-branch", values);
        CHECK(near(test::figure(joint, "throat at the start"), row.throat_in, 0.001));
        // No tool makes a slanted saddle: a template, and no operation that says otherwise.
        const bool slanted = std::string(row.angle) != "90 deg";
        CHECK(joint.templates.size() == (slanted ? 1u : 0u));
        CHECK(part(joint, "branch").operations.size() == (slanted ? 0u : 1u));
    }
}

TEST_CASE("5-02 and 5-06: laid out on the bore the saddle is less deep") {
    Values values = branch("pipe 1.9 x 0.145 in", "2.375 in");
    test::set(values, "lay_out", "bore");
    CHECK(near(test::figure(made("pipe-branch", values), "throat at the start"), 0.3145, 0.0005));
    Values slanted = branch("pipe 1.9 x 0.145 in", "2.375 in");
    test::set(slanted, "angle", "45 deg");
    CHECK(near(test::figure(made("pipe-branch", slanted), "throat at the start"), 1.9169, 0.001));
}

TEST_CASE("5-08: a branch that would miss the run is refused") {
    Values values = branch("pipe 1.315 x 0.133 in", "1.66 in");
    test::set(values, "offset", "1/4 in");
    CHECK(test::refused("pipe-branch", values).field == "offset");
}

TEST_CASE("5-12 and 5-13: a die for another run leaves a gap at the crown or at the flanks") {
    // R 0.95 on R 1.1875 and the other way round, r 0.83: 0.1496 in, over 1/16 in.
    Values tight = branch("pipe 1.66 x 0.14 in", "2.375 in");
    test::set(tight, "die", "1.9 in");
    const auto crown = test::rule(made("pipe-branch", tight), "saddle-die-gap");
    CHECK(near(crown.value, 0.1496, 0.00005));
    CHECK(crown.words == "gap at the crown, start");
    CHECK(crown.held == Held::breaks);
    Values wide = branch("pipe 1.66 x 0.14 in", "1.9 in");
    test::set(wide, "die", "2.375 in");
    const auto flanks = test::rule(made("pipe-branch", wide), "saddle-die-gap");
    CHECK(near(flanks.value, 0.1496, 0.00005));
    CHECK(flanks.words == "gap at the flanks, start");
    test::set(wide, "die", "1.9 in");
    CHECK(test::rule(made("pipe-branch", wide), "saddle-die-gap").held == Held::meets);
    test::set(wide, "die", "1.315 in");
    CHECK(test::refused("pipe-branch", wide).field == "die");
    test::set(wide, "die", "1.9 in");
    test::set(wide, "angle", "60 deg");
    const auto slanted = made("pipe-branch", wide);
    CHECK(slanted.rules.empty());
    CHECK(slanted.cautions.front().find("The die is not used") == 0);
}

TEST_CASE("one-saddle: a square end leaves the cut back of one run alone") {
    // 48 - sqrt(1.1875^2 - 0.95^2) = 48 - 0.7125
    const auto joint = made("pipe-branch", branch("pipe 1.9 x 0.145 in", "2.375 in"));
    CHECK(near(test::worked(joint, "one-saddle"), 47.2875, 0.00005));
}

TEST_CASE("6-01: mitred angle, 2 at 24 and 2 at 18, opening 20 by 14") {
    const auto box = made("frame", frame("mitre", "angle 2 x 2 x 1/4 in"));
    CHECK(near(part(box, "width").length, 24.0, 1e-9));
    CHECK(part(box, "width").count == 2);
    CHECK(near(part(box, "height").length, 18.0, 1e-9));
    CHECK(near(test::figure(box, "opening, width"), 20.0, 1e-9));
    CHECK(near(test::figure(box, "opening, height"), 14.0, 1e-9));
    CHECK(cut(part(box, "width")).start_mitre == degrees(45.0));
    CHECK(cut(part(box, "width")).finish_mitre == degrees(45.0));
}

TEST_CASE("6-02: butted angle, 2 at 24 and 2 at 17-1/2, notched 1-3/4 by 1-3/4") {
    const auto box = made("frame", frame("butt", "angle 2 x 2 x 1/4 in"));
    CHECK(near(part(box, "width").length, 24.0, 1e-9));
    CHECK(near(part(box, "height").length, 17.5, 1e-9));
    int notches = 0;
    for (const job::Operation& operation : part(box, "height").operations)
        if (const auto* notch = std::get_if<job::Notch>(&operation)) {
            CHECK(near(notch->along, 1.75, 1e-9));
            CHECK(near(notch->depth, 1.75, 1e-9));
            ++notches;
        }
    CHECK(notches * part(box, "height").count == 4);
}

TEST_CASE("6-04, 6-06, 6-08 and 6-09: one bar notched and folded") {
    Values values = frame("notch-and-fold", "angle 2 x 2 x 1/4 in");
    test::set(values, "k", "0.33");
    const auto box = made("frame", values);
    const job::Part& bar = part(box, "bar");
    CHECK(near(bar.length, 82.889, 0.001));
    const double centres[] = {23.815, 41.444, 65.074};
    std::size_t found = 0;
    for (const job::Operation& operation : bar.operations)
        if (const auto* notch = std::get_if<job::Notch>(&operation)) {
            REQUIRE(found < 3);
            CHECK(near(notch->at, centres[found], 0.001));
            CHECK(near(notch->depth, 1.75, 1e-9));
            CHECK(notch->included == degrees(90.0));
            ++found;
        }
    CHECK(found == 3);
    CHECK(near(test::worked(box, "bend-deduction"), 0.3704, 0.0005)); // 6-06
    test::set(values, "k", "0.5");
    CHECK(near(test::worked(made("frame", values), "bend-deduction"), 0.3037, 0.0005));
}

TEST_CASE("6-03: setbacks of a six-sided and of a three-sided frame, leg 2 in") {
    Values values{{"sides", "6"},
                  {"side", "12 in"},
                  {"corner", "mitre"},
                  {"bar", "angle 2 x 2 x 1/4 in"},
                  {"grade", "A36"}};
    const auto six = made("even-frame", values); // corners of 120 degrees
    CHECK(near(test::figure(six, "mitre's setback"), 1.1547, 0.00005));
    CHECK(near(test::figure(six, "side of the opening"), 12.0 - 2.0 * 1.1547, 0.0001));
    CHECK(part(six, "side").count == 6);
    CHECK(cut(part(six, "side")).start_mitre == degrees(30.0));
    // Twice the apothem of a hexagon is its side times the square root of three.
    CHECK(near(test::worked(six, "even-frame-across"), 12.0 * std::sqrt(3.0), 1e-9));
    test::set(values, "sides", "3");
    const auto three = made("even-frame", values); // corners of 60 degrees
    CHECK(near(test::figure(three, "mitre's setback"), 3.4641, 0.00005));
    test::set(values, "side", "6 in");
    CHECK(test::refused("even-frame", values).field == "side");
}

TEST_CASE("6-05: an eight-sided frame of 50 x 50 x 5 mm is notched 45 mm deep, 37.279 mm wide") {
    const Values values{{"sides", "8"},
                        {"side", "300 mm"},
                        {"corner", "notch-and-fold"},
                        {"bar", "angle 50 x 50 x 5 mm"},
                        {"grade", "S275JR"}};
    const auto ring = made("even-frame", values, UnitSystem::metric);
    CHECK(std::abs(to_millimetres(test::figure(ring, "depth of a notch")) - 45.0) <= 1e-9);
    CHECK(std::abs(to_millimetres(test::figure(ring, "width of a notch at the toe")) - 37.279) <=
          0.0005);
    CHECK(ring.marks.front().places.size() == 7);
    int notches = 0;
    for (const job::Operation& operation : part(ring, "bar").operations)
        if (const auto* notch = std::get_if<job::Notch>(&operation)) {
            CHECK(notch->included == degrees(45.0));
            ++notches;
        }
    CHECK(notches == 7);
}

TEST_CASE("6-07: a corner of 5 mm folded about 2.5 mm with K 0.44 deducts 7.617 mm") {
    Values values = frame("notch-and-fold", "angle 50 x 50 x 5 mm");
    test::set(values, "radius", "2.5 mm");
    test::set(values, "k", "0.44");
    const auto box = made("frame", values, UnitSystem::metric);
    CHECK(std::abs(to_millimetres(test::worked(box, "bend-deduction")) - 7.617) <= 0.0005);
}

TEST_CASE("6-12: a gusset of 8 by 6 in: 10 in across, 36.870 degrees at the long leg") {
    Values values{{"leg_a", "8 in"},
                  {"leg_b", "6 in"},
                  {"thickness", "1/4 in"},
                  {"clip", "1/2 in"},
                  {"weld", "1/4 in"},
                  {"grade", "A36"}};
    const auto plate = made("gusset", values);
    CHECK(near(test::figure(plate, "long edge"), 10.0, 1e-9));
    CHECK(near(test::figure(plate, "edge of the clip"), 0.5 * 1.4142, 0.0001));
    CHECK(std::abs(cut(part(plate, "gusset")).finish_mitre.in_degrees() - (90.0 - 36.870)) <=
          0.0005);
    // Clip at least the weld's leg and 1/8 in (common practice): 3/8 in.
    CHECK(test::rule(plate, "clip-over-weld").held == Held::meets);
    test::set(values, "clip", "5/16 in");
    CHECK(test::rule(made("gusset", values), "clip-over-weld").held == Held::breaks);
    test::set(values, "clip", "6 in");
    CHECK(test::refused("gusset", values).field == "clip");
}

TEST_CASE("6-10: picture frame of 15 by 12, face 1-1/2: 49.5 in of bar") {
    Values values = frame("mitre", "flat 1-1/2 x 3/16 in");
    test::set(values, "width", "15 in");
    test::set(values, "height", "12 in");
    const auto box = made("frame", values);
    CHECK(near(test::figure(box, "bar for one frame, shared 45 degree cuts"), 49.5, 1e-9));
    CHECK(near(test::figure(box, "opening, width"), 12.0, 1e-9));
    CHECK(near(test::figure(box, "opening, height"), 9.0, 1e-9));
}

TEST_CASE("6-11: heel inside, 400 by 300 mm, leg 40: toes 480 and 380 mm") {
    Values values = frame("mitre", "angle 40 x 40 x 5 mm");
    test::set(values, "width", "400 mm");
    test::set(values, "height", "300 mm");
    test::set(values, "heel", "inside");
    const auto box = made("frame", values);
    CHECK(to_millimetres(part(box, "width").length) == doctest::Approx(480.0).epsilon(1e-12));
    CHECK(to_millimetres(part(box, "height").length) == doctest::Approx(380.0).epsilon(1e-12));
    CHECK(cut(part(box, "width")).start_mitre == degrees(-45.0));
}

TEST_CASE("a ring of 1 in bar, 20 in inside: pi x 21; a hook and an eye by the same line") {
    const Values ring{{"bar", "round 1 in"}, {"diameter", "20 in"}, {"grade", "A36"}};
    CHECK(near(part(made("ring", ring), "ring").length, std::numbers::pi * 21.0, 1e-9));
    Values hook{{"bar", "round 3/8 in"},
                {"diameter", "1 in"},
                {"shank", "4 in"},
                {"tail", "1/2 in"},
                {"grade", "A36"}};
    // 4 + pi (1 + 3/8) / 2 + 1/2
    CHECK(
        near(part(made("hook", hook), "hook").length, 4.5 + std::numbers::pi * 1.375 / 2.0, 1e-9));
    hook.erase(hook.begin() + 3);
    CHECK(near(part(made("eye", hook), "eye").length, 4.0 + std::numbers::pi * 1.375, 1e-9));
    CHECK(part(made("eye", hook), "eye").operations.size() == 1); // the cut; no tool here rolls
}

TEST_CASE("brackets by their finished sizes: legs outside") {
    const Values u{
        {"width", "4 in"}, {"height", "3 in"}, {"bar", "flat 2 x 1/4 in"}, {"grade", "A36"}};
    CHECK(part(made("u-bracket", u), "bracket").legs ==
          std::vector<Length>{inches(3), inches(4.5), inches(3)});
    const Values hanger{{"width", "4 in"},
                        {"depth", "3 in"},
                        {"ear", "2 in"},
                        {"bar", "flat 2 x 1/4 in"},
                        {"grade", "A36"}};
    const double legs[] = {2.25, 3.25, 4.5, 3.25, 2.25};
    const auto made_hanger = made("hanger", hanger);
    REQUIRE(part(made_hanger, "hanger").legs.size() == std::size(legs));
    for (std::size_t i = 0; i < std::size(legs); ++i)
        CHECK(near(part(made_hanger, "hanger").legs[i], legs[i], 1e-9));
}

TEST_CASE("offset-leg: square D + t; at 60 degrees (D + t / 2) / sin 60") {
    Values values{{"first", "3 in"},
                  {"offset", "2 in"},
                  {"last", "3 in"},
                  {"bar", "flat 2 x 1/4 in"},
                  {"grade", "A36"}};
    CHECK(near(part(made("strap", values), "strap").legs[1], 2.25, 1e-9));
    test::set(values, "angle", "60 deg");
    CHECK(near(
        test::worked(made("strap", values), "offset-leg"), 2.125 / (std::sqrt(3.0) / 2.0), 1e-9));
}

TEST_CASE("gate-leaf: two leaves in 10 ft with 1 in gaps: (120 - 2 - 1) / 2") {
    const Values values{{"opening", "10 ft"},
                        {"leaves", "two"},
                        {"height", "68 in"},
                        {"bottom_gap", "2 in"},
                        {"frame", "tube 1-1/2 x 1/8 in"},
                        {"picket", "square 3/4 in"},
                        {"grade", "A36"},
                        {"brace", "diagonal"},
                        {"brace_bar", "flat 1-1/4 x 1/4 in"}};
    const auto gate = made("gate", values);
    CHECK(near(test::worked(gate, "gate-leaf"), 58.5, 1e-9));
    CHECK(near(part(gate, "rail").length, 55.5, 1e-9));
    CHECK(part(gate, "stile").count == 4);
    // From corner to corner of 55.5 by 65.
    CHECK(near(part(gate, "brace").length, std::hypot(55.5, 65.0), 1e-9));
}

TEST_CASE("a base plate holds its edges against the sheared edge of the table") {
    // 3/4 in bolt: 1-1/4 in from a sheared edge by the careful column, 1 in rolled; hole 13/16 in.
    Values values{{"length", "8 in"},
                  {"width", "8 in"},
                  {"thickness", "3/8 in"},
                  {"bolt", "3/4 in"},
                  {"edge_length", "1-1/4 in"},
                  {"edge_width", "1-1/4 in"},
                  {"grade", "A36"}};
    const auto plate = made("base-plate", values);
    CHECK(near(test::rule(plate, "edge-least-sheared").limit, 1.25, 1e-9));
    CHECK(test::rule(plate, "edge-least-sheared").held == Held::meets);
    CHECK(near(test::figure(plate, "holes apart, along"), 5.5, 1e-9));
    CHECK(near(test::figure(plate, "hole"), 13.0 / 16.0, 1e-9));
    test::set(values, "edge_length", "1-3/16 in");
    CHECK(test::rule(made("base-plate", values), "edge-least-sheared").held == Held::breaks);
}

TEST_CASE("a clip angle has its holes at the usual gage of both legs") {
    // 3 in leg: 1-3/4 in (manual's table, from memory)
    const Values values{{"angle", "angle 3 x 3 x 1/4 in"},
                        {"bolt", "5/8 in"},
                        {"bolts", "2"},
                        {"spacing", "3 in"},
                        {"end", "1-1/4 in"},
                        {"grade", "A36"}};
    const auto clip = made("clip-angle", values);
    CHECK(near(part(clip, "clip").length, 5.5, 1e-9));
    int faces = 0;
    for (const job::Operation& operation : part(clip, "clip").operations)
        if (const auto* punch = std::get_if<job::Punch>(&operation)) {
            CHECK(near(punch->at.y, 1.75, 1e-9));
            CHECK(near(punch->hole.size, 11.0 / 16.0, 1e-9));
            ++faces;
        }
    CHECK(faces == 2);
}
