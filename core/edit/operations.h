// A part whose operations stand in another order, or one of them twice.
//
// Bends stand along the part in their order: a bend that moves past another one changes places with
// it on the part, and the legs keep theirs.

#pragma once

#include "base/result.h"
#include "job/job.h"

namespace treadle::edit {

/// The operation at `from` goes to `to`; those between move up or down by one.
[[nodiscard]] base::Result<job::Part> with_moved(job::Part part, int from, int to);

/// The operation at `at` once more, right after itself. A bend brings its next leg along.
[[nodiscard]] base::Result<job::Part> with_copied(job::Part part, int at);

} // namespace treadle::edit
