// Inputs that several calculations of layout read the same way.

#pragma once

#include "calc/reader.h"
#include "quantity/input_limits.h"

#include "layout/rake.h"

namespace treadle::calc {

/// An optional length that means nothing at zero; zero when absent.
[[nodiscard]] inline Length size_given(Reader& in, const char* name) {
    const Length value = in.length(name);
    if (in.has(name) && !in.failed())
        if (const auto fault = quantity::size_fault(value, name))
            in.refuse(*fault);
    return value;
}

/// The word's place among its choices, the first when absent.
template <class Enum>
[[nodiscard]] Enum word_or_first(Reader& in, const char* name) {
    const int place = in.choice(name);
    return place < 0 ? Enum{} : static_cast<Enum>(place);
}

/// `slope`, or `riser` and `tread`, or `rise` and `run`.
[[nodiscard]] layout::Slope read_slope(Reader& in);

} // namespace treadle::calc
