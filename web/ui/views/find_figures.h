// The figures of a plan by the names under which they are looked for.

#pragma once

#include "plan/plan.h"

#include <cstdint>
#include <span>

namespace treadle::views {

struct FigureName {
    const char* name;
    const char* also;    ///< other words for it
    const char* working; ///< how the title of its working begins; empty: it is a check only
    unsigned operations; ///< bits: the kinds of operations that have the working
    plan::Rule rule = plan::Rule::force; ///< of a check
};

[[nodiscard]] std::span<const FigureName> figure_names();
[[nodiscard]] unsigned operation_bit(const job::Operation& operation);
[[nodiscard]] inline std::uint64_t rule_bit(plan::Rule rule) {
    return std::uint64_t{1} << static_cast<unsigned>(rule);
}

} // namespace treadle::views
