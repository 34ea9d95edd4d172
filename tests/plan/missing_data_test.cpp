// Every optional datum of the machine is taken away in its turn: the work that needs it can then
// not be said, and the field is named. core/plan/candidates.cpp, missing_words.cpp.

#include <fstream>
#include <iterator>
#include <set>

#include "bend_bench.h"
#include "rule_limits.h"

using namespace treadle;
using namespace treadle::test;
using equipment::Attachment;
using equipment::Station;
using plan::Outcome;

namespace {

/// Which stations and attachments the bench has, by their place.
enum Place : std::size_t { k_punch = 0, k_flat, k_bar, k_angle, k_table };
enum Tool : std::size_t { k_brake = 0, k_vee, k_rectangular, k_saddle };

/// The bench with every datum that it can have.
Bench full() {
    Bench bench = with_sizes();
    for (Station& station : bench.shop.machine.stations) {
        station.least_thickness = inches(0.0625);
        station.slug_opening = inches(9.0);
        station.table_length = inches(90.0);
    }
    for (Attachment& tool : bench.shop.machine.attachments) {
        tool.flange_clearance = inches(0.75);
        if (tool.kind == equipment::AttachmentKind::brake)
            bench.shop.machine.stations[k_table].stroke.reset(); // else the station's would do
    }
    bench.shop.crib.saddle_dies[0].least_wall = inches(0.1);
    return bench;
}

using Work = std::pair<job::Part, std::vector<job::Operation>>;

Work hole() {
    return {plate(inches(0.25), inches(8.0), inches(10.0)),
            {one_hole(inches(0.8125), inches(5.0), inches(4.0))}};
}
Work hole_in_angle() {
    job::Punch punch = one_hole(inches(0.8125), inches(6.0), inches(1.75));
    punch.face = section::Face::leg_a;
    return {angle_bar(), {punch}};
}
Work cut() { return {flat_bar(0.25, 4.0, 20.0), {job::Cut{}}}; }
Work mitred() {
    job::Cut mitre;
    mitre.start_mitre = degrees(20.0);
    return {flat_bar(0.25, 4.0, 20.0), {mitre}};
}
Work angle_cut() { return {angle_bar(), {job::Cut{}}}; }
Work bar_cut() {
    job::Part part = plate(Length{}, inches(1.0), inches(20.0));
    part.section.shape = section::Shape::round;
    return {part, {job::Cut{}}};
}
Work notch() { return {plate(inches(0.25), inches(8.0), inches(20.0)), {edge_notch(9, 1, 1)}}; }
Work cope() {
    job::Notch notch = edge_notch(6.0, 1.0, 1.0);
    notch.edge = job::NotchEdge::far_edge;
    notch.face = section::Face::leg_a;
    return {angle_bar(), {notch}};
}
Work vee() {
    job::Notch notch = edge_notch(9.0, 0.0, 1.0);
    notch.shape = geometry::NotchShape::vee;
    notch.included = degrees(90.0);
    return {plate(inches(0.25), inches(8.0), inches(20.0)), {notch}};
}
Work bend() {
    job::Part part = bent({4.0, 4.0}, {true});
    return {part, {right_angle()}};
}
Work saddle() {
    job::Saddle one;
    one.run_diameter = inches(1.9);
    return {pipe_bar(0.14), {one}};
}

struct Datum {
    std::string path; ///< of what is missing afterwards
    Work work;
    std::function<void(equipment::Shop&)> clear;
};

template <class Member>
Datum of_station(std::size_t index, const char* name, Work work, Member Station::*member) {
    return {"machine.stations[" + std::to_string(index) + "]." + name,
            std::move(work),
            [=](equipment::Shop& s) { s.machine.stations[index].*member = Member{}; }};
}
template <class Member>
Datum of_attachment(std::size_t index, const char* name, Work work, Member Attachment::*member) {
    return {"machine.attachments[" + std::to_string(index) + "]." + name,
            std::move(work),
            [=](equipment::Shop& s) { s.machine.attachments[index].*member = Member{}; }};
}

/// Each with work that cannot be judged without it.
std::vector<Datum> deciding() {
    std::vector<Datum> list = {
        of_station(k_punch, "force", hole(), &Station::force),
        of_station(k_punch, "throat", hole(), &Station::throat),
        of_station(k_punch, "stroke", hole(), &Station::stroke),
        of_station(k_punch, "holders", hole(), &Station::holders),
        of_station(k_punch, "daylight", hole_in_angle(), &Station::daylight),
        of_station(k_punch, "flange_clearance", hole_in_angle(), &Station::flange_clearance),
        of_station(k_flat, "blade", cut(), &Station::blade),
        of_station(k_flat, "largest_mitre", mitred(), &Station::largest_mitre),
        of_station(k_table, "force", notch(), &Station::force),
        of_attachment(k_brake, "stroke", bend(), &Attachment::stroke),
        of_attachment(k_vee, "vee_included", vee(), &Attachment::vee_included),
        of_attachment(k_rectangular, "length", notch(), &Attachment::length),
        of_attachment(k_brake, "length", bend(), &Attachment::length),
        of_attachment(k_rectangular, "flange_clearance", cope(), &Attachment::flange_clearance),
        of_attachment(k_saddle, "base", saddle(), &Attachment::base),
        of_attachment(k_saddle, "stations", saddle(), &Attachment::stations),
        {"crib.vees", bend(), [](equipment::Shop& s) { s.crib.vees.clear(); }},
        {"crib.saddle_dies", saddle(), [](equipment::Shop& s) { s.crib.saddle_dies.clear(); }}};
    const std::pair<std::size_t, Work> shears[] = {
        {k_flat, cut()}, {k_angle, angle_cut()}, {k_bar, bar_cut()}};
    for (const auto& [index, work] : shears) {
        list.push_back(of_station(index, "rated", work, &Station::rated));
        list.push_back(of_station(index, "base", work, &Station::base));
        list.push_back(of_station(index, "least_piece", work, &Station::least_piece));
    }
    const std::pair<std::size_t, Work> tools[] = {
        {k_brake, bend()}, {k_vee, vee()}, {k_rectangular, notch()}};
    for (const auto& [index, work] : tools) {
        list.push_back(of_attachment(index, "force", work, &Attachment::force));
        list.push_back(
            of_attachment(index, "largest_thickness", work, &Attachment::largest_thickness));
        list.push_back(of_attachment(index, "stations", work, &Attachment::stations));
        if (index != k_brake)
            list.push_back(of_attachment(index, "depth", work, &Attachment::depth));
    }
    return list;
}

/// Sizes of the brake that only its order of bends needs: that order is then not given, and the
/// size is named beside it. A single bend's own verdict does not hang on them.
std::vector<Datum> for_order() {
    std::vector<Datum> list = {
        of_attachment(k_brake, "bed_width", bend(), &Attachment::bed_width),
        of_attachment(k_brake, "ram_width", bend(), &Attachment::ram_width),
        of_attachment(k_brake, "open_height", bend(), &Attachment::open_height),
        of_attachment(k_brake, "least_gauge", bend(), &Attachment::least_gauge)};
    const auto crib = [&](const char* path, auto clear) { list.push_back({path, bend(), clear}); };
    using Shop = equipment::Shop;
    crib("crib.vees[0].width", [](Shop& s) { s.crib.vees[0].width.reset(); });
    crib("crib.vees[0].height", [](Shop& s) { s.crib.vees[0].height.reset(); });
    crib("crib.brake_punches[0].width", [](Shop& s) { s.crib.brake_punches[0].width.reset(); });
    crib("crib.brake_punches[0].height", [](Shop& s) { s.crib.brake_punches[0].height.reset(); });
    crib("crib.brake_punches[0].included",
         [](Shop& s) { s.crib.brake_punches[0].included.reset(); });
    crib("crib.brake_punches", [](Shop& s) { s.crib.brake_punches.clear(); });
    return list;
}

/// Optional members that no verdict hangs on, each with its reason.
const std::set<std::string> k_only_warned = {
    "least_thickness", // unknown: thin metal is warned of, thick does not fold
    "slug_opening",    // where a slug stays is a warning
    "table_length",    // whether a piece tips is a warning
};
const std::set<std::string> k_no_measure = {
    "id",        // refused when empty: see below
    "name",      // for people
    "kind",      // required
    "excludes",  // what may not run at the same time; judges no piece
    "slug_loss", // none: nothing is lost; counts bars and judges no piece
};

/// Names of the members that the file format has for one kind of thing.
std::set<std::string> members_of(const std::string& thing) {
    std::ifstream stream(TREADLE_SOURCE_DIR "/assets/schema/job.schema.json");
    const std::string text{std::istreambuf_iterator<char>(stream), {}};
    const std::size_t start =
        text.find("\"properties\": {", text.find("\n    \"" + thing + "\": {"));
    REQUIRE(start != std::string::npos);
    std::set<std::string> names;
    int depth = 0;
    for (std::size_t i = text.find('{', start); i < text.size(); ++i) {
        depth += text[i] == '{' ? 1 : text[i] == '}' ? -1 : 0;
        if (depth == 0)
            return names;
        if (depth != 1 || text[i] != '"')
            continue;
        const std::size_t end = text.find('"', i + 1);
        if (text[end + 1] == ':')
            names.insert(text.substr(i + 1, end - i - 1));
        i = end;
    }
    return names;
}

plan::PartPlan planned(const Bench& bench, const Work& work) {
    return with(bench, work.first, work.second);
}

} // namespace

