// The headings of parts lists, in the words that shops write over their columns: private to this
// room.

#pragma once

#include "archive/parts_list.h"

#include <string>
#include <string_view>
#include <vector>

namespace treadle::archive {

/// A heading without its unit, points and case.
struct Heading {
    std::string word;
    std::string unit; ///< mm, cm, m, in, ft; empty: it names none
};
[[nodiscard]] Heading heading_in(std::string_view cell);

struct HeadingMeaning {
    Column holds;
    bool sure; ///< it can mean nothing else
};
/// None for a word that is not of the trade.
[[nodiscard]] std::vector<HeadingMeaning> meanings_of(const Heading& heading);

} // namespace treadle::archive
