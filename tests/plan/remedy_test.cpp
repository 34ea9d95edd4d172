// Remedies one kind at a time (remedy_changes.cpp, remedy_stock.cpp), each on a part where the
// change that is enough is known by hand.

#include <random>
#include <set>

#include "fixture.h"
#include "remedy_holds.h"

using namespace treadle;
using namespace treadle::test;
using plan::Outcome;
using plan::Remedy;
using Kind = plan::Remedy::Kind;

namespace {

struct Found {
    plan::PartPlan before;
    std::vector<Remedy> list;
};

/// Every remedy of one operation, each one tried.
Found find_for(const Bench& bench, const job::Part& part, std::size_t operation) {
    Found found{bench.plan(part), {}};
    found.list = plan::remedies(found.before, operation, bench.job, bench.shop, bench.catalog);
    CHECK(found.list.size() <= plan::k_most_remedies);
    for (const Remedy& remedy : found.list)
        check_remedy_holds(found.before, operation, remedy, bench.job, bench.shop, bench.catalog);
    return found;
}

const Remedy* first_of(const Found& found, Kind kind) {
    for (const Remedy& remedy : found.list)
        if (remedy.kind == kind)
            return &remedy;
    return nullptr;
}

const Remedy& only(const Found& found, Kind kind) {
    const Remedy* remedy = first_of(found, kind);
    REQUIRE(remedy != nullptr);
    return *remedy;
}

/// A36 is 80 ksi at most, so pi x 1.0625 x 0.5 x 0.8 x 80 = 106.8 kip against 50 ton = 100 kip:
/// fits up to 80 x 100 / 106.8 = 74.9 ksi.
job::Part heavy_hole() {
    job::Part part = plate(inches(0.5), inches(7.0), inches(10.0));
    part.operations = {one_hole(inches(1.0625), inches(2.0), inches(2.0))};
    return part;
}

Grade named(const char* id, Stress upper) {
    Grade grade = a36();
    grade.id = grade.name = id;
    grade.bands = {{inches(4.0), ksi(30.0), ksi(45.0), upper}};
    return grade;
}

job::Part bent(Length thickness, Length first, Length second) {
    job::Part part = plate(thickness, inches(2.0), inches(1.0));
    part.length = Length{};
    part.legs = {first, second};
    part.operations = {job::Bend{degrees(90.0), Length{}, true}};
    return part;
}

} // namespace

TEST_CASE("a certificate is asked for up to the limit, and the sheet is told") {
    const Bench bench;
    const Found found = find_for(bench, heavy_hole(), 0);
    REQUIRE(found.before.operations[0].outcome == Outcome::fits_up_to);
    const Remedy& read = found.list.at(0);
    CHECK(read.kind == Kind::certificate);
    CHECK(read.words == "Read the certificate: at most 74 ksi");
    CHECK(read.part.note.find("at most 74 ksi") != std::string::npos);
    CHECK(read.planned.outcome == Outcome::fits);
    job::Part above = read.part;
    above.certified_tensile = ksi(75.0);
    CHECK(bench.plan(above).outcome != Outcome::fits);
}

TEST_CASE("one certificate answers every hole of the part: the hardest decides") {
    // 1-1/8: pi x 1.125 x 0.5 x 64 = 113.1 kip, so 80 x 100 / 113.1 = 70.7 ksi.
    const Bench bench;
    job::Part part = heavy_hole();
    part.operations.emplace_back(one_hole(inches(1.125), inches(6.0), inches(4.0)));
    const Remedy read = only(find_for(bench, part, 0), Kind::certificate);
    CHECK(quantity::to_ksi(read.part.certified_tensile) == doctest::Approx(70.0));
    CHECK(bench.plan(read.part).outcome == Outcome::fits);
}

TEST_CASE("the crib's next smaller punch is offered with its own margin") {
    // pi x 0.8125 x 0.5 x 64 = 81.7 of 100 kip.
    const Bench bench;
    const Found found = find_for(bench, heavy_hole(), 0);
    const Remedy& hole = only(found, Kind::hole);
    CHECK(hole.words == "Punch 13/16 round instead of 1-1/16 round");
    CHECK(plan::remedy_result_words(hole, bench.shop, bench.job.style) == "fits, 18 % to spare");
    CHECK(hole.why.rfind("force: ", 0) == 0);
}

