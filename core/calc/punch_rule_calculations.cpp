#include "calc/answer_builder.h"
#include "calc/calculations.h"
#include "calc/common_inputs.h"
#include "calc/reader.h"
#include "process/cards.h"
#include "process/punch_rules.h"

namespace treadle::calc {

namespace {

using base::Result;

constexpr InputSpec k_penetration_input{"penetration",
                                        InputKind::ratio,
                                        false,
                                        "share of the thickness to fracture; 0.60 when not given",
                                        "",
                                        "0.40"};
// In the order of process::penetration_row.
constexpr const char* k_metals =
    "aluminium|copper|brass|bronze|zinc|tin|lead|nickel|"
    "steel-0.10C-annealed|steel-0.10C-cold-rolled|steel-0.20C-annealed|steel-0.20C-cold-rolled|"
    "steel-0.30C-annealed|steel-0.30C-cold-rolled|steel-0.40C-annealed|steel-0.40C-cold-rolled|"
    "steel-0.60C-annealed|steel-0.60C-cold-rolled|steel-0.80C-annealed|steel-0.80C-cold-rolled|"
    "steel-1.00C-annealed|steel-1.00C-cold-rolled|stainless-annealed|stainless-half-hard";

constexpr InputSpec k_ground_inputs[] = {
    k_hole_shape_input,
    k_hole_size_input,
    k_hole_size2_input,
    k_thickness_input,
    k_material_input,
    k_shear_strength_input,
    {"shear_depth", InputKind::length, true, "height of the ground slope", "", "1/8 in"},
    k_penetration_input,
    {"rule", InputKind::word, false, "careful when not given", "careful|energy|sum"},
};
constexpr OutputSpec k_force_outputs[] = {{"force", "kN", "force of the stroke"}};
constexpr const base::FormulaCard* k_ground_cards[] = {&process::k_punch_force_card,
                                                       &process::k_ground_careful_card,
                                                       &process::k_ground_energy_card,
                                                       &process::k_ground_sum_card};

struct CutRead {
    process::PunchCut cut;
    std::string note;
};

CutRead read_cut(Reader& in) {
    CutRead out;
    out.cut.hole = read_hole(in);
    out.cut.thickness = in.length("thickness");
    const StrengthUsed strength = in.shear_strength(out.cut.thickness, "thickness");
    out.cut.shear_strength = strength.value;
    out.note = strength.note;
    return out;
}

Result<Answer> answer_ground(Reader& in) {
    const CutRead read = read_cut(in);
    const Length height = in.length("shear_depth");
    const double penetration =
        in.has("penetration") ? in.ratio("penetration") : process::k_deepest_penetration;
    const int rule = in.choice("rule");
    if (in.failed())
        return in.refusal();
    return AnswerBuilder()
        .add("force",
             process::ground_force_working(read.cut,
                                           height,
                                           penetration,
                                           static_cast<process::GroundRule>(rule < 0 ? 0 : rule)),
             read.note)
        .show(process::punch_force_working(read.cut))
        .finish();
}

constexpr InputSpec k_stripping_inputs[] = {
    k_hole_shape_input,
    k_hole_size_input,
    k_hole_size2_input,
    k_thickness_input,
    k_material_input,
    k_shear_strength_input,
    {"rule", InputKind::word, false, "share, 20 % of the cut, when not given", "share|constant"},
};
constexpr OutputSpec k_stripping_outputs[] = {{"stripping", "kN", "force to strip the stock"}};
constexpr const base::FormulaCard* k_stripping_cards[] = {&process::k_punch_stripping_card,
                                                          &process::k_stripping_constant_card};

Result<Answer> answer_stripping(Reader& in) {
    if (in.choice("rule") == 1) {
        const geometry::HoleOutline hole = read_hole(in);
        const Length thickness = in.length("thickness");
        in.refuse_if_given("material", "The constant knows no strength.");
        in.refuse_if_given("shear_strength", "The constant knows no strength.");
        if (in.failed())
            return in.refusal();
        return AnswerBuilder()
            .add("stripping", process::stripping_constant_working(hole, thickness))
            .finish();
    }
    const CutRead read = read_cut(in);
    if (in.failed())
        return in.refusal();
    return AnswerBuilder()
        .add("stripping", process::stripping_working(read.cut), read.note)
        .finish();
}

constexpr InputSpec k_work_inputs[] = {
    k_hole_shape_input,
    k_hole_size_input,
    k_hole_size2_input,
    k_thickness_input,
    k_material_input,
    k_shear_strength_input,
    k_penetration_input,
    {"metal", InputKind::word, false, "in place of penetration", k_metals},
    {"factor", InputKind::ratio, false, "0.5 to 1.16; 1 when not given", "", "1.16"},
};
constexpr OutputSpec k_work_outputs[] = {
    {"force", "kN", "force of the stroke"},
    {"work", "J", "work of the stroke"},
};
constexpr const base::FormulaCard* k_work_cards[] = {&process::k_punch_force_card,
                                                     &process::k_punch_work_factor_card};

double read_penetration(Reader& in) {
    if (in.has("metal")) {
        in.refuse_if_given("penetration", "Give a metal or a penetration, not both.");
        const int metal = in.choice("metal");
        return metal < 0 ? 0.0 : process::penetration_row(static_cast<std::size_t>(metal)).share;
    }
    return in.has("penetration") ? in.ratio("penetration") : process::k_deepest_penetration;
}

Result<Answer> answer_work(Reader& in) {
    const CutRead read = read_cut(in);
    const double penetration = read_penetration(in);
    const double factor = in.has("factor") ? in.ratio("factor") : 1.0;
    if (in.failed())
        return in.refusal();
    return AnswerBuilder()
        .add("force", process::punch_force_working(read.cut), read.note)
        .add("work", process::punch_work_factor_working(read.cut, penetration, factor))
        .finish();
}

constexpr InputSpec k_penetration_inputs[] = {
    {"metal", InputKind::word, true, "metal and temper", k_metals},
    k_thickness_input,
};
constexpr OutputSpec k_penetration_outputs[] = {
    {"penetration", "mm", "to fracture"},
    {"share", "", "of the thickness"},
};
constexpr const base::FormulaCard* k_penetration_cards[] = {&process::k_penetration_card};

Result<Answer> answer_penetration(Reader& in) {
    const int metal = in.choice("metal");
    const Length thickness = in.length("thickness");
    if (in.failed())
        return in.refusal();
    const std::size_t row = static_cast<std::size_t>(metal);
    return AnswerBuilder()
        .add("penetration", process::penetration_working(row, thickness))
        .figure("share", quantity::Share{process::penetration_row(row).share})
        .finish();
}

} // namespace

const Calculation k_punch_shear_ground{"punch.shear_ground",
                                       "Force of a punch with a ground slope",
                                       k_ground_inputs,
                                       k_force_outputs,
                                       k_ground_cards,
                                       answer_ground};
const Calculation k_punch_stripping{"punch.stripping",
                                    "Force to strip the stock from the punch",
                                    k_stripping_inputs,
                                    k_stripping_outputs,
                                    k_stripping_cards,
                                    answer_stripping};
const Calculation k_punch_work{"punch.work",
                               "Work of one punching stroke, by metal",
                               k_work_inputs,
                               k_work_outputs,
                               k_work_cards,
                               answer_work};
const Calculation k_punch_penetration{"punch.penetration",
                                      "Penetration to fracture, by metal",
                                      k_penetration_inputs,
                                      k_penetration_outputs,
                                      k_penetration_cards,
                                      answer_penetration};

} // namespace treadle::calc
