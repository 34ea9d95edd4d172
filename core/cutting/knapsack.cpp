#include "cutting/knapsack.h"

#include <algorithm>
#include <cstdint>
#include <cstring>
#include <iterator>
#include <numeric>

namespace treadle::cutting {

namespace {

#if defined(__wasm_simd128__)
using Four = float __attribute__((vector_size(16)));
#endif

constexpr float k_nothing = -1e30F;                // no sum of pieces comes to this length
constexpr std::size_t k_most_floats = 6'000'000;   // 24 MB of rows
constexpr long long k_most_looked_at = 40'000'000; // of work, for all fills
constexpr long long k_look = 2;

} // namespace

Knapsack::Knapsack(std::vector<int> lengths, int longest, bool exact)
    : lengths_(std::move(lengths)),
      longest_(longest),
      exact_(exact) {}

void Knapsack::run(const Pass& pass, const float* from, float* to) const {
    const int width = pass.count * lengths_[static_cast<std::size_t>(pass.piece)];
    const float worth =
        prices_[static_cast<std::size_t>(pass.piece)] * static_cast<float>(pass.count);
    std::copy(from, from + width, to);
    const float* without = from + width;
    float* out = to + width;
    const int cells = longest_ + 1 - width;
    int j = 0;
#if defined(__wasm_simd128__)
    // The compiler makes three instructions of a choice of four; the machine has one.
    const Four more{worth, worth, worth, worth};
    const auto four = [&](int at) {
        Four taken;
        Four left;
        std::memcpy(&taken, from + at, sizeof taken);
        std::memcpy(&left, without + at, sizeof left);
        taken = __builtin_wasm_pmax_f32x4(taken + more, left);
        std::memcpy(out + at, &taken, sizeof taken);
    };
    for (; j + 16 <= cells; j += 16) {
        four(j);
        four(j + 4);
        four(j + 8);
        four(j + 12);
    }
#elif defined(__wasm__)
    // The engine branches to choose a float, but not to choose a whole number. The bits of floats
    // from zero up are in the same order, and below zero there is k_nothing alone.
    for (; j < cells; ++j) {
        const float taken = from[j] + worth;
        std::int32_t with = 0;
        std::int32_t left = 0;
        std::memcpy(&with, &taken, sizeof with);
        std::memcpy(&left, without + j, sizeof left);
        with = left > with ? left : with;
        std::memcpy(out + j, &with, sizeof with);
    }
#endif
    for (; j < cells; ++j) {
        const float taken = from[j] + worth;
        out[j] = without[j] > taken ? without[j] : taken;
    }
}

void Knapsack::solve(const std::vector<float>& prices, const Counts& limits, bool free_pieces) {
    prices_ = prices;
    passes_.clear();
    for (std::size_t i = 0; i < lengths_.size(); ++i) {
        if (!(prices[i] > 0.0F) && !free_pieces)
            continue;
        int left = std::min(limits[i], longest_ / lengths_[i]);
        for (int take = 1; left > 0; take *= 2) {
            const int count = std::min(take, left);
            passes_.push_back({static_cast<int>(i), count});
            left -= count;
        }
    }
    const std::size_t row = row_size();
    stride_ = 1;
    while ((passes_.size() / stride_ + stride_ + 2) * row > k_most_floats &&
           stride_ * stride_ < passes_.size())
        ++stride_;
    kept_.resize((passes_.size() / stride_ + 1) * row);
    between_.resize(stride_ > 1 ? stride_ * row : 0);
    std::fill(
        kept_.begin(), kept_.begin() + static_cast<std::ptrdiff_t>(row), exact_ ? k_nothing : 0.0F);
    kept_[0] = 0.0F;
    const float* from = kept_.data();
    for (std::size_t p = 0; p < passes_.size(); ++p) {
        float* to =
            (p + 1) % stride_ == 0 ? &kept_[(p + 1) / stride_ * row] : &between_[p % stride_ * row];
        run(passes_[p], from, to);
        from = to;
    }
    last_.assign(from, from + row);
    work_ += static_cast<long long>(row * (passes_.size() + 1)) / 2;
}

Fill Knapsack::best(const StockKind& kind) const {
    if (!exact_)
        return {kind.closed, value(kind.closed)};
    Fill best{0, 0.0F};
    for (int j = 0; j <= kind.closed; ++j) {
        if (j == kind.open + 1 && j < kind.full)
            j = kind.full;
        if (j <= kind.closed && value(j) > best.value)
            best = {j, value(j)};
    }
    return best;
}

void Knapsack::read(int length, Counts& counts) {
    counts.assign(lengths_.size(), 0);
    const std::size_t row = row_size();
    std::size_t end = passes_.size(); // rows 0 to end are of this block and those before it
    while (end > 0) {
        const std::size_t begin = (end - 1) / stride_ * stride_;
        const float* from = &kept_[begin / stride_ * row];
        for (std::size_t p = begin; p + 1 < end && stride_ > 1; ++p) {
            run(passes_[p], from, &between_[(p - begin) * row]);
            from = &between_[(p - begin) * row];
        }
        const auto row_of = [&](std::size_t r) {
            return r % stride_ == 0 ? &kept_[r / stride_ * row] : &between_[(r - 1 - begin) * row];
        };
        float value = 0.0F;
        if (end % stride_ == 0 || stride_ == 1) {
            value = row_of(end)[length];
        } else { // the last row of all: made anew from the one before
            const Pass& pass = passes_[end - 1];
            const int width = pass.count * lengths_[static_cast<std::size_t>(pass.piece)];
            const float* before = row_of(end - 1);
            value = before[length];
            if (length >= width)
                value = std::max(value,
                                 before[length - width] +
                                     prices_[static_cast<std::size_t>(pass.piece)] *
                                         static_cast<float>(pass.count));
        }
        for (std::size_t r = end; r > begin; --r) {
            const float* before = row_of(r - 1);
            if (before[length] != value) {
                const Pass& pass = passes_[r - 1];
                counts[static_cast<std::size_t>(pass.piece)] += pass.count;
                length -= pass.count * lengths_[static_cast<std::size_t>(pass.piece)];
            }
            value = before[length];
        }
        end = begin;
    }
}

std::optional<std::vector<Counts>>
Knapsack::all(const StockKind& kind, float least, std::size_t most) {
    if (stride_ > 1)
        return std::nullopt;
    struct Step {
        std::size_t pieces; ///< still to choose: the first so many
        int left;           ///< length
        float need;
        int count;
    };
    std::vector<std::size_t> rows{0}; // after the first so many pieces
    std::vector<std::size_t> piece;
    Counts limit;
    for (std::size_t p = 0; p < passes_.size(); ++p) {
        if (piece.empty() || piece.back() != static_cast<std::size_t>(passes_[p].piece)) {
            piece.push_back(static_cast<std::size_t>(passes_[p].piece));
            limit.push_back(0);
            rows.push_back(0);
        }
        limit.back() += passes_[p].count;
        rows.back() = p + 1;
    }
    // Exact rows know only fills of just their length: any shorter one may do as well.
    std::vector<float> shorter;
    if (exact_)
        for (const std::size_t row : rows) {
            const auto* from = &kept_[row * row_size()];
            std::partial_sum(from,
                             from + row_size(),
                             std::back_inserter(shorter),
                             [](float a, float b) { return std::max(a, b); });
            work_ += static_cast<long long>(row_size());
        }
    const auto can = [&](std::size_t p, int left) {
        const std::size_t row = exact_ ? p : rows[p];
        return (exact_ ? shorter : kept_)[row * row_size() + static_cast<std::size_t>(left)];
    };
    std::vector<Counts> found;
    Counts counts(lengths_.size(), 0);
    const long long until = work_ + k_most_looked_at;
    std::vector<Step> stack{{piece.size(), kind.closed, least, 0}};
    const auto full = [&](int left) {
        for (std::size_t p = 0; p < piece.size(); ++p)
            if (counts[piece[p]] < limit[p] && lengths_[piece[p]] <= left)
                return false;
        return true;
    };
    while (!stack.empty()) {
        Step& top = stack.back();
        if (top.pieces == 0) {
            const int fill = kind.closed - top.left;
            if (exact_ ? kind.takes(fill) : full(top.left))
                found.push_back(counts);
            work_ += static_cast<long long>(piece.size());
            if (found.size() > most || work_ > until)
                return std::nullopt;
            stack.pop_back();
            continue;
        }
        const std::size_t p = top.pieces - 1;
        counts[piece[p]] = 0;
        bool deeper = false;
        while (!deeper && top.count <= limit[p]) {
            const int count = top.count++;
            const int left = top.left - count * lengths_[piece[p]];
            if (left < 0)
                break;
            const float need = top.need - static_cast<float>(count) * prices_[piece[p]];
            work_ += k_look;
            if (can(p, left) < need)
                continue;
            counts[piece[p]] = count;
            stack.push_back({p, left, need, 0});
            deeper = true;
        }
        if (!deeper)
            stack.pop_back();
    }
    return found;
}

} // namespace treadle::cutting
