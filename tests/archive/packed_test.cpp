// Short bytes and back: packed.cpp, base64url.cpp, short_words.cpp.

#include "archive/base64url.h"
#include "archive/packed.h"
#include "archive/short_words.h"

#include <doctest/doctest.h>

using namespace treadle;
using archive::pack;
using archive::unpack;

namespace {

const std::string k_text = "shear, punch, notch, bend; shear, punch, notch, bend; 13/16 in";

std::string repeated(std::string_view what, std::size_t times) {
    std::string text;
    for (std::size_t i = 0; i < times; ++i)
        text += what;
    return text;
}

std::string reason_for(const std::string& packed, std::size_t most) {
    const auto read = unpack(packed, "", most);
    return read.ok() ? "read" : read.refusal().reason;
}

} // namespace

TEST_CASE("what was packed comes back, with a dictionary and without") {
    for (const std::string& text :
         {std::string(), std::string(1, '\0'), k_text, repeated(k_text, 3000)})
        for (const std::string& dictionary : {std::string(), k_text, repeated("abc", 9000)}) {
            const auto back = unpack(pack(text, dictionary), dictionary, text.size());
            REQUIRE(back.ok());
            CHECK(*back == text);
        }
}

TEST_CASE("what the dictionary says is hardly sent") {
    CHECK(pack(k_text, k_text).size() < 10);
    CHECK(pack(k_text, "").size() > 30);
}

TEST_CASE("RFC 1951's own stored and fixed blocks are read") {
    // 3.2.4: final block, stored, LEN 3, its complement, three bytes.
    CHECK(*unpack(std::string("\x01\x03\x00\xFC\xFF"
                              "abc",
                              8),
                  "",
                  3) == "abc");
    // 3.2.6: final block, fixed codes; 'a' is 10010001, the end of the block 0000000.
    CHECK(*unpack(std::string("\x4B\x04\x00", 3), "", 1) == "a");
}

TEST_CASE("a stream that is cut short, followed by something or no stream is refused") {
    const std::string packed = pack(k_text, "");
    for (std::size_t size = 0; size < packed.size(); ++size)
        CHECK(reason_for(packed.substr(0, size), 1000) ==
              "This was cut short or changed on the way.");
    CHECK(reason_for(packed + "x", 1000) == "This was cut short or changed on the way.");
    CHECK(reason_for("\x07", 1000) == "This was cut short or changed on the way.");
}

TEST_CASE("a stream that swells is refused before it has") {
    const std::string bomb = pack(std::string(50u * 1024u * 1024u, 'x'), "");
    CHECK(bomb.size() < 64u * 1024u);
    CHECK(reason_for(bomb, 1024) ==
          "What is packed in this is larger than anything that is sent this way.");
    CHECK(reason_for(pack(std::string(1024, 'x'), ""), 1024) == "read");
    CHECK(reason_for(pack(std::string(1025, 'x'), ""), 1024) != "read");
}

// RFC 1950, section 8.2, by hand: 1 + 97 + 98 + 99 = 295, and 98 + 196 + 295 = 589.
TEST_CASE("the sum is Adler-32") {
    CHECK(archive::check_sum("") == 1);
    CHECK(archive::check_sum("abc") == 0x024D0127U);
}

// RFC 4648, section 10, without the padding.
TEST_CASE("base64url writes the RFC's vectors") {
    const char* const texts[] = {"", "f", "fo", "foo", "foob", "fooba", "foobar"};
    const char* const letters[] = {"", "Zg", "Zm8", "Zm9v", "Zm9vYg", "Zm9vYmE", "Zm9vYmFy"};
    for (std::size_t i = 0; i < 7; ++i) {
        CHECK(archive::to_base64url(texts[i]) == letters[i]);
        CHECK(archive::from_base64url(letters[i]) == texts[i]);
    }
    CHECK(archive::to_base64url("\xFB\xEF\xFF") == "--__");
}

TEST_CASE("base64url reads one text for the same bytes and no other letters") {
    for (const char* const text : {"Z", "Zh", "Zm9", "Zm9v ", "Zg==", "Zm+v", "Zm/v"}) {
        CAPTURE(text);
        CHECK_FALSE(archive::from_base64url(text).has_value());
    }
}

TEST_CASE(
    "short words come back, the longest is taken, and bytes that stand for none are refused") {
    const std::vector<std::string> words{"\"shape\":", "\"shape\":\"plate\"", " in"};
    const std::string json = R"({"shape":"plate","a":"1 in","shape":"flat"})";
    const auto text = archive::shortened(json, words);
    REQUIRE(text.ok());
    CHECK(*text == std::string("{\x01,\"a\":\"1\x02\",") + std::string(1, '\0') + "\"flat\"}");
    CHECK(*archive::lengthened(*text, words, json.size()) == json);
    CHECK_FALSE(archive::lengthened(*text, words, json.size() - 1).ok());
    CHECK_FALSE(archive::lengthened("\x03", words, 100).ok());
    CHECK_FALSE(archive::lengthened("\xF5", words, 100).ok());
    CHECK_FALSE(archive::shortened("a\x01", words).ok());
    CHECK_FALSE(archive::shortened("a\xFF", words).ok());
}
