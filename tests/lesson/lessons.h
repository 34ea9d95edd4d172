// A lesson made by hand, and the catalogue, for the tests of the room.

#pragma once

#include "archive/archive.h"
#include "archive/lesson_file.h"

#include <doctest/doctest.h>

#include <string>
#include <vector>

#include "lesson/check.h"

namespace treadle::tests {

inline const job::Catalog& catalog() {
    static const job::Catalog k_catalog = archive::read_catalog().value();
    return k_catalog;
}
inline calc::Tables tables() { return {catalog().grades, catalog().sections}; }

inline const std::vector<archive::BuiltInLesson>& built_in() {
    static const std::vector<archive::BuiltInLesson> k_lessons =
        archive::read_built_in_lessons().value();
    return k_lessons;
}

/// A 1 in round hole through 1/2 in metal of 50 ksi: 3.14159 x 1 x 0.5 x 50 kip = 39.27 US ton.
inline lesson::Step punching() {
    lesson::Step step;
    step.kind = lesson::StepKind::exercise;
    step.title = "A hole";
    step.question = "What does {size} ask for?";
    step.asked = {"punch.force",
                  {{"shape", "round"},
                   {"size", "1 in"},
                   {"thickness", "1/2 in"},
                   {"shear_strength", "50 ksi"}},
                  {},
                  "force"};
    step.tolerance.share = 0.02;
    lesson::Mistake radius;
    radius.step = "Radius";
    radius.words = "Half of {size}.";
    radius.scaled = {{"size", 0.5}};
    step.mistakes.push_back(radius);
    return step;
}

inline lesson::Lesson lesson_of(lesson::Step step) {
    lesson::Lesson lesson;
    lesson.title = "By hand";
    lesson.steps.push_back(std::move(step));
    return lesson;
}

} // namespace treadle::tests
