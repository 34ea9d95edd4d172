// Judges what somebody answered: right, near enough, or wrong, and then at which step.
//
// The order of the questions decides: our own figure within its tolerance; a mistake that the
// lesson names; the right number with another unit; the decimal point; else simply wrong. What
// cannot be read is no try.

#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "lesson/answer.h"
#include "lesson/figure.h"

namespace treadle::lesson {

enum class Mark {
    right,
    within, ///< not our figure, but as near as the lesson allows
    wrong_step,
    wrong,
    unreadable ///< no answer yet: how it is written is said
};
[[nodiscard]] constexpr bool is_right(Mark mark) {
    return mark == Mark::right || mark == Mark::within;
}
[[nodiscard]] const char* mark_words(Mark mark); ///< "right", "near enough", …

struct Judgement {
    Mark mark = Mark::unreadable;
    std::string step;  ///< "Unit", "Grade", …; of a wrong one whose step is known
    std::string words; ///< for whoever answered
};

/// A question as one seed asks it: our figure, and those of the mistakes.
struct Key {
    AnyQuantity answer;
    double tolerance = 0.0; ///< in the figure's own base
    std::vector<Working> workings;
    struct Slip {
        AnyQuantity figure;
        std::string step;
        std::string words; ///< inputs put in already
    };
    std::vector<Slip> slips;
};
/// Refuses what the calculation refuses; of a mistake at "mistakes[i]".
[[nodiscard]] base::Result<Key>
key_of(const Step& step, std::size_t index, unsigned seed, const calc::Tables& tables);

[[nodiscard]] Judgement judge(const Key& key, std::string_view typed, PrintStyle style);
[[nodiscard]] Judgement judge(const Step& step, const TrialPlan& plan, plan::Outcome chosen);

} // namespace treadle::lesson
