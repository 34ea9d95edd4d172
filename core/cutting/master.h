// The linear program behind a cutting plan: how often each pattern is cut, fractions allowed, at
// the least cost, every piece at least as often as asked.
//
// Method   revised simplex with the whole inverse of the basis: a few hundred rows, and after a
//          change of demand the old basis is a few dual pivots from the new best one
// Valid    rows and columns as they come; every answer is checked elsewhere in whole numbers, so
//          rounding here costs time, never truth

#pragma once

#include <cstddef>
#include <vector>

namespace treadle::cutting {

struct Entry {
    int row;
    double count;
};

class Master {
public:
    explicit Master(std::size_t rows);

    /// The first columns, one for each row, are a unit matrix: the basis that start() begins with.
    int add(double cost, const std::vector<Entry>& entries);
    void start(const std::vector<double>& demand);
    /// New demand, old basis. False when no column mends what is short.
    [[nodiscard]] bool demand(const std::vector<double>& demand);
    /// Takes columns in until none helps, or so many pivots are made.
    void improve(int most_pivots);
    /// One pivot with this column; false when it does not help.
    bool enter(int column);
    /// A column that is not to be used from here on, or is again. Takes effect with demand().
    void ban(int column, bool banned);

    [[nodiscard]] std::size_t rows() const { return rows_; }
    [[nodiscard]] std::size_t columns() const { return cost_.size(); }
    [[nodiscard]] double dual(std::size_t row) const { return dual_[row]; }
    [[nodiscard]] double objective() const;
    [[nodiscard]] double reduced_cost(int column) const;
    [[nodiscard]] int basic(std::size_t row) const { return basis_[row]; }
    [[nodiscard]] double level(std::size_t row) const { return level_[row]; }
    [[nodiscard]] long long work() const { return work_; } ///< multiplications, by two

private:
    [[nodiscard]] double cost(std::size_t column) const;
    [[nodiscard]] int most_helpful();
    [[nodiscard]] std::size_t leaving_row() const;
    void make_image(int column);
    void pivot(int column, std::size_t row);
    void read_levels_and_duals();
    void invert();
    [[nodiscard]] bool mend();
    [[nodiscard]] int mending_column(std::size_t row) const;

    std::size_t rows_;
    std::vector<double> cost_;
    std::vector<char> banned_;
    std::vector<std::size_t> first_; ///< of each column in entries_, and the end
    std::vector<Entry> entries_;
    std::vector<int> place_; ///< row that a column is basic in, or -1
    std::vector<int> basis_;
    std::vector<double> inverse_; ///< row after row
    std::vector<double> demand_;
    std::vector<double> level_;
    std::vector<double> dual_;
    std::vector<double> image_; ///< of the entering column
    int pivots_since_inverse_ = 0;
    long long work_ = 0;
};

} // namespace treadle::cutting
