// A plan in words: the same ones on the page, on the sheet and from the command.

#pragma once

#include "plan/plan.h"

#include <string>

namespace treadle::plan {

/// "fits", "fits up to 70 ksi", "does not fit", "cannot be said".
[[nodiscard]] std::string verdict_words(const OperationPlan& plan, PrintStyle style);
[[nodiscard]] std::string verdict_words(const PartPlan& plan, PrintStyle style);
/// "26 % to spare", "certificate needed", "14 % over", "not known: machine.stations[0].force", …
[[nodiscard]] std::string margin_words(const OperationPlan& plan, PrintStyle style);

/// Key for files: "fits", "fits_up_to", "cannot_be_said", "does_not_fit".
[[nodiscard]] const char* outcome_key(Outcome outcome);
[[nodiscard]] const char* rule_key(Rule rule);
/// "force", "throat", "hole to edge", …
[[nodiscard]] const char* rule_words(Rule rule);
/// One sentence with demand and offer, or the reason: "Needs 44.2 ton, the punch station gives 50
/// ton."
[[nodiscard]] std::string sentence(const Check& check, PrintStyle style);

/// Paths in a sentence or margin put into the shop's names: "not known: machine.stations[3].largest_mitre"
/// becomes "not known: largest mitre of Bar shear".
[[nodiscard]] std::string with_names(std::string text, const equipment::Shop& shop);
/// What the path names, and where it is entered: "Not known: stroke of Flat shear. Enter it under
/// Shop, Flat shear."
[[nodiscard]] std::string missing_sentence(const std::string& path, const equipment::Shop& shop);

/// "Punch 13/16 round", "Shear to 10", "Bend 90 deg up", "Notch 1 × 1-1/2", "Saddle for 1.900".
[[nodiscard]] std::string
operation_title(const job::Part& part, std::size_t operation, PrintStyle style);
/// "4 holes", "2 strokes": what the title leaves open.
[[nodiscard]] std::string operation_detail(const job::Part& part,
                                           const PartPlan& plan,
                                           std::size_t operation,
                                           PrintStyle style);
/// "Plate 1/2 × 8 × 10", "Angle 3 × 3 × 1/4, 6 long", "Flat 1/4 × 2, 3 bends".
[[nodiscard]] std::string part_title(const job::Part& part, PrintStyle style);
[[nodiscard]] std::string section_title(const Section& section, PrintStyle style);

/// Station and tools of a set-up: "Punch station: punch 13/16 round, die 27/32, small holder".
[[nodiscard]] std::string
tooling_words(const Tooling& tools, const equipment::Shop& shop, PrintStyle style);
/// "24 set-ups, proven fewest", "24 set-ups, at least 22 needed".
[[nodiscard]] std::string order_words(const Plan& plan);
[[nodiscard]] std::string need_words(const Need& need, PrintStyle style);
[[nodiscard]] std::string hole_words(const geometry::HoleOutline& hole, PrintStyle style);

} // namespace treadle::plan
