#include <doctest/doctest.h>

#include <fstream>
#include <iterator>
#include <string>

#include "assets/embedded.h"

using treadle::assets::embedded;

TEST_CASE("embedded bytes are the file's bytes") {
    for (const std::string path :
         {"catalog/grades.json", "catalog/sections.json", "sources.json"}) {
        CAPTURE(path);
        std::ifstream file(std::string(TREADLE_SOURCE_DIR) + "/assets/" + path, std::ios::binary);
        const std::string bytes{std::istreambuf_iterator<char>(file), {}};
        REQUIRE_FALSE(bytes.empty());
        REQUIRE(embedded(path).has_value());
        CHECK(*embedded(path) == bytes);
    }
}

TEST_CASE("a file that is not there is none, not empty") {
    CHECK_FALSE(embedded("catalog/none.json").has_value());
    CHECK_FALSE(embedded("").has_value());
}
