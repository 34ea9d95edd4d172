// web/job_store: what an edit stores, and what comes back.

#include "archive/archive.h"
#include "edit/session.h"

#include "assets/embedded.h"
#include "platform/headless/headless.h"

#include <doctest/doctest.h>

#include <algorithm>
#include <memory>
#include <string>
#include <utility>

#include "job_store.h"

namespace {

using namespace treadle;
using platform::headless::HeadlessPorts;

std::shared_ptr<const job::Catalog> catalog() {
    static const auto one = std::make_shared<const job::Catalog>(archive::read_catalog().value());
    return one;
}

edit::Document demo() {
    archive::File file =
        archive::read_file(assets::embedded("demo/demo-inch.json").value_or("")).value();
    return {std::move(file.job), std::make_shared<const equipment::Shop>(std::move(file.shop))};
}

std::string bytes(const edit::Session& session) {
    return archive::write_file(session.job(), session.shop());
}

/// One page with its store open.
struct OpenPage {
    HeadlessPorts& ports;
    web::JobStore store{ports};
    web::JobStore::Opened opened;
    edit::Session session{demo(), catalog()};
    std::optional<std::string> trouble;
    int confirmed = 0;

    explicit OpenPage(HeadlessPorts& all) : ports(all) {
        store.when_stored = [this](const std::optional<std::string>& why) {
            trouble = why;
            confirmed += why ? 0 : 1;
        };
        store.open([this](web::JobStore::Opened what) { opened = std::move(what); });
        if (opened.history)
            session = edit::Session(*opened.history, catalog());
    }
    OpenPage(const OpenPage&) = delete;
    OpenPage& operator=(const OpenPage&) = delete;

    void name(const std::string& words) {
        REQUIRE_FALSE(session.apply(edit::SetJobNames{words, "", ""}).has_value());
        store.edited(session);
    }
    void undo() {
        REQUIRE(session.undo());
        store.moved(-1);
    }
    void redo() {
        REQUIRE(session.redo());
        store.moved(1);
    }
};

/// A page opened on the same store has the same present, and undo and redo lead as far.
void check_same(HeadlessPorts& ports, edit::Session was) {
    OpenPage again(ports);
    REQUIRE(again.opened.history.has_value());
    CHECK_FALSE(again.opened.trouble.has_value());
    edit::Session is = again.session;
    REQUIRE(bytes(is) == bytes(was));
    REQUIRE(is.past().size() == was.past().size());
    REQUIRE(is.future().size() == was.future().size());
    while (was.redo()) {
        REQUIRE(is.redo());
        REQUIRE(bytes(is) == bytes(was));
    }
    while (was.undo()) {
        REQUIRE(is.undo());
        REQUIRE(bytes(is) == bytes(was));
    }
}

int count_of(const HeadlessPorts& ports, const char* kind) {
    return static_cast<int>(
        std::count_if(ports.kept.begin(), ports.kept.end(), [&](const auto& entry) {
            return entry.first.find(kind) != std::string::npos;
        }));
}

std::size_t longest_change(const HeadlessPorts& ports) {
    std::size_t longest = 0;
    for (const platform::StoreChange& change : ports.transactions.back())
        longest = std::max(longest, change.bytes.value_or("").size());
    return longest;
}

} // namespace

TEST_CASE("a first opening finds nothing and stores nothing") {
    HeadlessPorts ports;
    const OpenPage page(ports);
    CHECK(page.opened.has_store);
    CHECK_FALSE(page.opened.history.has_value());
    CHECK_FALSE(page.opened.trouble.has_value());
    CHECK(ports.kept.empty());
}

TEST_CASE("edits, undo and redo are the same after a reload") {
    HeadlessPorts ports;
    OpenPage page(ports);
    for (int i = 0; i < 7; ++i)
        page.name("Name " + std::to_string(i));
    page.undo();
    page.undo();
    check_same(ports, page.session);
    page.redo();
    check_same(ports, page.session);
    page.undo();
    page.name("Another way");
    check_same(ports, page.session);
}

TEST_CASE("a page goes on where another one stopped") {
    HeadlessPorts ports;
    {
        OpenPage page(ports);
        page.name("one");
        page.name("two");
        page.undo();
    }
    ports.word = "tab2";
    OpenPage page(ports);
    CHECK(page.session.job().name == "one");
    page.redo();
    page.name("three");
    page.undo();
    page.undo();
    check_same(ports, page.session);
}

TEST_CASE("an edit is one transaction and writes no part of the job that it did not change") {
    HeadlessPorts ports;
    OpenPage page(ports);
    page.name("first"); // and the base
    const std::size_t whole = bytes(page.session).size();
    const std::size_t before = ports.transactions.size();
    page.name("second");
    CHECK(ports.transactions.size() == before + 1);
    CHECK(longest_change(ports) < whole / 20);
    page.undo();
    CHECK(ports.transactions.size() == before + 2);
    CHECK(longest_change(ports) < 200);
}

