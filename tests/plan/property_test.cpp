// What must hold for any job: harder work never turns a refusal into a fit.

#include <algorithm>
#include <functional>
#include <map>
#include <vector>

#include "random_jobs.h"

using namespace treadle;
using namespace treadle::test;
using plan::Outcome;

namespace {

constexpr int k_jobs = 1000; // of each kind of change, so that there are well over 10,000

struct Case {
    Bench bench;
    job::Part part;
};

/// Makes the work harder; false where it does not apply.
using Change = std::function<bool(Random&, Case&)>;

template <class Kind>
Kind* only(job::Part& part) {
    return part.operations.size() == 1 ? std::get_if<Kind>(&part.operations[0]) : nullptr;
}
bool is_bar(const job::Part& part) {
    return part.section.shape == section::Shape::round ||
           part.section.shape == section::Shape::square;
}

bool stronger(Random& random, Case& c) {
    const double more = random.between(1.0, 1.5);
    for (material::StrengthBand& band : c.bench.catalog.grades.rows[0].bands) {
        band.tensile_minimum = band.tensile_minimum * more;
        band.tensile_upper = band.tensile_upper * more;
    }
    return true;
}

bool thicker(Random& random, Case& c) {
    if (is_bar(c.part))
        return false;
    c.part.section.thickness = c.part.section.thickness * random.between(1.0, 1.6);
    return true;
}

/// A bar by its size; a flat or angle across the cut. A wider slit strip is easier to hold.
bool wider(Random& random, Case& c) {
    if (only<job::Cut>(c.part) == nullptr)
        return false;
    const double more = random.between(1.0, 1.6);
    c.part.section.width = c.part.section.width * more;
    c.part.section.height = c.part.section.height * more;
    return true;
}

/// A hole narrower than the metal is thick is helped by growing, so it is left out.
bool larger_hole(Random& random, Case& c) {
    auto* punch = only<job::Punch>(c.part);
    if (punch == nullptr || geometry::least_width(punch->hole) < c.part.section.thickness)
        return false;
    const double more = random.between(1.0, 1.6);
    punch->hole.size = punch->hole.size * more;
    punch->hole.size2 = punch->hole.size2 * more;
    return true;
}

bool longer_notch(Random& random, Case& c) {
    auto* notch = only<job::Notch>(c.part);
    if (notch == nullptr || notch->shape == geometry::NotchShape::vee)
        return false;
    notch->along = notch->along * random.between(1.0, 2.0);
    return true;
}

bool deeper_notch(Random& random, Case& c) {
    auto* notch = only<job::Notch>(c.part);
    if (notch == nullptr)
        return false;
    notch->depth = notch->depth * random.between(1.0, 2.0);
    return true;
}

bool steeper_mitre(Random& random, Case& c) {
    for (job::Operation& operation : c.part.operations)
        if (auto* cut = std::get_if<job::Cut>(&operation)) {
            cut->start_mitre = cut->start_mitre * random.between(1.0, 1.6);
            return true;
        }
    return false;
}

bool longer_bend(Random& random, Case& c) {
    if (only<job::Bend>(c.part) == nullptr)
        return false;
    c.part.section.width = c.part.section.width * random.between(1.0, 1.6);
    return true;
}

bool shorter_leg(Random& random, Case& c) {
    if (only<job::Bend>(c.part) == nullptr)
        return false;
    Length& leg = c.part.legs[static_cast<std::size_t>(random.below(2))];
    leg = leg * random.between(0.4, 1.0);
    return true;
}

bool tighter_radius(Random& random, Case& c) {
    auto* bend = only<job::Bend>(c.part);
    if (bend == nullptr || !(bend->radius > Length{}))
        return false;
    bend->radius = bend->radius * random.between(0.2, 1.0);
    return true;
}

bool along_the_grain(Random& random, Case& c) {
    if (only<job::Bend>(c.part) == nullptr)
        return false;
    c.part.grain = random.below(2) == 0 ? material::Grain::along : material::Grain::unknown;
    return true;
}

/// Towards the datum edge, from the half of the part that lies on that side.
bool nearer_the_edge(Random& random, Case& c) {
    auto* punch = only<job::Punch>(c.part);
    if (punch == nullptr || punch->at.y > c.part.section.width * 0.5)
        return false;
    punch->at.y = punch->at.y * random.between(0.0, 1.0);
    return true;
}

bool nearer_each_other(Random& random, Case& c) {
    auto* punch = only<job::Punch>(c.part);
    if (punch == nullptr || punch->at.columns < 2 || c.part.section.width > inches(7.0))
        return false;
    // The last hole stays where it is, so that none leaves the end it was too near to.
    const Length nearer = punch->at.column_pitch * random.between(0.0, 1.0);
    if (punch->at.x - punch->hole.size - punch->hole.size2 < Length{})
        return false;
    if (punch->at.x + punch->at.column_pitch + punch->hole.size + punch->hole.size2 > c.part.length)
        return false;
    punch->at.column_pitch = punch->at.column_pitch - nearer;
    return true;
}

bool shorter_piece(Random& random, Case& c) {
    if (only<job::Cut>(c.part) == nullptr)
        return false;
    c.part.length = c.part.length * random.between(0.2, 1.0);
    return true;
}

bool more_pieces(Random& random, Case& c) {
    c.part.count = 1 + random.below(500);
    return true;
}

bool higher_certificate(Random& random, Case& c) {
    c.part.certified_tensile = ksi(random.between(80.0, 120.0)); // the grade's strongest and over
    return true;
}

void shrink(std::optional<Length>& value, double by) {
    if (value)
        value = *value * by;
}
void shrink(std::optional<Force>& value, double by) {
    if (value)
        value = *value * by;
}

bool smaller_machine(Random& random, Case& c) {
    const double by = random.between(0.4, 1.0);
    equipment::Machine& machine = c.bench.shop.machine;
    for (equipment::Station& station : machine.stations) {
        shrink(station.force, by);
        shrink(station.throat, by);
        shrink(station.daylight, by);
        shrink(station.stroke, by);
        shrink(station.blade, by);
        shrink(station.least_piece, 1.0 / by);
        shrink(station.flange_clearance, 1.0 / by);
        if (station.largest_mitre)
            station.largest_mitre = *station.largest_mitre * by;
        if (station.base)
            station.base->value = station.base->value * by;
        for (equipment::RatedSize& rated : station.rated)
            rated = {rated.thickness * by, rated.width * by, rated.round * by, rated.square * by};
        for (equipment::Holder& holder : station.holders)
            holder.largest_punch = holder.largest_punch * by;
    }
    for (equipment::Attachment& tool : machine.attachments) {
        shrink(tool.force, by);
        shrink(tool.length, by);
        shrink(tool.depth, by);
        shrink(tool.largest_thickness, by);
        shrink(tool.flange_clearance, 1.0 / by);
        if (tool.base)
            tool.base->value = tool.base->value * by;
    }
    return true;
}

struct Named {
    const char* name;
    Change change;
};
const std::vector<Named> k_changes = {{"stronger", stronger},
                                      {"thicker", thicker},
                                      {"wider", wider},
                                      {"larger hole", larger_hole},
                                      {"longer notch", longer_notch},
                                      {"deeper notch", deeper_notch},
                                      {"steeper mitre", steeper_mitre},
                                      {"longer bend", longer_bend},
                                      {"shorter leg", shorter_leg},
                                      {"tighter radius", tighter_radius},
                                      {"along the grain", along_the_grain},
                                      {"nearer the edge", nearer_the_edge},
                                      {"nearer each other", nearer_each_other},
                                      {"shorter piece", shorter_piece},
                                      {"more pieces", more_pieces},
                                      {"higher certificate", higher_certificate},
                                      {"smaller machine", smaller_machine}};

/// One datum of the machine forgotten, whichever.
void forget(Random& random, equipment::Machine& machine) {
    auto& station = machine.stations[static_cast<std::size_t>(random.below(5))];
    auto& tool = machine.attachments[static_cast<std::size_t>(random.below(4))];
    const std::vector<std::function<void()>> data = {[&] { station.force.reset(); },
                                                     [&] { station.base.reset(); },
                                                     [&] { station.throat.reset(); },
                                                     [&] { station.daylight.reset(); },
                                                     [&] { station.stroke.reset(); },
                                                     [&] { station.blade.reset(); },
                                                     [&] { station.rated.clear(); },
                                                     [&] { station.least_piece.reset(); },
                                                     [&] { station.largest_mitre.reset(); },
                                                     [&] { station.flange_clearance.reset(); },
                                                     [&] { station.holders.clear(); },
                                                     [&] { tool.stations.clear(); },
                                                     [&] { tool.force.reset(); },
                                                     [&] { tool.base.reset(); },
                                                     [&] { tool.length.reset(); },
                                                     [&] { tool.depth.reset(); },
                                                     [&] { tool.largest_thickness.reset(); },
                                                     [&] { tool.vee_included.reset(); },
                                                     [&] { tool.stroke.reset(); },
                                                     [&] { tool.flange_clearance.reset(); }};
    data[static_cast<std::size_t>(random.below(static_cast<int>(data.size())))]();
}

} // namespace

