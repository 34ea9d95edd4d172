// Contrast is that of WCAG 2.2, "relative luminance" and "contrast ratio".

#include "ui/theme/theme.h"

#include <doctest/doctest.h>

using namespace treadle::ui;

TEST_CASE("contrast of black on white is 21, of a colour on itself 1") {
    CHECK(contrast(0xFF000000U, 0xFFFFFFFFU) == doctest::Approx(21));
    CHECK(contrast(0xFF123456U, 0xFF123456U) == doctest::Approx(1));
    // #777777 on white is the well-known grey that just misses 4.5: 4.48.
    CHECK(contrast(0xFF777777U, 0xFFFFFFFFU) == doctest::Approx(4.48).epsilon(0.002));
}

TEST_CASE("every text ink reaches 4.5 on every ground, and a verdict 7 on paper") {
    for (const ThemeKind kind : {ThemeKind::light, ThemeKind::dark, ThemeKind::sun}) {
        const Palette& inks = palette(kind);
        for (const Ink ink : {Ink::ink,
                              Ink::quiet,
                              Ink::touch,
                              Ink::fits,
                              Ink::up_to,
                              Ink::does_not_fit,
                              Ink::not_known}) {
            CAPTURE(static_cast<int>(kind));
            CAPTURE(static_cast<int>(ink));
            for (const Ink ground : {Ink::paper, Ink::bench, Ink::steel})
                CHECK(contrast(inks[ink], inks[ground]) >= 4.5);
        }
        for (const Ink ink : {Ink::fits, Ink::up_to, Ink::does_not_fit, Ink::not_known})
            CHECK(contrast(inks[ink], inks[Ink::paper]) >= 7);
        // A pressed key: paper on the ink of touch.
        CHECK(contrast(inks[Ink::paper], inks[Ink::touch]) >= 4.5);
        CHECK(contrast(inks[Ink::cut], inks[Ink::steel]) >= 3);
    }
}

TEST_CASE("the shop's targets are higher than the desk's, and grow with the type") {
    const Metrics desk = metrics(Density::desk, 1);
    const Metrics shop = metrics(Density::shop, 1);
    CHECK(desk.target >= 32);
    CHECK(desk.gap >= 8);
    CHECK(shop.target >= 56);
    CHECK(shop.primary >= 80);
    CHECK(shop.gap >= 12);
    CHECK(shop.danger_gap >= 24);
    CHECK(metrics(Density::shop, 2).target == doctest::Approx(2 * shop.target));
}
