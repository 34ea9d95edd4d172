// Booking the strokes of a job and grinding a tool: session.cpp's edits of the crib.

#include "edit/session.h"
#include "sheet/sample.h"

using namespace treadle;
using edit::Session;
using plan::EdgeKind;

namespace {

Session session(std::optional<int> count) {
    sheet_test::Sample sample;
    sample.shop.crib.punches[0].strokes_since_grind = count;
    auto shop = equipment::checked(sample.shop);
    REQUIRE(shop.ok());
    return Session({sample.job, std::make_shared<const equipment::Shop>(std::move(shop).value())},
                   std::make_shared<const job::Catalog>(sample.catalog));
}

int strokes_of_first_punch(const Session& s) {
    for (const plan::ToolWear& wear : plan::tool_wear(s.plan(), s.shop()))
        if (wear.kind == EdgeKind::punch && wear.tool == 0)
            return wear.strokes;
    return 0;
}

} // namespace

TEST_CASE("booking adds the strokes of the job, and undo gives the old shop back") {
    Session s = session(1000);
    const auto before = s.document().shop;
    const int strokes = strokes_of_first_punch(s);
    REQUIRE(strokes > 0);
    CHECK_FALSE(s.apply(edit::BookStrokes{}).has_value());
    CHECK(s.shop().crib.punches[0].strokes_since_grind == 1000 + strokes);
    CHECK(s.undo_words() == "strokes of this job booked");
    CHECK_FALSE(s.apply(edit::BookStrokes{}).has_value()); // the same job made once more
    CHECK(s.shop().crib.punches[0].strokes_since_grind == 1000 + 2 * strokes);
    CHECK(s.undo());
    CHECK(s.undo());
    CHECK(s.document().shop == before);
    CHECK(s.redo());
    CHECK(s.shop().crib.punches[0].strokes_since_grind == 1000 + strokes);
}

TEST_CASE("where no tool has a count, booking is refused and says what to do") {
    Session s = session(std::nullopt);
    const auto refusal = s.apply(edit::BookStrokes{});
    REQUIRE(refusal.has_value());
    CHECK(refusal->field == "shop.crib");
    CHECK_FALSE(refusal->detail.empty());
    CHECK_FALSE(s.can_undo());
}

TEST_CASE("a ground tool counts from zero, also one whose count was not known") {
    Session s = session(1000);
    CHECK_FALSE(s.apply(edit::GroundTool{EdgeKind::punch, 0}).has_value());
    CHECK(s.shop().crib.punches[0].strokes_since_grind == 0);
    CHECK(s.undo_words() == "grinding of Punch 13/16 round");
    CHECK_FALSE(s.apply(edit::GroundTool{EdgeKind::die, 1}).has_value());
    CHECK(s.shop().crib.dies[1].strokes_since_grind == 0);
    CHECK_FALSE(s.apply(edit::GroundTool{EdgeKind::saddle_die, 0}).has_value());
    CHECK(s.shop().crib.saddle_dies[0].strokes_since_grind == 0);
    CHECK(s.undo());
    CHECK(s.undo());
    CHECK(s.undo());
    CHECK(s.shop().crib.punches[0].strokes_since_grind == 1000);
    CHECK_FALSE(s.shop().crib.dies[1].strokes_since_grind.has_value());
}

TEST_CASE("a tool that is not in the crib is not ground") {
    Session s = session(1000);
    for (const int tool : {-1, 99}) {
        const auto refusal = s.apply(edit::GroundTool{EdgeKind::punch, tool});
        REQUIRE(refusal.has_value());
        CHECK(refusal->field == "tool");
    }
    CHECK_FALSE(s.can_undo());
}
