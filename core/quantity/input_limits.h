// What every typed or loaded value has to keep to, before any room looks at what it means.
//
// A check gives the fault or nothing. Field names are short; `inside` puts the path in front while
// the refusal travels up, so that nothing is built for values that are sound.

#pragma once

#include "base/result.h"
#include "quantity/quantity.h"

#include <cstddef>
#include <optional>
#include <string>
#include <string_view>

namespace treadle::quantity {

using Fault = std::optional<base::Refusal>;

inline constexpr Length k_longest_length = metres(100.0); ///< no shop handles more (our own limit)
inline constexpr std::size_t k_longest_name = 200;        ///< characters, not bytes
inline constexpr std::size_t k_longest_note = 2000;

enum class Presence { optional, required };

/// Above zero, finite, below 100 m.
[[nodiscard]] Fault size_fault(Length value, const char* field);
/// Zero or above, finite, below 100 m.
[[nodiscard]] Fault place_fault(Length value, const char* field);
/// From `least` to `most`, both allowed.
[[nodiscard]] Fault count_fault(int value, int least, int most, const char* field);
/// A fraction of an inch that a rule is divided into: 2, 4, 8, 16, 32 or 64.
[[nodiscard]] Fault denominator_fault(int value, const char* field);
/// Clean text of at most `most` characters.
[[nodiscard]] Fault text_fault(std::string_view text,
                               const char* field,
                               Presence presence = Presence::optional,
                               std::size_t most = k_longest_name);

/// `at.` in front of the refusal's field: ("hole", size) -> hole.size
[[nodiscard]] base::Refusal inside(std::string_view at, base::Refusal refusal);
/// ("parts", 3, mark) -> parts[3].mark
[[nodiscard]] base::Refusal inside(std::string_view list, std::size_t index, base::Refusal refusal);
/// The item itself is at fault: ("legs", 1) -> legs[1]
[[nodiscard]] std::string item(std::string_view list, std::size_t index);

} // namespace treadle::quantity
