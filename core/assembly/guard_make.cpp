// make_guard of guard.h.

#include <algorithm>
#include <cmath>

#include "assembly/guard.h"
#include "assembly/pieces.h"
#include "assembly/raked_rail.h"
#include "assembly/rule_lines.h"
#include "layout/guard_limit.h"

namespace treadle::assembly {

namespace {

using base::Refusal;
using base::Result;

constexpr GuardPieces k_run_pieces{{"post", "P", "post"},
                                   {"top-rail", "T", "top rail"},
                                   {"bottom-rail", "B", "bottom rail"},
                                   {"mid-rail", "M", "mid rail"},
                                   {"cap", "C", "cap rail"},
                                   {"picket", "K", "picket"},
                                   ""};
constexpr GuardPieces k_landing_pieces[] = {
    {{"lower-post", "LP", "post, lower landing"},
     {"lower-top-rail", "LT", "top rail, lower landing"},
     {"lower-bottom-rail", "LB", "bottom rail, lower landing"},
     {"lower-mid-rail", "LM", "mid rail, lower landing"},
     {"lower-cap", "LC", "cap rail, lower landing"},
     {"lower-picket", "LK", "picket, lower landing"},
     ", lower landing"},
    {{"upper-post", "UP", "post, upper landing"},
     {"upper-top-rail", "UT", "top rail, upper landing"},
     {"upper-bottom-rail", "UB", "bottom rail, upper landing"},
     {"upper-mid-rail", "UM", "mid rail, upper landing"},
     {"upper-cap", "UC", "cap rail, upper landing"},
     {"upper-picket", "UK", "picket, upper landing"},
     ", upper landing"}};
bool is_landing(const Guard& guard) { return guard.pieces != &k_run_pieces; }

/// A formula's own name for an input is not the fabricator's.
Refusal renamed(Refusal refusal) {
    if (refusal.field == "greatest_spacing")
        refusal.field = "spacing";
    if (refusal.field == "opening")
        refusal.field = "run";
    return refusal;
}

Result<GuardSide> lay_out(const Guard& guard, Length run) {
    const auto posts = layout::post_layout({run, guard.post.width, guard.spacing});
    if (!posts.ok())
        return renamed(posts.refusal());
    GuardSide side{run, posts->panels, posts->clear, {}};
    if (guard.fill == Fill::midrail)
        return side;
    const Length limit = opening_limit(guard.rules.opening);
    if (!(limit > guard.margin))
        return Refusal{"margin", "So wide a margin leaves nothing of the opening.", ""};
    auto made = infill({posts->clear,
                        guard.picket_width,
                        limit - guard.margin,
                        guard.step,
                        guard.rake,
                        guard.steps.run,
                        guard.per_tread});
    if (!made.ok())
        return renamed(made.refusal());
    side.infill = std::move(made).value();
    return side;
}

/// The rail between two posts; its places count from where it begins.
struct Rail {
    Length length;
    Length start;
};

Result<Rail> rail_of(const Guard& guard, const GuardSide& side, const Section& section) {
    const auto whole = raked_rail(side.clear, rail_depth(section), guard.rake);
    if (!whole.ok())
        return whole.refusal();
    const Length square = lost_by_square_ends(rail_depth(section), guard.rake);
    const Rail rail{*whole - 2.0 * guard.fit_up, square / 2.0 + guard.fit_up};
    if (!(rail.length > Length{}))
        return Refusal{"fit_up", "Nothing is left of a rail between posts so close.", ""};
    return rail;
}

Result<job::Part> rail_part(const Guard& guard,
                            const GuardSide& side,
                            const Section& section,
                            const Piece& piece,
                            const std::string& mark) {
    const auto rail = rail_of(guard, side, section);
    if (!rail.ok())
        return rail.refusal();
    job::Part part = straight_part(piece, mark, guard.grade, section, rail->length, side.panels);
    cut_ends(part);
    if (guard.fill == Fill::pickets && guard.joint == Joint::punched && side.infill.count > 0)
        punch_rail(part,
                   {side.infill,
                    picket_hole(guard.picket, guard.clearance, guard.rake),
                    rail->start,
                    guard.step == Length{}});
    if (guard.rake.slope)
        add_note(part, "square ends; the corner against each post is left open by the slope");
    return part;
}

std::optional<Refusal> add_rails(Made& made,
                                 const Guard& guard,
                                 const std::vector<GuardSide>& sides,
                                 const std::string& mark) {
    struct Row {
        Piece piece;
        const Section* section;
    };
    std::vector<Row> rows{{guard.pieces->top, &guard.top}, {guard.pieces->bottom, &guard.bottom}};
    if (guard.fill == Fill::midrail)
        rows.push_back({guard.pieces->mid, &guard.bottom});
    for (const Row& row : rows) {
        for (std::size_t i = 0; i < sides.size(); ++i) {
            Piece piece = row.piece;
            piece.side = static_cast<int>(i) + 1;
            auto part = rail_part(guard, sides[i], *row.section, piece, mark);
            if (!part.ok())
                return part.refusal();
            add(made, piece, std::move(part).value());
        }
    }
    return std::nullopt;
}

/// Mitred where it turns a corner, flush with the end posts where it ends.
void add_cap(Made& made,
             const Guard& guard,
             const std::vector<GuardSide>& sides,
             const std::string& mark) {
    if (guard.cap.width == Length{})
        return;
    const Length over = std::max(Length{}, (rail_face(guard.cap) - guard.post.width) / 2.0);
    for (std::size_t i = 0; i < sides.size(); ++i) {
        const bool before = i > 0;
        const bool after = i + 1 < sides.size();
        Piece piece = guard.pieces->cap;
        piece.side = static_cast<int>(i) + 1;
        Length length = guard.rake.along(sides[i].run);
        length += over * (static_cast<double>(before) + static_cast<double>(after));
        job::Part part = straight_part(piece, mark, guard.grade, guard.cap, length, 1);
        const Angle corner = degrees(45.0);
        cut_ends(part, before ? corner : Angle{}, after ? corner : Angle{});
        if (guard.rake.slope)
            add_note(part, "square ends; trim them upright at the end posts");
        add(made, piece, std::move(part));
    }
}

Result<Length> picket_length(const Guard& guard, const GuardHeights& heights) {
    const bool through = guard.joint == Joint::punched;
    Length rails;
    if (through)
        for (const Section* rail : {&guard.top, &guard.bottom})
            rails += guard.rake.upright(section::thickness_at(*rail, punched_face(*rail)));
    if (!guard.rake.slope)
        return heights.between + rails;
    const double level = std::cos(guard.rake.angle.in_radians());
    const auto cut = layout::raked_cut({guard.steps, guard.picket_width, heights.between * level});
    if (!cut.ok())
        return renamed(cut.refusal());
    return cut->blank + rails;
}

std::optional<Refusal> add_pickets(Made& made,
                                   const Guard& guard,
                                   const GuardHeights& heights,
                                   const std::vector<GuardSide>& sides,
                                   const std::string& mark) {
    int count = 0;
    for (const GuardSide& side : sides)
        count += side.panels * side.infill.count;
    if (count == 0)
        return std::nullopt;
    const auto length = picket_length(guard, heights);
    if (!length.ok())
        return length.refusal();
    const Piece& piece = guard.pieces->picket;
    job::Part part = straight_part(piece, mark, guard.grade, guard.picket, *length, count);
    const Angle bevel = guard.rake.slope ? guard.rake.angle : Angle{};
    cut_ends(part, bevel, -bevel);
    if (guard.rake.slope)
        add_note(part, "ends parallel, to the slope; length from long point to opposite point");
    add(made, piece, std::move(part));
    return std::nullopt;
}

void add_posts(Made& made,
               const Guard& guard,
               const GuardHeights& heights,
               const std::vector<GuardSide>& sides,
               const std::string& mark) {
    int count = is_landing(guard) ? 0 : 1; // a landing's first post is the flight's last
    for (const GuardSide& side : sides)
        count += side.panels;
    const Length length = guard.height - heights.cap - guard.base + guard.below;
    const Piece& piece = guard.pieces->post;
    job::Part part = straight_part(piece, mark, guard.post_grade, guard.post, length, count);
    cut_ends(part);
    if (guard.rake.slope)
        add_note(part, "from the nosing line; add what lies below it where the post stands");
    add(made, piece, std::move(part));
}

void hold_rules(Made& made,
                const Guard& guard,
                const GuardHeights& heights,
                const std::vector<GuardSide>& sides) {
    Length gap;
    const std::string where = guard.pieces->where;
    for (const GuardSide& side : sides)
        gap = std::max(gap, side.infill.largest_gap);
    const bool upright = guard.fill == Fill::pickets;
    if (upright) {
        hold(made.rules, guard.rules.opening, "opening between pickets and at posts" + where, gap);
    } else {
        const Length between = (heights.between - heights.bottom) / 2.0;
        hold(made.rules, guard.rules.opening, "opening between rails" + where, between);
        if (const auto rule = layout::midrail_working(guard.height); rule.ok())
            made.workings.push_back(*rule);
    }
    if (guard.rules.triangle == nullptr)
        hold(made.rules,
             guard.rules.bottom != nullptr ? guard.rules.bottom : guard.rules.opening,
             "opening under the bottom rail" + where,
             guard.bottom_gap);
    if (guard.wall_gap > Length{})
        hold(made.rules,
             guard.rules.opening,
             "opening from the last post to the wall",
             guard.wall_gap);
    hold(made.rules, guard.rules.height, "height of the top edge" + where, guard.height);
    if (guard.pool && upright)
        hold_pool_pickets(made.rules, heights.between + heights.top, gap);
}

std::optional<Refusal> hold_triangle(Made& made, const Guard& guard) {
    if (guard.rules.triangle == nullptr)
        return std::nullopt;
    const layout::StairTriangle stair{guard.steps.rise, guard.steps.run, guard.bottom_gap};
    const auto sphere = layout::triangle_sphere(stair);
    if (!sphere.ok()) {
        Refusal fault = sphere.refusal();
        fault.field = fault.field == "rail_height" ? "bottom_gap" : fault.field;
        return fault;
    }
    hold(made.rules, guard.rules.triangle, "sphere in the corner of step and bottom rail", *sphere);
    if (const auto working = layout::triangle_working(stair, opening_limit(guard.rules.triangle));
        working.ok())
        made.workings.push_back(*working);
    return std::nullopt;
}

Result<Working> picket_working(const Guard& guard, const GuardSide& side) {
    if (guard.per_tread == 0)
        return layout::picket_working(side.infill.question);
    return layout::per_tread_working(
        guard.steps.run, guard.per_tread, guard.picket_width, opening_limit(guard.rules.opening));
}

void add_figures(Made& made, const Guard& guard, const std::vector<GuardSide>& sides) {
    for (std::size_t i = 0; i < sides.size(); ++i) {
        const GuardSide& side = sides[i];
        const std::string where =
            (sides.size() > 1 ? ", side " + std::to_string(i + 1) : "") + guard.pieces->where;
        made.figures.push_back({"panels" + where, whole(side.panels)});
        made.figures.push_back({"clear between posts, level" + where, side.clear});
        if (const auto posts = layout::post_working({side.run, guard.post.width, guard.spacing});
            posts.ok())
            made.workings.push_back(*posts);
        if (guard.fill == Fill::midrail)
            continue;
        made.figures.push_back({"pickets in a panel" + where, whole(side.infill.count)});
        made.figures.push_back({"clear gap, level" + where, side.infill.gap});
        made.figures.push_back(
            {"pitch of pickets along the rail" + where, guard.rake.along(side.infill.pitch)});
        made.marks.push_back({"near faces of pickets, from the post's face along the rail" + where,
                              side.infill.faces});
        if (const auto pickets = picket_working(guard, side); pickets.ok())
            made.workings.push_back(*pickets);
    }
    if (!guard.rake.slope)
        return;
    made.figures.push_back({"slope", guard.rake.angle});
    if (const auto slope = layout::slope_working(guard.steps); slope.ok())
        made.workings.push_back(*slope);
    const auto rail = raked_rail_working(sides.front().clear, rail_depth(guard.top), guard.rake);
    if (rail.ok())
        made.workings.push_back(*rail);
    const Length square = guard_heights(guard).between * std::cos(guard.rake.angle.in_radians());
    const layout::RakedPicket cut{guard.steps, guard.picket_width, square};
    for (const auto& working : {layout::raked_length_working(cut),
                                layout::raked_bevel_working(cut),
                                layout::raked_blank_working(cut)})
        if (working.ok())
            made.workings.push_back(*working);
}

/// One stretch: its parts, rules and figures, and its sides for the drawing.
std::optional<Refusal> make_stretch(Made& made,
                                    Inputs& in,
                                    const Guard& guard,
                                    std::vector<GuardSide>& sides,
                                    const std::string& mark) {
    const GuardHeights heights = guard_heights(guard);
    if (!(heights.between > Length{}) || !(guard.height > heights.cap + guard.base))
        in.refuse({"height", "Rails and gap leave no room under this height.", ""});
    if (guard.fill == Fill::midrail && !(heights.between > rail_depth(guard.bottom)))
        in.refuse({"height", "No mid rail fits between the rails.", ""});
    for (const Length run : guard.runs) {
        auto side = lay_out(guard, run);
        if (!side.ok())
            return side.refusal();
        sides.push_back(std::move(side).value());
    }
    if (in.failed())
        return in.refusal();
    add_posts(made, guard, heights, sides, mark);
    if (auto fault = add_rails(made, guard, sides, mark))
        return fault;
    add_cap(made, guard, sides, mark);
    if (auto fault = add_pickets(made, guard, heights, sides, mark))
        return fault;
    hold_rules(made, guard, heights, sides);
    if (auto fault = hold_triangle(made, guard))
        return fault;
    add_figures(made, guard, sides);
    return std::nullopt;
}

/// The level stretch that goes on from a flight's last post, by the rules of a level guard.
Guard landing_of(const Guard& flight, Landing which) {
    Guard level = flight;
    level.pieces = &k_landing_pieces[static_cast<int>(which)];
    level.rules = flight.landing_rules;
    level.runs = {flight.landings[static_cast<int>(which)]};
    level.height = flight.landing_height;
    level.steps = {};
    level.rake = {};
    level.per_tread = 0;
    level.wall_gap = {};
    return level;
}

Refusal at_landing(Refusal fault, Landing which) {
    // The flight was made with the same post and spacing: the landing is what is too short.
    if (fault.field == "run" || fault.field == "post" || fault.field == "spacing")
        fault.field = which == Landing::lower ? "lower_landing" : "upper_landing";
    if (fault.field == "height")
        fault.field = "landing_height";
    return fault;
}

} // namespace

Result<Made> make_guard(Inputs& in, const Guard& asked, const std::string& mark) {
    Guard guard = asked;
    guard.pieces = &k_run_pieces;
    Made made;
    std::vector<GuardSide> sides;
    if (auto fault = make_stretch(made, in, guard, sides, mark))
        return *fault;
    made.elevation = draw_guard(guard, sides, mark);
    for (const Landing which : {Landing::lower, Landing::upper}) {
        if (guard.landings[static_cast<int>(which)] == Length{})
            continue;
        const Guard landing = landing_of(guard, which);
        std::vector<GuardSide> own;
        if (auto fault = make_stretch(made, in, landing, own, mark))
            return at_landing(*fault, which);
        draw_landing(made.elevation, guard, landing, own.front(), which, mark);
        if (landing.height != guard.height)
            made.cautions.emplace_back("Flight and landing share a post and differ in height: make "
                                       "that post as long as the higher of both asks.");
    }
    made.cautions.emplace_back(k_code_governs);
    return made;
}

} // namespace treadle::assembly
