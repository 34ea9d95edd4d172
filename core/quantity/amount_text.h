// The numbers inside a typed quantity: decimals, commas, fractions, and the signs people type.
//
// Private to parse_length.cpp and parse_units.cpp.

#pragma once

#include "base/result.h"

#include <optional>
#include <string>
#include <string_view>

namespace treadle::quantity {

/// A number as typed.
struct Amount {
    double value = 0.0;
    bool whole = false;    ///< digits only
    bool fraction = false; ///< had a fraction bar
};

/// Lower case ASCII with plain quotes, dashes, blanks and fractions: `1½ ”` -> `1 1/2  "`.
/// Refuses empty text, more than 64 bytes, and characters that no quantity is written with.
[[nodiscard]] base::Result<std::string> plain_text(std::string_view text, std::string_view field);

/// Walks over plain text. A read that fails leaves the reason in fault().
class AmountReader {
public:
    explicit AmountReader(std::string_view text) : text_(text) {}

    /// Leading sign; true when negative.
    bool take_minus();
    /// A decimal, a fraction, or a whole number and a fraction joined by a blank or a dash.
    std::optional<Amount> take_amount();
    bool take(char c);
    bool skip_blanks(); ///< true when there were any
    [[nodiscard]] bool at_end() const { return at_ == text_.size(); }
    [[nodiscard]] char peek() const { return at_end() ? '\0' : text_[at_]; }
    [[nodiscard]] bool at_number() const;
    /// Letters up to the next character that is none.
    std::string_view take_word();
    /// Everything left, without blanks at either end.
    std::string_view take_rest();

    [[nodiscard]] const char* fault() const { return fault_; }

private:
    std::optional<Amount> take_plain();
    std::optional<Amount> take_fraction_after(Amount top);
    bool comma_groups_thousands(std::size_t from, std::size_t comma) const;

    std::string_view text_;
    std::size_t at_ = 0;
    const char* fault_ = "There is no number.";
};

} // namespace treadle::quantity
