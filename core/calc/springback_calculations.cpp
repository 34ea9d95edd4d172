#include "calc/answer_builder.h"
#include "calc/calculations.h"
#include "calc/common_inputs.h"
#include "calc/reader.h"
#include "process/cards.h"
#include "process/input_check.h"
#include "process/springback.h"

#include <algorithm>

namespace treadle::calc {

namespace {

using base::Result;

// In the order of process::springback_metal.
constexpr const char* k_metals =
    "DC04|DC01|X12CrNi18-8|E-Cu-R20|CuZn33-R29|EN-AW-Al99.0|EN-AW-AlCuMg1|EN-AW-AlSiMgMn";

constexpr InputSpec k_inputs[] = {
    k_thickness_input,
    {"radius", InputKind::length, true, "inside, as the bend has to come out", "", "1/2 in"},
    {"angle", InputKind::angle, true, "turned, as it has to come out", "", "90 deg"},
    {"material", InputKind::material, false, "grade: its least yield strength", "", "A36"},
    {"yield_strength", InputKind::stress, false, "in place of material", "", "40 ksi"},
    {"modulus", InputKind::stress, false, "beside yield_strength", "", "29000 ksi"},
    {"method", InputKind::word, false, "formula when not given", "formula|factor"},
    {"metal", InputKind::word, false, "for the method factor", k_metals},
};
constexpr OutputSpec k_outputs[] = {
    {"radius_before", "mm", "inside radius to bend to"},
    {"angle_before", "deg", "angle to bend to"},
};
constexpr const base::FormulaCard* k_cards[] = {&process::k_springback_radius_card,
                                                &process::k_springback_angle_card,
                                                &process::k_springback_factor_radius_card,
                                                &process::k_springback_factor_angle_card};

Result<Answer> by_factor(Reader& in, const process::SpringBend& bend) {
    in.require("metal");
    for (const char* name : {"material", "yield_strength", "modulus"})
        in.refuse_if_given(name, "The factor table goes by the metal's own row.");
    const int metal = in.choice("metal");
    if (in.failed())
        return in.refusal();
    const auto row = static_cast<std::size_t>(metal);
    return AnswerBuilder()
        .add("radius_before", process::springback_factor_radius_working(bend, row))
        .add("angle_before", process::springback_factor_angle_working(bend, row))
        .finish();
}

/// Yield strength and modulus, from the grade or as given; what is used, in words.
std::string read_metal(Reader& in, process::SpringBend& bend) {
    if (!in.has("material")) {
        in.require("yield_strength");
        in.require("modulus");
        bend.yield_strength = in.stress("yield_strength");
        bend.modulus = in.stress("modulus");
        return "";
    }
    in.refuse_if_given("yield_strength", "Give a material or its strengths, not both.");
    in.refuse_if_given("modulus", "Give a material or its strengths, not both.");
    const Grade* grade = in.material();
    if (in.failed() || grade == nullptr)
        return "";
    if (grade->refusal.bending)
        in.refuse({"material", grade->refusal.reason, ""});
    process::InputCheck check;
    check.length(bend.thickness, "thickness");
    if (check.failed())
        in.refuse(check.refusal());
    if (in.failed())
        return "";
    const auto band = material::band_for(*grade, bend.thickness);
    if (!band.ok()) {
        in.refuse(band.refusal());
        return "";
    }
    bend.yield_strength = band->yield_minimum;
    bend.modulus = grade->modulus;
    return "Least yield strength of " + grade->name + ": stronger metal springs back further.";
}

Result<Answer> answer(Reader& in) {
    process::SpringBend bend;
    bend.thickness = in.length("thickness");
    bend.radius = in.length("radius");
    bend.angle = in.angle("angle");
    if (in.choice("method") == 1)
        return by_factor(in, bend);
    in.refuse_if_given("metal", "A row of the factor table goes with the method factor.");
    const std::string note = read_metal(in, bend);
    if (in.failed())
        return in.refusal();
    return AnswerBuilder()
        .add("radius_before", process::springback_radius_working(bend), note)
        .add("angle_before", process::springback_angle_working(bend))
        .finish();
}

} // namespace

const Calculation k_bend_springback{"bend.springback",
                                    "Radius and angle to bend to, before springback",
                                    k_inputs,
                                    k_outputs,
                                    k_cards,
                                    answer};

} // namespace treadle::calc
