#include "plan/order_bounds.h"

#include <algorithm>

namespace treadle::plan {

namespace {

constexpr std::size_t k_most_paired = 16; ///< groups of a knot whose pairs are looked at
constexpr std::size_t k_most_pair_cells = 200'000;

void raise(std::uint16_t& value, int to) {
    value = std::max(value, static_cast<std::uint16_t>(to));
}

} // namespace

bool advance(const Route& route, int group, Place& place) {
    std::size_t stage = stage_of(place);
    std::uint32_t done = done_of(place);
    bool moved = false;
    while (stage < route.size()) {
        const RouteStage& here = route[stage];
        const auto at = std::find(here.begin(), here.end(), group);
        if (at == here.end())
            break;
        const auto bit = std::uint32_t{1} << (at - here.begin());
        if ((done & bit) != 0)
            break;
        moved = true;
        done |= bit;
        if (done != (std::uint32_t{1} << here.size()) - 1)
            break;
        ++stage;
        done = 0;
    }
    place = static_cast<Place>((stage << 16) | done);
    return moved;
}

Bounds::Bounds(const Knot& knot) : count_(static_cast<std::size_t>(knot.groups)) {
    std::size_t stages = 0;
    for (const Route& route : knot.routes)
        stages += route.size() + 1;
    paired_ = count_ <= k_most_paired && stages * count_ * count_ <= k_most_pair_cells;
    for (const Route& route : knot.routes)
        rests_.push_back(rests_of(route));
    visits_.resize(count_);
    pairs_.resize(paired_ ? count_ * count_ * 2 : 0);
}

long long Bounds::work() const {
    return static_cast<long long>(rests_.size() *
                                  (8 + count_ + (paired_ ? count_ * count_ / 2 : 0)));
}

int Bounds::least(const Knot& knot, const State& state) {
    std::fill(visits_.begin(), visits_.end(), std::uint16_t{0});
    std::fill(pairs_.begin(), pairs_.end(), std::uint16_t{0});
    for (std::size_t r = 0; r < knot.routes.size(); ++r) {
        std::size_t stage = stage_of(state[r]);
        const std::uint32_t done = done_of(state[r]);
        if (done != 0) { // what is left of a begun stage, then the rest behind it
            const RouteStage& here = knot.routes[r][stage++];
            for (std::size_t i = 0; i < here.size(); ++i)
                if ((done >> i & 1u) == 0)
                    raise(visits_[static_cast<std::size_t>(here[i])], 1);
        }
        const Rest& left = rests_[r][stage];
        for (std::size_t g = 0; g < count_; ++g)
            raise(visits_[g], left.visits[g]);
        for (std::size_t p = 0; p < left.pairs.size(); ++p)
            if (left.pairs[p] >= 4) // at least twice: one of each says nothing new
                raise(pairs_[2 * p + left.pairs[p] % 2], left.pairs[p] / 2);
    }
    int sum = 0;
    for (const int visits : visits_)
        sum += visits;
    return sum + crossings();
}

bool Bounds::is_finished(const Knot& knot, const State& state, int group) const {
    for (std::size_t r = 0; r < knot.routes.size(); ++r) {
        std::size_t stage = stage_of(state[r]);
        const std::uint32_t done = done_of(state[r]);
        if (done != 0) {
            const RouteStage& here = knot.routes[r][stage++];
            for (std::size_t i = 0; i < here.size(); ++i)
                if (here[i] == group && (done >> i & 1u) == 0)
                    return false;
        }
        if (rests_[r][stage].visits[static_cast<std::size_t>(group)] != 0)
            return false;
    }
    return true;
}

/// From the last stage to the first. Two occurrences of a group need two visits when other work
/// stands in a stage between them.
std::vector<Bounds::Rest> Bounds::rests_of(const Route& route) const {
    std::vector<Rest> rests(route.size() + 1);
    Rest rest;
    rest.visits.resize(count_);
    rest.pairs.resize(paired_ ? count_ * count_ : 0);
    rests.back() = rest;
    std::vector<std::size_t> start(count_);
    std::vector<std::size_t> other(count_, route.size()); ///< nearest stage with other work
    for (std::size_t s = route.size(); s-- > 0;) {
        for (const int group : route[s]) {
            const auto g = static_cast<std::size_t>(group);
            if (rest.visits[g] == 0 || other[g] < start[g]) {
                ++rest.visits[g];
                start[g] = s;
            }
        }
        for (std::size_t g = 0; g < count_; ++g)
            if (route[s].size() > 1 || route[s].front() != static_cast<int>(g))
                other[g] = s;
        if (paired_)
            alternate(rest.pairs, route[s]);
        rests[s] = rest;
    }
    return rests;
}

/// Puts a stage before the alternations behind it. A stage with both of a pair claims nothing.
void Bounds::alternate(std::vector<std::uint16_t>& pairs, const RouteStage& stage) const {
    for (std::size_t a = 0; a < count_; ++a)
        for (std::size_t b = a + 1; b < count_; ++b) {
            const bool has_a =
                std::find(stage.begin(), stage.end(), static_cast<int>(a)) != stage.end();
            const bool has_b =
                std::find(stage.begin(), stage.end(), static_cast<int>(b)) != stage.end();
            std::uint16_t& pair = pairs[a * count_ + b];
            const int starts_with_b = has_b ? 1 : 0;
            if (has_a != has_b && (pair == 0 || pair % 2 != starts_with_b))
                pair = static_cast<std::uint16_t>(2 * (pair / 2 + 1) + starts_with_b);
        }
}

/// Visits above one list for each group, over disjoint pairs, the most first.
int Bounds::crossings() const {
    if (!paired_)
        return 0;
    int sum = 0;
    std::uint32_t used = 0;
    for (;;) {
        int best = 0;
        std::uint32_t both = 0;
        for (std::size_t a = 0; a < count_; ++a)
            for (std::size_t b = a + 1; b < count_; ++b) {
                const std::uint32_t bits = 1u << a | 1u << b;
                const std::size_t p = 2 * (a * count_ + b);
                if ((used & bits) != 0 || pairs_[p] + pairs_[p + 1] == 0)
                    continue;
                const int needed =
                    std::max(pairs_[p], pairs_[p + 1]) + (pairs_[p] == pairs_[p + 1] ? 1 : 0);
                const int more = needed - visits_[a] - visits_[b];
                if (more > best) {
                    best = more;
                    both = bits;
                }
            }
        if (best == 0)
            return sum;
        sum += best;
        used |= both;
    }
}

} // namespace treadle::plan
