// Places of operations in a part, through the session as the page does it.

#include "edit/operations.h"
#include "edit/session.h"
#include "sheet/sample.h"

#include <doctest/doctest.h>

using namespace treadle;
using edit::Session;

namespace {

/// One part: two cuts with different mitres around a bend of 90 and one of 45 degrees.
Session session() {
    sheet_test::Sample sample;
    job::Part part = *sample.job.parts.front();
    part.mark = "HG9";
    part.legs = {inches(2), inches(3), inches(4)};
    part.section.shape = section::Shape::flat;
    part.operations = {
        job::Cut{}, job::Bend{degrees(90), Length{}, true}, job::Bend{degrees(45), Length{}, true}};
    sample.job.parts = {std::make_shared<const job::Part>(part)};
    return Session({sample.job, std::make_shared<const equipment::Shop>(sample.shop)},
                   std::make_shared<const job::Catalog>(sample.catalog));
}

const job::Part& part_of(const Session& s) { return *s.job().parts.front(); }

/// "cut 90 45": what stands where.
std::string order_of(const Session& s) {
    std::string words;
    for (const job::Operation& operation : part_of(s).operations) {
        const auto* bend = std::get_if<job::Bend>(&operation);
        words += words.empty() ? "" : " ";
        words += !bend ? "cut" : bend->angle == degrees(90) ? "90" : "45";
    }
    return words;
}

} // namespace

TEST_CASE("an operation moves to where it was told, and undo brings it back") {
    Session s = session();
    const std::string id = part_of(s).id;
    REQUIRE(order_of(s) == "cut 90 45");
    REQUIRE_FALSE(s.apply(edit::MoveOperation{id, 0, 2}));
    CHECK(order_of(s) == "90 45 cut");
    CHECK(s.undo_words() == "place of operation 1 of HG9");
    REQUIRE_FALSE(s.apply(edit::MoveOperation{id, 2, 1}));
    CHECK(order_of(s) == "90 cut 45");
    CHECK(s.undo());
    CHECK(s.undo());
    CHECK(order_of(s) == "cut 90 45");
    CHECK_FALSE(s.can_undo());
}

TEST_CASE("an operation that stays leaves no step") {
    Session s = session();
    REQUIRE_FALSE(s.apply(edit::MoveOperation{part_of(s).id, 1, 1}));
    CHECK_FALSE(s.can_undo());
}

TEST_CASE("a place that is not there is refused with the places that are") {
    Session s = session();
    const std::string id = part_of(s).id;
    for (const int from : {-1, 3}) {
        const auto refusal = s.apply(edit::MoveOperation{id, from, 0});
        REQUIRE(refusal);
        CHECK(refusal->field == "operation");
        CHECK(refusal->detail == "Its operations go from 1 to 3.");
    }
    for (const int to : {-1, 3}) {
        const auto refusal = s.apply(edit::MoveOperation{id, 0, to});
        REQUIRE(refusal);
        CHECK(refusal->field == "to");
    }
    CHECK(s.apply(edit::MoveOperation{"nobody", 0, 1})->field == "id");
    CHECK(s.apply(edit::CopyOperation{"nobody", 0})->field == "id");
    CHECK(s.apply(edit::CopyOperation{id, 7})->field == "operation");
    CHECK(order_of(s) == "cut 90 45");
    CHECK_FALSE(s.can_undo());
}

TEST_CASE("bends that change places leave the legs where they are") {
    Session s = session();
    REQUIRE_FALSE(s.apply(edit::MoveOperation{part_of(s).id, 2, 1}));
    CHECK(order_of(s) == "cut 45 90");
    CHECK(part_of(s).legs == std::vector<Length>{inches(2), inches(3), inches(4)});
}

TEST_CASE("a copied operation stands after the first one, a bend with a leg of its own") {
    Session s = session();
    const std::string id = part_of(s).id;
    REQUIRE_FALSE(s.apply(edit::CopyOperation{id, 0}));
    CHECK(order_of(s) == "cut cut 90 45");
    CHECK(part_of(s).legs.size() == 3);
    CHECK(s.undo_words() == "operation 2 added to HG9");
    REQUIRE_FALSE(s.apply(edit::CopyOperation{id, 2}));
    CHECK(order_of(s) == "cut cut 90 90 45");
    CHECK(part_of(s).legs == std::vector<Length>{inches(2), inches(3), inches(3), inches(4)});
}
