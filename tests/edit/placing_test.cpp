// Where an operation can be put: placing.cpp, placing_lines.cpp and placing_tracks.cpp.

#include "edit/placing.h"
#include "sheet/sample.h"

#include <array>
#include <cstdint>

using namespace treadle;
using edit::Axis;
using edit::SnapKind;

namespace {

constexpr PrintStyle k_inch{UnitSystem::inch, 16};
constexpr PrintStyle k_metric{UnitSystem::metric, 16};
constexpr Length k_no_tolerance{};
enum Part : std::size_t { base_plate, hanger, clip, rail, channel, mitred_square };

const plan::PartPlan& plan_of(const sheet_test::Sample& sample, std::size_t part) {
    return *sample.plan.parts.at(part);
}

/// The line of these words, or nothing.
const edit::SnapLine* find(const std::vector<edit::SnapLine>& lines, const char* words) {
    for (const edit::SnapLine& line : lines)
        if (line.words == words)
            return &line;
    return nullptr;
}

double value_of(const std::vector<edit::SnapLine>& lines, const char* words) {
    const edit::SnapLine* line = find(lines, words);
    REQUIRE_MESSAGE(line != nullptr, words);
    return quantity::to_inches(line->value);
}

/// The same made-up numbers everywhere.
class Dice {
public:
    double share() {
        state_ = state_ * 6364136223846793005U + 1442695040888963407U;
        return static_cast<double>(state_ >> 11U) / 9007199254740992.0;
    }

private:
    std::uint64_t state_ = 20;
};

bool is_refused_for_metal(const plan::PartPlan& plan) {
    for (const plan::OperationPlan& operation : plan.operations)
        for (const plan::Check& check : operation.checks)
            if (check.rule == plan::Rule::on_metal)
                return true;
    return false;
}

} // namespace

TEST_CASE("a hole in the leg of an angle catches on the gauge line") {
    const sheet_test::Sample sample;
    const edit::Placing placing{plan_of(sample, clip), 1, k_inch};
    const auto lines = edit::candidates(placing);
    // AISC Manual table 1-7A, from memory: a leg of 3 in has its line at 1-3/4 in.
    CHECK(value_of(lines, "gauge line 1-3/4") == doctest::Approx(1.75));
    const edit::SnapLine* line = find(lines, "gauge line 1-3/4");
    CHECK(line->axis == Axis::across);
    REQUIRE(line->card != nullptr);
    CHECK(line->card->source == std::string("aisc-manual-1-7a"));
    const auto placed = edit::place(placing, {inches(1.53), inches(1.70)}, inches(0.1));
    REQUIRE(placed.ok());
    CHECK(placed->across->kind == SnapKind::gauge_line);
    CHECK(placed->across->value == inches(1.75));
    CHECK(std::get<job::Punch>(placed->part.operations[1]).at.y == inches(1.75));
    CHECK(edit::caught_words(*placed).find("gauge line 1-3/4 across") != std::string::npos);
}

TEST_CASE("a hole for a bolt catches on the usual and the least edge distance") {
    sheet_test::Sample sample;
    // 13/16 is the standard hole of a 3/4 bolt. AISC 360-16 table J3.4: 1 in from any edge; the
    // sheared-edge column of editions to 2005: 1-1/4 in (from memory).
    const edit::Placing placing{plan_of(sample, base_plate), 1, k_inch};
    const auto lines = edit::candidates(placing);
    CHECK(value_of(lines, "edge distance 1-1/4 from the start") == doctest::Approx(1.25));
    CHECK(value_of(lines, "least edge distance 1 from the start") == doctest::Approx(1.0));
    // The plate is 10 by 8 and the pattern 5 by 5: its far holes are as far from the other ends.
    CHECK(value_of(lines, "edge distance 1-1/4 from the finish") == doctest::Approx(3.75));
    CHECK(value_of(lines, "edge distance 1-1/4 from the far edge") == doctest::Approx(1.75));
    for (const edit::SnapLine& line : lines)
        if (line.kind == SnapKind::edge_distance)
            CHECK(line.card != nullptr);

    // A rolled edge has one distance: the toe of an angle, 13/16 hole.
    const auto on_angle = edit::candidates({plan_of(sample, clip), 1, k_inch});
    CHECK(find(on_angle, "edge distance 1 from the far edge") != nullptr);
    CHECK(find(on_angle, "least edge distance 1 from the far edge") == nullptr);
}

TEST_CASE("a metric hole keeps 1.2 of its diameter at least, in whole millimetres") {
    sheet_test::Sample sample;
    sample.change(base_plate, [](job::Part& part) {
        std::get<job::Punch>(part.operations[1]).hole.size = millimetres(22.0);
    });
    const auto lines = edit::candidates({plan_of(sample, base_plate), 1, k_metric});
    // EN 1993-1-8 table 3.3: 1.2 x 22 = 26.4 mm.
    const edit::SnapLine* least = find(lines, "least edge distance 27 from the start");
    REQUIRE(least != nullptr);
    CHECK(least->value == millimetres(27.0));
    CHECK(least->card->source == std::string("en-1993-1-8"));
    // Sheared column of table J3.4M for M20: 34 mm.
    CHECK(find(lines, "edge distance 34 from the start") != nullptr);
}

