#include "assembly/pieces.h"

#include "base/text.h"

#include <algorithm>
#include <cmath>

namespace treadle::assembly {

namespace {

using section::Shape;

std::string numbered(std::string word, int side, const char* joint) {
    return side > 1 ? word + joint + std::to_string(side) : word;
}

std::string degrees_text(Angle angle) {
    return base::write_short(std::abs(angle.in_degrees()), 2) + " deg";
}

} // namespace

job::Part straight_part(const Piece& piece,
                        const std::string& mark,
                        const std::string& grade,
                        const Section& section,
                        Length length,
                        int count) {
    job::Part part;
    part.mark = mark + "-" + numbered(piece.code, piece.side, "");
    part.note = base::capital(piece.name);
    part.grade = grade;
    part.section = section;
    part.length = length;
    part.count = count;
    return part;
}

bool is_sheared(const Section& section) {
    return section.shape != Shape::pipe && section.shape != Shape::square_tube &&
           section.shape != Shape::channel;
}

void cut_ends(job::Part& part, Angle start, Angle finish) {
    if (is_sheared(part.section)) {
        part.operations.insert(part.operations.begin(),
                               job::Cut{job::CutSide::length, start, finish});
        return;
    }
    std::string words = "sawn to length";
    if (start != Angle{} || finish != Angle{})
        words += ", ends off square by " + degrees_text(start) + " and " + degrees_text(finish) +
                 ((start > Angle{}) == (finish > Angle{}) ? "" : ", parallel");
    add_note(part, words);
}

void cut_ends(job::Part& part) { cut_ends(part, Angle{}, Angle{}); }

void add_note(job::Part& part, const std::string& words) {
    if (!words.empty())
        part.note += (part.note.empty() ? "" : "; ") + words;
}

void add(Made& made, const Piece& piece, job::Part part) {
    made.parts.push_back({numbered(piece.role, piece.side, "-"), std::move(part)});
}

Length rail_depth(const Section& section) {
    switch (section.shape) {
    case Shape::flat:
    case Shape::plate:
        return section.thickness;
    case Shape::angle:
    case Shape::square_tube:
        return section.height;
    case Shape::channel:
    case Shape::round:
    case Shape::square:
    case Shape::pipe:
        return section.width; // a channel lies on its web, flanges upright
    }
    return section.width;
}

Length rail_face(const Section& section) {
    return section.shape == Shape::channel ? section.height : section.width;
}

bool can_be_punched(const Section& section) {
    return section.shape == Shape::flat || section.shape == Shape::plate ||
           section.shape == Shape::channel || section.shape == Shape::angle;
}

section::Face punched_face(const Section& section) {
    if (section.shape == Shape::channel)
        return section::Face::web;
    return section.shape == Shape::angle ? section::Face::leg_a : section::Face::flat;
}

Outline box(Spot low, Length width, Length height, double slope, Shade shade) {
    const Length rise = width * slope;
    return {{low,
             {low.x + width, low.y + rise},
             {low.x + width, low.y + rise + height},
             {low.x, low.y + height}},
            shade,
            ""};
}

Outline line(std::vector<Spot> spots) { return {std::move(spots), Shade::open, ""}; }

Outline marked(Outline outline, const std::string& mark) {
    outline.mark = mark;
    return outline;
}

} // namespace treadle::assembly
