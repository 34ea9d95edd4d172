// Undo and redo over random edits: fixed seed, printed on failure.

#include "edit/hand.h"
#include "edit/session.h"
#include "sheet/worksheet.h"

#include <algorithm>

using namespace treadle;
using edit::Session;
using edit_test::Hand;
using edit_test::session;

namespace {

/// What a front end can see of a state: the very parts and shop, and every figure.
struct Seen {
    std::vector<const job::Part*> parts;
    const equipment::Shop* shop = nullptr;
    std::string name;
    std::string plan;
};
Seen look(const Session& s) {
    Seen seen;
    for (const job::PartRef& part : s.job().parts)
        seen.parts.push_back(part.get());
    seen.shop = s.document().shop.get();
    seen.name = s.job().name;
    seen.plan = sheet::plan_json(s.plan(), s.job(), s.shop());
    return seen;
}
void check_same(const Seen& a, const Seen& b) {
    CHECK(a.parts == b.parts);
    CHECK(a.shop == b.shop);
    CHECK(a.name == b.name);
    CHECK(a.plan == b.plan);
}

} // namespace

TEST_CASE("undo leads back through every state, redo forward again") {
    constexpr unsigned k_seed = 20251;
    CAPTURE(k_seed);
    Session s = session();
    Hand hand(k_seed);
    std::vector<Seen> states{look(s)};
    int refused = 0;
    for (int i = 0; i < 300; ++i) {
        const auto revision = s.revision();
        if (s.apply(hand.next(s)).has_value())
            ++refused;
        if (s.revision() != revision)
            states.push_back(look(s));
    }
    CHECK(refused > 0);
    CHECK(states.size() > 150);
    const std::size_t last = states.size() - 1;
    const std::size_t steps = std::min<std::size_t>(last, Session::k_undo_steps);
    for (std::size_t i = 1; i <= steps; ++i) {
        CHECK(s.undo_words() != "");
        REQUIRE(s.undo());
        check_same(look(s), states[last - i]);
    }
    CHECK_FALSE(s.undo());
    for (std::size_t i = 1; i <= steps; ++i) {
        REQUIRE(s.redo());
        check_same(look(s), states[last - steps + i]);
    }
    CHECK_FALSE(s.redo());
}

TEST_CASE("the plan that is kept fresh is the plan made from nothing") {
    constexpr unsigned k_seed = 7;
    CAPTURE(k_seed);
    Session s = session();
    Hand hand(k_seed);
    for (int i = 0; i < 300; ++i) {
        if (hand.below(4) == 0 && s.can_undo())
            s.undo();
        else
            static_cast<void>(s.apply(hand.next(s)));
        const plan::Plan fresh = plan::make_plan(s.job(), s.shop(), s.catalog());
        REQUIRE(sheet::plan_json(s.plan(), s.job(), s.shop()) ==
                sheet::plan_json(fresh, s.job(), s.shop()));
    }
}

TEST_CASE("two hundred steps are kept, older ones forgotten") {
    Session s = session();
    for (int i = 0; i < 250; ++i)
        REQUIRE_FALSE(s.apply(edit::SetJobNames{"Job " + std::to_string(i), "", ""}).has_value());
    int undone = 0;
    while (s.undo())
        ++undone;
    CHECK(undone == 200);
    CHECK(s.job().name == "Job 49");
    CHECK(s.revision() == 450);
}

TEST_CASE("a new edit forgets what could be redone") {
    Session s = session();
    REQUIRE_FALSE(s.apply(edit::SetJobNames{"one", "", ""}).has_value());
    CHECK(s.undo_words() == "name of the job");
    REQUIRE(s.undo());
    CHECK(s.redo_words() == "name of the job");
    REQUIRE_FALSE(s.apply(edit::SetJobNames{"two", "", ""}).has_value());
    CHECK_FALSE(s.can_redo());
    CHECK_FALSE(s.redo());
    CHECK(s.job().name == "two");
}

TEST_CASE("opening a file is a step that can be taken back") {
    Session s = session();
    const Seen before = look(s);
    job::Job other;
    other.name = "Another";
    REQUIRE_FALSE(s.apply(edit::ReplaceDocument{{other, s.document().shop}}).has_value());
    CHECK(s.job().parts.empty());
    CHECK(s.plan().parts.empty());
    REQUIRE(s.undo());
    check_same(look(s), before);
}
