// read_lesson.cpp and read_varied.cpp: lessons as files, sound and hostile.

#include "archive/bundle.h"
#include "archive/lesson_file.h"

#include "assets/embedded.h"

#include <doctest/doctest.h>

using namespace treadle;

namespace {

std::string lesson_of(const std::string& step) {
    return R"({"format":"treadle-lesson","version":1,"units":"inch","title":"T","steps":[)" + step +
           "]}";
}

std::string exercise(const std::string& more) {
    return R"({"do":"exercise","title":"E","ask":"A?","calc":"punch.force","answer":"force",)" +
           more + "}";
}

std::string field_of(const std::string& bytes) {
    const auto lesson = archive::read_lesson(bytes);
    return lesson.ok() ? "read" : lesson.refusal().field;
}

const std::string k_in = R"("in":{"shape":"round","thickness":"1/4 in"})";
const std::string k_part =
    R"({"id":"a","mark":"A","grade":"A36","section":{"shape":"round","diameter":"1 in"},)"
    R"("length":"8 in","count":1,"operations":[{"do":"cut"}]})";

} // namespace

TEST_CASE("every lesson that comes with the program is read") {
    const auto lessons = archive::read_built_in_lessons();
    REQUIRE(lessons.ok());
    REQUIRE(lessons->size() == assets::embedded_under("lessons/").size());
    CHECK(lessons->front().id == "1-punching-force");
    for (const archive::BuiltInLesson& one : *lessons) {
        CHECK_FALSE(one.lesson.title.empty());
        CHECK_FALSE(one.lesson.about.empty());
        CHECK(one.lesson.steps.size() >= 5);
    }
}

TEST_CASE("a lesson is known by its format") {
    const std::string_view bytes = assets::embedded("lessons/1-punching-force.json").value_or("");
    CHECK(archive::kind_of_file(bytes) == archive::FileKind::lesson);
    CHECK(std::string(archive::file_kind_words(archive::FileKind::lesson)) == "a lesson");
}

TEST_CASE("what the seed chooses from: sets, values, a range") {
    const auto range = archive::read_lesson(lesson_of(exercise(
        k_in + R"(,"vary":[{"input":"size","from":"1/2 in","to":"1 in","by":"1/16 in"},)"
               R"({"input":"material","values":["A36","304"]},{"sets":[{"a":"1"},{"b":"2"}]}])")));
    REQUIRE(range.ok());
    const auto& vary = range->steps[0].asked.vary;
    REQUIRE(vary.size() == 3);
    REQUIRE(vary[0].sets.size() == 9);
    CHECK(*vary[0].sets[0][0].second.text() == "1/2 in");
    CHECK(*vary[0].sets[1][0].second.text() == "9/16 in");
    CHECK(*vary[0].sets[8][0].second.text() == "1 in");
    CHECK(vary[1].sets.size() == 2);
    CHECK(vary[2].sets[1][0].first == "b");
    const auto metric = archive::read_lesson(lesson_of(exercise(
        k_in + R"(,"vary":[{"input":"size","from":"10 mm","to":"11 mm","by":"0.5 mm"}])")));
    REQUIRE(metric.ok());
    CHECK(*metric->steps[0].asked.vary[0].sets[1][0].second.text() == "10.5 mm");
}

TEST_CASE("a choice that says nothing, or two things, is refused") {
    for (const char* const vary :
         {R"({})",
          R"({"input":"size"})",
          R"({"values":["1 in"]})",
          R"({"input":"size","sets":[{"a":"1"}]})",
          R"({"input":"size","values":["1 in"],"from":"1 in"})",
          R"({"input":"size","from":"2 in","to":"1 in","by":"1/4 in"})",
          R"({"input":"size","from":"1 in","to":"2 in","by":"0 in"})",
          R"({"input":"size","from":"1 in","to":"2 in","by":"-1 in"})",
          R"({"input":"size","from":"1","to":"2 in","by":"1 in"})",
          R"({"input":"size","from":"1 in","to":"90 m","by":"0.001 mm"})"}) {
        CAPTURE(vary);
        const std::string field = field_of(lesson_of(exercise(k_in + ",\"vary\":[" + vary + "]")));
        CHECK(field.rfind("steps[0].vary[0]", 0) == 0);
    }
}

