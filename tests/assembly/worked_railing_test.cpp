// Worked panels and check values of railings and fences, by hand from trade/layout-shapes-codes.md
// 4.5 and 4.6 (geometry derived there, limits read in the codes it names), reproduced by layouts.
// Covers handrail.cpp, guard_make.cpp, guard_read.cpp, fence_run.cpp, infill.cpp and
// raked_rail.cpp.

#include <cmath>

#include "assembly/ground.h"
#include "assembly/infill.h"
#include "assembly/raked_rail.h"

using namespace treadle;
using assembly::Held;
using assembly::Values;
using test::made;
using test::part;

namespace {

/// One panel of a level guard: its run is the clear opening and two posts.
Values panel(const std::string& run, const std::string& picket, const std::string& spacing) {
    return {{"rule", "irc"},
            {"run", run},
            {"height", "42 in"},
            {"bottom_gap", "3 in"},
            {"spacing", spacing},
            {"post", "tube 2 x 2 x 1/8 in"},
            {"top_rail", "flat 1-1/2 x 3/8 in"},
            {"bottom_rail", "flat 1-1/2 x 3/8 in"},
            {"picket", picket},
            {"grade", "A36"}};
}

Values stair(const std::string& riser, const std::string& tread) {
    return {{"rule", "irc"},
            {"riser", riser},
            {"tread", tread},
            {"run", "60.961 in"},
            {"height", "36 in"},
            {"bottom_gap", "0 in"},
            {"spacing", "8 ft"},
            {"post", "square 2 in"},
            {"top_rail", "flat 1-1/2 x 3/8 in"},
            {"bottom_rail", "flat 1-1/2 x 3/8 in"},
            {"picket", "square 3/4 in"},
            {"grade", "A36"}};
}

struct PanelRow {
    const char* where;
    const char* run; ///< clear opening and two posts
    const char* picket;
    const char* margin; ///< under the 4 in of irc-opening
    int pickets;
    double gap_in;
};
// 4.5 level panel, then 4-01, 4-05, 4-06, 4-07. 4-07 as a run of 3-1/2 in between posts.
constexpr PanelRow k_rows[] = {
    {"4.5", "98 in", "square 3/4 in", "1/8 in", 20, 79.0 / 21.0},
    {"4-01", "76 in", "square 3/4 in", "0 in", 15, 3.796875},
    {"4-05", "53 in", "square 1/2 in", "0 in", 10, 4.0},
    {"4-06", "17 in", "square 1/2 in", "1/8 in", 3, 2.875},
    {"4-07", "7-1/2 in", "square 3/4 in", "0 in", 0, 3.5},
};

const job::Cut& cut(const job::Part& part) { return std::get<job::Cut>(part.operations.front()); }

bool near(Length a, double in, double within) { return std::abs(to_inches(a) - in) <= within; }

} // namespace

TEST_CASE("panels come out as they were worked by hand") {
    CHECK(std::size(k_rows) == 5);
    for (const PanelRow& row : k_rows) {
        CAPTURE(row.where);
        Values values = panel(row.run, row.picket, "10 ft");
        test::set(values, "margin", row.margin);
        const auto guard = made("guard-run", values);
        CHECK(near(test::figure(guard, "clear gap, level"), row.gap_in, 1e-9));
        if (row.pickets == 0) {
            for (const auto& made_part : guard.parts)
                CHECK(made_part.role != "picket");
            continue;
        }
        CHECK(part(guard, "picket").count == row.pickets);
    }
}

TEST_CASE("a gap that equals the limit is said, neither met nor broken") {
    Values values = panel("53 in", "square 1/2 in", "10 ft");
    test::set(values, "margin", "0 in");
    CHECK(test::rule(made("guard-run", values), "irc-opening").held == Held::at_limit);
}

