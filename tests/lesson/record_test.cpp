#include "sheet/lesson_sheet.h"

#include "base/text.h"
#include "lesson/lessons.h"
#include "lesson/record.h"

using namespace treadle;
using namespace treadle::lesson;

namespace {

Judgement wrong(const char* step) { return {Mark::wrong_step, step, ""}; }
const Judgement k_right{Mark::right, "", "Right."};
const Judgement k_unreadable{Mark::unreadable, "", "?"};

} // namespace

TEST_CASE("tries are counted until the answer is right, unreadable ones not") {
    const Lesson lesson = tests::lesson_of(tests::punching());
    Record record;
    CHECK(count_words(count(lesson, record)) == "0 of 1 answered, 0 right");
    note(record, 0, "?", k_unreadable);
    CHECK(count(lesson, record).answered == 0);
    note(record, 0, "1 ton", wrong("Unit"));
    note(record, 0, "2 ton", wrong("Unit"));
    note(record, 0, "3 ton", wrong("Factor"));
    CHECK(count_words(count(lesson, record)) == "1 of 1 answered, 0 right");
    note(record, 0, "39.27 ton", k_right);
    note(record, 0, "5 ton", wrong("Grade")); // trying on changes no result
    CHECK(count_words(count(lesson, record)) == "1 of 1 answered, 1 right");
    const Results out = results(lesson, record, tests::catalog());
    REQUIRE(out.lines.size() == 1);
    CHECK(out.lines[0].typed == "39.27 ton");
    CHECK(out.lines[0].judged == "right, at try 4; on the way: Unit, Factor");
    CHECK(out.lines[0].answer == "39.27 ton");
    CHECK(out.lines[0].question == "What does 1 in ask for?");
}

TEST_CASE("our answer is not given away for a question that nobody answered") {
    const Lesson lesson = tests::lesson_of(tests::punching());
    const Results out = results(lesson, {}, tests::catalog());
    REQUIRE(out.lines.size() == 1);
    CHECK(out.lines[0].answer.empty());
    CHECK(out.lines[0].typed.empty());
    CHECK(sheet::lesson_html(out, {}).find("39.27") == std::string::npos);
}

TEST_CASE("a look at the working before the answer stands in the result") {
    const Lesson lesson = tests::lesson_of(tests::punching());
    Record record;
    note_look(record, 0);
    CHECK(count(lesson, record).answered == 0);
    note(record, 0, "39.27 ton", k_right);
    CHECK(results(lesson, record, tests::catalog()).lines[0].judged ==
          "right, after a look at the working");
    Record later;
    note(later, 0, "39.27 ton", k_right);
    note_look(later, 0);
    CHECK(results(lesson, later, tests::catalog()).lines[0].judged == "right");
}

TEST_CASE("the sheet holds what was typed as text, whatever it is") {
    Lesson lesson = tests::lesson_of(tests::punching());
    lesson.title = "<b>Bold</b>";
    Record record;
    note(record, 0, "<script>1</script>", wrong("<i>"));
    const std::string html = sheet::lesson_html(results(lesson, record, tests::catalog()), {});
    CHECK(html.find("<script") == std::string::npos);
    CHECK(html.find("<b>") == std::string::npos);
    CHECK(html.find("&lt;script&gt;") != std::string::npos);
    CHECK(html.find(base::escape_markup(sheet::manual_decides())) != std::string::npos);
}
