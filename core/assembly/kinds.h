// Every kind of layout, each in the file that makes it: private to the room.

#pragma once

#include "assembly/kind.h"

namespace treadle::assembly {

extern const Kind k_guard_run;
extern const Kind k_guard_stair;
extern const Kind k_fence_run;
extern const Kind k_gate;
extern const Kind k_frame;
extern const Kind k_even_frame;
extern const Kind k_base_plate;
extern const Kind k_gusset;
extern const Kind k_clip_angle;
extern const Kind k_pipe_branch;
extern const Kind k_pipe_rail;
extern const Kind k_handrail;
extern const Kind k_u_bracket;
extern const Kind k_strap;
extern const Kind k_hanger;
extern const Kind k_ring;
extern const Kind k_hook;
extern const Kind k_eye;

} // namespace treadle::assembly
