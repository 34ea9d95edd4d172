// Versions of what this program writes, in one place, because a test builds the archive once more
// with each of them raised: what lies on somebody's device must open after that too.

#pragma once

namespace treadle::archive {

inline constexpr int k_oldest_version = 1; ///< of each: none was ever withdrawn
inline constexpr int k_format_version = 2; ///< a job with its shop
inline constexpr int k_step_version = 2;   ///< one step of a job's history
/// What holds no layout is written as before them, so that an older Treadle reads it.
inline constexpr int k_format_without_layouts = 1;
inline constexpr int k_step_without_layouts = 1;
inline constexpr int k_progress_version = 1;
inline constexpr int k_bundle_version = 1;
inline constexpr int k_shop_version = 1;
inline constexpr int k_shelf_version = 1;
inline constexpr int k_lesson_version = 1;

} // namespace treadle::archive
