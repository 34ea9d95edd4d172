#include "cutting/problem.h"

#include <algorithm>
#include <map>
#include <numeric>
#include <string>

namespace treadle::cutting {

namespace {

using base::Refusal;
using base::Result;

using Lengths = std::map<std::int64_t, std::int64_t, std::greater<>>; // and how many

std::string at(const char* list, std::size_t index, const char* field) {
    return std::string(list) + "[" + std::to_string(index) + "]." + field;
}

std::string whole(std::int64_t number) { return std::to_string(number); }

std::optional<Refusal> stock_fault(const CutProblem& problem) {
    if (problem.stock.empty())
        return Refusal{"stock", "There is no bar to cut from.", ""};
    for (std::size_t k = 0; k < problem.stock.size(); ++k) {
        const CutStock& stock = problem.stock[k];
        if (stock.length <= 0 || stock.length > k_longest_bar)
            return Refusal{at("stock", k, "length"),
                           "A bar of length " + whole(stock.length) + " cannot be cut.",
                           "1 to " + whole(k_longest_bar)};
        if (stock.cost < 0 || stock.cost > k_longest_bar)
            return Refusal{at("stock", k, "cost"),
                           "A bar cannot cost " + whole(stock.cost) + ".",
                           "0 to " + whole(k_longest_bar)};
        if (stock.available && (*stock.available < 0 || *stock.available > k_most_pieces))
            return Refusal{at("stock", k, "available"),
                           "There cannot be " + whole(*stock.available) + " bars.",
                           "0 to " + whole(k_most_pieces)};
        if (!stock.available && stock.cost == 0)
            return Refusal{at("stock", k, "cost"), "Bars without end and without cost.", ""};
    }
    if (problem.kerf < 0 || problem.kerf > k_longest_bar)
        return Refusal{"kerf", "A kerf cannot be " + whole(problem.kerf) + ".", ""};
    if (problem.least_end < 0 || problem.least_end > k_longest_bar)
        return Refusal{"least_end", "An end cannot be " + whole(problem.least_end) + ".", ""};
    return std::nullopt;
}

/// The fill that leaves an end to hold, and the fills that leave none.
bool fits(const CutProblem& problem, const CutStock& stock, std::int64_t length) {
    const bool leaves_end = length + problem.kerf + problem.least_end <= stock.length ||
                            (problem.least_end == 0 && length <= stock.length);
    const bool leaves_none = length <= stock.length && length + problem.kerf >= stock.length;
    return leaves_end || leaves_none;
}

Result<Lengths> merged(const CutProblem& problem) {
    if (problem.pieces.empty())
        return Refusal{"pieces", "There is no piece to cut.", ""};
    Lengths lengths;
    std::int64_t pieces = 0;
    for (std::size_t i = 0; i < problem.pieces.size(); ++i) {
        const CutPiece& piece = problem.pieces[i];
        if (piece.length <= 0 || piece.length > k_longest_bar)
            return Refusal{at("pieces", i, "length"),
                           "A piece of length " + whole(piece.length) + " cannot be cut.",
                           "1 to " + whole(k_longest_bar)};
        if (piece.count <= 0 || piece.count > k_most_pieces)
            return Refusal{at("pieces", i, "count"),
                           "There cannot be " + whole(piece.count) + " pieces of length " +
                               whole(piece.length) + ".",
                           "1 to " + whole(k_most_pieces)};
        pieces += piece.count;
        if (pieces > k_most_pieces)
            return Refusal{at("pieces", i, "count"),
                           "With the pieces of length " + whole(piece.length) +
                               " there are too many for one list.",
                           "at most " + whole(k_most_pieces) + " pieces in all"};
        const bool held =
            std::any_of(problem.stock.begin(), problem.stock.end(), [&](const CutStock& stock) {
                return stock.available.value_or(1) > 0 && fits(problem, stock, piece.length);
            });
        if (!held)
            return Refusal{at("pieces", i, "length"),
                           "A piece of length " + whole(piece.length) +
                               " is longer than every bar holds.",
                           ""};
        lengths[piece.length] += piece.count;
    }
    if (lengths.size() > k_most_lengths)
        return Refusal{
            "pieces",
            "Too many different lengths: " + whole(static_cast<std::int64_t>(lengths.size())) + ".",
            "at most " + whole(static_cast<std::int64_t>(k_most_lengths))};
    return lengths;
}

/// The longest sum of pieces up to `room`.
int reachable(const CutList& list, int room) {
    std::vector<int> spare(static_cast<std::size_t>(room) + 1, -1); // of the piece at hand
    spare[0] = 0;
    for (std::size_t i = 0; i < list.size(); ++i) {
        for (std::size_t j = 0; j < spare.size(); ++j) {
            const auto length = static_cast<std::size_t>(list.length[i]);
            if (spare[j] >= 0)
                spare[j] = list.demand[i];
            else if (j >= length && spare[j - length] > 0)
                spare[j] = spare[j - length] - 1;
        }
        if (spare.back() >= 0)
            return room;
    }
    int most = room;
    while (spare[static_cast<std::size_t>(most)] < 0)
        --most;
    return most;
}

} // namespace

Result<CutList> cut_list(const CutProblem& problem) {
    if (auto fault = stock_fault(problem))
        return *fault;
    const auto lengths = merged(problem);
    if (!lengths)
        return lengths.refusal();
    CutList list;
    // With the ends in it, a bar's length counts as well as the pieces'.
    list.ends = problem.least_end > 0;
    std::int64_t common = 0;
    for (const auto& [length, count] : *lengths)
        common = std::gcd(common, length + problem.kerf);
    if (list.ends) {
        common = std::gcd(common, problem.kerf);
        common = std::gcd(common, problem.least_end);
        for (const CutStock& stock : problem.stock)
            common = std::gcd(common, stock.length);
    }
    list.scale = common;
    list.kerf = problem.kerf;
    for (const auto& [length, count] : *lengths) {
        list.length.push_back(static_cast<int>((length + problem.kerf) / common));
        list.demand.push_back(static_cast<int>(count));
    }
    std::int64_t unit = 0;
    for (std::size_t k = 0; k < problem.stock.size(); ++k) {
        const CutStock& stock = problem.stock[k];
        const std::int64_t closed = (stock.length + problem.kerf) / common;
        if (closed > k_longest_fill)
            return Refusal{at("stock", k, "length"),
                           "The lengths have no common measure that is coarse enough.",
                           "at most " + whole(k_longest_fill) +
                               " steps a bar: round the pieces up to a coarser step"};
        StockKind kind;
        kind.closed = static_cast<int>(closed);
        kind.full = list.ends ? static_cast<int>(stock.length / common) : 0;
        kind.open = list.ends ? static_cast<int>(std::max<std::int64_t>(
                                    0, (stock.length - problem.least_end) / common))
                              : kind.closed;
        kind.cost = stock.cost;
        if (stock.available)
            kind.available = static_cast<int>(*stock.available);
        list.stock.push_back(kind);
        unit = std::gcd(unit, stock.cost);
    }
    list.unit = std::max<std::int64_t>(unit, 1);
    if (list.stock.size() == 1 && !list.ends) {
        StockKind& kind = list.stock.front();
        kind.closed = kind.open = reachable(list, kind.closed);
    }
    return list;
}

std::int64_t own_length(const CutList& list, std::size_t piece) {
    return list.length[piece] * list.scale - list.kerf;
}

} // namespace treadle::cutting
