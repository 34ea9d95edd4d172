#include "archive/json_scan.h"

#include <algorithm>

namespace treadle::archive {

namespace {

constexpr std::string_view k_blanks = " \t\r\n";

} // namespace

JsonScan::JsonScan(std::string_view bytes) : bytes_(bytes) {
    if (bytes_.substr(0, 3) == "\xEF\xBB\xBF")
        at_ = 3;
}

void JsonScan::skip_blanks() {
    at_ = std::min(bytes_.find_first_not_of(k_blanks, at_), bytes_.size());
}

bool JsonScan::take(char sign) {
    skip_blanks();
    if (at_ >= bytes_.size() || bytes_[at_] != sign)
        return false;
    ++at_;
    return true;
}

std::optional<std::string_view> JsonScan::take_text() {
    const std::size_t from = at_;
    for (std::size_t i = at_ + 1; i < bytes_.size(); ++i) {
        if (bytes_[i] == '\\')
            ++i;
        else if (bytes_[i] == '"') {
            at_ = i + 1;
            return bytes_.substr(from, at_ - from);
        }
    }
    return std::nullopt;
}

std::optional<std::string_view> JsonScan::take_word() {
    skip_blanks();
    if (at_ >= bytes_.size() || bytes_[at_] != '"')
        return std::nullopt;
    const auto text = take_text();
    if (!text || text->find('\\') != std::string_view::npos)
        return std::nullopt;
    return text->substr(1, text->size() - 2);
}

std::optional<std::string_view> JsonScan::take_nested() {
    const std::size_t from = at_;
    std::string open;
    while (at_ < bytes_.size()) {
        const char c = bytes_[at_];
        if (c == '"') {
            if (!take_text())
                return std::nullopt;
            continue;
        }
        ++at_;
        if (c == '{' || c == '[') {
            open += c == '{' ? '}' : ']';
        } else if (c == '}' || c == ']') {
            if (open.back() != c)
                return std::nullopt;
            open.pop_back();
            if (open.empty())
                return bytes_.substr(from, at_ - from);
        }
    }
    return std::nullopt;
}

std::optional<std::string_view> JsonScan::take_value() {
    skip_blanks();
    if (at_ >= bytes_.size())
        return std::nullopt;
    const char c = bytes_[at_];
    if (c == '"')
        return take_text();
    if (c == '{' || c == '[')
        return take_nested();
    const std::size_t from = at_;
    at_ = std::min(bytes_.find_first_of(" \t\r\n,]}", at_), bytes_.size());
    if (at_ == from)
        return std::nullopt;
    return bytes_.substr(from, at_ - from);
}

bool JsonScan::at_end() {
    skip_blanks();
    return at_ == bytes_.size();
}

std::string JsonScan::place() const {
    const std::string_view before = bytes_.substr(0, at_);
    const auto line = 1 + std::count(before.begin(), before.end(), '\n');
    const std::size_t line_start = before.rfind('\n') + 1; // npos + 1 is 0
    return "line " + std::to_string(line) + ", column " +
           std::to_string(before.size() - line_start + 1);
}

} // namespace treadle::archive
