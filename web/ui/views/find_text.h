// What is typed into the search, held against a line of words. Nothing here knows a job.
//
// Case, accents and typographic signs do not count. A size is found however it is written: 13/16,
// 13/16", 0.8125 and 20.6 mm are one. All words that are typed must be there, in any order.

#pragma once

#include "quantity/print.h"
#include "quantity/quantity.h"

#include <string>
#include <string_view>
#include <vector>

namespace treadle::views {

/// A line made ready to be searched.
struct FindText {
    std::string words;            ///< folded, one space before each word and at the end
    std::vector<double> sizes_mm; ///< of what can be read as a length
};
[[nodiscard]] FindText find_text(std::string_view line, UnitSystem system);

/// One typed word. The last one may be half typed, so the beginning of a word is enough.
struct FindWord {
    std::string word;             ///< folded
    std::vector<double> sizes_mm; ///< what it may mean as a length; empty: no length
};
using FindQuery = std::vector<FindWord>;
/// A number without a unit is one of the job's system first, and of the other one as well.
[[nodiscard]] FindQuery find_query(std::string_view typed, UnitSystem system);

/// 0: not there. Whole words count more than beginnings, these more than sizes and insides.
[[nodiscard]] int find_rank(const FindWord& word, const FindText& text);
/// The sum over all words; 0 when one of them is not there, or when there is none.
[[nodiscard]] int find_rank(const FindQuery& query, const FindText& text);

/// Lower case, no accents, plain quotes and dashes, one-sign fractions as figures.
[[nodiscard]] std::string find_fold(std::string_view text);

} // namespace treadle::views
