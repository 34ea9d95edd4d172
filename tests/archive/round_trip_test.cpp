// What is written reads back the same: read_job.cpp, read_shapes.cpp, read_shop.cpp, write.cpp,
// write_shop.cpp, words.h.

#include "archive/archive.h"
#include "archive/demo_files.h"

#include <doctest/doctest.h>

using namespace treadle;
using archive_test::demo;

namespace {

archive::File read(const std::string& bytes) {
    auto file = archive::read_file(bytes);
    if (!file.ok())
        FAIL(file.refusal().field << ": " << file.refusal().reason);
    return std::move(file).value();
}

std::string written(const archive::File& file) { return archive::write_file(file.job, file.shop); }

/// A part that says everything a part can say, and a shop that says everything a shop can.
archive::File full_file() {
    archive::File file = read(demo("demo-inch.json"));
    job::Part part = *file.job.parts.front();
    part.id = "full";
    part.note = "umlaut \xC3\xA4, fraction \xC2\xBD, quote \" and backslash \\, two\nlines";
    part.certified_tensile = megapascals(512.3);
    part.grain = material::Grain::along;
    part.length = millimetres(1.0 / 3.0);
    job::Punch punch;
    punch.hole = {geometry::HoleShape::obround, millimetres(7.77), inches(1.0 / 3.0)};
    punch.turned = true;
    punch.at = {inches(0.1), millimetres(1e-3), 3, 2, inches(1.0 / 64.0), inches(7.0)};
    part.operations.emplace_back(punch);
    file.job.parts.push_back(std::make_shared<const job::Part>(part));

    Grade grade;
    grade.id = "own";
    grade.name = "Own plate";
    grade.standard = "certificate 12";
    grade.family = material::Family::stainless_steel;
    grade.bands = {{inches(0.5), ksi(50.0), ksi(70.0), ksi(90.0)},
                   {inches(2.0), ksi(45.0), ksi(65.0), ksi(90.0)}};
    grade.shear_ratio = 0.77;
    grade.elongation_pct = 33.3;
    grade.density = quantity::kilograms_per_cubic_metre(7930.0);
    grade.modulus = megapascals(193000.0);
    grade.bend_group = "A6-B";
    grade.air_bend_share = 0.2;
    grade.refusal = {false, true, "it cracks"};
    grade.source = "own";
    grade.evidence = base::Evidence::invented;
    grade.note = "a note";
    file.job.own_grades.push_back(grade);

    file.shop.rules.saw_kerf = inches(1.0 / 3.0);
    file.shop.rules.end_trim = Length{};
    file.shop.rules.keep_drop = millimetres(300.1);
    file.shop.machine.stations[1].slug_loss = inches(0.77);
    equipment::StockBar rest = file.shop.rack.front();
    rest.count = 1;
    rest.price = 1.0 / 3.0;
    rest.drop = true;
    file.shop.rack.push_back(rest);
    rest.count.reset();
    rest.price.reset();
    rest.drop = false;
    file.shop.rack.push_back(rest);

    equipment::Machine second = file.shop.machine;
    second.name = "Second";
    second.stations[0].throat.reset();
    second.stations[0].force = us_tons(100.0 / 7.0);
    file.shop.other_machines.push_back(second);
    file.shop.machine.stations[0].base = material::RatingBase{ksi(61.7)};
    file.shop.machine.attachments[0].base = material::RatingBase{megapascals(412.9)};
    file.shop.crib.punches.push_back({{geometry::HoleShape::perimeter, inches(7.0 / 3.0), {}}, 2});
    file.shop.rules.blank_k = 0.4421;
    file.shop.rules.lift_limit = quantity::pounds(100.0 / 3.0);
    file.shop.rules.support_length = inches(111.1);
    file.shop.crib.punches[0].strokes_since_grind = 0;
    file.shop.crib.punches[0].regrind_after = 4321;
    file.shop.crib.dies[1].strokes_since_grind = 1234;
    file.shop.crib.saddle_dies[0].strokes_since_grind = 77;
    file.shop.crib.saddle_dies[0].regrind_after = 99;
    file.shop.rules.regrind_after = 3000;
    file.shop.rules.batch_pieces = 24;
    file.shop.rules.batch_mass = quantity::kilograms(1000.0 / 7.0);
    file.shop.rules.check_every = 10;
    file.shop.rules.marking = "stamp, \"near\" the datum end";
    equipment::WorkTimes& times = file.shop.rules.times;
    times.invented = false;
    times.new_station = quantity::seconds(700.7);
    times.new_tool = quantity::seconds(0.0);
    times.stroke = quantity::seconds(10.0 / 3.0);
    times.position.reset();
    times.handling = {{quantity::kilograms(1.0 / 7.0), quantity::seconds(1.5)}};
    times.labour_per_hour = 61.25;
    equipment::PowerSupply& supply = file.shop.supply;
    supply.motor = quantity::watts(1234.5678901234567);
    supply.voltage = quantity::volts(400.0 / 3.0);
    supply.phases = 3;
    supply.code = "G";
    supply.cord = "8 AWG";
    supply.cord_length = quantity::feet(33.3);
    supply.generator = quantity::kilovolt_amperes(10.0 / 3.0);
    return file;
}

} // namespace

