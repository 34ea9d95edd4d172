// Files beside the job file: several jobs in one, a shop alone, and what kind a file is.
//
//   {"format":"treadle-bundle","version":1,"jobs":[{"state":"kept","file":{a whole job file}}]}
//   {"format":"treadle-shop","version":1,"shop":{...}}
//
// Each job of a bundle passes the job reader's own checks, by itself: a bad one is told with its
// place and the others are there. Schemas: assets/schema/bundle.schema.json, shop.schema.json.

#pragma once

#include "archive/archive.h"
#include "archive/versions.h"
#include "base/result.h"

#include <string>
#include <string_view>
#include <vector>

namespace treadle::archive {

inline constexpr std::size_t k_largest_bundle = 64u * 1024u * 1024u;
inline constexpr std::size_t k_most_jobs = 500;

enum class JobState { kept, trash };
struct BundledJob {
    JobState state = JobState::kept;
    File file;
};
struct Bundle {
    std::vector<BundledJob> jobs;
    std::vector<base::Refusal> refused; ///< fields like "jobs[2].file.parts[0].length"
};
/// Refuses as a whole what is no such file, too large, or cut short; else as much as can be read.
[[nodiscard]] base::Result<Bundle> read_bundle(std::string_view bytes);
[[nodiscard]] std::string write_bundle(const std::vector<BundledJob>& jobs);

[[nodiscard]] base::Result<equipment::Shop> read_shop_file(std::string_view bytes);
[[nodiscard]] std::string write_shop_file(const equipment::Shop& shop, UnitSystem units);

/// So that one key opens any of them.
enum class FileKind { job, shop, bundle, shelf, lesson, parts_list, unknown };
[[nodiscard]] const char* file_kind_words(FileKind kind); ///< "a job", "a parts list", …
/// By the word behind "format"; text that is no JSON can only be a list. Says nothing of soundness.
[[nodiscard]] FileKind kind_of_file(std::string_view bytes);

} // namespace treadle::archive
