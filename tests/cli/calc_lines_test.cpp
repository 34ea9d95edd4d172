// Lines in, lines out, in whatever pieces they come: calc_lines.cpp.

#include "archive/archive.h"
#include "calc/answer_json.h"
#include "calc/calculation.h"
#include "calc/valid_input.h"
#include "cli/calc_lines.h"

#include <doctest/doctest.h>

#include <algorithm>
#include <numeric>
#include <random>
#include <string>
#include <vector>

using namespace treadle;

namespace {

const job::Catalog& catalog() {
    static const job::Catalog read = archive::read_catalog().value();
    return read;
}

constexpr const char* k_good =
    R"({"calc":"punch.force","in":{"shape":"round","size":"1 in","thickness":"1/4 in","material":"A36"}})";

std::size_t lines_of(const std::string& text) {
    return static_cast<std::size_t>(std::count(text.begin(), text.end(), '\n'));
}

} // namespace

TEST_CASE("each line has its answer, whether good, bad or blank") {
    cli::CalcLines lines(catalog());
    const std::string out = lines.take(std::string(k_good) + "\nrubbish\n\n" + k_good +
                                       "\r\n{\"calc\":\"no\",\"in\":{}}\n");
    CHECK(lines_of(out) == 5);
    CHECK(out.find(R"({"calc":"punch.force")") == 0);
    CHECK(out.find(R"({"error":{"field":"line")") != std::string::npos);
    CHECK(out.find(R"({"error":{"field":"calc")") != std::string::npos);
    CHECK(lines.end().empty());
}

TEST_CASE("a line that comes in pieces is answered like a whole one") {
    cli::CalcLines whole(catalog());
    const std::string text = std::string(k_good) + "\n";
    const std::string expected = whole.take(text);
    for (std::size_t cut = 0; cut <= text.size(); cut += 7) {
        CAPTURE(cut);
        cli::CalcLines lines(catalog());
        std::string out = lines.take(text.substr(0, cut));
        out += lines.take(text.substr(cut));
        CHECK(out == expected);
    }
}

TEST_CASE("a last line without an end is answered too") {
    cli::CalcLines lines(catalog());
    CHECK(lines.take(k_good).empty());
    CHECK(lines_of(lines.end()) == 1);
    CHECK(lines.end().empty());
}

TEST_CASE("a line without end is refused once, and the next one is answered") {
    cli::CalcLines lines(catalog());
    const std::string piece(300'000, 'x');
    for (int i = 0; i < 5; ++i)
        CHECK(lines.take(piece).empty());
    const std::string out = lines.take(piece + "\n" + k_good + "\n");
    CHECK(lines_of(out) == 2);
    CHECK(out.find("too long") != std::string::npos);
    CHECK(out.find(R"({"calc":"punch.force")") != std::string::npos);
}

TEST_CASE("the answer to a line never depends on the lines before it") {
    // Every calculation with its examples, good and spoilt, in one order and shuffled.
    const calc::Tables tables{catalog().grades, catalog().sections};
    std::vector<std::string> asked;
    for (const calc::Calculation* calculation : calc::all()) {
        for (const calc::InputSpec& spec : calculation->inputs) {
            auto in = test::valid_input(*calculation, spec.name, tables);
            if (!in)
                continue;
            asked.push_back(calc::request_json(calculation->name, calc::Input(*in)) + "\n");
            in->front().second = calc::Input("-1 in");
            asked.push_back(calc::request_json(calculation->name, calc::Input(*in)) + "\n");
        }
    }
    REQUIRE(asked.size() > 100);
    std::vector<std::string> alone;
    for (const std::string& line : asked)
        alone.push_back(cli::CalcLines(catalog()).take(line));

    std::vector<std::size_t> order(asked.size());
    std::iota(order.begin(), order.end(), std::size_t{0});
    std::mt19937 shuffle(20261125); // fixed seed: the same orders in every run
    for (int round = 0; round < 3; ++round) {
        std::shuffle(order.begin(), order.end(), shuffle);
        cli::CalcLines lines(catalog());
        for (const std::size_t place : order)
            REQUIRE(lines.take(asked[place]) == alone[place]);
    }
}
