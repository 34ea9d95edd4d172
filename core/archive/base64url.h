// Bytes as letters that an address may hold: base64url without padding (RFC 4648, section 5).

#pragma once

#include <optional>
#include <string>
#include <string_view>

namespace treadle::archive {

[[nodiscard]] std::string to_base64url(std::string_view bytes);
/// None for any other letter, and for a text that the writer would not have made of its bytes.
[[nodiscard]] std::optional<std::string> from_base64url(std::string_view text);

} // namespace treadle::archive
