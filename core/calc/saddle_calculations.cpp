#include "calc/answer_builder.h"
#include "calc/calculations.h"
#include "calc/layout_inputs.h"

#include "layout/cards.h"
#include "layout/saddle.h"

namespace treadle::calc {

namespace {

using base::Result;

constexpr int k_usual_stations = 16;

constexpr InputSpec k_branch{
    "branch_od", InputKind::length, true, "outside of the branch", "", "1.9 in"};
constexpr InputSpec k_wall{
    "branch_wall", InputKind::length, false, "of the branch; for laid_out bore", "", "0.145 in"};
constexpr InputSpec k_run{"run_od", InputKind::length, true, "outside of the run", "", "2.375 in"};
constexpr InputSpec k_angle{
    "angle", InputKind::angle, false, "between the axes, the acute; 90 if not given", "", "60"};
constexpr InputSpec k_laid_out{"laid_out",
                               InputKind::word,
                               false,
                               "outside: cut square through; bore: torch square to the surface",
                               "outside|bore"};

constexpr InputSpec k_template_inputs[] = {
    k_branch,
    k_wall,
    k_run,
    k_angle,
    {"offset", InputKind::length, false, "between the axes", "", "0.2 in"},
    {"ordinates", InputKind::count, false, "stations; 16 if not given", "", "16"},
    k_laid_out,
    {"paper", InputKind::length, false, "thickness of the wrapped paper", "", "0.2 mm"},
};
constexpr OutputSpec k_template_outputs[] = {
    {"depth", "mm", "long point to the deepest ordinate"},
    {"throat", "mm", "long point to the crown on the acute side"},
    {"cut_back", "mm", "axes' crossing to the long point, along the branch"},
    {"long_point", "deg", "round the branch from the acute side"},
    {"spacing", "mm", "of the stations on the paper"},
    {"ordinates", "mm", "list: from the long point, first at the acute side"},
};
constexpr const base::FormulaCard* k_template_cards[] = {&layout::k_saddle_ordinate_card,
                                                         &layout::k_saddle_throat_card,
                                                         &layout::k_saddle_cut_back_card,
                                                         &layout::k_saddle_spacing_card};

layout::SaddleJoint read_joint(Reader& in) {
    layout::SaddleJoint joint;
    joint.branch_od = in.length("branch_od");
    joint.branch_wall = size_given(in, "branch_wall");
    joint.run_od = in.length("run_od");
    if (in.has("angle"))
        joint.angle = in.angle("angle");
    joint.edge = word_or_first<layout::SaddleEdge>(in, "laid_out");
    if (joint.edge == layout::SaddleEdge::bore)
        in.require("branch_wall");
    return joint;
}

Result<Answer> answer_template(Reader& in) {
    layout::SaddleJoint joint = read_joint(in);
    joint.offset = in.length("offset");
    const int stations = in.has("ordinates") ? in.count("ordinates", 4, 720) : k_usual_stations;
    const Length paper = size_given(in, "paper");
    if (in.failed())
        return in.refusal();
    const auto made = layout::saddle_template(joint, stations, paper);
    if (!made.ok())
        return made.refusal();
    return AnswerBuilder()
        .add("depth", layout::ordinate_working(joint, made->shape))
        .add("throat", layout::throat_working(joint, made->shape))
        .add("cut_back", layout::cut_back_working(joint, made->shape))
        .figure("long_point", made->shape.long_point)
        .add("spacing", layout::spacing_working(joint, *made, paper))
        .list("ordinates", made->ordinates)
        .finish();
}

constexpr InputSpec k_blank_inputs[] = {
    k_branch,
    k_wall,
    k_run,
    {"second_run_od", InputKind::length, false, "as run_od if not given", "", "2.875 in"},
    {"centres", InputKind::length, true, "between the runs' axes", "", "48 in"},
    k_angle,
    k_laid_out,
    {"fit_up", InputKind::length, false, "gap left at each end", "", "1/32 in"},
};
constexpr OutputSpec k_blank_outputs[] = {
    {"blank", "mm", "long point to long point"},
    {"throat_to_throat", "mm", "crown to crown"},
};
constexpr const base::FormulaCard* k_blank_cards[] = {&layout::k_saddle_blank_card,
                                                      &layout::k_saddle_throats_card};

Result<Answer> answer_blank(Reader& in) {
    layout::SaddleBlank q;
    q.joint = read_joint(in);
    q.second_run_od = in.has("second_run_od") ? size_given(in, "second_run_od") : q.joint.run_od;
    q.centres = in.length("centres");
    q.fit_up = in.length("fit_up");
    if (in.failed())
        return in.refusal();
    return AnswerBuilder()
        .add("blank", layout::saddle_blank_working(q))
        .add("throat_to_throat", layout::throat_to_throat_working(q))
        .finish();
}

constexpr InputSpec k_die_inputs[] = {
    {"die_od", InputKind::length, true, "twice the radius of the die", "", "2-1/4 in"},
    k_run,
    k_branch,
};
constexpr OutputSpec k_die_outputs[] = {
    {"crown_gap", "mm", "with a die smaller than the run"},
    {"flank_gap", "mm", "with a die larger than the run"},
};
constexpr const base::FormulaCard* k_die_cards[] = {&layout::k_saddle_die_card};

Result<Answer> answer_die(Reader& in) {
    const layout::SaddleDie die{in.length("die_od"), in.length("run_od"), in.length("branch_od")};
    if (in.failed())
        return in.refusal();
    return AnswerBuilder()
        .add("crown_gap", layout::crown_gap_working(die))
        .add("flank_gap", layout::flank_gap_working(die))
        .finish();
}

} // namespace

const Calculation k_saddle_template{"saddle.template",
                                    "Wrap-round template of a saddle",
                                    k_template_inputs,
                                    k_template_outputs,
                                    k_template_cards,
                                    answer_template};
const Calculation k_saddle_blank{"saddle.blank",
                                 "Branch between two parallel runs",
                                 k_blank_inputs,
                                 k_blank_outputs,
                                 k_blank_cards,
                                 answer_blank};
const Calculation k_saddle_die{"saddle.die",
                               "Gap that a die of another radius leaves",
                               k_die_inputs,
                               k_die_outputs,
                               k_die_cards,
                               answer_die};

} // namespace treadle::calc
