// A section as it is typed into a layout: a designation of the catalogue, or a shape and its sizes.
//
//   flat 1-1/2 x 3/8 in      width, thickness          square 3/4 in     round 20 mm
//   tube 2 x 2 x 1/8 in      or side and wall          pipe 1.9 x 0.145 in, or Pipe 1-1/2 sch 40
//   angle 2 x 2 x 1/4 in     or equal legs and t       channels by designation alone: C3x4.1
//
// A size without a unit takes that of the last one; where that has none, the job's.

#pragma once

#include "base/result.h"
#include "quantity/print.h"
#include "section/section.h"

#include <string_view>

namespace treadle::assembly {

[[nodiscard]] base::Result<Section> parse_section(std::string_view text,
                                                  UnitSystem units,
                                                  const section::SectionTable& table,
                                                  std::string_view field);
/// The same text with a unit behind its last size where none of them has one.
[[nodiscard]] std::string section_with_units(std::string_view text, UnitSystem units);

} // namespace treadle::assembly
