#include "edit/session.h"
#include "sheet/sample.h"
#include "sheet/worksheet.h"

#include <limits>
#include <set>

using namespace treadle;
using edit::Session;

namespace {

Session session() {
    sheet_test::Sample sample;
    return Session({sample.job, std::make_shared<const equipment::Shop>(sample.shop)},
                   std::make_shared<const job::Catalog>(sample.catalog));
}

job::Part part_of(const Session& s, std::size_t index) { return *s.job().parts.at(index); }

std::string json_of(const Session& s) { return sheet::plan_json(s.plan(), s.job(), s.shop()); }

/// Applies an edit that must be refused, and checks that nothing moved.
base::Refusal refused(Session& s, edit::Edit what) {
    const edit::Document* document = &s.document();
    const auto revision = s.revision();
    const std::string plan = json_of(s);
    const auto refusal = s.apply(std::move(what));
    REQUIRE(refusal.has_value());
    CHECK(&s.document() == document);
    CHECK(s.revision() == revision);
    CHECK(json_of(s) == plan);
    CHECK_FALSE(s.can_undo());
    CHECK(refusal->reason != "");
    return *refusal;
}

} // namespace

// added_parts.cpp
TEST_CASE("many parts are added in one step, each with an id of its own") {
    Session s = session();
    const std::size_t before = s.job().parts.size();
    edit::AddParts edit;
    edit.parts.assign(1000, part_of(s, 0));
    REQUIRE_FALSE(s.apply(edit).has_value());
    CHECK(s.job().parts.size() == before + 1000);
    std::set<std::string> ids;
    for (const job::PartRef& part : s.job().parts)
        ids.insert(part->id);
    CHECK(ids.size() == before + 1000);
    REQUIRE(s.undo());
    CHECK(s.job().parts.size() == before);
    edit.parts.assign(3, part_of(s, 0));
    edit.parts[1].count = 0;
    CHECK(refused(s, edit).field == "parts[1].count");
    CHECK(s.job().parts.size() == before);
    edit.parts.clear();
    REQUIRE_FALSE(s.apply(edit).has_value());
}

TEST_CASE("a refused edit changes nothing and names its field") {
    Session s = session();
    job::Part part = part_of(s, 0);
    part.section.thickness = Length{};
    CHECK(refused(s, edit::ReplacePart{part}).field == "section.thickness");
    part = part_of(s, 0);
    part.count = 0;
    CHECK(refused(s, edit::ReplacePart{part}).field == "count");
    part = part_of(s, 0);
    part.length = millimetres(std::numeric_limits<double>::quiet_NaN());
    CHECK(refused(s, edit::ReplacePart{part}).field == "length");
    part = part_of(s, 0);
    part.id = "nobody";
    CHECK(refused(s, edit::ReplacePart{part}).field == "id");
    CHECK(refused(s, edit::RemovePart{"nobody"}).field == "id");
    CHECK(refused(s, edit::MovePart{part_of(s, 0).id, 99}).field == "to");
    CHECK(refused(s, edit::MovePart{part_of(s, 0).id, -1}).field == "to");
    CHECK(refused(s, edit::AddPart{part_of(s, 0), 99}).field == "before");
    CHECK(refused(s, edit::SetJobNames{std::string("a\x01"), "", ""}).field == "name");
    CHECK(refused(s, edit::SetStyle{{UnitSystem::inch, 7}}).field == "style.denominator");
    CHECK(refused(s, edit::ReplaceDocument{{s.job(), nullptr}}).field == "shop");
    Grade grade = test::a36();
    grade.bands.clear();
    CHECK(refused(s, edit::SetOwnGrade{grade}).field.rfind("own_grades[0]", 0) == 0);
    equipment::Shop shop = s.shop();
    shop.machine.stations[1].id = shop.machine.stations[0].id;
    CHECK(refused(s, edit::ReplaceShop{shop}).reason != "");
}

