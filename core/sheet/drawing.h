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

enum class Pen { outline, hidden, dimension, bend_line, datum, highlight, hatch, none };
/// Told apart without colour. Steel is a tint; what is hatched is paper under its strokes.
enum class Fill { none, steel, paper, dark, hatched };

struct Stroke {
    Point from;
    Point to;
};

struct Path {
    std::vector<Point> points;
    /// How the way from each point to the next bends: the tangent of a quarter of its angle,
    /// anticlockwise above zero, 0 straight, 1 half a circle. Empty: all ways are straight.
    std::vector<double> bulges;
    bool closed = false;
    Pen pen = Pen::outline;
    Fill fill = Fill::none;
    /// Of Fill::hatched, as geometry: a renderer that made its own would show others.
    std::vector<Stroke> hatch;
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
/// A stroke across a dimension's line, or from it to a figure that found no room beside it.
struct Tick {
    Point from;
    Point to;
    int operation = plan::k_none;
};
/// A line along which lengths are measured. Its figures are labels, which find their own room.
struct Dimension {
    Point from;
    Point to;
    std::vector<Tick> ticks;
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
/// Where a face lies in a flat view: its datum corner and its width.
struct FacePlace {
    section::Face face = section::Face::flat;
    Point datum;
    Length width;
};
/// Labels never overlap in a picture at least as large as the box the maker laid it out for.
struct Drawing {
    std::vector<Path> paths;
    std::vector<Circle> circles;
    std::vector<Dimension> dimensions;
    std::vector<Label> labels;
    std::vector<FacePlace> faces; ///< of a flat view
    Point low;                    ///< bounds including labels' room
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
/// One operation of a flat view by itself, in the same coordinates as `on`: what a moved operation
/// would look like there.
[[nodiscard]] Drawing
draw_alone(const plan::PartPlan& plan, int operation, const std::vector<FacePlace>& on);
/// The finished shape: a bent part's profile with outside legs and angles, an angle's or channel's
/// section beside its view; straight flats and plates: the same outline without bend lines.
[[nodiscard]] Drawing
draw_finished(const plan::PartPlan& plan, PrintStyle style, PictureBox box = k_finished_box);
/// Small picture for a list: outline only, no text.
[[nodiscard]] Drawing draw_small(const plan::PartPlan& plan);

/// Side view after this step of the plan's order of bends, the rest still flat; outline only.
[[nodiscard]] Drawing draw_bend_stage(const plan::PartPlan& plan, std::size_t step);

/// For a renderer without arcs: chords in their place, no farther from them than `within`.
[[nodiscard]] std::vector<Point> straightened(const Path& path, Length within);

/// Inline SVG that fits the box, presentation attributes only (no style), text escaped.
[[nodiscard]] std::string to_svg(const Drawing& drawing, double width_mm, double height_mm);

} // namespace treadle::sheet
