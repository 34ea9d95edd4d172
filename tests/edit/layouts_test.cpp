#include "archive/archive.h"
#include "edit/layout_reading.h"
#include "edit/layouts.h"
#include "edit/session.h"

#include <doctest/doctest.h>

#include <algorithm>
#include <set>

using namespace treadle;
using edit::AddLayout;
using edit::ChangeLayout;
using edit::RemoveLayout;
using edit::Session;

namespace {

std::shared_ptr<const job::Catalog> catalog() {
    static const auto whole = std::make_shared<const job::Catalog>(archive::read_catalog().value());
    return whole;
}

std::vector<job::LayoutValue> guard(const std::string& run) {
    std::vector<job::LayoutValue> values = edit::layout_example("guard-run", UnitSystem::inch);
    for (job::LayoutValue& value : values)
        if (value.name == "run")
            value.text = run;
    return values;
}

Session session() {
    edit::Document document;
    document.job.style = {UnitSystem::inch, 16};
    document.shop = std::make_shared<const equipment::Shop>();
    return Session(std::move(document), catalog());
}

Session with_guard() {
    Session out = session();
    REQUIRE_FALSE(out.apply(AddLayout{"guard-run", "G1", guard("16 ft")}));
    return out;
}

job::PartRef part(const Session& session, const std::string& mark) {
    for (const job::PartRef& part : session.job().parts)
        if (part->mark == mark)
            return part;
    return nullptr;
}

} // namespace

TEST_CASE("a layout makes its parts in one step, and one undo takes them all back") {
    Session s = with_guard();
    CHECK(s.job().layouts.size() == 1);
    CHECK(s.job().parts.size() == 4); // posts, two rails, pickets
    CHECK(s.plan().parts.size() == 4);
    CHECK(s.undo_words() == "layout G1 added");
    REQUIRE(s.undo());
    CHECK(s.job().parts.empty());
    CHECK(s.job().layouts.empty());
    REQUIRE(s.redo());
    CHECK(s.job().parts.size() == 4);
}

TEST_CASE("a change makes the parts follow under their ids, and shares what stays the same") {
    Session s = with_guard();
    const job::PartRef post = part(s, "G1-P");
    const job::PartRef picket = part(s, "G1-K");
    REQUIRE_FALSE(s.apply(ChangeLayout{s.job().layouts[0].id, "G1", guard("24 ft")}));
    CHECK(s.undo_words() == "layout G1");
    CHECK(part(s, "G1-P")->id == post->id);
    CHECK(part(s, "G1-P")->count == 4);
    CHECK(part(s, "G1-K")->count > picket->count);
    // The same again is no step; another mark is.
    const std::size_t steps = s.past().size();
    REQUIRE_FALSE(s.apply(ChangeLayout{s.job().layouts[0].id, "G1", guard("24 ft")}));
    CHECK(s.past().size() == steps);
    REQUIRE_FALSE(s.apply(ChangeLayout{s.job().layouts[0].id, "G2", guard("24 ft")}));
    CHECK(part(s, "G2-P")->id == post->id);
    REQUIRE(s.undo());
    REQUIRE(s.undo());
    CHECK(part(s, "G1-P") == post);
    CHECK(part(s, "G1-K") == picket);
}

TEST_CASE("a role that is gone takes its part along, a new one brings a part beside the others") {
    Session s = session();
    job::Part typed;
    typed.mark = "T1";
    typed.grade = "A36";
    typed.section = {section::Shape::flat, inches(2), {}, inches(0.25), {}, {}, ""};
    typed.length = inches(10);
    REQUIRE_FALSE(s.apply(AddLayout{"guard-run", "G1", guard("16 ft")}));
    REQUIRE_FALSE(s.apply(edit::AddPart{typed, -1}));
    auto two_sides = guard("16 ft");
    two_sides.push_back({"run_2", "8 ft"});
    REQUIRE_FALSE(s.apply(ChangeLayout{s.job().layouts[0].id, "G1", two_sides}));
    CHECK(s.job().parts.size() == 7);
    CHECK(s.job().parts.back()->mark == "T1");
    CHECK(part(s, "G1-T2") != nullptr);
    REQUIRE_FALSE(s.apply(ChangeLayout{s.job().layouts[0].id, "G1", guard("16 ft")}));
    CHECK(s.job().parts.size() == 5);
    CHECK(part(s, "G1-T2") == nullptr);
    std::set<std::string> ids;
    for (const job::PartRef& made : s.job().parts)
        CHECK(ids.insert(made->id).second);
}

