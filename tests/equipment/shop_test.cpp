// A shop is checked and its places are called by their words: shop.cpp, kind_words.cpp.

#include "equipment/shop.h"

#include <doctest/doctest.h>

#include <limits>
#include <set>
#include <string>

using namespace treadle;
using namespace treadle::equipment;

namespace {

const double k_nan = std::numeric_limits<double>::quiet_NaN();

/// Invented; every list holds something, so that each can be broken.
Shop sound_shop() {
    Shop shop;
    shop.name = "Test shop";
    Station punch;
    punch.id = "punch";
    punch.force = us_tons(40.0);
    punch.base = material::RatingBase{ksi(65.0)};
    punch.throat = inches(8.0);
    punch.holders = {{"standard", inches(1.25), true}};
    punch.excludes = {"shear"};
    Station shear;
    shear.id = "shear";
    shear.kind = StationKind::flat_shear;
    shear.rated = {{inches(0.5), inches(8.0), Length{}, Length{}}};
    shear.largest_mitre = degrees(45.0);
    Station bars;
    bars.id = "bars";
    bars.kind = StationKind::bar_shear;
    bars.rated = {{Length{}, Length{}, inches(1.0), Length{}}};
    shop.machine.stations = {punch, shear, bars};
    Attachment brake;
    brake.id = "brake";
    brake.stations = {"punch"};
    brake.force = us_tons(30.0);
    brake.length = inches(12.0);
    shop.machine.attachments = {brake};
    const geometry::HoleOutline hole{geometry::HoleShape::round, inches(0.5), Length{}};
    shop.crib.punches = {{hole, 2}};
    shop.crib.dies = {{hole, 1}};
    shop.crib.vees = {{inches(2.0), inches(12.0), 1}};
    shop.crib.brake_punches = {{inches(0.0625), inches(12.0), 1}};
    shop.crib.saddle_dies = {{inches(1.66), inches(1.66), inches(0.14)}};
    StockBar bar;
    bar.section.shape = section::Shape::flat;
    bar.section.width = inches(6.0);
    bar.section.thickness = inches(0.375);
    bar.grade = "A36";
    bar.length = inches(240.0);
    shop.rack = {bar};
    return shop;
}

template <class Change>
std::string fault(Change change) {
    Shop shop = sound_shop();
    change(shop);
    const auto result = checked(std::move(shop));
    if (result.ok())
        return "none";
    CHECK_FALSE(result.refusal().reason.empty());
    return result.refusal().field;
}

Station& station(Shop& shop, std::size_t i) { return shop.machine.stations[i]; }
Attachment& brake(Shop& shop) { return shop.machine.attachments[0]; }

} // namespace

TEST_CASE("a sound shop passes, and so does one of which nothing is known") {
    CHECK(checked(sound_shop()).ok());
    CHECK(checked(Shop{}).ok());
    CHECK(fault([](Shop& s) {
              station(s, 0).force.reset();
              station(s, 0).base.reset();
              station(s, 0).throat.reset();
          }) == "none");
}

TEST_CASE("the shop's other machines are held to the same, each with ids of its own") {
    CHECK(fault([](Shop& s) { s.other_machines = {s.machine, s.machine}; }) == "none");
    CHECK(fault([](Shop& s) {
              s.other_machines = {s.machine, s.machine};
              s.other_machines[1].attachments[0].stations = {"bench"};
          }) == "other_machines[1].attachments[0].stations[0]");
    CHECK(fault([](Shop& s) {
              s.other_machines = {s.machine};
              s.other_machines[0].attachments[0].id = s.other_machines[0].stations[0].id;
          }) == "other_machines[0].attachments[0].id");
    CHECK(fault([](Shop& s) { s.other_machines.assign(20, s.machine); }) == "none");
    CHECK(fault([](Shop& s) { s.other_machines.assign(21, s.machine); }) == "other_machines");
}

