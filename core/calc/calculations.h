// The list of calculations by the file that answers them; calculation.cpp puts them in order.

#pragma once

#include "calc/calculation.h"

namespace treadle::calc {

extern const Calculation k_punch_force;
extern const Calculation k_punch_smallest;
extern const Calculation k_punch_largest;
extern const Calculation k_punch_die;
extern const Calculation k_shear_flat;
extern const Calculation k_shear_bar;
extern const Calculation k_shear_angle;
extern const Calculation k_notch_force;
extern const Calculation k_bend_force;
extern const Calculation k_bend_opening;
extern const Calculation k_bend_radius;
extern const Calculation k_bend_least_leg;
extern const Calculation k_bend_least_radius;
extern const Calculation k_bend_allowance;
extern const Calculation k_bend_deduction;
extern const Calculation k_bend_setback;
extern const Calculation k_bend_blank;
extern const Calculation k_section_weight;

} // namespace treadle::calc
