// A working in words: the one rendering that page, sheet and command share.

#pragma once

#include "quantity/working.h"

#include <string>
#include <vector>

namespace treadle::quantity {

/// The parts of a working as text, in the shop's units. Empty where there is nothing to say.
struct WorkingText {
    std::string title;
    std::string expression;          ///< as the source writes it
    std::vector<std::string> values; ///< "t = 0.5000 in, thickness"
    std::string result;              ///< "F = 40.84 ton"
    std::string rounding;
    std::string holds_for; ///< validity
    std::string note;      ///< which rule was used, or that the figure is outside the range
    std::string source;    ///< key of assets/sources.json
    std::string evidence;  ///< "published", "from memory", …
};
[[nodiscard]] WorkingText in_words(const Working& working, PrintStyle style);

/// The same, a line each, with what the line is in front of it.
[[nodiscard]] std::vector<std::string> working_lines(const Working& working, PrintStyle style);

} // namespace treadle::quantity
