// What a place can do as a picture (capacity.cpp, capacity_trial.cpp, capacity_job.cpp): every
// point against the plan of a real part, on both sides.

#include "plan/capacity.h"

#include <random>

#include "fixture.h"

using namespace treadle;
using namespace treadle::test;
using plan::Capacity;
using plan::CapacityKind;
using plan::Outcome;

namespace {

constexpr plan::Mounting k_punch{0, plan::k_none};
constexpr plan::Mounting k_flat{1, plan::k_none};
constexpr plan::Mounting k_bar{2, plan::k_none};
constexpr plan::Mounting k_angle{3, plan::k_none};
constexpr plan::Mounting k_brake{4, 0};
constexpr plan::Mounting k_vee_notcher{4, 1};
constexpr plan::Mounting k_notcher{4, 2};

Capacity capacity(const Bench& bench, plan::Mounting place, const std::string& grade = "A36") {
    const auto plan = plan::make_plan(bench.job, bench.shop, bench.catalog);
    return plan::capacity(place, grade, plan, bench.job, bench.shop, bench.catalog).value();
}

const plan::CapacityLimit& at(const Capacity& capacity, Length x) {
    for (const plan::CapacityPoint& point : capacity.points)
        if (point.x == x)
            return point.thickness;
    FAIL("no column there");
    return capacity.points.front().thickness;
}

/// A part as somebody would enter it, with nothing in its way but the place.
job::Part real_part(CapacityKind kind, Length x, Length thickness, section::Shape bar) {
    job::Part part = plate(thickness, x, inches(30.0));
    part.section.shape = section::Shape::flat;
    part.grain = material::Grain::unknown;
    part.operations = {job::Cut{}};
    job::Notch notch;
    notch.edge = job::NotchEdge::far_edge;
    notch.at = inches(15.0);
    notch.depth = x;
    switch (kind) {
    case CapacityKind::hole:
        part.section.width = x * 3.0;
        part.operations = {one_hole(x, inches(15.0), x * 1.5)};
        break;
    case CapacityKind::leg:
        part.section.shape = section::Shape::angle;
        part.section.height = x;
        break;
    case CapacityKind::bar:
        part.section.shape = bar;
        part.section.width = thickness;
        break;
    case CapacityKind::notch_depth:
        part.section.width = x + inches(6.0);
        part.operations = {notch};
        break;
    case CapacityKind::bend_length:
        part.legs = {inches(6.0), inches(6.0)};
        part.operations = {job::Bend{degrees(90.0), Length{}, true}};
        break;
    case CapacityKind::width:
        break;
    }
    return part;
}

Outcome outcome(const Bench& bench,
                const Capacity& capacity,
                plan::Mounting place,
                Length x,
                Length thickness,
                section::Shape bar = section::Shape::round) {
    job::Part part = real_part(capacity.kind, x, thickness, bar);
    if (capacity.kind == CapacityKind::notch_depth) {
        auto& notch = std::get<job::Notch>(part.operations[0]);
        const auto& tool =
            bench.shop.machine.attachments[static_cast<std::size_t>(place.attachment)];
        if (tool.kind == equipment::AttachmentKind::vee_notcher) {
            notch.shape = geometry::NotchShape::vee;
            notch.included = *tool.vee_included;
        } else {
            notch.along = *tool.length;
        }
    }
    return bench.plan(part).outcome;
}

/// At the limit it fits, one step thicker it does not; the same with the weakest of the grade.
void check_limit(const Bench& bench,
                 const Capacity& capacity,
                 plan::Mounting place,
                 Length x,
                 const plan::CapacityLimit& limit,
                 section::Shape bar = section::Shape::round) {
    const bool inch = bench.job.style.system == UnitSystem::inch;
    const Length step = inch ? inches(0.0625) : millimetres(0.5);
    const Length most = inch ? plan::k_thickest_inch : plan::k_thickest_metric;
    INFO("x ",
         quantity::to_inches(x),
         " fits ",
         quantity::to_inches(limit.fits),
         " up to ",
         quantity::to_inches(limit.fits_up_to));
    CHECK(limit.fits <= limit.fits_up_to);
    const auto asked = [&](Length thickness) {
        return outcome(bench, capacity, place, x, thickness, bar);
    };
    const auto beyond = [&](Length thickness) {
        const bool solid = capacity.kind == CapacityKind::leg && !(thickness < x);
        return !solid && thickness <= most;
    };
    if (limit.fits > Length{})
        CHECK(asked(limit.fits) == Outcome::fits);
    if (limit.fits_up_to > limit.fits)
        CHECK(asked(limit.fits_up_to) == Outcome::fits_up_to);
    if (beyond(limit.fits + step)) {
        CHECK(asked(limit.fits + step) != Outcome::fits);
        CHECK(limit.stopped_by.has_value());
    }
    if (beyond(limit.fits_up_to + step))
        CHECK(asked(limit.fits_up_to + step) > Outcome::fits_up_to);
}

void check_picture(const Bench& bench, plan::Mounting place) {
    const Capacity picture = capacity(bench, place);
    INFO("place ", plan::place_words(place, bench.shop.machine));
    REQUIRE(picture.missing.empty());
    CHECK(picture.points.size() <= plan::k_most_columns);
    for (const plan::CapacityBar& bar : picture.bars)
        check_limit(bench, picture, place, Length{}, bar.size, bar.shape);
    const plan::CapacityPoint* before = nullptr;
    for (const plan::CapacityPoint& point : picture.points) {
        check_limit(bench, picture, place, point.x, point.thickness);
        if (before != nullptr) {
            CHECK(before->x < point.x);
            // A hole is punched through metal no thicker than itself, an angle's leg is wider than
            // thick: only there does more size allow more thickness.
            const bool by_size = before->thickness.stopped_by == plan::Rule::hole_thickness ||
                                 !before->thickness.stopped_by;
            CHECK((by_size || point.thickness.fits <= before->thickness.fits));
        }
        before = &point;
    }
}

} // namespace

