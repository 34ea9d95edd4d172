// What is wrong with a lesson, before a class finds it.
//
// Reading has said that the file is in order. Here every step is tried: does the calculation
// answer, is each mistake told from the right answer and from the others, is what shall be refused
// refused, does the published figure agree, is the trial's verdict one that can be asked.

#pragma once

#include "base/result.h"

#include <vector>

#include "lesson/judge.h"

namespace treadle::lesson {

/// Fields like "steps[3].mistakes[1]". Empty: every step works with this seed.
[[nodiscard]] std::vector<base::Refusal>
faults_of(const Lesson& lesson, unsigned seed, const job::Catalog& catalog);

/// Ours against the published figure.
struct Agreement {
    AnyQuantity ours;
    bool agrees = false; ///< within half of the last printed digit
};
[[nodiscard]] base::Result<Agreement> compare(const Published& published, const AnyQuantity& ours);

/// What the calculation, or the plan, says to what is broken.
struct Breaking {
    bool is_stopped = false; ///< as the lesson says it must be
    std::string words;       ///< the refusal, or the verdict with its reasons
};
[[nodiscard]] Breaking try_to_break(const Step& step,
                                    std::size_t index,
                                    unsigned seed,
                                    PrintStyle style,
                                    const job::Catalog& catalog);

} // namespace treadle::lesson