TEST_CASE("a pattern is centred as a whole, and stands in line with and mirrors what is there") {
    const sheet_test::Sample sample;
    const auto lines = edit::candidates({plan_of(sample, base_plate), 1, k_inch});
    CHECK(value_of(lines, "middle of the length") == doctest::Approx(2.5)); // (10 - 5) / 2
    CHECK(value_of(lines, "middle of the width") == doctest::Approx(1.5));  // (8 - 5) / 2
    // The slot at 5, 4 has the pattern in line with it, or mirrored: 10 - 5 - 5 = 0 is off the
    // metal.
    CHECK(find(lines, "mirrors operation 3") == nullptr);
    const auto slot = edit::candidates({plan_of(sample, base_plate), 2, k_inch});
    // The pattern begins at 1-1/2 and ends at 6-1/2; 10 - 1-1/2 = 8-1/2.
    CHECK(value_of(slot, "in line with operation 2") == doctest::Approx(1.5));
    CHECK(value_of(slot, "mirrors operation 2") == doctest::Approx(8.5));
}

TEST_CASE("a bend goes between its legs and their sum stays") {
    const sheet_test::Sample sample;
    const edit::Placing placing{plan_of(sample, hanger), 2, k_inch};
    const auto movable = edit::movable(placing);
    REQUIRE(movable.ok());
    CHECK(movable->along);
    CHECK_FALSE(movable->across);
    const auto lines = edit::candidates(placing);
    CHECK(value_of(lines, "both legs alike") == doctest::Approx(2.75)); // (2-1/2 + 3) / 2
    const auto placed = edit::nudge(placing, movable->at, Axis::along, 1);
    REQUIRE(placed.ok());
    CHECK(placed->part.legs[0] == inches(2.5625));
    CHECK(placed->part.legs[0] + placed->part.legs[1] == inches(5.5));
    CHECK(placed->part.legs[2] == inches(2.5));
    CHECK_FALSE(edit::nudge(placing, movable->at, Axis::across, 1).ok());
    // However far it is pulled, the blank can still be made.
    for (const double far : {-100.0, 100.0}) {
        const auto pulled = edit::place(placing, {inches(far), Length{}}, k_no_tolerance);
        REQUIRE(pulled.ok());
        CHECK(pulled->along->kind == SnapKind::limit);
        const plan::PartPlan plan = plan::plan_part(
            std::make_shared<job::Part>(pulled->part), sample.job, sample.shop, sample.catalog);
        CHECK_FALSE(plan.problem.has_value());
    }
}

TEST_CASE("the cut to length keeps an edge distance from the last hole and never cuts into work") {
    sheet_test::Sample sample;
    const edit::Placing placing{plan_of(sample, base_plate), 0, k_inch};
    const auto pulled = edit::place(placing, {inches(0.5), Length{}}, k_no_tolerance);
    REQUIRE(pulled.ok());
    CHECK(pulled->along->kind == SnapKind::limit);
    // 6-1/2 and half a 13/16 hole, and the corner notch of 1 in at the finish end.
    CHECK(pulled->part.length == inches(7.9375));

    sample.change(base_plate,
                  [](job::Part& part) { part.operations.erase(part.operations.begin() + 3); });
    const edit::Placing plain{plan_of(sample, base_plate), 0, k_inch};
    const auto lines = edit::candidates(plain);
    // The last hole lies at 6-1/2.
    CHECK(value_of(lines, "edge distance 1-1/4 from operation 2") == doctest::Approx(7.75));
    CHECK(value_of(lines, "operation 2 in the middle") == doctest::Approx(8.0));
}

TEST_CASE("what has no place of its own is refused, and says why") {
    const sheet_test::Sample sample;
    CHECK(edit::movable({plan_of(sample, rail), 0, k_inch}).refusal().field == "end");
    CHECK(edit::movable({plan_of(sample, base_plate), 3, k_inch}).refusal().field == "edge");
    CHECK(edit::movable({plan_of(sample, hanger), 0, k_inch}).refusal().field == "legs");
    CHECK(edit::movable({plan_of(sample, clip), 7, k_inch}).refusal().field == "operation");
    CHECK(edit::candidates({plan_of(sample, rail), 0, k_inch}).empty());
    sheet_test::Sample tight;
    tight.change(clip, [](job::Part& part) {
        std::get<job::Punch>(part.operations[1]).hole.size = inches(4.0);
    });
    const auto refused = edit::place({plan_of(tight, clip), 1, k_inch}, {}, inches(1.0));
    REQUIRE_FALSE(refused.ok());
    CHECK(refused.refusal().field == "at.x"); // two of them, 3 in apart, on 6 in
    CHECK(refused.refusal().reason != "");
}

