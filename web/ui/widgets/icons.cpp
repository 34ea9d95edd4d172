#include "ui/widgets/icons.h"

#include <imgui.h>

#include <initializer_list>

namespace treadle::ui {

namespace {

/// Draws on a square from -1 to 1, y downwards.
class Pen {
public:
    Pen(ImDrawList& draw, float x, float y, float size, Colour colour)
        : draw_(draw),
          x_(x),
          y_(y),
          half_(size / 2),
          stroke_(size * 0.11F),
          colour_(colour) {}

    void line(std::initializer_list<ImVec2> points, bool closed = false) {
        draw_.PathClear();
        for (const ImVec2& p : points)
            draw_.PathLineTo(at(p));
        draw_.PathStroke(colour_, closed ? ImDrawFlags_Closed : ImDrawFlags_None, stroke_);
    }
    void head(ImVec2 a, ImVec2 b, ImVec2 c) {
        draw_.AddTriangleFilled(at(a), at(b), at(c), colour_);
    }
    void arc(ImVec2 centre, float radius, float from, float to) {
        draw_.PathClear();
        draw_.PathArcTo(at(centre), radius * half_, from, to, 24);
        draw_.PathStroke(colour_, ImDrawFlags_None, stroke_);
    }

private:
    [[nodiscard]] ImVec2 at(ImVec2 p) const { return {x_ + p.x * half_, y_ + p.y * half_}; }

    ImDrawList& draw_;
    float x_, y_, half_, stroke_;
    Colour colour_;
};

/// An arrow that goes back over a bow; `side` -1 turns to the left.
void turn(Pen& pen, float side) {
    const float pi = 3.14159265F;
    if (side < 0)
        pen.arc({0.1F, 0.35F}, 0.72F, 1.18F * pi, 1.95F * pi);
    else
        pen.arc({-0.1F, 0.35F}, 0.72F, 1.05F * pi, 1.82F * pi);
    pen.head({side * 0.95F, 0.3F}, {side * 0.95F, -0.42F}, {side * 0.25F, 0.2F});
}

} // namespace

void draw_icon(ImDrawList& draw, Icon icon, float x, float y, float size, Colour colour) {
    Pen pen(draw, x, y, size, colour);
    switch (icon) {
    case Icon::none:
        break;
    case Icon::undo:
        turn(pen, -1);
        break;
    case Icon::redo:
        turn(pen, 1);
        break;
    case Icon::plus:
        pen.line({{-0.8F, 0}, {0.8F, 0}});
        pen.line({{0, -0.8F}, {0, 0.8F}});
        break;
    case Icon::minus:
        pen.line({{-0.8F, 0}, {0.8F, 0}});
        break;
    case Icon::tick:
        pen.line({{-0.8F, 0.05F}, {-0.2F, 0.65F}, {0.8F, -0.65F}});
        break;
    case Icon::cross:
        pen.line({{-0.7F, -0.7F}, {0.7F, 0.7F}});
        pen.line({{-0.7F, 0.7F}, {0.7F, -0.7F}});
        break;
    case Icon::print:
        pen.line({{-0.5F, -0.2F}, {-0.5F, -0.85F}, {0.5F, -0.85F}, {0.5F, -0.2F}});
        pen.line({{-0.5F, 0.45F},
                  {-0.9F, 0.45F},
                  {-0.9F, -0.2F},
                  {0.9F, -0.2F},
                  {0.9F, 0.45F},
                  {0.5F, 0.45F}});
        pen.line({{-0.5F, 0.15F}, {0.5F, 0.15F}, {0.5F, 0.85F}, {-0.5F, 0.85F}}, true);
        break;
    case Icon::open:
        pen.line({{0, 0.45F}, {0, -0.5F}});
        pen.head({-0.4F, -0.35F}, {0.4F, -0.35F}, {0, -0.9F});
        pen.line({{-0.85F, 0.3F}, {-0.85F, 0.85F}, {0.85F, 0.85F}, {0.85F, 0.3F}});
        break;
    case Icon::save:
        pen.line({{0, -0.9F}, {0, 0.1F}});
        pen.head({-0.4F, 0}, {0.4F, 0}, {0, 0.55F});
        pen.line({{-0.85F, 0.3F}, {-0.85F, 0.85F}, {0.85F, 0.85F}, {0.85F, 0.3F}});
        break;
    case Icon::back:
        pen.line({{0.35F, -0.8F}, {-0.45F, 0}, {0.35F, 0.8F}});
        break;
    case Icon::next:
        pen.line({{-0.35F, -0.8F}, {0.45F, 0}, {-0.35F, 0.8F}});
        break;
    case Icon::up:
        pen.line({{-0.8F, 0.35F}, {0, -0.45F}, {0.8F, 0.35F}});
        break;
    case Icon::find: // a hole and the scriber that points at it
        pen.arc({-0.2F, -0.2F}, 0.58F, 0, 6.2831853F);
        pen.line({{0.24F, 0.24F}, {0.88F, 0.88F}});
        break;
    case Icon::down:
        pen.line({{-0.8F, -0.35F}, {0, 0.45F}, {0.8F, -0.35F}});
        break;
    }
}

} // namespace treadle::ui