TEST_CASE("a job that is written, read and written again has the same bytes") {
    for (const char* name : {"demo-inch.json", "demo-metric.json"}) {
        CAPTURE(name);
        const std::string once = written(read(demo(name)));
        CHECK(written(read(once)) == once);
        CHECK(once.back() == '\n');
    }
    const std::string full = written(full_file());
    CHECK(written(read(full)) == full);
}

TEST_CASE("every value of a part comes back as it was") {
    const archive::File before = full_file();
    const archive::File after = read(written(before));
    REQUIRE(after.job.parts.size() == before.job.parts.size());
    const job::Part& was = *before.job.parts.back();
    const job::Part& is = *after.job.parts.back();
    CHECK(is.id == was.id);
    CHECK(is.mark == was.mark);
    CHECK(is.note == was.note);
    CHECK(is.grade == was.grade);
    CHECK(is.section.width == was.section.width);
    CHECK(is.section.thickness == was.section.thickness);
    CHECK(is.length == was.length);
    CHECK(is.count == was.count);
    CHECK(is.grain == was.grain);
    CHECK(is.certified_tensile == was.certified_tensile);
    REQUIRE(is.operations.size() == was.operations.size());
    const auto& punch = std::get<job::Punch>(is.operations.back());
    const auto& sent = std::get<job::Punch>(was.operations.back());
    CHECK(punch.hole.shape == sent.hole.shape);
    CHECK(punch.hole.size == sent.hole.size);
    CHECK(punch.hole.size2 == sent.hole.size2);
    CHECK(punch.turned);
    CHECK(punch.at.x == sent.at.x);
    CHECK(punch.at.y == sent.at.y);
    CHECK(punch.at.columns == 3);
    CHECK(punch.at.rows == 2);
    CHECK(punch.at.column_pitch == sent.at.column_pitch);
    CHECK(punch.at.row_pitch == sent.at.row_pitch);
}

TEST_CASE("what the shop says of times, limits and power comes back as it was") {
    const equipment::Shop was = full_file().shop;
    const equipment::Shop is = read(written(full_file())).shop;
    CHECK(is.rules.lift_limit == was.rules.lift_limit);
    CHECK(is.rules.support_length == was.rules.support_length);
    CHECK(is.rules.times.stroke == was.rules.times.stroke);
    CHECK(is.rules.times.new_tool == Duration{});
    CHECK_FALSE(is.rules.times.position.has_value());
    REQUIRE(is.rules.times.handling.size() == 1);
    CHECK(is.rules.times.handling[0].up_to == was.rules.times.handling[0].up_to);
    CHECK(is.rules.times.labour_per_hour == was.rules.times.labour_per_hour);
    CHECK(is.supply.motor == was.supply.motor);
    CHECK(is.supply.voltage == was.supply.voltage);
    CHECK(is.supply.phases == 3);
    CHECK(is.supply.code == "G");
    CHECK(is.supply.cord == "8 AWG");
    CHECK(is.supply.cord_length == was.supply.cord_length);
    CHECK(is.supply.generator == was.supply.generator);
    const auto demo_motor = read(written(read(demo("demo-inch.json")))).shop.supply.motor;
    CHECK(demo_motor == quantity::horsepower(3.0));
}

TEST_CASE("bars, their prices and what cuts take come back as they were") {
    const equipment::Shop was = full_file().shop;
    const equipment::Shop is = read(written(full_file())).shop;
    CHECK(is.rules.saw_kerf == was.rules.saw_kerf);
    CHECK(is.rules.end_trim == Length{});
    CHECK(is.rules.keep_drop == was.rules.keep_drop);
    CHECK(is.machine.stations[1].slug_loss == was.machine.stations[1].slug_loss);
    CHECK_FALSE(is.machine.stations[0].slug_loss.has_value());
    REQUIRE(is.rack.size() == was.rack.size());
    for (std::size_t i = 0; i < is.rack.size(); ++i) {
        CHECK(is.rack[i].length == was.rack[i].length);
        CHECK(is.rack[i].count == was.rack[i].count);
        CHECK(is.rack[i].price == was.rack[i].price);
        CHECK(is.rack[i].drop == was.rack[i].drop);
    }
    CHECK_FALSE(is.rack.back().count.has_value());
}

