// The wrap that goes round a branch: its upper edge is the saddle, laid flat.

#include "plan/words.h"
#include "sheet/figures.h"
#include "sheet/template_page.h"

#include <algorithm>
#include <cmath>

namespace treadle::sheet {

namespace {

using quantity::to_millimetres;

constexpr double k_edge = 8.0;
constexpr double k_strip = 30.0; // straight band below the deepest ordinate
constexpr int k_stations = 16;
constexpr int k_points = 720;

std::string fine(Length value, PrintStyle style) { return quantity::print_decimal(value, style); }

void add_stations(FullPicture& picture,
                  const layout::SaddleTemplate& made,
                  double base,
                  double top,
                  PrintStyle style) {
    for (int i = 0; i <= k_stations; ++i) {
        const Length y = made.ordinates[static_cast<std::size_t>(i % k_stations)];
        const double x = k_edge + i * to_millimetres(made.spacing);
        picture.paths.push_back(
            {{{x, base}, {x, top - to_millimetres(y)}}, false, FullPen::thin, "station"});
        FullText ordinate;
        ordinate.at = {x, base};
        ordinate.text = fine(y, one_system(style));
        ordinate.beside = {-0.6, 2.0};
        ordinate.upright = true;
        if (i < k_stations)
            picture.texts.push_back(std::move(ordinate));
        picture.texts.push_back({{x, base - 4.0}, std::to_string(i), Anchor::middle, 3.2, true});
    }
}

} // namespace

FullPicture wrap_picture(const SaddleWrap& wrap, PrintStyle style, Length paper) {
    FullPicture picture;
    picture.key = wrap.key;
    const layout::SaddleJoint& joint = wrap.joint;
    picture.title = wrap.mark + ": wrap for the saddle";
    const auto stations = layout::saddle_template(joint, k_stations, paper);
    const auto curve = layout::saddle_template(joint, k_points, paper);
    if (!stations.ok() || !curve.ok()) {
        const base::Refusal& why = stations.ok() ? curve.refusal() : stations.refusal();
        picture.refusal = why.reason + (why.detail.empty() ? "" : " " + why.detail);
        return picture;
    }
    const double round = to_millimetres(curve->spacing) * k_points;
    const double depth = to_millimetres(curve->shape.depth);
    const double base = k_edge + 6.0;
    const double top = base + k_strip + depth;
    FullPath edge;
    edge.name = "saddle";
    for (int i = 0; i <= k_points; ++i)
        edge.points.push_back(
            {k_edge + round * i / k_points,
             top - to_millimetres(curve->ordinates[static_cast<std::size_t>(i % k_points)])});
    picture.paths.push_back(std::move(edge));
    picture.paths.push_back({{{k_edge, top - to_millimetres(curve->ordinates.front())},
                              {k_edge, base},
                              {k_edge + round, base},
                              {k_edge + round, top - to_millimetres(curve->ordinates.front())}},
                             false,
                             FullPen::edge,
                             "wrap"});
    add_stations(picture, *stations, base, top, style);
    picture.width = round + 2.0 * k_edge;
    picture.height = top + k_edge;
    const Length strip = millimetres(k_strip) + curve->shape.depth;
    picture.notes = {"Branch " + quantity::print_decimal(joint.branch_od, style) + " on run " +
                         quantity::print_decimal(joint.run_od, style) + ", " +
                         quantity::print(joint.angle, style) + ", offset " +
                         quantity::print_decimal(joint.offset, style) + ".",
                     "Straight edge square round the branch, " + fine(strip, style) +
                         " back from the long point.",
                     "Seam 0 and 16 on the line along the branch that faces the " +
                         std::string(joint.angle == degrees(90.0) ? "crown" : "acute side") +
                         ". At each station: long point down to the cut."};
    return picture;
}

} // namespace treadle::sheet
