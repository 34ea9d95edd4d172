// What somebody answered in a lesson, and the same as lines for a sheet. Kept nowhere else.

#pragma once

#include <cstddef>
#include <map>
#include <string>
#include <vector>

#include "lesson/judge.h"

namespace treadle::lesson {

/// Of one question.
struct Tried {
    int tries = 0;     ///< that could be read
    std::string typed; ///< the last one
    Judgement last;
    std::vector<std::string> steps; ///< wrong steps on the way, each once, as they were met
    bool looked = false;            ///< at the working before the answer was right
};

struct Record {
    unsigned seed = 1;
    std::map<std::size_t, Tried> tried; ///< by step
};

/// Counts a try, unless it could not be read.
void note(Record& record, std::size_t step, std::string typed, const Judgement& judged);
/// Somebody looked at the working of a question that is not answered yet.
void note_look(Record& record, std::size_t step);

struct Count {
    int questions = 0;
    int answered = 0;
    int right = 0;
};
[[nodiscard]] Count count(const Lesson& lesson, const Record& record);
/// "3 of 5 answered, 2 right".
[[nodiscard]] std::string count_words(const Count& count);

/// One question as the sheet shows it.
struct ResultLine {
    std::string title;
    std::string question;
    std::vector<std::string> given;
    std::string typed; ///< empty: not answered
    std::string judged;
    std::string answer; ///< ours; empty: not given away, because it is not answered
    std::string source; ///< key of the formula's source
};
struct Results {
    std::string title;
    std::string author;
    unsigned seed = 1;
    std::string summary;
    std::vector<ResultLine> lines;
};
[[nodiscard]] Results
results(const Lesson& lesson, const Record& record, const job::Catalog& catalog);

} // namespace treadle::lesson
