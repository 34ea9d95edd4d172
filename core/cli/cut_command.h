// `treadle cut`: lists of bars to cut, each with the proof that no plan takes fewer.

#pragma once

#include <optional>
#include <string>
#include <vector>

namespace treadle::cli {

/// The words after `cut`; answers as commands.h says.
[[nodiscard]] int cut_command(const std::vector<std::string>& words);

/// What follows --work: a whole number above zero.
[[nodiscard]] std::optional<long long> work_in(const std::string& word);

} // namespace treadle::cli
