// What a place of the machine can do, as a picture: metal as high as it may be thick, hatched where
// the certificate decides, axes with ticks in the shop's own steps.

#pragma once

#include "plan/capacity.h"
#include "sheet/drawing.h"

#include <string>
#include <vector>

namespace treadle::sheet {

/// A stretch of the axis with one limit. All in shares of the two axes.
struct LimitStep {
    double from = 0.0;
    double to = 0.0;
    double fits = 0.0;
    double fits_up_to = 0.0;
    double least = 0.0; ///< thinner does not fit either
};
struct LimitTick {
    double at = 0.0; ///< share of its axis
    std::string words;
};
struct LimitPlace {
    double along = 0.0; ///< shares of the axes; 1 where it is beyond them
    double up = 0.0;
};
struct LimitsChart {
    std::string axis;    ///< "hole diameter"
    std::string x_title; ///< the same with its unit; none for bars, which are named instead
    std::string y_title;
    std::string description; ///< "Greatest thickness, in over hole diameter"
    std::vector<LimitStep> steps;
    std::vector<LimitTick> x_ticks;
    std::vector<LimitTick> y_ticks;
    std::vector<LimitPlace> job; ///< of each operation of the job, as they stand in the capacity
};
[[nodiscard]] LimitsChart limits_chart(const plan::Capacity& capacity, PrintStyle style);

/// The axes run from `low` to `high` of the drawing.
struct LimitsDrawing {
    Drawing drawing;
    Point low;
    Point high;
};
[[nodiscard]] LimitsDrawing draw_limits(const LimitsChart& chart, PictureBox box);
/// Samples for a legend: what any metal of the grade may be, and what only with a certificate.
[[nodiscard]] Drawing draw_limits_sample(bool any_metal, PictureBox box);

} // namespace treadle::sheet
