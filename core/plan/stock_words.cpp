#include "plan/stock_words.h"

#include "base/text.h"
#include "plan/words.h"

#include <cmath>

namespace treadle::plan {

namespace {

std::string bare(Length value, PrintStyle style, Rounding rounding = Rounding::nearest) {
    return quantity::print_bare(value, {style.system, 64, style.both}, rounding);
}

std::string counted(int count, const char* one, const char* many) {
    return std::to_string(count) + " " + (count == 1 ? one : many);
}

std::string money(double value) { return base::write_fixed(value, 2); }

/// "2 drops and 3 bars"
std::string bars_words(int whole, int drops) {
    const std::string bars = counted(whole, "bar", "bars");
    if (drops == 0)
        return bars;
    const std::string rests = counted(drops, "drop", "drops");
    return whole == 0 ? rests : rests + " and " + bars;
}

bool only_drops(const StockGroup& group) {
    return !group.kinds.empty() && group.kinds.front().drop;
}

/// The aim's own unit: bars, a length, money.
std::string aim_words(const StockGroup& group, std::int64_t cost, PrintStyle style) {
    switch (group.aim) {
    case StockAim::bars:
        return std::to_string(cost);
    case StockAim::length:
        return quantity::print(group.step * static_cast<double>(cost), style);
    case StockAim::money:
        return money(static_cast<double>(cost) / 100.0);
    }
    return "";
}

std::string no_plan_words(const StockGroup& group, const GroupPlan& plan) {
    if (group.problem)
        return group.problem->reason;
    return plan.falls_short ? "The rack does not reach: enter more bars, or a length to buy."
                            : "No plan yet.";
}

const char* kerf_verb(Parting parting) { return parting == Parting::saw ? "Sawn" : "Sheared"; }

template <class T>
std::string known(const std::optional<T>& value, PrintStyle style) {
    return value ? quantity::print(*value, style) : std::string("not known");
}

} // namespace

std::string stock_title(const StockGroup& group, PrintStyle style) {
    return section_title(group.section, style) + ", " + group.grade;
}

std::string parting_words(const StockGroup& group, PrintStyle style) {
    std::string text = kerf_verb(group.parting);
    text += group.kerf > Length{}
                ? ", " + quantity::print_decimal(group.kerf, style) + " lost a cut"
                : std::string(", nothing lost");
    if (group.least_end > Length{})
        text += "; ends under " + bare(group.least_end, style) + " cannot be held";
    text += group.trim > Length{} ? "; " + bare(group.trim, style) + " trimmed off each end"
                                  : std::string("; no end trim");
    if (group.shared_mitre > Length{})
        text += group.turned ? "; mitres share their cuts, every other piece turned over"
                             : "; mitres share their cuts";
    text += group.keep_drop ? "; drops kept from " + bare(*group.keep_drop, style)
                            : std::string("; no rule which drops are kept");
    return text;
}

std::string proof_words(const StockGroup& group, const GroupPlan& plan, PrintStyle style) {
    if (!plan.has_plan)
        return no_plan_words(group, plan);
    const std::string bars = bars_words(plan.whole_bars, plan.drops_used);
    const std::string least = "; at least " + aim_words(group, plan.bound, style);
    if (plan.whole_bars == 0 && !only_drops(group))
        return bars + "; no whole bar needed";
    switch (group.aim) {
    case StockAim::bars:
        if (!plan.proven)
            return bars + least + (plan.drops_used > 0 && !only_drops(group) ? " bars" : "");
        return bars + (plan.drops_used > 0 && !only_drops(group) ? "; no plan needs fewer bars"
                                                                 : "; no plan needs fewer");
    case StockAim::length:
        return bars + ", " + aim_words(group, plan.cost, style) +
               (plan.proven ? "; no plan takes less" : least);
    case StockAim::money:
        return bars + " at " + aim_words(group, plan.cost, style) +
               (plan.proven ? "; no plan costs less" : least);
    }
    return bars;
}

std::string short_proof_words(const StockGroup& group, const GroupPlan& plan, PrintStyle style) {
    if (group.problem)
        return "cannot be said";
    if (!plan.has_plan)
        return plan.falls_short ? "the rack does not reach" : "no plan yet";
    const std::string bars = bars_words(plan.whole_bars, plan.drops_used);
    return bars + (plan.proven ? ", proven" : ", at least " + aim_words(group, plan.bound, style));
}

std::string bar_words(const BarKind& kind, PrintStyle style) {
    return (kind.drop ? "Drop " : "Bar ") + bare(kind.length, style, Rounding::down);
}

std::string drop_words(const StockGroup& group, const BarPlan& bar, PrintStyle style) {
    if (bar.drop == Length{})
        return "nothing left";
    if (bar.cuts.back().last_is_end)
        return "last piece " + quantity::print_decimal(bar.drop, style) + " long: dress it";
    const std::string length = bare(bar.drop, style, Rounding::down);
    if (!group.keep_drop)
        return length + " left";
    return bar.kept ? "drop " + length + ", keep" : length + " scrap";
}

std::vector<std::string>
use_words(const StockGroup& group, const GroupPlan& plan, PrintStyle style) {
    std::vector<std::string> pull;
    std::vector<std::string> buy;
    for (const KindUse& use : plan.use) {
        const BarKind& kind = group.kinds[static_cast<std::size_t>(use.kind)];
        const std::string length = bare(kind.length, style, Rounding::down);
        if (use.pull > 0)
            pull.push_back("Pull " +
                           (kind.drop ? counted(use.pull, "drop of ", "drops of ")
                                      : std::to_string(use.pull) + " of ") +
                           length);
        if (use.buy > 0)
            buy.push_back("Buy " + std::to_string(use.buy) + " of " + length +
                          (kind.price ? " at " + money(*kind.price) : ", price not known"));
    }
    pull.insert(pull.end(), buy.begin(), buy.end());
    return pull;
}

std::string sums_words(const StockSums& sums, PrintStyle style) {
    std::string text;
    if (sums.taken)
        text = "Taken " + known(sums.taken, style) + ": parts " + known(sums.parts, style) +
               ", drops to keep " + known(sums.kept, style) + ", scrap " +
               known(sums.scrap, style) + ". ";
    else
        text = "Weight not known. ";
    if (sums.bought ? *sums.bought == Mass{} : sums.price == 0.0)
        return text + "Nothing to buy.";
    text += "To buy " + (sums.bought ? known(sums.bought, style) : std::string("bars"));
    return text + (sums.price ? ", " + money(*sums.price) + "." : ", price not known.");
}

std::string piece_caution(const StockPiece& piece) {
    switch (piece.outcome) {
    case Outcome::fits:
    case Outcome::fits_up_to:
        return "";
    case Outcome::cannot_be_said:
        return "not said yet whether it can be made";
    case Outcome::does_not_fit:
        return "cannot be made as planned";
    }
    return "";
}

std::string piece_words(const StockPiece& piece, const Plan& plan, PrintStyle style) {
    return plan.parts[static_cast<std::size_t>(piece.part)]->part->mark + " " +
           bare(piece.length, style);
}

std::string not_from_bars_words(const Plan& plan) {
    std::string marks;
    for (const int part : not_from_bars(plan))
        marks +=
            (marks.empty() ? "" : ", ") + plan.parts[static_cast<std::size_t>(part)]->part->mark;
    return marks.empty() ? "" : "Plates and what is slit to width are not nested here: " + marks;
}

std::string stock_words(const std::vector<StockGroup>& groups, const StockPlan& plan) {
    int whole = 0;
    int drops = 0;
    int without = 0;
    bool proven = true;
    for (const GroupPlan& group : plan.groups) {
        whole += group.whole_bars;
        drops += group.drops_used;
        without += group.has_plan ? 0 : 1;
        proven = proven && (!group.has_plan || group.proven);
    }
    const int all = static_cast<int>(groups.size());
    if (all == 0)
        return "No part is cut from a bar";
    std::string text = counted(all, "section", "sections");
    if (without < all)
        text += ": " + bars_words(whole, drops) + (proven ? ", proven" : ", not all proven");
    if (without > 0)
        text += "; " + std::to_string(without) + " of " + std::to_string(all) + " without a plan";
    return text;
}

} // namespace treadle::plan
