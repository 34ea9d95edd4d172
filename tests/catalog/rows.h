// The catalogues as JSON, and numbers as tables print them.

#pragma once

#include <doctest/doctest.h>
#include <nlohmann/json.hpp>

#include <algorithm>
#include <cstddef>
#include <string>
#include <vector>

#include "assets/embedded.h"

namespace treadle::catalog {

using Json = nlohmann::json;

inline Json read(const char* path) {
    const auto bytes = assets::embedded(path);
    REQUIRE(bytes.has_value());
    return Json::parse(*bytes);
}

/// "1-3/8", "1/4", "0.230", "12": the value; a text that is none of these fails the test.
inline double printed_number(const std::string& text) {
    const std::size_t slash = text.find('/');
    if (slash == std::string::npos)
        return std::stod(text);
    const std::size_t dash = text.find('-');
    const std::size_t start = dash == std::string::npos ? 0 : dash + 1;
    const double whole = dash == std::string::npos ? 0.0 : std::stod(text.substr(0, dash));
    return whole + std::stod(text.substr(start, slash - start)) / std::stod(text.substr(slash + 1));
}

/// "3 x 3 x 1/4 in" in millimetres, in the order printed.
inline std::vector<double> printed_lengths_mm(const std::string& text) {
    const std::size_t space = text.rfind(' ');
    REQUIRE(space != std::string::npos);
    const std::string unit = text.substr(space + 1);
    REQUIRE((unit == "in" || unit == "mm"));
    const double ratio = unit == "in" ? 25.4 : 1.0;
    const std::string body = text.substr(0, space);
    std::vector<double> out;
    for (std::size_t at = 0; at <= body.size();) {
        const std::size_t end = std::min(body.find(" x ", at), body.size());
        out.push_back(printed_number(body.substr(at, end - at)) * ratio);
        at = end + 3;
    }
    return out;
}

/// "4.90 lb/ft" or "3.77 kg/m" in kilograms per metre.
inline double printed_mass(const std::string& text) {
    const std::size_t space = text.find(' ');
    REQUIRE(space != std::string::npos);
    const std::string unit = text.substr(space + 1);
    REQUIRE((unit == "lb/ft" || unit == "kg/m"));
    const double value = printed_number(text.substr(0, space));
    return unit == "lb/ft" ? value * 0.45359237 / 0.3048 : value;
}

inline void check_source_and_evidence(const Json& row, const Json& sources) {
    CHECK(sources.contains(row.at("source").get<std::string>()));
    const std::string evidence = row.at("evidence").get<std::string>();
    CHECK((evidence == "published" || evidence == "common-practice" || evidence == "from-memory"));
}

} // namespace treadle::catalog