TEST_CASE("stations: sizes that are given have to be sizes") {
    for (const double bad : {0.0, -1.0, k_nan, std::numeric_limits<double>::infinity()}) {
        CAPTURE(bad);
        CHECK(fault([=](Shop& s) { station(s, 1).force = us_tons(bad); }) ==
              "machine.stations[1].force");
        CHECK(fault([=](Shop& s) { station(s, 0).throat = inches(bad); }) ==
              "machine.stations[0].throat");
        CHECK(fault([=](Shop& s) { station(s, 0).daylight = inches(bad); }) ==
              "machine.stations[0].daylight");
        CHECK(fault([=](Shop& s) { station(s, 0).stroke = inches(bad); }) ==
              "machine.stations[0].stroke");
        CHECK(fault([=](Shop& s) { station(s, 1).blade = inches(bad); }) ==
              "machine.stations[1].blade");
        CHECK(fault([=](Shop& s) { station(s, 0).base = material::RatingBase{ksi(bad)}; }) ==
              "machine.stations[0].base");
        CHECK(fault([=](Shop& s) { station(s, 0).holders[0].largest_punch = inches(bad); }) ==
              "machine.stations[0].holders[0].largest_punch");
    }
    CHECK(fault([](Shop& s) { station(s, 1).largest_mitre = degrees(90.0); }) ==
          "machine.stations[1].largest_mitre");
    CHECK(fault([](Shop& s) { station(s, 1).least_piece = inches(-1.0); }) ==
          "machine.stations[1].least_piece");
    CHECK(fault([](Shop& s) { station(s, 1).least_piece = Length{}; }) == "none");
}

TEST_CASE("a rated row needs what its station is rated in") {
    CHECK(fault([](Shop& s) { station(s, 1).rated[0].width = Length{}; }) ==
          "machine.stations[1].rated[0].width");
    CHECK(fault([](Shop& s) { station(s, 1).rated[0].thickness = Length{}; }) ==
          "machine.stations[1].rated[0].thickness");
    CHECK(fault([](Shop& s) { station(s, 2).rated[0].round = Length{}; }) ==
          "machine.stations[2].rated[0].round");
    CHECK(fault([](Shop& s) {
              station(s, 2).rated[0].round = Length{};
              station(s, 2).rated[0].square = inches(0.875);
          }) == "none");
    CHECK(fault([](Shop& s) { station(s, 1).rated[0].square = inches(-1.0); }) ==
          "machine.stations[1].rated[0].square");
}

TEST_CASE("ids are there, unique across the machine, and what is named exists") {
    CHECK(fault([](Shop& s) { station(s, 2).id.clear(); }) == "machine.stations[2].id");
    CHECK(fault([](Shop& s) { station(s, 2).id = "punch"; }) == "machine.stations[2].id");
    CHECK(fault([](Shop& s) { brake(s).id = "punch"; }) == "machine.attachments[0].id");
    CHECK(fault([](Shop& s) { brake(s).stations.emplace_back("nowhere"); }) ==
          "machine.attachments[0].stations[1]");
    CHECK(fault([](Shop& s) { station(s, 0).excludes = {"nowhere"}; }) ==
          "machine.stations[0].excludes[0]");
    CHECK(fault([](Shop& s) { station(s, 0).excludes = {"punch"}; }) ==
          "machine.stations[0].excludes[0]");
}

TEST_CASE("room for tools, slugs, thin metal and the table stay unknown or are sizes") {
    for (auto member : {&Station::flange_clearance,
                        &Station::least_thickness,
                        &Station::slug_opening,
                        &Station::table_length}) {
        CHECK(fault([&](Shop& s) { station(s, 0).*member = inches(1.0); }) == "none");
        CHECK(fault([&](Shop& s) { station(s, 0).*member = Length{}; }) != "none");
        CHECK(fault([&](Shop& s) { station(s, 0).*member = inches(-1.0); }) != "none");
    }
    CHECK(fault([](Shop& s) { brake(s).flange_clearance = inches(0.5); }) == "none");
    CHECK(fault([](Shop& s) { brake(s).flange_clearance = Length{}; }) ==
          "machine.attachments[0].flange_clearance");
    const auto wall = [](Length least) {
        return fault([&](Shop& s) { s.crib.saddle_dies[0].least_wall = least; });
    };
    CHECK(wall(inches(0.14)) == "none"); // as thick as the thickest
    CHECK(wall(inches(0.141)) == "crib.saddle_dies[0].least_wall");
    CHECK(wall(Length{}) == "crib.saddle_dies[0].least_wall");
}

