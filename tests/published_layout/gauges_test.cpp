// Reproduces: Manufacturers' Standard Gage, US Standard Gage, American and Birmingham Wire Gage
// How read:   tables from memory; MSG 10, 16, 18, 20 also seen on an open page of sheet weights
// Tolerance:  0.0001 in, the tables' last printed digit

#include <array>

#include "published_layout/asked.h"

using namespace treadle;
using namespace treadle::test;

namespace {

double sheet(const char* gauge, const char* metal) {
    return inch("gauge.thickness", "thickness", {{"gauge", gauge}, {"metal", metal}});
}

AskedRow printed(const char* where, const char* gauge, const char* metal, double value) {
    return {k_memory, "gauge.thickness", where, sheet(gauge, metal), value, 0.0001};
}

} // namespace

TEST_CASE("gauge.thickness reproduces the tables of sheet gauges") {
    const std::array k_rows{
        printed("MSG 16", "16", "steel", 0.0598),
        printed("MSG 11", "11", "steel", 0.1196),
        printed("MSG 7", "7", "steel", 0.1793),
        printed("MSG 3", "3", "steel", 0.2391),
        printed("MSG 28", "28", "steel", 0.0149),
        printed("galvanised 16", "16", "galvanised", 0.0635),
        printed("galvanised 22", "22", "galvanised", 0.0336),
        printed("galvanised 8", "8", "galvanised", 0.1681),
        printed("galvanised 28", "28", "galvanised", 0.0187),
        printed("stainless 16", "16", "stainless", 0.0625),
        printed("stainless 11", "11", "stainless", 0.1250),
        printed("stainless 7", "7", "stainless", 0.1875),
        printed("stainless 26", "26", "stainless", 0.0187),
        printed("B&S 16", "16", "aluminium", 0.0508),
        printed("B&S 11", "11", "aluminium", 0.0907),
        printed("B&S 7", "7", "aluminium", 0.1443),
        printed("B&S 3", "3", "aluminium", 0.2294),
        printed("B&S 28", "28", "aluminium", 0.0126),
        printed("tube wall 16", "16", "tube", 0.065),
        printed("tube wall 11", "11", "tube", 0.120),
        printed("tube wall 7, used for 3/16", "7", "tube", 0.188),
    };
    CHECK(k_rows.size() == 21);
    check_and_count(k_rows);
}

TEST_CASE("gauge-steel, gauge-galvanised: what follows from the tables") {
    const double steel = sheet("10", "steel");
    const std::array k_rows{
        // 10 ga sheet weighs 5.625 lb/ft2: an open page of sheet weights; 41.82 lb/ft2 per inch
        AskedRow{k_published, "gauge.thickness", "10 ga lb/ft2", steel * 41.82, 5.625, 0.003},
        AskedRow{k_published, "gauge.thickness", "MSG 10, same page", steel, 0.1345, 0.0001},
        AskedRow{k_published,
                 "gauge.thickness",
                 "MSG 18, same page",
                 sheet("18", "steel"),
                 0.0478,
                 0.0001},
        AskedRow{k_published,
                 "gauge.thickness",
                 "MSG 20, same page",
                 sheet("20", "steel"),
                 0.0359,
                 0.0001},
        // 2.5 oz / (16 x 41.82) = 0.003736 in of zinc, whatever the gauge
        AskedRow{k_worked,
                 "gauge.thickness",
                 "zinc, 8",
                 sheet("8", "galvanised") - sheet("8", "steel"),
                 0.0037,
                 0.00005},
        AskedRow{k_worked,
                 "gauge.thickness",
                 "zinc, 28",
                 sheet("28", "galvanised") - sheet("28", "steel"),
                 0.0037,
                 0.00005},
        // 0.1250 / 0.1196 = 1.045
        AskedRow{k_worked,
                 "gauge.thickness",
                 "11 ga stainless to steel",
                 sheet("11", "stainless") / sheet("11", "steel"),
                 1.045,
                 0.001},
        // 160 / 669.12 x 25.4 = 6.073 mm
        AskedRow{
            k_worked, "gauge.thickness", "MSG 3 in mm", sheet("3", "steel") * 25.4, 6.073, 0.003},
    };
    CHECK(k_rows.size() == 8);
    check_and_count(k_rows);
}

TEST_CASE("16 gauge without a metal is five thicknesses, and is refused") {
    const std::array k_rows{
        AskedRow{k_worked,
                 "gauge.thickness",
                 "no metal",
                 refused("gauge.thickness", "metal", {{"gauge", "16"}}),
                 1.0,
                 0.0},
    };
    CHECK(k_rows.size() == 1);
    check_and_count(k_rows);
    // The same number, 0.0508 to 0.0635 in in sheet and 0.065 in in a tube: it must stay refused.
    const std::array k_differ{
        AskedRow{k_differs,
                 "gauge.thickness",
                 "B&S against galvanised",
                 sheet("16", "galvanised") - sheet("16", "aluminium"),
                 0.0127,
                 0.0002},
        AskedRow{k_differs,
                 "gauge.thickness",
                 "tube against steel sheet",
                 sheet("16", "tube") - sheet("16", "steel"),
                 0.0052,
                 0.0001},
    };
    CHECK(k_differ.size() == 2);
    check_and_count(k_differ);
}
