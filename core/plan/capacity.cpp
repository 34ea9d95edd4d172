#include "plan/capacity.h"

#include "base/contracts.h"
#include "plan/capacity_trial.h"

#include <array>

namespace treadle::plan {

namespace {

using base::Refusal;
using base::Result;
using equipment::AttachmentKind;
using equipment::StationKind;

struct Answer {
    Outcome outcome = Outcome::does_not_fit;
    Rule rule = Rule::grade;
    Length opening;
    std::string missing;
    std::string said;
    bool too_thin = false;
};

/// Asks the plan about one column, each thickness at most once.
class Column {
public:
    Column(const CapacityCase& c, const job::Job& job, const job::Catalog& catalog, Length x)
        : case_(c),
          job_(job),
          catalog_(catalog),
          x_(x),
          answers_(static_cast<std::size_t>(capacity_steps(c, x)) + 1) {}

    [[nodiscard]] int steps() const { return static_cast<int>(answers_.size()) - 1; }

    const Answer& at(int step) {
        auto& answer = answers_[static_cast<std::size_t>(step)];
        if (!answer)
            answer = ask(capacity_step(case_, step));
        return *answer;
    }

    /// The last step from `known` on that comes out as `worst` or better. Thicker is never easier,
    /// which the property tests of the plan hold: so the steps are halved.
    int last(Outcome worst, int known) {
        int no = steps() + 1;
        while (no - known > 1) {
            const int middle = known + (no - known) / 2;
            (at(middle).outcome <= worst ? known : no) = middle;
        }
        return known;
    }

    /// The last step that is too thin for the place; from there on thicker is never easier.
    int last_too_thin() {
        int thin = 0;
        int no = steps() + 1;
        while (no - thin > 1) {
            const int middle = thin + (no - thin) / 2;
            (at(middle).too_thin ? thin : no) = middle;
        }
        return thin;
    }

private:
    [[nodiscard]] Answer ask(Length thickness) const {
        const auto part = std::make_shared<const job::Part>(trial_part(case_, x_, thickness));
        const PartPlan plan = plan_part(part, job_, case_.shop, catalog_);
        Answer answer;
        if (plan.problem) // the grade's strengths end at this thickness, or no blank can be made
            return answer;
        const OperationPlan& operation = plan.operations[0];
        answer.outcome = operation.outcome;
        answer.opening = operation.tools.opening;
        for (const Check& check : operation.checks)
            answer.too_thin =
                answer.too_thin || (check.rule == Rule::thin_stock && check.said.empty());
        if (operation.deciding == k_none)
            return answer;
        const Check& check = operation.checks[static_cast<std::size_t>(operation.deciding)];
        answer.rule = check.rule;
        answer.missing = check.missing;
        answer.said = check.said;
        return answer;
    }

