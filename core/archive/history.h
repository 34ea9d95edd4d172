// One step of a job's history as text: what differs between the moment before an edit and the one
// after it, so that storing an edit costs what the edit is worth and not what the job is.
//
// Format: one JSON object on one line, "format": "treadle-step", "version": 1, or 2 where its
// header holds layouts, "words": what undo says. Then only what differs, in the words of the job
// file:
//   "header"         everything of the job but its parts, whole
//   "at" "out" "in"  order: from place `at`, `out` parts leave and those with the ids `in` stand
//   "parts"          parts that are new or changed, whole
//   "shop"           the shop, whole
// A step leads forward. The one back is the step from the later moment to the earlier.

#pragma once

#include "archive/versions.h"
#include "base/result.h"
#include "equipment/shop.h"
#include "job/job.h"

#include <memory>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace treadle::archive {

/// A job and its shop at one time. Moments share their parts and their shop: the same object means
/// that nothing of it differs.
struct Moment {
    job::Job job;
    std::shared_ptr<const equipment::Shop> shop;
};

struct Step {
    std::string words;
    std::optional<job::Job> header; ///< without parts
    int at = 0;
    int out = 0;
    std::vector<std::string> in;
    std::vector<job::PartRef> parts;
    std::shared_ptr<const equipment::Shop> shop; ///< none: the same
};

[[nodiscard]] std::string
write_step(const Moment& before, const Moment& after, std::string_view words);
/// All values pass the rooms' own checks; whether they go with a job is seen when they are applied.
[[nodiscard]] base::Result<Step> read_step(std::string_view bytes);
/// The moment after the step. Refuses a step that was made for another moment, as far as it shows.
[[nodiscard]] base::Result<Moment> apply_step(const Moment& before, const Step& step);

} // namespace treadle::archive
