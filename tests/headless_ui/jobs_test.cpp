// Many jobs in one store, as their user meets them: kept, opened, thrown away, written by one page
// at a time, and whole after whatever happens to the store: web/jobs.cpp, web/jobs_list.cpp.

#include "archive/job_card.h"

#include <doctest/doctest.h>

#include <algorithm>
#include <fstream>
#include <iterator>
#include <sstream>
#include <string>
#include <vector>

#include "app_page.h"

namespace {

using namespace treadle;
using platform::Claim;
using platform::StoreResult;
using platform::headless::HeadlessPorts;
using tests::AppPage;
using ui::Role;

std::string name(AppPage& page) { return page.app.session().job().name; }

void rename(AppPage& page, const std::string& words) {
    page.press(Role::tab, "Sheets");
    page.type("Name of the job", words);
}

void open_file(AppPage& page, const std::string& words) {
    archive::File file = tests::demo_file();
    file.job.name = words;
    page.press(Role::tab, "Jobs");
    page.press(Role::button, "Open file");
    page.ports.pick({"job.json", archive::write_file(file.job, file.shop)});
    page.host.settle();
}

std::vector<std::string> keys(const HeadlessPorts& ports, const std::string& prefix) {
    std::vector<std::string> found;
    for (const auto& [key, bytes] : ports.kept)
        if (key.compare(0, prefix.size(), prefix) == 0)
            found.push_back(key);
    return found;
}

std::string id_of(const HeadlessPorts& ports, const std::string& words) {
    for (const std::string& key : keys(ports, "card/"))
        if (archive::read_card(ports.kept.at(key))->name == words)
            return key.substr(5);
    return "";
}

bool says(AppPage& page, const std::string& words) {
    for (std::size_t i = 0; i < page.mirror().size(); ++i)
        if (page.mirror().at(i).name.find(words) != std::string::npos)
            return true;
    return false;
}

} // namespace

TEST_CASE("the demo is nobody's job until its first edit, and then it is kept") {
    HeadlessPorts ports;
    AppPage page(ports);
    page.press(Role::button, "Understood");
    CHECK(keys(ports, "journal/").empty());
    CHECK(keys(ports, "card/").empty());
    rename(page, "Mine");
    CHECK(keys(ports, "card/").size() == 1);
    CHECK(ports.wants_protection);
    AppPage next(ports);
    CHECK(name(next) == "Mine");
    CHECK(next.app.session().can_undo());
}

TEST_CASE("a file is opened beside the other jobs and replaces none") {
    HeadlessPorts ports;
    AppPage page(ports);
    page.press(Role::button, "Understood");
    rename(page, "First");
    open_file(page, "Second");
    CHECK(name(page) == "Second");
    CHECK(keys(ports, "card/").size() == 2);
    page.press(Role::tab, "Jobs");
    page.press(Role::button, "Open: First");
    CHECK(name(page) == "First");
    CHECK(page.app.session().can_undo());
    rename(page, "First again");
    AppPage next(ports);
    CHECK(name(next) == "First again");
    next.press(Role::tab, "Jobs");
    next.press(Role::button, "Open: Second");
    CHECK(name(next) == "Second");
}

TEST_CASE("a new or a demo job leaves the open one kept") {
    HeadlessPorts ports;
    AppPage page(ports);
    page.press(Role::button, "Understood");
    rename(page, "Mine");
    const auto before = ports.kept;
    page.press(Role::tab, "Jobs");
    page.press(Role::button, "New empty job");
    CHECK(name(page) == "New job");
    CHECK(page.app.session().job().parts.empty());
    for (const auto& [key, bytes] : before)
        CHECK(ports.kept.at(key) == bytes);
    rename(page, "Other");
    CHECK(keys(ports, "card/").size() == 2);
}

