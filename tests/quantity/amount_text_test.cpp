#include "quantity/amount_text.h"

#include <doctest/doctest.h>

#include <string>

using namespace treadle::quantity;

TEST_CASE("typographic signs become the plain ones") {
    const auto plain = [](const char* text) { return plain_text(text, "x").value(); };
    CHECK(plain("4’ 6″") == "4' 6\"");
    CHECK(plain("4′–6“") == "4'-6\"");
    CHECK(plain("1⁄2 MM") == "1/2 mm");
    CHECK(plain("1½”") == "1 1/2 \"");
    CHECK(plain("½") == "1/2");
    CHECK(plain("12\u00A0mm") == "12 mm");
    CHECK(plain("90°") == "90 deg");
    CHECK(plain("N/mm²") == "n/mm2");
}

TEST_CASE("text that is no figure is refused with its field") {
    for (const std::string& text : {std::string(),
                                    std::string("  "),
                                    std::string(65, '1'),
                                    std::string("1\n2"),
                                    std::string("十"),
                                    std::string("\xFF"),
                                    std::string("1\0", 2)}) {
        const auto refused = plain_text(text, "parts[2].length");
        REQUIRE_FALSE(refused);
        CHECK(refused.refusal().field == "parts[2].length");
        CHECK_FALSE(refused.refusal().reason.empty());
    }
    CHECK(plain_text(std::string(64, '1'), "x"));
}

TEST_CASE("amounts are decimals, fractions, or both joined") {
    const auto amount = [](const char* text) { return AmountReader(text).take_amount().value(); };
    CHECK(amount("12.5").value == 12.5);
    CHECK(amount("12,5").value == 12.5);
    CHECK(amount("0,125").value == 0.125);
    CHECK(amount("3/8").value == 0.375);
    CHECK(amount("1-3/8").value == 1.375);
    CHECK(amount("1 - 3 / 8").value == 1.375);
    CHECK(amount("1e-2").value == 0.01);
    CHECK(amount("12").whole);
    CHECK_FALSE(amount("12.0").whole);
    CHECK(amount("1 1/2").fraction);
}

TEST_CASE("amounts that mean two things or nothing leave a reason") {
    for (const char* text : {"1,250",
                             "1,250,000",
                             "1.2.3",
                             "1/0",
                             "1-3/0",
                             "1.5/2",
                             "1/2.5",
                             "1 9/8",
                             "/2",
                             "",
                             "-1",
                             "1e999",
                             "3/"}) {
        CAPTURE(std::string(text));
        AmountReader reader(text);
        CHECK_FALSE(reader.take_amount());
        CHECK(std::string(reader.fault()) != "");
    }
}