TEST_CASE("harder work never turns a refusal into a fit: 1,000 jobs for each of 17 changes") {
    constexpr unsigned k_seed = 41;
    CAPTURE(k_seed);
    Random random(k_seed);
    std::map<std::size_t, std::map<bool, int>> seen; // operation kind, fits
    for (const Named& named : k_changes) {
        CAPTURE(std::string(named.name));
        for (int done = 0; done < k_jobs;) {
            Case easy{random_bench(random), random_part(random)};
            Case hard = easy;
            if (!named.change(random, hard))
                continue;
            ++done;
            CAPTURE(done);
            const plan::PartPlan before = easy.bench.plan(easy.part);
            CHECK(hard.bench.plan(hard.part).outcome >= before.outcome);
            for (std::size_t i = 0; i < before.operations.size(); ++i)
                ++seen[easy.part.operations[i].index()]
                      [before.operations[i].outcome <= Outcome::fits_up_to];
        }
    }
    CHECK(seen.size() == std::variant_size_v<job::Operation>);
    for (const auto& [kind, counts] : seen) {
        CAPTURE(kind); // both answers often enough to mean something
        CHECK(counts.at(true) > 50);
        CHECK(counts.at(false) > 50);
    }
}

TEST_CASE("a larger hole never asks for less force") {
    Random random(44);
    for (int i = 0; i < k_jobs; ++i) {
        Case c{Bench{}, plate(inches(random.between(0.05, 0.9)), inches(14.0), inches(40.0))};
        job::Punch punch = random_punch(random, 40.0, 14.0);
        const auto force = [&] {
            const plan::OperationPlan plan = c.bench.plan(c.part, punch);
            return std::get<Force>(find(plan, plan::Rule::force)->demand_high);
        };
        const Force before = force();
        punch.hole.size = punch.hole.size * random.between(1.0, 1.6);
        punch.hole.size2 = larger(punch.hole.size2, punch.hole.size);
        CHECK(force() >= before);
    }
}

