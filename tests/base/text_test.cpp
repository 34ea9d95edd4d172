#include "base/text.h"

#include <doctest/doctest.h>

#include <cmath>
#include <cstdint>
#include <cstdio>
#include <cstdlib>
#include <cstring>
#include <random>
#include <string>

using namespace treadle::base;

namespace {
bool same_bits(double a, double b) { return std::memcmp(&a, &b, sizeof a) == 0; }
constexpr std::uint64_t k_seed = 20240517;
} // namespace

TEST_CASE("numbers are read as strtod reads them, to the last bit") {
    for (const char* text : {"0",
                             "-0",
                             "1",
                             "12",
                             "-0.5",
                             "1e3",
                             "1E-3",
                             ".5",
                             "5.",
                             "+7",
                             "0.1",
                             "0.3",
                             "2.675",
                             "123456789012345",
                             "12345678901234567",
                             "0.000001",
                             "1.7976931348623157e308",
                             "4.9e-324",
                             "9007199254740993",
                             "0.1234567890123456789",
                             "00000000000000000000012.5"}) {
        CAPTURE(std::string(text));
        const auto value = read_number(text);
        REQUIRE(value);
        CHECK(same_bits(*value, std::strtod(text, nullptr)));
    }
}

TEST_CASE("what is no plain decimal number is not read") {
    for (const char* text : {"",      " ",      " 1", "1 ",  "0x10", "inf",  "-inf",  "nan",
                             "1e400", "-1e400", "1e", "1e+", "--1",  "+-1",  "1.2.3", "1,5",
                             "1'000", ".",      "-",  "e5",  "1f",   "1.0L", "１"}) {
        CAPTURE(std::string(text));
        CHECK_FALSE(read_number(text));
    }
    CHECK_FALSE(read_number(std::string(5000, '1')));
    CHECK_FALSE(read_number(std::string_view("1\0", 2)));
}

TEST_CASE("any finite number is written so that it reads back identical") {
    std::mt19937_64 random(k_seed);
    int tried = 0;
    while (tried < 20000) {
        const std::uint64_t bits = random();
        double value = 0.0;
        std::memcpy(&value, &bits, sizeof value);
        if (!std::isfinite(value))
            continue;
        ++tried;
        const std::string text = write_number(value);
        CAPTURE(std::string(text));
        const auto back = read_number(text);
        REQUIRE(back);
        REQUIRE(same_bits(*back, value));
    }
}

TEST_CASE("figures of the trade's size are written so that they read back identical") {
    std::mt19937_64 random(k_seed);
    for (int i = 0; i < 20000; ++i) {
        const double value = static_cast<double>(random() >> 11U) * 0x1p-53 * 12000.0;
        for (const double v : {value, std::round(value * 1000.0) / 1000.0, value * 25.4}) {
            const auto back = read_number(write_number(v));
            REQUIRE(back);
            REQUIRE(same_bits(*back, v));
        }
    }
}

TEST_CASE("numbers are written in their shortest form") {
    CHECK(write_number(35.0) == "35");
    CHECK(write_number(-35.0) == "-35");
    CHECK(write_number(0.1) == "0.1");
    CHECK(write_number(0.375) == "0.375");
    CHECK(write_number(9.525) == "9.525");
    CHECK(write_number(100.05) == "100.05");
    CHECK(write_number(1.0 / 3.0) == "0.3333333333333333");
    CHECK(write_number(0.1 + 0.2) == "0.30000000000000004");
    CHECK(write_number(5e-324) == "5e-324");
    CHECK(write_number(0.0) == "0");
}

TEST_CASE("fixed decimals are rounded half away from zero") {
    CHECK(write_fixed(0.125, 2) == "0.13");
    CHECK(write_fixed(-0.125, 2) == "-0.13");
    CHECK(write_fixed(2.5, 0) == "3");
    CHECK(write_fixed(3.5, 0) == "4");
    CHECK(write_fixed(0.49999999999999994, 0) == "0");
    CHECK(write_fixed(1.0, 3) == "1.000");
    CHECK(write_fixed(0.031, 3) == "0.031");
    CHECK(write_fixed(-0.04, 1) == "0.0");
    CHECK(write_fixed(9.99, 1) == "10.0");
    CHECK(write_fixed(1e20, 1) == "100000000000000000000.0");
}

TEST_CASE("short decimals have no trailing zeros and no bare point") {
    CHECK(write_short(35.0, 1) == "35");
    CHECK(write_short(35.25, 1) == "35.3");
    CHECK(write_short(0.8, 3) == "0.8");
    CHECK(write_short(100.0, 0) == "100");
    CHECK(write_short(-0.001, 2) == "0");
}

TEST_CASE("blanks, case and markup") {
    CHECK(trim("  a b\t\r\n") == "a b");
    CHECK(trim(" \t ").empty());
    CHECK(to_lower_ascii("MPa Ä") == "mpa Ä");
    CHECK(escape_markup("<a href=\"x\">'&'</a>") ==
          "&lt;a href=&quot;x&quot;&gt;&#39;&amp;&#39;&lt;/a&gt;");
}

TEST_CASE("clean text is well-formed UTF-8 without control characters") {
    for (const char* text : {"", "A36", "line\nline\ttab", "1½ – ° ²", "日本", "🔧"}) {
        CAPTURE(std::string(text));
        CHECK(is_clean_text(text));
    }
    for (const char* text : {"\x01",
                             "a\rb",
                             "\x7F",
                             "\xC0\xAF",
                             "\xED\xA0\x80",
                             "\xF4\x90\x80\x80",
                             "\xE2\x82",
                             "\x80",
                             "\xFF",
                             "\xC2\x85",
                             "\xE0\x80\xAF",
                             "\xF0\x80\x80\xAF"}) {
        CHECK_FALSE(is_clean_text(text));
    }
    CHECK_FALSE(is_clean_text(std::string_view("a\0b", 3)));
}

TEST_CASE("no fewer digits would read back, whatever the number") {
    // Held against the plain way: 15, 16, 17 digits one after the other.
    const auto by_trial = [](double value) {
        char text[40];
        for (int digits = 15; digits <= 17; ++digits) {
            std::snprintf(text, sizeof text, "%.*g", digits, value);
            if (std::strtod(text, nullptr) == value)
                break;
        }
        return std::string(text);
    };
    std::uint64_t state = 20261125; // fixed seed: the same numbers in every run
    const auto next = [&] {
        state ^= state << 13U;
        state ^= state >> 7U;
        state ^= state << 17U;
        return state;
    };
    int tried = 0;
    for (int i = 0; i < 200'000; ++i) {
        // Below 1e-4 or over 1e15, where no decimals are counted out before.
        double value = std::ldexp(static_cast<double>(next() >> 11U), -53);
        value = std::ldexp(value, static_cast<int>(next() % 600U) - 300);
        if (value >= 1e-4 && value < 1e15)
            value *= 1e-25;
        REQUIRE(write_number(value) == by_trial(value));
        ++tried;
    }
    for (int exponent = -1000; exponent < 1000; ++exponent) {
        const double power = std::ldexp(1.0, exponent);
        if (power < 1e-4 || power > 1e15)
            CHECK(write_number(power) == by_trial(power));
        CHECK(read_number(write_number(power)) == power);
        ++tried;
    }
    CHECK(tried == 202'000);
}