    const CapacityCase& case_;
    const job::Job& job_;
    const job::Catalog& catalog_;
    Length x_;
    std::vector<std::optional<Answer>> answers_; ///< by step; the first is no thickness at all
};

/// What a missing datum leaves unsaid is not sought for any further: an empty limit, and the path.
std::optional<CapacityLimit> limit_of(Column& column, const CapacityCase& c, Capacity& out) {
    const int steps = column.steps();
    if (steps < 1)
        return CapacityLimit{};
    const int thin = column.last_too_thin();
    const int fits = column.last(Outcome::fits, thin);
    const int up_to = column.last(Outcome::fits_up_to, fits);
    if (up_to < steps && column.at(up_to + 1).outcome == Outcome::cannot_be_said) {
        out.missing = column.at(up_to + 1).missing;
        out.said = column.at(up_to + 1).said;
        return std::nullopt;
    }
    CapacityLimit limit;
    if (fits > thin)
        limit.fits = capacity_step(c, fits);
    if (up_to > thin)
        limit.fits_up_to = capacity_step(c, up_to);
    if (thin > 0)
        limit.least = capacity_step(c, thin + 1);
    if (fits < steps)
        limit.stopped_by = column.at(fits + 1).rule;
    if (fits > thin)
        limit.opening = column.at(fits).opening;
    return limit;
}

void add_envelope(CapacityCase c, const job::Job& job, const job::Catalog& catalog, Capacity& out) {
    if (c.kind == CapacityKind::bar) {
        for (const section::Shape shape : {section::Shape::round, section::Shape::square}) {
            c.bar = shape;
            Column column(c, job, catalog, Length{});
            Capacity own;
            const auto limit = limit_of(column, c, own);
            out.bars.push_back({shape, limit.value_or(CapacityLimit{}), own.missing});
        }
        // A plate that rates only one of both still says that one.
        if (!out.bars[0].missing.empty() && !out.bars[1].missing.empty()) {
            out.missing = out.bars[0].missing;
            out.bars.clear();
        }
        return;
    }
    for (const Length x : capacity_columns(c)) {
        Column column(c, job, catalog, x);
        const auto limit = limit_of(column, c, out);
        if (!limit) {
            out.points.clear();
            return;
        }
        out.points.push_back({x, *limit});
    }
}

std::optional<CapacityKind> kind_of(StationKind kind) {
    switch (kind) {
    case StationKind::punch:
        return CapacityKind::hole;
    case StationKind::flat_shear:
        return CapacityKind::width;
    case StationKind::angle_shear:
        return CapacityKind::leg;
    case StationKind::bar_shear:
        return CapacityKind::bar;
    case StationKind::notcher:
    case StationKind::table:
        break;
    }
    return std::nullopt;
}

std::optional<CapacityKind> kind_of(AttachmentKind kind) {
    switch (kind) {
    case AttachmentKind::brake:
        return CapacityKind::bend_length;
    case AttachmentKind::vee_notcher:
    case AttachmentKind::rectangular_notcher:
        return CapacityKind::notch_depth;
    case AttachmentKind::saddle_notcher:
        break;
    }
    return std::nullopt;
}

Result<CapacityKind> kind_of(const equipment::Machine& machine, Mounting place) {
    if (place.station < 0 || place.station >= static_cast<int>(machine.stations.size()))
        return Refusal{"station", "The machine has no such station.", ""};
    const auto& station = machine.stations[static_cast<std::size_t>(place.station)];
    if (place.attachment == k_none) {
        if (const auto kind = kind_of(station.kind))
            return *kind;
        return Refusal{"attachment", "This station works through an attachment: name one.", ""};
    }
    if (place.attachment < 0 || place.attachment >= static_cast<int>(machine.attachments.size()))
        return Refusal{"attachment", "The machine has no such attachment.", ""};
    const auto& tool = machine.attachments[static_cast<std::size_t>(place.attachment)];
    bool fits = false;
    for (const std::string& id : tool.stations)
        fits = fits || id == station.id;
    if (!fits)
        return Refusal{"attachment", "This attachment does not fit that station.", ""};
    if (const auto kind = kind_of(tool.kind))
        return *kind;
    return Refusal{"attachment", "What a saddle notcher takes stands at its dies.", ""};
}

} // namespace

std::vector<Mounting> capacity_places(const equipment::Machine& machine) {
    std::vector<Mounting> places;
    for (int s = 0; s < static_cast<int>(machine.stations.size()); ++s)
        for (int a = k_none; a < static_cast<int>(machine.attachments.size()); ++a)
            if (kind_of(machine, {s, a}))
                places.push_back({s, a});
    return places;
}

Result<Capacity> capacity(Mounting place,
                          const std::string& grade,
                          const Plan& plan,
                          const job::Job& job,
                          const equipment::Shop& shop,
                          const job::Catalog& catalog) {
    TREADLE_EXPECT(plan.parts.size() == job.parts.size());
    const auto kind = kind_of(shop.machine, place);
    if (!kind)
        return kind.refusal();
    const Grade* metal = job::find_grade(job, catalog, grade);
    if (metal == nullptr)
        return Refusal{"grade", "This grade is not known.", grade};
    const bool bends = *kind == CapacityKind::bend_length;
    if (bends ? metal->refusal.bending : metal->refusal.cutting)
        return Refusal{"grade", metal->refusal.reason, grade};
    const equipment::Shop only = with_only(shop, place);
    Capacity out;
    out.kind = *kind;
    const CapacityCase c{*kind, place, grade, section::Shape::round, only, job.style.system};
    add_envelope(c, job, catalog, out);
    out.job = job_points(c, plan, job, shop, catalog);
    return out;
}

} // namespace treadle::plan