TEST_CASE("the trash gives back what was thrown away, and asks before it removes for good") {
    HeadlessPorts ports;
    AppPage page(ports);
    page.press(Role::button, "Understood");
    rename(page, "Good");
    open_file(page, "Old");
    page.press(Role::tab, "Jobs");
    page.press(Role::button, "To the trash: Old");
    CHECK(name(page) == "Good");
    page.press(Role::button, "Take back: Old");
    page.press(Role::button, "Open: Old");
    CHECK(name(page) == "Old");
    page.press(Role::tab, "Jobs");
    page.press(Role::button, "To the trash: Old");
    const std::string old = id_of(ports, "Old");
    page.press(Role::button, "Remove for good: Old");
    CHECK_FALSE(keys(ports, "journal/" + old).empty());
    page.press(Role::button, "Yes, remove it for good");
    CHECK(keys(ports, "journal/" + old).empty());
    CHECK(keys(ports, "card/" + old).empty());
    CHECK(name(page) == "Good");
}

TEST_CASE("the trash counts days on which the page was used, whatever the clock says") {
    struct Clock final : HeadlessPorts {
        std::string day = "1 Jan";
        std::string day_text() override { return day; }
    };
    Clock ports;
    {
        AppPage page(ports);
        page.press(Role::button, "Understood");
        rename(page, "Good");
        open_file(page, "Old");
        page.press(Role::tab, "Jobs");
        page.press(Role::button, "To the trash: Old");
    }
    const std::string old = id_of(ports, "Old");
    for (int i = 0; i < 50; ++i) { // the clock stands still, then leaps: two days were seen
        ports.day = i < 25 ? "1 Jan" : "1 Dec";
        const AppPage page(ports);
    }
    CHECK_FALSE(keys(ports, "journal/" + old).empty());
    for (int day = 1; day <= 28; ++day) { // backwards, day by day
        ports.day = std::to_string(30 - day) + " Nov";
        const AppPage page(ports);
    }
    CHECK_FALSE(keys(ports, "journal/" + old).empty());
    ports.day = "1 Nov";
    const AppPage page(ports);
    CHECK(keys(ports, "journal/" + old).empty());
    CHECK_FALSE(id_of(ports, "Good").empty());
}

TEST_CASE("a job that another page writes is only shown, and taken over when asked") {
    HeadlessPorts ports;
    {
        AppPage page(ports);
        page.press(Role::button, "Understood");
        rename(page, "Shared");
    }
    const std::string id = id_of(ports, "Shared");
    ports.held_by_others = {id};
    ports.word = "tab2";
    AppPage page(ports);
    CHECK(name(page) == "Shared");
    CHECK(says(page, "open in another tab"));
    const auto before = ports.kept;
    rename(page, "Not mine to change");
    CHECK(name(page) == "Shared");
    CHECK(ports.kept == before);
    const ui::Node* field = page.find(Role::text, "Name of the job");
    REQUIRE(field != nullptr);
    CHECK(field->value == "Not mine to change"); // what was typed is not lost
    CHECK_FALSE(field->error.empty());
    page.press(Role::button, "Write here instead");
    CHECK(ports.insisted[id]);
    rename(page, "Now mine");
    CHECK(name(page) == "Now mine");
    AppPage next(ports);
    CHECK(name(next) == "Now mine");
}

TEST_CASE("a page that is asked lets go when all is stored, and reads what the other wrote") {
    HeadlessPorts ports;
    AppPage page(ports);
    page.press(Role::button, "Understood");
    rename(page, "Here");
    const std::string id = id_of(ports, "Here");
    ports.holds[id](Claim::asked);
    CHECK(ports.let_gone.back() == id);
    {
        HeadlessPorts other;
        other.kept = ports.kept;
        other.word = "tab2";
        AppPage there(other);
        rename(there, "There");
        ports.kept = other.kept;
    }
    page.host.settle();
    CHECK(says(page, "open in another tab"));
    ports.hear("stored " + id);
    ports.pass_time();
    page.host.settle();
    CHECK(name(page) == "There");
    ports.holds[id](Claim::mine);
    page.host.settle();
    rename(page, "Here again");
    CHECK(name(page) == "Here again");
    CHECK_FALSE(says(page, "open in another tab"));
}