// [D] pi d t 0.80 Rm against 50 tons = 100 kip. d 1 in: t 0.497 in at 80 ksi, 0.686 in at 58 ksi.
TEST_CASE("the punch's envelope is what its force allows, rounded down to a sixteenth") {
    const Bench bench;
    const Capacity picture = capacity(bench, k_punch);
    CHECK(picture.kind == CapacityKind::hole);
    CHECK(at(picture, inches(1.0)).fits == inches(7.0 / 16.0));
    CHECK(at(picture, inches(1.0)).fits_up_to == inches(10.0 / 16.0));
    CHECK(at(picture, inches(1.0)).stopped_by == plan::Rule::force);
    CHECK(at(picture, inches(0.25)).fits == inches(0.25));
    CHECK(at(picture, inches(0.25)).stopped_by == plan::Rule::hole_thickness);
    CHECK(picture.points.back().x == inches(2.5)); // what the large holder takes
}

// [D] rated 1/2 x 8 and 3/8 x 12 for 65 ksi; A36 reaches 80 ksi: 0.406 and 0.305 in.
TEST_CASE("the flat shear's envelope is a stair of its rated pairs, nothing between them") {
    const Bench bench;
    const Capacity picture = capacity(bench, k_flat);
    CHECK(picture.kind == CapacityKind::width);
    CHECK(at(picture, inches(4.0)).fits == inches(0.375));
    CHECK(at(picture, inches(8.0)).fits == inches(0.375));
    CHECK(at(picture, inches(8.0)).fits_up_to == inches(0.5));
    CHECK(at(picture, inches(8.5)).fits == inches(0.25));
    CHECK(at(picture, inches(12.0)).fits == inches(0.25));
    CHECK(at(picture, inches(12.0)).fits_up_to == inches(0.375));
    CHECK(at(picture, inches(14.0)).fits_up_to == Length{});
    CHECK(at(picture, inches(14.0)).stopped_by == plan::Rule::rated_size);
}

