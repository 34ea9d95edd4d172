// A bench whose brake, V block and punch have their sizes, and parts to bend on it. Invented.

#pragma once

#include "plan/fixture.h"

#include <vector>

namespace treadle::test {

/// The bench's brake and tools with their sizes in cross-section.
inline Bench with_sizes() {
    Bench bench;
    equipment::Attachment& brake = bench.shop.machine.attachments[0];
    brake.bed_width = inches(3.0);
    brake.ram_width = inches(2.0);
    brake.open_height = inches(10.0);
    brake.least_gauge = inches(0.5);
    brake.stroke = inches(3.0);
    bench.shop.crib.vees = {{inches(1.25), inches(10.0), 1, inches(1.75), inches(2.5)}};
    for (equipment::BrakePunch& punch : bench.shop.crib.brake_punches) {
        punch.width = inches(1.0);
        punch.height = inches(4.0);
        punch.included = degrees(80.0);
    }
    return bench;
}

inline job::Part bent(const std::vector<double>& legs_in, const std::vector<bool>& up) {
    job::Part part = plate(inches(0.125), inches(4.0), inches(0.0));
    for (const double leg : legs_in)
        part.legs.push_back(inches(leg));
    part.operations.push_back(job::Cut{});
    for (const bool one : up)
        part.operations.push_back(job::Bend{degrees(90.0), {}, one});
    return part;
}

} // namespace treadle::test