TEST_CASE("places rounded to 1/16 in: the worked panel of 4.5") {
    Values values = panel("98 in", "square 3/4 in", "10 ft");
    test::set(values, "step", "1/16 in");
    test::set(values, "joint", "punched");
    const auto guard = made("guard-run", values);
    std::vector<double> faces; // near faces: half a picket before each hole
    for (const job::Operation& operation : part(guard, "bottom-rail").operations)
        if (const auto* punch = std::get_if<job::Punch>(&operation))
            for (const job::HoleCentre& at : job::centres(punch->at))
                faces.push_back(to_inches(at.x) - 0.375);
    REQUIRE(faces.size() == 20);
    // 3-3/4, 8-1/4, 12-13/16, 17-5/16, 21-13/16, …, last 89-1/2
    const double worked[] = {3.75, 8.25, 12.8125, 17.3125, 21.8125};
    for (std::size_t i = 0; i < std::size(worked); ++i)
        CHECK(faces[i] == doctest::Approx(worked[i]).epsilon(1e-12));
    CHECK(faces.back() == doctest::Approx(89.5).epsilon(1e-12));
    // Largest gap after rounding 3-13/16: passes.
    CHECK(near(test::rule(guard, "irc-opening").value, 3.8125, 1e-9));
    CHECK(test::rule(guard, "irc-opening").held == Held::meets);
}

TEST_CASE("4-03: rounded places of the 72 in opening keep under 3.859375 in") {
    Values values = panel("76 in", "square 3/4 in", "10 ft");
    test::set(values, "margin", "1/8 in");
    test::set(values, "step", "1/16 in");
    const auto guard = made("guard-run", values);
    CHECK(to_inches(test::rule(guard, "irc-opening").value) <= 3.859375);
}

TEST_CASE("4-02: near faces of the first, second and last picket, to be marked on the rail") {
    Values values = panel("76 in", "square 3/4 in", "10 ft");
    test::set(values, "margin", "0 in");
    const auto guard = made("guard-run", values);
    REQUIRE(guard.marks.size() == 1);
    const std::vector<Length>& faces = guard.marks[0].places;
    REQUIRE(faces.size() == 15);
    CHECK(near(faces[0], 3.796875, 1e-9));
    CHECK(near(faces[1], 8.34375, 1e-9));
    CHECK(near(faces[14], 67.453125, 1e-9));
}

TEST_CASE("4-16: two pickets of 3/4 in on a tread of 10 in: 4.25 in, over 4 in, under 4-3/8 in") {
    Values values = stair("7-3/4 in", "10 in");
    test::set(values, "per_tread", "2");
    const auto dwelling = made("guard-stair", values);
    CHECK(near(test::figure(dwelling, "clear gap, level"), 4.25, 1e-9));
    CHECK(test::rule(dwelling, "irc-stair-opening").held == Held::meets);
    // 56.961 in clear: a gap from each post no wider, and a picket every 5 in.
    CHECK(part(dwelling, "picket").count == 11);
    CHECK(to_inches(dwelling.marks[0].places[1] - dwelling.marks[0].places[0]) ==
          doctest::Approx(5.0 * std::hypot(7.75, 10.0) / 10.0).epsilon(1e-9));
    test::set(values, "rule", "ibc");
    const auto other = made("guard-stair", values);
    CHECK(test::rule(other, "ibc-opening").held == Held::breaks);
    CHECK(test::rule(other, "ibc-stair-triangle").limit == inches(6.0));
    test::set(values, "per_tread", "14");
    CHECK(test::refused("guard-stair", values).field == "per_tread");
}

