#include <doctest/doctest.h>

#include <filesystem>
#include <fstream>
#include <iterator>
#include <set>
#include <string>

#include "catalog/rows.h"

using treadle::catalog::Json;

namespace {

std::string read_text(const std::filesystem::path& path) {
    std::ifstream file(path, std::ios::binary);
    return {std::istreambuf_iterator<char>(file), {}};
}

/// All text that may name a source: the catalogues, and the cards in the core.
std::string everything_that_names_sources() {
    const std::filesystem::path root = TREADLE_SOURCE_DIR;
    std::string text;
    for (const char* folder : {"assets/catalog", "assets/demo", "core"}) {
        if (!std::filesystem::exists(root / folder))
            continue;
        for (const auto& entry : std::filesystem::recursive_directory_iterator(root / folder)) {
            const std::string kind = entry.path().extension().string();
            if (kind == ".cpp" || kind == ".h" || kind == ".json")
                text += read_text(entry.path());
        }
    }
    return text;
}

} // namespace

TEST_CASE("every source says what it is and how it was read") {
    const Json sources = treadle::catalog::read("sources.json");
    CHECK(sources.size() >= 30);
    for (const auto& [key, source] : sources.items()) {
        CAPTURE(key);
        CHECK_FALSE(source.at("title").get<std::string>().empty());
        for (const char* field : {"edition", "year", "body"})
            CHECK(source.at(field).is_string());
        const std::string how = source.at("how_read").get<std::string>();
        bool known = false;
        for (const char* start :
             {"read", "quoted by ", "from memory", "derived", "common practice, no source"})
            known = known || how.rfind(start, 0) == 0;
        CAPTURE(how);
        CHECK(known);
    }
}

TEST_CASE("every source is used by a row or by a formula card") {
    const std::string text = everything_that_names_sources();
    REQUIRE(text.size() > 50000);
    const Json sources = treadle::catalog::read("sources.json");
    for (const auto& [key, source] : sources.items()) {
        CAPTURE(key);
        CHECK(text.find('"' + key + '"') != std::string::npos);
    }
}
