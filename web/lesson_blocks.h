// A step of a lesson put into blocks: part of lesson_work.h.

#pragma once

#include "lesson_work.h"

namespace treadle::web {

/// What the blocks are made from.
struct StepSight {
    const Course& course;
    const job::Catalog& catalog;
    const std::function<std::string(std::string_view)>& source_title;
    bool hides_answers = false;
    bool is_presenting = false;

    [[nodiscard]] const lesson::Step& step() const { return course.lesson.steps[course.step]; }
    [[nodiscard]] LessonStepState state() const {
        const auto found = course.states.find(course.step);
        return found == course.states.end() ? LessonStepState{} : found->second;
    }
    [[nodiscard]] bool is_tried() const {
        const auto found = course.record.tried.find(course.step);
        return found != course.record.tried.end() && found->second.tries > 0;
    }
};

[[nodiscard]] std::vector<views::LessonBlock> step_blocks(const StepSight& sight);
/// Lines of the working that can be shown one after the other.
[[nodiscard]] std::vector<std::string> solution_lines(const StepSight& sight);
[[nodiscard]] std::vector<views::LessonKey> head_keys(const StepSight& sight, bool can_bring_back);
[[nodiscard]] std::vector<views::LessonKey> foot_keys(const StepSight& sight);

} // namespace treadle::web