TEST_CASE("landings go on from a flight's posts, level, by the rules of a level guard") {
    // 4-01's panel on a landing: one post of 2 in more, 72 in clear between it and the flight's.
    Values values = stair("7 in", "11 in");
    test::set(values, "upper_landing", "76 in");
    test::set(values, "landing_height", "42 in");
    test::set(values, "margin", "0 in");
    const auto both = made("guard-stair", values);
    CHECK(near(test::figure(both, "clear gap, level, upper landing"), 3.796875, 1e-9));
    CHECK(part(both, "upper-picket").count == 15);
    CHECK(part(both, "upper-post").count == 1);
    CHECK(near(part(both, "upper-post").length, 42.0, 1e-9));
    CHECK(near(part(both, "upper-top-rail").length, 72.0, 1e-9));
    CHECK(cut(part(both, "upper-picket")).start_mitre == Angle{});
    CHECK(test::rule(both, "irc-opening").limit == inches(4.0));
    CHECK(test::rule(both, "irc-guard-height").held == Held::meets);
    // The flight itself is what it is without a landing.
    Values alone = stair("7 in", "11 in");
    test::set(alone, "margin", "0 in");
    const auto flight = made("guard-stair", alone);
    for (const assembly::RolePart& one : flight.parts) {
        CHECK(part(both, one.role).length == one.part.length);
        CHECK(part(both, one.role).count == one.part.count);
    }
    CHECK(both.parts.size() == flight.parts.size() + 4);
    // 42 in on the landing, 36 in on the flight: somebody has to be told of the post between.
    CHECK(both.cautions.front().find("share a post") != std::string::npos);
    test::set(values, "landing_height", "");
    CHECK(made("guard-stair", values).cautions.front().find("share a post") == std::string::npos);
    test::set(values, "upper_landing", "3 in");
    CHECK(test::refused("guard-stair", values).field == "upper_landing");
    test::set(alone, "landing_height", "42 in");
    CHECK(test::refused("guard-stair", alone).field == "landing_height");
}

TEST_CASE("4-20 and ADA's extensions: a handrail up a 7/11 flight of ten treads") {
    Values values{{"rule", "ada"},
                  {"riser", "7 in"},
                  {"tread", "11 in"},
                  {"run", "110 in"},
                  {"height", "36 in"},
                  {"pipe", "pipe 1.9 x 0.145 in"},
                  {"wall_clear", "1-1/2 in"},
                  {"grade", "A53-B"}};
    const auto rail = made("handrail", values);
    CHECK(test::rule(rail, "ada-round-grip").held == Held::meets); // NPS 1-1/2, 4-20
    CHECK(test::rule(rail, "ada-wall-clearance").held == Held::meets);
    CHECK(test::rule(rail, "ada-extension").held == Held::meets);
    // (110 + 11) in over a slope of 7 in 11, by hand: 121 sqrt(170) / 11 = 143.4225
    CHECK(near(test::figure(rail, "axis along the slope"), 143.4225, 0.0001));
    // The knuckle's long point: 0.95 tan(32.471 / 2 deg) = 0.2767
    CHECK(near(part(rail, "rail").length, 143.4225 + 0.2767, 0.0002));
    CHECK(near(part(rail, "top-extension").length, 12.0 + 0.2767, 0.0001));
    CHECK(rail.parts.size() == 2);
    test::set(values, "ends", "returned");
    const auto returned = made("handrail", values);
    CHECK(part(returned, "return").count == 2);
    CHECK(near(part(returned, "return").length, 3.4, 1e-9));
    CHECK(near(part(returned, "top-extension").length, 12.95 + 0.2767, 0.0001));
    Values bare = values;
    test::set(bare, "top_extension", "0 in");
    const auto level_less = made("handrail", bare);
    CHECK(near(part(level_less, "rail").length, 143.4225 + 2 * 0.95, 0.0001));
    CHECK(part(level_less, "rail").note.find("knuckle") == std::string::npos);
    CHECK(test::rule(level_less, "ada-extension").held == Held::breaks);
    test::set(values, "pipe", "pipe 2.375 x 0.154 in"); // NPS 2, 4-20
    test::set(values, "top_extension", "11 in");
    test::set(values, "bottom_extension", "10 in");
    const auto broken = made("handrail", values);
    for (const char* rule : {"ada-round-grip", "ada-extension", "one-tread-on"})
        CHECK(test::worst_of(broken, rule) == Held::breaks);
    test::set(values, "rule", "osha"); // OSHA's room for fingers is 2-1/4 in, and no extension
    const auto osha = made("handrail", values);
    CHECK(test::rule(osha, "osha-finger-room").held == Held::breaks);
    test::set(values, "pipe", "flat 2 x 1/4 in");
    CHECK(test::refused("handrail", values).field == "pipe");
}

