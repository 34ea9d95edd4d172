// Cutting lists as plain text, a list after the other:
//
//   instance NAME
//   stock LENGTH [cost COST] [count BARS]    (one line for each kind of bar; no count: without end)
//   kerf LENGTH | least_end LENGTH           (may be left out)
//   types M
//   length count                             (M lines)
//   end
//
// Whole numbers of any one unit. "#" starts a comment; optimum and note lines are passed over.

#pragma once

#include "base/result.h"

#include <string>
#include <string_view>
#include <vector>

#include "cutting/problem.h"

namespace treadle::archive {

struct NamedCutProblem {
    std::string name;
    cutting::CutProblem problem;
};

inline constexpr std::size_t k_largest_cut_text = 64u * 1024u * 1024u;

/// Refuses, naming the line: "line 12".
[[nodiscard]] base::Result<std::vector<NamedCutProblem>> read_cut_text(std::string_view text);

} // namespace treadle::archive