TEST_CASE("without a datum that decides nothing fits, and the datum is named") {
    for (const Datum& datum : deciding()) {
        CAPTURE(datum.path);
        Bench bench = full();
        CHECK(planned(bench, datum.work).outcome == Outcome::fits);
        datum.clear(bench.shop);
        const plan::PartPlan plan = planned(bench, datum.work);
        CHECK(plan.outcome == Outcome::cannot_be_said);
        std::set<std::string> missing;
        for (const plan::Check& check : plan.operations.at(0).checks)
            if (check.outcome == Outcome::cannot_be_said)
                missing.insert(check.missing);
        CHECK(missing == std::set<std::string>{datum.path});
    }
}

TEST_CASE("without a size of the brake no order of bends is given, and the size is named") {
    for (const Datum& datum : for_order()) {
        CAPTURE(datum.path);
        Bench bench = full();
        CHECK(planned(bench, datum.work).bends->missing.empty());
        datum.clear(bench.shop);
        const plan::PartPlan plan = planned(bench, datum.work);
        REQUIRE(plan.bends);
        CHECK(plan.bends->missing == datum.path);
        CHECK(plan.bends->steps.empty());
    }
}

TEST_CASE("no member of a station or an attachment is left out here") {
    std::set<std::string> seen;
    for (const auto& list : {deciding(), for_order()})
        for (const Datum& datum : list)
            seen.insert(datum.path.substr(datum.path.rfind('.') + 1));
    for (const char* thing : {"station", "attachment"}) {
        const std::set<std::string> names = members_of(thing);
        CHECK(names.size() > 10);
        for (const std::string& name : names) {
            CAPTURE(name);
            CHECK(seen.count(name) + k_only_warned.count(name) + k_no_measure.count(name) == 1);
        }
    }
}