TEST_CASE("nothing can be changed between the turn and the reading of what the other page wrote") {
    struct Slow final : HeadlessPorts {
        bool waits = false;
        std::function<void()> waiting;
        void load_all(const std::string& prefix,
                      std::function<void(platform::LoadedAll)> answer) override {
            if (!waits || prefix.find("journal/") != 0)
                return HeadlessPorts::load_all(prefix, std::move(answer));
            waiting = [this, prefix, answer] { HeadlessPorts::load_all(prefix, answer); };
        }
    };
    Slow ports;
    AppPage page(ports);
    page.press(Role::button, "Understood");
    rename(page, "Here");
    const std::string id = id_of(ports, "Here");
    ports.holds[id](Claim::asked);
    ports.waits = true;
    ports.holds[id](Claim::mine);
    const auto before = ports.kept;
    rename(page, "Too early");
    CHECK(name(page) == "Here");
    CHECK(ports.kept == before);
    ports.waits = false;
    ports.waiting();
    page.host.settle();
    rename(page, "In time");
    CHECK(name(page) == "In time");
    AppPage next(ports);
    CHECK(name(next) == "In time");
}

TEST_CASE("two pages that both believe to write keep both ways as jobs of their own") {
    HeadlessPorts ports;
    AppPage first(ports);
    first.press(Role::button, "Understood");
    rename(first, "Both");
    ports.word = "tab2";
    AppPage second(ports);
    rename(second, "Second's");
    ports.word = "tab1";
    rename(first, "First's");
    CHECK(name(first) == "First's (other tab)");
    CHECK(says(first, "changed in another tab"));
    CHECK_FALSE(id_of(ports, "Second's").empty());
    CHECK_FALSE(id_of(ports, "First's (other tab)").empty());
    rename(second, "Second's goes on");
    CHECK(name(second) == "Second's goes on");
}

TEST_CASE("a job that cannot be read to its end goes on under a name of its own") {
    HeadlessPorts ports;
    std::string id;
    {
        AppPage page(ports);
        page.press(Role::button, "Understood");
        rename(page, "One");
        rename(page, "Two");
        rename(page, "Three");
        id = id_of(ports, "Three");
        const auto steps = keys(ports, "journal/" + id + "/step/");
        REQUIRE(steps.size() == 3);
        ports.kept[steps.back()].back() ^= 1;
    }
    const auto before = ports.kept;
    ports.word = "tab2";
    AppPage page(ports);
    CHECK(name(page) == "Two (recovered)");
    CHECK(says(page, "could not be read"));
    for (const std::string& key : keys(ports, "journal/" + id))
        CHECK(ports.kept.at(key) == before.at(key));
    rename(page, "Goes on");
    for (const std::string& key : keys(ports, "journal/" + id))
        CHECK(ports.kept.at(key) == before.at(key));
    page.press(Role::tab, "Jobs");
    CHECK(says(page, "damaged"));
    AppPage next(ports);
    CHECK(name(next) == "Goes on");
    CHECK(id_of(ports, "Goes on") != id);
}

TEST_CASE("a state that was kept comes back, and the one before it too") {
    HeadlessPorts ports;
    AppPage page(ports);
    page.press(Role::button, "Understood");
    rename(page, "Good state");
    page.press(Role::tab, "Jobs");
    page.press(Role::button, "Keep this state");
    rename(page, "Worse state");
    page.press(Role::tab, "Jobs");
    page.press(Role::button, "Go back to it: Kept by hand");
    CHECK(name(page) == "Good state");
    page.press(Role::button, "Go back to it: Before going back");
    CHECK(name(page) == "Worse state");
    for (int i = 0; i < 20; ++i) {
        page.press(Role::tab, "Jobs");
        page.press(Role::button, "Keep this state");
    }
    const std::size_t kept = keys(ports, "point/").size();
    CHECK(kept >= 5);
    CHECK(kept <= 9);
}

TEST_CASE("no room, nothing kept and a newer page are said, with a way out") {
    HeadlessPorts full;
    AppPage page(full);
    page.press(Role::button, "Understood");
    full.store_refuses = true;
    full.refusal = StoreResult::full;
    full.stands.used_bytes = 5e6;
    full.stands.most_bytes = 5e6;
    rename(page, "Too much");
    CHECK(says(page, "no more room (5 MB of 5 MB used)"));
    page.press(Role::button, "Save file");
    REQUIRE(full.downloads.size() == 1);
    full.store_refuses = false;
    rename(page, "Fits now");
    CHECK_FALSE(says(page, "no more room"));
    AppPage next(full);
    CHECK(name(next) == "Fits now");

    HeadlessPorts none;
    none.store_refuses = true;
    none.refusal = StoreResult::no_store;
    none.stands.where = platform::StoreStanding::Where::memory;
    AppPage nothing(none);
    CHECK(says(nothing, "keeps nothing for this page"));

    HeadlessPorts newer;
    newer.store_refuses = true;
    newer.refusal = StoreResult::newer;
    AppPage old(newer);
    CHECK(says(old, "newer version of this page"));
}

