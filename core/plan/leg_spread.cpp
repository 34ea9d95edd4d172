#include "plan/leg_spread.h"

#include "plan/trial_use.h"
#include "plan/words.h"
#include "process/input_check.h"
#include "process/leg_error.h"
#include "process/shop_rules.h"

#include <cmath>

namespace treadle::plan {

namespace {

/// How often each error enters a place on the flat: the cut, each bend's stop, half of each bend's
/// deduction. Signed, because what comes in twice may cancel.
using Shares = std::vector<double>;

struct Layout {
    std::size_t bends = 0;

    [[nodiscard]] std::size_t size() const { return 1 + 2 * bends; }
    [[nodiscard]] static std::size_t cut() { return 0; }
    [[nodiscard]] static std::size_t stop(std::size_t bend) { return 1 + bend; }
    [[nodiscard]] std::size_t half(std::size_t bend) const { return 1 + bends + bend; }
};

void add(Shares& to, const Shares& from, double times) {
    for (std::size_t i = 0; i < to.size(); ++i)
        to[i] += times * from[i];
}

/// Operations that are bends, in order along the part.
std::vector<std::size_t> bends_of(const PartPlan& part) {
    std::vector<std::size_t> bends;
    for (std::size_t i = 0; i < part.part->operations.size(); ++i)
        if (std::holds_alternative<job::Bend>(part.part->operations[i]))
            bends.push_back(i);
    return bends;
}

/// Where each bend line lies, by the edge that its stop gauges. Measured from the start end.
std::vector<Shares>
line_shares(const PartPlan& part, const std::vector<std::size_t>& bends, const Layout& layout) {
    std::vector<Shares> lines(bends.size(), Shares(layout.size(), 0.0));
    for (const BendStep& step : part.bends->steps) {
        std::size_t bend = 0;
        while (bends[bend] != static_cast<std::size_t>(step.bend))
            ++bend;
        Shares& line = lines[bend];
        line[Layout::stop(bend)] = 1.0;
        if (step.against == k_none) {
            if (!step.start_gauged)
                line[Layout::cut()] = 1.0;
            continue;
        }
        // The outside of the standing leg lies half its bend's deduction before that bend's line.
        const auto leg = static_cast<std::size_t>(step.against);
        const std::size_t standing = step.start_gauged ? leg : leg - 1;
        add(line, lines[standing], 1.0);
        line[layout.half(standing)] += step.start_gauged ? -1.0 : 1.0;
    }
    return lines;
}

/// A finished leg: from line to line or end, and half of each of its bends' deductions.
Shares leg_shares(std::size_t leg, const std::vector<Shares>& lines, const Layout& layout) {
    Shares shares(layout.size(), 0.0);
    if (leg < layout.bends) {
        add(shares, lines[leg], 1.0);
        shares[layout.half(leg)] += 1.0;
    } else {
        shares[Layout::cut()] += 1.0;
    }
    if (leg > 0) {
        add(shares, lines[leg - 1], -1.0);
        shares[layout.half(leg - 1)] += 1.0;
    }
    return shares;
}

/// What is known of the errors, and words for what is not.
struct Errors {
    const PartPlan& part;
    const job::Job& job;
    const equipment::Shop& shop;
    std::vector<std::size_t> bends;
    std::vector<std::string> missing{}; ///< each once

    void miss(std::string what) {
        for (const std::string& known : missing)
            if (known == what)
                return;
        missing.push_back(std::move(what));
    }

    [[nodiscard]] std::string strips_of(const OperationPlan& bend) const {
        const PrintStyle fine{job.style.system, 64, job.style.both};
        return part.part->grade + ", " + quantity::print(bend.bend.thickness, fine) +
               " thick, in a V of " + quantity::print(bend.tools.opening, fine);
    }

    Length half_deduction(std::size_t number) {
        const OperationPlan& bend = part.operations[bends[number]];
        if (bend.trial == k_none) {
            miss("trial strips of " + strips_of(bend));
            return {};
        }
        const auto reading = read_trial(shop.trials[static_cast<std::size_t>(bend.trial)]);
        if (!reading || !reading->deduction_spread) {
            miss("a second trial strip of " + strips_of(bend));
            return {};
        }
        return *reading->deduction_spread / 2.0;
    }

    Length known(const std::optional<Length>& value, const char* what) {
        if (!value)
            miss(what);
        return value.value_or(Length{});
    }

    /// The size of each error that enters.
    process::LegErrors of(const Shares& shares, const Layout& layout) {
        process::LegErrors leg;
        const auto enter = [&](std::size_t at, auto size) {
            if (shares[at] != 0.0)
                leg.errors.push_back(std::abs(shares[at]) * size());
        };
        enter(Layout::cut(), [&] {
            return known(shop.rules.cut_repeat, "how true a blank is sheared (house rules)");
        });
        for (std::size_t i = 0; i < layout.bends; ++i) {
            enter(Layout::stop(i), [&] {
                return known(shop.rules.stop_repeat,
                             "how true the back stop repeats (house rules)");
            });
            enter(layout.half(i), [&] { return half_deduction(i); });
        }
        return leg;
    }

