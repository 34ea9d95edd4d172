#include "plan/stock_list.h"

#include "base/stable_sort.h"
#include "plan/words.h"

#include <algorithm>
#include <cmath>
#include <cstdlib>
#include <string_view>

#include "cutting/problem.h"

namespace treadle::plan {

namespace {

using base::Refusal;

constexpr Length k_same_size = quantity::millimetres(0.005);
/// Of a step: what arithmetic may be off, far under what anybody measures.
constexpr double k_creep = 1e-6;

bool same_length(Length a, Length b) { return a - b <= k_same_size && b - a <= k_same_size; }

Length step_of(const StockGroup& group, UnitSystem system) {
    Length longest;
    for (const BarKind& kind : group.kinds)
        longest = larger(longest, kind.length);
    Length step = system == UnitSystem::inch ? inches(1.0 / 64.0) : millimetres(0.1);
    while (longest / step > static_cast<double>(cutting::k_longest_fill))
        step = step * 2.0;
    return step;
}

StockAim aim_of(const std::vector<BarKind>& kinds) {
    int whole = 0;
    bool priced = true;
    for (const BarKind& kind : kinds) {
        whole += kind.drop ? 0 : 1;
        priced = priced && (kind.drop || kind.price);
    }
    if (whole <= 1)
        return StockAim::bars;
    return priced ? StockAim::money : StockAim::length;
}

std::int64_t cost_of(const StockGroup& group, const BarKind& kind, bool any_whole) {
    if (kind.drop && any_whole)
        return 0;
    switch (group.aim) {
    case StockAim::bars:
        return 1;
    case StockAim::length:
        return steps_up(kind.length, group.step);
    case StockAim::money:
        return std::max<std::int64_t>(1, std::llround(kind.price.value_or(0.0) * 100.0));
    }
    return 1;
}

/// "pieces[3].length" of a refused list, as the fabricator knows it.
Refusal in_the_job(const StockGroup& group, const Plan& plan, const Refusal& refusal) {
    constexpr std::string_view k_pieces = "pieces[";
    if (refusal.field.rfind(k_pieces, 0) != 0)
        return {
            "rack", "The bars of the rack cannot be planned: " + refusal.reason, refusal.detail};
    const char* digits = refusal.field.c_str() + k_pieces.size();
    const auto piece = static_cast<std::size_t>(std::strtoul(digits, nullptr, 10));
    const int part = group.pieces[piece].part;
    const std::string& mark = plan.parts[static_cast<std::size_t>(part)]->part->mark;
    const std::string at = "parts[" + std::to_string(part) + "]";
    const bool length = refusal.field.find("].length") != std::string::npos;
    if (!length)
        return {at + ".count", mark + ": " + refusal.reason, refusal.detail};
    return {at + ".length",
            mark + " is longer than any bar of the rack gives.",
            "Enter a longer bar, or a shorter end that the shear holds."};
}

void take_kind(std::vector<BarKind>& kinds, const equipment::StockBar& bar) {
    auto known = std::find_if(kinds.begin(), kinds.end(), [&](const BarKind& kind) {
        return kind.drop == bar.drop && same_length(kind.length, bar.length);
    });
    if (known == kinds.end())
        known = kinds.insert(kinds.end(), BarKind{bar.length, bar.drop, 0, false, std::nullopt});
    known->length = smaller(known->length, bar.length);
    known->owned += bar.count.value_or(0);
    const bool to_buy = !bar.count;
    // Owned bars: the dearest counts. Bars to buy: their price, of two offers the better one.
    if (to_buy && !known->can_buy)
        known->price = bar.price;
    else if (to_buy == known->can_buy && bar.price)
        known->price = !known->price ? *bar.price
                       : to_buy      ? std::min(*known->price, *bar.price)
                                     : std::max(*known->price, *bar.price);
    known->can_buy = known->can_buy || to_buy;
}

} // namespace

std::int64_t steps_up(Length length, Length step) {
    return static_cast<std::int64_t>(std::ceil(length / step - k_creep));
}

bool same_section(const Section& a, const Section& b) {
    return a.shape == b.shape && same_length(a.width, b.width) && same_length(a.height, b.height) &&
           same_length(a.thickness, b.thickness) &&
           same_length(a.flange_thickness, b.flange_thickness);
}

std::vector<BarKind>
bar_kinds(const Section& section, const std::string& grade, const equipment::Shop& shop) {
    std::vector<BarKind> kinds;
    for (const equipment::StockBar& bar : shop.rack)
        if (bar.grade == grade && same_section(bar.section, section))
            take_kind(kinds, bar);
    base::stable_sort(kinds, [](const BarKind& a, const BarKind& b) {
        return a.drop != b.drop ? b.drop : a.length > b.length;
    });
    return kinds;
}

Length usable(const StockGroup& group, const BarKind& kind) {
    return kind.length - group.trim * 2.0 - group.shared_mitre;
}

std::int64_t usable_steps(const StockGroup& group, const BarKind& kind) {
    return static_cast<std::int64_t>(std::floor(usable(group, kind) / group.step + k_creep));
}

void make_list(StockGroup& group, const Plan& plan, const job::Job& job) {
    if (group.kinds.empty()) {
        group.problem =
            Refusal{"rack",
                    "The rack has no bar of " + section_title(group.section, job.style) + ", " +
                        group.grade + ".",
                    "Enter the lengths that are there, or that can be bought."};
        return;
    }
    group.step = step_of(group, job.style.system);
    cutting::CutProblem problem;
    std::int64_t shortest = 0;
    for (const StockPiece& piece : group.pieces) {
        const std::int64_t length = steps_up(piece.counted, group.step);
        problem.pieces.push_back({length, piece.count});
        shortest = shortest == 0 ? length : std::min(shortest, length);
    }
    std::vector<BarKind> long_enough;
    for (const BarKind& kind : group.kinds)
        if (usable_steps(group, kind) >= shortest)
            long_enough.push_back(kind);
    if (!long_enough.empty()) // else one by one is refused below, by the piece's name
        group.kinds = std::move(long_enough);
    group.aim = aim_of(group.kinds);
    problem.kerf = steps_up(group.kerf, group.step);
    problem.least_end = steps_up(group.least_end, group.step);
    const bool any_whole = !group.kinds.front().drop;
    for (const BarKind& kind : group.kinds) {
        cutting::CutStock stock;
        stock.length = std::max<std::int64_t>(1, usable_steps(group, kind));
        stock.cost = cost_of(group, kind, any_whole);
        if (!kind.can_buy)
            stock.available = kind.owned;
        problem.stock.push_back(stock);
    }
    auto list = cutting::cut_list(problem);
    if (list)
        group.list = std::move(list).value();
    else
        group.problem = in_the_job(group, plan, list.refusal());
}

} // namespace treadle::plan
