// Worked by hand from F = L t S and F = A S; the arithmetic stands in each row.
// US tons from inch and ksi: F = L t S / 2. Tolerance: half of the last digit written, or 0.1 %.

#include "process/die_clearance.h"
#include "process/notch.h"
#include "process/punch.h"
#include "process/shear.h"

#include <array>

#include "evidence_rows.h"
#include "published/rows.h"

using namespace treadle;
using namespace treadle::test;
using geometry::HoleShape;
using geometry::NotchPlace;
using geometry::NotchShape;

namespace {

double punch_tons(HoleShape shape, double size, double size2, double t, double s) {
    return us_tons_of(
        process::punch_force({{shape, inches(size), inches(size2)}, inches(t), ksi(s)}));
}

double flat_tons(double w, double t, double s, std::optional<Angle> rake = {}) {
    return us_tons_of(process::flat_shear_force({inches(w), inches(t), ksi(s), rake, 1.0}));
}

double angle_tons(double leg, double t, double s) {
    return us_tons_of(process::angle_shear_force({inches(leg), inches(leg), inches(t), ksi(s)}));
}

double notch_tons(geometry::NotchOutline notch, double t, double s) {
    return us_tons_of(process::notch_force({notch, inches(t), ksi(s)}));
}

geometry::NotchOutline rectangle(NotchPlace place, Length w, Length d) {
    return {NotchShape::rectangle, place, w, d, {}};
}

geometry::NotchOutline vee(double depth_in, double angle_deg) {
    return {NotchShape::vee, NotchPlace::edge, {}, inches(depth_in), degrees(angle_deg)};
}

} // namespace