namespace {

/// A fixture: a line with a key and a length, then so many bytes.
void take_fixture(HeadlessPorts& ports, const char* name) {
    std::ifstream file(std::string(TREADLE_FIXTURES) + name, std::ios::binary);
    for (std::string line; std::getline(file, line);) {
        const std::size_t blank = line.rfind(' ');
        std::string bytes(std::stoul(line.substr(blank + 1)), '\0');
        file.read(bytes.data(), static_cast<std::streamsize>(bytes.size()));
        file.get();
        ports.kept[line.substr(0, blank)] = bytes;
    }
}

} // namespace

TEST_CASE("what a page of format version 1 left is opened with its undo, redo and hold") {
    // Written by the last page before jobs had a list.
    HeadlessPorts ports;
    take_fixture(ports, "/stored-1.txt");
    REQUIRE(ports.kept.size() == 9);
    AppPage page(ports);
    CHECK(name(page) == "Millrace footbridge, second");
    CHECK(page.app.session().job().parts[1]->count == 17);
    CHECK(page.app.session().past().size() == 3);
    CHECK(page.app.session().future().size() == 1);
    CHECK(says(page, "On hold at the machine since 25 Nov, 16:20"));
    rename(page, "Still going");
    CHECK(keys(ports, "journal/main/").size() > 5);
    AppPage next(ports);
    CHECK(name(next) == "Still going");
    CHECK(next.app.session().past().size() == 4);
}

TEST_CASE("what the first page with a list of jobs left is opened with all of it") {
    // Written in Chromium by a page of 2026-11-26: three jobs, one of them in the trash, a state to
    // go back to, an edit that was undone and work on hold at the machine.
    HeadlessPorts ports;
    take_fixture(ports, "/stored-2.txt");
    REQUIRE(ports.kept.size() == 26);
    AppPage page(ports);
    CHECK(name(page) == "Sluice rail");
    CHECK(page.app.session().past().size() == 2);
    CHECK(page.app.session().future().size() == 1);
    CHECK(page.app.session().job().parts[0]->count == 21);
    CHECK(says(page, "On hold at the machine since"));
    page.press(Role::tab, "Jobs");
    CHECK(says(page, "Thrown away"));
    page.press(Role::button, "Open: Weir footbridge");
    page.host.settle();
    CHECK(name(page) == "Weir footbridge");
    CHECK(page.app.session().past().size() == 1);
    page.press(Role::tab, "Jobs");
    CHECK(says(page, "Go back to it: Kept by hand"));
}

TEST_CASE("what the first page with layouts left is opened with its layout linked") {
    // Written in Chromium by a page of 2026-11-27: a guard laid out, its run changed, the parts
    // made to follow, and a new name for the job that was undone.
    HeadlessPorts ports;
    take_fixture(ports, "/stored-3.txt");
    REQUIRE(ports.kept.size() == 14);
    AppPage page(ports);
    const auto& session = page.app.session();
    CHECK(name(page) == "Heron Race sluice house: walkway, stair and pipe hangers");
    CHECK(session.past().size() == 2);
    CHECK(session.future().size() == 1);
    REQUIRE(session.job().layouts.size() == 1);
    const job::Layout& layout = session.job().layouts[0];
    CHECK(layout.kind == "guard-run");
    for (const job::MadePart& made : layout.made) {
        CHECK_FALSE(made.detached);
        CHECK(std::any_of(session.job().parts.begin(),
                          session.job().parts.end(),
                          [&](const job::PartRef& part) { return part->id == made.part; }));
    }
    rename(page, "Still going");
    AppPage next(ports);
    CHECK(name(next) == "Still going");
    CHECK(next.app.session().job().layouts.size() == 1);
}
