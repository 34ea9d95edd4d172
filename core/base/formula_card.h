// What a formula says about itself: the constant half of a working.
//
// One formula, one function, one card. The other half (values and result) is quantity/working.h.

#pragma once

#include <span>

namespace treadle::base {

/// How good the evidence behind a formula or a row is.
enum class Evidence { published, common_practice, from_memory, derived, invented };

/// The word used for it in files and on sheets: "published", "common practice, no source", …
[[nodiscard]] const char* evidence_words(Evidence evidence);

struct CardSymbol {
    const char* symbol;  ///< as in the expression
    const char* meaning; ///< in the trade's words
};

struct FormulaCard {
    const char* id;         ///< unique, e.g. "punch-force"
    const char* title;      ///< what it answers
    const char* expression; ///< in the source's symbols
    std::span<const CardSymbol> symbols;
    const char* validity; ///< the range in which it holds, in words
    const char* source;   ///< key of assets/sources.json
    Evidence evidence;
    const char* rounding; ///< which way, in words; "" when the formula rounds nothing
};

} // namespace treadle::base