TEST_CASE("4-04 in metric: 2400 mm, pickets of 16 mm, 100 mm: 20 pickets, 99.048 mm") {
    Values values = panel("2500 mm", "square 16 mm", "3 m");
    test::set(values, "rule", "uk");
    test::set(values, "height", "1100 mm");
    test::set(values, "post", "square 50 mm");
    test::set(values, "margin", "0 mm");
    const auto guard = made("guard-run", values, UnitSystem::metric);
    CHECK(part(guard, "picket").count == 20);
    CHECK(std::abs(to_millimetres(test::figure(guard, "clear gap, level")) - 99.048) <= 0.0005);
}

TEST_CASE("4-08: a run of 30 ft with posts at most 8 ft apart: 4 panels of 87.5 in, 5 posts") {
    const auto guard = made("guard-run", panel("30 ft", "square 3/4 in", "8 ft"));
    CHECK(part(guard, "post").count == 5);
    CHECK(part(guard, "top-rail").count == 4);
    CHECK(near(test::figure(guard, "clear between posts, level"), 87.5, 1e-9));
    CHECK(near(part(guard, "top-rail").length, 87.5, 1e-9));
}

TEST_CASE("4-19: uprights of 2 in in a clear 80 in under OSHA's 19 in: 3, gap 18.5 in") {
    Values values = panel("84 in", "square 2 in", "10 ft");
    test::set(values, "rule", "osha");
    test::set(values, "margin", "0 in");
    const auto guard = made("guard-run", values);
    CHECK(part(guard, "picket").count == 3);
    CHECK(near(test::figure(guard, "clear gap, level"), 18.5, 1e-9));
    CHECK(test::rule(guard, "osha-opening").held == Held::meets);
}

TEST_CASE("4-17 and 4-18: OSHA's top edge and mid rail") {
    Values values = panel("84 in", "square 3/4 in", "10 ft");
    test::set(values, "rule", "osha");
    test::set(values, "fill", "midrail");
    CHECK(near(test::worked(made("guard-run", values), "guard-midrail"), 21.0, 1e-9));
    struct Row {
        const char* height;
        Held worst;
    };
    // refuse / ok / ok / ok with note
    for (const Row& row : {Row{"38-1/2 in", Held::breaks},
                           Row{"39 in", Held::meets},
                           Row{"45 in", Held::meets},
                           Row{"46 in", Held::at_limit}}) {
        CAPTURE(row.height);
        test::set(values, "height", row.height);
        Held worst = Held::meets;
        for (const auto& line : made("guard-run", values).rules)
            if (line.rule == "osha-top-edge")
                worst = std::max(worst, line.held);
        CHECK(worst == row.worst);
    }
}

TEST_CASE("the worked stair of 4.5: riser 7-1/2, tread 10-1/2, 70 in along the rail") {
    Values values = stair("7-1/2 in", "10-1/2 in");
    // Rails 26 in apart square to the slope, so upright (26 + 3/4) / cos A, cos A from the sides
    // of the step's own triangle.
    const double level = 10.5 / std::hypot(7.5, 10.5);
    test::set(values, "height", std::to_string(26.75 / level) + " in");
    test::set(values, "joint", "punched");
    test::set(values, "margin", "1/2 in"); // 4-3/8 of the open side less this: the worked 3-7/8
    const auto guard = made("guard-stair", values);
    for (const auto& figure : guard.figures)
        if (figure.words == "slope")
            CHECK(std::get<Angle>(figure.value).in_degrees() ==
                  doctest::Approx(35.538).epsilon(2e-5));
    CHECK(part(guard, "picket").count == 12);
    CHECK(near(test::figure(guard, "clear gap, level"), 3.6893, 0.00005));
    CHECK(near(test::figure(guard, "pitch of pickets along the rail"), 5.4555, 0.00005));
    CHECK(near(test::worked(guard, "rake-picket-length"), 31.951, 0.0005));
    CHECK(near(test::worked(guard, "rake-bevel"), 0.5357, 0.00005));
    CHECK(near(test::worked(guard, "rake-blank"), 32.487, 0.0005));
    CHECK(near(test::rule(guard, "irc-stair-triangle").value, 5.097, 0.0005));
    CHECK(test::rule(guard, "irc-stair-triangle").held == Held::meets);
    test::set(values, "joint", "welded");
    CHECK(near(part(made("guard-stair", values), "picket").length, 32.487, 0.0005));
}