TEST_CASE("attachments, tools and stock are checked with their path") {
    CHECK(fault([](Shop& s) { brake(s).force = us_tons(0.0); }) == "machine.attachments[0].force");
    CHECK(fault([](Shop& s) { brake(s).length = Length{}; }) == "machine.attachments[0].length");
    CHECK(fault([](Shop& s) { brake(s).vee_included = degrees(0.0); }) ==
          "machine.attachments[0].vee_included");
    CHECK(fault([](Shop& s) { brake(s).vee_included = degrees(180.0); }) ==
          "machine.attachments[0].vee_included");
    CHECK(fault([](Shop& s) { s.machine.operators = 0; }) == "machine.operators");
    CHECK(fault([](Shop& s) { s.crib.punches[0].hole.size = Length{}; }) ==
          "crib.punches[0].hole.size");
    CHECK(fault([](Shop& s) { s.crib.punches[0].count = 0; }) == "crib.punches[0].count");
    CHECK(fault([](Shop& s) { s.crib.dies[0].hole.size = quantity::metres(100.0); }) ==
          "crib.dies[0].hole.size");
    CHECK(fault([](Shop& s) { s.crib.vees[0].opening = Length{}; }) == "crib.vees[0].opening");
    CHECK(fault([](Shop& s) { s.crib.brake_punches[0].length = Length{}; }) ==
          "crib.brake_punches[0].length");
    CHECK(fault([](Shop& s) { s.crib.saddle_dies[0].largest_wall = Length{}; }) ==
          "crib.saddle_dies[0].largest_wall");
    CHECK(fault([](Shop& s) { s.rack[0].section.width = Length{}; }) == "rack[0].section.width");
    CHECK(fault([](Shop& s) { s.rack[0].length = inches(k_nan); }) == "rack[0].length");
    CHECK(fault([](Shop& s) { s.rack[0].grade.clear(); }) == "rack[0].grade");
    CHECK(fault([](Shop& s) { s.rack[0].count = 0; }) == "rack[0].count");
    CHECK(fault([](Shop& s) { s.rack[0].price = 0.0; }) == "rack[0].price");
    CHECK(fault([](Shop& s) { s.rack[0].price = k_nan; }) == "rack[0].price");
    CHECK(fault([](Shop& s) { s.rack[0].drop = true; }) == "rack[0].count");
    CHECK(fault([](Shop& s) { s.name = std::string(201, 'x'); }) == "name");
}

TEST_CASE("house rules keep to what is safe") {
    CHECK(fault([](Shop& s) { s.rules.least_margin = -0.1; }) == "rules.least_margin");
    CHECK(fault([](Shop& s) { s.rules.least_margin = k_nan; }) == "rules.least_margin");
    CHECK(fault([](Shop& s) { s.rules.saw_kerf = Length{}; }) == "rules.saw_kerf");
    CHECK(fault([](Shop& s) { s.rules.end_trim = -inches(1.0); }) == "rules.end_trim");
    CHECK(fault([](Shop& s) { s.rules.end_trim = Length{}; }) == "none");
    CHECK(fault([](Shop& s) { s.rules.keep_drop = Length{}; }) == "rules.keep_drop");
    CHECK(fault([](Shop& s) { station(s, 0).slug_loss = Length{}; }) ==
          "machine.stations[0].slug_loss");
    CHECK(fault([](Shop& s) { s.rules.least_margin = 0.0; }) == "none");
    CHECK(fault([](Shop& s) { s.rules.blank_k = 1.0; }) == "rules.blank_k");
    CHECK(fault([](Shop& s) { s.rules.blank_denominator = 10; }) == "rules.blank_denominator");
    CHECK(fault([](Shop& s) { s.rules.stripper_gap = inches(0.25); }) == "none");
    CHECK(fault([](Shop& s) { s.rules.stripper_gap = inches(0.26); }) == "rules.stripper_gap");
    CHECK(fault([](Shop& s) { s.rules.notch_overlap = inches(-0.1); }) == "rules.notch_overlap");
}