TEST_CASE("a hole smaller than the metal is thick gets the next larger punch") {
    const Bench bench;
    job::Part part = plate(inches(0.5), inches(7.0), inches(10.0));
    part.operations = {one_hole(inches(0.4375), inches(3.0), inches(3.0))};
    CHECK(only(find_for(bench, part, 0), Kind::hole).words ==
          "Punch 13/16 round instead of 7/16 round");
}

TEST_CASE("a punch with none left in the crib is not offered") {
    Bench bench;
    bench.shop.crib.punches[0].count = 0;
    CHECK(first_of(find_for(bench, heavy_hole(), 0), Kind::hole) == nullptr);
}

TEST_CASE("thinner stock is the next usual thickness that helps, then one that fits outright") {
    // Rated 1/2 x 8 at 65 ksi: 1/2 fits up to 65 ksi, 3/8 up to 65 x 4 / 3 = 86 ksi.
    const Bench bench;
    job::Part part = plate(inches(0.625), inches(8.0), inches(10.0));
    part.operations = {job::Cut{}};
    const Found found = find_for(bench, part, 0);
    REQUIRE(found.before.operations[0].outcome == Outcome::does_not_fit);
    std::vector<double> thick;
    for (const Remedy& remedy : found.list)
        if (remedy.kind == Kind::thickness)
            thick.push_back(quantity::to_inches(remedy.part.section.thickness));
    REQUIRE(thick.size() == 2);
    CHECK(thick[0] == doctest::Approx(0.5));
    CHECK(thick[1] == doctest::Approx(0.375));
}

TEST_CASE("a certificate does not follow the part to other stock") {
    const Bench bench;
    job::Part part = heavy_hole();
    part.certified_tensile = ksi(78.0);
    const Found found = find_for(bench, part, 0);
    CHECK(first_of(found, Kind::certificate) == nullptr);
    CHECK(only(found, Kind::thickness).part.certified_tensile == Stress{});
}

TEST_CASE("a weaker grade of the same family is offered, the strongest that is enough") {
    // 106.8 kip x 74 / 80 = 98.8 fits, x 76 / 80 = 101.5 only up to a strength.
    Bench bench;
    Grade copper = named("copper", ksi(40.0));
    copper.family = material::Family::copper_alloy;
    bench.catalog.grades.rows.insert(
        bench.catalog.grades.rows.end(),
        {named("weak", ksi(60.0)), named("enough", ksi(74.0)), copper});
    CHECK(only(find_for(bench, heavy_hole(), 0), Kind::grade).part.grade == "enough");
    bench.catalog.grades.rows.resize(1);
    bench.catalog.grades.rows.push_back(named("stronger", ksi(90.0)));
    bench.catalog.grades.rows.push_back(copper);
    CHECK(first_of(find_for(bench, heavy_hole(), 0), Kind::grade) == nullptr);
}

TEST_CASE("refused metal is only ever replaced, never cut some other way") {
    Bench bench;
    Grade wear = named("wear", ksi(200.0));
    wear.bands.clear();
    wear.refusal = {true, true, "Breaks tools."};
    bench.catalog.grades.rows.push_back(wear);
    job::Part part = plate(inches(0.25), inches(4.0), inches(6.0));
    part.grade = "wear";
    part.operations = {one_hole(inches(0.8125), inches(2.0), inches(2.0))};
    const Found found = find_for(bench, part, 0);
    REQUIRE(found.list.size() == 1);
    CHECK(found.list[0].kind == Kind::grade);
    CHECK(found.list[0].part.grade == "A36");
    bench.catalog.grades.rows[0].family = material::Family::aluminium;
    CHECK(find_for(bench, part, 0).list.empty());
}

TEST_CASE("a hole off the metal moves in until there is metal enough beside it") {
    // Half the hole and as much metal again: y = 0.8125, 9/16 from where it is.
    const Bench bench;
    job::Part part = plate(inches(0.25), inches(6.0), inches(8.0));
    part.operations = {one_hole(inches(0.8125), inches(4.0), inches(0.25))};
    const Found found = find_for(bench, part, 0);
    CHECK(only(found, Kind::place).words == "Move the hole 9/16 in away from the datum edge");
    CHECK(first_of(found, Kind::elsewhere) == nullptr); // a drill runs off the metal too
}

