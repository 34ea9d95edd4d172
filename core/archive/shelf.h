// The shelf: shelf.json beside the page lists the job, shop and lesson files that the host offers.
//
//   {"format":"treadle-shelf","version":1,"entries":[{"kind":"job"|"shop"|"lesson",
//     "title":"...","note":"...","file":"lessons/first.json"}]}
//
// A file is named relative to the page and can lead nowhere else: letters, digits, - _ . and single
// slashes, no "." or ".." as a piece, ends in .json. A lesson is a lesson file
// (lesson_file.h), or a job file for practice.

#pragma once

#include "archive/versions.h"
#include "base/result.h"

#include <string>
#include <string_view>
#include <vector>

namespace treadle::archive {

inline constexpr std::size_t k_largest_shelf = 256u * 1024u;
inline constexpr std::size_t k_most_shelf_entries = 200;
inline constexpr std::size_t k_longest_shelf_name = 200; ///< bytes

enum class ShelfKind { job, shop, lesson };
[[nodiscard]] const char* shelf_kind_word(ShelfKind kind);

struct ShelfEntry {
    ShelfKind kind = ShelfKind::job;
    std::string title;
    std::string note;
    std::string file;
};
struct Shelf {
    std::vector<ShelfEntry> entries;
    std::vector<base::Refusal> refused; ///< fields like "entries[3].file"
};
/// A name that leads nowhere but to a file beside the page.
[[nodiscard]] bool is_shelf_file(std::string_view name);

/// A bad entry is told and the others are there; refuses as a whole what is no shelf.
[[nodiscard]] base::Result<Shelf> read_shelf(std::string_view bytes);

} // namespace treadle::archive
