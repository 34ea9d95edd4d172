#include "assembly/infill.h"

#include <algorithm>
#include <cmath>

#include "assembly/pieces.h"
#include "layout/first_fault.h"
#include "layout/running.h"

namespace treadle::assembly {

namespace {

using base::Refusal;
using base::Result;
using geometry::HoleShape;
using section::Shape;

constexpr double k_most_pickets = 1000.0;
constexpr double k_exact_fit = 1e-9; // of a pitch: no picket more for what fits

/// Centres rounded along the rail; their level gaps are looked at again.
void round_marks(InfillMade& made, const Infill& q) {
    const double level = q.rake.slope ? std::cos(q.rake.angle.in_radians()) : 1.0;
    Length before = -(q.picket / 2.0);
    made.largest_gap = Length{};
    for (Length& mark : made.marks) {
        mark = layout::to_step(mark, q.step);
        made.largest_gap = std::max(made.largest_gap, mark * level - before - q.picket);
        before = mark * level;
    }
    made.largest_gap = std::max(made.largest_gap, q.clear - before - q.picket / 2.0);
}

InfillMade with_faces(InfillMade made, const Infill& q) {
    for (const Length mark : made.marks)
        made.faces.push_back(mark - q.rake.along(q.picket / 2.0));
    return made;
}

Result<InfillMade> answered(const Infill& q, Length planned) {
    // Level places are rounded where they are measured, at the near face of each picket.
    const Length step = q.rake.slope ? Length{} : q.step;
    InfillMade made;
    made.question = {q.clear, q.picket, planned, layout::PanelEnds::gap, step};
    const auto layout = layout::picket_layout(made.question);
    if (!layout.ok())
        return layout.refusal();
    made.count = layout->count;
    made.gap = layout->gap;
    made.pitch = layout->pitch;
    made.largest_gap = layout->largest_gap;
    for (const Length face : layout->faces)
        made.marks.push_back(q.rake.along(face + q.picket / 2.0));
    if (q.rake.slope && q.step > Length{}) {
        round_marks(made, q);
        if (layout::clearly_less(q.planned, made.largest_gap))
            return Refusal{"step", "Rounded to this step, a gap passes the limit.", ""};
    }
    return with_faces(std::move(made), q);
}

/// So many on each tread: the end gaps share what the equal ones leave, and are none of them wider.
Result<InfillMade> answered_by_tread(const Infill& q) {
    InfillMade made;
    made.question = {q.clear, q.picket, q.planned, layout::PanelEnds::gap, {}};
    made.pitch = q.tread / static_cast<double>(q.per_tread);
    const auto gap = layout::per_tread_working(q.tread, q.per_tread, q.picket, q.planned);
    if (!gap.ok())
        return Refusal{"per_tread", gap.refusal().reason, gap.refusal().detail};
    made.gap = std::get<Length>(gap->result.value);
    const double pitches = (q.clear - made.gap) / made.pitch;
    if (pitches > k_most_pickets)
        return Refusal{"tread", "So short a tread makes too many pickets.", ""};
    made.count = std::max(0, static_cast<int>(std::ceil(pitches - k_exact_fit)));
    const double between = made.count > 0 ? made.count - 1.0 : 0.0;
    const Length end = made.count > 0 ? (q.clear - q.picket - between * made.pitch) / 2.0 : q.clear;
    if (end < Length{})
        return Refusal{"per_tread", "So many pickets have no room between posts so close.", ""};
    made.largest_gap = made.count > 1 ? std::max(made.gap, end) : end;
    for (int i = 0; i < made.count; ++i)
        made.marks.push_back(q.rake.along(end + i * made.pitch + q.picket / 2.0));
    if (q.step > Length{})
        round_marks(made, q);
    return with_faces(std::move(made), q);
}

} // namespace

Length Rake::along(Length level) const {
    if (!slope || level == Length{})
        return level;
    const auto length = layout::along_rail(level, *slope);
    return length.ok() ? *length : level / std::cos(angle.in_radians());
}

Result<Rake> rake_of(const layout::Slope& slope) {
    const auto angle = layout::slope_angle(slope);
    if (!angle.ok())
        return angle.refusal();
    return Rake{slope, *angle, slope.rise / slope.run};
}

Result<InfillMade> infill(const Infill& q) {
    auto made = q.per_tread > 0 ? answered_by_tread(q) : answered(q, q.planned);
    // Where rounding eats into the planned limit, one step less is planned: then no rounded gap
    // can.
    if (!made.ok() && made.refusal().field == "step" && q.step < q.planned)
        made = answered(q, q.planned - q.step);
    return made;
}

Length picket_width(Inputs& in, const char* name, const Section& picket) {
    switch (picket.shape) {
    case Shape::round:
    case Shape::square:
        return picket.width;
    case Shape::pipe:
        return picket.width;
    case Shape::square_tube:
        return std::min(picket.width, picket.height);
    case Shape::flat:
    case Shape::plate:
    case Shape::angle:
    case Shape::channel:
        break;
    }
    in.refuse({name, "Pickets are round, square or tube here.", "square 3/4 in, round 16 mm"});
    return {};
}

geometry::HoleOutline picket_hole(const Section& picket, Length clearance, const Rake& rake) {
    const bool round = picket.shape == Shape::round || picket.shape == Shape::pipe;
    const Length across =
        (round ? picket.width : std::max(picket.width, picket.height)) + clearance;
    if (!rake.slope)
        return {round ? HoleShape::round : HoleShape::square, across, {}};
    return {round ? HoleShape::obround : HoleShape::rectangle, across, rake.along(across)};
}

void punch_rail(job::Part& rail, const RailHoles& holes) {
    const auto& marks = holes.infill.marks;
    job::Punch punch;
    punch.hole = holes.hole;
    punch.face = punched_face(rail.section);
    punch.at.y = rail_face(rail.section) / 2.0;
    for (std::size_t i = 0; i < marks.size();) {
        std::size_t next = i + 1;
        const Length pitch = next < marks.size() ? marks[next] - marks[i] : Length{};
        // An exact pitch is one row; rounded places are rows as long as their pitch stays.
        while (next < marks.size() &&
               (holes.exact || std::abs((marks[next] - marks[next - 1] - pitch).in_base()) < 1e-9))
            ++next;
        punch.at.x = marks[i] - holes.start;
        punch.at.columns = static_cast<int>(next - i);
        punch.at.column_pitch = punch.at.columns > 1 ? pitch : Length{};
        rail.operations.emplace_back(punch);
        i = next;
    }
}

} // namespace treadle::assembly
