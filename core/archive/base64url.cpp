#include "archive/base64url.h"

#include <cstdint>

namespace treadle::archive {

namespace {

constexpr std::string_view k_letters =
    "ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789-_";

} // namespace

std::string to_base64url(std::string_view bytes) {
    std::string text;
    text.reserve(bytes.size() * 4 / 3 + 3);
    std::uint32_t bits = 0;
    unsigned held = 0;
    for (const char byte : bytes) {
        bits = (bits << 8U) | static_cast<unsigned char>(byte);
        for (held += 8; held >= 6; held -= 6)
            text += k_letters[(bits >> (held - 6)) & 63U];
    }
    if (held > 0)
        text += k_letters[(bits << (6 - held)) & 63U];
    return text;
}

std::optional<std::string> from_base64url(std::string_view text) {
    std::string bytes;
    bytes.reserve(text.size() * 3 / 4 + 1);
    std::uint32_t bits = 0;
    unsigned held = 0;
    for (const char letter : text) {
        const std::size_t value = k_letters.find(letter);
        if (value == std::string_view::npos)
            return std::nullopt;
        bits = (bits << 6U) | static_cast<std::uint32_t>(value);
        held += 6;
        if (held >= 8) {
            held -= 8;
            bytes += static_cast<char>((bits >> held) & 255U);
        }
    }
    const bool spare = held >= 6 || (bits & ((1U << held) - 1U)) != 0;
    return spare ? std::nullopt : std::optional(std::move(bytes));
}

} // namespace treadle::archive
