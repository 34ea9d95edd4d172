// Foreign bytes are refused at their place and with a reason: json_tree.cpp, json_reader.cpp.

#include "archive/archive.h"
#include "archive/demo_files.h"

#include <doctest/doctest.h>

using namespace treadle;
using archive_test::demo;
using archive_test::replaced;

namespace {

base::Refusal refusal_of(const std::string& bytes) {
    const auto file = archive::read_file(bytes);
    if (file.ok()) {
        FAIL_CHECK("was read: " << bytes.substr(0, 200));
        return {};
    }
    CHECK_FALSE(file.refusal().field.empty());
    CHECK_FALSE(file.refusal().reason.empty());
    return file.refusal();
}

bool says(const base::Refusal& refusal, const char* words) {
    return (refusal.reason + " " + refusal.detail).find(words) != std::string::npos;
}

/// A job with one part whose members can be spoilt.
std::string small(const std::string& part_end = "", const std::string& operations = "") {
    return R"({"format": "treadle-job", "version": 1, "units": "inch", "parts": [{"id": "a", )"
           R"("mark": "A", "grade": "A36", "section": {"shape": "flat", "width": "2 in", )"
           R"("thickness": "1/4 in"}, "length": "10 in", "operations": [)" +
           operations + "]" + part_end + "}]}";
}

} // namespace

TEST_CASE("the small job itself is read") { CHECK(archive::read_file(small()).ok()); }

TEST_CASE("a newer version is said to be newer, whatever else it holds") {
    const auto refusal = refusal_of(
        R"({"format": "treadle-job", "version": 99, "units": "cubits", "parts": [{"new": 1}]})");
    CHECK(refusal.field == "version");
    CHECK(says(refusal, "newer Treadle"));
    CHECK(refusal_of(R"({"format": "treadle-job", "version": 0})").field == "version");
    CHECK(refusal_of(R"({"format": "treadle-job", "version": 1.5})").field == "version");
    CHECK(refusal_of(R"({"format": "treadle-job", "version": "1"})").field == "version");
    CHECK(refusal_of(R"({"format": "treadle-job"})").field == "version");
}

TEST_CASE("another format is refused by its name") {
    CHECK(refusal_of(R"({"format": "drawing", "version": 1})").field == "format");
    CHECK(refusal_of(R"({"version": 1})").field == "format");
    CHECK(refusal_of(R"([1, 2])").field == "file");
    CHECK(refusal_of(R"("text")").field == "file");
    CHECK(refusal_of("null").field == "file");
}

TEST_CASE("what is no JSON is refused with the line") {
    CHECK(says(refusal_of(""), "nothing"));
    CHECK(says(refusal_of(" \n\t"), "nothing"));
    CHECK(says(refusal_of("{\n  \"format\": treadle}"), "line 2"));
    CHECK(says(refusal_of("\x7F"
                          "ELF"),
               "not readable"));
    CHECK(says(refusal_of("{\"format\": \"\xC3\x28\"}"), "line 1"));
    CHECK(says(refusal_of("{\"format\": \"\xFF\xFE\"}"), "UTF-8"));
}

TEST_CASE("a file that was cut short is refused wherever the cut is") {
    const std::string whole = demo("demo-metric.json");
    const std::size_t end = whole.rfind('}');
    for (std::size_t size = 1; size < end; size += 37) {
        CAPTURE(size);
        refusal_of(whole.substr(0, size));
    }
    CHECK(says(refusal_of(whole.substr(0, whole.find("\"parts\": ["))), "cut short"));
}

TEST_CASE("an enormous file is refused unread") {
    CHECK(says(refusal_of(std::string(archive::k_largest_file + 1, ' ')), "larger"));
    std::string many = R"({"format": "treadle-job", "version": 1, "units": "inch", "parts": [)";
    for (int i = 0; i < 1'100'000; ++i)
        many += "0,";
    CHECK(says(refusal_of(many + "0]}"), "more values"));
    std::string wide = "{";
    for (int i = 0; i < 600; ++i)
        wide += "\"k" + std::to_string(i) + "\": 0,";
    CHECK(says(refusal_of(wide + "\"z\": 0}"), "more entries"));
}