TEST_CASE("what is missing, unknown or beyond its bounds is refused at its place") {
    CHECK(field_of(lesson_of(exercise(k_in))) == "read");
    CHECK(field_of("") == "file");
    CHECK(field_of("{") == "file");
    CHECK(field_of("[]") == "file");
    CHECK(field_of(R"({"format":"treadle-job"})") == "format");
    CHECK(field_of(R"({"format":"treadle-lesson","version":2})") == "version");
    CHECK(field_of(R"({"format":"treadle-lesson","version":0})") == "version");
    CHECK(field_of(lesson_of("")) == "steps");
    CHECK(field_of(lesson_of(R"({"do":"sing","title":"x"})")) == "steps[0].do");
    CHECK(field_of(lesson_of(R"({"do":"read"})")) == "steps[0].title");
    CHECK(field_of(lesson_of(R"({"do":"read","title":""})")) == "steps[0].title");
    CHECK(field_of(lesson_of(R"({"do":"read","title":"x","answer":"40 ton"})")) ==
          "steps[0].answer");
    CHECK(field_of(lesson_of(R"({"do":"read","title":"x","words":[""]})")) == "steps[0].words");
    CHECK(field_of(lesson_of(R"({"do":"read","title":")" + std::string(300, 'x') + "\"}")) ==
          "steps[0].title");
    CHECK(field_of(lesson_of(exercise(R"("in":[])"))) == "steps[0].in");
    CHECK(field_of(lesson_of(exercise(k_in + R"(,"tolerance":"50 %")"))) == "steps[0].tolerance");
    CHECK(field_of(lesson_of(exercise(k_in + R"(,"tolerance":"0 %")"))) == "steps[0].tolerance");
    CHECK(field_of(lesson_of(exercise(k_in + R"(,"mistakes":[{"step":"x"}])"))) ==
          "steps[0].mistakes[0].words");
    CHECK(field_of(lesson_of(
              exercise(k_in + R"(,"mistakes":[{"step":"x","words":"y","times":"-1"}])"))) ==
          "steps[0].mistakes[0].times");
    CHECK(field_of(lesson_of(R"({"do":"show","title":"x","open":"limits","job":"mine"})")) ==
          "steps[0].job");
    CHECK(field_of(lesson_of(R"({"do":"verdict","title":"x","ask":"y","shop":"demo-inch"})")) ==
          "steps[0].parts");
    CHECK(field_of(lesson_of(R"({"do":"verdict","title":"x","ask":"y","parts":[)" + k_part +
                             "]}")) == "steps[0].parts");
    std::string steps;
    for (std::size_t i = 0; i <= lesson::k_most_steps; ++i)
        steps += std::string(i == 0 ? "" : ",") + R"({"do":"read","title":"x"})";
    CHECK(field_of(lesson_of(steps)) == "steps");
    CHECK(field_of(lesson_of(R"({"do":"read","title":"x"})") +
                   std::string(archive::k_largest_lesson, ' ')) == "file");
}

TEST_CASE("a part of a lesson passes the job's own checks, and a shop can stand in the file") {
    const auto verdict = [](const std::string& shop, const std::string& part) {
        return lesson_of(R"({"do":"verdict","title":"x","ask":"y","shop":)" + shop +
                         R"(,"parts":[)" + part + "]}");
    };
    CHECK(field_of(verdict("\"demo-inch\"", k_part)) == "read");
    CHECK(field_of(verdict(R"({"name":"Mine","machine":{"name":"M"}})", k_part)) == "read");
    CHECK(field_of(verdict("\"demo-paris\"", k_part)) == "steps[0].shop");
    std::string no_count = k_part;
    no_count.replace(no_count.find("\"count\":1"), 9, "\"count\":0");
    CHECK(field_of(verdict("\"demo-inch\"", no_count)) == "steps[0].parts[0].count");
}

TEST_CASE("what breaks is refused by a calculation or by a plan, not by both and not by none") {
    const auto example = [](const std::string& break_it) {
        return lesson_of(R"({"do":"example","title":"x","calc":"punch.force","answer":"force",)" +
                         k_in + R"(,"break":)" + break_it + "}");
    };
    CHECK(field_of(example(R"({"words":"w","refused_at":"size"})")) == "read");
    CHECK(field_of(example(R"({"words":"w"})")) == "steps[0].break.refused_at");
    CHECK(field_of(example(R"({"words":"w","refused_at":"size","shop":"demo-inch","parts":[)" +
                           k_part + "]}")) == "steps[0].break.refused_at");
    CHECK(field_of(example(R"({"words":"w","outcome":"fits","shop":"demo-inch","parts":[)" +
                           k_part + "]}")) == "steps[0].break.outcome");
}
