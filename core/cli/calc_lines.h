// `treadle calc -`: a line of JSON out for each line in, in step with a program that waits for it.

#pragma once

#include "job/job.h"

#include <string>
#include <string_view>

namespace treadle::cli {

/// A longer line is no calculation; it is answered with a refusal and not kept.
inline constexpr std::size_t k_longest_line = 1024 * 1024;

/// Cuts what comes in, in whatever pieces, into lines and answers each.
class CalcLines {
public:
    explicit CalcLines(const job::Catalog& catalog) : catalog_(catalog) {}

    /// The answers to the lines that are whole now, each with its line end.
    [[nodiscard]] std::string take(std::string_view piece);
    /// The answer to a last line that has no line end, or nothing.
    [[nodiscard]] std::string end();

private:
    void answer(std::string_view line, std::string& out) const;

    const job::Catalog& catalog_;
    std::string begun_; ///< start of a line whose end has not come yet
    bool too_long_ = false;
};

} // namespace treadle::cli
