// What the seed of a lesson chooses from: lesson_readers.h.

#include "archive/lesson_readers.h"
#include "base/text.h"
#include "quantity/parse.h"

#include <cmath>
#include <utility>

namespace treadle::archive {

namespace {

/// The unit in which a length of a range is written on.
UnitSystem system_of(std::string_view text) {
    return text.find("mm") != text.npos || text.find("cm") != text.npos ||
                   base::trim(text).substr(base::trim(text).size() - 1) == "m"
               ? UnitSystem::metric
               : UnitSystem::inch;
}

struct Range {
    std::string from;
    std::string to;
    std::string by;
};

/// Every length from `from` to `to`, `by` apart.
void spread(const Place& at, const std::string& input, const Range& range, lesson::Varied& out) {
    const auto from = quantity::parse_length(range.from, std::nullopt, "from");
    const auto to = quantity::parse_length(range.to, std::nullopt, "to");
    const auto by = quantity::parse_length(range.by, std::nullopt, "by");
    for (const auto* length : {&from, &to, &by})
        if (!*length)
            return at.refuse(length->refusal());
    if (!(*by > Length{}) || *to < *from)
        return at.refuse("A range goes up, by steps above zero.", "", "by");
    const double steps = std::floor((*to - *from) / *by + 1e-9);
    if (!(steps < static_cast<double>(lesson::k_most_sets)))
        return at.refuse("There are more steps in this range than a lesson may hold.",
                         "at most " + std::to_string(lesson::k_most_sets),
                         "by");
    const PrintStyle style{system_of(range.from), 64};
    for (int i = 0; i <= static_cast<int>(steps); ++i) {
        const Length exact = *from + *by * i;
        // Sums in millimetres creep off the sixty-fourths that somebody wrote.
        const Length step = quantity::round_to_step(exact, style, quantity::Rounding::nearest);
        const bool same = std::fabs(quantity::to_millimetres(exact - step)) < 1e-6;
        out.sets.push_back(
            {{input, calc::Input(quantity::write_exact(same ? step : exact, style.system))}});
    }
}

} // namespace

void read_value(const Place& at, lesson::Varied& out) {
    std::string input;
    std::vector<calc::Input> values;
    Range range;
    Members members(at);
    members.may("sets", out.sets).may("input", input).may("values", values);
    members.may("from", range.from).may("to", range.to).may("by", range.by);
    members.finish();
    if (at.failed())
        return;
    const bool has_sets = !out.sets.empty();
    const bool has_range = !range.from.empty() || !range.to.empty() || !range.by.empty();
    const int ways = (has_sets ? 1 : 0) + (values.empty() ? 0 : 1) + (has_range ? 1 : 0);
    if (ways != 1 || input.empty() != has_sets)
        return at.refuse("One of these is needed: sets; an input and its values; an input from, to "
                         "and by.");
    for (calc::Input& value : values)
        out.sets.push_back({{input, std::move(value)}});
    if (has_range)
        spread(at, input, range, out);
    check_count(at, out.sets, lesson::k_most_sets, "sets");
}

} // namespace treadle::archive
