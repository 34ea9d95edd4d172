#include "assembly/bent_flat.h"

#include "process/blank.h"

#include <cmath>

namespace treadle::assembly {

namespace {

using base::Refusal;
using base::Result;

job::Part part_of(const FlatBar& flat,
                  const Piece& piece,
                  const std::string& mark,
                  const std::vector<Length>& legs,
                  const std::vector<Turn>& turns) {
    job::Part part = straight_part(piece, mark, flat.grade, flat.bar, Length{}, flat.count);
    part.legs = legs;
    cut_ends(part);
    const Length middle = flat.bar.width / 2.0;
    // Holes before bends: they are punched in the flat.
    if (flat.bolted) {
        part.operations.emplace_back(round_holes(flat.bolt, {flat.end, middle, 1, 1, {}, {}}));
        job::Punch last = round_holes(flat.bolt, {legs.back() - flat.end, middle, 1, 1, {}, {}});
        last.leg = static_cast<int>(legs.size()) - 1;
        part.operations.emplace_back(last);
    }
    for (const Turn& turn : turns)
        part.operations.emplace_back(job::Bend{turn.angle, flat.radius, turn.up});
    return part;
}

/// One line, its legs as long as they are outside: the finished shape is the part's own drawing.
Elevation profile(const std::vector<Length>& legs, const std::vector<Turn>& turns) {
    Elevation out;
    Spot at{};
    double angle = 0.0;
    std::vector<Spot> spots{at};
    for (std::size_t i = 0; i < legs.size(); ++i) {
        at = {at.x + legs[i] * std::cos(angle), at.y + legs[i] * std::sin(angle)};
        spots.push_back(at);
        if (i < turns.size())
            angle += turns[i].angle.in_radians() * (turns[i].up ? 1.0 : -1.0);
    }
    for (std::size_t i = 0; i + 1 < spots.size(); ++i)
        out.spans.push_back({spots[i], spots[i + 1], ""});
    out.outlines.push_back(line(std::move(spots)));
    out.description = "Side view of a bent flat " + std::to_string(legs.size()) +
                      " legs long, thickness left out.";
    return out;
}

} // namespace

FlatBar read_flat(Inputs& in) {
    FlatBar flat;
    flat.bar = in.section("bar");
    flat.radius = in.place_or("radius", Length{});
    flat.bolted = in.has("bolt");
    if (flat.bolted != in.has("end"))
        in.refuse({"end", "A bolt goes with its distance to the end.", "both, or none"});
    if (flat.bolted) {
        flat.bolt = read_bolt(in, false);
        flat.end = in.size("end");
    }
    flat.count = in.count_or("count", 1, 10000, 1);
    flat.grade = in.grade("grade");
    if (in.failed())
        return flat;
    if (flat.bar.shape != section::Shape::flat)
        in.refuse({"bar", "Brackets are bent from flat bar here.", "flat 2 x 1/4 in"});
    else if (flat.bolted && !(flat.bar.width > flat.bolt.hole.width))
        in.refuse({"bolt", "The hole is as wide as the bar.", ""});
    else if (flat.bolted && !(flat.end > flat.bolt.hole.width / 2.0))
        in.refuse({"end", "The hole runs off the end.", ""});
    return flat;
}

Result<Made> bent_flat(const FlatBar& flat,
                       const Piece& piece,
                       const std::string& mark,
                       const std::vector<Length>& legs,
                       const std::vector<Turn>& turns,
                       const char* short_leg) {
    for (std::size_t i = 0; i < legs.size(); ++i) {
        const bool between = i > 0 && i + 1 < legs.size();
        Length used = (flat.thickness() + flat.radius) * (between ? 2.0 : 1.0);
        if (!between && flat.bolted)
            used += flat.end + flat.bolt.hole.width / 2.0;
        if (!(legs[i] > used))
            return Refusal{short_leg,
                           "A leg so short is used up by its bends and its hole.",
                           "leg " + std::to_string(i + 1)};
    }
    Made made;
    add(made, piece, part_of(flat, piece, mark, legs, turns));
    for (std::size_t i = 0; i < legs.size(); ++i)
        made.figures.push_back({"leg " + std::to_string(i + 1) + ", outside", legs[i]});
    if (flat.bolted) {
        show_hole(made, flat.bolt);
        hold_edge(made, flat.bolt, "hole to the sheared end", flat.end);
        BoltChoice side = flat.bolt;
        side.edge = layout::EdgeKind::rolled; // the bar's own edge
        hold_edge(made, side, "hole to the bar's edge", flat.bar.width / 2.0);
    }
    made.cautions.emplace_back(
        "Blank, radius and least legs come from the plan, for the V that is used there; "
        "try one piece first. What the bracket carries is not looked at here.");
    made.elevation = profile(legs, turns);
    return made;
}

} // namespace treadle::assembly
