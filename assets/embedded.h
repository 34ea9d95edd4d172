// The files of assets/, as bytes inside the program: no path, no fetch, the same natively and in
// the page.

#pragma once

#include <optional>
#include <string_view>
#include <vector>

namespace treadle::assets {

/// The bytes of a file by its path under assets/, e.g. "catalog/grades.json"; none when no such
/// file was there at build time.
[[nodiscard]] std::optional<std::string_view> embedded(std::string_view path);

/// The paths that begin with `folder`, in the order of their names: "lessons/".
[[nodiscard]] std::vector<std::string_view> embedded_under(std::string_view folder);

} // namespace treadle::assets
