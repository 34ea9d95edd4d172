// The core has no input, output, clock, locale or memory of its own: same input, same output.

#include <doctest/doctest.h>

#include <regex>
#include <set>
#include <utility>

#include "architecture/mutable_state.h"
#include "architecture/tree.h"

using namespace treadle::architecture;

namespace {

bool in_core(const std::string& path) { return begins_with(path, "core/"); }
/// The command reads files and writes to the terminal: that is its job.
bool in_command(const std::string& path) { return begins_with(path, "core/cli/"); }

const std::set<std::string> k_forbidden{"iostream",
                                        "fstream",
                                        "filesystem",
                                        "cstdio",
                                        "chrono",
                                        "ctime",
                                        "random",
                                        "thread",
                                        "mutex",
                                        "locale",
                                        "regex",
                                        "stdio.h",
                                        "time.h",
                                        "locale.h"};

/// One file wraps the C library's number printing, under the C locale that nobody changes.
const std::set<std::pair<std::string, std::string>> k_header_exceptions{
    {"core/base/text.cpp", "cstdio"}};

/// The fault handler has to be known without being handed through every function.
const std::set<std::pair<std::string, std::string>> k_state_exceptions{
    {"core/base/contracts.cpp", "g_handler"}};

} // namespace

TEST_CASE("the core includes no header that reaches outside") {
    int checked = 0;
    for (const auto& [path, file] : tree()) {
        if (!in_core(path) || in_command(path))
            continue;
        for (const Include& include : file.includes) {
            ++checked;
            if (k_forbidden.count(include.text) != 0 &&
                k_header_exceptions.count({path, include.text}) == 0)
                FAIL_CHECK(path << " includes <" << include.text << ">");
        }
    }
    CHECK(checked > 200);
}

TEST_CASE("the core remembers nothing between two calls") {
    int checked = 0;
    std::set<std::pair<std::string, std::string>> excused;
    for (const auto& [path, file] : tree()) {
        if (!in_core(path))
            continue;
        ++checked;
        for (const std::string& name : mutable_state(file.text)) {
            if (k_state_exceptions.count({path, name}) != 0)
                excused.insert({path, name});
            else
                FAIL_CHECK(path << " keeps " << name << " between calls");
        }
    }
    CHECK(checked > 50);
    CHECK(excused == k_state_exceptions);
}

TEST_CASE("no exception and no locale in the core") {
    static const std::regex word(R"(\b(throw|try|catch|setlocale|getenv)\b)");
    // A library that throws is caught where it is called.
    for (const auto& [path, file] : tree()) {
        const std::string text = in_core(path) ? bare(file.text) : std::string{};
        for (std::sregex_iterator at(text.begin(), text.end(), word), end; at != end; ++at)
            FAIL_CHECK(path << " says " << at->str());
    }
}

TEST_CASE("above quantity a figure has a type: a bare double has its reason") {
    static const std::regex function(R"((?:^|\s)double\s+(\w+)\s*\()");
    // Shares, ratios and counts have no unit; a name that ends in one says it; places on paper are
    // in the drawing's own points; base_value compares two figures of one kind, whichever that is.
    static const std::regex excused(
        R"((ratio|share|factor|margin|count|_k$|_(mm|kN|MPa|deg|kg|J|pct)$|^points$|^text_width$|^base_value$))");
    int checked = 0;
    for (const auto& [path, file] : tree()) {
        const Room* room = room_of(path);
        if (!in_core(path) || !file.header() || room == nullptr || room->name == "base" ||
            room->name == "quantity" || room->name == "cutting")
            continue;
        ++checked;
        const std::string text = bare(file.text);
        for (std::sregex_iterator at(text.begin(), text.end(), function), end; at != end; ++at) {
            if (!std::regex_search((*at)[1].first, (*at)[1].second, excused))
                FAIL_CHECK(path << ": " << (*at)[1].str() << " gives a bare double");
        }
    }
    CHECK(checked > 15);
}
