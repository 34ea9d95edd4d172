// Layouts of a job as edits: what they make goes into the job, and stays linked by role.
//
// A change makes all parts anew. A part keeps its id by its role; a role that is gone takes its
// part with it, a new one brings a part. A part that was changed or removed by hand is detached: it
// stays as it is, and its role makes nothing again.

#pragma once

#include "base/result.h"
#include "job/job.h"

#include <string>
#include <string_view>
#include <vector>

namespace treadle::edit {

struct AddLayout {
    std::string kind;
    std::string mark;
    std::vector<job::LayoutValue> values;
};
/// The kind stays.
struct ChangeLayout {
    std::string id;
    std::string mark;
    std::vector<job::LayoutValue> values;
};
struct RemoveLayout {
    std::string id;
    bool with_parts = true; ///< linked ones; detached ones always stay
};
/// The part stays as it is, whatever becomes of its layout.
struct DetachPart {
    std::string id; ///< of the part
};

/// The job an edit leads to; no words: nothing changes.
struct LaidOut {
    job::Job job;
    std::string words;
};
[[nodiscard]] base::Result<LaidOut>
with_layout(const job::Job& job, const AddLayout& edit, const job::Catalog& catalog);
[[nodiscard]] base::Result<LaidOut>
with_layout(const job::Job& job, const ChangeLayout& edit, const job::Catalog& catalog);
[[nodiscard]] base::Result<LaidOut>
with_layout(const job::Job& job, const RemoveLayout& edit, const job::Catalog& catalog);
[[nodiscard]] base::Result<LaidOut>
with_layout(const job::Job& job, const DetachPart& edit, const job::Catalog& catalog);

/// After a hand edit of a part: detaches it if it is linked, and says so: ", no longer linked to
/// G1". `removed`: the part is gone from the job.
[[nodiscard]] std::string detach(job::Job& job, std::string_view part_id, bool removed = false);

} // namespace treadle::edit
