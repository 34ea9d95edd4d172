// Pieces in batches that a cart takes, what is measured on the first piece, and part marks.
//
// Formula   batch = the smaller of the house's pieces and floor(mass it takes / mass of a blank),
//           at least one piece
// Source    common practice, no source; the limits are the shop's own

#pragma once

#include "plan/plan.h"

#include <string>
#include <vector>

namespace treadle::plan {

/// `count` batches: all of `pieces` but the last, which has `last`.
struct Batches {
    int count = 0;
    int pieces = 0;
    int last = 0;
};

/// Pieces of one batch; 0 where the house has no limit that can be worked out.
[[nodiscard]] int batch_of(const equipment::HouseRules& rules, Mass piece);
[[nodiscard]] Batches batches_of(const Plan& plan, const Step& step);
/// "4 batches of 25, the last of 12"; empty when all go at once.
[[nodiscard]] std::string batch_words(const Batches& batches);

/// Pieces that are measured in a step: the first, then one in `check_every`.
[[nodiscard]] int pieces_measured(int pieces, const equipment::HouseRules& rules);
/// "First piece: measure before the rest, then 1 in 10."
[[nodiscard]] std::string check_words(const Step& step, const equipment::HouseRules& rules);

/// A figure to measure on the first piece.
struct Measure {
    const char* what; ///< "length", "hole", "along", "across", "angle", "leg", …
    AnyQuantity value;
};
/// What a step makes, as it is measured. Holes: the first and the last in running order.
[[nodiscard]] std::vector<Measure> first_piece(const PartPlan& part, int operation);

/// "Mark each piece BP1: paint on the far end"; empty where the step does not begin its part.
[[nodiscard]] std::string
mark_words(const Plan& plan, const Step& step, const equipment::HouseRules& rules);

} // namespace treadle::plan
