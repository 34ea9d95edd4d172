#include "section/cards.h"
#include "section/section.h"

#include <doctest/doctest.h>

#include <string>

using namespace treadle;

TEST_CASE("mass-per-length: the working uses the symbols of its card and the figure itself") {
    section::Section bar;
    bar.shape = section::Shape::channel;
    bar.width = inches(1.41);
    bar.height = inches(3);
    bar.thickness = inches(0.17);
    bar.flange_thickness = inches(0.273);
    const auto density = quantity::kilograms_per_cubic_metre(7850);
    const quantity::Working working = mass_per_length_working(bar, density);
    REQUIRE(working.card == &section::mass_card());
    CHECK(std::string(working.card->id) == "mass-per-length");
    for (const quantity::WorkingValue& value : working.values) {
        bool known = false;
        for (const base::CardSymbol& symbol : working.card->symbols)
            known = known || value.symbol == symbol.symbol;
        CAPTURE(value.symbol);
        CHECK(known);
    }
    REQUIRE(std::holds_alternative<MassPerLength>(working.result.value));
    CHECK(std::get<MassPerLength>(working.result.value) == mass_per_length(bar, density));
    CHECK(working.note.find("Mean flange") == 0);
}

TEST_CASE("every card of the room is listed") {
    REQUIRE(section::cards().size() == 1);
    CHECK(section::cards()[0] == &section::mass_card());
}
