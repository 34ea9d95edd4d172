// Room for a bolt's head, its washer and a socket beside a wall or a fillet.
//
// Symbols   d  bolt   F  across flats   C  across corners   k  heel to the end of the fillet
// Formula   F = 1.5 d + 1/8 in, C = F / cos 30         card bolt-hex
//           washer by table; gage >= k + washer / 2    card bolt-washer-room
//           wall >= socket / 2 + 1/16 in               card bolt-socket-room
// Valid     heavy hex structural bolts 1/2 to 1-1/2 in; washers 1/2 to 1 in
// Source    sources.json: asme-b18-2-6, astm-f436, both from memory; common-practice-layout
// Rounding  none

#pragma once

#include "layout/bolt.h"

namespace treadle::layout {

[[nodiscard]] base::Result<Length> across_flats(const Bolt& bolt);
[[nodiscard]] base::Result<Working> across_flats_working(const Bolt& bolt);
[[nodiscard]] base::Result<Working> across_corners_working(const Bolt& bolt);
[[nodiscard]] base::Result<Length> washer_diameter(const Bolt& bolt);
/// The least gage at which a washer lies clear of the fillet.
[[nodiscard]] base::Result<Working> washer_room_working(const Bolt& bolt, Length fillet_end);
/// The least distance of a bolt from a wall for a socket of this outside diameter.
[[nodiscard]] base::Result<Working> socket_room_working(Length socket);

} // namespace treadle::layout
