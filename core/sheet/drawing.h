// A drawing as data: one model, drawn by the page's canvas and written as SVG.
//
// Part coordinates in millimetres, x to the right from the datum end, y up from the datum edge.
// Sizes of text and pen widths are in points of the final picture, not in part coordinates.

#pragma once

#include "plan/plan.h"
#include "quantity/quantity.h"

#include <string>
#include <vector>

namespace treadle::sheet {

struct Point {
    Length x;
    Length y;
};

enum class Pen { outline, hidden, dimension, bend_line, datum, highlight };
enum class Fill { none, steel, paper };

struct Path { ///< straight edges; arcs are split finely enough by the maker
    std::vector<Point> points;
    bool closed = false;
    Pen pen = Pen::outline;
    Fill fill = Fill::none;
    int operation =
        plan::k_none; ///< so that a tap finds the operation, and a choice is drawn heavy
};
struct Circle {
    Point centre;
    Length radius;
    Pen pen = Pen::outline;
    Fill fill = Fill::paper;
    int operation = plan::k_none;
};
enum class Anchor { start, middle, end };
struct Label {
    Point at; ///< middle of the text's height; along it as the anchor says
    std::string text;
    Anchor anchor = Anchor::middle;
    double points = 9.0;
    bool bold = false;
    int operation = plan::k_none;
};
/// Labels never overlap in a picture at least as large as the box the maker laid it out for.
struct Drawing {
    std::vector<Path> paths;
    std::vector<Circle> circles;
    std::vector<Label> labels;
    Point low; ///< bounds including labels' room
    Point high;
    std::string description; ///< one sentence for a screen reader
};

/// The box that a picture is laid out for: a renderer may give more room, not less.
struct PictureBox {
    double width_mm = 0.0;
    double height_mm = 0.0;
};
/// The boxes of the worksheet.
inline constexpr double k_flat_width_mm = 122.0;
inline constexpr double k_flat_height_mm = 62.0;
inline constexpr double k_finished_width_mm = 60.0;
inline constexpr double k_finished_height_mm = 60.0;
inline constexpr PictureBox k_flat_box{k_flat_width_mm, k_flat_height_mm};
inline constexpr PictureBox k_finished_box{k_finished_width_mm, k_finished_height_mm};

/// The flat blank with holes, notches, bend lines and running dimensions from the datum corner.
[[nodiscard]] Drawing
draw_flat(const plan::PartPlan& plan, PrintStyle style, PictureBox box = k_flat_box);
/// The finished shape: a bent part's profile with outside legs and angles, an angle's or channel's
/// section beside its view; straight flats and plates: the same outline without bend lines.
[[nodiscard]] Drawing
draw_finished(const plan::PartPlan& plan, PrintStyle style, PictureBox box = k_finished_box);
/// Small picture for a list: outline only, no text.
[[nodiscard]] Drawing draw_small(const plan::PartPlan& plan);

/// Side view after this step of the plan's order of bends, the rest still flat; outline only.
[[nodiscard]] Drawing draw_bend_stage(const plan::PartPlan& plan, std::size_t step);

/// Inline SVG that fits the box, presentation attributes only (no style), text escaped.
[[nodiscard]] std::string to_svg(const Drawing& drawing, double width_mm, double height_mm);

} // namespace treadle::sheet
