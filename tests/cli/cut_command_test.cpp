// `treadle cut` as a shell runs it: cut_command.cpp.
//
// Plans and certificates are read back and checked with the table and the sums of this file alone.

#include "cli/cut_command.h"
#include "cli/ended.h"

#include <doctest/doctest.h>

#include <algorithm>
#include <map>
#include <sstream>
#include <vector>

using namespace treadle;
using cli_test::content;
using cli_test::Ended;
using cli_test::Folder;
using cli_test::run;

namespace {

constexpr const char* k_two_lists = "instance posts\n"
                                    "stock 240\ntypes 3\n118 5\n80 4\n37 9\nend\n"
                                    "instance rails\n"
                                    "stock 3840\nkerf 2\n1199 7\n858 6\n500 11\n311 5\nend\n";

struct Line {
    std::string name, bars, bound, state, work, seconds, more;
};

std::vector<Line> lines_of(const std::string& out) {
    std::vector<Line> lines;
    std::istringstream in(out);
    for (std::string text; std::getline(in, text);) {
        Line line;
        std::istringstream words(text);
        words >> line.name >> line.bars >> line.bound >> line.state >> line.work >> line.seconds;
        words >> line.more;
        lines.push_back(line);
    }
    return lines;
}

/// Largest worth of lengths that go into `room`, each any number of times up to its own.
long long largest(const std::map<long long, long long>& asked,
                  const std::map<long long, long long>& prices,
                  long long room,
                  long long kerf) {
    std::vector<long long> worth(static_cast<std::size_t>(room + kerf) + 1, 0);
    for (const auto& [length, count] : asked)
        for (long long n = 0; n < count; ++n)
            for (auto j = static_cast<long long>(worth.size()) - 1; j >= length + kerf; --j)
                worth[static_cast<std::size_t>(j)] = std::max(
                    worth[static_cast<std::size_t>(j)],
                    worth[static_cast<std::size_t>(j - length - kerf)] + prices.at(length));
    return worth.back();
}

/// Reads whole numbers and passes over everything else, from the first `from` to the first `to`.
std::vector<long long>
numbers(const std::string& text, const std::string& from, const std::string& to) {
    const std::size_t begin = text.find(from);
    REQUIRE(begin != std::string::npos);
    const std::size_t end = text.find(to, begin);
    REQUIRE(end != std::string::npos);
    std::string digits = text.substr(begin + from.size(), end - begin - from.size());
    std::replace_if(
        digits.begin(), digits.end(), [](char c) { return c < '0' || c > '9'; }, ' ');
    std::istringstream in(digits);
    std::vector<long long> found;
    for (long long number = 0; in >> number;)
        found.push_back(number);
    return found;
}

/// Exit 2 and an error that names this field and says this.
void check_refused(const std::string& words, const std::string& field, const std::string& says) {
    CAPTURE(words);
    const Ended ended = run(words);
    CHECK(ended.code == 2);
    CHECK_MESSAGE(ended.out.rfind(R"({"error":{"field":")" + field + R"(","reason":")", 0) == 0,
                  ended.out);
    CHECK_MESSAGE(ended.out.find(says) != std::string::npos, ended.out);
    CHECK(ended.out.find('\n') == ended.out.size() - 1);
}

} // namespace

TEST_CASE("a line for each list, in the order of the file") {
    const Folder folder;
    const Ended ended = run("cut " + folder.file("lists.txt", k_two_lists));
    CHECK(ended.code == 0);
    const std::vector<Line> lines = lines_of(ended.out);
    REQUIRE(lines.size() == 2);
    // 1243 of metal in bars of 240: six at the least; worked by hand: 118 118, 118 118, 118 80 37,
    // 80 80 80, and eight of 37 in two more.
    CHECK(lines[0].name == "posts");
    CHECK(lines[0].bars == "6");
    CHECK(lines[0].bound == "6");
    CHECK(lines[0].state == "proven");
    CHECK(lines[1].name == "rails");
    for (const Line& line : lines) {
        CHECK(std::stoll(line.work) > 0);
        CHECK(std::stod(line.seconds) >= 0.0);
        CHECK(line.more.empty());
    }
}

