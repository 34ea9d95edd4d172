// The words of a lesson file: private to this room.

#pragma once

#include "archive/words.h"

#include "lesson/lesson.h"

namespace treadle::archive {

template <>
struct Words<lesson::StepKind> {
    static constexpr Word<lesson::StepKind> k_list[] = {
        {"read", lesson::StepKind::words},
        {"example", lesson::StepKind::example},
        {"exercise", lesson::StepKind::exercise},
        {"verdict", lesson::StepKind::verdict},
        {"show", lesson::StepKind::demonstration},
        {"cautions", lesson::StepKind::cautions},
    };
};

template <>
struct Words<plan::Outcome> {
    static constexpr Word<plan::Outcome> k_list[] = {
        {"fits", plan::Outcome::fits},
        {"fits_up_to", plan::Outcome::fits_up_to},
        {"cannot_be_said", plan::Outcome::cannot_be_said},
        {"does_not_fit", plan::Outcome::does_not_fit},
    };
};

template <>
struct Words<lesson::Demonstration::Opens> {
    static constexpr Word<lesson::Demonstration::Opens> k_list[] = {
        {"parts", lesson::Demonstration::Opens::parts},
        {"limits", lesson::Demonstration::Opens::limits},
        {"machines", lesson::Demonstration::Opens::machines},
    };
};

/// The demo jobs by the names that lessons use.
enum class Demo { inch, metric };
template <>
struct Words<Demo> {
    static constexpr Word<Demo> k_list[] = {
        {"demo-inch", Demo::inch},
        {"demo-metric", Demo::metric},
    };
};

} // namespace treadle::archive
