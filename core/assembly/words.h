// What a layout made, in words: the same on the page, on the sheet and from the command.

#pragma once

#include "quantity/print.h"

#include <string>
#include <string_view>

#include "assembly/made.h"

namespace treadle::assembly {

/// "height of the top edge: 35 in, at least 36 in"
[[nodiscard]] std::string rule_words(const RuleLine& line, PrintStyle style);
/// "breaks IRC, guard of a dwelling"
[[nodiscard]] std::string answer_words(const RuleLine& line);
/// A choice as it is read: "irc" is "IRC, dwellings", "notch-and-fold" has its words apart.
[[nodiscard]] std::string choice_words(std::string_view choice);
[[nodiscard]] std::string figure_words(const Figure& figure, PrintStyle style);
/// "near faces of pickets, from the post along the rail: 3-3/4, 8-1/4, 12-13/16 in"
[[nodiscard]] std::string marks_words(const Marks& marks, PrintStyle style);
/// "Paper template for the start of B1-B: branch 1.66 in on run 1.9 in, 45 deg, offset 0 in"
[[nodiscard]] std::string template_words(const WrapTemplate& wrap, PrintStyle style);

} // namespace treadle::assembly
