// Files in and out for the command: whole or not at all.

#pragma once

#include "archive/archive.h"
#include "base/result.h"

#include <cstddef>
#include <optional>
#include <string>
#include <string_view>

namespace treadle::cli {

/// The bytes of a file, at most a block more than the archive takes of its kind, so that an endless
/// one ends and a reader sees that it is too large.
/// Refuses (field "file") what is missing, a folder, or unreadable.
[[nodiscard]] base::Result<std::string> read_bytes(const std::string& path,
                                                   std::size_t most = archive::k_largest_file);

/// Written beside the target and put in its place in one step: a failure leaves what was there.
/// Refuses (field "out") when that cannot be done, or when the target is the file `source`.
[[nodiscard]] std::optional<base::Refusal>
write_bytes(const std::string& path, std::string_view bytes, const std::string& source);

/// To standard output, all of it; false when that is not possible.
[[nodiscard]] bool say(std::string_view text);

} // namespace treadle::cli
