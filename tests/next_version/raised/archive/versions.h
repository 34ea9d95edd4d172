// Stands in front of core/archive/versions.h: the next version of everything that is written.

#pragma once

namespace treadle::archive {

inline constexpr int k_oldest_version = 1;
inline constexpr int k_format_version = 3;
inline constexpr int k_step_version = 3;
inline constexpr int k_format_without_layouts = 2;
inline constexpr int k_step_without_layouts = 2;
inline constexpr int k_progress_version = 2;
inline constexpr int k_bundle_version = 2;
inline constexpr int k_shop_version = 2;
inline constexpr int k_shelf_version = 2;
inline constexpr int k_lesson_version = 2;

} // namespace treadle::archive