TEST_CASE("nothing near: the nearest sixteenth, or the nearest millimetre") {
    const sheet_test::Sample sample;
    const auto inch = edit::place(
        {plan_of(sample, clip), 2, k_inch}, {inches(2.27), inches(0.83)}, k_no_tolerance);
    REQUIRE(inch.ok());
    CHECK(inch->along->value == inches(2.25));
    CHECK(inch->along->words == "step of 1/16");
    CHECK(inch->across->value == inches(0.8125));
    const auto metric = edit::place({plan_of(sample, clip), 2, k_metric},
                                    {millimetres(57.6), millimetres(21.4)},
                                    k_no_tolerance);
    REQUIRE(metric.ok());
    CHECK(metric->along->value == millimetres(58.0));
    CHECK(metric->across->value == millimetres(21.0));
    CHECK(edit::figure_words(*metric, k_metric) == "58, 21");
}

TEST_CASE("wherever a finger goes, the work stays on the metal or is refused with a reason") {
    const sheet_test::Sample sample;
    Dice dice;
    int kept = 0;
    for (std::size_t part = 0; part < sample.plan.parts.size(); ++part) {
        const plan::PartPlan& plan = plan_of(sample, part);
        REQUIRE_FALSE(is_refused_for_metal(plan));
        for (int operation = 0; operation < static_cast<int>(plan.operations.size()); ++operation)
            for (int turn = 0; turn < 60; ++turn) {
                const edit::Placing placing{plan, operation, turn % 2 == 0 ? k_inch : k_metric};
                const edit::FlatPlace wished{inches(dice.share() * 40.0 - 10.0),
                                             inches(dice.share() * 20.0 - 6.0)};
                const auto placed = edit::place(placing, wished, inches(dice.share()));
                if (!placed.ok()) {
                    CHECK(placed.refusal().reason != "");
                    continue;
                }
                ++kept;
                CHECK(job::checked(placed->part).ok());
                const plan::PartPlan after =
                    plan::plan_part(std::make_shared<job::Part>(placed->part),
                                    sample.job,
                                    sample.shop,
                                    sample.catalog);
                CAPTURE(plan.part->mark);
                CAPTURE(operation);
                CHECK_FALSE(is_refused_for_metal(after));
                CHECK_FALSE(after.problem.has_value());
            }
    }
    CHECK(kept > 500);
}

TEST_CASE("every line that is offered can be taken, and leaves the other way as it was") {
    const sheet_test::Sample sample;
    for (std::size_t part = 0; part < sample.plan.parts.size(); ++part) {
        const plan::PartPlan& plan = plan_of(sample, part);
        for (int operation = 0; operation < static_cast<int>(plan.operations.size()); ++operation) {
            const edit::Placing placing{plan, operation, k_inch};
            for (const edit::SnapLine& line : edit::candidates(placing)) {
                const auto movable = edit::movable(placing);
                REQUIRE(movable.ok());
                const auto placed = edit::place_on(placing, movable->at, line);
                CAPTURE(line.words);
                REQUIRE(placed.ok());
                const bool along = line.axis == Axis::along;
                const auto& changed = along ? placed->along : placed->across;
                CHECK(changed->words == line.words);
                CHECK(changed->flat == line.flat);
                if (along)
                    CHECK(placed->at.across == movable->at.across);
                else
                    CHECK(placed->at.along == movable->at.along);
            }
        }
    }
}

TEST_CASE("keys go from step to step and from line to line, and stop at the metal's end") {
    const sheet_test::Sample sample;
    const edit::Placing placing{plan_of(sample, clip), 2, k_inch};
    const auto start = edit::movable(placing);
    REQUIRE(start.ok());
    auto placed = edit::nudge(placing, start->at, Axis::across, -1);
    REQUIRE(placed.ok());
    CHECK(placed->across->value == inches(1.1875));
    // From between two steps to the next one, not past it.
    placed = edit::nudge(placing, {start->at.along, inches(1.2)}, Axis::across, 1);
    CHECK(placed->across->value == inches(1.25));
    edit::FlatPlace at = start->at;
    Length last = at.across;
    int lines = 0;
    for (int i = 0; i < 40; ++i) {
        placed = edit::to_next_line(placing, at, Axis::across, -1);
        REQUIRE(placed.ok());
        at = placed->at;
        if (!(at.across < last))
            break;
        last = at.across;
        ++lines;
    }
    // From 1-1/4: the gauge line of a 2 in leg at 1-1/8 (AISC Manual table 1-7A, from memory), then
    // the middle, which is 1 in from the toe as well.
    CHECK(lines == 2);
    CHECK(at.across == inches(1.0));
    for (int i = 0; i < 200; ++i) {
        placed = edit::nudge(placing, at, Axis::across, 1);
        REQUIRE(placed.ok());
        at = placed->at;
    }
    CHECK(at.across <= inches(2.0) - inches(0.8125 / 2)); // leg b of 2 in, hole 13/16
}
