// Layouts in files: a job with them is version 2, one without is written as it always was.

#include "archive/archive.h"
#include "archive/demo_files.h"
#include "archive/history.h"
#include "archive/link.h"

#include <doctest/doctest.h>

using namespace treadle;
using archive_test::demo;
using archive_test::replaced;

namespace {

archive::File with_layout() {
    archive::File file = archive::read_file(demo("demo-inch.json")).value();
    file.job.layouts.push_back({"l1",
                                "ring",
                                "R1",
                                {{"bar", "round 1/2 in"}, {"diameter", "8 in"}},
                                {{"ring", "p1", false}, {"gone", "", true}}});
    return file;
}

std::string bytes_of(const archive::File& file) { return archive::write_file(file.job, file.shop); }

} // namespace

TEST_CASE("a job without layouts stays version 1, byte for byte") {
    for (const char* name : {"demo-inch.json", "demo-metric.json"}) {
        const archive::File file = archive::read_file(demo(name)).value();
        const std::string bytes = bytes_of(file);
        CHECK(bytes.find("\"version\": 1,") != std::string::npos);
        CHECK(bytes.find("layouts") == std::string::npos);
        CHECK(archive::written_version(file.job) == 1);
    }
}

TEST_CASE("a job with layouts is version 2 and comes back whole") {
    const archive::File file = with_layout();
    const std::string bytes = bytes_of(file);
    CHECK(bytes.find("\"version\": 2,") != std::string::npos);
    const auto again = archive::read_file(bytes);
    REQUIRE(again.ok());
    REQUIRE(again->job.layouts.size() == 1);
    CHECK(job::same(again->job.layouts[0], file.job.layouts[0]));
    CHECK(bytes_of(*again) == bytes);
    archive::File bare = *again;
    bare.job.layouts.clear();
    CHECK(bytes_of(bare).find("\"version\": 1,") != std::string::npos);
}

TEST_CASE("a file of version 1 has no layouts, and a version 3 is left alone") {
    const std::string bytes = bytes_of(with_layout());
    const auto old = archive::read_file(replaced(bytes, "\"version\": 2", "\"version\": 1"));
    REQUIRE_FALSE(old.ok());
    CHECK(old.refusal().field == "layouts");
    CHECK(archive::read_file(replaced(bytes, "\"version\": 2", "\"version\": 3")).refusal().field ==
          "version");
    // A version 2 without layouts is one all the same.
    const std::string demo_bytes = demo("demo-inch.json");
    CHECK(archive::read_file(replaced(demo_bytes, "\"version\": 1", "\"version\": 2")).ok());
}

TEST_CASE("hostile layouts are refused where they stand") {
    const std::string bytes = bytes_of(with_layout());
    const auto field = [&](const std::string& what, const std::string& by) {
        const auto read = archive::read_file(replaced(bytes, what, by));
        return read.ok() ? std::string("taken") : read.refusal().field;
    };
    CHECK(field("\"id\": \"l1\",", "") == "layouts[0].id");
    CHECK(field("\"kind\": \"ring\"", "\"kind\": 7") == "layouts[0].kind");
    CHECK(field("\"mark\": \"R1\"", "\"mark\": \"\"") == "layouts[0].mark");
    CHECK(field("\"name\": \"bar\"", "\"name\": \"diameter\"") == "layouts[0].values[1].name");
    CHECK(field("\"role\": \"gone\"", "\"role\": \"ring\"") == "layouts[0].made[1].role");
    CHECK(field("\"detached\": true", "\"detached\": \"yes\"") == "layouts[0].made[1].detached");
    CHECK(field("round 1/2 in", std::string(300, 'x')) == "layouts[0].values[0].text");
    // A kind of a later Treadle, or values that make nothing, are data: kept, not run.
    CHECK(field("\"kind\": \"ring\"", "\"kind\": \"spiral-stair\"") == "taken");
    CHECK(field("8 in", "minus eight apples") == "taken");
    archive::File many = with_layout();
    many.job.layouts.resize(job::k_most_layouts + 1, many.job.layouts[0]);
    CHECK(archive::read_file(bytes_of(many)).refusal().field == "layouts");
}

TEST_CASE("a step that brings a layout is version 2, any other stays version 1") {
    const archive::File before = archive::read_file(demo("demo-inch.json")).value();
    const archive::File after = with_layout();
    const auto shop = std::make_shared<const equipment::Shop>(before.shop);
    const archive::Moment a{before.job, shop};
    const archive::Moment b{after.job, shop};
    const std::string there = archive::write_step(a, b, "layout R1 added");
    CHECK(there.find("\"version\":2") != std::string::npos);
    const auto step = archive::read_step(there);
    REQUIRE(step.ok());
    const auto moment = archive::apply_step(a, *step);
    REQUIRE(moment.ok());
    REQUIRE(moment->job.layouts.size() == 1);
    CHECK(job::same(moment->job.layouts[0], after.job.layouts[0]));
    const std::string back = archive::write_step(b, a, "layout R1 added");
    CHECK(back.find("\"version\":1") != std::string::npos);
    CHECK(archive::apply_step(b, archive::read_step(back).value())->job.layouts.empty());
    CHECK(archive::read_step(replaced(there, "\"version\":2", "\"version\":1")).refusal().field ==
          "header.layouts");
    CHECK(archive::read_step(replaced(there, "\"version\":2", "\"version\":3")).refusal().field ==
          "version");
}

TEST_CASE("a link carries layouts") {
    const archive::File file = with_layout();
    const auto fragment = archive::write_link(file.job, file.shop);
    REQUIRE(fragment.ok());
    const auto link = archive::read_link(*fragment);
    REQUIRE(link.ok());
    REQUIRE(link->file.job.layouts.size() == 1);
    CHECK(job::same(link->file.job.layouts[0], file.job.layouts[0]));
}
