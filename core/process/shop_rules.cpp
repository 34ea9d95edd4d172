#include "process/shop_rules.h"

#include "process/cards.h"
#include "process/input_check.h"

#include <array>

namespace treadle::process {

namespace {

using base::Evidence;

constexpr base::CardSymbol k_guard_symbols[] = {
    {"o", "greatest opening in the guard"},
    {"x", "distance of the opening from the hazard"},
};
constexpr base::CardSymbol k_tolerance_symbols[] = {
    {"tolerance", "to both sides"},
    {"n", "nominal size, or shorter leg of an angle"},
};

// 29 CFR 1910.217, table O-10, from memory; inches, each opening up to its distance.
struct GuardBand {
    double up_to_in;
    double opening_in;
};
constexpr double k_nearest_in = 0.5;
constexpr std::array k_guard_bands{
    GuardBand{1.5, 0.25},
    GuardBand{2.5, 0.375},
    GuardBand{3.5, 0.5},
    GuardBand{5.5, 0.625},
    GuardBand{6.5, 0.75},
    GuardBand{7.5, 0.875},
    GuardBand{12.5, 1.25},
    GuardBand{15.5, 1.5},
    GuardBand{17.5, 1.875},
    GuardBand{31.5, 2.125},
};

// ISO 2768-1, tables 1 and 3, in mm and degrees; class c of the angles from memory.
struct LengthBand {
    double up_to_mm;
    double fine_mm; ///< zero: the class has no figure for this band
    double medium_mm;
    double coarse_mm;
    double very_coarse_mm;
};
constexpr double k_smallest_mm = 0.5;
constexpr std::array k_length_bands{
    LengthBand{3, 0.05, 0.1, 0.2, 0},
    LengthBand{6, 0.05, 0.1, 0.3, 0.5},
    LengthBand{30, 0.1, 0.2, 0.5, 1.0},
    LengthBand{120, 0.15, 0.3, 0.8, 1.5},
    LengthBand{400, 0.2, 0.5, 1.2, 2.5},
    LengthBand{1000, 0.3, 0.8, 2.0, 4.0},
    LengthBand{2000, 0.5, 1.2, 3.0, 6.0},
    LengthBand{4000, 0, 2.0, 4.0, 8.0},
};
struct AngleBand {
    double up_to_mm;
    double medium_min;
    double coarse_min;
};
constexpr std::array k_angle_bands{
    AngleBand{10, 60, 90},
    AngleBand{50, 30, 60},
    AngleBand{120, 20, 30},
    AngleBand{400, 10, 15},
    AngleBand{100'000, 5, 10},
};

double figure_of(const LengthBand& band, ToleranceClass grade) {
    switch (grade) {
    case ToleranceClass::fine:
        return band.fine_mm;
    case ToleranceClass::medium:
        return band.medium_mm;
    case ToleranceClass::coarse:
        return band.coarse_mm;
    case ToleranceClass::very_coarse:
        break;
    }
    return band.very_coarse_mm;
}

const char* class_note(ToleranceClass grade) {
    switch (grade) {
    case ToleranceClass::fine:
        return "Class f.";
    case ToleranceClass::medium:
        return "Class m.";
    case ToleranceClass::coarse:
        return "Class c, realistic for an ironworker.";
    case ToleranceClass::very_coarse:
        break;
    }
    return "Class v.";
}

bool up_to(double limit_mm, Length value) { return !clearly_below(millimetres(limit_mm), value); }

} // namespace

const base::FormulaCard k_guard_opening_card{
    "guard-opening",
    "Greatest opening in a guard",
    "o by bands of x: 1/4 in to 1-1/2, 3/8 to 2-1/2, 1/2 to 3-1/2, 5/8 to 5-1/2 … 2-1/8 to 31-1/2",
    k_guard_symbols,
    "a table for mechanical presses, used as a guide; from 1/2 to 31-1/2 in",
    "cfr-1910-217",
    Evidence::from_memory,
    ""};
const base::FormulaCard k_tolerance_length_card{
    "tolerance-length",
    "General tolerance of a length",
    "tolerance by bands of n: f 0.05 to 0.5 mm, m 0.1 to 2, c 0.2 to 4, v 0.5 to 8",
    k_tolerance_symbols,
    "0.5 to 4000 mm, f to 2000, v from over 3; where the drawing names ISO 2768-1",
    "iso-2768-1",
    Evidence::published,
    ""};
const base::FormulaCard k_tolerance_angle_card{
    "tolerance-angle",
    "General tolerance of an angle",
    "tolerance by bands of n: medium 60' to 5', coarse 90' to 10'",
    k_tolerance_symbols,
    "by the shorter leg; where the drawing names ISO 2768-1; coarse from memory",
    "iso-2768-1",
    Evidence::published,
    ""};

base::Result<Working> guard_opening_working(Length distance) {
    InputCheck check;
    check.length(distance, "distance");
    if (check.failed())
        return check.refusal();
    if (clearly_below(distance, inches(k_nearest_in)))
        return base::Refusal{
            "distance", "So near the hazard the table allows no opening at all.", "from 1/2 in"};
    for (const GuardBand& band : k_guard_bands)
        if (up_to(band.up_to_in * 25.4, distance))
            return Working{&k_guard_opening_card,
                           {{"x", distance}},
                           {"o", inches(band.opening_in)},
                           "A table for mechanical presses, used as a guide: the machine's manual "
                           "and local rules decide."};
    return base::Refusal{
        "distance", "The table of guard openings does not reach so far.", "up to 31-1/2 in"};
}

base::Result<Working> tolerance_length_working(Length size, ToleranceClass grade) {
    InputCheck check;
    check.length(size, "size");
    if (check.failed())
        return check.refusal();
    const LengthBand* found = nullptr;
    if (!clearly_below(size, millimetres(k_smallest_mm)))
        for (const LengthBand& band : k_length_bands)
            if (found == nullptr && up_to(band.up_to_mm, size))
                found = &band;
    const double figure = found == nullptr ? 0.0 : figure_of(*found, grade);
    if (!(figure > 0.0))
        return base::Refusal{"size",
                             "The table of tolerances has no figure for it in this class.",
                             "0.5 to 4000 mm, class f to 2000 mm, class v from over 3 mm"};
    return Working{&k_tolerance_length_card,
                   {{"n", size}},
                   {"tolerance", millimetres(figure)},
                   class_note(grade)};
}

base::Result<Working> tolerance_angle_working(Length leg, ToleranceClass grade) {
    InputCheck check;
    check.length(leg, "leg");
    if (check.failed())
        return check.refusal();
    if (grade == ToleranceClass::very_coarse)
        return base::Refusal{"class", "The angles of this class are not here.", "m or c"};
    const bool medium = grade != ToleranceClass::coarse; // f and m are the same for angles
    const AngleBand* found = &k_angle_bands.back();
    for (const AngleBand& band : k_angle_bands) {
        if (up_to(band.up_to_mm, leg)) {
            found = &band;
            break;
        }
    }
    const double minutes = medium ? found->medium_min : found->coarse_min;
    return Working{&k_tolerance_angle_card,
                   {{"n", leg}},
                   {"tolerance", degrees(minutes / 60.0)},
                   medium
                       ? "Class m. A bend off the brake is good to about 1 degree."
                       : "Class c, from memory. A bend off the brake is good to about 1 degree."};
}

} // namespace treadle::process
