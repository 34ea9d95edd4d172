// The demo files as the tests of this room take them.

#pragma once

#include <doctest/doctest.h>

#include <fstream>
#include <iterator>
#include <string>

namespace treadle::archive_test {

inline std::string demo(const char* name) {
    std::ifstream file(std::string(TREADLE_SOURCE_DIR "/assets/demo/") + name, std::ios::binary);
    std::string bytes{std::istreambuf_iterator<char>(file), {}};
    REQUIRE(bytes.size() > 1000);
    return bytes;
}

/// The bytes with one piece of text put in the place of another, which must be there.
inline std::string replaced(std::string bytes, const std::string& what, const std::string& by) {
    const std::size_t at = bytes.find(what);
    REQUIRE_MESSAGE(at != std::string::npos, what);
    return bytes.replace(at, what.size(), by);
}

} // namespace treadle::archive_test