TEST_CASE("deep nesting is refused, not followed") {
    const std::string open(200'000, '[');
    CHECK(says(refusal_of(open), "nested too deep"));
    CHECK(says(refusal_of(std::string(33, '[') + std::string(33, ']')), "nested too deep"));
}

TEST_CASE("not a number and infinity are refused in every spelling") {
    for (const char* bad : {"NaN", "Infinity", "-Infinity", "1e999", "nan"}) {
        CAPTURE(bad);
        refusal_of(small(std::string(R"(, "count": )") + bad));
    }
    for (const char* bad : {"nan in", "inf in", "1e999 in", "-inf mm", "Infinity mm"}) {
        CAPTURE(bad);
        const auto refusal = refusal_of(
            replaced(small(), R"("length": "10 in")", std::string(R"("length": ")") + bad + "\""));
        CHECK(refusal.field == "parts[0].length");
    }
}

TEST_CASE("a quantity needs its unit") {
    const auto number = refusal_of(replaced(small(), R"("10 in")", "10"));
    CHECK(number.field == "parts[0].length");
    CHECK(says(number, "unit"));
    CHECK(refusal_of(replaced(small(), R"("10 in")", R"("10")")).field == "parts[0].length");
    CHECK(refusal_of(replaced(small(), R"("10 in")", R"("10 kN")")).field == "parts[0].length");
    CHECK(refusal_of(replaced(small(), R"("10 in")", "null")).field == "parts[0].length");
    CHECK(refusal_of(replaced(small(), R"("10 in")", R"("-10 in")")).field == "parts[0].length");
    CHECK(refusal_of(replaced(small(), R"("10 in")", R"("0 in")")).field == "parts[0].length");
}

TEST_CASE("an entry that is not known is refused by its name, at every level") {
    CHECK(refusal_of(small(R"(, "colour": "red")")).field == "parts[0].colour");
    CHECK(refusal_of(replaced(small(), R"("units")", R"("extra": 1, "units")")).field == "extra");
    CHECK(refusal_of(replaced(small(), R"("shape": "flat")", R"("shape": "flat", "leg_a": "1 in")"))
              .field == "parts[0].section.leg_a");
    CHECK(refusal_of(small("", R"({"do": "cut", "angle": "3 deg"})")).field ==
          "parts[0].operations[0].angle");
    CHECK(refusal_of(replaced(demo("demo-inch.json"), R"("throat")", R"("troat")")).field ==
          "shop.machine.stations[0].troat");
}

TEST_CASE("what is said twice is refused") {
    CHECK(refusal_of(small(R"(, "mark": "B")")).field == "parts[0].mark");
    CHECK(refusal_of(replaced(small(), R"("units")", R"("version": 1, "units")")).field ==
          "version");
    CHECK(refusal_of(small("", R"({"do": "cut", "do": "punch"})")).field ==
          "parts[0].operations[0].do");
}

TEST_CASE("a fault deep inside is found by its way") {
    const std::string holes = R"({"do": "cut"}, {"do": "cut"}, {"do": "punch", "hole": {"shape": )"
                              R"("round", "size": "SIZE"}, "at": {"x": "2 in", "y": "1 in"}})";
    CHECK(archive::read_file(small("", replaced(holes, "SIZE", "1/2 in"))).ok());
    for (const char* bad : {"-1/2 in", "0 in", "wide", "", "1/0 in", "0x10 in"}) {
        CAPTURE(bad);
        CHECK(refusal_of(small("", replaced(holes, "SIZE", bad))).field ==
              "parts[0].operations[2].hole.size");
    }
    const std::string slot = R"({"do": "punch", "hole": {"shape": "obround", "size": "1 in", )"
                             R"("length": "1/2 in"}, "at": {"x": "2 in", "y": "1 in"}})";
    CHECK(refusal_of(small("", slot)).field == "parts[0].operations[0].hole.length");
    CHECK(refusal_of(small("", R"({"do": "polish"})")).field == "parts[0].operations[0].do");
    CHECK(refusal_of(small("", R"({"do": "punch"})")).field == "parts[0].operations[0].hole");
    CHECK(refusal_of(small("", R"("cut")")).field == "parts[0].operations[0]");
}

TEST_CASE("a section is refused at the name the file gives the size") {
    const std::string flat = R"({"shape": "flat", "width": "2 in", "thickness": "1/4 in"})";
    CHECK(refusal_of(replaced(small(),
                              flat,
                              R"({"shape": "angle", "leg_a": "2 in", "leg_b": "0 in", )"
                              R"("thickness": "1/4 in"})"))
              .field == "parts[0].section.leg_b");
    CHECK(refusal_of(replaced(small(),
                              flat,
                              R"({"shape": "pipe", "outside_diameter": "1 in", "wall": "2 in"})"))
              .field == "parts[0].section.wall");
    CHECK(refusal_of(replaced(small(), flat, R"({"shape": "rail"})")).field ==
          "parts[0].section.shape");
    CHECK(refusal_of(replaced(small(), flat, R"({"shape": "round"})")).field ==
          "parts[0].section.diameter");
}

TEST_CASE("counts and words are held to what they may be") {
    for (const char* bad : {"0", "-1", "1.5", "100001", "1e300", "\"2\"", "true", "[]"}) {
        CAPTURE(bad);
        CHECK(refusal_of(small(std::string(R"(, "count": )") + bad)).field == "parts[0].count");
    }
    CHECK(refusal_of(small(R"(, "grain": "diagonal")")).field == "parts[0].grain");
    CHECK(says(refusal_of(small(R"(, "grain": "diagonal")")), "across"));
    CHECK(refusal_of(small(R"(, "note": "\u0000")")).field == "parts[0].note");
    CHECK(refusal_of(replaced(small(), "\"units\"", "\"denominator\": 7, \"units\"")).field ==
          "denominator");
}

TEST_CASE("a shop is refused at its place as well") {
    const std::string good = demo("demo-inch.json");
    CHECK(refusal_of(replaced(good, R"("force": "50 ton")", R"("force": "-50 ton")")).field ==
          "shop.machine.stations[0].force");
    CHECK(
        refusal_of(replaced(good, R"("stations": ["table"])", R"("stations": ["bench"])")).field ==
        "shop.machine.attachments[0].stations[0]");
    CHECK(refusal_of(replaced(good, R"("force": "25 ton")", R"("force": "0 ton")")).field ==
          "shop.other_machines[0].stations[0].force");
    CHECK(refusal_of(replaced(good, R"x("Truck machine (invented)")x", "7")).field ==
          "shop.other_machines[0].name");
    CHECK(refusal_of(replaced(good, R"("least_margin": 0.1)", R"("least_margin": 1.1)")).field ==
          "shop.rules.least_margin");
}
