#include "assembly/kinds.h"

namespace treadle::assembly {

std::span<const Kind* const> kinds() {
    static constexpr const Kind* k_all[] = {&k_guard_run,
                                            &k_guard_stair,
                                            &k_fence_run,
                                            &k_gate,
                                            &k_frame,
                                            &k_even_frame,
                                            &k_base_plate,
                                            &k_gusset,
                                            &k_clip_angle,
                                            &k_pipe_branch,
                                            &k_pipe_rail,
                                            &k_handrail,
                                            &k_u_bracket,
                                            &k_strap,
                                            &k_hanger,
                                            &k_ring,
                                            &k_hook,
                                            &k_eye};
    return k_all;
}

} // namespace treadle::assembly
