#include "base/json_writer.h"

#include "base/contracts.h"
#include "base/text.h"

#include <array>
#include <cmath>
#include <cstddef>

namespace treadle::base {

namespace {

constexpr std::array<bool, 256> plain_bytes() {
    std::array<bool, 256> plain{};
    for (std::size_t byte = 0x20; byte < plain.size(); ++byte)
        plain[byte] = byte != '"' && byte != '\\';
    return plain;
}
constexpr std::array<bool, 256> k_plain = plain_bytes();

bool is_plain(char c) { return k_plain[static_cast<unsigned char>(c)]; }

void append_escaped(std::string& out, char c) {
    constexpr std::string_view k_hex = "0123456789abcdef";
    const auto code = static_cast<unsigned char>(c);
    if (c == '"' || c == '\\') {
        out += '\\';
        out += c;
    } else if (c == '\n') {
        out += "\\n";
    } else if (c == '\t') {
        out += "\\t";
    } else {
        out += "\\u00";
        out += k_hex[code >> 4U];
        out += k_hex[code & 0xFU];
    }
}

/// Nearly all text is plain: whole stretches of it go over at once.
void append_quoted(std::string& out, std::string_view value) {
    out += '"';
    std::size_t from = 0;
    for (std::size_t at = 0; at < value.size(); ++at) {
        if (is_plain(value[at]))
            continue;
        out += value.substr(from, at - from);
        append_escaped(out, value[at]);
        from = at + 1;
    }
    out += value.substr(from);
    out += '"';
}

} // namespace

void JsonWriter::new_line() {
    if (indent_ <= 0)
        return;
    out_ += '\n';
    out_.append(has_items_.size() * static_cast<std::size_t>(indent_), ' ');
}

void JsonWriter::before_value() {
    if (after_key_) {
        after_key_ = false;
        return;
    }
    if (has_items_.empty())
        return;
    if (has_items_.back())
        out_ += ',';
    has_items_.back() = true;
    new_line();
}

JsonWriter& JsonWriter::begin_object() {
    before_value();
    out_ += '{';
    has_items_.push_back(false);
    return *this;
}

JsonWriter& JsonWriter::end_object() {
    TREADLE_EXPECT(!has_items_.empty() && !after_key_);
    const bool filled = has_items_.back();
    has_items_.pop_back();
    if (filled)
        new_line();
    out_ += '}';
    return *this;
}

JsonWriter& JsonWriter::begin_array() {
    before_value();
    out_ += '[';
    has_items_.push_back(false);
    return *this;
}

JsonWriter& JsonWriter::end_array() {
    TREADLE_EXPECT(!has_items_.empty() && !after_key_);
    const bool filled = has_items_.back();
    has_items_.pop_back();
    if (filled)
        new_line();
    out_ += ']';
    return *this;
}

JsonWriter& JsonWriter::key(std::string_view name) {
    TREADLE_EXPECT(!has_items_.empty() && !after_key_);
    before_value();
    append_quoted(out_, name);
    out_ += indent_ > 0 ? ": " : ":";
    after_key_ = true;
    return *this;
}

JsonWriter& JsonWriter::text(std::string_view value) {
    before_value();
    append_quoted(out_, value);
    return *this;
}

JsonWriter& JsonWriter::number(double value) {
    if (!std::isfinite(value))
        return null();
    before_value();
    out_ += write_number(value);
    return *this;
}

JsonWriter& JsonWriter::integer(long long value) {
    before_value();
    out_ += std::to_string(value);
    return *this;
}

JsonWriter& JsonWriter::boolean(bool value) {
    before_value();
    out_ += value ? "true" : "false";
    return *this;
}

JsonWriter& JsonWriter::null() {
    before_value();
    out_ += "null";
    return *this;
}

} // namespace treadle::base
