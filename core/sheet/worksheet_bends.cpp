// The order of a part's bends: how it lies, what the stop is set to, and what it looks like after.

#include "plan/words.h"
#include "sheet/bend_words.h"
#include "sheet/drawing.h"
#include "sheet/figures.h"
#include "sheet/outline.h"
#include "sheet/worksheet_parts.h"

namespace treadle::sheet {

namespace {

constexpr double k_stage_width_mm = 34.0;
constexpr double k_stage_height_mm = 26.0;

void write_stages(Html& html, const plan::PartPlan& part) {
    html.open("div", "class=\"drawings\"");
    for (std::size_t i = 0; i < part.bends->steps.size(); ++i) {
        html.open("figure");
        html.markup(to_svg(draw_bend_stage(part, i), k_stage_width_mm, k_stage_height_mm));
        html.element("figcaption",
                     std::to_string(i + 1) + ". after operation " +
                         std::to_string(part.bends->steps[i].bend + 1));
        html.close();
    }
    html.close();
}

} // namespace

std::string lies_words(const plan::BendStep& step) {
    return std::string(step.turned ? "turn it: " : "") +
           (step.datum_up ? "datum face up, " : "datum face down, ") +
           (step.start_gauged ? "datum end to the stop" : "far end to the stop");
}

std::string stop_words(const plan::BendStep& step, PrintStyle style) {
    std::string text = "stop " + setting_text(step.stop, style);
    if (step.against == plan::k_none)
        return text + (step.start_gauged ? " to the datum end" : " to the far end");
    return text + " to the outside of leg " + std::to_string(step.against + 1);
}

std::string no_order_words(const plan::BendSequence& bends, const equipment::Shop& shop) {
    if (bends.too_many)
        return "Order of bends not searched: more than " +
               std::to_string(plan::k_most_ordered_bends) + " bends.";
    if (!bends.missing.empty())
        return "Order of bends and stop settings not computed. " +
               plan::missing_sentence(bends.missing, shop);
    if (!bends.blocked.empty())
        return "No order of the bends works; the operations above say what is in the way.";
    return "";
}

std::vector<std::string>
bend_settings(const plan::PartPlan& part, int operation, PrintStyle style) {
    if (part.bends)
        for (const plan::BendStep& step : part.bends->steps)
            if (step.bend == operation)
                return {stop_words(step, style), lies_words(step)};
    return {};
}

void write_bend_order(Html& html, const SheetInputs& in, const plan::PartPlan& part) {
    if (!part.bends)
        return;
    const std::string none = no_order_words(*part.bends, in.shop);
    if (!none.empty()) {
        html.element("p", none, "class=\"small\"");
        return;
    }
    const PrintStyle style = in.style;
    html.open_table("Order of the bends of " + part.part->mark + ", the fewest turns of the part",
                    {"Step", "Operation", "How it lies", "Stop, from the punch line"});
    for (std::size_t i = 0; i < part.bends->steps.size(); ++i) {
        const plan::BendStep& step = part.bends->steps[i];
        const auto operation = static_cast<std::size_t>(step.bend);
        html.open("tr").element("th", std::to_string(i + 1), "scope=\"row\"");
        html.element("td",
                     std::to_string(operation + 1) + ". " +
                         plan::operation_title(*part.part, operation, style));
        html.element("td", lies_words(step)).element("td", stop_words(step, style)).close();
    }
    html.close_table();
    write_stages(html, part);
}

Drawing draw_bend_stage(const plan::PartPlan& plan, std::size_t step) {
    std::vector<int> made;
    for (std::size_t i = 0; i <= step && plan.bends && i < plan.bends->steps.size(); ++i)
        made.push_back(plan.bends->steps[i].bend);
    const auto profile = bent_profile(plan, made);
    if (!profile)
        return no_drawing(plan);
    Drafter draft(1.0);
    draft.shape(profile->outline, Fill::steel, Pen::outline);
    return draft.finish("Side view of " + plan.part->mark + " after " +
                        std::to_string(made.size()) + " of its bends.");
}

} // namespace treadle::sheet
