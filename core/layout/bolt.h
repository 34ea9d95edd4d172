// Bolts by size, and the largest nominal holes they may have.
//
// Formula   AISC 360 table J3.3 (inch) and J3.3M, the last row by formula   card bolt-hole
//           EN 1090-2: d + 1 to M14, + 2 to M24, + 3 above                  card
//           bolt-hole-normal-en
// Editions  360-16 unless named; 360-10 has 1/16 in less on standard holes and slot widths from
//           1 in up (from memory); M12 is in 360-22 alone (from memory)
// Valid     1/2 to 4 in in steps of 1/8; M12 to M100; EN 1090-2 round holes of metric bolts only
// Source    sources.json: aisc-360-16, en-1090-2
// Rounding  none; the tables give largest sizes, 1/32 in over is tolerated

#pragma once

#include "base/result.h"
#include "quantity/quantity.h"
#include "quantity/working.h"

#include <string_view>

namespace treadle::layout {

enum class BoltSystem { inch, metric };
struct Bolt {
    BoltSystem system = BoltSystem::inch;
    Length diameter;
};
/// "3/4 in" or "M20"; a size that no table here holds is refused.
[[nodiscard]] base::Result<Bolt> parse_bolt(std::string_view text, std::string_view field);

/// In the order of the words "standard|oversize|short slot|long slot".
enum class HoleKind { standard, oversize, short_slot, long_slot };
[[nodiscard]] const char* hole_kind_word(HoleKind kind);

/// In the order of the words "360-16|360-22|360-10|en-1090".
enum class HoleEdition { aisc_2016, aisc_2022, aisc_2010, en_1090 };

struct BoltHole {
    Length width;
    Length length; ///< along a slot; the width for a round hole
};
[[nodiscard]] base::Result<BoltHole>
bolt_hole(const Bolt& bolt, HoleKind kind, HoleEdition edition = HoleEdition::aisc_2016);
/// The result is the width.
[[nodiscard]] base::Result<Working>
bolt_hole_working(const Bolt& bolt, HoleKind kind, HoleEdition edition = HoleEdition::aisc_2016);

/// A slot longer than the short slot counts as a long one; longer than the long slot is refused.
[[nodiscard]] base::Result<HoleKind> slot_kind(const Bolt& bolt, Length slot_length);

/// The bolt whose standard hole this is; else the larger of the next bolts up, inch and metric.
[[nodiscard]] base::Result<Bolt> bolt_of_hole(Length hole);

} // namespace treadle::layout
