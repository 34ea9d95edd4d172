// Tools to fetch from the crib before the work, and which of them have to be ground.

#include "plan/wear.h"
#include "sheet/worksheet_parts.h"

namespace treadle::sheet {

void write_tools(Html& html, const SheetInputs& in) {
    const std::vector<plan::ToolWear> list = plan::tool_wear(in.plan, in.shop);
    if (list.empty())
        return;
    html.open("section").element("h2", "Punches and dies to fetch");
    html.open("ul", "class=\"ticks\"");
    for (const plan::ToolWear& wear : list) {
        const std::string tool = plan::edge_words(wear.kind, wear.tool, in.shop, in.style);
        html.open("li");
        write_tick(html, in, "fetch/" + tool, tool);
        html.text(tool + ": ");
        const bool grind =
            wear.state == plan::WearState::over || wear.state == plan::WearState::reached;
        if (grind)
            html.element("strong", plan::wear_words(wear));
        else
            html.text(plan::wear_words(wear));
        html.close();
    }
    html.close().close();
}

} // namespace treadle::sheet