TEST_CASE("what is too thin for the blades is left out of the picture") {
    Bench bench;
    bench.shop.machine.stations[1].least_thickness = inches(0.3);
    const Capacity picture = capacity(bench, k_flat);
    // [D] 0.406 in of A36 at most, from 5/16 in on; at 12 in 0.305 in: nothing between them.
    CHECK(at(picture, inches(8.0)).fits == inches(0.375));
    CHECK(at(picture, inches(8.0)).least == inches(5.0 / 16.0));
    CHECK(at(picture, inches(12.0)).fits == Length{});
    CHECK(at(picture, inches(12.0)).fits_up_to == inches(0.375));
    CHECK(outcome(bench, picture, k_flat, inches(8.0), inches(5.0 / 16.0)) == Outcome::fits);
}

TEST_CASE("the bar shear says its greatest round and square") {
    Bench bench;
    Capacity picture = capacity(bench, k_bar);
    REQUIRE(picture.bars.size() == 2);
    CHECK(picture.points.empty());
    CHECK(picture.bars[0].shape == section::Shape::round);
    CHECK(picture.bars[0].size.fits == inches(1.25));
    CHECK(picture.bars[1].size.fits == inches(1.0));
    bench.shop.machine.stations[2].rated[0].square = Length{};
    picture = capacity(bench, k_bar);
    REQUIRE(picture.bars.size() == 2);
    CHECK(picture.bars[0].missing.empty());
    CHECK(picture.bars[1].missing == "machine.stations[2].rated");
    CHECK(picture.bars[1].size.fits_up_to == Length{});
}

TEST_CASE("every place's points hold on both sides") {
    for (const UnitSystem system : {UnitSystem::inch, UnitSystem::metric}) {
        Bench bench;
        bench.job.style.system = system;
        for (const plan::Mounting place : plan::capacity_places(bench.shop.machine))
            check_picture(bench, place);
    }
}

TEST_CASE("the brake names the V that bends the thickness") {
    Bench bench;
    Capacity picture = capacity(bench, k_brake);
    CHECK(picture.kind == CapacityKind::bend_length);
    // [D] ASTM A6 group B asks for 1.5 t, half more along the grain: 2.25 t. The widest V of the
    // crib, 3 in, makes 0.48 in: t 0.213 in.
    CHECK(at(picture, inches(10.0)).fits == inches(3.0 / 16.0));
    CHECK(at(picture, inches(10.0)).opening == inches(3.0));
    CHECK(at(picture, inches(10.0)).stopped_by == plan::Rule::least_radius);
    // [D] 1.33 Rm L t^2 / V in that V over 10 in: 12.5 kip at 80 ksi and 9.1 kip at 58 ksi for
    // 3/16 in, 5.6 kip for 1/8 in; there are 10 kip.
    bench.shop.machine.attachments[0].force = us_tons(5.0);
    picture = capacity(bench, k_brake);
    CHECK(at(picture, inches(10.0)).fits == inches(2.0 / 16.0));
    CHECK(at(picture, inches(10.0)).fits_up_to == inches(3.0 / 16.0));
    CHECK(at(picture, inches(10.0)).stopped_by == plan::Rule::force);
}

TEST_CASE("stronger metal never raises the envelope") {
    Bench bench;
    Grade strong = a36();
    strong.id = strong.name = "Strong";
    strong.bands = {{inches(4.0), ksi(50.0), ksi(65.0), ksi(95.0)}};
    bench.catalog.grades.rows.push_back(strong);
    for (const plan::Mounting place : plan::capacity_places(bench.shop.machine)) {
        const Capacity mild = capacity(bench, place);
        const Capacity hard = capacity(bench, place, "Strong");
        REQUIRE(mild.points.size() == hard.points.size());
        for (std::size_t i = 0; i < mild.points.size(); ++i) {
            CHECK(hard.points[i].thickness.fits <= mild.points[i].thickness.fits);
            CHECK(hard.points[i].thickness.fits_up_to <= mild.points[i].thickness.fits_up_to);
        }
        for (std::size_t i = 0; i < mild.bars.size(); ++i)
            CHECK(hard.bars[i].size.fits <= mild.bars[i].size.fits);
    }
}

