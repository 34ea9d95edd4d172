#include "kept_text.h"

namespace treadle::web {

namespace {

std::string on_one_line(std::string_view value) {
    std::string line;
    for (const char c : value) {
        if (c == '\\' || c == '\n')
            line += '\\';
        line += c == '\n' ? 'n' : c;
    }
    return line;
}

std::optional<std::string> as_it_was(std::string_view line) {
    std::string value;
    for (std::size_t i = 0; i < line.size(); ++i) {
        if (line[i] != '\\') {
            value += line[i];
            continue;
        }
        if (++i == line.size() || (line[i] != '\\' && line[i] != 'n'))
            return std::nullopt;
        value += line[i] == 'n' ? '\n' : '\\';
    }
    return value;
}

} // namespace

std::string write_lines(std::string_view title, const std::vector<KeptLine>& lines) {
    std::string text(title);
    text += '\n';
    for (const KeptLine& line : lines)
        text += line.name + ' ' + on_one_line(line.value) + '\n';
    return text;
}

std::optional<std::vector<KeptLine>> read_lines(std::string_view title, std::string_view text) {
    const std::string first = std::string(title) + '\n';
    if (text.substr(0, first.size()) != first)
        return std::nullopt;
    text.remove_prefix(first.size());
    std::vector<KeptLine> lines;
    while (!text.empty()) {
        const std::size_t end = text.find('\n');
        const std::string_view line = text.substr(0, end);
        const std::size_t blank = line.find(' ');
        if (end == std::string_view::npos || blank == std::string_view::npos || blank == 0)
            return std::nullopt;
        auto value = as_it_was(line.substr(blank + 1));
        if (!value)
            return std::nullopt;
        lines.push_back({std::string(line.substr(0, blank)), std::move(*value)});
        text.remove_prefix(end + 1);
    }
    return lines;
}

} // namespace treadle::web
