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
#include <vector>

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
    bool is_overtaken = false;

    explicit OpenPage(HeadlessPorts& all) : ports(all) {
        store.when_stored = [this](const platform::StoreOutcome& outcome) {
            trouble.reset();
            if (outcome.result != platform::StoreResult::done)
                trouble = outcome.detail;
        };
        store.when_overtaken = [this] { is_overtaken = true; };
        store.open("main", [this](web::JobStore::Opened what) { opened = std::move(what); });
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
        store.moved(-1, session);
    }
    void redo() {
        REQUIRE(session.redo());
        store.moved(1, session);
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

std::vector<std::string> keys_of(const HeadlessPorts& ports, const char* kind) {
    std::vector<std::string> keys;
    for (const auto& [key, kept] : ports.kept)
        if (key.find(kind) != std::string::npos)
            keys.push_back(key);
    return keys;
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
    CHECK(page.opened.result == platform::StoreResult::done);
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

TEST_CASE("a job lies there twice from its first edit on") {
    HeadlessPorts ports;
    OpenPage page(ports);
    page.name("first");
    ports.pass_time();
    CHECK(count_of(ports, "/base/") == 2);
    for (const std::string& base : keys_of(ports, "/base/")) {
        HeadlessPorts damaged;
        damaged.kept = ports.kept;
        damaged.kept[base][200] ^= 1;
        OpenPage again(damaged);
        CHECK(again.opened.is_whole);
        CHECK(again.opened.trouble.has_value());
        REQUIRE(again.opened.history.has_value());
        CHECK(bytes(again.session) == bytes(page.session));
    }
}

TEST_CASE("snapshots follow every fifty steps, and only what undo needs is kept") {
    HeadlessPorts ports;
    OpenPage page(ports);
    std::string first_base;
    for (int i = 0; i < 520; ++i) {
        page.name("Name " + std::to_string(i));
        ports.pass_time();
        if (i == 0)
            first_base = keys_of(ports, "/base/").front();
    }
    CHECK(ports.kept.count(first_base) == 0);
    const int bases = count_of(ports, "/base/");
    CHECK(bases >= 5); // the undo of 200 steps, one before it, the latest
    CHECK(bases <= 7);
    const int steps = count_of(ports, "/step/");
    CHECK(steps >= 250);
    CHECK(steps <= 301);
    CHECK(count_of(ports, "/head/") <= web::JobStore::k_heads);
    check_same(ports, page.session);
    page.undo();
    page.name("on");
    check_same(ports, page.session);
}

TEST_CASE("a snapshot that does not come back as it was written counts for nothing") {
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

TEST_CASE("what was refused by the store is stored with the next edit, whichever write it was") {
    for (int refused = 0; refused < 12; ++refused) {
        HeadlessPorts ports;
        OpenPage page(ports);
        ports.refusal = platform::StoreResult::full;
        for (int i = 0; i < 12; ++i) {
            ports.store_refuses = i == refused;
            page.name("Name " + std::to_string(i));
            CHECK(page.trouble.has_value() == (i == refused));
            ports.pass_time();
        }
        ports.store_refuses = false;
        page.name("taken again");
        CHECK_FALSE(page.trouble.has_value());
        check_same(ports, page.session);
    }
}

TEST_CASE("of two pages that write the same job one is told, and both ways are kept") {
    HeadlessPorts ports;
    OpenPage first(ports);
    first.name("both");
    ports.word = "tab2";
    OpenPage second(ports);
    second.name("second");
    const auto before = ports.kept;
    first.name("first");
    CHECK(first.is_overtaken);
    CHECK(ports.kept == before); // nothing of it was stored
    check_same(ports, second.session);
    first.store.adopt("other", first.session);
    CHECK_FALSE(first.trouble.has_value());
    HeadlessPorts moved;
    for (const auto& [key, kept] : ports.kept)
        if (key.find("journal/other/") == 0)
            moved.kept["journal/main/" + key.substr(14)] = kept;
    check_same(moved, first.session);
}

TEST_CASE("a transaction that was made although the answer was lost counts once") {
    struct Doubting final : HeadlessPorts {
        void store_all(const std::vector<platform::StoreChange>& changes,
                       std::function<void(platform::StoreOutcome)> answer) override {
            HeadlessPorts::store_all(changes, [](const platform::StoreOutcome&) {});
            HeadlessPorts::store_all(changes, std::move(answer)); // once more, with a new handle
        }
    };
    Doubting ports;
    OpenPage page(ports);
    page.name("one");
    page.name("two");
    CHECK_FALSE(page.is_overtaken);
    CHECK_FALSE(page.trouble.has_value());
    check_same(ports, page.session);
}

TEST_CASE("a job whose last step cannot be read is shown up to there and never written again") {
    HeadlessPorts ports;
    {
        OpenPage page(ports);
        for (int i = 0; i < 5; ++i)
            page.name("Name " + std::to_string(i));
    }
    const std::string key = keys_of(ports, "/step/").at(3);
    ports.kept[key].back() ^= 1;
    const auto before = ports.kept;
    OpenPage page(ports);
    REQUIRE(page.opened.history.has_value());
    CHECK_FALSE(page.opened.is_whole);
    REQUIRE(page.opened.trouble.has_value());
    CHECK(page.session.job().name == "Name 2");
    page.name("On from here");
    CHECK(ports.kept == before);
}

TEST_CASE("what is damaged beside a whole job goes aside with the next edit, byte for byte") {
    HeadlessPorts ports;
    OpenPage writer(ports);
    for (int i = 0; i < 60; ++i) {
        writer.name("Name " + std::to_string(i));
        ports.pass_time();
    }
    const std::string key = keys_of(ports, "/step/").at(10);
    ports.kept[key].back() ^= 1;
    const std::string damaged = ports.kept[key];
    OpenPage page(ports);
    CHECK(page.opened.is_whole);
    CHECK(page.opened.trouble.has_value());
    CHECK(page.session.job().name == "Name 59");
    CHECK(ports.kept[key] == damaged);
    page.name("On");
    CHECK(ports.kept.count(key) == 0);
    CHECK(ports.kept["aside/tab1/" + key] == damaged);
    check_same(ports, page.session);
}

TEST_CASE("a job that cannot be read at all is left as it is") {
    HeadlessPorts ports;
    {
        OpenPage page(ports);
        page.name("lost");
    }
    for (const std::string& base : keys_of(ports, "/base/"))
        ports.kept[base].erase(100, 1);
    const auto before = ports.kept;
    OpenPage page(ports);
    CHECK_FALSE(page.opened.history.has_value());
    REQUIRE(page.opened.trouble.has_value());
    page.name("new");
    CHECK(ports.kept == before);
}

TEST_CASE("a job of a newer page is left as it is") {
    HeadlessPorts ports;
    {
        OpenPage page(ports);
        page.name("newer");
    }
    for (const std::string& key : keys_of(ports, "journal/main/")) {
        std::string& text = ports.kept[key];
        text.replace(text.find(" 1 "), 3, " 2 ");
    }
    const auto before = ports.kept;
    OpenPage page(ports);
    REQUIRE(page.opened.trouble.has_value());
    CHECK(page.opened.trouble->field == "version");
    page.name("older");
    CHECK(ports.kept == before);
}

TEST_CASE("flush answers when all is stored, and when it cannot be") {
    HeadlessPorts ports;
    OpenPage page(ports);
    int answers = 0;
    page.store.flush([&](bool stored) { stored ? ++answers : --answers; });
    CHECK(answers == 1);
    ports.store_refuses = true;
    page.name("refused");
    page.store.flush([&](bool stored) { stored ? ++answers : --answers; });
    CHECK(answers == 0);
    ports.store_refuses = false;
    page.store.flush([&](bool stored) { stored ? ++answers : --answers; });
    CHECK(answers == 1);
    check_same(ports, page.session);
}
