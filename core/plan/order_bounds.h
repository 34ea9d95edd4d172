// How far each route of a knot has come, and how many visits the rest needs at least.

#pragma once

#include "plan/order_knot.h"

#include <cstddef>
#include <cstdint>
#include <string>
#include <vector>

namespace treadle::plan {

/// What is done of one route: whole stages above the lowest 16 bits, and below them a bit for each
/// done group of the next stage.
using Place = char32_t;
/// A place for every route. A string, because strings have a hash.
using State = std::u32string;
inline constexpr std::size_t k_most_in_stage = 16;
inline constexpr std::size_t k_most_stages = 0x7FFF;

[[nodiscard]] constexpr std::size_t stage_of(Place place) { return place >> 16; }
[[nodiscard]] constexpr std::uint32_t done_of(Place place) { return place & 0xFFFFu; }

/// Does all of `group` that is ready on a route. True when something was.
bool advance(const Route& route, int group, Place& place);

class Bounds {
public:
    explicit Bounds(const Knot& knot);

    /// What looking at one state costs, in steps.
    [[nodiscard]] long long work() const;
    /// Visits still needed in a state; no list is shorter.
    [[nodiscard]] int least(const Knot& knot, const State& state);
    /// Nothing of the group is left on any route.
    [[nodiscard]] bool is_finished(const Knot& knot, const State& state, int group) const;

private:
    /// What the rest of a route asks for, from a stage on.
    struct Rest {
        std::vector<std::uint16_t> visits; ///< by group
        /// By pair a < b: how often both alternate, twice, plus one when it starts with b.
        std::vector<std::uint16_t> pairs;
    };

    [[nodiscard]] std::vector<Rest> rests_of(const Route& route) const;
    void alternate(std::vector<std::uint16_t>& pairs, const RouteStage& stage) const;
    [[nodiscard]] int crossings() const;

    std::size_t count_;
    bool paired_ = false;                  ///< pairs are looked at
    std::vector<std::vector<Rest>> rests_; ///< by route, by stage
    std::vector<std::uint16_t> visits_;    ///< of the state looked at
    std::vector<std::uint16_t> pairs_;
};

} // namespace treadle::plan
