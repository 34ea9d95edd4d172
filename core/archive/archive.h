// Job, shop and catalogues to bytes and back. Foreign bytes are never trusted: every refusal says
// where in the file and why. The JSON library lives here and nowhere else.
//
// Format: one JSON object, "format": "treadle-job", "version": 1 or with layouts 2, "units": "inch"
// | "metric". Every length, force, stress and angle is text with its unit ("1-3/8 in", "45 ton",
// "90 deg"). Published as assets/schema/job.schema.json; a newer version is refused and left
// untouched.

#pragma once

#include "archive/versions.h"
#include "base/result.h"
#include "calc/value.h"
#include "equipment/shop.h"
#include "job/job.h"

#include <string>
#include <string_view>
#include <vector>

namespace treadle::archive {

inline constexpr std::size_t k_largest_file = 16u * 1024u * 1024u;
inline constexpr int k_deepest_nesting = 32;

struct File {
    job::Job job;
    equipment::Shop shop;
};

/// Size, nesting and number of values are bounded while reading, before anything is built on them.
/// All values pass the rooms' own checks.
[[nodiscard]] base::Result<File> read_file(std::string_view bytes);
/// Stable order, two-space indent, ends in a newline; read_file gives back the identical values.
[[nodiscard]] std::string write_file(const job::Job& job, const equipment::Shop& shop);
/// The version it is written as: the oldest that can hold all of it.
[[nodiscard]] int written_version(const job::Job& job);

/// assets/catalog/*.json and assets/cautions.json. A fault in them is our own, but it is still
/// said, not asserted.
[[nodiscard]] base::Result<material::GradeTable> read_grades(std::string_view bytes);
[[nodiscard]] base::Result<section::SectionTable> read_sections(std::string_view bytes);
[[nodiscard]] base::Result<equipment::CautionTable> read_cautions(std::string_view bytes);
[[nodiscard]] base::Result<job::Catalog> read_catalog();

/// A line of assets/sources.json, as it is said: "Groover, Fundamentals of Modern Manufacturing".
struct Source {
    std::string key;
    std::string title; ///< with edition and year where they are known
    std::string how_read;
};
[[nodiscard]] base::Result<std::vector<Source>> read_sources(std::string_view bytes);

struct CalcRequest {
    std::string name;
    calc::Input input;
};
/// The input object of one calculation, or a whole line {"calc":NAME,"in":{…}}.
[[nodiscard]] base::Result<calc::Input> read_calc_input(std::string_view bytes);
[[nodiscard]] base::Result<CalcRequest> read_calc_line(std::string_view line);

} // namespace treadle::archive
