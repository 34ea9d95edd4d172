#include "cutting/master.h"

#include <algorithm>
#include <cmath>
#include <numeric>

namespace treadle::cutting {

namespace {

constexpr double k_helps = 1e-7;  // a reduced cost nearer to zero is rounding
constexpr double k_pivot = 1e-7;  // smaller elements are no pivots
constexpr double k_alike = 1e-12; // of two ratios
constexpr double k_short = 1e-7;  // a level below minus this is short
constexpr double k_zero = 1e-9;
constexpr double k_banned_cost = 1e6;
constexpr int k_pivots_an_inverse = 300;
constexpr double k_singular = 1e-11;

} // namespace

Master::Master(std::size_t rows) : rows_(rows), first_{0}, dual_(rows), image_(rows) {}

int Master::add(double cost, const std::vector<Entry>& entries) {
    cost_.push_back(cost);
    banned_.push_back(0);
    entries_.insert(entries_.end(), entries.begin(), entries.end());
    first_.push_back(entries_.size());
    place_.push_back(-1);
    return static_cast<int>(cost_.size()) - 1;
}

void Master::ban(int column, bool banned) {
    banned_[static_cast<std::size_t>(column)] = banned ? 1 : 0;
}

double Master::cost(std::size_t column) const {
    return banned_[column] != 0 ? k_banned_cost : cost_[column];
}

void Master::start(const std::vector<double>& demand) {
    std::fill(place_.begin(), place_.end(), -1);
    basis_.resize(rows_);
    inverse_.assign(rows_ * rows_, 0.0);
    for (std::size_t r = 0; r < rows_; ++r) {
        basis_[r] = static_cast<int>(r);
        place_[r] = static_cast<int>(r);
        inverse_[r * rows_ + r] = 1.0;
    }
    demand_ = demand;
    level_ = demand;
    pivots_since_inverse_ = 0;
    read_levels_and_duals();
}

double Master::objective() const {
    double sum = 0.0;
    for (std::size_t r = 0; r < rows_; ++r)
        sum += cost(static_cast<std::size_t>(basis_[r])) * level_[r];
    return sum;
}

double Master::reduced_cost(int column) const {
    const auto c = static_cast<std::size_t>(column);
    double sum = cost(c);
    for (std::size_t e = first_[c]; e < first_[c + 1]; ++e)
        sum -= entries_[e].count * dual_[static_cast<std::size_t>(entries_[e].row)];
    return sum;
}

void Master::make_image(int column) {
    const auto c = static_cast<std::size_t>(column);
    for (std::size_t r = 0; r < rows_; ++r) {
        const double* row = &inverse_[r * rows_];
        double sum = 0.0;
        for (std::size_t e = first_[c]; e < first_[c + 1]; ++e)
            sum += row[entries_[e].row] * entries_[e].count;
        image_[r] = sum;
    }
}

void Master::read_levels_and_duals() {
    std::fill(dual_.begin(), dual_.end(), 0.0);
    for (std::size_t r = 0; r < rows_; ++r) {
        const double of_row = cost(static_cast<std::size_t>(basis_[r]));
        const double* row = &inverse_[r * rows_];
        double sum = 0.0;
        for (std::size_t k = 0; k < rows_; ++k)
            sum += row[k] * demand_[k];
        level_[r] = sum;
        if (of_row != 0.0)
            for (std::size_t k = 0; k < rows_; ++k)
                dual_[k] += of_row * row[k];
    }
    work_ += static_cast<long long>(rows_ * rows_) / 2;
}

void Master::pivot(int column, std::size_t row) {
    const double reduced = reduced_cost(column);
    double* base = &inverse_[row * rows_];
    const double by = 1.0 / image_[row];
    for (std::size_t k = 0; k < rows_; ++k)
        base[k] *= by;
    level_[row] *= by;
    for (std::size_t k = 0; k < rows_; ++k)
        dual_[k] += reduced * base[k];
    std::size_t touched = 2;
    for (std::size_t r = 0; r < rows_; ++r) {
        const double times = image_[r];
        if (r == row || times == 0.0)
            continue;
        ++touched;
        double* other = &inverse_[r * rows_];
        for (std::size_t k = 0; k < rows_; ++k)
            other[k] -= times * base[k];
        level_[r] -= times * level_[row];
        if (level_[r] < 0.0 && level_[r] > -k_zero)
            level_[r] = 0.0;
    }
    place_[static_cast<std::size_t>(basis_[row])] = -1;
    basis_[row] = column;
    place_[static_cast<std::size_t>(column)] = static_cast<int>(row);
    work_ += static_cast<long long>(rows_ * touched) / 2;
    if (++pivots_since_inverse_ >= k_pivots_an_inverse)
        invert();
}

/// Gauss and Jordan on [basis | unit matrix], the largest element of each column as its pivot.
void Master::invert() {
    pivots_since_inverse_ = 0;
    const std::size_t n = rows_;
    std::vector<double> matrix(n * n, 0.0);
    std::vector<double> inverse(n * n, 0.0);
    for (std::size_t r = 0; r < n; ++r) {
        inverse[r * n + r] = 1.0;
        const auto c = static_cast<std::size_t>(basis_[r]);
        for (std::size_t e = first_[c]; e < first_[c + 1]; ++e)
            matrix[static_cast<std::size_t>(entries_[e].row) * n + r] += entries_[e].count;
    }
    for (std::size_t c = 0; c < n; ++c) {
        std::size_t best = c;
        for (std::size_t r = c + 1; r < n; ++r)
            if (std::abs(matrix[r * n + c]) > std::abs(matrix[best * n + c]))
                best = r;
        if (std::abs(matrix[best * n + c]) < k_singular)
            return; // the inverse there is serves on
        if (best != c)
            for (std::size_t k = 0; k < n; ++k) {
                std::swap(matrix[best * n + k], matrix[c * n + k]);
                std::swap(inverse[best * n + k], inverse[c * n + k]);
            }
        const double by = 1.0 / matrix[c * n + c];
        for (std::size_t k = 0; k < n; ++k) {
            matrix[c * n + k] *= by;
            inverse[c * n + k] *= by;
        }
        for (std::size_t r = 0; r < n; ++r) {
            const double times = matrix[r * n + c];
            if (r == c || times == 0.0)
                continue;
            for (std::size_t k = c; k < n; ++k)
                matrix[r * n + k] -= times * matrix[c * n + k];
            for (std::size_t k = 0; k < n; ++k)
                inverse[r * n + k] -= times * inverse[c * n + k];
            work_ += static_cast<long long>(n) / 2;
        }
    }
    inverse_ = std::move(inverse);
    read_levels_and_duals();
}

/// The row whose column reaches zero first; of those alike, the one with the largest pivot.
std::size_t Master::leaving_row() const {
    std::size_t leaves = rows_;
    double least = 0.0;
    for (std::size_t r = 0; r < rows_; ++r) {
        if (image_[r] <= k_pivot)
            continue;
        const double ratio = std::max(level_[r], 0.0) / image_[r];
        if (leaves == rows_ || ratio < least - k_alike ||
            (ratio <= least + k_alike && image_[r] > image_[leaves])) {
            leaves = r;
            least = ratio;
        }
    }
    return leaves;
}

bool Master::enter(int column) {
    const auto c = static_cast<std::size_t>(column);
    if (place_[c] >= 0 || banned_[c] != 0 || reduced_cost(column) >= -k_helps)
        return false;
    make_image(column);
    const std::size_t leaves = leaving_row();
    if (leaves == rows_)
        return false;
    pivot(column, leaves);
    return true;
}

int Master::most_helpful() {
    int best = -1;
    double most = -k_helps;
    for (std::size_t c = 0; c < cost_.size(); ++c) {
        if (place_[c] >= 0 || banned_[c] != 0)
            continue;
        const double reduced = reduced_cost(static_cast<int>(c));
        if (reduced < most) {
            most = reduced;
            best = static_cast<int>(c);
        }
    }
    work_ += static_cast<long long>(entries_.size()) / 2;
    return best;
}

void Master::improve(int most_pivots) {
    for (int done = 0; done < most_pivots; ++done) {
        const int column = most_helpful();
        if (column < 0 || !enter(column))
            return;
    }
}

bool Master::demand(const std::vector<double>& demand) {
    demand_ = demand;
    read_levels_and_duals();
    return mend();
}

/// Column that mends a short row at the least loss of cost.
int Master::mending_column(std::size_t row) const {
    const double* inverse = &inverse_[row * rows_];
    int best = -1;
    double least = 0.0;
    double largest = 0.0;
    for (std::size_t c = 0; c < cost_.size(); ++c) {
        if (place_[c] >= 0 || banned_[c] != 0)
            continue;
        double at = 0.0;
        double reduced = cost_[c];
        for (std::size_t e = first_[c]; e < first_[c + 1]; ++e) {
            const auto k = static_cast<std::size_t>(entries_[e].row);
            at += inverse[k] * entries_[e].count;
            reduced -= entries_[e].count * dual_[k];
        }
        if (at >= -k_pivot)
            continue;
        const double ratio = std::max(reduced, 0.0) / -at;
        if (best < 0 || ratio < least - k_alike || (ratio <= least + k_alike && -at > largest)) {
            best = static_cast<int>(c);
            least = ratio;
            largest = -at;
        }
    }
    return best;
}

/// Dual pivots until no row is short: the farthest outside first, measured across its row.
bool Master::mend() {
    const int most = 50 + 4 * static_cast<int>(rows_); // more would be a circle
    for (int done = 0; done < most; ++done) {
        std::size_t leaves = rows_;
        double farthest = 0.0;
        for (std::size_t r = 0; r < rows_; ++r) {
            if (level_[r] >= -k_short)
                continue;
            const double* row = &inverse_[r * rows_];
            const double across = std::inner_product(row, row + rows_, row, 0.0);
            work_ += static_cast<long long>(rows_) / 2;
            if (level_[r] * level_[r] > farthest * across) {
                farthest = level_[r] * level_[r] / across;
                leaves = r;
            }
        }
        if (leaves == rows_) {
            for (double& level : level_)
                level = std::max(level, 0.0);
            return true;
        }
        const int column = mending_column(leaves);
        work_ += static_cast<long long>(entries_.size()) / 2;
        if (column < 0)
            return false;
        make_image(column);
        pivot(column, leaves);
    }
    return false;
}

} // namespace treadle::cutting