    [[nodiscard]] std::string take_missing() {
        std::string all;
        for (const std::string& one : missing)
            all += (all.empty() ? "" : "; ") + one;
        missing.clear();
        return all;
    }
};

process::ToleranceClass class_of(job::ToleranceClass grade) {
    switch (grade) {
    case job::ToleranceClass::fine:
        return process::ToleranceClass::fine;
    case job::ToleranceClass::medium:
        return process::ToleranceClass::medium;
    case job::ToleranceClass::coarse:
        return process::ToleranceClass::coarse;
    case job::ToleranceClass::very_coarse:
        break;
    }
    return process::ToleranceClass::very_coarse;
}

void put_errors(LegSpread& leg, const process::LegErrors& errors) {
    const auto worst = process::leg_worst_working(errors);
    const auto rss = process::leg_rss_working(errors);
    if (!worst || !rss)
        return;
    leg.worst = std::get<Length>(worst->result.value);
    leg.rss = std::get<Length>(rss->result.value);
    leg.workings.push_back(*worst);
    leg.workings.push_back(*rss);
}

void put_verdict(LegSpread& leg, const std::optional<job::ToleranceClass>& asked) {
    if (!asked)
        return;
    leg.verdict = SpreadVerdict::cannot_be_said;
    const auto limit = process::tolerance_length_working(leg.nominal, class_of(*asked));
    if (!limit) {
        leg.missing += (leg.missing.empty() ? "" : "; ") +
                       std::string("a figure of this class for so short or long a leg");
        return;
    }
    leg.limit = std::get<Length>(limit->result.value);
    leg.workings.push_back(*limit);
    if (!leg.worst || !leg.rss)
        return;
    if (!process::clearly_below(*leg.limit, *leg.worst))
        leg.verdict = SpreadVerdict::within;
    else if (!process::clearly_below(*leg.limit, *leg.rss))
        leg.verdict = SpreadVerdict::within_by_rss;
    else
        leg.verdict = SpreadVerdict::outside;
}

} // namespace

std::vector<LegSpread>
leg_spreads(const PartPlan& part, const job::Job& job, const equipment::Shop& shop) {
    std::vector<LegSpread> legs;
    const std::size_t bends = part.blank.bends.size();
    if (bends == 0 || part.problem)
        return legs;
    const bool ordered = part.bends && part.bends->steps.size() == bends;
    const Layout layout{bends};
    Errors errors{part, job, shop, bends_of(part)};
    const std::vector<Shares> lines =
        ordered ? line_shares(part, errors.bends, layout) : std::vector<Shares>{};
    for (std::size_t i = 0; i < part.part->legs.size(); ++i) {
        LegSpread leg;
        leg.leg = static_cast<int>(i);
        leg.nominal = part.part->legs[i];
        if (ordered) {
            auto entering = errors.of(leg_shares(i, lines, layout), layout);
            if (i == bends)
                entering.offset = part.blank_length - part.blank_exact;
            leg.missing = errors.take_missing();
            if (leg.missing.empty())
                put_errors(leg, entering);
        } else {
            leg.missing = "an order of the bends";
        }
        put_verdict(leg, job.tolerance);
        for (Working& working : leg.workings)
            working.note = "Leg " + std::to_string(i + 1) + "." +
                           (working.note.empty() ? "" : " ") + working.note;
        legs.push_back(std::move(leg));
    }
    return legs;
}

const char* spread_key(SpreadVerdict verdict) {
    switch (verdict) {
    case SpreadVerdict::within:
        return "within";
    case SpreadVerdict::within_by_rss:
        return "within_by_rss";
    case SpreadVerdict::outside:
        return "outside";
    case SpreadVerdict::cannot_be_said:
        return "cannot_be_said";
    case SpreadVerdict::not_asked:
        return "not_asked";
    }
    return "";
}

const char* spread_words(SpreadVerdict verdict) {
    switch (verdict) {
    case SpreadVerdict::within:
        return "within, by the worst case";
    case SpreadVerdict::within_by_rss:
        return "most within (RSS), not the worst: measure each one";
    case SpreadVerdict::outside:
        return "outside: set the stop leg by leg, or ask for a wider class";
    case SpreadVerdict::cannot_be_said:
        return "cannot be said";
    case SpreadVerdict::not_asked:
        return "no class asked for";
    }
    return "";
}

const char* tolerance_words(job::ToleranceClass grade) {
    switch (grade) {
    case job::ToleranceClass::fine:
        return "f (fine)";
    case job::ToleranceClass::medium:
        return "m (medium)";
    case job::ToleranceClass::coarse:
        return "c (coarse)";
    case job::ToleranceClass::very_coarse:
        return "v (very coarse)";
    }
    return "";
}

} // namespace treadle::plan