TEST_CASE("the base moves on every fifty steps, and only the steps of undo are kept") {
    HeadlessPorts ports;
    OpenPage page(ports);
    std::string first_base;
    for (int i = 0; i < 320; ++i) {
        page.name("Name " + std::to_string(i));
        ports.pass_time();
        if (i == 0)
            first_base = ports.kept.begin()->first;
    }
    const int steps = count_of(ports, "/step/");
    CHECK(count_of(ports, "/base/") == 1);
    CHECK(ports.kept.count(first_base) == 0);
    CHECK(steps >= 200);
    CHECK(steps < 250);
    check_same(ports, page.session);
    page.undo();
    page.name("on");
    check_same(ports, page.session);
}

TEST_CASE("the old base stays when the new one does not come back as it was written") {
    struct Forgetful final : HeadlessPorts {
        void load(const std::string& key,
                  std::function<void(platform::LoadedBytes)> answer) override {
            if (key.find("/base/") != std::string::npos)
                return answer({platform::StoreResult::done, "something else", ""});
            HeadlessPorts::load(key, std::move(answer));
        }
    };
    Forgetful ports;
    OpenPage page(ports);
    for (int i = 0; i < 260; ++i) {
        page.name("Name " + std::to_string(i));
        ports.pass_time();
    }
    CHECK(count_of(ports, "/step/") == 260);
    check_same(ports, page.session);
}

TEST_CASE("what was refused by the store is stored with the next edit") {
    HeadlessPorts ports;
    OpenPage page(ports);
    page.name("kept");
    ports.store_refuses = true;
    page.name("refused");
    CHECK(page.trouble == "the store is full");
    CHECK(page.store.is_waiting());
    ports.store_refuses = false;
    page.name("taken again");
    CHECK_FALSE(page.trouble.has_value());
    CHECK_FALSE(page.store.is_waiting());
    check_same(ports, page.session);
}

TEST_CASE("the one key of earlier pages is read as long as there is no history, and stays") {
    HeadlessPorts ports;
    edit::Session old(demo(), catalog());
    REQUIRE_FALSE(old.apply(edit::SetJobNames{"From before", "", ""}).has_value());
    ports.kept["job"] = bytes(old);
    OpenPage page(ports);
    CHECK(page.opened.is_old);
    CHECK(page.session.job().name == "From before");
    page.name("Now");
    check_same(ports, page.session);
    CHECK(ports.kept["job"] == bytes(old));
}

TEST_CASE("a step that cannot be read ends the history before it and stays where it is") {
    HeadlessPorts ports;
    std::string key;
    {
        OpenPage page(ports);
        for (int i = 0; i < 5; ++i) {
            page.name("Name " + std::to_string(i));
            if (i == 3)
                key = std::prev(ports.kept.end())->first;
        }
    }
    ports.kept[key].back() ^= 1;
    const auto before = ports.kept;
    OpenPage page(ports);
    REQUIRE(page.opened.history.has_value());
    REQUIRE(page.opened.trouble.has_value());
    CHECK(page.session.job().name == "Name 2");
    for (const auto& [name, bytes_then] : before)
        CHECK(ports.kept[name] == bytes_then); // reading wrote over nothing
    page.name("On from here");
    CHECK(ports.kept[key] == before.at(key));
    check_same(ports, page.session);
}

TEST_CASE("a job that cannot be read at all is put aside before anything is stored") {
    HeadlessPorts ports;
    {
        OpenPage page(ports);
        page.name("lost");
    }
    const std::string base = ports.kept.begin()->first;
    REQUIRE(base.find("/base/") != std::string::npos);
    ports.kept[base].erase(100, 1);
    const auto before = ports.kept;
    OpenPage page(ports);
    CHECK_FALSE(page.opened.history.has_value());
    REQUIRE(page.opened.trouble.has_value());
    page.name("new");
    CHECK(ports.kept[base] == before.at(base));
    CHECK(ports.kept["unreadable-1"] == before.at("journal/main/head"));
    check_same(ports, page.session);
}

TEST_CASE("an old job that cannot be read is put aside, and nothing is stored until it is") {
    HeadlessPorts ports;
    ports.kept["job"] = "no job";
    ports.store_refuses = true;
    OpenPage page(ports);
    REQUIRE(page.opened.trouble.has_value());
    page.name("new");
    CHECK(page.trouble.has_value());
    CHECK(ports.transactions.empty());
    CHECK(ports.kept.size() == 1);
    HeadlessPorts other;
    other.kept["job"] = "no job";
    OpenPage second(other);
    second.name("new");
    CHECK(other.kept["unreadable-1"] == "no job");
    check_same(other, second.session);
}