TEST_CASE("a datum that only warnings use leaves the verdict as it is") {
    Bench bench = full();
    for (Station& station : bench.shop.machine.stations) {
        station.least_thickness.reset();
        station.slug_opening.reset();
        station.table_length.reset();
    }
    bench.shop.crib.saddle_dies[0].least_wall.reset();
    for (const Work& work : {hole(), cut(), notch(), saddle()})
        CHECK(planned(bench, work).outcome == planned(full(), work).outcome);
}

TEST_CASE("a punch or die that is not in the crib is bought, not guessed") {
    Bench bench = full();
    bench.shop.crib.punches.clear();
    bench.shop.crib.dies.clear();
    const plan::PartPlan plan = planned(bench, hole());
    CHECK(plan.operations.at(0).needs.size() == 2);
    CHECK(warns(plan.operations.at(0), plan::Rule::tool_in_crib));
}

TEST_CASE("a machine with nothing on it fits nothing") {
    Bench bench = full();
    for (Station& station : bench.shop.machine.stations) {
        Station bare;
        bare.id = station.id;
        bare.kind = station.kind;
        station = bare;
    }
    for (Attachment& tool : bench.shop.machine.attachments) {
        Attachment bare;
        bare.id = tool.id;
        bare.kind = tool.kind;
        bare.stations = tool.stations;
        tool = bare;
    }
    for (const Work& work : {hole(),
                             hole_in_angle(),
                             cut(),
                             mitred(),
                             angle_cut(),
                             bar_cut(),
                             notch(),
                             cope(),
                             vee(),
                             bend(),
                             saddle()})
        CHECK(planned(bench, work).outcome == Outcome::cannot_be_said);
    bench.shop.machine.stations.clear();
    bench.shop.machine.attachments.clear();
    for (const Work& work :
         {hole(), cut(), angle_cut(), bar_cut(), notch(), vee(), bend(), saddle()})
        CHECK(planned(bench, work).outcome == Outcome::does_not_fit);
}

TEST_CASE("a station or an attachment without an id is no shop") {
    equipment::Shop shop = full().shop;
    REQUIRE(equipment::checked(shop).ok());
    shop.machine.attachments[1].id.clear();
    CHECK(equipment::checked(shop).refusal().field == "machine.attachments[1].id");
    shop = full().shop;
    shop.machine.stations[2].id.clear();
    CHECK(equipment::checked(shop).refusal().field == "machine.stations[2].id");
}
