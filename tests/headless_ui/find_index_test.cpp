#include "archive/archive.h"

#include "assets/embedded.h"
#include "ui/views/find_index.h"
#include "ui/views/help_topics.h"
#include "ui/views/reading.h"
#include "ui/views/shop_pages.h"

#include <doctest/doctest.h>

#include <algorithm>
#include <string>

using namespace treadle;
using namespace treadle::views;

namespace {

struct Page {
    edit::Session session;
    Readings readings;
    FindIndex index;

    Page() : session(demo()) { refresh(); }

    static edit::Session demo() {
        archive::File file =
            archive::read_file(assets::embedded("demo/demo-inch.json").value_or("")).value();
        return edit::Session(
            {std::move(file.job), std::make_shared<const equipment::Shop>(std::move(file.shop))},
            std::make_shared<const job::Catalog>(archive::read_catalog().value()));
    }
    void refresh() {
        readings.refresh(session);
        index.refresh(session, readings.parts());
    }
    [[nodiscard]] std::vector<FoundGroup> find(const char* typed, int chosen = plan::k_none) const {
        return index.find(typed, chosen);
    }
    /// The first line of all.
    [[nodiscard]] Found first(const char* typed) const {
        const auto groups = find(typed);
        return groups.empty() ? Found{} : groups.front().found.front();
    }
    [[nodiscard]] std::vector<Found> of(const char* typed, FoundKind kind) const {
        for (const FoundGroup& group : find(typed))
            if (group.kind == kind)
                return group.found;
        return {};
    }
    [[nodiscard]] const job::Part& part(int at) const {
        return *session.job().parts[static_cast<std::size_t>(at)];
    }
};

} // namespace

TEST_CASE("each part is found by its mark, before everything else") {
    const Page page;
    REQUIRE(page.session.job().parts.size() > 3);
    for (const job::PartRef& part : page.session.job().parts) {
        CAPTURE(part->mark);
        const Found found = page.first(part->mark.c_str());
        CHECK(found.at.kind == FoundKind::part);
        REQUIRE(found.at.part != plan::k_none);
        CHECK(page.part(found.at.part).mark == part->mark);
        CHECK(found.where.find("Parts") != std::string::npos);
    }
}

TEST_CASE("a part is found by shape and by metal") {
    const Page page;
    for (const Found& found : page.of("angle", FoundKind::part))
        CHECK(page.part(found.at.part).section.shape == section::Shape::angle);
    CHECK_FALSE(page.of("angle", FoundKind::part).empty());
    CHECK_FALSE(page.of("a36", FoundKind::part).empty());
}

TEST_CASE("a hole is found by its size, however it is written") {
    const Page page;
    const std::size_t count = page.of("punch 13/16", FoundKind::operation).size();
    REQUIRE(count > 0);
    for (const char* typed : {"punch 13/16\"", "PUNCH 0.8125", "20.6375 mm punch"}) {
        CAPTURE(typed);
        CHECK(page.of(typed, FoundKind::operation).size() == count);
    }
    for (const Found& found : page.of("punch 13/16", FoundKind::operation)) {
        const job::Operation& operation =
            page.part(found.at.part).operations[static_cast<std::size_t>(found.at.operation)];
        CHECK(std::get<job::Punch>(operation).hole.size == inches(13.0 / 16));
    }
    CHECK_FALSE(page.of("13/16", FoundKind::shop).empty());
}

TEST_CASE("a figure is found by name, and opens the working of an operation that has it") {
    const Page page;
    for (const char* typed : {"tonnage", "bend deduction", "outside setback", "blank length"}) {
        CAPTURE(typed);
        const auto figures = page.of(typed, FoundKind::figure);
        REQUIRE_FALSE(figures.empty());
        CHECK(figures.front().where.rfind("Working of ", 0) == 0);
        for (const Found& found : figures) {
            Readings readings;
            bool there = false;
            for (const int of : {found.at.operation, plan::k_none})
                for (const auto& lines : readings.working(page.session, found.at.part, of))
                    there = there || lines.front().rfind(found.at.working, 0) == 0;
            CAPTURE(found.where);
            CHECK(there);
        }
    }
}

TEST_CASE("the figures of the chosen part stand first, and a mark narrows them") {
    const Page page;
    const int last = static_cast<int>(page.session.job().parts.size()) - 1;
    for (const FoundGroup& group : page.find("tonnage", last))
        if (group.kind == FoundKind::figure)
            CHECK(group.found.front().at.part == last);
    const std::string mark = page.part(0).mark;
    for (const Found& found : page.of(("tonnage " + mark).c_str(), FoundKind::figure))
        CHECK(found.at.part == 0);
}

TEST_CASE("places, commands, tools and help are found by their words") {
    const Page page;
    CHECK(page.first("order").at.place == Place::order);
    CHECK(page.first("print").at.command == Command::print);
    CHECK(page.first("undo").at.command == Command::undo);
    CHECK(std::string(page.first("kerf").at.topic) == "kerf");
    const auto pages = shop_pages(page.session.shop());
    for (std::size_t i = 0; i < pages.size(); ++i) {
        CAPTURE(pages[i].title);
        const auto found = page.of(pages[i].title.c_str(), FoundKind::shop);
        CHECK(std::any_of(found.begin(), found.end(), [&](const Found& one) {
            return one.at.shop_page == static_cast<int>(i);
        }));
    }
}

TEST_CASE("nothing typed and nonsense find nothing") {
    const Page page;
    CHECK(page.find("").empty());
    CHECK(page.find("qqqxyz").empty());
    CHECK(page.find("punch qqqxyz").empty());
}

TEST_CASE("no more than so many of one kind are listed, and the others counted") {
    const Page page;
    int operations = 0;
    for (const job::PartRef& part : page.session.job().parts)
        for (const job::Operation& operation : part->operations)
            operations += std::holds_alternative<job::Punch>(operation) ? 1 : 0;
    REQUIRE(operations > static_cast<int>(FindIndex::k_listed));
    for (const FoundGroup& group : page.find("punch")) {
        CHECK(group.found.size() <= FindIndex::k_listed);
        if (group.kind == FoundKind::operation)
            CHECK(static_cast<int>(group.found.size()) + group.more >= operations);
        CHECK(std::is_sorted(group.found.begin(),
                             group.found.end(),
                             [](const auto& a, const auto& b) { return a.rank > b.rank; }));
    }
}

TEST_CASE("after an edit the new words are found and the old ones are not") {
    Page page;
    job::Part part = page.part(1);
    const std::string before = part.mark;
    part.mark = "ZEBRA7";
    REQUIRE_FALSE(page.session.apply(edit::ReplacePart{part}));
    page.refresh();
    CHECK(page.first("zebra7").at.part == 1);
    CHECK(page.of(before.c_str(), FoundKind::part).empty());
    REQUIRE_FALSE(page.session.apply(edit::MovePart{part.id, 0}));
    page.refresh();
    CHECK(page.first("zebra7").at.part == 0);
    REQUIRE(page.session.undo());
    REQUIRE(page.session.undo());
    page.refresh();
    CHECK(page.first(before.c_str()).at.part == 1);
    CHECK(page.find("zebra7").empty());
}