TEST_CASE("the same work, the same answer; no more than the work that is given") {
    const Folder folder;
    const std::string file = folder.file("lists.txt", k_two_lists);
    const auto without_time = [&](const std::string& more) {
        std::string all;
        for (const Line& line : lines_of(run("cut " + file + more).out))
            all += line.name + line.bars + line.bound + line.state + line.work + "\n";
        return all;
    };
    CHECK(without_time(" --work 5000000") == without_time(" --work 5000000"));
    // One unit of work: a plan all the same, for that is there first.
    for (const Line& line : lines_of(run("cut " + file + " --work 1").out)) {
        CHECK(std::stoll(line.bars) >= std::stoll(line.bound));
        CHECK(std::stoll(line.work) < 1'000'000);
    }
}

TEST_CASE("plans hold piece by piece, and prices prove the bound") {
    const Folder folder;
    const std::string plans = (folder.path / "plans.json").string();
    const std::string file = folder.file("lists.txt", k_two_lists);
    const std::vector<Line> lines = lines_of(run("cut " + file + " --plans " + plans).out);
    const std::string json = content(plans);
    struct Asked {
        const char* name;
        long long stock, kerf;
        std::map<long long, long long> pieces;
    };
    const Asked lists[] = {{"posts", 240, 0, {{118, 5}, {80, 4}, {37, 9}}},
                           {"rails", 3840, 2, {{1199, 7}, {858, 6}, {500, 11}, {311, 5}}}};
    REQUIRE(lines.size() == 2);
    for (std::size_t n = 0; n < 2; ++n) {
        const Asked& asked = lists[n];
        CAPTURE(asked.name);
        const std::string of_list =
            json.substr(json.find("\"" + std::string(asked.name) + "\":{\"bars\":["));
        std::string bars = of_list.substr(0, of_list.find("\"certificate\""));
        std::map<long long, long long> made;
        long long used = 0;
        for (std::size_t at = bars.find("\"count\""); at != std::string::npos;
             at = bars.find("\"count\"", at + 1)) {
            const std::vector<long long> bar = numbers(bars.substr(at), "\"count\"", "]]}");
            REQUIRE(bar.size() % 2 == 1);
            long long fill = -asked.kerf;
            for (std::size_t p = 1; p < bar.size(); p += 2) {
                made[bar[p]] += bar[0] * bar[p + 1];
                fill += bar[p + 1] * (bar[p] + asked.kerf);
            }
            CHECK(fill <= asked.stock);
            used += bar[0];
        }
        CHECK(made == asked.pieces);
        CHECK(std::to_string(used) == lines[n].bars);

        const std::vector<long long> pairs = numbers(of_list, "\"prices\":", "\"largest\"");
        const long long most = numbers(of_list, "\"largest\":", ",").front();
        const long long bound = numbers(of_list, "\"bound\":", ",").front();
        std::map<long long, long long> prices;
        for (std::size_t p = 0; p + 1 < pairs.size(); p += 2)
            prices[pairs[p]] = pairs[p + 1];
        REQUIRE(prices.size() == asked.pieces.size());
        CHECK(largest(asked.pieces, prices, asked.stock, asked.kerf) == most);
        long long worth = 0;
        for (const auto& [length, count] : asked.pieces)
            worth += prices.at(length) * count;
        CHECK((worth + most - 1) / most == bound);
        CHECK(bound <= std::stoll(lines[n].bound));
    }
    CHECK(json.find("\"rest_by_search\":false") != std::string::npos);
}

