#include "calc/answer_builder.h"
#include "calc/calculations.h"
#include "calc/layout_inputs.h"

#include <array>
#include <vector>

#include "layout/cards.h"
#include "layout/picket.h"
#include "layout/rake.h"

namespace treadle::calc {

layout::Slope read_slope(Reader& in) {
    struct Way {
        const char* rise;
        const char* run;
    };
    static constexpr std::array k_ways{Way{"riser", "tread"}, Way{"rise", "run"}};
    if (in.has("slope")) {
        for (const char* name : {"riser", "tread", "rise", "run"})
            in.refuse_if_given(name, "Give this or slope, not both.");
        const double slope = in.ratio("slope");
        const layout::Slope out{slope * quantity::metres(1.0), quantity::metres(1.0)};
        if (!in.failed() && !layout::slope_angle(out).ok())
            in.refuse({"slope", "This is no slope of a stair or ramp.", "over 0, up to 80 deg"});
        return out;
    }
    const Way way = in.has("rise") || in.has("run") ? k_ways[1] : k_ways[0];
    if (way.rise == k_ways[1].rise)
        for (const char* name : {"riser", "tread"})
            in.refuse_if_given(name, "Give riser and tread, or rise and run.");
    in.require(way.rise);
    in.require(way.run);
    const layout::Slope out{size_given(in, way.rise), size_given(in, way.run)};
    if (!in.failed())
        if (const auto angle = layout::slope_angle(out); !angle.ok())
            in.refuse({angle.refusal().field == "run" ? way.run : way.rise,
                       angle.refusal().reason,
                       angle.refusal().detail});
    return out;
}

namespace {

using base::Result;

constexpr Length k_usual_sphere = inches(6.0); // International Residential Code, R312.1.3

// How a slope is given, at the head of three lists of inputs.
constexpr InputSpec k_riser{"riser", InputKind::length, false, "with tread", "", "7 in"};
constexpr InputSpec k_tread{"tread", InputKind::length, false, "with riser", "", "11 in"};
constexpr InputSpec k_rise{"rise", InputKind::length, false, "with run, for riser", "", "1 ft"};
constexpr InputSpec k_run{"run", InputKind::length, false, "with rise, for tread", "", "12 ft"};
constexpr InputSpec k_slope{
    "slope", InputKind::ratio, false, "rise over run, alone: 1/12, 8 %", "", "1/12"};

constexpr InputSpec k_opening_inputs[] = {
    {"riser", InputKind::length, true, "of the stair", "", "7 in"},
    {"tread", InputKind::length, true, "of the stair", "", "11 in"},
    {"rail_height",
     InputKind::length,
     false,
     "underside of the bottom rail over the nosing line, upright; on it when not given",
     "",
     "1 in"},
    {"limit", InputKind::length, false, "sphere that must not pass; 6 in if not given", "", "6 in"},
    {"gap", InputKind::length, false, "clear and level, to be marked on the rail", "", "3-3/4 in"},
};
constexpr OutputSpec k_opening_outputs[] = {
    {"angle", "deg", "slope"},
    {"sphere", "mm", "that fits between riser, tread and rail"},
    {"highest_rail", "mm", "upright over the nosing line"},
    {"highest_rail_square", "mm", "the same, square to the slope"},
    {"gap_on_rail", "mm", "the gap along the rail"},
};
constexpr const base::FormulaCard* k_opening_cards[] = {&layout::k_rake_angle_card,
                                                        &layout::k_rake_triangle_card,
                                                        &layout::k_rake_rail_height_card,
                                                        &layout::k_rake_along_card};

Result<Answer> answer_opening(Reader& in) {
    const layout::Slope slope = read_slope(in);
    const layout::StairTriangle stair{slope.rise, slope.run, in.length("rail_height")};
    const Length limit = in.has("limit") ? in.length("limit") : k_usual_sphere;
    const Length gap = size_given(in, "gap");
    if (in.failed())
        return in.refusal();
    const auto highest = layout::highest_rail(stair, limit);
    if (!highest.ok())
        return highest.refusal();
    const auto square = layout::level_of(*highest, slope); // b cos A
    if (!square.ok())
        return square.refusal();
    AnswerBuilder answer;
    answer.add("angle", layout::slope_working(slope))
        .add("sphere", layout::triangle_working(stair, limit))
        .add("highest_rail", layout::highest_rail_working(stair, limit))
        .figure("highest_rail_square", *square);
    if (in.has("gap"))
        answer.add("gap_on_rail", layout::along_rail_working(gap, slope));
    return answer.finish();
}

constexpr InputSpec k_picket_inputs[] = {
    k_riser,
    k_tread,
    k_rise,
    k_run,
    k_slope,
    {"picket", InputKind::length, true, "width across, along the rail", "", "3/4 in"},
    {"between_rails", InputKind::length, true, "clear, square to the rails", "", "28 in"},
    {"gap", InputKind::length, false, "clear and level, to be marked on the rail", "", "3-3/4 in"},
};
constexpr OutputSpec k_picket_outputs[] = {
    {"angle", "deg", "slope, and bevel off square"},
    {"length", "mm", "on the picket's centre line"},
    {"bevel_offset", "mm", "long side less short side"},
    {"blank", "mm", "long point to the opposite point"},
    {"gap_on_rail", "mm", "the gap along the rail"},
    {"pitch_on_rail", "mm", "gap and picket along the rail"},
};
constexpr const base::FormulaCard* k_picket_cards[] = {&layout::k_rake_angle_card,
                                                       &layout::k_rake_picket_length_card,
                                                       &layout::k_rake_bevel_card,
                                                       &layout::k_rake_blank_card,
                                                       &layout::k_rake_along_card};

Result<Answer> answer_picket(Reader& in) {
    layout::RakedPicket q;
    q.slope = read_slope(in);
    q.picket = in.length("picket");
    q.between_rails = in.length("between_rails");
    const Length gap = size_given(in, "gap");
    if (in.failed())
        return in.refusal();
    AnswerBuilder answer;
    answer.add("angle", layout::slope_working(q.slope))
        .add("length", layout::raked_length_working(q))
        .add("bevel_offset", layout::raked_bevel_working(q))
        .add("blank", layout::raked_blank_working(q));
    if (in.has("gap"))
        answer.add("gap_on_rail", layout::along_rail_working(gap, q.slope))
            .add("pitch_on_rail", layout::along_rail_working(gap + q.picket, q.slope));
    return answer.finish();
}

constexpr InputSpec k_spacing_inputs[] = {
    k_riser,
    k_tread,
    k_rise,
    k_run,
    k_slope,
    {"opening", InputKind::length, true, "clear between posts, along the rail", "", "70 in"},
    {"picket", InputKind::length, true, "width across, along the rail", "", "3/4 in"},
    {"limit", InputKind::length, true, "on the clear, level gap", "", "3-7/8 in"},
};
constexpr OutputSpec k_spacing_outputs[] = {
    {"gap", "mm", "clear and level"},
    {"count", "", "pickets"},
    {"pitch_on_rail", "mm", "along the rail"},
    {"positions", "mm", "list: near face of each picket along the rail"},
};
constexpr const base::FormulaCard* k_spacing_cards[] = {&layout::k_picket_gap_card,
                                                        &layout::k_rake_along_card};

Result<Answer> answer_spacing(Reader& in) {
    const layout::Slope slope = read_slope(in);
    const Length along = size_given(in, "opening");
    layout::PicketQuestion q;
    q.picket = in.length("picket");
    q.limit = in.length("limit");
    if (in.failed())
        return in.refusal();
    const auto level = layout::level_of(along, slope);
    if (!level.ok())
        return level.refusal();
    q.opening = *level;
    const auto made = layout::picket_layout(q);
    if (!made.ok())
        return made.refusal();
    std::vector<Length> faces;
    for (const Length face : made->faces) {
        const auto on_rail = layout::along_rail(face, slope);
        if (!on_rail.ok())
            return on_rail.refusal();
        faces.push_back(*on_rail);
    }
    return AnswerBuilder()
        .add("gap", layout::picket_working(q))
        .figure("count", quantity::Number{static_cast<double>(made->count), 0})
        .add("pitch_on_rail", layout::along_rail_working(made->pitch, slope))
        .list("positions", std::move(faces))
        .finish();
}

constexpr InputSpec k_panel_inputs[] = {
    k_riser,
    k_tread,
    k_rise,
    k_run,
    k_slope,
    {"panel", InputKind::length, true, "level length", "", "96 in"},
};
constexpr OutputSpec k_panel_outputs[] = {
    {"angle", "deg", "slope"},
    {"rail_length", "mm", "of a raked panel"},
    {"step", "mm", "between level panels"},
};
constexpr const base::FormulaCard* k_panel_cards[] = {
    &layout::k_rake_angle_card, &layout::k_rake_along_card, &layout::k_rake_step_card};

Result<Answer> answer_panel(Reader& in) {
    const layout::Slope slope = read_slope(in);
    const Length panel = in.length("panel");
    if (in.failed())
        return in.refusal();
    return AnswerBuilder()
        .add("angle", layout::slope_working(slope))
        .add("rail_length", layout::along_rail_working(panel, slope, "panel"))
        .add("step", layout::step_working(panel, slope))
        .finish();
}

} // namespace

const Calculation k_rake_opening{"rake.opening",
                                 "Triangle under the bottom rail of a stair",
                                 k_opening_inputs,
                                 k_opening_outputs,
                                 k_opening_cards,
                                 answer_opening};
const Calculation k_rake_picket{"rake.picket",
                                "Upright picket between sloping rails",
                                k_picket_inputs,
                                k_picket_outputs,
                                k_picket_cards,
                                answer_picket};
const Calculation k_rake_spacing{"rake.spacing",
                                 "Pickets with equal gaps on a slope",
                                 k_spacing_inputs,
                                 k_spacing_outputs,
                                 k_spacing_cards,
                                 answer_spacing};
const Calculation k_rake_panel{"rake.panel",
                               "Raked or stepped panel on a slope",
                               k_panel_inputs,
                               k_panel_outputs,
                               k_panel_cards,
                               answer_panel};

} // namespace treadle::calc
