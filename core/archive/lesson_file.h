// Lessons: files that an instructor writes with a text editor and puts on the shelf.
//
//   {"format":"treadle-lesson","version":1,"units":"inch"|"metric","title":"…","about":"…",
//    "steps":[{"do":"read"|"example"|"exercise"|"verdict"|"show"|"cautions","title":"…",…}]}
//
// Inputs stand as `treadle calc` takes them; answers never stand in a file. Schema:
// assets/schema/lesson.schema.json. `treadle lesson FILE` prints one with its answers and says what
// is wrong with it.

#pragma once

#include "archive/versions.h"
#include "base/result.h"

#include <string>
#include <string_view>
#include <vector>

#include "lesson/lesson.h"

namespace treadle::archive {

inline constexpr std::size_t k_largest_lesson = 512u * 1024u;

/// Refuses with the place in the file; whether the steps work is lesson::faults_of's to say.
[[nodiscard]] base::Result<lesson::Lesson> read_lesson(std::string_view bytes);

struct BuiltInLesson {
    std::string id; ///< "1-punching-force": the file's name without its ending
    lesson::Lesson lesson;
};
/// Those that come with the program, in the order of their names. A fault in them is our own, but
/// it is still said, not asserted.
[[nodiscard]] base::Result<std::vector<BuiltInLesson>> read_built_in_lessons();

/// "demo-inch" or "demo-metric": the job that a demonstration opens.
[[nodiscard]] std::string demo_path(std::string_view name);

} // namespace treadle::archive
