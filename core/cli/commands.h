// What the command can be asked, and how it ends.
//
// Exit 0: answered; a job that does not fit is an answer. With `calc -` it means that every line
//         got its line, whether it is an answer or a refusal.
// Exit 1: answered, but standard output could not take it.
// Exit 2: refused; {"error":{"field":…,"reason":…}} stands on standard output, nothing is written.

#pragma once

#include <string>
#include <vector>

namespace treadle::cli {

/// The words after the program's name.
[[nodiscard]] int run(const std::vector<std::string>& words);

} // namespace treadle::cli
