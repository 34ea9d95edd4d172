// Private to the room: the ways that an operation can move, as ranges of its own dimensions.

#pragma once

#include "edit/placing.h"

namespace treadle::edit {

/// One way: the operation's own dimension, and what it means on the blank.
struct Track {
    Length origin; ///< on the blank, where the dimension counts from
    Length low;    ///< of the dimension, both ends allowed
    Length high;
    Length now;
    Length span;   ///< from the first hole to the last
    Length extent; ///< of the metal on the blank
};
struct Tracks {
    section::Face face = section::Face::flat;
    FlatPlace at;
    std::optional<Track> along;
    std::optional<Track> across;
};
[[nodiscard]] base::Result<Tracks> tracks_of(const Placing& placing);

/// The part with this operation's dimensions changed; nothing else is looked at.
[[nodiscard]] job::Part moved(const job::Part& part,
                              int operation,
                              const std::optional<Length>& along,
                              const std::optional<Length>& across);

/// How many bends come before this operation.
[[nodiscard]] std::size_t bends_before(const job::Part& part, std::size_t operation);

/// A pattern of holes on the blank.
struct HolesOnBlank {
    Length along;
    Length across;
    Length span_along;
    Length span_across;
    Length half_along;
    Length half_across;
};
[[nodiscard]] HolesOnBlank holes_on_blank(const plan::PartPlan& plan, const job::Punch& punch);

[[nodiscard]] std::vector<SnapLine> lines_of(const Placing& placing, const Tracks& tracks);
[[nodiscard]] Length step_of(PrintStyle style);

} // namespace treadle::edit
