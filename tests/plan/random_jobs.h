// Random parts with every kind of operation, and random benches. Seeded: a failure can be repeated.

#pragma once

#include "plan/fixture.h"

#include <array>
#include <random>

namespace treadle::test {

class Random {
public:
    explicit Random(unsigned seed) : engine_(seed) {}
    double between(double low, double high) {
        return low + (high - low) * (static_cast<double>(engine_()) / 4294967295.0);
    }
    int below(int n) { return static_cast<int>(engine_() % static_cast<unsigned>(n)); }
    bool now_and_then() { return below(4) == 0; }

private:
    std::mt19937 engine_;
};

/// A bench that knows all that decides, now and then with shears rated by force.
inline Bench random_bench(Random& random) {
    Bench bench;
    bench.shop.crib.vees = {{inches(random.between(0.3, 4.0)), inches(10.0), 1},
                            {inches(random.between(0.3, 4.0)), inches(10.0), 1}};
    for (equipment::Attachment& tool : bench.shop.machine.attachments)
        tool.flange_clearance = inches(random.between(0.2, 1.0));
    for (equipment::Station& station : bench.shop.machine.stations)
        if (station.base) {
            station.largest_mitre = degrees(random.between(0.0, 50.0));
            if (random.now_and_then()) {
                station.rated.clear();
                station.force = us_tons(random.between(5.0, 80.0));
            }
        }
    return bench;
}

inline job::Punch random_punch(Random& random, double length, double width) {
    job::Punch punch = one_hole(inches(random.between(0.2, 2.0)),
                                inches(random.between(0.0, length)),
                                inches(random.between(0.0, width)));
    constexpr std::array k_shapes{geometry::HoleShape::round,
                                  geometry::HoleShape::square,
                                  geometry::HoleShape::rectangle,
                                  geometry::HoleShape::obround,
                                  geometry::HoleShape::hexagon};
    punch.hole.shape = k_shapes[static_cast<std::size_t>(random.below(5))];
    if (punch.hole.shape == geometry::HoleShape::rectangle ||
        punch.hole.shape == geometry::HoleShape::obround)
        punch.hole.size2 = punch.hole.size * random.between(1.0, 2.0);
    punch.turned = random.now_and_then();
    if (random.now_and_then()) {
        punch.at.columns = 2;
        punch.at.column_pitch = inches(random.between(0.5, 6.0));
    }
    return punch;
}

inline job::Notch random_notch(Random& random, double length, double width) {
    job::Notch notch;
    notch.edge = static_cast<job::NotchEdge>(random.below(8));
    if (notch.edge < job::NotchEdge::start_near && random.below(2) == 0)
        notch.shape = geometry::NotchShape::vee;
    const bool end =
        notch.edge == job::NotchEdge::start_end || notch.edge == job::NotchEdge::finish_end;
    notch.at = inches(random.between(0.0, end ? width : length));
    notch.along = inches(random.between(0.2, 5.0));
    notch.depth = inches(random.between(0.2, 3.5));
    notch.included = degrees(random.below(5) == 0 ? 60.0 : 90.0);
    return notch;
}

inline job::Cut random_cut(Random& random) {
    job::Cut cut;
    if (random.below(2) == 0)
        cut.start_mitre = degrees(random.between(-45.0, 45.0));
    return cut;
}

/// A flat or plate with one to three of cut, hole and notch.
inline job::Part random_flat(Random& random) {
    const double width = random.between(1.0, 14.0);
    const double length = random.between(1.0, 40.0);
    job::Part part = plate(inches(random.between(0.05, 0.9)), inches(width), inches(length));
    for (int left = 1 + random.below(3); left > 0; --left) {
        const int kind = random.below(3);
        if (kind == 0)
            part.operations.emplace_back(random_cut(random));
        else if (kind == 1)
            part.operations.emplace_back(random_punch(random, length, width));
        else
            part.operations.emplace_back(random_notch(random, length, width));
    }
    return part;
}

inline job::Part random_angle(Random& random) {
    const double leg = random.between(1.0, 5.0);
    const double length = random.between(1.0, 30.0);
    job::Part part = plate(inches(random.between(0.1, 0.5)), inches(leg), inches(length));
    part.section.shape = section::Shape::angle;
    part.section.height = inches(random.between(1.0, 5.0));
    if (random.below(3) == 0) {
        part.operations.emplace_back(random_cut(random));
        return part;
    }
    job::Punch punch = random_punch(random, length, leg);
    job::Notch notch = random_notch(random, length, leg);
    punch.face = notch.face = section::Face::leg_a;
    if (random.below(2) == 0)
        part.operations.emplace_back(punch);
    else
        part.operations.emplace_back(notch);
    return part;
}

inline job::Part random_bar(Random& random) {
    constexpr std::array k_shapes{section::Shape::round,
                                  section::Shape::square,
                                  section::Shape::pipe,
                                  section::Shape::square_tube};
    job::Part part = plate(inches(random.between(0.05, 0.35)),
                           inches(random.between(0.8, 1.8)),
                           inches(random.between(1.0, 30.0)));
    part.section.shape = k_shapes[static_cast<std::size_t>(random.below(4))];
    part.section.height = part.section.width;
    if (part.section.shape == section::Shape::pipe && random.below(4) != 0) {
        part.section.width = part.section.height = inches(1.66);
        job::Saddle saddle;
        saddle.end = static_cast<job::End>(random.below(3));
        saddle.run_diameter = inches(random.now_and_then() ? 2.375 : 1.9);
        part.operations.emplace_back(saddle);
    } else {
        part.operations.emplace_back(random_cut(random));
    }
    return part;
}

inline job::Part random_bent(Random& random) {
    job::Part part =
        plate(inches(random.between(0.05, 0.5)), inches(random.between(1.0, 12.0)), Length{});
    job::Bend bend;
    bend.angle = degrees(random.between(10.0, 120.0));
    bend.radius = inches(random.now_and_then() ? random.between(0.1, 1.0) : 0.0);
    part.legs = {inches(random.between(0.5, 8.0)), inches(random.between(0.5, 8.0))};
    part.operations.emplace_back(bend);
    return part;
}

inline job::Part random_part(Random& random) {
    switch (random.below(6)) {
    case 0:
        return random_angle(random);
    case 1:
        return random_bar(random);
    case 2:
    case 3:
        return random_bent(random);
    default:
        return random_flat(random);
    }
}

} // namespace treadle::test
