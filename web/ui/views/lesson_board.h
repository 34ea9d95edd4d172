// What the place Lessons shows: plain data that the page fills, in the order in which it is drawn.

#pragma once

#include <string>
#include <vector>

namespace treadle::views {

/// What was pressed, chosen or typed in a lesson. No job is touched by any of it.
struct LessonAsk {
    enum class Do {
        enter,
        leave,
        open,  ///< by id
        close, ///< back to the list
        next,
        back,
        answer, ///< what was typed, not judged yet
        check,
        pick, ///< an outcome
        hint,
        reveal, ///< one line more of the working
        reveal_all,
        cover,
        break_it,
        present, ///< on and off
        new_numbers,
        reset_step,
        reset_all,
        undo_reset,
        print,
        copy_link,
        begin_again ///< the demonstration
    };
    Do what = Do::enter;
    std::string text;
    int choice = 0;
};

struct LessonKey {
    std::string id;
    std::string label;
    std::string name; ///< spoken; the label when empty
    LessonAsk ask;
    bool primary = false;
    bool enabled = true;
    std::string why_not;
};

struct LessonBlock {
    enum class Kind {
        heading,
        words,
        figures, ///< what is given, worked out or printed: to be read from the last row
        quiet,
        right,
        wrong,
        unsure, ///< neither: not readable, or stopped as it must be
        card,   ///< title and words
        field,
        keys
    };
    Kind kind = Kind::words;
    std::string text;
    std::string detail; ///< words of a card; why a field's text was not taken
    std::string value;  ///< of a field
    LessonAsk::Do takes = LessonAsk::Do::answer; ///< a field's text goes there
    std::vector<LessonKey> keys;
};

struct LessonRow {
    std::string id;
    std::string title;
    std::string about;
    std::string detail; ///< "2 of 3 answered, 2 right"; where it comes from
};

struct LessonBoard {
    std::vector<LessonRow> rows;
    std::string trouble; ///< why there is no list
    bool is_open = false;
    std::string title; ///< of the open lesson
    std::string place; ///< "Step 3 of 7, exercise"
    std::string step;  ///< what a scrolled place belongs to: another one begins at its top
    std::string step_title;
    std::vector<LessonBlock> blocks;
    std::vector<LessonKey> head; ///< keys over the step, and below it
    std::vector<LessonKey> foot;
    bool is_presenting = false;
    bool shows = false; ///< a demonstration takes the room under the words
};

} // namespace treadle::views