TEST_CASE("what is not known of a place is named, and nothing is drawn") {
    struct Row {
        plan::Mounting place;
        const char* path;
        void (*forget)(equipment::Machine&);
    };
    const Row rows[] = {
        {k_punch, "machine.stations[0].force", [](auto& m) { m.stations[0].force.reset(); }},
        {k_punch, "machine.stations[0].holders", [](auto& m) { m.stations[0].holders.clear(); }},
        {k_punch, "machine.stations[0].throat", [](auto& m) { m.stations[0].throat.reset(); }},
        {k_flat, "machine.stations[1].blade", [](auto& m) { m.stations[1].blade.reset(); }},
        {k_flat, "machine.stations[1].base", [](auto& m) { m.stations[1].base.reset(); }},
        {k_angle, "machine.stations[3].rated", [](auto& m) { m.stations[3].rated.clear(); }},
        {k_bar, "machine.stations[2].rated", [](auto& m) { m.stations[2].rated.clear(); }},
        {k_brake,
         "machine.attachments[0].length",
         [](auto& m) { m.attachments[0].length.reset(); }},
        {k_brake, "machine.stations[4].force", [](auto& m) { m.stations[4].force.reset(); }},
        {k_notcher,
         "machine.attachments[2].depth",
         [](auto& m) { m.attachments[2].depth.reset(); }},
        {k_vee_notcher, "machine.attachments[1].vee_included", [](auto& m) {
             m.attachments[1].vee_included.reset();
         }}};
    for (const Row& row : rows) {
        Bench bench;
        row.forget(bench.shop.machine);
        const Capacity picture = capacity(bench, row.place);
        CHECK(picture.missing == row.path);
        CHECK(picture.points.empty());
        CHECK(picture.bars.empty());
    }
}

TEST_CASE("the picture ends where the grade's strengths end") {
    Bench bench;
    bench.catalog.grades.rows[0].bands[0].up_to = inches(0.25);
    const Capacity picture = capacity(bench, k_punch);
    CHECK(at(picture, inches(1.0)).fits == inches(0.25));
    CHECK(at(picture, inches(1.0)).stopped_by == plan::Rule::grade);
}

TEST_CASE("only what has a picture is drawn") {
    Bench bench;
    const auto plan = plan::make_plan(bench.job, bench.shop, bench.catalog);
    const auto field = [&](plan::Mounting place, const char* grade) {
        const auto made = plan::capacity(place, grade, plan, bench.job, bench.shop, bench.catalog);
        return made.ok() ? std::string() : made.refusal().field;
    };
    CHECK(field({9, plan::k_none}, "A36") == "station");
    CHECK(field({4, plan::k_none}, "A36") == "attachment"); // the table alone does nothing
    CHECK(field({0, 0}, "A36") == "attachment");            // no brake on the punch
    CHECK(field({4, 3}, "A36") == "attachment");            // saddle notcher
    CHECK(field({4, 9}, "A36") == "attachment");
    CHECK(field(k_punch, "nobody's") == "grade");
    bench.catalog.grades.rows[0].refusal = {true, false, "Too hard for shears."};
    CHECK(field(k_punch, "A36") == "grade");
    CHECK(field(k_brake, "A36").empty());
    CHECK(plan::capacity_places(bench.shop.machine).size() == 7);
}