TEST_CASE("4-09 to 4-15: the 7/11 and the 7-3/4 by 10 stair") {
    Values values = stair("7 in", "11 in");
    const auto guard = made("guard-stair", values);
    for (const auto& figure : guard.figures)
        if (figure.words == "slope")
            CHECK(std::get<Angle>(figure.value).in_degrees() ==
                  doctest::Approx(32.471).epsilon(2e-5));
    CHECK(near(test::worked(guard, "rake-bevel"), 0.4773, 0.0005));
    CHECK(near(test::rule(guard, "irc-stair-triangle").value, 4.9616, 0.0005));
    // 1.4650 in over the nosing line is the most for 6 in: a hair under it passes, over it not.
    test::set(values, "bottom_gap", "1.464 in");
    CHECK(test::rule(made("guard-stair", values), "irc-stair-triangle").held == Held::meets);
    test::set(values, "bottom_gap", "1.466 in");
    CHECK(test::rule(made("guard-stair", values), "irc-stair-triangle").held == Held::breaks);
    Values steep = stair("7-3/4 in", "10 in");
    CHECK(near(test::rule(made("guard-stair", steep), "irc-stair-triangle").value, 5.0984, 0.0005));
    test::set(steep, "bottom_gap", "1.370 in");
    CHECK(test::rule(made("guard-stair", steep), "irc-stair-triangle").held == Held::meets);
    test::set(steep, "bottom_gap", "1.371 in");
    CHECK(test::rule(made("guard-stair", steep), "irc-stair-triangle").held == Held::breaks);
}

TEST_CASE("4-10, 4-12 and 4-21: along the rail, between the rails, a ramp of 1 in 12") {
    const auto stairs = assembly::rake_of({inches(7), inches(11)});
    REQUIRE(stairs.ok());
    CHECK(near(stairs->along(inches(3.75)), 4.4449, 0.0005));
    CHECK(near(stairs->upright(inches(28)), 33.189, 0.001));
    const auto ramp = assembly::rake_of({inches(1), inches(12)});
    REQUIRE(ramp.ok());
    CHECK(ramp->angle.in_degrees() == doctest::Approx(4.764).epsilon(1e-4));
    CHECK(near(ramp->along(inches(96)), 96.333, 0.001));
}

TEST_CASE("4-10, 4-12 and 4-21 again, as a flight and a ramp have them") {
    // 48.75 in clear takes 10 pickets of 3/4 in with gaps of 3-3/4 in: the first gap along the
    // rail.
    Values values = stair("7 in", "11 in");
    test::set(values, "run", "52-3/4 in");
    test::set(values, "margin", "1/2 in");
    const double level = 11.0 / std::hypot(7.0, 11.0);
    test::set(values, "height", std::to_string(28.75 / level) + " in");
    const auto flight = made("guard-stair", values);
    CHECK(near(test::figure(flight, "clear gap, level"), 3.75, 1e-9));
    CHECK(near(flight.marks[0].places[0], 4.4449, 0.0005));
    CHECK(near(test::worked(flight, "rake-picket-length"), 33.189, 0.001));
    Values ramp = stair("1 in", "12 in");
    test::set(ramp, "run", "96 in");
    test::set(ramp, "cap", "flat 2 x 3/8 in");
    const auto sloped = made("guard-stair", ramp);
    CHECK(near(part(sloped, "cap").length, 96.333, 0.001));
    for (const auto& figure : sloped.figures)
        if (figure.words == "slope")
            CHECK(std::get<Angle>(figure.value).in_degrees() ==
                  doctest::Approx(4.764).epsilon(1e-4));
}

