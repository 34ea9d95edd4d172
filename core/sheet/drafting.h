// Private to the room: puts lines, labels and balloons into a drawing without letting text overlap.
//
// Coordinates are part millimetres; `unit` is how many of them one point of the picture is worth.

#pragma once

#include "sheet/drawing.h"

#include <string>
#include <vector>

namespace treadle::sheet {

struct Spot { ///< millimetres
    double x = 0.0;
    double y = 0.0;
    double bulge = 0.0; ///< of the way to the next spot: Path::bulges
};
struct Box { ///< millimetres
    Spot low;
    Spot high;
};
[[nodiscard]] bool overlap(const Box& a, const Box& b);

/// A figure beside a line of ticks: where it belongs, and where there is room for it.
struct Figure {
    double at = 0.0;
    std::string text;
    double room = 0.0; ///< along the line
    double placed = 0.0;
    int operation = plan::k_none;
};
/// Moves figures apart, in order, as little as it can. Drops the inner ones of equal pitches, then
/// the closest, while they need more than `most`. None begins below `lowest`. Returns how many it
/// dropped.
int spread(std::vector<Figure>& figures, double most, double lowest);

class Drafter {
public:
    explicit Drafter(double unit) : unit_(unit) {}

    [[nodiscard]] double points(double count) const { return count * unit_; }
    [[nodiscard]] double text_width(const std::string& text, double size = 9.0) const;

    Path& path(const std::vector<Spot>& spots, Pen pen, int operation = plan::k_none);
    /// The line of a measure and a stroke at either end of it, from `foot` points to `head` points
    /// on the side that `out` points to.
    void measure(Spot from, Spot to, Spot out, double foot, double line, double head);
    Dimension& dimension(Spot from, Spot to);
    /// Closed; its hatch comes with the fill, where no side is bent.
    Path& shape(const std::vector<Spot>& spots, Fill fill, Pen pen, int operation = plan::k_none);
    void circle(Spot centre, double radius, Fill fill, int operation = plan::k_none);
    /// Text that holds its place against later text.
    void label(Spot at,
               const std::string& text,
               Anchor anchor,
               bool bold = false,
               int operation = plan::k_none,
               double size = 9.0);
    /// At the first of the spots where it overlaps nothing kept free; false when there is none.
    bool label_where_free(const std::vector<Spot>& spots, const std::string& text, int operation);
    /// The operation's number in a circle, beside a feature of this half size.
    void balloon(Spot feature, double half, int operation);

    void keep_free(const Box& box) { taken_.push_back(box); }
    [[nodiscard]] bool is_free(const Box& box) const;
    void include(Spot spot);

    [[nodiscard]] Drawing finish(std::string description);

private:
    [[nodiscard]] Box text_box(Spot at, const std::string& text, Anchor anchor, double size) const;

    double unit_ = 1.0;
    Drawing drawing_;
    std::vector<Box> taken_;
    Box bounds_;
    bool any_ = false;
};

[[nodiscard]] Point to_point(Spot spot);

} // namespace treadle::sheet
