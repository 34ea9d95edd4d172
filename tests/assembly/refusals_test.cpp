// Every input of every layout against nonsense: whatever is listed is tried, so a new kind needs no
// line of its own, only an example for each input. Covers inputs.cpp.

#include <set>

#include "assembly/ground.h"
#include "assembly/inputs.h"

using namespace treadle;
using assembly::Values;
using calc::InputKind;

namespace {

/// All inputs that go together, from the examples; some are only there beside others.
Values whole(const assembly::Kind& kind) {
    Values values = assembly::example_values(kind);
    for (const calc::InputSpec& spec : kind.inputs) {
        const std::string name = spec.name;
        if (spec.required || name == "brace_bar" || name == "heel" || name == "closing" ||
            name == "radius" || name == "k" || name == "way" || name == "bolt" || name == "end")
            continue;
        const std::string choices = spec.choices;
        test::set(
            values, name, choices.empty() ? spec.example : choices.substr(0, choices.find('|')));
    }
    return values;
}

/// Nonsense of any input, and what more is nonsense for a length.
std::vector<std::string> trials(InputKind kind) {
    std::vector<std::string> out{
        "nan", "inf", "0x10", "<b>1</b>", "12 apples", "5 kg", "\xff\xfe", std::string(5000, '9')};
    if (kind == InputKind::length)
        for (const char* more : {"-1 in", "1e999 in", "1e12 in", "10 km", "-0.001 in"})
            out.emplace_back(more);
    return out;
}

} // namespace

TEST_CASE("the examples of each kind make it, and each choice of a word is tried") {
    int choices = 0;
    for (const assembly::Kind* kind : assembly::kinds()) {
        CAPTURE(std::string(kind->id));
        const auto made =
            assembly::make(kind->id, "L1", assembly::example_values(*kind), test::ground());
        REQUIRE_MESSAGE(made.ok(), kind->id);
        const auto more = assembly::make(kind->id, "L1", whole(*kind), test::ground());
        if (!more.ok())
            FAIL_CHECK(kind->id << ": " << more.refusal().field << ": " << more.refusal().reason);
        CHECK_FALSE(std::string(kind->title).empty());
        CHECK_FALSE(std::string(kind->words).empty());
        for (const calc::InputSpec& spec : kind->inputs)
            if (spec.kind == InputKind::word) {
                CHECK(std::string_view(spec.choices).find('|') != std::string_view::npos);
                ++choices;
            } else {
                CHECK_FALSE(std::string(spec.example).empty());
            }
    }
    CHECK(choices > 20);
}

TEST_CASE("nonsense is refused with the name of its input") {
    int tried = 0;
    for (const assembly::Kind* kind : assembly::kinds()) {
        const Values good = whole(*kind);
        for (const job::LayoutValue& value : good) {
            InputKind of = InputKind::word;
            for (const calc::InputSpec& spec : kind->inputs)
                if (value.name == spec.name)
                    of = spec.kind;
            for (const std::string& nonsense : trials(of)) {
                Values bad = good;
                test::set(bad, value.name, nonsense);
                CAPTURE(std::string(kind->id));
                CAPTURE(value.name);
                CAPTURE(nonsense);
                const auto made = assembly::make(kind->id, "L1", bad, test::ground());
                REQUIRE_FALSE(made.ok());
                CHECK(made.refusal().field == value.name);
                CHECK_FALSE(made.refusal().reason.empty());
                ++tried;
            }
        }
    }
    CHECK(tried > 1500);
}

TEST_CASE("a required input that is missing, empty, unknown or given twice is refused by name") {
    int tried = 0;
    for (const assembly::Kind* kind : assembly::kinds()) {
        for (const calc::InputSpec& spec : kind->inputs) {
            if (!spec.required)
                continue;
            Values values = assembly::example_values(*kind);
            test::set(values, spec.name, "  ");
            CHECK(test::refused(kind->id, values).field == spec.name);
            ++tried;
        }
        Values values = assembly::example_values(*kind);
        values.push_back({"no_such_input", "1 in"});
        CHECK(test::refused(kind->id, values).field == "no_such_input");
        values.back() = values.front();
        CHECK(test::refused(kind->id, values).field == values.front().name);
    }
    CHECK(tried > 60);
    CHECK(test::refused("no-such-kind", {}).field == "kind");
    CHECK(assembly::make("ring", "", {}, test::ground()).refusal().field == "mark");
    CHECK(assembly::make("ring", std::string(41, 'x'), {}, test::ground()).refusal().field ==
          "mark");
}

TEST_CASE("a zero where a size is needed is refused, where a place is meant it is none") {
    for (const assembly::Kind* kind : assembly::kinds())
        for (const calc::InputSpec& spec : kind->inputs) {
            if (spec.kind != InputKind::length || !spec.required)
                continue;
            Values values = assembly::example_values(*kind);
            test::set(values, spec.name, "0 in");
            const auto made = assembly::make(kind->id, "L1", values, test::ground());
            CAPTURE(std::string(kind->id));
            CAPTURE(std::string(spec.name));
            if (std::string_view(spec.name) == "bottom_gap")
                CHECK(made.ok());
            else
                CHECK(made.refusal().field == spec.name);
        }
}

