// Dictionary 1 of job links: words of the format that become one byte each, and the text that
// links are packed upon. Frozen: another dictionary breaks every link that was ever sent.

#pragma once

#include "base/result.h"

#include <cstddef>
#include <string>
#include <string_view>
#include <vector>

namespace treadle::archive {

struct LinkDictionary {
    std::vector<std::string> words; ///< at most as many as there are bytes that no JSON holds
    std::string text;               ///< in short words
};

/// assets/link/dictionary-1.txt: a word a line, an empty line, then the text.
[[nodiscard]] const LinkDictionary& link_dictionary();

/// The text with its longest words put in short; none when it holds a byte that stands for a word.
[[nodiscard]] base::Result<std::string> shortened(std::string_view json,
                                                  const std::vector<std::string>& words);
/// Refuses (field "packed") a byte that stands for no word, and more than `most` bytes.
[[nodiscard]] base::Result<std::string>
lengthened(std::string_view text, const std::vector<std::string>& words, std::size_t most);

} // namespace treadle::archive
