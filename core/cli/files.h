// Files in and out for the command: whole or not at all.

#pragma once

#include "base/result.h"

#include <optional>
#include <string>
#include <string_view>

namespace treadle::cli {

/// The bytes of a file, at most one more than the archive takes, so that an endless one ends.
/// Refuses (field "file") what is missing, a folder, or unreadable.
[[nodiscard]] base::Result<std::string> read_bytes(const std::string& path);

/// Written beside the target and put in its place in one step: a failure leaves what was there.
/// Refuses (field "out") when that cannot be done, or when the target is the file `source`.
[[nodiscard]] std::optional<base::Refusal>
write_bytes(const std::string& path, std::string_view bytes, const std::string& source);

/// To standard output, all of it; false when that is not possible.
[[nodiscard]] bool say(std::string_view text);

} // namespace treadle::cli