TEST_CASE("taking a datum away from the machine never turns into a fit") {
    constexpr unsigned k_seed = 45;
    CAPTURE(k_seed);
    Random random(k_seed);
    int unsaid = 0;
    for (int i = 0; i < 10000; ++i) {
        const Case full{random_bench(random), random_part(random)};
        Case less = full;
        forget(random, less.bench.shop.machine);
        const Outcome with = full.bench.plan(full.part).outcome;
        const Outcome without = less.bench.plan(less.part).outcome;
        CAPTURE(i);
        if (with == Outcome::cannot_be_said || with == Outcome::does_not_fit)
            CHECK(without >= Outcome::cannot_be_said);
        else
            unsaid += without == Outcome::cannot_be_said ? 1 : 0;
        CHECK((without == Outcome::cannot_be_said || without == with ||
               with == Outcome::does_not_fit));
    }
    CHECK(unsaid > 100);
}

TEST_CASE("inch and metric jobs get the same verdicts") {
    Random random(46);
    for (int i = 0; i < 2000; ++i) {
        Case inch{random_bench(random), random_part(random)};
        Case metric = inch;
        metric.bench.job.style.system = UnitSystem::metric;
        CHECK(inch.bench.plan(inch.part).outcome == metric.bench.plan(metric.part).outcome);
    }
}