TEST_CASE("a hole does not move into another one") {
    // The other at y = 1.72 needs a web of 1/4: y = 1.72 + 0.8125 + 0.25 = 2.7825, so 2.8125.
    const Bench bench;
    job::Part part = plate(inches(0.25), inches(6.0), inches(8.0));
    part.operations = {one_hole(inches(0.8125), inches(4.0), inches(0.25)),
                       one_hole(inches(0.8125), inches(4.0), inches(1.72))};
    const Remedy move = only(find_for(bench, part, 0), Kind::place);
    CHECK(quantity::to_inches(std::get<job::Punch>(move.part.operations[0]).at.y) ==
          doctest::Approx(2.8125));
}

TEST_CASE("of two holes that overlap the later moves clear") {
    // 13/16 and a web of 1/4 between the centres: 1-1/16, of which 0.52 is there.
    const Bench bench;
    job::Part part = plate(inches(0.25), inches(6.0), inches(8.0));
    part.operations = {one_hole(inches(0.8125), inches(2.0), inches(3.0)),
                       one_hole(inches(0.8125), inches(2.52), inches(3.0))};
    const Found found = find_for(bench, part, 1);
    CHECK(only(found, Kind::place).words == "Move the hole 9/16 in away from the start end");
    CHECK(find_for(bench, part, 0).list.empty()); // that one fits
}

TEST_CASE("a short leg grows to the next step that bridges the V, and the blank with it") {
    const Bench bench;
    const Found found = find_for(bench, bent(inches(0.1875), inches(0.75), inches(4.0)), 0);
    REQUIRE(found.before.operations[0].outcome == Outcome::does_not_fit);
    const Remedy& longer = only(found, Kind::leg);
    CHECK(longer.new_blank);
    CHECK(longer.blank_length > found.before.blank_length);
    job::Part shorter = longer.part;
    shorter.legs[0] = shorter.legs[0] - inches(1.0 / 16.0);
    CHECK(bench.plan(shorter).operations[0].outcome == Outcome::does_not_fit);
}

TEST_CASE("two short legs grow together") {
    const Bench bench;
    const Remedy longer =
        only(find_for(bench, bent(inches(0.1875), inches(0.75), inches(0.75)), 0), Kind::leg);
    CHECK(longer.part.legs[0] == longer.part.legs[1]);
}

TEST_CASE("a bend that is too tight along the grain is laid across it") {
    // ASTM A6 X4 group B: 1.5 t across, half as much again when not known. The 2 in V makes
    // 0.16 x 2 = 0.32 in: between 1.5 x 0.1875 = 0.28 and 0.42.
    Bench bench;
    bench.shop.crib.vees.pop_back();
    job::Part part = bent(inches(0.1875), inches(3.0), inches(3.0));
    part.grain = material::Grain::unknown;
    const Found found = find_for(bench, part, 0);
    REQUIRE(found.before.operations[0].outcome == Outcome::does_not_fit);
    CHECK(only(found, Kind::grain).part.grain == material::Grain::across);
}

TEST_CASE("a mitre steeper than the shear is cut square, and the sheet says to saw it") {
    const Bench bench;
    job::Part part = plate(inches(0.25), inches(4.0), inches(10.0));
    part.note = "Left hand";
    job::Cut cut;
    cut.finish_mitre = degrees(40.0); // the shear goes to 30
    part.operations = {cut};
    const Found found = find_for(bench, part, 0);
    const Remedy& square = only(found, Kind::square_cut);
    CHECK(square.words == "Cut square, saw the mitre");
    CHECK(square.part.note == "Left hand. Saw the mitre: 40 deg at the finish");
    CHECK(square.planned.outcome == Outcome::fits);
}

