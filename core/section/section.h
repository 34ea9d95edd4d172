// The shapes of stock: what a bar or plate looks like across its length.
//
// Which dimension means what, by shape (unused ones stay zero):
//   flat, plate   width, thickness          (a plate's width is the part's own)
//   angle         width = leg a, height = leg b, thickness, root_radius
//   channel       height = depth, width = flange, thickness = web, flange_thickness = mean flange
//   round         width = diameter
//   square        width = side
//   pipe          width = outside diameter, thickness = wall
//   square_tube   width, height, thickness = wall (nominal), root_radius = outside corner radius
//
// root_radius zero means sharp: an inch angle, whose catalogue weight is that of the sharp outline,
// or a light mechanical tube. An EN 10056 angle has its root radius (its toes half of it), an HSS
// twice its wall. Sharp is the heavier reading of a tube and the lighter one of an angle, by about
// 1 to 2 per cent; shearing adds its own fillet factor.

#pragma once

#include "base/formula_card.h"
#include "base/result.h"
#include "quantity/quantity.h"
#include "quantity/working.h"

#include <string>
#include <string_view>
#include <vector>

namespace treadle::section {

enum class Shape { flat, plate, angle, channel, round, square, pipe, square_tube };

[[nodiscard]] const char* shape_word(Shape shape); ///< "flat", "square tube", …

struct Section {
    Shape shape = Shape::flat;
    Length width;
    Length height;
    Length thickness;
    Length flange_thickness;
    Length root_radius;
    std::string designation; ///< catalogue name, "" when typed in
};

/// Which part of a section an operation sits on.
enum class Face { flat, leg_a, leg_b, web, flange_top, flange_bottom };
[[nodiscard]] const char* face_word(Face face);
/// Faces that can be punched or notched. Rounds, squares, pipes and tubes have none: nothing
/// supports the far wall, so work on them must be refused.
[[nodiscard]] std::vector<Face> faces_of(Shape shape);

/// Metal thickness that a punch or notcher meets on a face; a sloped channel flange counts its
/// thickest line. Zero for faces the shape does not have.
[[nodiscard]] Length thickness_at(const Section& section, Face face);
/// How far a face reaches across, from its datum edge (heel, back of web, guide edge). A shape
/// without faces gives its width for Face::flat, so that it can be drawn.
[[nodiscard]] Length width_of(const Section& section, Face face);
/// The thickest metal of the section: decides the strength band and the bend.
[[nodiscard]] Length governing_thickness(const Section& section);

[[nodiscard]] Area area(const Section& section);
/// theoretical, from area() and the density; see the card for the fillet convention
[[nodiscard]] MassPerLength mass_per_length(const Section& section, Density density);
[[nodiscard]] quantity::Working mass_per_length_working(const Section& section, Density density);

/// Sizes must be positive, below 100 m, and make the shape; refuses with field "section.width" and
/// so on. Sizes that the shape does not use come back as zero.
[[nodiscard]] base::Result<Section> checked(Section section);

/// "Angle 3 × 3 × 1/4" is made by the sheet; this is the shape's row in the catalogue.
struct CatalogSection {
    Section section;
    MassPerLength printed_mass; ///< as the table prints it; zero when it prints none
    std::string source;
    base::Evidence evidence = base::Evidence::published;
};

struct SectionTable {
    std::vector<CatalogSection> rows;
    /// By designation, without regard to case and spaces ("l3x3x1/4").
    [[nodiscard]] const CatalogSection* find(std::string_view designation) const;
};

} // namespace treadle::section

namespace treadle {
using section::Section;
}