TEST_CASE("an edit that changes nothing leaves no step") {
    Session s = session();
    CHECK_FALSE(s.apply(edit::ReplacePart{part_of(s, 0)}).has_value());
    CHECK_FALSE(s.apply(edit::SetStyle{s.job().style}).has_value());
    CHECK_FALSE(s.apply(edit::SetJobNames{s.job().name, s.job().note, s.job().due}).has_value());
    CHECK_FALSE(s.can_undo());
    CHECK(s.revision() == 0);
}

TEST_CASE("one edit plans one part anew and shares the rest") {
    Session s = session();
    const auto before = s.plan().parts;
    job::Part part = part_of(s, 2);
    part.length = inches(7.0);
    REQUIRE_FALSE(s.apply(edit::ReplacePart{part}).has_value());
    for (std::size_t i = 0; i < before.size(); ++i)
        CHECK((s.plan().parts[i] == before[i]) == (i != 2));
    CHECK(quantity::to_inches(s.plan().parts[2]->blank_length) == doctest::Approx(7.0));
}

TEST_CASE("a change of units, shop or own grade plans every part anew") {
    Session s = session();
    auto before = s.plan().parts;
    REQUIRE_FALSE(s.apply(edit::SetStyle{{UnitSystem::metric, 16}}).has_value());
    for (std::size_t i = 0; i < before.size(); ++i)
        CHECK(s.plan().parts[i] != before[i]);
    before = s.plan().parts;
    equipment::Shop shop = s.shop();
    shop.machine.stations[0].force = us_tons(5.0);
    REQUIRE_FALSE(s.apply(edit::ReplaceShop{shop}).has_value());
    CHECK(s.plan().parts[0]->operations[1].outcome == plan::Outcome::does_not_fit);
    Grade weak = test::a36();
    weak.bands[0].tensile_upper = ksi(59.0);
    weak.bands[0].tensile_minimum = ksi(58.0);
    REQUIRE_FALSE(s.apply(edit::SetOwnGrade{weak}).has_value());
    CHECK(json_of(s) ==
          sheet::plan_json(plan::make_plan(s.job(), s.shop(), s.catalog()), s.job(), s.shop()));
}

TEST_CASE("a class of tolerance is asked for and taken back, and the parts stay as planned") {
    Session s = session();
    const auto before = s.plan().parts;
    REQUIRE_FALSE(s.apply(edit::SetTolerance{job::ToleranceClass::medium}).has_value());
    CHECK(s.job().tolerance == job::ToleranceClass::medium);
    CHECK(s.plan().parts == before);
    s.undo();
    CHECK_FALSE(s.job().tolerance.has_value());
}

TEST_CASE("added parts get ids of their own") {
    Session s = session();
    job::Part part = part_of(s, 0);
    part.id.clear();
    REQUIRE_FALSE(s.apply(edit::AddPart{part}).has_value());
    CHECK(s.job().parts.back()->id == "p7"); // six parts were there
    REQUIRE_FALSE(s.apply(edit::AddPart{*s.job().parts.back(), 0}).has_value());
    CHECK(s.job().parts.front()->id == "p8");
    REQUIRE_FALSE(s.apply(edit::RemovePart{"BP1"}).has_value());
    part.id.clear();
    REQUIRE_FALSE(s.apply(edit::AddPart{part}).has_value());
    CHECK(s.job().parts.back()->id == "p9");
}

TEST_CASE("parts move to where they were told") {
    Session s = session();
    const std::string id = s.job().parts.front()->id;
    REQUIRE_FALSE(s.apply(edit::MovePart{id, 3}).has_value());
    CHECK(s.job().parts[3]->id == id);
    CHECK(s.undo_words() == "place of BP1");
    REQUIRE_FALSE(s.apply(edit::MovePart{id, 0}).has_value());
    CHECK(s.job().parts[0]->id == id);
}