TEST_CASE("the job's operations stand in the picture of the place that does them") {
    Bench bench;
    job::Part holes = plate(inches(0.375), inches(6.0), inches(10.0));
    holes.operations = {job::Cut{},
                        one_hole(inches(0.8125), inches(3.0), inches(3.0)),
                        one_hole(inches(0.25), inches(7.0), inches(3.0))};
    job::Part other = holes;
    other.grade = "Other";
    Grade grade = a36();
    grade.id = grade.name = "Other";
    bench.catalog.grades.rows.push_back(grade);
    bench.job.parts = {std::make_shared<const job::Part>(holes),
                       std::make_shared<const job::Part>(other)};
    const Capacity picture = capacity(bench, k_punch);
    REQUIRE(picture.job.size() == 4);
    CHECK(picture.job[0].x == inches(0.8125));
    CHECK(picture.job[0].thickness == inches(0.375));
    CHECK(picture.job[0].operation == 1);
    CHECK(picture.job[0].outcome == Outcome::fits);
    CHECK(picture.job[0].same_grade);
    CHECK(picture.job[1].outcome == Outcome::does_not_fit); // thinner than the metal
    CHECK(picture.job[2].part == 1);
    CHECK_FALSE(picture.job[2].same_grade);
    CHECK(capacity(bench, k_flat).job.size() == 2);
    CHECK(capacity(bench, k_brake).job.empty());
}

TEST_CASE("of two punches each has its own picture, and the job is judged at that one") {
    Bench bench;
    equipment::Station second = punch_station();
    second.id = "second";
    second.force = us_tons(20.0);
    bench.shop.machine.stations.push_back(second);
    job::Part part = plate(inches(0.375), inches(6.0), inches(10.0));
    part.operations = {one_hole(inches(0.8125), inches(3.0), inches(3.0))};
    bench.job.parts = {std::make_shared<const job::Part>(part)};
    const Capacity large = capacity(bench, k_punch);
    const Capacity small = capacity(bench, {5, plan::k_none});
    CHECK(at(large, inches(1.0)).fits == inches(7.0 / 16.0));
    // [D] 40 kip: t 0.199 in at 80 ksi.
    CHECK(at(small, inches(1.0)).fits == inches(3.0 / 16.0));
    CHECK(large.job[0].outcome == Outcome::fits);
    // [D] 44.4 kip with the weakest of the grade.
    CHECK(small.job[0].outcome == Outcome::does_not_fit);
}

TEST_CASE("the pictures of 200 random machines hold on both sides") {
    std::mt19937 engine(20261);
    const auto between = [&engine](double low, double high) {
        return low + (high - low) * (static_cast<double>(engine()) / 4294967295.0);
    };
    for (int i = 0; i < 200; ++i) {
        Bench bench;
        bench.job.style.system = i % 2 == 0 ? UnitSystem::inch : UnitSystem::metric;
        equipment::Machine& machine = bench.shop.machine;
        machine.stations[0].force = us_tons(between(10.0, 120.0));
        machine.stations[0].throat = inches(between(1.0, 10.0));
        machine.stations[0].stroke = inches(between(0.6, 2.0));
        machine.stations[0].holders = {{"", inches(between(0.5, 4.0)), true}};
        machine.stations[1].base->value = ksi(between(45.0, 90.0));
        machine.stations[1].rated = {
            {inches(between(0.1, 1.0)), inches(between(2.0, 12.0)), {}, {}},
            {inches(between(0.1, 1.0)), inches(between(2.0, 12.0)), {}, {}}};
        machine.stations[1].blade = inches(between(4.0, 60.0));
        machine.stations[2].base->value = ksi(between(45.0, 90.0));
        if (between(0.0, 1.0) < 0.3) { // rated by its force alone
            machine.stations[3].rated.clear();
            machine.stations[3].force = us_tons(between(10.0, 120.0));
        }
        machine.stations[4].stroke = inches(between(0.5, 4.0));
        for (equipment::Attachment& tool : machine.attachments) {
            tool.force = us_tons(between(5.0, 60.0));
            tool.largest_thickness = inches(between(0.1, 1.0));
            tool.depth = inches(between(0.5, 5.0));
        }
        bench.shop.crib.vees = {{inches(between(0.3, 4.0)), inches(between(4.0, 12.0)), 1},
                                {inches(between(0.3, 4.0)), inches(between(4.0, 12.0)), 1}};
        const auto places = plan::capacity_places(machine);
        check_picture(bench, places[static_cast<std::size_t>(i) % places.size()]);
    }
}
