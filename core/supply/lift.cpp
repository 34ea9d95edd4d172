#include "supply/lift.h"

#include "base/text.h"

#include <cmath>
#include <string>

#include "supply/bounds.h"
#include "supply/cards.h"

namespace treadle::supply {

namespace {

using base::Evidence;
using quantity::inches;
using quantity::pounds;

constexpr Length k_most_reach = quantity::metres(5.0);
constexpr double k_most_per_minute = 60.0;

struct FrequencyRow {
    double per_minute;
    std::array<double, 3> low;  ///< hands below 30 in at the start; by duration
    std::array<double, 3> high; ///< at 30 in or over
};

/// NIOSH 94-110, table 5.
constexpr FrequencyRow k_frequency[] = {
    {0.2, {1.00, 0.95, 0.85}, {1.00, 0.95, 0.85}},
    {0.5, {0.97, 0.92, 0.81}, {0.97, 0.92, 0.81}},
    {1.0, {0.94, 0.88, 0.75}, {0.94, 0.88, 0.75}},
    {2.0, {0.91, 0.84, 0.65}, {0.91, 0.84, 0.65}},
    {3.0, {0.88, 0.79, 0.55}, {0.88, 0.79, 0.55}},
    {4.0, {0.84, 0.72, 0.45}, {0.84, 0.72, 0.45}},
    {5.0, {0.80, 0.60, 0.35}, {0.80, 0.60, 0.35}},
    {6.0, {0.75, 0.50, 0.27}, {0.75, 0.50, 0.27}},
    {7.0, {0.70, 0.42, 0.22}, {0.70, 0.42, 0.22}},
    {8.0, {0.60, 0.35, 0.18}, {0.60, 0.35, 0.18}},
    {9.0, {0.52, 0.30, 0.00}, {0.52, 0.30, 0.15}},
    {10.0, {0.45, 0.26, 0.00}, {0.45, 0.26, 0.13}},
    {11.0, {0.41, 0.00, 0.00}, {0.41, 0.23, 0.00}},
    {12.0, {0.37, 0.00, 0.00}, {0.37, 0.21, 0.00}},
    {13.0, {0.00, 0.00, 0.00}, {0.34, 0.00, 0.00}},
    {14.0, {0.00, 0.00, 0.00}, {0.31, 0.00, 0.00}},
    {15.0, {0.00, 0.00, 0.00}, {0.28, 0.00, 0.00}},
};

/// Linear between rows, nothing over the last. Towards a row of nothing it counts as nothing at
/// once: the manual prints no way down to it, and the careful reading is none.
double frequency_multiplier(double per_minute, LiftDuration duration, bool low) {
    const auto of = [&](const FrequencyRow& row) {
        return (low ? row.low : row.high)[static_cast<std::size_t>(duration)];
    };
    const FrequencyRow* below = &k_frequency[0];
    if (per_minute <= below->per_minute)
        return of(*below);
    for (const FrequencyRow& row : k_frequency) {
        if (per_minute <= row.per_minute) {
            if (of(row) == 0.0)
                return 0.0;
            const double share =
                (per_minute - below->per_minute) / (row.per_minute - below->per_minute);
            return of(*below) + share * (of(row) - of(*below));
        }
        below = &row;
    }
    return 0.0;
}

double coupling_multiplier(Coupling coupling, bool low) {
    switch (coupling) {
    case Coupling::good:
        return 1.0;
    case Coupling::fair:
        return low ? 0.95 : 1.0;
    case Coupling::poor:
        break;
    }
    return 0.9;
}

/// The constants of one printing; lengths in inches or centimetres.
struct Printing {
    Mass constant;
    Length unit;
    double near, far;               ///< H counts as near below it; nothing beyond far
    double knuckle, slope, highest; ///< of V
    double distance, farthest;      ///< the constant of D, and its end
};
constexpr Printing k_inch{pounds(51.0), inches(1.0), 10.0, 25.0, 30.0, 0.0075, 70.0, 1.8, 70.0};
constexpr Printing k_metric{quantity::kilograms(23.0),
                            quantity::millimetres(10.0),
                            25.0,
                            63.0,
                            75.0,
                            0.003,
                            175.0,
                            4.5,
                            175.0};

/// A length in the printing's unit, without the dust of a conversion at a limit.
double in_unit(Length value, const Printing& printing) {
    const double count = value / printing.unit;
    const double whole = std::round(count);
    return std::fabs(count - whole) < 1e-9 ? whole : count;
}

constexpr base::CardSymbol k_limit_symbols[] = {
    {"RWL", "recommended weight limit"},
    {"LC", "load constant, 51 lb or 23 kg"},
    {"HM", "for the reach: 10/H or 25/H"},
    {"VM", "for the height: 1 - 0.0075 |V - 30| or 1 - 0.003 |V - 75|"},
    {"DM", "for the travel: 0.82 + 1.8/D or 0.82 + 4.5/D"},
    {"AM", "for the turn: 1 - 0.0032 A"},
    {"FM", "for the frequency, by table"},
    {"CM", "for the grip, by table"}};
constexpr base::CardSymbol k_index_symbols[] = {
    {"LI", "lifting index"}, {"L", "load"}, {"RWL", "recommended weight limit"}};
constexpr base::CardSymbol k_reach_symbols[] = {{"H", "from the ankles to the hands"},
                                                {"c", "8 in, or 10 in with the hands below 10 in"},
                                                {"W", "depth of the load towards the body"}};
constexpr base::CardSymbol k_team_symbols[] = {{"M", "what the team may lift"},
                                               {"f", "2/3 for two, 1/2 for three"},
                                               {"n", "people"},
                                               {"m", "what one of them may lift"}};

const char* field_of_nothing(const LiftFactors& f) {
    if (f.horizontal == 0.0)
        return "horizontal";
    if (f.vertical == 0.0)
        return "vertical";
    if (f.distance == 0.0)
        return "travel";
    return f.asymmetry == 0.0 ? "asymmetry" : "frequency";
}

} // namespace

const base::FormulaCard k_lift_limit_card{
    "lift-limit",
    "Recommended weight limit of a lift",
    "RWL = LC HM VM DM AM FM CM",
    k_limit_symbols,
    "two hands, standing, smooth, one person, good floor; not for hot, sharp or unsteady loads nor "
    "a long limp bar: over 10 ft (3 m) take a second hand or a stand",
    "niosh-94-110",
    Evidence::published,
    ""};
const base::FormulaCard k_lift_index_card{"lift-index",
                                          "Lifting index",
                                          "LI = L / RWL",
                                          k_index_symbols,
                                          "1 is the goal of design; above 3 nearly all people are "
                                          "at more risk",
                                          "niosh-94-110",
                                          Evidence::published,
                                          ""};
const base::FormulaCard k_lift_reach_card{"lift-reach",
                                          "Reach of a lift that was not measured",
                                          "H = c + W / 2",
                                          k_reach_symbols,
                                          "load held close; measure it where it counts",
                                          "niosh-94-110",
                                          Evidence::published,
                                          ""};
const base::FormulaCard k_lift_team_card{"lift-team",
                                         "What people lift together",
                                         "M = f n m",
                                         k_team_symbols,
                                         "people of like size who can all get hold of the load",
                                         "hse-l23",
                                         Evidence::from_memory,
                                         ""};

base::Result<LiftFactors> lift_factors(const Lift& lift) {
    Bounds bounds;
    bounds.length(lift.horizontal, k_most_reach, "horizontal")
        .length_or_zero(lift.vertical, k_most_reach, "vertical")
        .length_or_zero(lift.travel, k_most_reach, "travel")
        .angle_or_zero(lift.asymmetry, 180.0, "asymmetry")
        .number(lift.per_minute, k_most_per_minute, "frequency")
        .length_or_zero(lift.origin_vertical, k_most_reach, "origin_vertical");
    if (bounds.failed())
        return bounds.refusal();
    const Printing& p = lift.units == LiftUnits::inch ? k_inch : k_metric;
    const double h = std::fmax(in_unit(lift.horizontal, p), p.near);
    const double v = in_unit(lift.vertical, p);
    const double d = std::fmax(in_unit(lift.travel, p), p.near);
    const double a = quantity::to_degrees(lift.asymmetry);
    LiftFactors f{};
    f.load_constant = p.constant;
    f.horizontal = h > p.far ? 0.0 : p.near / h;
    f.vertical = v > p.highest ? 0.0 : 1.0 - p.slope * std::fabs(v - p.knuckle);
    f.distance = d > p.farthest ? 0.0 : std::fmin(1.0, 0.82 + p.distance / d);
    f.asymmetry = a > 135.0 ? 0.0 : 1.0 - 0.0032 * a;
    f.frequency = frequency_multiplier(
        lift.per_minute, lift.duration, in_unit(lift.origin_vertical, p) < p.knuckle);
    f.coupling = coupling_multiplier(lift.coupling, v < p.knuckle);
    return f;
}

base::Result<Working> lift_limit_working(const Lift& lift) {
    const auto f = lift_factors(lift);
    if (!f.ok())
        return f.refusal();
    std::string note = lift.units == LiftUnits::inch
                           ? "The printing in pounds and inches; the metric one differs by 1-2 %."
                           : "The metric printing; the one in pounds differs by 1-2 %.";
    if (!(f->limit() > Mass{}))
        note += std::string(" Outside the equation at ") + field_of_nothing(*f) +
                ": nothing may be lifted so.";
    return Working{&k_lift_limit_card,
                   {{"LC", f->load_constant},
                    {"HM", quantity::Number{f->horizontal, 3}},
                    {"VM", quantity::Number{f->vertical, 3}},
                    {"DM", quantity::Number{f->distance, 3}},
                    {"AM", quantity::Number{f->asymmetry, 3}},
                    {"FM", quantity::Number{f->frequency, 3}},
                    {"CM", quantity::Number{f->coupling, 2}}},
                   {"RWL", f->limit()},
                   note};
}

base::Result<Working> lift_index_working(const Lift& lift, Mass load) {
    const auto f = lift_factors(lift);
    if (!f.ok())
        return f.refusal();
    Bounds bounds;
    bounds.mass(load, "load");
    if (bounds.failed())
        return bounds.refusal();
    if (!(f->limit() > Mass{}))
        return base::Refusal{field_of_nothing(*f),
                             "Nothing may be lifted by hand so: there is no index.",
                             "use a hoist or a lift truck"};
    const double index = load / f->limit();
    // Common practice, no source: where to flag.
    std::string note = index > 3.0 || load > pounds(100.0)
                           ? "Hoist or lift truck, not hands (common practice, no source)."
                       : index > 1.0 ? "Over 1: get help or a hoist (common practice, no source)."
                                     : "";
    return Working{&k_lift_index_card,
                   {{"L", load}, {"RWL", f->limit()}},
                   {"LI", quantity::Number{index, 2}},
                   std::move(note)};
}

base::Result<Length> lift_reach(Length depth, Length vertical) {
    Bounds bounds;
    bounds.length(depth, k_most_reach, "depth").length_or_zero(vertical, k_most_reach, "vertical");
    if (bounds.failed())
        return bounds.refusal();
    return (vertical < inches(10.0) ? inches(10.0) : inches(8.0)) + depth / 2.0;
}

base::Result<Working> lift_reach_working(Length depth, Length vertical) {
    const auto reach = lift_reach(depth, vertical);
    if (!reach.ok())
        return reach.refusal();
    return Working{&k_lift_reach_card,
                   {{"c", *reach - depth / 2.0}, {"W", depth}},
                   {"H", *reach},
                   *reach > inches(25.0) ? "Over 25 in: nothing may be lifted so." : ""};
}

base::Result<Working> lift_team_working(Mass single, int people) {
    Bounds bounds;
    bounds.mass(single, "limit");
    if (bounds.failed())
        return bounds.refusal();
    if (people != 2 && people != 3)
        return base::Refusal{"people", "The rule is for two or three people.", "2 or 3"};
    const double share = people == 2 ? 2.0 / 3.0 : 0.5;
    return Working{&k_lift_team_card,
                   {{"f", quantity::Number{share, 3}},
                    {"n", quantity::Number{people * 1.0, 0}},
                    {"m", single}},
                   {"M", single * (share * people)},
                   "From memory."};
}

} // namespace treadle::supply
