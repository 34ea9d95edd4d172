#include "ui/views/reading.h"

#include "base/text.h"
#include "edit/placing.h"
#include "plan/explain.h"
#include "plan/power_check.h"
#include "plan/words.h"
#include "quantity/working_text.h"
#include "sheet/worksheet.h"

#include "ui/views/paper_options.h"
#include "ui/views/shop_paths.h"

#include <algorithm>
#include <string_view>
#include <type_traits>

namespace treadle::views {

namespace {

/// How long the demand is beside the offer. Pixels of the strip only, never a figure to read.
double share_of(const AnyQuantity& demand, const AnyQuantity& offer) {
    return std::visit(
        [&](const auto& of) -> double {
            using Kind = std::decay_t<decltype(of)>;
            const Kind* wanted = std::get_if<Kind>(&demand);
            if constexpr (std::is_same_v<Kind, quantity::Number> ||
                          std::is_same_v<Kind, quantity::Share>) {
                return wanted && of.value > 0 ? wanted->value / of.value : 0.0;
            } else if constexpr (std::is_same_v<Kind, Angle>) {
                return wanted && of > Kind{} ? wanted->in_degrees() / of.in_degrees() : 0.0;
            } else {
                return wanted && of > Kind{} ? *wanted / of : 0.0;
            }
        },
        offer);
}

void read_checks(const plan::OperationPlan& operation,
                 const equipment::Shop& shop,
                 PrintStyle style,
                 OperationReading& into) {
    const auto add = [&](std::size_t index) {
        const plan::Check& check = operation.checks[index];
        const bool deciding = static_cast<int>(index) == operation.deciding;
        into.checks.push_back({base::capital(plan::rule_words(check.rule)) + ": " +
                                   plan::with_names(plan::sentence(check, style), shop),
                               mark_of(check.outcome),
                               check.warning,
                               deciding});
    };
    if (operation.deciding != plan::k_none)
        add(static_cast<std::size_t>(operation.deciding));
    for (const bool troubled : {true, false}) {
        for (std::size_t i = 0; i < operation.checks.size(); ++i) {
            const plan::Check& check = operation.checks[i];
            const bool trouble = check.outcome != plan::Outcome::fits || check.warning;
            if (trouble == troubled && static_cast<int>(i) != operation.deciding)
                add(i);
        }
    }
}

OperationReading read_operation(const plan::PartPlan& plan,
                                std::size_t index,
                                const equipment::Shop& shop,
                                PrintStyle style) {
    const plan::OperationPlan& operation = plan.operations[index];
    OperationReading reading;
    reading.title = plan::operation_title(*plan.part, index, style);
    reading.detail = plan::operation_detail(*plan.part, plan, index, style);
    reading.verdict = plan::verdict_words(operation, style);
    reading.margin = plan::with_names(plan::margin_words(operation, style), shop);
    reading.tools = plan::tooling_words(operation.tools, shop, style);
    reading.mark = mark_of(operation.outcome);
    if (operation.deciding != plan::k_none) {
        const plan::Check& check = operation.checks[static_cast<std::size_t>(operation.deciding)];
        reading.low_share = share_of(check.demand_low, check.offer);
        reading.high_share = share_of(check.demand_high, check.offer);
        reading.strip = plan::with_names(plan::sentence(check, style), shop);
        if (const auto page = shop_page_of(check.missing, shop)) {
            reading.missing = check.missing;
            reading.shop_page = *page;
        }
    }
    read_checks(operation, shop, style, reading);
    for (const plan::Need& need : operation.needs)
        reading.needs.push_back(plan::need_words(need, style));
    reading.spoken = "Operation " + std::to_string(index + 1) + ": " + reading.title + ", " +
                     reading.verdict + (reading.margin.empty() ? "" : ", " + reading.margin);
    const std::string at = edit::at_words({plan, static_cast<int>(index), style});
    reading.on_drawing = "Operation " + std::to_string(index + 1) +
                         " on the drawing: " + reading.title + (at.empty() ? "" : " " + at);
    return reading;
}

std::string short_words(const plan::PartPlan& plan, const std::string& words) {
    constexpr std::string_view k_start = "fits up";
    if (plan.outcome == plan::Outcome::fits_up_to && words.rfind(k_start, 0) == 0)
        return words.substr(5);
    return words;
}

std::shared_ptr<PartReading> read_part(const std::shared_ptr<const plan::PartPlan>& plan,
                                       const edit::Session& session,
                                       PrintStyle style) {
    auto reading = std::make_shared<PartReading>();
    const job::Part& part = *plan->part;
    const Grade* grade = job::find_grade(session.job(), session.catalog(), part.grade);
    reading->plan = plan;
    reading->shop = session.document().shop;
    reading->style = style;
    reading->mark = part.mark;
    reading->count = "\xC3\x97 " + std::to_string(part.count);
    reading->title = plan::part_title(part, style);
    reading->line = reading->title + ", " + (grade ? grade->name : part.grade) + ", " +
                    std::to_string(part.count) + (part.count == 1 ? " piece" : " pieces");
    reading->mass = quantity::print(plan->mass_each, style, Rounding::up) + " each";
    if (!part.legs.empty()) {
        // Said in the fraction that the house rounds blanks to, not in a coarser one.
        PrintStyle fine = style;
        fine.denominator = std::max(style.denominator, session.shop().rules.blank_denominator);
        reading->blank = "Blank " + quantity::print(plan->blank_length, fine, Rounding::up);
    }
    reading->verdict = plan::verdict_words(*plan, style);
    reading->short_verdict = short_words(*plan, reading->verdict);
    reading->verdict_mark = mark_of(plan->outcome);
    reading->small = to_picture(sheet::draw_small(*plan));
    if (plan->problem)
        reading->problem = plan->problem->field + ": " + plan->problem->reason;
    reading->spoken = part.mark + ", " + reading->line + ": " + reading->verdict;
    return reading;
}

void name_source(std::string& line,
                 const std::string& key,
                 const std::function<std::string(std::string_view)>& title_of) {
    const std::string title = title_of ? title_of(key) : std::string();
    const std::size_t at = line.size() - std::min(line.size(), key.size());
    if (!title.empty() && line.rfind("Source", 0) == 0 && line.compare(at, key.size(), key) == 0)
        line.replace(at, key.size(), title);
}

} // namespace

ui::Verdict mark_of(plan::Outcome outcome) {
    switch (outcome) {
    case plan::Outcome::fits:
        return ui::Verdict::fits;
    case plan::Outcome::fits_up_to:
        return ui::Verdict::up_to;
    case plan::Outcome::does_not_fit:
        return ui::Verdict::does_not_fit;
    case plan::Outcome::cannot_be_said:
        break;
    }
    return ui::Verdict::not_known;
}

const std::vector<OperationReading>& PartReading::operations() const {
    for (std::size_t i = operations_.size(); i < plan->operations.size(); ++i)
        operations_.push_back(read_operation(*plan, i, *shop, style));
    return operations_;
}

const std::string& PartReading::announcement() const {
    if (!announcement_.empty())
        return announcement_;
    announcement_ = mark + ": " + verdict;
    for (const OperationReading& operation : operations()) {
        if (operation.mark != verdict_mark || operation.margin.empty())
            continue;
        announcement_ += ", " + operation.title + ", " + operation.margin;
        break;
    }
    announcement_ += ".";
    return announcement_;
}

int first_trouble(const PartReading& part) {
    const std::vector<plan::OperationPlan>& operations = part.plan->operations;
    for (std::size_t i = 0; i < operations.size(); ++i) {
        if (part.verdict_mark != ui::Verdict::fits &&
            mark_of(operations[i].outcome) == part.verdict_mark)
            return static_cast<int>(i);
    }
    return plan::k_none;
}

void Readings::refresh(const edit::Session& session) {
    if (revision_ == session.revision())
        return;
    revision_ = session.revision();
    workings_.clear();
    cautions_.clear();
    templates_.reset();
    power_.clear();
    const PrintStyle style = session.job().style;
    const plan::Plan& plan = session.plan();
    const bool same_words = style == style_ && shop_ == session.document().shop &&
                            tolerance_ == session.job().tolerance;
    style_ = style;
    tolerance_ = session.job().tolerance;
    shop_ = session.document().shop;

    std::vector<std::shared_ptr<PartReading>> parts;
    parts.reserve(plan.parts.size());
    for (std::size_t i = 0; i < plan.parts.size(); ++i) {
        const auto kept = [&]() -> std::shared_ptr<PartReading> {
            // One edit moves entries by at most one place.
            for (const std::size_t at : {i, i + 1, i == 0 ? i : i - 1}) {
                if (same_words && at < parts_.size() && parts_[at]->plan == plan.parts[i])
                    return parts_[at];
            }
            return nullptr;
        }();
        parts.push_back(kept ? kept : read_part(plan.parts[i], session, style));
    }
    parts_ = std::move(parts);
}

OrderReading& Readings::order(const edit::Session& session) { return order_.of(session, parts_); }

const std::vector<std::string>& Readings::cautions(const edit::Session& session) {
    if (cautions_.empty())
        for (const sheet::CautionLine& line :
             sheet::cautions({session.plan(), session.job(), session.shop(), session.catalog()}))
            cautions_.push_back(line.words + " (" + line.anchor + ")");
    return cautions_;
}

const std::vector<TemplateReading>& Readings::templates(const edit::Session& session,
                                                        const PaperWishes& wishes) {
    const sheet::TemplateOptions options = template_options(wishes);
    const std::string made_for = std::to_string(static_cast<int>(options.paper)) + " " +
                                 std::to_string(static_cast<int>(options.units)) + " " +
                                 std::to_string(options.factors.x) + " " +
                                 std::to_string(options.factors.y);
    if (templates_ && templates_for_ == made_for)
        return *templates_;
    templates_for_ = made_for;
    templates_.emplace();
    for (sheet::TemplateInfo& one :
         sheet::template_list({session.plan(),
                               session.job(),
                               sheet::layout_wraps(session.job(), session.catalog()),
                               options}))
        templates_->push_back(
            {std::move(one.key), std::move(one.title), one.pages, std::move(one.refusal)});
    return *templates_;
}

const std::vector<std::vector<std::string>>&
Readings::working(const edit::Session& session, int part, int operation) {
    const auto [entry, is_new] = workings_.try_emplace({part, operation});
    if (!is_new)
        return entry->second;
    const plan::PartPlan& plan = *session.plan().parts[static_cast<std::size_t>(part)];
    const std::vector<Working> workings =
        operation == plan::k_none
            ? plan::explain_part(plan, session.job(), session.shop(), session.catalog())
            : plan::explain_operation(plan,
                                      static_cast<std::size_t>(operation),
                                      session.job(),
                                      session.shop(),
                                      session.catalog());
    entry->second = lines_of(workings, session.job().style);
    return entry->second;
}

std::vector<std::vector<std::string>> Readings::lines_of(const std::vector<Working>& workings,
                                                         PrintStyle style) const {
    std::vector<std::vector<std::string>> all;
    for (const Working& one : workings) {
        all.push_back(quantity::working_lines(one, style));
        for (std::string& line : all.back())
            name_source(line, one.card->source, source_title);
    }
    return all;
}

const std::vector<PowerReading>& Readings::power(const edit::Session& session) {
    if (!power_.empty())
        return power_;
    for (const plan::PowerLine& line : plan::check_power(session.shop().supply))
        power_.push_back({line.words + (line.warning ? ": take care." : "."),
                          mark_of(line.outcome),
                          lines_of(line.workings, session.job().style)});
    return power_;
}

} // namespace treadle::views
