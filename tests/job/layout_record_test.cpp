#include "job/job.h"

#include <doctest/doctest.h>

#include <string>

using namespace treadle;
using job::Layout;

namespace {

Layout ring() {
    return {"l1",
            "ring",
            "R1",
            {{"bar", "round 1/2 in"}, {"diameter", "8 in"}},
            {{"ring", "p1", false}}};
}

std::string fault(const Layout& layout) {
    const auto sound = job::checked(layout);
    return sound.ok() ? "" : sound.refusal().field;
}

} // namespace

TEST_CASE("a layout is kept as it is asked for, within bounds") {
    CHECK(fault(ring()).empty());
    Layout layout = ring();
    layout.mark = "";
    CHECK(fault(layout) == "mark");
    layout = ring();
    layout.values[1].name = "bar";
    CHECK(fault(layout) == "values[1].name");
    layout = ring();
    layout.values[0].text = std::string(201, 'x');
    CHECK(fault(layout) == "values[0].text");
    layout = ring();
    layout.made.push_back({"ring", "p2", false});
    CHECK(fault(layout) == "made[1].role");
    layout = ring();
    layout.values.resize(job::k_most_layout_values + 1);
    CHECK(fault(layout) == "values");
    layout = ring();
    layout.made.resize(job::k_most_made_parts + 1);
    CHECK(fault(layout) == "made");
}

TEST_CASE("no id stands twice, and no part is made by two layouts") {
    Layout other = ring();
    CHECK(job::checked(std::vector<Layout>{ring(), other}).refusal().field == "layouts[1].id");
    other.id = "l2";
    CHECK(job::checked(std::vector<Layout>{ring(), other}).refusal().field ==
          "layouts[1].made[0].part");
    other.made[0].part = "";
    CHECK(job::checked(std::vector<Layout>{ring(), other}).ok());
    const std::vector<Layout> many(job::k_most_layouts + 1);
    CHECK(job::checked(many).refusal().field == "layouts");
    job::Job job;
    job.layouts = {ring(), ring()};
    CHECK(job::checked(job).refusal().field == "layouts[1].id");
}

TEST_CASE("a part knows where it comes from") {
    const std::vector<Layout> layouts{ring()};
    const job::Origin origin = job::origin_of(layouts, "p1");
    REQUIRE(origin.layout != nullptr);
    CHECK(origin.layout->id == "l1");
    CHECK(origin.made->role == "ring");
    CHECK(job::origin_of(layouts, "p2").layout == nullptr);
    CHECK(job::origin_of(layouts, "").layout == nullptr);
    CHECK(job::find_layout(layouts, "l1") == &layouts[0]);
    CHECK(job::find_layout(layouts, "l9") == nullptr);
    Layout other = ring();
    CHECK(job::same(layouts[0], other));
    other.made[0].detached = true;
    CHECK_FALSE(job::same(layouts[0], other));
}