TEST_CASE("a user's own grade comes back as it was") {
    const archive::File before = full_file();
    const archive::File after = read(written(before));
    REQUIRE(after.job.own_grades.size() == 1);
    const Grade& was = before.job.own_grades[0];
    const Grade& is = after.job.own_grades[0];
    CHECK(is.family == was.family);
    REQUIRE(is.bands.size() == 2);
    CHECK(is.bands[1].up_to == was.bands[1].up_to);
    CHECK(is.bands[1].yield_minimum == was.bands[1].yield_minimum);
    CHECK(is.bands[1].tensile_minimum == was.bands[1].tensile_minimum);
    CHECK(is.bands[0].tensile_upper == was.bands[0].tensile_upper);
    CHECK(is.shear_ratio == was.shear_ratio);
    CHECK(is.elongation_pct == was.elongation_pct);
    CHECK(is.density == was.density);
    CHECK(is.modulus == was.modulus);
    CHECK(is.air_bend_share == was.air_bend_share);
    CHECK(is.refusal.bending);
    CHECK_FALSE(is.refusal.cutting);
    CHECK(is.refusal.reason == was.refusal.reason);
    CHECK(is.evidence == was.evidence);
}

TEST_CASE("what a shop does not know stays unknown, what it knows stays exact") {
    const archive::File before = full_file();
    const archive::File after = read(written(before));
    const auto& was = before.shop.machine;
    const auto& is = after.shop.machine;
    REQUIRE(is.stations.size() == was.stations.size());
    for (std::size_t i = 0; i < is.stations.size(); ++i) {
        CAPTURE(i);
        CHECK(is.stations[i].kind == was.stations[i].kind);
        CHECK(is.stations[i].force == was.stations[i].force);
        CHECK(is.stations[i].throat == was.stations[i].throat);
        CHECK(is.stations[i].largest_mitre == was.stations[i].largest_mitre);
        CHECK(is.stations[i].base.has_value() == was.stations[i].base.has_value());
        CHECK(is.stations[i].excludes == was.stations[i].excludes);
        CHECK(is.stations[i].holders.size() == was.stations[i].holders.size());
        CHECK(is.stations[i].rated.size() == was.stations[i].rated.size());
    }
    CHECK(is.stations[0].base->value == was.stations[0].base->value);
    CHECK_FALSE(is.stations[1].force.has_value());
    CHECK(is.attachments[0].base->value == was.attachments[0].base->value);
    REQUIRE(after.shop.other_machines.size() == before.shop.other_machines.size());
    for (std::size_t i = 0; i < after.shop.other_machines.size(); ++i) {
        CHECK(after.shop.other_machines[i].name == before.shop.other_machines[i].name);
        CHECK(after.shop.other_machines[i].attachments.size() ==
              before.shop.other_machines[i].attachments.size());
    }
    const equipment::Machine& second = after.shop.other_machines.back();
    CHECK(second.stations[0].force == us_tons(100.0 / 7.0));
    CHECK_FALSE(second.stations[0].throat.has_value());
    CHECK(after.shop.rules.blank_k == before.shop.rules.blank_k);
    const equipment::PunchTool& odd = after.shop.crib.punches.back();
    CHECK(odd.hole.shape == geometry::HoleShape::perimeter);
    CHECK(odd.hole.size == inches(7.0 / 3.0));
    CHECK(odd.count == 2);
    CHECK(after.shop.crib.vees.size() == before.shop.crib.vees.size());
    CHECK(after.shop.rack.size() == before.shop.rack.size());
}

TEST_CASE("inch and metric names of one length are the same length") {
    const std::string inch = demo("demo-inch.json");
    const auto a = read(inch);
    const auto b =
        read(archive_test::replaced(inch, "\"length\": \"9-1/2 in\"", "\"length\": \"241.3 mm\""));
    for (std::size_t i = 0; i < a.job.parts.size(); ++i)
        CHECK(std::abs(quantity::to_millimetres(a.job.parts[i]->length - b.job.parts[i]->length)) <
              1e-9);
}

TEST_CASE("a job without a shop is a job with nothing known") {
    const auto file =
        read(R"({"format": "treadle-job", "version": 1, "units": "inch", "parts": []})");
    CHECK(file.job.parts.empty());
    CHECK(file.shop.machine.stations.empty());
    CHECK(file.job.style.denominator == 16);
}
