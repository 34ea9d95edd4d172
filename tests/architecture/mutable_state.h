// Finds what a function can remember between two calls: variables at namespace scope and statics.

#pragma once

#include <string>
#include <vector>

namespace treadle::architecture {

/// Names of mutable variables that outlive a call, in the order they stand. Reads the text, not the
/// language: a variable written with parentheses, `Thing g(1);`, looks like a function and is
/// missed.
[[nodiscard]] std::vector<std::string> mutable_state(const std::string& source);

/// The source without comments, strings, character literals and preprocessor lines.
[[nodiscard]] std::string bare(const std::string& source);

} // namespace treadle::architecture
