#include "cutting/first_fit.h"

#include <algorithm>
#include <set>

namespace treadle::cutting {

namespace {

/// How many bars can be cut like this, and takes them off the rest.
int take_off(const CutList& list, const Pattern& pattern, int most, Rest& rest) {
    const auto kind = static_cast<std::size_t>(pattern.stock);
    int times = std::min(most, rest.stock_left[kind]);
    for (std::size_t i = 0; i < list.size(); ++i)
        if (pattern.counts[i] > 0)
            times = std::min(times, rest.demand[i] / pattern.counts[i]);
    for (std::size_t i = 0; i < list.size(); ++i)
        rest.demand[i] -= times * pattern.counts[i];
    if (list.stock[kind].limited())
        rest.stock_left[kind] -= times;
    return times;
}

/// The pieces of a pattern that are still asked for, shorter ones in the place of the others.
Counts wanted_of(const CutList& list, const Counts& pattern, const Counts& demand) {
    Counts counts(list.size(), 0);
    for (std::size_t i = 0; i < list.size(); ++i) {
        int places = pattern[i];
        for (std::size_t j = i; j < list.size() && places > 0; ++j) {
            const int take = std::min(places, demand[j] - counts[j]);
            if (take > 0) {
                counts[j] += take;
                places -= take;
            }
        }
    }
    return counts;
}

} // namespace

bool is_done(const Rest& rest) {
    return std::all_of(rest.demand.begin(), rest.demand.end(), [](int d) { return d <= 0; });
}

void fill_up(const CutList& list, const Counts& demand, int room, Counts& counts) {
    for (std::size_t i = 0; i < list.size() && room > 0; ++i) {
        const int take = std::min(demand[i] - counts[i], room / list.length[i]);
        if (take <= 0)
            continue;
        counts[i] += take;
        room -= take * list.length[i];
    }
}

std::optional<Bars> first_fit(const CutList& list, Rest rest) {
    Bars bars;
    while (!is_done(rest)) {
        Pattern best;
        double most = 0.0;
        for (std::size_t k = 0; k < list.stock.size(); ++k) {
            if (rest.stock_left[k] <= 0)
                continue;
            Pattern pattern{static_cast<int>(k), Counts(list.size(), 0)};
            fill_up(list, rest.demand, list.stock[k].open, pattern.counts);
            const double worth = static_cast<double>(fill_of(list, pattern.counts)) /
                                 (static_cast<double>(list.stock[k].cost) + 0.001);
            if (worth > most) {
                most = worth;
                best = std::move(pattern);
            }
        }
        if (!(most > 0.0))
            return std::nullopt;
        const int times = take_off(list, best, k_no_limit, rest);
        bars.push_back({std::move(best), times});
    }
    return bars;
}

std::optional<Bars> best_fit(const CutList& list, const Rest& rest) {
    if (list.stock.size() != 1)
        return std::nullopt;
    const StockKind& kind = list.stock.front();
    std::multiset<std::pair<int, std::size_t>> rooms; // room left and bar
    std::vector<Counts> bars;
    for (std::size_t i = 0; i < list.size(); ++i)
        for (int n = 0; n < rest.demand[i]; ++n) {
            const int length = list.length[i];
            auto place = rooms.lower_bound({length, 0});
            if (place == rooms.end()) {
                if (length > kind.open ||
                    (kind.limited() && bars.size() >= static_cast<std::size_t>(rest.stock_left[0])))
                    return std::nullopt;
                bars.emplace_back(list.size(), 0);
                place = rooms.insert({kind.open, bars.size() - 1});
            }
            const auto [room, bar] = *place;
            rooms.erase(place);
            ++bars[bar][i];
            rooms.insert({room - length, bar});
        }
    Bars out;
    for (Counts& counts : bars) {
        if (!out.empty() && out.back().pattern.counts == counts)
            ++out.back().times;
        else
            out.push_back({{0, std::move(counts)}, 1});
    }
    return out;
}

Bars cut_like(const CutList& list, const Pattern& pattern, int times, Rest& rest) {
    Bars bars;
    const StockKind& kind = list.stock[static_cast<std::size_t>(pattern.stock)];
    while (times > 0 && rest.stock_left[static_cast<std::size_t>(pattern.stock)] > 0) {
        Pattern cut{pattern.stock, wanted_of(list, pattern.counts, rest.demand)};
        const auto fill = static_cast<int>(fill_of(list, cut.counts));
        if (fill <= kind.open)
            fill_up(list, rest.demand, (list.ends ? kind.open : kind.closed) - fill, cut.counts);
        else if (!kind.takes(fill)) { // the end that is left could not be held
            cut.counts.assign(list.size(), 0);
            fill_up(list, rest.demand, kind.open, cut.counts);
        }
        if (fill_of(list, cut.counts) == 0)
            break;
        const int done = take_off(list, cut, times, rest);
        bars.push_back({std::move(cut), done});
        times -= done;
    }
    return bars;
}

} // namespace treadle::cutting
