#include "ui/views/work_reading.h"

#include "base/text.h"
#include "plan/at_once.h"
#include "plan/leg_spread.h"
#include "plan/trial_use.h"
#include "plan/wear.h"
#include "plan/words.h"

#include <algorithm>

namespace treadle::views {

namespace {

std::optional<ui::Verdict> mark_of(plan::WearState state) {
    switch (state) {
    case plan::WearState::within:
        return ui::Verdict::fits;
    case plan::WearState::reached:
        return ui::Verdict::up_to;
    case plan::WearState::over:
        return ui::Verdict::does_not_fit;
    case plan::WearState::not_computed:
        break;
    }
    return std::nullopt;
}

std::optional<ui::Verdict> mark_of(plan::SpreadVerdict verdict) {
    switch (verdict) {
    case plan::SpreadVerdict::within:
        return ui::Verdict::fits;
    case plan::SpreadVerdict::within_by_rss:
        return ui::Verdict::up_to;
    case plan::SpreadVerdict::outside:
        return ui::Verdict::does_not_fit;
    case plan::SpreadVerdict::cannot_be_said:
        return ui::Verdict::not_known;
    case plan::SpreadVerdict::not_asked:
        break;
    }
    return std::nullopt;
}

std::string run_words(const plan::AtOnce& shared,
                      const plan::LaneRun& run,
                      const std::string& number,
                      const std::string& station) {
    std::string words = plan::lane_words(shared, run.start) + " to " +
                        plan::lane_words(shared, run.finish) + ": set-up " + number + ", " +
                        station;
    if (run.waits > 0.0)
        words += "; waits " + plan::lane_words(shared, run.waits) + " for parts";
    return words;
}

std::string pairs_words(const plan::AtOnce& shared, const equipment::Machine& machine) {
    std::string words;
    for (const auto& [a, b] : shared.stations)
        words += (words.empty() ? "May run at once: " : "; ") +
                 machine.stations[static_cast<std::size_t>(a)].name + " with " +
                 machine.stations[static_cast<std::size_t>(b)].name;
    return words.empty() ? "No two stations of this work may run at once." : words + ".";
}

PeopleReading read_people(const edit::Session& session) {
    PeopleReading reading;
    const plan::Plan& plan = session.plan();
    const equipment::Shop& shop = session.shop();
    if (shop.machine.operators < 2 || plan.order.size() < 2)
        return reading;
    const plan::AtOnce shared = plan::at_once(plan, shop);
    reading.words = plan::at_once_words(shared) + ".";
    reading.pairs = pairs_words(shared, shop.machine);
    for (int i = 0; i < shared.people; ++i)
        reading.lanes.push_back({"Operator " + std::to_string(i + 1), {}});
    for (const plan::LaneRun& run : shared.lanes.runs) {
        const std::string number = std::to_string(run.task + 1);
        const plan::SetUp& set_up = plan.order[static_cast<std::size_t>(run.task)];
        const int at = set_up.tools.station;
        const std::string station = at == plan::k_none
                                        ? "no station"
                                        : shop.machine.stations[static_cast<std::size_t>(at)].name;
        reading.lanes[static_cast<std::size_t>(run.lane)].runs.push_back(
            {number,
             run_words(shared, run, number, station),
             run.start / shared.lanes.length,
             run.finish / shared.lanes.length});
    }
    return reading;
}

TrialReading read_record(const edit::Session& session, int record) {
    TrialReading reading;
    const equipment::Shop& shop = session.shop();
    const PrintStyle style = session.job().style;
    const auto read = plan::read_trial(shop.trials[static_cast<std::size_t>(record)]);
    if (!read) {
        reading.figures = read.refusal().reason + " " + read.refusal().detail;
        return reading;
    }
    reading.sound = true;
    reading.figures = "K " + base::write_fixed(read->k, 3) + ", deduction " +
                      quantity::print_decimal(read->deduction, style) +
                      (read->deduction_spread
                           ? ", spread " + quantity::print_decimal(*read->deduction_spread, style)
                           : ", one strip shows no spread");
    PrintStyle fine = style;
    fine.denominator = std::max(style.denominator, shop.rules.blank_denominator);
    for (const plan::TrialEffect& effect :
         plan::trial_effects(session.plan(), record, session.job(), shop, session.catalog()))
        reading.blanks.push_back(session.job().parts[static_cast<std::size_t>(effect.part)]->mark +
                                 ": blank " +
                                 quantity::print(effect.with_record, fine, Rounding::up) + ", " +
                                 quantity::print(effect.without_record, fine, Rounding::up) +
                                 " by " + plan::blank_source_words(effect.otherwise));
    return reading;
}

} // namespace

void WorkReadings::forget_old(const edit::Session& session) {
    if (revision_ == session.revision())
        return;
    revision_ = session.revision();
    wear_.reset();
    people_.reset();
    trials_.clear();
}

const std::vector<WearReading>& WorkReadings::wear(const edit::Session& session) {
    forget_old(session);
    if (!wear_) {
        wear_.emplace();
        for (const plan::ToolWear& edge : plan::tool_wear(session.plan(), session.shop()))
            wear_->push_back(
                {plan::edge_words(edge.kind, edge.tool, session.shop(), session.job().style) +
                     ": " + plan::wear_words(edge),
                 mark_of(edge.state),
                 edge.before.has_value()});
    }
    return *wear_;
}

const PeopleReading& WorkReadings::people(const edit::Session& session) {
    forget_old(session);
    if (!people_)
        people_ = read_people(session);
    return *people_;
}

const TrialReading& WorkReadings::trial(const edit::Session& session, int record) {
    forget_old(session);
    const auto [entry, is_new] = trials_.try_emplace(record);
    if (is_new)
        entry->second = read_record(session, record);
    return entry->second;
}

std::vector<SpreadReading> read_spreads(const plan::PartPlan& plan, const edit::Session& session) {
    const PrintStyle style = session.job().style;
    std::vector<SpreadReading> list;
    const auto either_way = [&](const char* what, const std::optional<Length>& size, Rounding to) {
        return size ? std::string(what) + " \xC2\xB1 " + quantity::print_decimal(*size, style, to)
                    : std::string();
    };
    for (const plan::LegSpread& leg : plan::leg_spreads(plan, session.job(), session.shop())) {
        SpreadReading reading;
        reading.leg =
            "Leg " + std::to_string(leg.leg + 1) + ", " + quantity::print(leg.nominal, style);
        for (const std::string& words : {either_way("limit", leg.limit, Rounding::nearest),
                                         either_way("worst case", leg.worst, Rounding::up),
                                         either_way("RSS", leg.rss, Rounding::up)})
            if (!words.empty())
                reading.figures += (reading.figures.empty() ? "" : ", ") + words;
        reading.verdict = plan::spread_words(leg.verdict);
        if (!leg.missing.empty())
            reading.verdict += ": needs " + leg.missing;
        reading.mark = mark_of(leg.verdict);
        list.push_back(std::move(reading));
    }
    return list;
}

} // namespace treadle::views