TEST_CASE("several kinds of bar: the plan says which") {
    const Folder folder;
    const std::string plans = (folder.path / "plans.json").string();
    const std::string file = folder.file(
        "lists.txt", "instance drops\nstock 100 cost 100\nstock 60 cost 0 count 1\n55 2\nend\n");
    const Ended ended = run("cut " + file + " --plans " + plans);
    CHECK(ended.code == 0);
    CHECK(ended.out.rfind("drops 2 100 proven ", 0) == 0); // two bars; the bound is of the cost
    const std::string json = content(plans);
    CHECK(json.find(R"({"count":1,"stock":60,"pieces":[[55,1]]})") != std::string::npos);
    CHECK(json.find(R"({"count":1,"stock":100,"pieces":[[55,1]]})") != std::string::npos);
    CHECK(json.find("\"largest_by_stock\":[") != std::string::npos);
}

TEST_CASE("too little stock is said without a plan") {
    const Folder folder;
    const Ended ended =
        run("cut " + folder.file("lists.txt", "instance few\nstock 100 count 1\n60 2\nend\n") +
            " --work 1000000");
    CHECK(ended.code == 0);
    const std::vector<Line> lines = lines_of(ended.out);
    REQUIRE(lines.size() == 1);
    CHECK(lines[0].bars == "-");
    CHECK(lines[0].state == "open");
}

TEST_CASE("what cannot be cut is refused with the piece named") {
    const Folder folder;
    int n = 0;
    const auto refused =
        [&](const std::string& middle, const std::string& field, const std::string& says) {
            const std::string text = "instance gate\nstock 240\n" + middle + "end\n";
            const std::string name = std::to_string(n++) + ".txt";
            check_refused("cut " + folder.file(name, text), field, says);
        };
    refused("80 1\n241 1\n", "gate.pieces[1].length", "241");
    refused("0 1\n", "gate.pieces[0].length", "length 0");
    refused("-7 1\n", "gate.pieces[0].length", "-7");
    refused("80 0\n", "gate.pieces[0].count", "length 80");
    refused("80 -3\n", "gate.pieces[0].count", "length 80");
    refused("80 10000000\n", "gate.pieces[0].count", "length 80");
    refused("80 900000\n79 900000\n", "gate.pieces[1].count", "length 79");
    refused("9223372036854775807 1\n", "gate.pieces[0].length", "9223372036854775807");
    refused("80 9223372036854775807\n", "gate.pieces[0].count", "9223372036854775807");
    refused("9223372036854775808 1\n", "line 3", "9223372036854775808");
    refused("kerf 9223372036854775807\n80 2\n", "gate.kerf", "9223372036854775807");
    refused("", "gate.pieces", "no piece");
    const std::string second = folder.file(
        "second.txt", std::string(k_two_lists) + "instance third\nstock 9\n10 1\nend\n");
    check_refused("cut " + second, "third.pieces[0].length", "10"); // and no line of the others
}

TEST_CASE("a large file is read whole, one too large is refused") {
    const Folder folder;
    const std::string lists(k_two_lists);
    // Longer than a job may be.
    const std::string large = folder.file("large.txt", std::string(20'000'000, '\n') + lists);
    CHECK(lines_of(run("cut " + large).out).size() == 2);
    const std::string too_large =
        folder.file("too_large.txt", lists + std::string(64u * 1024u * 1024u, '\n'));
    check_refused("cut " + too_large, "file", "64 MB");
}

TEST_CASE("words and files that mean nothing are refused") {
    const Folder folder;
    const std::string file = folder.file("lists.txt", k_two_lists);
    check_refused("cut", "file", "needed");
    check_refused("cut /no/such/file.txt", "file", "");
    check_refused("cut " + file + " --work", "command", "--work");
    check_refused("cut " + file + " --work 0", "work", "above zero");
    check_refused("cut " + file + " --work -5", "work", "above zero");
    check_refused("cut " + file + " --work 1e9", "work", "above zero");
    check_refused("cut " + file + " --work 99999999999999999999", "work", "above zero");
    check_refused("cut " + file + " " + file, "command", "");
    check_refused("cut " + file + " --fast", "command", "--fast");
    check_refused("cut " + folder.file("empty.txt", ""), "file", "no cutting list");
    check_refused("cut " + file + " --work 1 --plans " + file, "out", "");
    CHECK(content(file) == k_two_lists);
}