TEST_CASE("a bare length takes the units of the job, and keeps them when it is stored") {
    const assembly::Kind& ring = *assembly::find_kind("ring");
    const Values bare{{"bar", "round 12"}, {"diameter", "200"}, {"grade", "A36"}, {"count", ""}};
    const Values stored = assembly::with_units(ring, bare, UnitSystem::metric);
    REQUIRE(stored.size() == 3); // what is empty was not given
    CHECK(stored[0].text == "round 12 mm");
    CHECK(stored[1].text == "200 mm");
    CHECK(stored[2].text == "A36");
    const Length metric = test::part(test::made("ring", bare, UnitSystem::metric), "ring").length;
    CHECK(test::part(test::made("ring", stored, UnitSystem::inch), "ring").length == metric);
}

TEST_CASE("a grade of the job's own is taken, an unknown one refused") {
    std::vector<Grade> own(1);
    own[0].id = "yard-steel";
    Values values{{"bar", "round 1/2 in"}, {"diameter", "8 in"}, {"grade", "yard-steel"}};
    const assembly::Ground ground{test::catalog(), own, UnitSystem::inch};
    CHECK(assembly::make("ring", "L1", values, ground).ok());
    CHECK(test::refused("ring", values).field == "grade");
}

TEST_CASE("what does not go together is refused where it was asked for") {
    const auto check = [](const char* kind, const Values& more, const char* field) {
        Values values = assembly::example_values(*assembly::find_kind(kind));
        for (const job::LayoutValue& value : more)
            test::set(values, value.name, value.text);
        CAPTURE(std::string(kind));
        CAPTURE(std::string(field));
        CHECK(test::refused(kind, values).field == field);
    };
    check("guard-run", {{"top_rail", "tube 1-1/2 x 1/8 in"}, {"joint", "punched"}}, "top_rail");
    check("guard-run", {{"picket", "flat 1 x 1/4 in"}}, "picket");
    check("guard-run", {{"post", "flat 2 x 1/2 in"}}, "post");
    check("guard-run", {{"run_3", "8 ft"}}, "run_3");
    check("guard-run", {{"margin", "4 in"}}, "margin");
    check("guard-run", {{"height", "3 in"}}, "height");
    check("guard-run", {{"run", "3 in"}}, "post");
    check("guard-stair", {{"riser", "100 in"}}, "riser");
    check("fence-run", {{"slope", "2"}}, "slope");
    check("fence-run", {{"height", "12 in"}}, "height");
    check("gate", {{"opening", "4 in"}}, "opening");
    check("gate", {{"brace", "diagonal"}}, "brace_bar");
    check("frame", {{"bar", "round 1 in"}}, "bar");
    check("frame", {{"corner", "hoop"}}, "bar");
    check("frame", {{"corner", "notch-and-fold"}, {"bar", "flat 2 x 1/4 in"}}, "bar");
    check("base-plate", {{"edge_length", "4 in"}}, "edge_length");
    check("clip-angle", {{"gage_a", "2-7/8 in"}}, "gage_a");
    check("clip-angle", {{"angle", "flat 3 x 1/4 in"}}, "angle");
    check("pipe-branch", {{"run", "1 in"}}, "branch");
    check("pipe-branch", {{"centres", "1/2 in"}}, "centres");
    check("pipe-rail", {{"height", "4 in"}}, "height");
    check("u-bracket", {{"bolt", "1/2 in"}}, "end");
    check("u-bracket", {{"height", "1/4 in"}}, "height");
    check("strap", {{"angle", "120 deg"}}, "angle");
    check("hanger", {{"ear", "1/8 in"}, {"radius", "1/2 in"}}, "ear");
    check("ring", {{"given", "outside"}, {"diameter", "1 in"}}, "diameter");
    check("ring", {{"way", "hard"}}, "way");
    check("ring", {{"gap", "20 ft"}}, "gap");
}

TEST_CASE("values that a file may hold keep nobody busy: elevations are bounded") {
    // 1,000 panels of hair-thin posts, and as many pickets in a panel as are answered.
    Values fence = assembly::example_values(*assembly::find_kind("fence-run"));
    for (const auto& [name, text] : {std::pair{"run", "90 m"},
                                     {"spacing", "100 mm"},
                                     {"post", "square 0.5 mm"},
                                     {"picket", "round 0.2 mm"},
                                     {"gap", "2 mm"},
                                     {"margin", "0 mm"}})
        test::set(fence, name, text);
    const auto made = assembly::make("fence-run", "F1", fence, test::ground());
    REQUIRE(made.ok());
    CHECK(made->elevation.outlines.size() < 2100);
    CHECK(test::part(*made, "picket").count > 30000);
    Values rail = assembly::example_values(*assembly::find_kind("pipe-rail"));
    for (const auto& [name, text] : {std::pair{"run", "90 m"},
                                     {"spacing", "100 mm"},
                                     {"pipe", "pipe 2 x 0.2 mm"},
                                     {"mid_rails", "20"}})
        test::set(rail, name, text);
    CHECK(test::made("pipe-rail", rail).elevation.outlines.size() < 2100);
}
