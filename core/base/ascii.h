// Single letters of ASCII; whatever else a byte is stays as it is.

#pragma once

namespace treadle::base {

[[nodiscard]] constexpr char to_lower(char c) {
    return c >= 'A' && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : c;
}

} // namespace treadle::base
