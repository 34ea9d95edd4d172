// Sections as the trade writes them: "L3X3X1/4", "FB 3 x 1/2", "3/8 PL", "flat bar 50x10 mm".
//
// Private to the readers and writers of parts lists. A name of the catalogue is that section. Sizes
// behind a word of the trade make one, and take what the catalogue knows of the same sizes (radii).
// Whole English words with every size, "angle 2 in x 2 in x 1/4 in", mean exactly those sizes.

#pragma once

#include "archive/parts_list_cell.h"
#include "base/result.h"
#include "job/job.h"

#include <string>
#include <string_view>

namespace treadle::archive {

/// What the cells of a row say about a section beside its own text; empty where they are not there.
struct SectionCells {
    std::string text;
    std::string width;
    std::string thickness;
    std::string unit; ///< of bare numbers in the text: mm, in, ...; empty: nobody has said
    std::string width_unit;
    std::string thickness_unit;
    DecimalMark mark = DecimalMark::not_said;
};

/// Fields of refusals: section, width, thickness.
[[nodiscard]] base::Result<Section> section_in(const SectionCells& cells,
                                               const section::SectionTable& table);

/// "L3X3X1/4", "FB 3 x 1/2" and the like, whatever the units are. For telling columns apart.
[[nodiscard]] bool looks_like_section(std::string_view text, const section::SectionTable& table);

/// The name of the catalogue when it says all, else sizes with units; section_in gives back the
/// identical section.
[[nodiscard]] std::string
section_text(const Section& section, UnitSystem units, const section::SectionTable& table);

/// A length of a list: a bare number takes `unit`; field and reason as parse_length says them.
[[nodiscard]] base::Result<Length>
length_in(std::string_view text, std::string_view unit, DecimalMark mark, std::string_view field);

} // namespace treadle::archive
