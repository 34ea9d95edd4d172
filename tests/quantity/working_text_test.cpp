#include "quantity/working_text.h"

#include <doctest/doctest.h>

#include <string_view>

using namespace treadle;

namespace {
constexpr base::CardSymbol k_symbols[] = {{"F", "force"}, {"A", "area cut"}, {"S", "strength"}};
constexpr base::FormulaCard k_card{"test-card",
                                   "Force to cut a bar",
                                   "F = A S",
                                   k_symbols,
                                   "whole section at once",
                                   "some-book",
                                   base::Evidence::from_memory,
                                   "up"};

Working sample() {
    // 1 in square at 60 ksi: 60 kip, 30 US ton.
    return Working{&k_card, {{"S", ksi(60.0)}}, {"F", us_tons(30.0)}, "Careful rule."};
}

bool has(const std::vector<std::string>& lines, std::string_view line) {
    for (const std::string& known : lines)
        if (known == line)
            return true;
    return false;
}
} // namespace

TEST_CASE("a working says everything its card and its values know, a line each") {
    const auto lines = quantity::working_lines(sample(), {UnitSystem::inch, 16});
    CHECK(has(lines, "Force to cut a bar"));
    CHECK(has(lines, "F = A S"));
    CHECK(has(lines, "S = 60.0 ksi, strength"));
    CHECK(has(lines, "F = 30.00 ton"));
    CHECK(has(lines, "Rounding: up"));
    CHECK(has(lines, "Holds for: whole section at once"));
    CHECK(has(lines, "Note: Careful rule."));
    CHECK(has(lines, "Source: some-book"));
    CHECK(has(lines, "Evidence: from memory"));
}

TEST_CASE("the same working in a metric shop's units") {
    const auto text = quantity::in_words(sample(), {UnitSystem::metric, 16});
    // 60 x 6.894757 = 413.7 MPa; 30 x 8.896443 = 266.89 kN (NIST SP 811).
    CHECK(text.values.at(0) == "S = 413.7 MPa, strength");
    CHECK(text.result == "F = 266.89 kN");
}

TEST_CASE("what has nothing to say takes no line") {
    Working plain = sample();
    plain.note.clear();
    for (const std::string& line : quantity::working_lines(plain, {UnitSystem::inch, 16}))
        CHECK(line.find("Note:") == std::string::npos);
}
