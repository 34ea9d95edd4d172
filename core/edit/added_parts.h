// Private to the room: many parts put at the end of a job in one walk.

#pragma once

#include "base/result.h"
#include "job/job.h"

#include <string>
#include <vector>

namespace treadle::edit {

/// Each part gets an id that nobody has, in step with the number of parts, not its square.
/// Refuses with the place of the first that is not sound: "parts[3].length".
[[nodiscard]] base::Result<job::Job> with_parts(job::Job job, std::vector<job::Part> parts);

/// An id that no part of the job has.
[[nodiscard]] std::string fresh_id(const job::Job& job);

} // namespace treadle::edit
