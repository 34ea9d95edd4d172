// What a search has come to, as a value; and both as text, so that a worker beside the page can do
// the searching. Text that does not hold together is refused: nothing is taken on trust.

#pragma once

#include "base/result.h"

#include <cstdint>
#include <string>
#include <string_view>

#include "cutting/search.h"

namespace treadle::cutting {

struct CutAnswer {
    Bars bars; ///< empty while there is no plan
    bool has_plan = false;
    std::int64_t cost = 0;
    std::int64_t bound = 0; ///< no plan costs less
    bool done = false;      ///< more work changes nothing
    long long work = 0;

    [[nodiscard]] bool proven() const { return has_plan && bound >= cost; }
};

[[nodiscard]] CutAnswer answer_of(const Search& search);
/// Searches from the start with this much work.
[[nodiscard]] CutAnswer solve(const CutList& list, long long work);

[[nodiscard]] std::string list_text(const CutList& list);
/// Refuses ("list") what list_text did not write.
[[nodiscard]] base::Result<CutList> read_list_text(std::string_view text);

[[nodiscard]] std::string answer_text(const CutAnswer& answer);
/// Refuses ("answer") what is no plan for this list.
[[nodiscard]] base::Result<CutAnswer> read_answer_text(const CutList& list, std::string_view text);

} // namespace treadle::cutting
