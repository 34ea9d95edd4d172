// Keeps the lessons of a page: which is open, what was answered, and the demonstration beside it.
//
// All of it lives in memory alone: a school's page with a cleared profile works as any other, and
// no job and no store is ever touched.

#pragma once

#include "archive/lesson_file.h"
#include "archive/link.h"
#include "edit/session.h"

#include "ui/views/desk.h"
#include "ui/views/lesson_board.h"

#include <cstddef>
#include <functional>
#include <map>
#include <memory>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "lesson/check.h"
#include "lesson/record.h"

namespace treadle::web {

/// What somebody sees of one step beside what the record holds.
struct LessonStepState {
    std::string typed;
    std::optional<lesson::Judgement> said;
    std::optional<plan::Outcome> picked;
    std::size_t revealed = 0; ///< lines of the working
    bool hinted = false;
    bool broken = false;
};

/// One lesson and how far somebody is in it.
struct Course {
    std::string id;
    std::string from;      ///< the file it comes from; empty: with the program
    bool on_shelf = false; ///< the host offers that file, so a link can find it
    lesson::Lesson lesson;
    std::size_t step = 0;
    lesson::Record record;
    std::map<std::size_t, LessonStepState> states;
};

/// A job opened for a demonstration, with its own choices.
struct Demonstrated {
    edit::Session session;
    views::State state;
    views::Readings readings;
    std::vector<views::Ask> asks;
};

class LessonWork {
public:
    explicit LessonWork(std::shared_ptr<const job::Catalog> catalog);

    std::function<std::string(std::string_view)> source_title;
    /// Said aloud by a screen reader.
    std::function<void(const std::string&)> announce;

    /// Reads the lessons that come with the program, once.
    void begin();
    /// Puts a lesson of a file beside the others and opens it.
    [[nodiscard]] std::optional<base::Refusal>
    open_file(const std::string& name, std::string_view bytes, bool on_shelf);
    /// What a link asks for; false when there is no such lesson here.
    bool open_wished(const archive::LinkWishes& wishes);
    /// Does what belongs to the lesson alone; leaving, printing and links are the page's.
    void take(const views::LessonAsk& ask);

    [[nodiscard]] const views::LessonBoard& board() const { return board_; }
    [[nodiscard]] lesson::Results results() const;
    /// Of the open lesson, as a link says it. Refuses one that came by a file.
    [[nodiscard]] base::Result<std::string> link() const;
    /// Null when none is shown.
    [[nodiscard]] Demonstrated* demonstrated() { return shown_.get(); }
    /// What was asked in the demonstration, done there.
    void take_shown();

private:
    [[nodiscard]] Course* open() { return open_ < courses_.size() ? &courses_[open_] : nullptr; }
    void open_course(std::size_t index);
    void go(Course& course, std::size_t step);
    void answer(Course& course);
    void pick(Course& course, plan::Outcome outcome);
    bool move(Course& course, views::LessonAsk::Do what);
    void work(Course& course, const views::LessonAsk& ask);
    void reveal(Course& course, bool all);
    void reset(Course& course, bool all);
    void use_seed(Course& course, unsigned seed);
    void show_demonstration(const Course& course);
    void say(const lesson::Judgement& judged);
    void refresh();

    std::shared_ptr<const job::Catalog> catalog_;
    std::vector<Course> courses_;
    std::size_t open_ = ~std::size_t{0};
    std::optional<Course> before_reset_;
    bool has_read_ = false;
    bool hides_answers_ = false; ///< a link wants an answer before the working
    std::unique_ptr<Demonstrated> shown_;
    views::LessonBoard board_;
};

} // namespace treadle::web
