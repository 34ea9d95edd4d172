#include "architecture/mutable_state.h"

#include <cctype>
#include <regex>

namespace treadle::architecture {

namespace {

std::string trimmed(const std::string& text) {
    const auto first = text.find_first_not_of(" \t\n");
    const auto last = text.find_last_not_of(" \t\n");
    return first == std::string::npos ? std::string{} : text.substr(first, last - first + 1);
}

bool is_constant(const std::string& declaration) {
    static const std::regex constant(R"(\b(constexpr|consteval)\b)");
    static const std::regex const_pointer(R"(\*\s*const\b)");
    static const std::regex const_value(R"(\bconst\b)");
    if (std::regex_search(declaration, constant) || std::regex_search(declaration, const_pointer))
        return true;
    const bool pointer = declaration.find('*') != std::string::npos;
    return !pointer && std::regex_search(declaration, const_value);
}

std::string last_name(const std::string& declaration) {
    static const std::regex name(R"(([A-Za-z_]\w*)\s*(\[[^\]]*\]\s*)*$)");
    std::smatch match;
    return std::regex_search(declaration, match, name) ? match[1].str() : declaration;
}

/// A parenthesis before any '=': the statement is a function, not a variable.
bool is_function(const std::string& statement) {
    static const std::regex operator_name(R"(\boperator\s*[^\w\s(]+)");
    const std::string text = std::regex_replace(statement, operator_name, "operator");
    const auto parenthesis = text.find('(');
    return parenthesis != std::string::npos && parenthesis < text.find('=');
}

/// One statement at namespace scope: what stands before its first brace, '=' or ';'.
void look_at_statement(const std::string& text, std::vector<std::string>& found) {
    static const std::regex no_variable(
        R"(^(inline\s+)?(using|class|struct|enum|union|template|friend|typedef|static_assert|namespace|extern)\b)");
    static const std::regex attribute(R"(\[\[[^\]]*\]\])");
    const std::string declaration =
        trimmed(std::regex_replace(text.substr(0, text.find('=')), attribute, ""));
    if (is_function(text) || declaration.find(' ') == std::string::npos)
        return;
    if (!std::regex_search(declaration, no_variable) && !is_constant(declaration))
        found.push_back(last_name(declaration));
}

/// Statics that are not at namespace scope: in functions and in classes.
void look_at_block(const std::string& text, std::vector<std::string>& found) {
    static const std::regex lasting(R"(\b(static|thread_local)\s+([^;{=(]*)([;{=(]))");
    for (std::sregex_iterator at(text.begin(), text.end(), lasting), end; at != end; ++at) {
        const bool function = (*at)[3].str() == "(";
        const std::string declaration = trimmed((*at)[2].str());
        if (!function && !is_constant(declaration))
            found.push_back(last_name(declaration));
    }
}

/// Length of the comment, literal or preprocessor line that begins at `at`; 0 when none does.
std::size_t skipped(const std::string& source, std::size_t at) {
    static const auto reach =
        [](std::size_t found, std::size_t from, std::size_t extra, std::size_t size) {
            return (found == std::string::npos ? size : found + extra) - from;
        };
    const char c = source[at];
    if (source.compare(at, 2, "//") == 0)
        return reach(source.find('\n', at), at, 0, source.size());
    if (source.compare(at, 2, "/*") == 0)
        return reach(source.find("*/", at + 2), at, 2, source.size());
    if (source.compare(at, 2, "R\"") == 0) {
        const std::string mark = ")" + source.substr(at + 2, source.find('(', at) - at - 2) + "\"";
        return reach(source.find(mark, at), at, mark.size(), source.size());
    }
    const bool digit_separator =
        c == '\'' && at > 0 && std::isalnum(static_cast<unsigned char>(source[at - 1]));
    if (c == '"' || (c == '\'' && !digit_separator)) {
        std::size_t end = at + 1;
        while (end < source.size() && source[end] != c)
            end += source[end] == '\\' ? 2u : 1u;
        return end + 1 - at;
    }
    if (c == '#') {
        std::size_t end = source.find('\n', at);
        while (end != std::string::npos && source[end - 1] == '\\')
            end = source.find('\n', end + 1);
        return reach(end, at, 0, source.size());
    }
    return 0;
}

} // namespace

std::string bare(const std::string& source) {
    std::string kept;
    for (std::size_t at = 0; at < source.size();) {
        const std::size_t jump = skipped(source, at);
        if (jump == 0)
            kept += source[at];
        else
            kept += source[at] == '"' ? "\"\"" : " ";
        at += jump == 0 ? 1 : jump;
    }
    return kept;
}

std::vector<std::string> mutable_state(const std::string& source) {
    static const std::regex opens_namespace(R"(^(inline\s+)?namespace\b|^extern\s+""$)");
    std::vector<std::string> found;
    std::string statement;
    std::string block;
    int depth = 0; // braces that are no namespace
    for (const char c : bare(source)) {
        if (depth > 0) {
            depth += c == '{' ? 1 : (c == '}' ? -1 : 0);
            block += c;
            if (depth > 0)
                continue;
            look_at_block(block, found);
            block.clear();
            // A function ends at its brace; a class or an initialiser goes on to its semicolon.
            if (is_function(statement))
                statement.clear();
        } else if (c == '{') {
            if (std::regex_search(trimmed(statement), opens_namespace))
                statement.clear();
            else
                depth = 1;
        } else if (c == ';') {
            look_at_statement(statement, found);
            statement.clear();
        } else if (c == '}') {
            statement.clear();
        } else {
            statement += c;
        }
    }
    return found;
}

} // namespace treadle::architecture
