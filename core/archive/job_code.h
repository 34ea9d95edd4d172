// Six letters that tell one state of a job from another: on every sheet, so that paper finds its
// way back to the job it was printed from.

#pragma once

#include "archive/archive.h"

#include <string>

namespace treadle::archive {

/// Letters and digits that are not taken for one another, from a sum over job and shop.
[[nodiscard]] std::string job_code(const job::Job& job, const equipment::Shop& shop);

} // namespace treadle::archive
