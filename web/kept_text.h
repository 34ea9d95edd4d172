// A few named values as lines of text, for what is kept of a screen: no job lies in it.
//
//     treadle-screen 1
//     theme dark
//
// What is not understood is dropped without a word; the page then starts as it would without.

#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

namespace treadle::web {

struct KeptLine {
    std::string name;  ///< without blanks
    std::string value; ///< anything
};

/// `title`: what it is, and its version.
[[nodiscard]] std::string write_lines(std::string_view title, const std::vector<KeptLine>& lines);
/// None when the title is another or a line is no name with a value.
[[nodiscard]] std::optional<std::vector<KeptLine>> read_lines(std::string_view title,
                                                              std::string_view text);

/// A choice and its word.
template <class E>
struct KeptWord {
    const char* word;
    E value;
};
template <class E, std::size_t Count>
const char* word_of(const KeptWord<E> (&words)[Count], E value) {
    for (const KeptWord<E>& one : words)
        if (one.value == value)
            return one.word;
    return words[0].word;
}
/// Leaves `out` as it is when the word is not known.
template <class E, class Out, std::size_t Count>
void take_word(const KeptWord<E> (&words)[Count], std::string_view word, Out& out) {
    for (const KeptWord<E>& one : words)
        if (word == one.word)
            out = one.value;
}

} // namespace treadle::web
