// The source tree as the architecture tests see it: files, their lines, what they include.

#pragma once

#include <initializer_list>
#include <map>
#include <string>
#include <string_view>
#include <vector>

#include "architecture/rooms.h"

namespace treadle::architecture {

struct Include {
    std::string text;     ///< between the quotes or brackets
    bool quoted = false;  ///< "…" rather than <…>
    std::string resolved; ///< path in the tree, empty when it is none of our files
};

struct SourceFile {
    std::string path; ///< from the root, with '/'
    std::string text;
    std::vector<std::string> lines;
    std::vector<Include> includes;
    [[nodiscard]] bool header() const;
    [[nodiscard]] std::string stem() const; ///< "punch" of core/process/punch.cpp
};

using Tree = std::map<std::string, SourceFile>; ///< by path

/// Every .h and .cpp under core, web, assets and tests. Read once.
[[nodiscard]] const Tree& tree();

/// A file anywhere in the tree, empty when there is none.
[[nodiscard]] std::string read_text(const std::string& path);

[[nodiscard]] bool begins_with(std::string_view text, std::string_view start);
[[nodiscard]] bool has_word(std::string_view words, std::string_view word);
[[nodiscard]] std::vector<std::string> words_of(std::string_view words);

/// Pieces put together; a chain of + on strings draws a false warning from g++ 12.
[[nodiscard]] std::string joined(std::initializer_list<std::string_view> pieces);

/// The room a file lives in, null when its folder is not in the table.
[[nodiscard]] const Room* room_of(std::string_view path);

[[nodiscard]] std::vector<Include> includes_of(const std::vector<std::string>& lines);

} // namespace treadle::architecture
