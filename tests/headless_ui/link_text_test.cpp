// web/link_text: what the page's address asks for, and what the sheet gets.

#include "archive/link.h"

#include "assets/embedded.h"

#include <doctest/doctest.h>

#include <string>

#include "link_text.h"

using namespace treadle;

namespace {

archive::File demo(const char* name) {
    return archive::read_file(assets::embedded(name).value_or("")).value();
}

} // namespace

TEST_CASE("an address without a job asks for none, and keeps its wishes") {
    for (const char* const fragment : {"", "top", "view=present", "job=1"}) {
        const web::InAddress asked = web::in_address(fragment);
        CHECK_FALSE(asked.file.has_value());
        CHECK_FALSE(asked.refusal.has_value());
    }
    CHECK(web::in_address("view=present").wishes.view == "present");
}

TEST_CASE("a job in the address is the one that was sent") {
    const archive::File file = demo("demo/demo-inch.json");
    const std::string link = archive::write_link(file.job, file.shop).value();
    const web::InAddress asked = web::in_address(link + "&lock=machine");
    REQUIRE(asked.file.has_value());
    CHECK(archive::write_file(asked.file->job, asked.file->shop) ==
          archive::write_file(file.job, file.shop));
    CHECK(asked.wishes.lock == "machine");
}

TEST_CASE("a job that cannot be opened is told from no job") {
    const web::InAddress newer = web::in_address("j=2.AAAA");
    CHECK_FALSE(newer.file.has_value());
    REQUIRE(newer.refusal.has_value());
    CHECK(newer.refusal->field == "version");
    CHECK(web::in_address("j=1.AAAA").refusal.value().field == "link");
}

TEST_CASE("only a page on the net puts a code on the sheet") {
    const archive::File file = demo("demo/demo-metric.json");
    sheet::SheetOptions options;
    web::put_link(options, "file:///home/x/treadle.html", file.job, file.shop);
    CHECK(options.link_page.empty());
    CHECK(options.link.empty());
    web::put_link(options, "http://saw-shop/", file.job, file.shop);
    CHECK(options.link_page == "http://saw-shop/");
    CHECK(options.link == "http://saw-shop/#" + archive::write_link(file.job, file.shop).value());
}
