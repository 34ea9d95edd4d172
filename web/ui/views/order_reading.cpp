#include "ui/views/order_reading.h"

#include "plan/batches.h"
#include "plan/job_time.h"
#include "plan/settings.h"
#include "plan/words.h"

#include "ui/views/reading.h"

namespace treadle::views {

namespace {

/// Mark, batches and what is measured, each a sentence.
std::string step_notes(const edit::Session& session, const plan::Step& step) {
    const equipment::HouseRules& rules = session.shop().rules;
    std::string notes;
    for (std::string words : {plan::mark_words(session.plan(), step, rules),
                              plan::batch_words(plan::batches_of(session.plan(), step)),
                              plan::check_words(step, rules)}) {
        if (words.empty())
            continue;
        if (words.back() != '.')
            words += '.';
        notes += (notes.empty() ? "" : " ") + words;
    }
    return notes;
}

SetUpReading read_set_up(const plan::SetUp& set_up,
                         std::size_t index,
                         const edit::Session& session,
                         const std::vector<std::shared_ptr<PartReading>>& parts) {
    SetUpReading reading;
    reading.title = "Set-up " + std::to_string(index + 1);
    reading.tools = plan::tooling_words(set_up.tools, session.shop(), session.job().style);
    reading.strokes =
        std::to_string(set_up.strokes) + (set_up.strokes == 1 ? " stroke" : " strokes");
    reading.settings = plan::setting_lines(set_up, session.shop(), session.job().style);
    for (const plan::Step& step : set_up.steps) {
        const PartReading& part = *parts[static_cast<std::size_t>(step.part)];
        const OperationReading& done = part.operations()[static_cast<std::size_t>(step.operation)];
        const std::string what = done.title + ", " + std::to_string(step.strokes) +
                                 (step.strokes == 1 ? " stroke" : " strokes");
        const std::string pieces = std::to_string(step.pieces);
        reading.steps.push_back({part.mark,
                                 "\xC3\x97 " + pieces + "   " + what,
                                 part.mark + ", " + pieces + " pieces: " + what,
                                 step_notes(session, step),
                                 step.part,
                                 step.operation,
                                 {}});
    }
    return reading;
}

OrderReading read_order(const edit::Session& session,
                        const std::vector<std::shared_ptr<PartReading>>& parts) {
    const plan::Plan& plan = session.plan();
    const PrintStyle style = session.job().style;
    OrderReading order;
    const auto time = plan::job_time(plan, session.shop());
    order.time = "Time of the set-ups: " + plan::time_words(time);
    for (std::size_t i = 0; i < plan.order.size(); ++i) {
        order.set_ups.push_back(read_set_up(plan.order[i], i, session, parts));
        if (time)
            order.set_ups.back().strokes += ", " + plan::duration_words(time->set_ups[i].total());
    }
    for (const plan::Need& need : plan.shopping)
        order.shopping.push_back(plan::need_words(need, style));
    order.totals = std::to_string(plan.pieces) + " pieces, " + std::to_string(plan.strokes) +
                   " strokes, " + quantity::print(plan.mass, style, Rounding::up);
    if (!plan.order.empty())
        order.totals += ", " + plan::order_words(plan);
    return order;
}

} // namespace

OrderReading& OrderReadings::of(const edit::Session& session,
                                const std::vector<std::shared_ptr<PartReading>>& parts) {
    if (revision_ != session.revision()) {
        revision_ = session.revision();
        order_ = read_order(session, parts);
    }
    return order_;
}

} // namespace treadle::views
