#include "layout/stock.h"

#include <cmath>

#include "layout/cards.h"
#include "layout/first_fault.h"

namespace treadle::layout {

namespace {

using base::Evidence;
using quantity::place_fault;
using quantity::size_fault;

constexpr base::CardSymbol k_usable_symbols[] = {
    {"S", "bar"}, {"a", "trim at the start"}, {"z", "trim at the end"}, {"U", "usable length"}};
constexpr base::CardSymbol k_piece_symbols[] = {{"U", "usable length"},
                                                {"l", "piece"},
                                                {"k", "lost by a cut"},
                                                {"h", "shortest rest that can be held"},
                                                {"m", "pieces"}};

constexpr double k_most_pieces = 100'000.0; // more out of one bar is a slip in the unit

} // namespace

const base::FormulaCard k_bar_usable_card{"bar-usable",
                                          "Usable length of a bar",
                                          "U = S - a - z",
                                          k_usable_symbols,
                                          "nominal length, never with the mill's plus tolerance",
                                          "derived-geometry",
                                          Evidence::derived,
                                          ""};
const base::FormulaCard k_bar_pieces_card{
    "bar-pieces",
    "Equal pieces out of a bar",
    "m = floor((U + k) / (l + k)); one less when the rest is below h and not nothing",
    k_piece_symbols,
    "one length of piece",
    "derived-geometry",
    Evidence::derived,
    "down"};

base::Result<Length> usable_length(const Bar& bar) {
    if (const auto fault = first_fault({size_fault(bar.length, "length"),
                                        place_fault(bar.trim_start, "trim_start"),
                                        place_fault(bar.trim_end, "trim_end")}))
        return *fault;
    const Length usable = bar.length - bar.trim_start - bar.trim_end;
    if (!(usable > bar.length * 1e-9))
        return base::Refusal{bar.trim_start >= bar.length ? "trim_start" : "trim_end",
                             "The trims leave nothing of the bar.",
                             ""};
    return usable;
}

base::Result<Working> usable_working(const Bar& bar) {
    const auto usable = usable_length(bar);
    if (!usable.ok())
        return usable.refusal();
    return Working{&k_bar_usable_card,
                   {{"S", bar.length}, {"a", bar.trim_start}, {"z", bar.trim_end}},
                   {"U", *usable},
                   ""};
}

base::Result<PiecesOfBar> pieces_of_bar(const EqualPieces& q) {
    const auto usable = usable_length(q.bar);
    if (!usable.ok())
        return usable.refusal();
    if (const auto fault = first_fault({size_fault(q.piece, "piece"),
                                        place_fault(q.kerf, "kerf"),
                                        place_fault(q.holdable, "holdable")}))
        return *fault;
    const double fit = (*usable + q.kerf) / (q.piece + q.kerf);
    if (fit > k_most_pieces)
        return base::Refusal{"piece", "The piece is too short to be meant: check its unit.", ""};
    PiecesOfBar out;
    out.count = static_cast<int>(std::floor(fit + 1e-9));
    const auto rest = [&](int count) {
        const Length left = *usable - static_cast<double>(count) * (q.piece + q.kerf);
        return left > Length{} && left > *usable * 1e-9 ? left : Length{};
    };
    out.drop = rest(out.count);
    if (out.count > 0 && out.drop > Length{} && clearly_less(out.drop, q.holdable))
        out.drop = rest(--out.count);
    return out;
}

base::Result<Working> pieces_working(const EqualPieces& q) {
    const auto pieces = pieces_of_bar(q);
    if (!pieces.ok())
        return pieces.refusal();
    return Working{&k_bar_pieces_card,
                   {{"U", *usable_length(q.bar)}, {"l", q.piece}, {"k", q.kerf}, {"h", q.holdable}},
                   {"m", quantity::Number{static_cast<double>(pieces->count), 0}},
                   pieces->count == 0 ? "The bar is shorter than the piece." : ""};
}

} // namespace treadle::layout
