// The answers to what a lesson asks, from the calculations and the plan that the planner uses.

#pragma once

#include "base/result.h"
#include "calc/calculation.h"
#include "plan/plan.h"

#include <string>
#include <string_view>
#include <vector>

#include "lesson/lesson.h"

namespace treadle::lesson {

/// One figure, and the workings of the calculation that it is of.
struct Solved {
    AnyQuantity figure;
    std::vector<Working> workings;
};
/// Refuses at the calculation's own input, at "calc", or at "answer": no such output, or a list.
[[nodiscard]] base::Result<Solved> solve(std::string_view calc,
                                         const calc::Input::Object& in,
                                         std::string_view output,
                                         const calc::Tables& tables);

/// The figure that somebody gets who makes this mistake.
[[nodiscard]] base::Result<AnyQuantity> mistaken(const Mistake& mistake,
                                                 const Asked& asked,
                                                 const calc::Input::Object& in,
                                                 const calc::Tables& tables);

/// The example's inputs with what breaks it.
[[nodiscard]] calc::Input::Object broken_inputs(const BreakIt& break_it, calc::Input::Object in);

/// What the plan says of a part on a shop's machine.
struct TrialPlan {
    plan::Outcome outcome = plan::Outcome::cannot_be_said;
    std::string verdict;              ///< "does not fit"
    std::string part;                 ///< "Plate 1/2 x 6 x 9, A36"
    std::vector<std::string> work;    ///< operations: what each does and its verdict
    std::vector<std::string> reasons; ///< sentences of the checks that decide, in the shop's names
};
[[nodiscard]] TrialPlan plan_trial(const job::PartRef& part,
                                   const Trial& trial,
                                   PrintStyle style,
                                   const job::Catalog& catalog);
/// "fits", "fits up to a strength", "cannot be said", "does not fit".
[[nodiscard]] const char* outcome_words(plan::Outcome outcome);

/// A line for each input: "size: 13/16 in (diameter, side, …)".
[[nodiscard]] std::vector<std::string> given_lines(std::string_view calc,
                                                   const calc::Input::Object& in);
/// What the output is, in the calculation's words; its name when there is no such calculation.
[[nodiscard]] std::string output_words(std::string_view calc, std::string_view output);

} // namespace treadle::lesson
