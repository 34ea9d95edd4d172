#include "quantity/parse.h"

#include <doctest/doctest.h>

#include <array>
#include <string>

using namespace treadle;
using namespace treadle::quantity;

namespace {

struct Spelling {
    const char* typed;
    Length meant;
};

/// Read with bare numbers meaning inches.
const std::array<Spelling, 48> k_spellings{{
    {"1-3/8", inches(1.375)},
    {"1 3/8\"", inches(1.375)},
    {"1 3/8 in", inches(1.375)},
    {"1-3/8in.", inches(1.375)},
    {"1.375 in", inches(1.375)},
    {"1.375\"", inches(1.375)},
    {"1.375", inches(1.375)},
    {"1.375 INCHES", inches(1.375)},
    {"3/8", inches(0.375)},
    {"3/8\"", inches(0.375)},
    {".375", inches(0.375)},
    {"9/8", inches(1.125)},
    {"½", inches(0.5)},
    {"1½", inches(1.5)},
    {"1½\"", inches(1.5)},
    {"1-½", inches(1.5)},
    {"1⁄2", inches(0.5)},
    {"11⁄16", inches(0.6875)},
    {"1–3/8", inches(1.375)},
    {"4' 6-1/2\"", inches(54.5)},
    {"4'-6 1/2\"", inches(54.5)},
    {"4'6-1/2\"", inches(54.5)},
    {"4' 6-1/2", inches(54.5)},
    {"4' - 6 1/2\"", inches(54.5)},
    {"4’ 6½”", inches(54.5)},
    {"4′–6 1/2″", inches(54.5)},
    {"4 ft 6-1/2 in", inches(54.5)},
    {"4' 6 1/2''", inches(54.5)},
    {"4' 6.5\"", inches(54.5)},
    {"4' 0 3/16\"", inches(48.1875)},
    {"4'-3/16\"", inches(48.1875)},
    {"4'-0\"", inches(48.0)},
    {"5-3-1/2", inches(63.5)},
    {"5-3-1/2\"", inches(63.5)},
    {"5-0-1/2", inches(60.5)},
    {"6 ft", inches(72.0)},
    {"6'", inches(72.0)},
    {"1.5 ft", inches(18.0)},
    {"-1-3/8", inches(-1.375)},
    {"−4' 6\"", inches(-54.0)},
    {"+2", inches(2.0)},
    {"35 mm", millimetres(35.0)},
    {"35mm", millimetres(35.0)},
    {"12,5 mm", millimetres(12.5)},
    {"3.5cm", millimetres(35.0)},
    {"1.2 m", millimetres(1200.0)},
    {"1e2 mm", millimetres(100.0)},
    {" \t35 mm ", millimetres(35.0)},
}};

base::Refusal refusal_of(std::string_view text, BareUnit bare = UnitSystem::inch) {
    const auto read = parse_length(text, bare, "hole.size");
    REQUIRE_FALSE(read);
    CHECK(read.refusal().field == "hole.size");
    CHECK_FALSE(read.refusal().reason.empty());
    return read.refusal();
}

} // namespace

TEST_CASE("lengths are read as fabricators write them") {
    for (const Spelling& row : k_spellings) {
        CAPTURE(std::string(row.typed));
        const auto read = parse_length(row.typed, UnitSystem::inch, "length");
        REQUIRE(read);
        CHECK(to_millimetres(*read) == to_millimetres(row.meant));
    }
}

TEST_CASE("what is no length is refused with its field and a reason") {
    for (const char* text :
         {"",          "  ",       "rubbish",    "-",         "'",       "\"",      "mm",
          "1/0",       "1-3/0",    "0x10",       "inf",       "nan",     "1e400",   "1e400 mm",
          "1e308 m",   "1.2.3",    "1,250",      "1,250.5",   "1 250",   "3/8/2",   "1.5/2",
          "1-9/8",     "4' 35 mm", "35 mm 4'",   "1 in 2 in", "1\" 4'",  "5' 13\"", "4.5' 6\"",
          "1 2 3",     "5-3-2",    "5-3-1/2 mm", "1 kg",      "1 mm mm", "½5",      "--1",
          "1 3/8 3/8", "5 3-1/2",  "1/2-3",      "4' 6' 2\"", "4''6",    "35 mmm",  "1;5",
          "12 deg"}) {
        CAPTURE(std::string(text));
        (void)refusal_of(text);
    }
    (void)refusal_of(std::string(65, '1'));
    (void)refusal_of(std::string_view("1\0mm", 4));
}

TEST_CASE("5-3 is refused and both readings are named") {
    for (const char* text : {"5-3", "5 3", "5-3\""}) {
        CAPTURE(std::string(text));
        const base::Refusal refusal = refusal_of(text);
        CHECK(refusal.reason.find("5 ft 3 in") != std::string::npos);
        CHECK(refusal.reason.find(" or as 5 in and 3 parts") != std::string::npos);
        CHECK(refusal.detail.find("5' 3\"") != std::string::npos);
    }
}

TEST_CASE("a bare number takes the unit of the system, or is refused without one") {
    CHECK(parse_length("35", UnitSystem::metric, "x").value() == millimetres(35.0));
    CHECK(parse_length("35", UnitSystem::inch, "x").value() == inches(35.0));
    CHECK(refusal_of("35", {}).reason == "The unit is missing.");
    CHECK(parse_length("35 mm", {}, "x").value() == millimetres(35.0));
}

TEST_CASE("a bare fraction in a metric shop is asked about, not read as millimetres") {
    (void)refusal_of("3/8", UnitSystem::metric);
    (void)refusal_of("1-3/8", UnitSystem::metric);
    CHECK(parse_length("3/8 in", UnitSystem::metric, "x").value() == inches(0.375));
}

TEST_CASE("zero needs no unit, anything else does") {
    CHECK(quantity::parse_length("0", std::nullopt, "offset").value() == Length{});
    CHECK(quantity::parse_length("0.0", std::nullopt, "offset").value() == Length{});
    CHECK_FALSE(quantity::parse_length("0.1", std::nullopt, "offset").ok());
}
