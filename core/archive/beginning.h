// What a refusal repeats of foreign text: its beginning, and no half of a character.

#pragma once

#include <cstddef>
#include <string>
#include <string_view>

namespace treadle::archive {

/// At most `most` bytes, which are 4 or more; UTF-8 stays UTF-8, and what is none is cut anywhere.
[[nodiscard]] inline std::string beginning(std::string_view text, std::size_t most) {
    const std::size_t least = most - 3; // a character is four bytes at most
    if (text.size() > most)
        while (most > least && (static_cast<unsigned char>(text[most]) & 0xC0U) == 0x80U)
            --most;
    return std::string(text.substr(0, most));
}

} // namespace treadle::archive
