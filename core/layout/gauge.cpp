#include "layout/gauge.h"

#include <cmath>
#include <iterator>

#include "layout/cards.h"
#include "layout/first_fault.h"

namespace treadle::layout {

namespace {

using base::Evidence;

constexpr base::CardSymbol k_ounce_symbols[] = {
    {"n", "gauge number"}, {"oz", "nominal ounces on a square foot"}, {"t", "thickness"}};
constexpr base::CardSymbol k_number_symbols[] = {{"n", "gauge number"}, {"t", "thickness"}};

constexpr int k_first_gauge = 3;
// Nominal ounces on a square foot, gauges 3 to 28; steel and stainless share them.
constexpr double k_ounces[] = {160, 150, 140, 130, 120, 110, 100, 90, 80, 70, 60, 50, 45,
                               40,  36,  32,  28,  24,  22,  20,  18, 16, 14, 12, 11, 10};
constexpr double k_ounces_of_an_inch = 16.0 * 41.82; // steel as the gauge's founders weighed it
constexpr double k_ounces_of_zinc = 2.5;
constexpr int k_first_galvanised = 8;

struct TubeWall {
    int gauge;
    double inches;
};
// Birmingham wire gauge, from memory.
constexpr TubeWall k_tube_walls[] = {{20, 0.035},
                                     {18, 0.049},
                                     {16, 0.065},
                                     {14, 0.083},
                                     {13, 0.095},
                                     {12, 0.109},
                                     {11, 0.120},
                                     {10, 0.134},
                                     {7, 0.188}};

const base::FormulaCard& card_of(GaugeMetal metal) {
    switch (metal) {
    case GaugeMetal::steel:
        return k_gauge_steel_card;
    case GaugeMetal::galvanised:
        return k_gauge_galvanised_card;
    case GaugeMetal::stainless:
        return k_gauge_stainless_card;
    case GaugeMetal::aluminium:
        return k_gauge_aluminium_card;
    case GaugeMetal::tube:
        break;
    }
    return k_gauge_tube_card;
}

double ounces(int gauge) { return k_ounces[gauge - k_first_gauge]; }

} // namespace

const base::FormulaCard k_gauge_steel_card{"gauge-steel",
                                           "Thickness of uncoated steel sheet by gauge",
                                           "t = oz / (16 x 41.82) in",
                                           k_ounce_symbols,
                                           "Manufacturers' Standard Gauge 3 to 28; the mill may be "
                                           "5 to 8 per cent off",
                                           "manufacturers-standard-gauge",
                                           Evidence::from_memory,
                                           ""};
const base::FormulaCard k_gauge_galvanised_card{"gauge-galvanised",
                                                "Thickness of galvanised steel sheet by gauge",
                                                "t = (oz + 2.5) / (16 x 41.82) in",
                                                k_ounce_symbols,
                                                "gauges 8 to 28, zinc included",
                                                "manufacturers-standard-gauge",
                                                Evidence::from_memory,
                                                ""};
const base::FormulaCard k_gauge_stainless_card{"gauge-stainless",
                                               "Thickness of stainless sheet by gauge",
                                               "t = oz / 640 in",
                                               k_ounce_symbols,
                                               "US Standard Gauge 3 to 28",
                                               "manufacturers-standard-gauge",
                                               Evidence::from_memory,
                                               ""};
const base::FormulaCard k_gauge_aluminium_card{"gauge-aluminium",
                                               "Thickness of aluminium sheet by gauge",
                                               "t = 0.005 x 92^((36 - n) / 39) in",
                                               k_number_symbols,
                                               "Brown and Sharpe gauge 3 to 28; also brass, copper",
                                               "american-wire-gauge",
                                               Evidence::from_memory,
                                               ""};
const base::FormulaCard k_gauge_tube_card{"gauge-tube",
                                          "Wall of a steel tube by gauge",
                                          "t of gauge n by the table",
                                          k_number_symbols,
                                          "Birmingham wire gauge 7, 10 to 14, 16, 18, 20",
                                          "birmingham-wire-gauge",
                                          Evidence::from_memory,
                                          ""};

base::Result<Length> gauge_thickness(int gauge, GaugeMetal metal) {
    if (metal == GaugeMetal::tube) {
        for (const TubeWall& row : k_tube_walls)
            if (row.gauge == gauge)
                return inches(row.inches);
        return base::Refusal{
            "gauge", "No tube wall of this gauge is in the table.", "7, 10 to 14, 16, 18, 20"};
    }
    const int first = metal == GaugeMetal::galvanised ? k_first_galvanised : k_first_gauge;
    const int last = k_first_gauge + static_cast<int>(std::size(k_ounces)) - 1;
    if (const auto fault = quantity::count_fault(gauge, first, last, "gauge"))
        return *fault;
    switch (metal) {
    case GaugeMetal::galvanised:
        return inches((ounces(gauge) + k_ounces_of_zinc) / k_ounces_of_an_inch);
    case GaugeMetal::stainless:
        return inches(ounces(gauge) / 640.0);
    case GaugeMetal::aluminium:
        return inches(0.005 * std::pow(92.0, (36.0 - gauge) / 39.0));
    default:
        return inches(ounces(gauge) / k_ounces_of_an_inch);
    }
}

base::Result<Working> gauge_working(int gauge, GaugeMetal metal) {
    const auto thickness = gauge_thickness(gauge, metal);
    if (!thickness.ok())
        return thickness.refusal();
    Working working{&card_of(metal), {}, {"t", *thickness}, ""};
    working.values.push_back({"n", quantity::Number{static_cast<double>(gauge), 0}});
    if (metal != GaugeMetal::aluminium && metal != GaugeMetal::tube)
        working.values.push_back({"oz", quantity::Number{ounces(gauge), 0}});
    working.note = "A decimal thickness on the order goes before the gauge number. Mill tolerance "
                   "is not in it.";
    return working;
}

} // namespace treadle::layout