TEST_CASE("a part edited by hand is detached, says so, and stays as it is") {
    Session s = with_guard();
    job::Part changed = *part(s, "G1-P");
    changed.length = inches(50);
    REQUIRE_FALSE(s.apply(edit::ReplacePart{changed}));
    CHECK(s.undo_words() == "length of G1-P, no longer linked to G1");
    CHECK(edit::part_origin(s.job(), changed.id).detached);
    REQUIRE_FALSE(s.apply(ChangeLayout{s.job().layouts[0].id, "G1", guard("24 ft")}));
    CHECK(part(s, "G1-P")->length == inches(50));
    CHECK(part(s, "G1-P")->count == 3);
    CHECK(part(s, "G1-T")->count == 3); // the others follow
    REQUIRE(s.undo());
    REQUIRE(s.undo());
    CHECK_FALSE(edit::part_origin(s.job(), changed.id).detached);
}

TEST_CASE("operations moved or copied by hand, and a part removed, are hand edits too") {
    Session s = session();
    auto values = edit::layout_example("base-plate", UnitSystem::inch);
    REQUIRE_FALSE(s.apply(AddLayout{"base-plate", "B1", values}));
    const std::string id = s.job().parts[0]->id;
    REQUIRE_FALSE(s.apply(edit::MoveOperation{id, 0, 1}));
    CHECK(s.undo_words().find("no longer linked to B1") != std::string::npos);
    REQUIRE(s.undo());
    REQUIRE_FALSE(s.apply(edit::RemovePart{id}));
    CHECK(s.undo_words() == "part B1-BP removed, no longer linked to B1");
    CHECK(s.job().layouts[0].made[0].part.empty());
    values[0].text = "10 in";
    REQUIRE_FALSE(s.apply(ChangeLayout{s.job().layouts[0].id, "B1", values}));
    CHECK(s.job().parts.empty()); // it was taken out by hand, and stays out
    REQUIRE(s.undo());
    REQUIRE(s.undo());
    CHECK(s.job().layouts[0].made[0].part == id);
    // Its place in the list is no property of the part.
    REQUIRE_FALSE(s.apply(edit::MovePart{id, 0}));
    CHECK_FALSE(s.job().layouts[0].made[0].detached);
    REQUIRE_FALSE(s.apply(edit::DetachPart{id}));
    CHECK(s.job().layouts[0].made[0].detached);
    CHECK(s.apply(edit::DetachPart{id})->field == "id");
    CHECK(s.apply(edit::DetachPart{"none"})->field == "id");
}

TEST_CASE("a layout leaves with its linked parts or without them") {
    for (const bool with_parts : {true, false}) {
        Session s = with_guard();
        job::Part changed = *part(s, "G1-P");
        changed.count = 9;
        REQUIRE_FALSE(s.apply(edit::ReplacePart{changed}));
        REQUIRE_FALSE(s.apply(RemoveLayout{s.job().layouts[0].id, with_parts}));
        CHECK(s.job().layouts.empty());
        CHECK(s.job().parts.size() == (with_parts ? 1u : 4u));
        REQUIRE(s.undo());
        CHECK(s.job().parts.size() == 4);
        CHECK(s.job().layouts.size() == 1);
    }
}

TEST_CASE("a refused layout changes nothing and names the input") {
    Session s = with_guard();
    const std::uint64_t revision = s.revision();
    const std::string id = s.job().layouts[0].id;
    CHECK(s.apply(ChangeLayout{id, "G1", guard("3 in")})->field == "post");
    CHECK(s.apply(ChangeLayout{id, "", guard("16 ft")})->field == "mark");
    CHECK(s.apply(ChangeLayout{"l9", "G1", guard("16 ft")})->field == "id");
    CHECK(s.apply(RemoveLayout{"l9"})->field == "id");
    CHECK(s.apply(AddLayout{"no-such", "X", {}})->field == "kind");
    CHECK(s.apply(AddLayout{"ring", "X", {}})->field == "bar");
    CHECK(s.revision() == revision);
}

TEST_CASE("values keep their units when the job's units change") {
    Session s = session();
    REQUIRE_FALSE(s.apply(
        AddLayout{"ring", "R1", {{"bar", "round 1/2"}, {"diameter", "8"}, {"grade", "A36"}}}));
    CHECK(s.job().layouts[0].values[1].text == "8 in");
    const Length before = s.job().parts[0]->length;
    REQUIRE_FALSE(s.apply(edit::SetStyle{{UnitSystem::metric, 16}}));
    REQUIRE_FALSE(s.apply(ChangeLayout{s.job().layouts[0].id, "R2", s.job().layouts[0].values}));
    CHECK(s.job().parts[0]->length == before);
}