TEST_CASE("counts of edges, batches and checks stay unknown or are sound") {
    CHECK(fault([](Shop& s) { s.crib.punches[0].strokes_since_grind = 0; }) == "none");
    CHECK(fault([](Shop& s) { s.crib.punches[0].strokes_since_grind = -1; }) ==
          "crib.punches[0].strokes_since_grind");
    CHECK(fault([](Shop& s) { s.crib.dies[0].regrind_after = 1; }) == "none");
    CHECK(fault([](Shop& s) { s.crib.dies[0].regrind_after = 0; }) == "crib.dies[0].regrind_after");
    CHECK(fault([](Shop& s) { s.crib.saddle_dies[0].regrind_after = 100000001; }) ==
          "crib.saddle_dies[0].regrind_after");
    CHECK(fault([](Shop& s) { s.rules.regrind_after = 0; }) == "rules.regrind_after");
    CHECK(fault([](Shop& s) { s.rules.batch_pieces = 1; }) == "none");
    CHECK(fault([](Shop& s) { s.rules.batch_pieces = 0; }) == "rules.batch_pieces");
    CHECK(fault([](Shop& s) { s.rules.batch_mass = Mass{}; }) == "rules.batch_mass");
    CHECK(fault([](Shop& s) { s.rules.batch_mass = quantity::pounds(400.0); }) == "none");
    CHECK(fault([](Shop& s) { s.rules.check_every = 0; }) == "rules.check_every");
    CHECK(fault([](Shop& s) { s.rules.check_every = 1; }) == "none");
    CHECK(fault([](Shop& s) { s.rules.marking = std::string(201, 'x'); }) == "rules.marking");
}

TEST_CASE("stations are found by id and every kind has its word") {
    const Machine machine = sound_shop().machine;
    CHECK(find_station(machine, "bars") == &machine.stations[2]);
    CHECK(find_station(machine, "none") == nullptr);
    std::set<std::string> words;
    for (const StationKind kind : {StationKind::punch,
                                   StationKind::flat_shear,
                                   StationKind::angle_shear,
                                   StationKind::bar_shear,
                                   StationKind::notcher,
                                   StationKind::table})
        words.insert(station_word(kind));
    for (const AttachmentKind kind : {AttachmentKind::brake,
                                      AttachmentKind::vee_notcher,
                                      AttachmentKind::rectangular_notcher,
                                      AttachmentKind::saddle_notcher})
        words.insert(attachment_word(kind));
    CHECK(words.size() == 10);
    CHECK(words.count("") == 0);
}

TEST_CASE("sizes of the brake's tools stay unknown or are sizes") {
    Shop shop = sound_shop();
    shop.crib.vees = {{inches(1.0), inches(10.0), 1}};
    shop.crib.brake_punches = {{inches(0.125), inches(10.0), 1}};
    CHECK(checked(shop).ok());
    Shop narrow = shop; // a block is not narrower than its opening
    narrow.crib.vees[0].width = inches(0.9);
    REQUIRE_FALSE(checked(narrow).ok());
    CHECK(checked(narrow).refusal().field == "crib.vees[0].width");
    narrow.crib.vees[0].width = inches(1.0);
    CHECK(checked(narrow).ok());
    Shop flat = shop;
    flat.crib.brake_punches[0].included = degrees(0.0);
    REQUIRE_FALSE(checked(flat).ok());
    CHECK(checked(flat).refusal().field == "crib.brake_punches[0].included");
    Shop low = shop;
    low.crib.brake_punches[0].height = Length{};
    CHECK_FALSE(checked(low).ok());
    for (auto member : {&Attachment::bed_width,
                        &Attachment::ram_width,
                        &Attachment::open_height,
                        &Attachment::least_gauge}) {
        Shop none = shop;
        none.machine.attachments[0].*member = Length{};
        CHECK_FALSE(checked(none).ok());
        none.machine.attachments[0].*member = inches(3.0);
        CHECK(checked(none).ok());
    }
}
