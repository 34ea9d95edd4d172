// Arrows go down only: demand and offer meet in plan, and no view can compute a trade figure.

#include <doctest/doctest.h>

#include <regex>
#include <set>

#include "architecture/tree.h"

using namespace treadle::architecture;

namespace {

bool ours(const std::string& path) { return !begins_with(path, "tests/"); }

bool may_include(const Room& from, const Room& to, const std::string& header) {
    if (from.name == to.name)
        return true;
    // A view asks the outside only through its ports.
    if (from.name == "views" && to.name == "platform")
        return header == "web/platform/ports.h";
    return has_word(from.may_include, to.name);
}

bool reaches_itself(const std::string& path,
                    std::set<std::string>& open,
                    std::set<std::string>& done) {
    if (done.count(path) != 0)
        return false;
    if (!open.insert(path).second)
        return true;
    for (const Include& include : tree().at(path).includes) {
        if (!include.resolved.empty() && reaches_itself(include.resolved, open, done))
            return true;
    }
    open.erase(path);
    done.insert(path);
    return false;
}

} // namespace

TEST_CASE("every source file lives in a room of the table") {
    int checked = 0;
    for (const auto& [path, file] : tree()) {
        if (!ours(path))
            continue;
        ++checked;
        if (room_of(path) == nullptr)
            FAIL_CHECK(path << " is in no room of tests/architecture/rooms.h");
    }
    CHECK(checked > 60);
}

TEST_CASE("a room includes only what its line of the table allows") {
    int checked = 0;
    for (const auto& [path, file] : tree()) {
        const Room* from = room_of(path);
        if (!ours(path) || from == nullptr)
            continue;
        for (const Include& include : file.includes) {
            const Room* to = include.resolved.empty() ? nullptr : room_of(include.resolved);
            if (to == nullptr)
                continue;
            ++checked;
            if (!may_include(*from, *to, include.resolved))
                FAIL_CHECK(path << " may not include " << include.resolved << ": " << from->name
                                << " may use \"" << from->may_include << "\"");
        }
    }
    CHECK(checked > 200);
}

TEST_CASE("a quoted include is one of our files, an own header comes first") {
    // What the build makes, and a library that is configured by quotes.
    const std::set<std::string> made{"embedded_fonts.h", "treadle_imconfig.h"};
    for (const auto& [path, file] : tree()) {
        for (const Include& include : file.includes) {
            const bool library = begins_with(include.text, "imgui");
            if (include.quoted && include.resolved.empty() && !library &&
                made.count(include.text) == 0)
                FAIL_CHECK(path << " includes \"" << include.text << "\", which is nowhere");
        }
        const std::string own = path.substr(0, path.rfind('.')) + ".h";
        if (file.header() || tree().count(own) == 0 || !ours(path))
            continue;
        if (file.includes.empty() || file.includes.front().resolved != own)
            FAIL_CHECK(path << " does not include its own header first");
    }
}

TEST_CASE("the table is a way down: no room reaches itself, no room is named that is not there") {
    std::set<std::string_view> above;
    for (const Room& room : k_rooms) {
        for (const std::string& used : words_of(room.may_include)) {
            if (above.count(used) == 0)
                FAIL_CHECK(room.name << " may include " << used
                                     << ", which does not stand above it");
        }
        CHECK(above.insert(room.name).second);
    }
}

TEST_CASE("no file includes itself by a detour") {
    std::set<std::string> done;
    for (const auto& [path, file] : tree()) {
        std::set<std::string> open;
        if (reaches_itself(path, open, done))
            FAIL_CHECK(path << " is part of a cycle");
    }
    CHECK(done.size() > 100);
}

TEST_CASE("a library belongs to its rooms") {
    int seen = 0;
    for (const auto& [path, file] : tree()) {
        const Room* room = room_of(path);
        if (!ours(path) || room == nullptr)
            continue;
        for (const Include& include : file.includes) {
            for (const Library& library : k_libraries) {
                if (!begins_with(include.text, library.header_begins))
                    continue;
                ++seen;
                if (!has_word(library.rooms, room->name))
                    FAIL_CHECK(path << " may not include " << include.text);
            }
        }
    }
    CHECK(seen > 2);
}

TEST_CASE("the build links a room only to what the table allows") {
    static const std::regex room_call(R"(treadle_room\((\w+)([^)]*)\))");
    int checked = 0;
    for (const Room& room : k_rooms) {
        const std::string text = read_text(std::string(room.folder) + "/CMakeLists.txt");
        std::smatch call;
        if (!std::regex_search(text, call, room_call))
            continue;
        const std::string arguments = call[2].str();
        const auto uses = arguments.find("USES");
        for (const std::string& used :
             words_of(uses == std::string::npos ? "" : arguments.substr(uses + 4))) {
            ++checked;
            if (!has_word(room.may_include, used))
                FAIL_CHECK(room.folder << "/CMakeLists.txt links " << used);
        }
    }
    CHECK(checked > 20);
}
