// Bytes made short and back: raw deflate (RFC 1951) upon a dictionary that both sides know.
//
// zlib is at home in this room, and only packed.cpp includes it.

#pragma once

#include "base/result.h"

#include <cstddef>
#include <cstdint>
#include <string>
#include <string_view>

namespace treadle::archive {

/// Of a dictionary the last 32,506 bytes count: what lies farther back, deflate cannot name.
[[nodiscard]] std::string pack(std::string_view bytes, std::string_view dictionary);

/// Refuses (field "packed") what is damaged, cut short, or followed by anything, and what would
/// become longer than `most`; never makes more than that to find out.
[[nodiscard]] base::Result<std::string>
unpack(std::string_view packed, std::string_view dictionary, std::size_t most);

/// Adler-32 (RFC 1950): finds what went wrong by itself, not what somebody forged.
[[nodiscard]] std::uint32_t check_sum(std::string_view bytes);

} // namespace treadle::archive
