#include "assembly/rule_lines.h"

#include "base/contracts.h"

#include "layout/first_fault.h"
#include "layout/guard_limit.h"

namespace treadle::assembly {

namespace {

/// Equal but for the rounding of a unit conversion counts as equal.
Held held_of(Length value, Length limit, bool at_most, bool sphere) {
    const Length low = at_most ? value : limit;
    const Length high = at_most ? limit : value;
    if (layout::clearly_less(high, low))
        return Held::breaks;
    return sphere && !layout::clearly_less(low, high) ? Held::at_limit : Held::meets;
}

} // namespace

void hold(std::vector<RuleLine>& lines, const char* rule, const std::string& words, Length value) {
    const layout::GuardLimit* row = layout::find_guard_limit(rule);
    TREADLE_EXPECT(row != nullptr);
    const auto add = [&](Length limit, bool at_most) {
        RuleLine line{rule,
                      words,
                      value,
                      limit,
                      at_most,
                      row->sphere && at_most,
                      held_of(value, limit, at_most, row->sphere),
                      row->card->source,
                      row->card->evidence,
                      row->remark};
        if (at_most && row->may_exceed && line.held == Held::breaks)
            line.held = Held::at_limit;
        lines.push_back(std::move(line));
    };
    if (const auto least = layout::least_of(*row))
        add(*least, false);
    if (const auto greatest = layout::greatest_of(*row))
        add(*greatest, true);
}

Length opening_limit(const char* rule) {
    const layout::GuardLimit* row = layout::find_guard_limit(rule);
    TREADLE_EXPECT(row != nullptr && layout::greatest_of(*row));
    return *layout::greatest_of(*row);
}

void hold_pool_pickets(std::vector<RuleLine>& lines, Length tops, Length gap) {
    if (layout::clearly_less(tops, inches(45.0)))
        hold(lines, "pool-picket-gap", "gap between pickets, rails under 45 in apart", gap);
}

void hold(std::vector<RuleLine>& lines,
          const Bound& bound,
          const std::string& words,
          Length value) {
    lines.push_back({bound.rule,
                     words,
                     value,
                     bound.limit,
                     bound.at_most,
                     bound.sphere,
                     held_of(value, bound.limit, bound.at_most, bound.sphere),
                     bound.source,
                     bound.evidence,
                     bound.remark});
}

void hold(std::vector<RuleLine>& lines,
          const Working& least,
          const std::string& words,
          Length value,
          bool at_most) {
    const auto* limit = std::get_if<Length>(&least.result.value);
    TREADLE_EXPECT(limit != nullptr && least.card != nullptr);
    lines.push_back({least.card->id,
                     words,
                     value,
                     *limit,
                     at_most,
                     false,
                     held_of(value, *limit, at_most, false),
                     least.card->source,
                     least.card->evidence,
                     least.note});
}

} // namespace treadle::assembly