TEST_SUITE("worked") {

    TEST_CASE("punch-force of the common trio and of shaped holes") {
        // The trio itself (1-1/8 x 1/2, 1-1/4 x 3/8, 2-1/4 x 1/4) is common practice, no source.
        const HoleShape round = HoleShape::round;
        const std::array k_rows{
            Row{"pi x 1.125 x 0.500 x 50 / 2", punch_tons(round, 1.125, 0, 0.5, 50), 44.18, 0.005},
            Row{"pi x 1.250 x 0.375 x 50 / 2", punch_tons(round, 1.25, 0, 0.375, 50), 36.82, 0.005},
            Row{"pi x 2.250 x 0.250 x 50 / 2", punch_tons(round, 2.25, 0, 0.25, 50), 44.18, 0.005},
            Row{"the first with 0.80 x 65 = 52",
                punch_tons(round, 1.125, 0, 0.5, 52),
                45.95,
                0.005},
            Row{"the second", punch_tons(round, 1.25, 0, 0.375, 52), 38.29, 0.005},
            Row{"the third", punch_tons(round, 2.25, 0, 0.25, 52), 45.95, 0.005},
            Row{"the first with 0.75 x 65 = 48.75",
                punch_tons(round, 1.125, 0, 0.5, 48.75),
                43.07,
                0.005},
            Row{"the second", punch_tons(round, 1.25, 0, 0.375, 48.75), 35.90, 0.005},
            Row{"the third", punch_tons(round, 2.25, 0, 0.25, 48.75), 43.07, 0.005},
            Row{"square: 4 x 1 x 0.25 x 50 / 2",
                punch_tons(HoleShape::square, 1, 0, 0.25, 50),
                25.0,
                1e-9},
            Row{"rectangle: 2 (1 + 2) x 0.25 x 50 / 2",
                punch_tons(HoleShape::rectangle, 1, 2, 0.25, 50),
                37.5,
                1e-9},
            Row{"obround: pi 13/16 + 2 x 5/16 = 3.1775; x 0.375 x 52 / 2",
                punch_tons(HoleShape::obround, 0.8125, 1.125, 0.375, 52),
                30.98,
                0.005},
            Row{"hexagon: 2 sqrt 3 = 3.4641; x 0.25 x 50 / 2",
                punch_tons(HoleShape::hexagon, 1, 0, 0.25, 50),
                21.65,
                0.005},
            Row{"perimeter 5: x 0.25 x 50 / 2",
                punch_tons(HoleShape::perimeter, 5, 0, 0.25, 50),
                31.25,
                1e-9},
            Row{"S235, EN 10025-2 strongest 510: pi x 18 x 10 x 408 / 1000 kN",
                kilonewtons_of(process::punch_force(
                    {{round, millimetres(18), {}}, millimetres(10), megapascals(0.8 * 510)})),
                230.7,
                0.05},
        };
        CHECK(k_rows.size() == 15);
        check_rows(k_rows);
        count_rows("worked", 15, "punch.force");
    }

    TEST_CASE("punch-largest, punch-smallest and punch-stripping") {
        const std::array k_rows{
            Row{"d = 50 x 2 / (pi x 0.375 x 60)",
                inches_of(process::largest_round_hole({inches(0.375), ksi(60.0), us_tons(50.0)})),
                1.4147,
                0.00005},
            Row{"d = 4 x 60 x 0.5 / 240",
                inches_of(process::smallest_hole({inches(0.5), ksi(60.0), ksi(240.0)})),
                0.500,
                1e-9},
            Row{"d = 4 x 64 x 0.5 / 180 (d/t 1.42)",
                inches_of(process::smallest_hole({inches(0.5), ksi(64.0), ksi(180.0)})),
                0.7111,
                0.00005},
            Row{"soft metal: 4 x 20 x 0.5 / 180 = 0.222, but not under t",
                inches_of(process::smallest_hole({inches(0.5), ksi(20.0), ksi(180.0)})),
                0.5,
                1e-9},
            Row{"20 % of 25 US ton",
                us_tons_of(process::stripping_force(
                    {{HoleShape::square, inches(1.0), {}}, inches(0.25), ksi(50.0)})),
                5.0,
                1e-9},
        };
        CHECK(k_rows.size() == 5);
        check_rows(k_rows);
        count_rows("worked", 1, "punch.largest");
        count_rows("worked", 3, "punch.smallest");
        count_rows("worked", 1, "punch.stripping");
    }

    TEST_CASE("die-clearance by the fixed steps") {
        // Common practice, no source.
        const auto die = [](double punch, double t) {
            const auto clearance = process::die_clearance(inches(t), nullptr);
            return clearance.ok() ? punch + quantity::to_inches(clearance->total) : NAN;
        };
        const auto share = [](double t) {
            const auto clearance = process::die_clearance(inches(t), nullptr);
            return clearance.ok() ? 100.0 * clearance->share : NAN;
        };
        const std::array k_rows{
            Row{"punch 13/16, t 3/8: die 27/32", die(13.0 / 16, 0.375), 27.0 / 32, 1e-12},
            Row{"punch 1-1/8, t 1/2: die 1-3/16", die(1.125, 0.5), 1.1875, 1e-12},
            Row{"1/32 over 3/8, per cent", share(0.375), 8.3, 0.05},
            Row{"1/16 over 1/2, per cent", share(0.5), 12.5, 0.05},
            Row{"1/32 over 3/16, per cent", share(0.1875), 16.7, 0.05},
            Row{"1/16 over 1 in, per cent", share(1.0), 6.25, 0.05},
        };
        CHECK(k_rows.size() == 6);
        check_rows(k_rows);
        count_rows("common-practice", 6, "punch.die");
    }

    TEST_CASE("shear-flat, shear-bar and shear-angle") {
        using process::BarShape;
        const std::array k_rows{
            Row{"4 x 0.5 x 50 / 2", flat_tons(4, 0.5, 50), 50.0, 1e-9},
            Row{"wide, rake 3: 50 x 0.5^2 / (2 tan 3) / 2",
                flat_tons(48, 0.5, 50, degrees(3)),
                59.63,
                0.06},
            Row{"2 x 1/2, rake 3: A = 1 - 4 tan 3 / 2 = 0.8952; x 50 / 2",
                flat_tons(2, 0.5, 50, degrees(3)),
                22.38,
                0.005},
            Row{"350 x 10^2 / (2 tan 2) N",
                kilonewtons_of(process::flat_shear_force(
                    {millimetres(1000), millimetres(10), megapascals(350), degrees(2), 1.0})),
                501.1,
                0.5},
            Row{"round 1 in: 0.7854 x 60 / 2",
                us_tons_of(process::bar_shear_force({BarShape::round, inches(1.0), ksi(60.0)})),
                23.56,
                0.005},
            Row{"square 1 in: 60 / 2",
                us_tons_of(process::bar_shear_force({BarShape::square, inches(1.0), ksi(60.0)})),
                30.0,
                1e-9},
            Row{"3 x 3 x 1/4: 0.25 x 5.75 = 1.4375; x 50 / 2",
                angle_tons(3, 0.25, 50),
                35.94,
                0.005},
            Row{"4 x 4 x 3/8: 0.375 x 7.625 = 2.8594; x 52 / 2",
                angle_tons(4, 0.375, 52),
                74.34,
                0.005},
            Row{"50 x 50 x 6: 6 x 94 = 564; x 408 N",
                kilonewtons_of(process::angle_shear_force(
                    {millimetres(50), millimetres(50), millimetres(6), megapascals(408)})),
                230.1,
                0.05},
            Row{"unequal 4 x 3 x 1/4: 0.25 x 6.75 = 1.6875; x 50 / 2",
                us_tons_of(process::angle_shear_force(
                    {inches(4.0), inches(3.0), inches(0.25), ksi(50.0)})),
                42.19,
                0.005},
        };
        CHECK(k_rows.size() == 10);
        check_rows(k_rows);
        count_rows("worked", 4, "shear.flat");
        count_rows("worked", 2, "shear.bar");
        count_rows("worked", 4, "shear.angle");
    }

    TEST_CASE("mitre-factor lengthens cuts") {
        const auto cut = [](double length, double angle_deg) {
            const auto factor = process::mitre_factor(degrees(angle_deg));
            return factor.ok() ? length * *factor : NAN;
        };
        const std::array k_rows{
            Row{"4 / cos 45", cut(4, 45), 5.6569, 0.00005},
            Row{"4 / cos 30", cut(4, 30), 4.6188, 0.00005},
            Row{"4 / cos 22.5", cut(4, 22.5), 4.3296, 0.00005},
            Row{"area 1.4375 / cos 45", cut(1.4375, 45), 2.0329, 0.00005},
            Row{"square", cut(4, 0), 4.0, 1e-12},
        };
        CHECK(k_rows.size() == 5);
        check_rows(k_rows);
        count_rows("worked", 5, "shear.mitre");
    }

    TEST_CASE("notch-force and notch-bites") {
        const std::array k_rows{
            Row{"edge 2 wide, 1.5 deep: L 5; x 0.25 x 50 / 2",
                notch_tons(rectangle(NotchPlace::edge, inches(2.0), inches(1.5)), 0.25, 50),
                31.25,
                1e-9},
            Row{"corner 1.5 x 2: L 3.5; x 0.1875 x 52 / 2",
                notch_tons(rectangle(NotchPlace::corner, inches(1.5), inches(2.0)), 0.1875, 52),
                17.06,
                0.005},
            Row{"90 degree V 1 deep: L 2.8284; x 0.25 x 50 / 2",
                notch_tons(vee(1, 90), 0.25, 50),
                17.68,
                0.005},
            Row{"60 degree V 1 deep: L 2.3094; x 0.25 x 50 / 2",
                notch_tons(vee(1, 60), 0.25, 50),
                14.43,
                0.005},
            Row{"90 degree V 1.75 deep: L 4.9497; x 0.25 x 50 / 2",
                notch_tons(vee(1.75, 90), 0.25, 50),
                30.94,
                0.005},
            Row{"edge 50 x 30 mm: L 110; x 8 x 376 N",
                kilonewtons_of(process::notch_force(
                    {rectangle(NotchPlace::edge, millimetres(50), millimetres(30)),
                     millimetres(8),
                     megapascals(376)})),
                330.9,
                0.05},
            Row{"cope 1 deep x 2-3/4: L 3.75; x 0.25 x 50 / 2",
                notch_tons(rectangle(NotchPlace::corner, inches(2.75), inches(1.0)), 0.25, 50),
                23.44,
                0.005},
        };
        CHECK(k_rows.size() == 7);
        check_rows(k_rows);

        const auto bites = [](Length along, Length tool, Length overlap) {
            const auto n = process::notch_bites(along, tool, overlap);
            return n.ok() ? *n : -1;
        };
        // 1 + ceil(4 / 1.75), 1 + ceil(4 / 2), 1 + ceil(68 / 26)
        CHECK(bites(inches(6.0), inches(2.0), inches(0.25)) == 4);
        CHECK(bites(inches(6.0), inches(2.0), {}) == 3);
        CHECK(bites(millimetres(100), millimetres(32), millimetres(6)) == 4);
        count_rows("worked", 7, "notch.force");
        count_rows("worked", 3, "notch.bites");
    }

} // TEST_SUITE
