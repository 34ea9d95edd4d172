// A card that goes into a bend and one that goes over it: no light may be seen.

#include "sheet/figures.h"
#include "sheet/template_page.h"

#include <cmath>

namespace treadle::sheet {

namespace {

using quantity::to_millimetres;

constexpr double k_edge = 8.0;
constexpr double k_leg = 70.0;  // of the gauge
constexpr double k_wide = 18.0; // of its arms
constexpr double k_gap = 10.0;  // between the two cards

Spot along(double angle, double length) {
    return {length * std::cos(angle), length * std::sin(angle)};
}

/// Corner at the origin, one leg along x, the other turned up by `open`.
std::vector<Spot> inside_card(double open, double radius) {
    // Cut off square across the corner, clear of the bend's own radius.
    const double clear = radius > 0.0 ? radius / std::tan(open / 2.0) + 1.0 : 1.0;
    const Spot up = along(open, clear);
    return {{clear, 0.0}, {k_leg, 0.0}, along(open, k_leg), up};
}

void add_card(FullPicture& picture, std::vector<Spot> spots, Spot by, const char* name) {
    FullPath path;
    for (Spot& spot : spots)
        path.points.push_back({spot.x + by.x, spot.y + by.y});
    path.closed = true;
    path.name = name;
    picture.paths.push_back(std::move(path));
}

/// The same corner cut out of a card: what goes over the outside, as wide as a hand.
std::vector<Spot> outside_card(double open, double wide) {
    const double half = open / 2.0;
    const Spot back = along(half, -wide / std::sin(half));
    const Spot leg = along(open, k_leg);
    return {{0.0, 0.0},
            {k_leg, 0.0},
            {k_leg, -wide},
            {back.x, back.y},
            {leg.x + wide * std::cos(open + 1.5707963267948966),
             leg.y + wide * std::sin(open + 1.5707963267948966)},
            leg};
}

void fit(FullPicture& picture) {
    double low_x = 1e9;
    double low_y = 1e9;
    double high_x = -1e9;
    double high_y = -1e9;
    for (const FullPath& path : picture.paths)
        for (const Spot& spot : path.points) {
            low_x = std::fmin(low_x, spot.x);
            low_y = std::fmin(low_y, spot.y);
            high_x = std::fmax(high_x, spot.x);
            high_y = std::fmax(high_y, spot.y);
        }
    const Spot by{k_edge - low_x, k_edge - low_y};
    for (FullPath& path : picture.paths)
        for (Spot& spot : path.points)
            spot = {spot.x + by.x, spot.y + by.y};
    for (FullText& text : picture.texts)
        text.at = {text.at.x + by.x, text.at.y + by.y};
    picture.width = high_x - low_x + 2.0 * k_edge;
    picture.height = high_y - low_y + 2.0 * k_edge;
}

} // namespace

FullPicture gauge_picture(const plan::PartPlan& part, int operation, PrintStyle style) {
    const auto index = static_cast<std::size_t>(operation);
    const auto& bend = std::get<job::Bend>(part.part->operations[index]);
    FullPicture picture;
    const std::string number = std::to_string(operation + 1);
    picture.key = "gauge/" + part.part->id + "/" + std::to_string(operation);
    picture.title =
        part.part->mark + ", " + number + ": gauges for " + quantity::print(bend.angle, style);
    const Angle open = degrees(180.0) - bend.angle;
    if (!(quantity::to_degrees(open) >= 15.0)) {
        picture.refusal = "A bend closed further than 165 degrees has no room for a gauge.";
        return picture;
    }
    const double angle = open.in_radians();
    const Length radius =
        part.operations.size() > index ? part.operations[index].bend.radius : bend.radius;
    add_card(picture, inside_card(angle, to_millimetres(radius)), {}, "inside");
    const std::vector<Spot> outside = outside_card(angle, k_wide);
    double high = 0.0;
    for (const Spot& spot : outside)
        high = std::fmax(high, spot.y);
    const double down = high + k_gap;
    add_card(picture, outside, {0.0, -down}, "outside");
    picture.texts.push_back({{k_leg * 0.3, 3.0}, "in " + quantity::print(open, style)});
    picture.texts.push_back(
        {{k_leg * 0.3, -down - k_wide * 0.6}, "over " + quantity::print(open, style)});
    picture.notes = {
        "Cut both cards out along the line. The bend is right when no light shows between card and "
        "steel,",
        "with the piece off the tool: its springback is in the piece, not in the card.",
        "Turned through " + quantity::print(bend.angle, style) + ", opening angle " +
            quantity::print(open, style) + "."};
    fit(picture);
    return picture;
}

} // namespace treadle::sheet