TEST_CASE("raked-rail: a square-ended bar stands between its posts and touches both") {
    // 3-4-5 slope, bar 1 in deep, posts 10 in apart: 10 x 5/4 - 1 x 3/4 = 11.75 in.
    const auto rake = assembly::rake_of({inches(3), inches(4)});
    REQUIRE(rake.ok());
    CHECK(near(*assembly::raked_rail(inches(10), inches(1), *rake), 11.75, 1e-9));
    // Its width as it leans: 11.75 x 4/5 + 1 x 3/5 = 10.
    const auto working = assembly::raked_rail_working(inches(10), inches(1), *rake);
    REQUIRE(working.ok());
    CHECK(std::string(working->card->id) == "raked-rail");
    CHECK(assembly::raked_rail(inches(0.5), inches(1), *rake).refusal().field == "spacing");
    CHECK(near(assembly::lost_by_square_ends(inches(1), *rake), 0.75, 1e-9));
}

TEST_CASE("4-22: a stepped fence, 94 in panels on 8 %: step 7.52 in, too much under it") {
    const Values values{{"rule", "common"},
                        {"run", "98 in"},
                        {"height", "6 ft"},
                        {"bottom_gap", "2 in"},
                        {"spacing", "10 ft"},
                        {"post", "square 2 in"},
                        {"rail", "tube 1-1/2 x 1/8 in"},
                        {"picket", "square 3/4 in"},
                        {"slope", "8 %"},
                        {"manner", "stepped"},
                        {"grade", "A36"}};
    const auto fence = made("fence-run", values);
    CHECK(near(test::figure(fence, "step from panel to panel"), 7.52, 1e-9));
    CHECK(near(test::worked(fence, "rake-step"), 7.52, 1e-9));
    CHECK(test::rule(fence, "fence-bottom-gap").held == Held::breaks);
    CHECK(part(fence, "picket").count == 20); // as the level panel of 4.5
}

TEST_CASE("a rail of pipe goes round corners: one post at each, the rails mitred") {
    // 8 ft and 12 ft with posts at most 4 ft apart: 2 and 3 panels, 6 posts in all.
    Values values{{"rule", "osha"},
                  {"run", "8 ft"},
                  {"run_2", "12 ft"},
                  {"height", "42 in"},
                  {"spacing", "4 ft"},
                  {"pipe", "pipe 1.9 x 0.145 in"},
                  {"grade", "A53-B"}};
    const auto rail = made("pipe-rail", values);
    CHECK(part(rail, "post").count == 6);
    CHECK(near(part(rail, "top-rail").length, 96.0, 1e-9));
    CHECK(near(part(rail, "top-rail-2").length, 144.0, 1e-9));
    CHECK(part(rail, "top-rail-2").note.find("mitred 45 deg at the corner") != std::string::npos);
    CHECK(part(rail, "mid-rail").count == 2);
    CHECK(part(rail, "mid-rail-2").count == 3);
    // (96 - 3 x 1.9) / 2 and (144 - 4 x 1.9) / 3
    CHECK(near(test::figure(rail, "clear between posts, side 1"), 45.15, 1e-9));
    CHECK(near(test::figure(rail, "clear between posts, side 2"), 136.4 / 3.0, 1e-9));
    test::set(values, "run_2", "");
    CHECK(made("pipe-rail", values).parts.size() == 3);
    test::set(values, "run_3", "8 ft");
    CHECK(test::refused("pipe-rail", values).field == "run_3");
}

TEST_CASE("4-20: pipe 1-1/2 fits a hand, pipe 2 does not") {
    Values values{{"rule", "osha"},
                  {"run", "12 ft"},
                  {"height", "42 in"},
                  {"spacing", "6 ft"},
                  {"pipe", "pipe 1.9 x 0.145 in"},
                  {"handrail", "yes"},
                  {"grade", "A53-B"}};
    for (const auto& [pipe, held] :
         {std::pair{"pipe 1.9 x 0.145 in", Held::meets}, {"pipe 2.375 x 0.154 in", Held::breaks}}) {
        test::set(values, "pipe", pipe);
        Held worst = Held::meets;
        for (const auto& line : made("pipe-rail", values).rules)
            if (line.rule == "ada-round-grip")
                worst = std::max(worst, line.held);
        CHECK(worst == held);
    }
}
