// Bolt holes of a layout: their size, and the rules that edge and spacing are held against.
// Private.

#pragma once

#include <string>

#include "assembly/inputs.h"
#include "assembly/made.h"
#include "layout/bolt.h"
#include "layout/edge.h"

namespace treadle::assembly {

struct BoltChoice {
    layout::Bolt bolt;
    layout::BoltHole hole;
    layout::EdgeKind edge = layout::EdgeKind::sheared;
};
/// Inputs "bolt", and "edge" where the kind has it.
[[nodiscard]] BoltChoice read_bolt(Inputs& in, bool has_edge);

void hold_edge(Made& made, const BoltChoice& choice, const std::string& words, Length distance);
void hold_edge_greatest(Made& made,
                        const BoltChoice& choice,
                        Length thickness,
                        const std::string& words,
                        Length distance);
void hold_spacing(Made& made, const BoltChoice& choice, const std::string& words, Length spacing);
void show_hole(Made& made, const BoltChoice& choice);
[[nodiscard]] job::Punch round_holes(const BoltChoice& choice, const job::HolePattern& at);

} // namespace treadle::assembly
