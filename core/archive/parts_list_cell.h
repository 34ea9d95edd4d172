// What spreadsheets do to a cell: taken back where nothing is lost, told where something is.
//
// Private to the readers and writers of parts lists.

#pragma once

#include "base/result.h"

#include <optional>
#include <string>
#include <string_view>

namespace treadle::archive {

/// Without blanks at the ends, a leading apostrophe and the wrapper ="...", with plain blanks.
[[nodiscard]] std::string cell_text(std::string_view cell);

/// In a list with decimals: is 1,250 a thousand or one and a quarter?
enum class DecimalMark { not_said, point, comma };

enum class Holds { figure, words };
/// Why the text is not what was typed, and what that probably was: a fraction turned into a date,
/// an error, a formula, 1.5E+03. Words are refused only in the very spelling of a spreadsheet.
[[nodiscard]] std::optional<base::Refusal> damage_in(std::string_view text, Holds holds);

/// Day number of a date, as a spreadsheet shows it when the format is lost ("46024").
[[nodiscard]] std::optional<base::Refusal> date_number_in(std::string_view text);

/// The figure with its decimal mark as a point and nothing between thousands, when the mark has
/// been said. Else as it is: the reader of lengths refuses a comma with two meanings.
[[nodiscard]] std::string plain_figure(std::string_view text, DecimalMark mark);
/// One to three digits, a point and three digits: a thousand where decimals have commas.
[[nodiscard]] bool point_may_group(std::string_view text);
/// Digits, a comma and digits that cannot be a group of three.
[[nodiscard]] bool has_decimal_comma(std::string_view text);

/// A cell of a file that a spreadsheet opens and does not run. cell_text() takes it back.
void add_cell(std::string& out, std::string_view value, bool last);

} // namespace treadle::archive
