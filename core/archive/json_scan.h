// Cuts a JSON text into the texts of its values without building anything: private to this room.
//
// A file of many jobs is larger than any tree that is read of it: each job is cut out here and then
// read by the job's own reader, with all its checks. What is cut out has matching brackets, no
// more.

#pragma once

#include <optional>
#include <string>
#include <string_view>

namespace treadle::archive {

class JsonScan {
public:
    explicit JsonScan(std::string_view bytes);

    /// The sign at this place, past blanks.
    bool take(char sign);
    /// A text without escapes, without its quotes: a key or a word of ours.
    std::optional<std::string_view> take_word();
    /// Any value, as it stands; none when it does not end or its brackets do not match.
    std::optional<std::string_view> take_value();
    [[nodiscard]] bool at_end();
    [[nodiscard]] std::string place() const; ///< "line 3, column 12"

private:
    void skip_blanks();
    std::optional<std::string_view> take_text();
    std::optional<std::string_view> take_nested();

    std::string_view bytes_;
    std::size_t at_ = 0;
};

} // namespace treadle::archive
