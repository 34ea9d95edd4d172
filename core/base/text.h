// Reading and writing plain numbers, the same everywhere.
//
// <charconv> for doubles is missing in the packaged wasm library, so this one file wraps strtod and
// snprintf. Nobody in this program calls setlocale, so the C locale holds.

#pragma once

#include <optional>
#include <string>
#include <string_view>

namespace treadle::base {

/// A decimal number that fills the whole text ("12", "-0.5", "1e3"); no hex, no inf, no nan.
[[nodiscard]] std::optional<double> read_number(std::string_view text);

/// Shortest decimal text that reads back to the same double. Finite values only.
[[nodiscard]] std::string write_number(double value);

/// Fixed decimals, rounded half away from zero; "-0.0" is written "0.0".
[[nodiscard]] std::string write_fixed(double value, int decimals);

/// write_fixed without trailing zeros and without a bare point: 35.0 -> "35".
[[nodiscard]] std::string write_short(double value, int most_decimals);

[[nodiscard]] std::string_view trim(std::string_view text);
/// A sentence's first letter as a capital, when it is one of a to z.
[[nodiscard]] std::string capital(std::string words);
[[nodiscard]] std::string to_lower_ascii(std::string_view text);

/// & < > " ' replaced for HTML and SVG text and attributes.
[[nodiscard]] std::string escape_markup(std::string_view text);

/// True for well-formed UTF-8 without control characters other than tab and newline.
[[nodiscard]] bool is_clean_text(std::string_view text);

} // namespace treadle::base
