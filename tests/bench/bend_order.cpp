// How long the order of 12 bends takes. Prints; never fails on time.

#include "plan/bend_order.h"

#include "process/blank.h"

#include <algorithm>
#include <chrono>
#include <cstdio>
#include <vector>

using namespace treadle;

namespace {

plan::BrakeOutline tools() {
    plan::BrakeOutline brake;
    brake.opening = millimetres(16.0);
    brake.die_width = millimetres(30.0);
    brake.die_height = millimetres(80.0);
    brake.punch_width = millimetres(20.0);
    brake.punch_height = millimetres(120.0);
    brake.punch_included = degrees(60.0);
    brake.nose = millimetres(1.0);
    brake.bed_width = millimetres(60.0);
    brake.ram_width = millimetres(60.0);
    brake.open_height = millimetres(260.0);
    brake.least_gauge = millimetres(15.0);
    return brake;
}

plan::BendProblem part(double leg_mm, Angle angle, bool alternate) {
    process::BentPart bent;
    bent.outside_legs.assign(13, millimetres(leg_mm));
    bent.bends.assign(12, {millimetres(2.0), millimetres(2.5), angle});
    const auto blank = process::blank_length(bent, {});
    plan::BendProblem problem;
    if (!blank)
        return problem;
    problem.thickness = millimetres(2.0);
    problem.blank_length = blank->length;
    for (std::size_t i = 0; i < bent.bends.size(); ++i)
        problem.bends.push_back({blank->bend_lines[i],
                                 blank->bends[i].allowance,
                                 blank->bends[i].deduction / 2.0,
                                 bent.bends[i].radius,
                                 angle,
                                 !alternate || i % 2 == 0,
                                 tools()});
    return problem;
}

void measure(const char* name, const plan::BendProblem& problem) {
    double best = 0.0;
    plan::BendSequence found;
    for (int i = 0; i < 5; ++i) {
        const auto start = std::chrono::steady_clock::now();
        found = plan::order_bends(problem);
        const std::chrono::duration<double, std::milli> took =
            std::chrono::steady_clock::now() - start;
        best = i == 0 ? took.count() : std::min(best, took.count());
    }
    std::printf("%-28s %2zu bends %8.2f ms  %s, %d turns\n",
                name,
                problem.bends.size(),
                best,
                found.steps.empty() ? "blocked" : "ordered",
                found.turns);
}

} // namespace

int main() {
    measure("stairs, 90 deg, legs 40", part(40.0, degrees(90.0), true));
    measure("stairs, 90 deg, legs 80", part(80.0, degrees(90.0), true));
    measure("waves, 30 deg, legs 60", part(60.0, degrees(30.0), true));
    measure("barrel, 20 deg, legs 50", part(50.0, degrees(20.0), false));
    measure("roll, 10 deg, legs 60", part(60.0, degrees(10.0), false));
    return 0;
}
