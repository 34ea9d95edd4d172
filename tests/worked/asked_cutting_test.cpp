// Worked by hand, asked by name: punching, shearing and notching. US tons from inch and ksi:
// F = L t S / 2. Tolerance: half of the last digit written.

#include "published/asked_rows.h"

using namespace treadle;
using namespace treadle::test;

namespace {

calc::Input::Object hole(const char* shape, const char* size, const char* size2 = nullptr) {
    calc::Input::Object in{{"shape", shape}, {"size", size}};
    if (size2 != nullptr)
        in.emplace_back("size2", size2);
    return in;
}

calc::Input::Object in_metal(calc::Input::Object in, const char* t, const char* s) {
    in.emplace_back("thickness", t);
    in.emplace_back("shear_strength", s);
    return in;
}

} // namespace

TEST_SUITE("worked") {

    TEST_CASE("hole-edge and punch-stress: punch.edge and punch.stress of shaped holes") {
        const char* edge = "punch.edge";
        const std::vector<Asked> k_rows{
            {"square 4 x 1", edge, hole("square", "1 in"), "edge", 4.0, k_mm_per_in, 1e-9},
            {"rectangle 2 (1 + 2)",
             edge,
             hole("rectangle", "1 in", "2 in"),
             "edge",
             6.0,
             k_mm_per_in,
             1e-9},
            {"its diagonal, sqrt 5",
             edge,
             hole("rectangle", "1 in", "2 in"),
             "across",
             2.23607,
             k_mm_per_in,
             0.000005},
            {"obround pi 13/16 + 2 x 5/16",
             edge,
             hole("obround", "13/16 in", "1-1/8 in"),
             "edge",
             3.1775,
             k_mm_per_in,
             0.00005},
            {"hexagon 2 sqrt 3",
             edge,
             hole("hexagon", "1 in"),
             "edge",
             3.4641,
             k_mm_per_in,
             .00005},
            {"its corners", edge, hole("hexagon", "1 in"), "across", 1.1547, k_mm_per_in, .00005},
            {"round pi / 4", edge, hole("round", "1 in"), "area", 0.7854, 645.16, 0.00005},
            {"square: 80 x 10 x 250 / 400",
             "punch.stress",
             in_metal(hole("square", "20 mm"), "10 mm", "250 MPa"),
             "stress",
             500.0,
             1.0,
             1e-6},
            {"the same square turned round: 500 x 400 / (80 x 250)",
             "punch.thickest",
             {{"shape", "square"},
              {"size", "20 mm"},
              {"shear_strength", "250 MPa"},
              {"punch_strength", "500 MPa"}},
             "thickness",
             10.0,
             1.0,
             1e-9},
        };
        CHECK(k_rows.size() == 9);
        check_and_count("worked", k_rows);
    }

    TEST_CASE("punch-free-length and punch-free-end beside Euler's column") {
        const auto punch = [](const char* d, const char* t, const char* s, const char* e) {
            return calc::Input::Object{
                {"size", d}, {"thickness", t}, {"shear_strength", s}, {"modulus", e}};
        };
        const auto metric = punch("20 mm", "10 mm", "400 MPa", "200 GPa");
        const char* name = "punch.free_length";
        const std::vector<Asked> k_rows{
            {"pi 20 / 8 x sqrt 1000", name, metric, "length", 248.36, 1.0, 0.005},
            {"half of it", name, metric, "unguided", 124.18, 1.0, 0.005},
            {"d = 1.6 t: pi / 10 x sqrt(30000 x 0.8 / 30)",
             name,
             punch("0.8 in", "0.5 in", "60 ksi", "30000 ksi"),
             "length",
             8.886,
             k_mm_per_in,
             0.0005},
        };
        CHECK(k_rows.size() == 3);
        check_and_count("worked", k_rows);
        // Independent: Euler's load pi^2 E I / (n l)^2 is S t d pi, with n = 1 for ends kept in
        // place and n = 2 for a free end. The textbook's length is the first.
        const double pi = 3.14159265358979;
        const double inertia = pi * 20.0 * 20.0 * 20.0 * 20.0 / 64.0;
        const double load = 400.0 * 10.0 * pi * 20.0;
        const auto answer = ask(name, metric);
        const double guided = figure(answer, "length");
        const double unguided = figure(answer, "unguided");
        CHECK(pi * pi * 200e3 * inertia / (guided * guided) == doctest::Approx(load));
        CHECK(pi * pi * 200e3 * inertia / (4 * unguided * unguided) == doctest::Approx(load));
        count_rows("cross-check", 2, name);
    }

    TEST_CASE("ground-careful, ground-energy and ground-sum: punch.shear_ground") {
        const auto slope = [](const char* depth, const char* rule) {
            calc::Input::Object in = in_metal(hole("round", "10 mm"), "3 mm", "400 MPa");
            in.emplace_back("shear_depth", depth);
            in.emplace_back("penetration", "0.40");
            in.emplace_back("rule", rule);
            return in;
        };
        const char* name = "punch.shear_ground";
        // Full force pi x 10 x 3 x 400 = 37.699 kN.
        const std::vector<Asked> k_rows{
            {"1.2 / 3 x 37.699", name, slope("3 mm", "energy"), "force", 15.080, 1.0, 0.0005},
            {"not under 0.6", name, slope("3 mm", "careful"), "force", 22.619, 1.0, 0.0005},
            {"1.2 / 3.2 x 37.699", name, slope("2 mm", "sum"), "force", 14.137, 1.0, 0.0005},
            {"slope under p t: no credit",
             name,
             slope("1 mm", "careful"),
             "force",
             37.699,
             1,
             .0005},
        };
        CHECK(k_rows.size() == 4);
        check_and_count("worked", k_rows);
    }

    TEST_CASE("punch.largest, punch.stripping, punch-stroke, punch-from-heel, clearance-pair") {
        const auto pair = [](const char* punch, const char* die, const char* t) {
            return calc::Input::Object{{"punch", punch}, {"die", die}, {"thickness", t}};
        };
        const std::vector<Asked> k_rows{
            {"S235: 230.7 / (pi x 10 x 0.408)",
             "punch.largest",
             {{"thickness", "10 mm"}, {"shear_strength", "408 MPa"}, {"capacity", "230.7 kN"}},
             "size",
             18.0,
             1.0,
             0.005},
            {"20 % of a rectangle's 37.5",
             "punch.stripping",
             in_metal(hole("rectangle", "1 in", "2 in"), "1/4 in", "50 ksi"),
             "stripping",
             7.5,
             k_kn_per_ton,
             1e-9},
            {"1/4 + 1/8 + 1/8",
             "punch.stroke",
             {{"thickness", "1/4 in"}, {"stripper_gap", "1/8 in"}},
             "stroke",
             0.5,
             k_mm_per_in,
             1e-9},
            {"1/2 + 1/4 + 1/8",
             "punch.stroke",
             {{"thickness", "1/2 in"}, {"stripper_gap", "1/4 in"}},
             "stroke",
             0.875,
             k_mm_per_in,
             1e-9},
            {"12 + 5 + 3",
             "punch.stroke",
             {{"thickness", "12 mm"}, {"stripper_gap", "5 mm"}, {"die_entry", "3 mm"}},
             "stroke",
             20.0,
             1.0,
             1e-9},
            {"9/16 + 1",
             "punch.from_heel",
             {{"thickness", "1/4 in"}, {"fillet", "9/16 in"}, {"die_radius", "1 in"}},
             "distance",
             1.5625,
             k_mm_per_in,
             1e-9},
            {"12 + 20",
             "punch.from_heel",
             {{"thickness", "6 mm"}, {"fillet", "12 mm"}, {"die_radius", "20 mm"}},
             "distance",
             32.0,
             1.0,
             1e-9},
            {"relieved: 1/4 + 3/4",
             "punch.from_heel",
             {{"thickness", "1/4 in"}, {"clearance_radius", "3/4 in"}},
             "distance",
             1.0,
             k_mm_per_in,
             1e-9},
            {"1/32 over 3/8",
             "punch.clearance",
             pair("13/16 in", "27/32 in", "3/8 in"),
             "share",
             8.333,
             0.01,
             0.0005},
            {"1/16 over 1/2",
             "punch.clearance",
             pair("1-1/8 in", "1-3/16 in", "1/2 in"),
             "share",
             12.5,
             0.01,
             1e-9},
        };
        CHECK(k_rows.size() == 10);
        check_and_count("worked", k_rows);
        // A tall gap is answered with a warning: common practice, no source.
        const auto tall =
            ask("punch.stroke", {{"thickness", "1/4 in"}, {"stripper_gap", "3/8 in"}});
        REQUIRE(tall.ok());
        CHECK(tall->workings.front().note.find("Warning") == 0);
        CHECK(field_of(ask("punch.clearance", pair("1 in", "1 in", "1/4 in"))) == "die");
        // Hardened stock is refused, punched or sheared.
        CHECK(field_of(ask("punch.force",
                           {{"shape", "round"},
                            {"size", "1 in"},
                            {"thickness", "1/4 in"},
                            {"material", "wear-plate"}})) == "material");
        CHECK(field_of(ask("shear.bar",
                           {{"shape", "round"}, {"size", "1 in"}, {"material", "wear-plate"}})) ==
              "material");
    }

    TEST_CASE("mitre-cut, shear-angle-mitred and shear-tube") {
        const auto flat = [](const char* angle) {
            return calc::Input::Object{{"width", "4 in"}, {"angle", angle}};
        };
        const auto tube = [](const char* outside, const char* wall, const char* s) {
            return calc::Input::Object{{"outside", outside}, {"wall", wall}, {"shear_strength", s}};
        };
        const char* mitre = "shear.mitre";
        // Counted with the factor itself.
        const std::vector<Asked> k_again{
            {"4 / cos 45", mitre, flat("45"), "cut", 5.6569, k_mm_per_in, 0.00005},
            {"4 / cos 30", mitre, flat("30"), "cut", 4.6188, k_mm_per_in, 0.00005},
            {"4 / cos 22.5", mitre, flat("22.5"), "cut", 4.3296, k_mm_per_in, 0.00005},
        };
        check_asked(k_again);
        const std::vector<Asked> k_rows{
            {"1.4375 / cos 45 x 50 / 2",
             "shear.angle",
             {{"leg_a", "3 in"},
              {"leg_b", "3 in"},
              {"thickness", "1/4 in"},
              {"shear_strength", "50 ksi"},
              {"mitre", "45"}},
             "force",
             50.82,
             k_kn_per_ton,
             0.005},
            {"pi x 1.88 x 0.12 = 0.7087; x 50 / 2",
             "shear.tube",
             tube("2 in", "0.120 in", "50 ksi"),
             "force",
             17.72,
             k_kn_per_ton,
             0.005},
            {"pi x 48 x 2 = 301.59; x 400 N",
             "shear.tube",
             tube("50 mm", "2 mm", "400 MPa"),
             "force",
             120.637,
             1.0,
             0.0005},
            {"thin: pi x 1.95 x 0.05 = 0.3063; x 60 / 2",
             "shear.tube",
             tube("2 in", "0.050 in", "60 ksi"),
             "force",
             9.189,
             k_kn_per_ton,
             0.0005},
        };
        CHECK(k_rows.size() == 4);
        check_and_count("worked", k_rows);
    }

    TEST_CASE("knife-gap and least-trim, common practice, no source") {
        const auto of = [](const char* t) { return calc::Input::Object{{"thickness", t}}; };
        const std::vector<Asked> k_rows{
            {"10 / 20", "shear.knife_gap", of("10 mm"), "least", 0.5, 1.0, 1e-12},
            {"10 / 10", "shear.knife_gap", of("10 mm"), "greatest", 1.0, 1.0, 1e-12},
            {"1/4 / 20", "shear.knife_gap", of("1/4 in"), "least", 0.0125, k_mm_per_in, 1e-12},
            {"1/2 in", "shear.trim", of("1/4 in"), "length", 0.5, k_mm_per_in, 1e-12},
            {"thicker: t", "shear.trim", of("3/4 in"), "length", 0.75, k_mm_per_in, 1e-12},
            {"12 mm: 1/2 in", "shear.trim", of("12 mm"), "length", 12.7, 1.0, 1e-12},
        };
        CHECK(k_rows.size() == 6);
        check_and_count("common-practice", k_rows);
    }

    TEST_CASE("shear-rating-thickness, shear-rating-root, shear-rating-width: shear.rating") {
        const auto pair = [](const char* t, const char* w, const char* stock) {
            return calc::Input::Object{{"thickness", t},
                                       {"width", w},
                                       {"rated_strength", "65 ksi"},
                                       {"tensile_strength", stock}};
        };
        const char* name = "shear.rating";
        const auto up = pair("1/2 in", "8 in", "80 ksi");
        const auto down = pair("1/2 in", "8 in", "45 ksi");
        const std::vector<Asked> k_rows{
            {"8 x 65 / 80", name, up, "width", 6.50, k_mm_per_in, 0.0005},
            {"0.5 x 65 / 80", name, up, "thickness", 0.4063, k_mm_per_in, 0.0005},
            {"0.5 x sqrt(65 / 80)", name, up, "thickness_root", 0.4507, k_mm_per_in, 0.0005},
            {"weaker: never above", name, down, "thickness", 0.5, k_mm_per_in, 1e-9},
            {"weaker: width stays", name, down, "width", 8.0, k_mm_per_in, 1e-9},
        };
        CHECK(k_rows.size() == 5);
        check_and_count("worked", k_rows);
        // 7/16 x 10 lies in no published pair of (1/2 x 8) and (3/8 x 12), and no pair is
        // stretched.
        CHECK(figure(ask(name, pair("1/2 in", "8 in", "65 ksi")), "width") < 10.0 * k_mm_per_in);
        CHECK(figure(ask(name, pair("3/8 in", "12 in", "65 ksi")), "thickness") <
              7.0 / 16.0 * k_mm_per_in);
    }

    TEST_CASE("notch-first-bite, notch-later-bite, vee-depth, vee-mouth, vee-cut, slot-notch") {
        const calc::Input::Object side_by_side{
            {"along", "6 in"}, {"tool", "2 in"}, {"depth", "1 in"}};
        const calc::Input::Object lapped{
            {"along", "100 mm"}, {"tool", "32 mm"}, {"overlap", "6 mm"}, {"depth", "20 mm"}};
        const calc::Input::Object fold{{"leg", "2 in"}, {"thickness", "1/4 in"}};
        const calc::Input::Object sixty{{"depth", "1 in"}, {"angle", "60"}};
        const std::vector<Asked> k_rows{
            {"2 + 2 x 1", "notch.bites", side_by_side, "first_edge", 4.0, k_mm_per_in, 1e-9},
            {"2 + 1", "notch.bites", side_by_side, "later_edge", 3.0, k_mm_per_in, 1e-9},
            {"32 + 40", "notch.bites", lapped, "first_edge", 72.0, 1.0, 1e-9},
            {"26 + 20", "notch.bites", lapped, "later_edge", 46.0, 1.0, 1e-9},
            {"2 / cos 30", "notch.vee", sixty, "edge", 2.3094, k_mm_per_in, 0.00005},
            {"2 tan 30", "notch.vee", sixty, "mouth", 1.1547, k_mm_per_in, 0.00005},
            {"2 - 1/4", "notch.vee", fold, "depth", 1.75, k_mm_per_in, 1e-9},
            {"2 x 1.75", "notch.vee", fold, "mouth", 3.5, k_mm_per_in, 1e-9},
            {"3.5 / cos 45", "notch.vee", fold, "edge", 4.9497, k_mm_per_in, 0.00005},
            {"2 x 1.5 + pi / 2",
             "notch.slot",
             {{"width", "1 in"}, {"depth", "2 in"}},
             "edge",
             4.5708,
             k_mm_per_in,
             0.00005},
            {"half round: pi / 2 x 20",
             "notch.slot",
             {{"width", "20 mm"}, {"depth", "10 mm"}},
             "edge",
             31.416,
             1.0,
             0.0005},
            {"2 x 15 + pi / 2 x 10",
             "notch.slot",
             {{"width", "10 mm"}, {"depth", "20 mm"}},
             "edge",
             45.708,
             1.0,
             0.0005},
        };
        CHECK(k_rows.size() == 12);
        check_and_count("worked", k_rows);
        // Counted with the function itself: 1 + ceil(4 / 1.75), 1 + ceil(4 / 2), 1 + ceil(68 / 26).
        const std::vector<Asked> k_again{
            {"with a lap of 1/4",
             "notch.bites",
             {{"along", "6 in"}, {"tool", "2 in"}, {"overlap", "1/4 in"}},
             "count",
             4.0,
             1.0,
             0.0},
            {"side by side", "notch.bites", side_by_side, "count", 3.0, 1.0, 0.0},
            {"metric", "notch.bites", lapped, "count", 4.0, 1.0, 0.0},
        };
        check_asked(k_again);
    }

} // TEST_SUITE
