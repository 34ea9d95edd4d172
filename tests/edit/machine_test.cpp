// Another machine of the shop is put to work, and back.

#include "edit/session.h"
#include "plan/machines.h"
#include "sheet/sample.h"
#include "sheet/worksheet.h"

using namespace treadle;
using edit::Session;

namespace {

/// The sample's shop, with a second machine that has no stations yet.
Session session() {
    sheet_test::Sample sample;
    sample.shop.machine.name = "First";
    equipment::Machine second;
    second.name = "Second";
    sample.shop.other_machines.push_back(second);
    return Session({sample.job, std::make_shared<const equipment::Shop>(sample.shop)},
                   std::make_shared<const job::Catalog>(sample.catalog));
}

std::string json_of(const Session& s) { return sheet::plan_json(s.plan(), s.job(), s.shop()); }

} // namespace

TEST_CASE("another machine takes the place of the one in use, which stays in the shop") {
    Session s = session();
    const std::string before = json_of(s);
    REQUIRE_FALSE(s.apply(edit::UseMachine{1}).has_value());
    CHECK(s.shop().machine.name == "Second");
    REQUIRE(s.shop().other_machines.size() == 1);
    CHECK(s.shop().other_machines[0].name == "First");
    CHECK(s.undo_words() == "machine in use");
    // It has no punch: the plate of the sample cannot be made on it.
    CHECK(s.plan().parts[0]->outcome == plan::Outcome::does_not_fit);
    CHECK(json_of(s) ==
          sheet::plan_json(plan::make_plan(s.job(), s.shop(), s.catalog()), s.job(), s.shop()));
    REQUIRE(s.undo());
    CHECK(s.shop().machine.name == "First");
    CHECK(json_of(s) == before);
    REQUIRE(s.redo());
    REQUIRE_FALSE(s.apply(edit::UseMachine{1}).has_value());
    CHECK(json_of(s) == before);
}

TEST_CASE("the machine in use leaves no step, and one that is not there is refused") {
    Session s = session();
    const auto revision = s.revision();
    CHECK_FALSE(s.apply(edit::UseMachine{0}).has_value());
    CHECK_FALSE(s.can_undo());
    for (const int machine : {-1, 2}) {
        const auto refusal = s.apply(edit::UseMachine{machine});
        REQUIRE(refusal.has_value());
        CHECK(refusal->field == "machine");
    }
    CHECK(s.revision() == revision);
    CHECK(s.shop().machine.name == "First");
}
