// Holes, notches and ends of a face at full size, to be laid on the steel and pricked through.

#include "plan/words.h"
#include "sheet/arc.h"
#include "sheet/figures.h"
#include "sheet/outline.h"
#include "sheet/template_page.h"

#include <algorithm>
#include <cmath>

namespace treadle::sheet {

namespace {

using quantity::to_millimetres;

constexpr double k_edge = 8.0;    // paper round the piece
constexpr double k_within = 0.01; // of chords in place of arcs
constexpr double k_cross = 4.0;   // arms of a centre mark
constexpr double k_room = 26.0;   // a figure's width: closer holes share one

std::vector<Spot> moved(std::vector<Spot> spots, Spot by) {
    for (Spot& spot : spots)
        spot = {spot.x + by.x, spot.y + by.y, spot.bulge};
    return spots;
}

void add_shape(FullPicture& picture, const std::vector<Spot>& spots, Spot by, const char* name) {
    FullPath path;
    path.points = straightened(moved(spots, by), true, k_within);
    path.closed = true;
    path.name = name;
    picture.paths.push_back(std::move(path));
}

void add_cross(FullPicture& picture, Spot at) {
    picture.paths.push_back(
        {{{at.x - k_cross, at.y}, {at.x + k_cross, at.y}}, false, FullPen::thin, "centre"});
    picture.paths.push_back(
        {{{at.x, at.y - k_cross}, {at.x, at.y + k_cross}}, false, FullPen::thin, "centre"});
}

void add_hole(FullPicture& picture,
              const plan::PartPlan& part,
              const plan::Mark& mark,
              PrintStyle style,
              std::vector<Spot>& labelled) {
    const auto& punch =
        std::get<job::Punch>(part.part->operations[static_cast<std::size_t>(mark.operation)]);
    const Spot at{to_millimetres(mark.x) + k_edge, to_millimetres(mark.y) + k_edge};
    const std::vector<Spot> corners = hole_corners(punch.hole, punch.turned);
    const double half = to_millimetres(geometry::half_extent(punch.hole, punch.turned).along);
    if (corners.empty())
        picture.circles.push_back({at, half, "hole"});
    else
        add_shape(picture, corners, at, "hole");
    add_cross(picture, at);
    const bool crowded = std::any_of(labelled.begin(), labelled.end(), [&](const Spot& other) {
        return std::abs(other.x - at.x) < k_room && std::abs(other.y - at.y) < 8.0;
    });
    if (crowded)
        return;
    labelled.push_back(at);
    FullText figures;
    figures.at = at;
    figures.text = setting_text(mark.x, style) + ", " + setting_text(mark.y, style);
    figures.beside = {std::max(half, k_cross) + 0.8, 1.0};
    picture.texts.push_back(std::move(figures));
}

bool has_work(const plan::PartPlan& part, section::Face face) {
    return std::any_of(part.marks.begin(), part.marks.end(), [&](const plan::Mark& mark) {
        return mark.face == face && mark.kind == plan::Mark::Kind::hole;
    });
}

std::string title_of(const plan::PartPlan& part, section::Face face) {
    const bool one = face == section::Face::flat;
    return part.part->mark + ": holes" +
           (one ? "" : std::string(" of the ") + section::face_word(face));
}

} // namespace

std::vector<FullPicture> hole_pictures(const plan::PartPlan& part, PrintStyle style) {
    std::vector<FullPicture> pictures;
    if (part.problem)
        return pictures;
    const double length = blank_length_mm(part);
    for (const section::Face face : faces_shown(*part.part)) {
        if (!has_work(part, face))
            continue;
        FullPicture picture;
        picture.key =
            "holes/" + part.part->id +
            (face == section::Face::flat ? "" : std::string("/") + section::face_word(face));
        picture.title = title_of(part, face);
        picture.notes = {
            "Lower left corner on the datum end and edge (heel, back of web). Beside each hole: "
            "along, across.",
            "Seen from the side the punch comes from. The stops are set by the worksheet's "
            "figures, "
            "not by this page."};
        picture.width = length + 2.0 * k_edge;
        picture.height = face_width_mm(part, face) + 2.0 * k_edge;
        add_shape(picture, face_outline(part, face, length).outline, {k_edge, k_edge}, "outline");
        std::vector<Spot> labelled;
        for (const plan::Mark& mark : part.marks) {
            if (mark.face != face)
                continue;
            if (mark.kind == plan::Mark::Kind::hole)
                add_hole(picture, part, mark, style, labelled);
            if (mark.kind == plan::Mark::Kind::bend_line) {
                const double x = to_millimetres(mark.x) + k_edge;
                picture.paths.push_back(
                    {{{x, k_edge}, {x, picture.height - k_edge}}, false, FullPen::dashed, "bend"});
                FullText figure;
                figure.at = {x, k_edge};
                figure.text = "bend " + setting_text(mark.x, style);
                figure.beside = {1.0, 1.5};
                picture.texts.push_back(std::move(figure));
            }
        }
        pictures.push_back(std::move(picture));
    }
    return pictures;
}

} // namespace treadle::sheet
