// How much room a text from a job takes, where nobody knows the typeface: private to the room.

#pragma once

#include <cstddef>
#include <string>
#include <string_view>

namespace treadle::sheet {

/// Code points of UTF-8 text: what a letter counts as.
[[nodiscard]] std::size_t letters_of(std::string_view text);

/// Bytes of the first `letters` of a longer word, where it may be parted behind them. 0 where it
/// may not: letters of some scripts join or stack, and between them the browser alone knows where.
[[nodiscard]] std::size_t parting(std::string_view word, std::size_t letters);

/// As many ems as the text is wide at most, bold, in any face that a sheet could be printed with.
[[nodiscard]] double em_count(std::string_view text);

/// Cut before its last letters, with an ellipsis, where it could be wider than this.
[[nodiscard]] std::string shortened(std::string_view text, double ems);

} // namespace treadle::sheet
