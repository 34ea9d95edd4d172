#include "calc/calculation.h"

#include "calc/calculations.h"
#include "calc/reader.h"

namespace treadle::calc {

const char* kind_hint(InputKind kind) {
    switch (kind) {
    case InputKind::length:
        return "length with unit";
    case InputKind::length_list:
        return "list of lengths with units";
    case InputKind::force:
        return "force with unit";
    case InputKind::stress:
        return "stress with unit";
    case InputKind::angle:
        return "degrees";
    case InputKind::ratio:
        return "number";
    case InputKind::word:
        return "word";
    case InputKind::material:
        return "grade";
    case InputKind::section:
        return "designation, or an object of shape and sizes";
    case InputKind::bends:
        return "list of objects of angle and radius";
    case InputKind::count:
        return "whole number";
    case InputKind::bolt:
        return "bolt: inch diameter with unit, or M and a number";
    case InputKind::voltage:
        return "voltage with unit";
    case InputKind::current:
        return "current with unit";
    case InputKind::power:
        return "power with unit";
    case InputKind::mass:
        return "mass with unit";
    }
    return "";
}

namespace {

constexpr const Calculation* k_all[] = {
    &k_punch_force,
    &k_punch_smallest,
    &k_punch_largest,
    &k_punch_die,
    &k_shear_flat,
    &k_shear_bar,
    &k_shear_angle,
    &k_notch_force,
    &k_bend_force,
    &k_bend_opening,
    &k_bend_radius,
    &k_bend_least_leg,
    &k_bend_least_radius,
    &k_bend_allowance,
    &k_bend_deduction,
    &k_bend_setback,
    &k_bend_blank,
    &k_section_weight,
    &k_punch_shear_ground,
    &k_punch_stripping,
    &k_punch_work,
    &k_punch_penetration,
    &k_punch_edge,
    &k_punch_stress,
    &k_punch_thickest,
    &k_punch_free_length,
    &k_punch_bolt_hole,
    &k_punch_stroke,
    &k_punch_from_heel,
    &k_punch_clearance,
    &k_shear_mitre,
    &k_shear_tube,
    &k_shear_tube_flattening,
    &k_shear_knife_gap,
    &k_shear_trim,
    &k_shear_rating,
    &k_notch_bites,
    &k_notch_vee,
    &k_notch_slot,
    &k_bend_k_from_trial,
    &k_bend_springback,
    &k_bend_force_shop,
    &k_bend_bar_force,
    &k_bend_bottoming,
    &k_bend_work,
    &k_bend_travel,
    &k_bend_opening_for_radius,
    &k_bend_radius_from_ductility,
    &k_bend_hard_way,
    &k_bend_relief,
    &k_bend_hole_distance,
    &k_bar_ring,
    &k_bar_hook,
    &k_guard_opening,
    &k_tolerance_length,
    &k_tolerance_angle,
    &k_material_strength,
    &k_motor_current,
    &k_wire_resistance,
    &k_cord_ampacity,
    &k_cord_drop,
    &k_generator_size,
    &k_generator_derate,
    &k_lift_limit,
    &k_lift_reach,
    &k_lift_team,
    &k_hole_for_bolt,
    &k_hole_edge,
    &k_hole_greatest_pitch,
    &k_hole_clear,
    &k_bolt_room,
    &k_angle_gage,
    &k_angle_gage_between,
    &k_gauge_thickness,
    &k_running_places,
    &k_bar_usable,
    &k_bar_pieces,
    &k_picket_spacing,
    &k_picket_per_tread,
    &k_post_spacing,
    &k_rake_opening,
    &k_rake_picket,
    &k_rake_spacing,
    &k_rake_panel,
    &k_guard_limit,
    &k_guard_midrail,
    &k_saddle_template,
    &k_saddle_blank,
    &k_saddle_die,
    &k_frame_cut,
    &k_frame_mitre,
    &k_frame_notch,
    &k_gusset_cut,
};

} // namespace

std::span<const Calculation* const> all() { return k_all; }

base::Result<Answer> run(std::string_view name, const Input& in, const Tables& tables) {
    for (const Calculation* calculation : all()) {
        if (name != calculation->name)
            continue;
        const Input::Object* object = in.object();
        if (object == nullptr)
            return base::Refusal{"in", "The inputs must be an object of names and values.", ""};
        Reader reader(*object, calculation->inputs, tables);
        if (reader.failed())
            return reader.refusal();
        return calculation->answer(reader);
    }
    return base::Refusal{"calc", "There is no calculation of this name.", "see the list of them"};
}

} // namespace treadle::calc
