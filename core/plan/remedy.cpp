#include "plan/remedy.h"

#include "base/stable_sort.h"
#include "plan/remedy_changes.h"
#include "plan/words.h"

#include <algorithm>
#include <tuple>

namespace treadle::plan {

namespace {

constexpr double k_same_margin = 1e-9;

const Check* deciding_of(const OperationPlan& plan) {
    return plan.deciding == k_none ? nullptr
                                   : &plan.checks[static_cast<std::size_t>(plan.deciding)];
}

/// A warning about the work itself, that was not there before. A tool to buy and a radius that
/// follows from the thickness are said, but are no harm.
bool warns_anew(const OperationPlan& before, const OperationPlan& after) {
    for (const Check& check : after.checks) {
        if (!check.warning || check.rule == Rule::tool_in_crib || check.rule == Rule::wanted_radius)
            continue;
        const bool known =
            std::any_of(before.checks.begin(), before.checks.end(), [&](const Check& old) {
                return old.warning && old.rule == check.rule;
            });
        if (!known)
            return true;
    }
    return false;
}

bool gets_worse(const OperationPlan& before, const OperationPlan& after) {
    if (after.outcome != before.outcome)
        return after.outcome > before.outcome;
    if ((after.tight && !before.tight) || warns_anew(before, after))
        return true;
    const Check* old = deciding_of(before);
    const Check* now = deciding_of(after);
    return before.outcome != Outcome::fits && old != nullptr && now != nullptr &&
           now->margin < old->margin - k_same_margin;
}

std::string reason(const Check& check, const equipment::Shop& shop, PrintStyle style) {
    return std::string(rule_words(check.rule)) + ": " + with_names(sentence(check, style), shop);
}

/// The rule that stood in the way, with the change; when it is gone, what decides now.
std::string why_it_works(const OperationPlan& before,
                         const OperationPlan& after,
                         const equipment::Shop& shop,
                         PrintStyle style) {
    const Check* old = deciding_of(before);
    if (after.checks.empty())
        return old == nullptr ? std::string() : reason(*old, shop, style);
    for (const Check& check : after.checks)
        if (old != nullptr && !check.warning && check.rule == old->rule)
            return reason(check, shop, style);
    const Check* now = deciding_of(after);
    return now == nullptr ? std::string() : reason(*now, shop, style);
}

class Finder {
public:
    explicit Finder(const Trouble& trouble) : trouble_(trouble) {}

    bool take(Change change) {
        const bool leaves = change.part.operations.size() < trouble_.part().operations.size();
        auto sound = job::checked(std::move(change.part));
        if (!sound)
            return false;
        change.part = std::move(sound).value();
        const PartPlan planned = plan_part(std::make_shared<const job::Part>(change.part),
                                           trouble_.job,
                                           trouble_.shop,
                                           trouble_.catalog);
        if (planned.problem || !holds(planned, leaves))
            return false;
        const OperationPlan own = leaves ? OperationPlan{} : planned.operations[trouble_.operation];
        const bool first = std::none_of(found_.begin(), found_.end(), [&](const Found& known) {
            return known.remedy.kind == change.kind && known.series == change.series;
        });
        // After a first that only helps, a series goes on to one that fits outright.
        if (!first && own.outcome != Outcome::fits)
            return false;
        Remedy remedy;
        remedy.kind = change.kind;
        remedy.words = std::move(change.words);
        remedy.why = why_it_works(trouble_.planned(), own, trouble_.shop, trouble_.job.style);
        remedy.part = std::move(change.part);
        remedy.planned = own;
        remedy.blank_length = planned.blank_length;
        remedy.new_blank = planned.blank_length != trouble_.plan.blank_length;
        found_.push_back({first, change.series, std::move(remedy)});
        return own.outcome == Outcome::fits;
    }

    [[nodiscard]] std::vector<Remedy> sorted() {
        base::stable_sort(found_, [](const Found& a, const Found& b) {
            return std::tuple{!a.first, a.remedy.kind} < std::tuple{!b.first, b.remedy.kind};
        });
        std::vector<Remedy> list;
        for (Found& found : found_)
            if (list.size() < k_most_remedies)
                list.push_back(std::move(found.remedy));
        return list;
    }

private:
    struct Found {
        bool first = true; ///< of its series
        int series = 0;
        Remedy remedy;
    };

    /// The operation is better off, and no other one worse.
    [[nodiscard]] bool holds(const PartPlan& planned, bool leaves) const {
        const OperationPlan& before = trouble_.planned();
        for (std::size_t i = 0; i < trouble_.plan.operations.size(); ++i) {
            if (leaves && i == trouble_.operation)
                continue;
            const std::size_t now = leaves && i > trouble_.operation ? i - 1 : i;
            const OperationPlan& after = planned.operations[now];
            if (i != trouble_.operation) {
                if (gets_worse(trouble_.plan.operations[i], after))
                    return false;
                continue;
            }
            if (after.outcome > Outcome::fits_up_to || after.outcome >= before.outcome ||
                warns_anew(before, after))
                return false;
        }
        return true;
    }

    const Trouble& trouble_;
    std::vector<Found> found_;
};

} // namespace

std::vector<Remedy> remedies(const PartPlan& plan,
                             std::size_t operation,
                             const job::Job& job,
                             const equipment::Shop& shop,
                             const job::Catalog& catalog) {
    TREADLE_EXPECT(operation < plan.operations.size());
    const Outcome outcome = plan.operations[operation].outcome;
    if (plan.problem || outcome == Outcome::fits || outcome == Outcome::cannot_be_said)
        return {};
    const Trouble trouble{plan, operation, job, shop, catalog};
    Finder finder(trouble);
    const Offer offer = [&](Change change) { return finder.take(std::move(change)); };
    const Check* deciding = deciding_of(trouble.planned());
    if (deciding != nullptr && deciding->rule == Rule::grade) {
        // Metal that must not be worked stays so, however thin it is or wherever the hole goes.
        try_grades(trouble, offer);
        return finder.sorted();
    }
    for (const auto series : {try_certificate,
                              try_places,
                              try_grain,
                              try_holes,
                              try_legs,
                              try_square_cut,
                              try_thinner,
                              try_grades,
                              try_elsewhere})
        series(trouble, offer);
    return finder.sorted();
}

std::string
remedy_result_words(const Remedy& remedy, const equipment::Shop& shop, PrintStyle style) {
    std::string words = "off this machine";
    if (!remedy.planned.checks.empty()) {
        words = verdict_words(remedy.planned, style);
        const std::string margin = margin_words(remedy.planned, style);
        if (!margin.empty())
            words += ", " + margin;
    }
    if (remedy.new_blank) {
        PrintStyle fine = style;
        fine.denominator = std::max(style.denominator, shop.rules.blank_denominator);
        words += ", blank " + quantity::print(remedy.blank_length, fine, Rounding::up);
    }
    return words;
}

} // namespace treadle::plan
