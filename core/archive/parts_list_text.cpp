#include "archive/parts_list_text.h"

#include <array>
#include <cstdint>
#include <optional>

namespace treadle::archive {

namespace {

using base::Refusal;

bool begins(std::string_view bytes, std::string_view with) {
    return bytes.substr(0, with.size()) == with;
}

void add_character(std::string& out, std::uint32_t code) {
    const auto add = [&out](std::uint32_t byte) { out += static_cast<char>(byte); };
    if (code < 0x80) {
        add(code);
    } else if (code < 0x800) {
        add(0xC0 | (code >> 6));
        add(0x80 | (code & 0x3F));
    } else if (code < 0x10000) {
        add(0xE0 | (code >> 12));
        add(0x80 | (code >> 6 & 0x3F));
        add(0x80 | (code & 0x3F));
    } else {
        add(0xF0 | (code >> 18));
        add(0x80 | (code >> 12 & 0x3F));
        add(0x80 | (code >> 6 & 0x3F));
        add(0x80 | (code & 0x3F));
    }
}

/// Bytes of one UTF-8 character, 0 when there is none. Control characters are judged later, where
/// row and column are known.
std::size_t utf8_length(std::string_view text, std::size_t at) {
    const auto byte = [&](std::size_t i) {
        return i < text.size() ? static_cast<unsigned char>(text[i]) : 0u;
    };
    const auto follows = [&](std::size_t i) { return (byte(i) & 0xC0) == 0x80; };
    const unsigned first = byte(at);
    if (first < 0x80)
        return 1;
    if (first >= 0xC2 && first < 0xE0)
        return follows(at + 1) ? 2 : 0;
    if (first >= 0xE0 && first < 0xF0) {
        const bool overlong = first == 0xE0 && byte(at + 1) < 0xA0;
        const bool surrogate = first == 0xED && byte(at + 1) >= 0xA0;
        return !overlong && !surrogate && follows(at + 1) && follows(at + 2) ? 3 : 0;
    }
    if (first >= 0xF0 && first < 0xF5) {
        const bool overlong = first == 0xF0 && byte(at + 1) < 0x90;
        const bool too_large = first == 0xF4 && byte(at + 1) >= 0x90;
        return !overlong && !too_large && follows(at + 1) && follows(at + 2) && follows(at + 3) ? 4
                                                                                                : 0;
    }
    return 0;
}

bool is_utf8(std::string_view text) {
    for (std::size_t at = 0; at < text.size();) {
        const std::size_t length = utf8_length(text, at);
        if (length == 0)
            return false;
        at += length;
    }
    return true;
}

base::Result<ListText> from_utf16(std::string_view bytes, bool big_end_first) {
    const Refusal cut{"file", "This text is cut short or spoilt.", "UTF-16 in pairs of bytes"};
    if (bytes.size() % 2 != 0)
        return cut;
    const auto unit = [&](std::size_t at) {
        const auto first = static_cast<unsigned char>(bytes[at]);
        const auto second = static_cast<unsigned char>(bytes[at + 1]);
        return static_cast<std::uint32_t>(big_end_first ? first << 8 | second
                                                        : second << 8 | first);
    };
    ListText out{"", Letters::utf16};
    out.text.reserve(bytes.size());
    for (std::size_t at = 0; at < bytes.size(); at += 2) {
        std::uint32_t code = unit(at);
        if (code >= 0xD800 && code < 0xE000) {
            const std::uint32_t low = at + 3 < bytes.size() ? unit(at + 2) : 0;
            if (code >= 0xDC00 || low < 0xDC00 || low >= 0xE000)
                return cut;
            code = 0x10000 + ((code - 0xD800) << 10) + (low - 0xDC00);
            at += 2;
        }
        add_character(out.text, code);
    }
    return out;
}

/// 0x80 to 0x9F, where Windows-1252 differs from Latin-1; 0: no letter.
/// Source: the WHATWG Encoding Standard's index of windows-1252, from memory.
constexpr std::array<std::uint16_t, 32> k_windows{
    0x20AC, 0,      0x201A, 0x0192, 0x201E, 0x2026, 0x2020, 0x2021, 0x02C6, 0x2030, 0x0160,
    0x2039, 0x0152, 0,      0x017D, 0,      0,      0x2018, 0x2019, 0x201C, 0x201D, 0x2022,
    0x2013, 0x2014, 0x02DC, 0x2122, 0x0161, 0x203A, 0x0153, 0,      0x017E, 0x0178};

base::Result<ListText> from_windows(std::string_view bytes) {
    ListText out{"", Letters::windows_1252};
    out.text.reserve(bytes.size() + bytes.size() / 8);
    for (const char c : bytes) {
        std::uint32_t code = static_cast<unsigned char>(c);
        if (code >= 0x80 && code < 0xA0)
            code = k_windows[code - 0x80];
        if (code == 0)
            return Refusal{"file",
                           "These bytes are no text that can be read.",
                           "UTF-8, UTF-16 with its mark, or Windows-1252"};
        add_character(out.text, code);
    }
    return out;
}

constexpr std::string_view k_little_end = "\xFF\xFE";
constexpr std::string_view k_big_end = "\xFE\xFF";

/// What the bytes are when they are no text, told by how they begin.
std::optional<Refusal> other_kind(std::string_view bytes) {
    const char* as_csv = "Save it as CSV there, or copy the table and paste it here.";
    if (begins(bytes, "PK\x03\x04"))
        return Refusal{"file", "This is a spreadsheet's own file or a zip, no text.", as_csv};
    if (begins(bytes, "\xD0\xCF\x11\xE0"))
        return Refusal{"file", "This is an old spreadsheet's own file, no text.", as_csv};
    if (begins(bytes, "%PDF"))
        return Refusal{"file", "This is a PDF, no table.", as_csv};
    return std::nullopt;
}

} // namespace

const char* letters_words(Letters letters) {
    switch (letters) {
    case Letters::utf8:
        return "UTF-8";
    case Letters::utf16:
        return "UTF-16";
    case Letters::windows_1252:
        return "Windows-1252";
    }
    return "";
}

base::Result<ListText> list_text(std::string_view bytes) {
    if (auto fault = other_kind(bytes))
        return *fault;
    if (begins(bytes, "\xEF\xBB\xBF"))
        bytes.remove_prefix(3);
    else if (begins(bytes, k_little_end))
        return from_utf16(bytes.substr(2), false);
    else if (begins(bytes, k_big_end))
        return from_utf16(bytes.substr(2), true);
    if (is_utf8(bytes))
        return ListText{std::string(bytes), Letters::utf8};
    return from_windows(bytes);
}

bool is_text(std::string_view bytes) {
    if (other_kind(bytes))
        return false;
    if (begins(bytes, k_little_end) || begins(bytes, k_big_end))
        return true;
    constexpr std::size_t k_looked_at = 4096;
    for (const char c : bytes.substr(0, k_looked_at))
        if (static_cast<unsigned char>(c) < 0x20 && c != '\t' && c != '\n' && c != '\r')
            return false;
    return true;
}

} // namespace treadle::archive
