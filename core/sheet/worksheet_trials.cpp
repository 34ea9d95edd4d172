// Trial strips of the shop, and how far the finished legs of a part may come out.

#include "plan/leg_spread.h"
#include "plan/trial_use.h"
#include "sheet/figures.h"
#include "sheet/trial_sheet.h"

namespace treadle::sheet {

void write_trials(Html& html, const SheetInputs& in) {
    if (in.shop.trials.empty())
        return;
    html.open("section").element("h2", "Trial strips").open("ul", "class=\"cautions\"");
    for (std::size_t i = 0; i < in.shop.trials.size(); ++i) {
        html.open("li").element("div",
                                "Trial strips " + std::to_string(i + 1) + ": " +
                                    plan::trial_words(in.shop.trials[i], in.style));
        for (const plan::TrialEffect& effect :
             plan::trial_effects(in.plan, static_cast<int>(i), in.job, in.shop, in.catalog))
            html.element(
                "div", plan::trial_effect_words(effect, in.plan, in.style), "class=\"small\"");
        html.close();
    }
    html.close().close();
}

void write_leg_spreads(Html& html, const SheetInputs& in, const plan::PartPlan& part) {
    const std::vector<plan::LegSpread> legs = plan::leg_spreads(part, in.job, in.shop);
    if (legs.empty() || (!in.job.tolerance && in.shop.trials.empty()))
        return;
    const PrintStyle style = in.style;
    const auto either_way = [&](const std::optional<Length>& value) {
        return value ? "± " + quantity::print_working(*value, style) : std::string("not known");
    };
    html.open_table("Finished legs of " + part.part->mark +
                        (in.job.tolerance
                             ? std::string(", asked for: class ") +
                                   plan::tolerance_words(*in.job.tolerance) + " of ISO 2768-1"
                             : std::string(", no tolerance class asked for")),
                    {"Leg", "Outside length", "Class", "Worst case", "RSS", "Verdict"});
    for (const plan::LegSpread& leg : legs) {
        html.open("tr").element("th", std::to_string(leg.leg + 1), "scope=\"row\"");
        html.element("td", setting_text(leg.nominal, style));
        html.element("td", leg.limit ? either_way(leg.limit) : std::string("none"));
        html.element("td", either_way(leg.worst));
        html.element("td", either_way(leg.rss)).open("td");
        html.element("div", plan::spread_words(leg.verdict));
        if (!leg.missing.empty())
            html.element("div", "Needs " + leg.missing + ".", "class=\"small\"");
        html.close().close();
    }
    html.close_table();
}

} // namespace treadle::sheet
