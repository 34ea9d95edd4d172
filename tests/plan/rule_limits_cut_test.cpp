// Limits of grades, stations, forces and shears. Figures worked by hand from the bench's: A36 is
// 58 to 80 ksi, its shear strength 0.80 of that.

#include "rule_limits.h"

namespace treadle::test {

using plan::Outcome;
using plan::PartPlan;
using plan::Rule;

namespace {

constexpr std::size_t k_flat = 1; // of the bench's stations
constexpr std::size_t k_bar = 2;

PartPlan cut(const Bench& bench, const job::Part& part) { return with(bench, part, {job::Cut{}}); }

/// pi d t S = pi x 13/16 x 1/2 x 64 ksi = 81.68 kip = 40.84 ton.
PartPlan hole_at(double tons, double certified_ksi) {
    Bench bench;
    bench.shop.machine.stations[0].force = us_tons(tons);
    job::Part part = plate(inches(0.5), inches(8.0), inches(10.0));
    part.certified_tensile = ksi(certified_ksi);
    return with(bench, part, {one_hole(inches(0.8125), inches(5.0), inches(4.0))});
}

PartPlan certified(double tensile_ksi) {
    job::Part part = flat_bar(0.25, 4.0, 20.0);
    part.certified_tensile = ksi(tensile_ksi);
    return cut(Bench{}, part);
}

PartPlan refused_grade(double refused) {
    Bench bench;
    bench.catalog.grades.rows[0].refusal = {refused > 0.0, false, "Wear plate shatters tools."};
    return cut(bench, flat_bar(0.25, 4.0, 20.0));
}

PartPlan without_station(double gone) {
    Bench bench;
    if (gone > 0.0)
        bench.shop.machine.stations.erase(bench.shop.machine.stations.begin() + k_flat);
    return cut(bench, flat_bar(0.25, 4.0, 20.0));
}

PartPlan wide(double width) {
    Bench bench;
    bench.shop.machine.stations[k_flat].rated = {{inches(0.5), inches(20.0), {}, {}}};
    return cut(bench, flat_bar(0.25, width, 20.0));
}

PartPlan mitred(double angle_deg) {
    job::Cut mitre;
    mitre.start_mitre = degrees(-angle_deg);
    return with(Bench{}, flat_bar(0.25, 4.0, 20.0), {mitre});
}

PartPlan bar_of(double diameter) {
    Bench bench;
    bench.shop.machine.stations[k_bar].base = material::RatingBase{ksi(100.0)};
    job::Part part = plate(Length{}, inches(diameter), inches(20.0));
    part.section.shape = section::Shape::round;
    return cut(bench, part);
}

/// The blank of a bent part is what the shear holds, not its legs together.
PartPlan short_blank(double longer_than_least) {
    Bench bench;
    const job::Part part = two_legs(2.0, 4.0);
    const std::vector<job::Operation> work{job::Cut{}, right_angle()};
    const Length blank = with(bench, part, work).blank_exact;
    bench.shop.machine.stations[k_flat].least_piece = blank - inches(longer_than_least);
    return with(bench, part, work);
}

} // namespace

std::vector<Limit> cut_limits() {
    return {
        {Rule::grade,
         "certificate under the grade",
         58.0,
         57.9,
         certified,
         Outcome::cannot_be_said},
        {Rule::grade, "grade refused for cutting", 0.0, 1.0, refused_grade},
        {Rule::no_station, "shear taken away", 0.0, 1.0, without_station},
        {Rule::force,
         "certificate needed",
         40.85,
         40.84,
         [](double tons) { return hole_at(tons, 0.0); },
         Outcome::fits_up_to},
        {Rule::force,
         "certificate read",
         40.85,
         40.84,
         [](double tons) { return hole_at(tons, 80.0); }},
        {Rule::rated_size, // 1/2 x 65 / 80
         "stronger metal takes thickness down",
         0.40625,
         0.4063,
         [](double t) { return cut(Bench{}, flat_bar(t, 8.0, 20.0)); },
         Outcome::fits_up_to},
        {Rule::rated_size,
         "wider than any line",
         8.0,
         8.001,
         [](double w) { return cut(Bench{}, flat_bar(0.4, w, 20.0)); }},
        {Rule::rated_size, "round bar", 1.25, 1.251, bar_of},
        {Rule::blade, "blade of 14 in", 14.0, 14.001, wide},
        {Rule::mitre, "shear to 30 deg", 30.0, 30.01, mitred},
        {Rule::least_piece,
         "hold-down from 2 in",
         2.0,
         1.999,
         [](double l) { return cut(Bench{}, flat_bar(0.25, 2.0, l)); }},
        {Rule::least_piece, "bent part", 0.0, -0.001, short_blank},
    };
}

} // namespace treadle::test
