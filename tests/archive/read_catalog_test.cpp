// The catalogue inside the program, and faults in one: read_catalog.cpp.

#include "archive/archive.h"

#include <doctest/doctest.h>

using namespace treadle;

TEST_CASE("the catalogue in the program is whole") {
    const auto catalog = archive::read_catalog();
    REQUIRE_MESSAGE(catalog.ok(), catalog.refusal().field);
    for (const char* id : {"A36", "A572-50", "304", "5052-H32", "6061-T6", "S235JR", "S355J2"}) {
        CAPTURE(id);
        CHECK(catalog->grades.find(id) != nullptr);
    }
    CHECK(catalog->sections.find("L3x3x1/4") != nullptr);
}

TEST_CASE("a row of grades is read in the units its keys name") {
    const auto grades = archive::read_grades(R"([{"id": "X", "name": "X", "standard": "none",
        "family": "carbon-steel", "bands": [{"up_to_mm": 25.4, "up_to_as_printed": "1 in",
        "yield_minimum_MPa": 250, "tensile_minimum_MPa": 400, "tensile_upper_MPa": 550,
        "as_printed": "250 / 400-550 MPa"}], "shear_ratio": 0.8, "elongation_pct": 20,
        "density_kg_per_m3": 7850, "modulus_GPa": 200, "bend_group": "", "air_bend_share": 0.16,
        "source": "test", "evidence": "invented"}])");
    REQUIRE_MESSAGE(grades.ok(), grades.refusal().field);
    REQUIRE(grades->rows.size() == 1);
    const Grade& grade = grades->rows[0];
    CHECK(grade.bands[0].up_to == inches(1.0));
    CHECK(quantity::to_megapascals(grade.bands[0].tensile_upper) == 550.0);
    CHECK(quantity::to_megapascals(grade.modulus) == 200000.0);
    CHECK(quantity::to_kilograms_per_cubic_metre(grade.density) == doctest::Approx(7850.0));
    CHECK(grade.evidence == base::Evidence::invented);
}

TEST_CASE("a fault in a catalogue is said at its row") {
    const auto section = archive::read_sections(
        R"([{"designation": "R", "shape": "round", "width_mm": -1, "as_printed": "",
             "source": "test", "evidence": "invented"}])");
    REQUIRE_FALSE(section.ok());
    CHECK(section.refusal().field.rfind("[0]", 0) == 0);
    const auto unknown = archive::read_sections(R"([{"designation": "R", "colour": "red"}])");
    REQUIRE_FALSE(unknown.ok());
    CHECK_FALSE(archive::read_grades("{}").ok());
    CHECK_FALSE(archive::read_grades("[{}]").ok());
    CHECK_FALSE(archive::read_grades("").ok());
}

TEST_CASE("the cautions in the program are whole, and a fault in a row is said") {
    CHECK(archive::read_catalog()->cautions.size() > 20);
    const auto cautions = [](const std::string& rows) {
        return archive::read_cautions(
            R"({"format": "treadle-cautions", "version": 1, "cautions": [)" + rows + "]}");
    };
    const auto sound = cautions(R"({"id": "a", "words": "Look.", "works": ["bend"],
        "metals": ["aluminium"], "anchor": "29 CFR 1910.212", "evidence": "from-memory"})");
    REQUIRE(sound.ok());
    CHECK(sound->front().works.front() == equipment::Work::bend);
    CHECK(cautions(R"({"id": "a", "words": "Look.", "works": ["dance"]})").refusal().field ==
          "cautions[0].works[0]");
    CHECK(cautions(R"({"id": "a"})").refusal().field == "cautions[0].words");
    CHECK(cautions(R"({"id": "a", "words": "x"}, {"id": "a", "words": "y"})").refusal().field ==
          "cautions[1].id");
    CHECK_FALSE(archive::read_cautions("").ok());
    CHECK_FALSE(archive::read_cautions(R"({"format": "x", "version": 1, "cautions": []})").ok());
}
