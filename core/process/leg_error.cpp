#include "process/leg_error.h"

#include "process/cards.h"
#include "process/input_check.h"

#include <cmath>
#include <optional>

namespace treadle::process {

namespace {

using base::Evidence;

constexpr base::CardSymbol k_worst_symbols[] = {
    {"w", "farthest that a leg can be off, either way"},
    {"d", "known offset"},
    {"e", "an error, either way"},
};
constexpr base::CardSymbol k_rss_symbols[] = {
    {"s", "how far most legs are off at most, either way"},
    {"d", "known offset"},
    {"e", "an error, either way"},
};

Length size_of(Length value) { return value < Length{} ? -value : value; }

std::optional<base::Refusal> fault_of(const LegErrors& leg) {
    if (leg.errors.empty())
        return base::Refusal{"errors", "There is no error to put together.", ""};
    InputCheck check;
    check.length_or_zero(size_of(leg.offset), "offset");
    for (const Length error : leg.errors)
        check.length_or_zero(error, "errors");
    if (check.failed())
        return check.refusal();
    return std::nullopt;
}

Working
working_of(const base::FormulaCard& card, const LegErrors& leg, const char* symbol, Length result) {
    Working working{&card, {{"d", leg.offset}}, {symbol, result}, ""};
    for (const Length error : leg.errors)
        working.values.push_back({"e", error});
    return working;
}

} // namespace

const base::FormulaCard k_leg_worst_card{
    "leg-worst",
    "Farthest that a finished leg can be off",
    "w = |d| + sum of e",
    k_worst_symbols,
    "cut, stop and deduction only; angle, wear and flatness are not in it",
    "derived-geometry",
    Evidence::derived,
    ""};
const base::FormulaCard k_leg_rss_card{
    "leg-rss",
    "How far most finished legs are off",
    "s = |d| + sqrt(sum of e^2)",
    k_rss_symbols,
    "errors that do not hang together; single legs may be farther off",
    "common-practice-bending",
    Evidence::common_practice,
    ""};

base::Result<Working> leg_worst_working(const LegErrors& leg) {
    if (auto fault = fault_of(leg))
        return *fault;
    Length sum = size_of(leg.offset);
    for (const Length error : leg.errors)
        sum += error;
    return working_of(k_leg_worst_card, leg, "w", sum);
}

base::Result<Working> leg_rss_working(const LegErrors& leg) {
    if (auto fault = fault_of(leg))
        return *fault;
    double squares = 0.0;
    for (const Length error : leg.errors) {
        const double error_mm = quantity::to_millimetres(error);
        squares += error_mm * error_mm;
    }
    return working_of(
        k_leg_rss_card, leg, "s", size_of(leg.offset) + millimetres(std::sqrt(squares)));
}

} // namespace treadle::process
