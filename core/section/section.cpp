#include "section/section.h"

#include "base/ascii.h"
#include "base/text.h"
#include "quantity/input_limits.h"
#include "section/cards.h"

#include <cmath>
#include <numbers>

namespace treadle::section {

using base::Refusal;
using base::Result;
using std::numbers::pi;

namespace {

/// Slope of the inner face of a C shape's flange: 16-2/3 per cent, 2 in 12. The steepest of the
/// rolled channels (European U sections have 8 per cent or none), so the careful one for all.
/// Source: ASTM A6/A6M, American Standard channels; from memory.
constexpr double k_flange_slope = 1.0 / 6.0;

/// Which sizes a shape has.
struct Uses {
    bool height;
    bool thickness;
    bool flange_thickness;
    bool root_radius;
};

Uses uses(Shape shape) {
    switch (shape) {
    case Shape::flat:
    case Shape::plate:
    case Shape::pipe:
        return {false, true, false, false};
    case Shape::angle:
    case Shape::square_tube:
        return {true, true, false, true};
    case Shape::channel:
        return {true, true, true, false};
    case Shape::round:
    case Shape::square:
        return {false, false, false, false};
    }
    return {false, false, false, false};
}

Length thickest_flange(const Section& s) {
    // The mean is measured half way along the overhang; the root lies half an overhang further in.
    return s.flange_thickness + (s.width - s.thickness) * (0.5 * k_flange_slope);
}

Area angle_area(const Section& s) {
    const Length t = s.thickness;
    const Area sharp = t * (s.width + s.height - t);
    // EN 10056-1: a root fillet r1 adds, two toe roundings r2 = r1 / 2 take away.
    const Length r1 = s.root_radius;
    const Length r2 = r1 * 0.5;
    return sharp + (1.0 - pi / 4.0) * (r1 * r1 - 2.0 * (r2 * r2));
}

Area channel_area(const Section& s) {
    return s.height * s.thickness + 2.0 * (s.flange_thickness * (s.width - s.thickness));
}

Area square_tube_area(const Section& s) {
    const Length t = s.thickness;
    const Area sharp = 2.0 * (t * (s.width + s.height - 2.0 * t));
    if (s.root_radius == Length{})
        return sharp;
    const Length outside = s.root_radius;
    const Length inside = outside - t;
    return sharp - (4.0 - pi) * (outside * outside - inside * inside);
}

Result<bool> check_sizes(const Section& s, const Uses& use) {
    const struct {
        bool used;
        Length size;
        const char* field;
    } sizes[] = {{true, s.width, "section.width"},
                 {use.height, s.height, "section.height"},
                 {use.thickness, s.thickness, "section.thickness"},
                 {use.flange_thickness, s.flange_thickness, "section.flange_thickness"}};
    for (const auto& [used, size, field] : sizes)
        if (used)
            if (auto fault = quantity::size_fault(size, field))
                return *fault;
    if (use.root_radius)
        if (auto fault = quantity::place_fault(s.root_radius, "section.root_radius"))
            return *fault;
    return true;
}

Result<bool> check_angle(const Section& s) {
    const Length least = smaller(s.width, s.height);
    if (!(s.thickness < least))
        return Refusal{"section.thickness",
                       "An angle is thinner than either of its legs.",
                       "less than the shorter leg"};
    if (!(s.root_radius <= least - s.thickness))
        return Refusal{"section.root_radius",
                       "The root radius does not fit in the legs.",
                       "at most the shorter leg less the thickness"};
    return true;
}

Result<bool> check_channel(const Section& s) {
    if (!(s.thickness < s.width))
        return Refusal{"section.thickness",
                       "The web is thinner than the flange is wide.",
                       "less than the width of the flange"};
    if (!(2.0 * thickest_flange(s) < s.height))
        return Refusal{"section.flange_thickness",
                       "The flanges do not fit in the depth of the channel.",
                       "less than half the depth"};
    return true;
}

Result<bool> check_square_tube(const Section& s) {
    const Length least = smaller(s.width, s.height);
    if (!(2.0 * s.thickness < least))
        return Refusal{"section.thickness",
                       "The walls of the tube leave no room inside.",
                       "less than half the shorter side"};
    const bool sharp = s.root_radius == Length{};
    if (!sharp && !(s.root_radius >= s.thickness && 2.0 * s.root_radius <= least))
        return Refusal{"section.root_radius",
                       "The outside corner radius does not fit the tube.",
                       "at least the wall, at most half the side"};
    return true;
}

Result<bool> check_shape(const Section& s) {
    switch (s.shape) {
    case Shape::flat:
    case Shape::plate:
        if (!(s.thickness <= s.width))
            return Refusal{
                "section.thickness", "A flat is no thicker than it is wide.", "at most its width"};
        return true;
    case Shape::angle:
        return check_angle(s);
    case Shape::channel:
        return check_channel(s);
    case Shape::pipe:
        if (!(2.0 * s.thickness < s.width))
            return Refusal{"section.thickness",
                           "The wall of the pipe leaves no bore.",
                           "less than half the outside diameter"};
        return true;
    case Shape::square_tube:
        return check_square_tube(s);
    case Shape::round:
    case Shape::square:
        return true;
    }
    return Refusal{"section.shape", "This shape is not known.", ""};
}

/// "L 3 × 3 x 1/4" and "l3x3x1/4" are the same word.
std::string bare_word(std::string_view text) {
    constexpr std::string_view k_times = "\xC3\x97"; // multiplication sign
    std::string out;
    for (std::size_t i = 0; i < text.size(); ++i) {
        if (text.substr(i, k_times.size()) == k_times) {
            out.push_back('x');
            ++i;
        } else if (text[i] != ' ') {
            out.push_back(text[i]);
        }
    }
    return base::to_lower_ascii(out);
}

/// Whether a text's bare word is this one: the catalogue is long, and it is asked for each line of
/// a calculation, so without making it.
bool reads_as(std::string_view text, std::string_view bare) {
    std::size_t at = 0;
    for (std::size_t i = 0; i < text.size(); ++i) {
        if (text[i] == ' ')
            continue;
        char c = base::to_lower(text[i]);
        if (c == '\xC3' && i + 1 < text.size() && text[i + 1] == '\x97') { // multiplication sign
            c = 'x';
            ++i;
        }
        if (at == bare.size() || c != bare[at])
            return false;
        ++at;
    }
    return at == bare.size();
}

} // namespace

const char* shape_word(Shape shape) {
    switch (shape) {
    case Shape::flat:
        return "flat";
    case Shape::plate:
        return "plate";
    case Shape::angle:
        return "angle";
    case Shape::channel:
        return "channel";
    case Shape::round:
        return "round";
    case Shape::square:
        return "square";
    case Shape::pipe:
        return "pipe";
    case Shape::square_tube:
        return "square tube";
    }
    return "";
}

const char* face_word(Face face) {
    switch (face) {
    case Face::flat:
        return "flat";
    case Face::leg_a:
        return "leg a";
    case Face::leg_b:
        return "leg b";
    case Face::web:
        return "web";
    case Face::flange_top:
        return "top flange";
    case Face::flange_bottom:
        return "bottom flange";
    }
    return "";
}

std::vector<Face> faces_of(Shape shape) {
    switch (shape) {
    case Shape::flat:
    case Shape::plate:
        return {Face::flat};
    case Shape::angle:
        return {Face::leg_a, Face::leg_b};
    case Shape::channel:
        return {Face::web, Face::flange_top, Face::flange_bottom};
    case Shape::round:
    case Shape::square:
    case Shape::pipe:
    case Shape::square_tube:
        return {};
    }
    return {};
}

Length thickness_at(const Section& section, Face face) {
    for (const Face own : faces_of(section.shape)) {
        if (own != face)
            continue;
        const bool flange = face == Face::flange_top || face == Face::flange_bottom;
        return flange ? thickest_flange(section) : section.thickness;
    }
    return {};
}

Length width_of(const Section& section, Face face) {
    const bool angle = section.shape == Shape::angle;
    const bool channel = section.shape == Shape::channel;
    switch (face) {
    case Face::flat:
        return angle || channel ? Length{} : section.width;
    case Face::leg_a:
        return angle ? section.width : Length{};
    case Face::leg_b:
        return angle ? section.height : Length{};
    case Face::web:
        return channel ? section.height : Length{};
    case Face::flange_top:
    case Face::flange_bottom:
        return channel ? section.width : Length{};
    }
    return {};
}

Length governing_thickness(const Section& section) {
    switch (section.shape) {
    case Shape::round:
    case Shape::square:
        return section.width;
    case Shape::channel:
        return larger(section.thickness, thickest_flange(section));
    case Shape::flat:
    case Shape::plate:
    case Shape::angle:
    case Shape::pipe:
    case Shape::square_tube:
        return section.thickness;
    }
    return {};
}

Area area(const Section& section) {
    switch (section.shape) {
    case Shape::flat:
    case Shape::plate:
        return section.width * section.thickness;
    case Shape::angle:
        return angle_area(section);
    case Shape::channel:
        return channel_area(section);
    case Shape::round:
        return (pi / 4.0) * (section.width * section.width);
    case Shape::square:
        return section.width * section.width;
    case Shape::pipe:
        return pi * ((section.width - section.thickness) * section.thickness);
    case Shape::square_tube:
        return square_tube_area(section);
    }
    return {};
}

MassPerLength mass_per_length(const Section& section, Density density) {
    return area(section) * density;
}

quantity::Working mass_per_length_working(const Section& section, Density density) {
    quantity::Working working;
    working.card = &mass_card();
    working.values = {
        {"A", area(section)},
        {"rho", quantity::Number{quantity::to_kilograms_per_cubic_metre(density), 0}}};
    working.result = {"m", mass_per_length(section, density)};
    if (section.shape == Shape::angle)
        working.note = section.root_radius == Length{}
                           ? "Sharp outline t (a + b - t), without the fillet"
                           : "With root radius r1 and toe radii r1 / 2";
    else if (section.shape == Shape::channel)
        working.note = "Mean flange thickness, without fillets";
    else if (section.shape == Shape::square_tube)
        working.note = section.root_radius == Length{} ? "Sharp corners, nominal wall"
                                                       : "Rounded corners, nominal wall";
    return working;
}

Result<Section> checked(Section section) {
    const Uses use = uses(section.shape);
    if (const auto sizes = check_sizes(section, use); !sizes)
        return sizes.refusal();
    if (const auto shape = check_shape(section); !shape)
        return shape.refusal();
    if (!base::is_clean_text(section.designation))
        return Refusal{"section.designation", "The designation holds unreadable text.", ""};
    if (!use.height)
        section.height = {};
    if (!use.thickness)
        section.thickness = {};
    if (!use.flange_thickness)
        section.flange_thickness = {};
    if (!use.root_radius)
        section.root_radius = {};
    return section;
}

const CatalogSection* SectionTable::find(std::string_view designation) const {
    const std::string wanted = bare_word(designation);
    if (wanted.empty())
        return nullptr;
    for (const CatalogSection& row : rows) {
        if (reads_as(row.section.designation, wanted))
            return &row;
    }
    return nullptr;
}

} // namespace treadle::section
