// Files beside the job: `treadle check` of any kind, `treadle jobs` and `treadle shop`.

#pragma once

#include "base/result.h"

#include <string>
#include <string_view>
#include <vector>

namespace treadle::cli {

/// What `check` says about a file of any kind: one line of JSON.
[[nodiscard]] base::Result<std::string> check_answer(std::string_view bytes);
/// `jobs FILE...`: the jobs of all these files, each a job or a file of several, in one file.
[[nodiscard]] base::Result<std::string> jobs_answer(const std::vector<std::string>& words);
/// `shop FILE`: the shop of a job's file alone.
[[nodiscard]] base::Result<std::string> shop_answer(const std::vector<std::string>& words);

} // namespace treadle::cli