TEST_CASE("what leaves the machine stands in the note with its places") {
    const Bench bench;
    job::Part part = heavy_hole();
    auto& punch = std::get<job::Punch>(part.operations[0]);
    punch.at.columns = 2;
    punch.at.column_pitch = inches(6.0);
    const Found found = find_for(bench, part, 0);
    const Remedy& drill = only(found, Kind::elsewhere);
    CHECK(drill.words == "Drill it: 1-1/16 round");
    CHECK(drill.part.note ==
          "Drill 1-1/16 round at 2 in along, 2 in from the edge, 2 along every 6 in");
    CHECK(plan::remedy_result_words(drill, bench.shop, bench.job.style) == "off this machine");
    CHECK(found.list.back().kind == Kind::elsewhere); // the largest change comes last
}

TEST_CASE("tube is sawn, a notch too deep is sawn out, a bend stays") {
    const Bench bench;
    job::Part tube = plate(inches(0.125), inches(2.0), inches(30.0));
    tube.section.shape = section::Shape::square_tube;
    tube.section.height = inches(2.0);
    tube.operations = {job::Cut{}};
    CHECK(only(find_for(bench, tube, 0), Kind::elsewhere).part.note == "Saw to 30 in");

    job::Part notched = plate(inches(0.25), inches(6.0), inches(10.0));
    job::Notch notch;
    notch.along = inches(1.5);
    notch.depth = inches(3.5); // the tool bites 3
    notched.operations = {notch};
    const Found sawn = find_for(bench, notched, 0);
    CHECK(only(sawn, Kind::elsewhere).words.rfind("Saw it out", 0) == 0);

    const Found bend = find_for(bench, bent(inches(0.1875), inches(0.75), inches(4.0)), 0);
    CHECK(first_of(bend, Kind::elsewhere) == nullptr);
}

TEST_CASE("nothing is offered where it fits or where a datum is missing") {
    Bench bench;
    job::Part part = plate(inches(0.25), inches(6.0), inches(8.0));
    part.operations = {one_hole(inches(0.8125), inches(3.0), inches(3.0)), job::Cut{}};
    CHECK(find_for(bench, part, 0).list.empty());
    CHECK(find_for(bench, part, 1).list.empty());
    bench.shop.machine.stations[0].force.reset();
    const Found unknown = find_for(bench, part, 0);
    REQUIRE(unknown.before.operations[0].outcome == Outcome::cannot_be_said);
    CHECK(unknown.list.empty());
}

TEST_CASE("the same question has the same answer, least change first") {
    const Bench bench;
    const Found once = find_for(bench, heavy_hole(), 0);
    const Found again = find_for(bench, heavy_hole(), 0);
    REQUIRE(once.list.size() == again.list.size());
    for (std::size_t i = 0; i < once.list.size(); ++i) {
        CHECK(once.list[i].words == again.list[i].words);
        if (i > 0)
            CHECK(once.list[i - 1].kind <= once.list[i].kind);
    }
}

TEST_CASE("on random parts every remedy does what it says, and there are some of most kinds") {
    std::mt19937 engine(47);
    const auto between = [&](double low, double high) {
        return inches(low + (high - low) * (static_cast<double>(engine()) / 4294967295.0));
    };
    Bench bench;
    bench.catalog.grades.rows.push_back(named("weak", ksi(60.0)));
    std::set<Kind> seen;
    for (int i = 0; i < 1500; ++i) {
        CAPTURE(i);
        job::Part part = plate(between(0.1, 0.7), between(2.0, 9.0), between(3.0, 16.0));
        part.grain = i % 2 == 0 ? material::Grain::unknown : material::Grain::across;
        job::Cut cut;
        cut.start_mitre = degrees(static_cast<double>(engine() % 3) * 20.0);
        part.operations = {cut};
        for (int hole = 0; hole < 2; ++hole)
            part.operations.emplace_back(
                one_hole(between(0.3, 1.6), between(0.5, 6.0), between(0.2, 4.0)));
        if (i % 3 == 0) {
            part.legs = {between(0.5, 6.0), between(0.5, 6.0)};
            part.operations.emplace_back(job::Bend{degrees(90.0), Length{}, true});
        }
        for (std::size_t operation = 0; operation < part.operations.size(); ++operation)
            for (const Remedy& remedy : find_for(bench, part, operation).list)
                seen.insert(remedy.kind);
    }
    CHECK(seen.size() == 9);
}
