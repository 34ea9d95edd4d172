#include "ui/views/layouts_reading.h"

#include "quantity/working_text.h"

#include <algorithm>

namespace treadle::views {

ui::Verdict verdict_of(assembly::Held held) {
    switch (held) {
    case assembly::Held::meets:
        return ui::Verdict::fits;
    case assembly::Held::at_limit:
        return ui::Verdict::up_to;
    case assembly::Held::breaks:
        break;
    }
    return ui::Verdict::does_not_fit;
}

namespace {

float high_by_wide(const assembly::Elevation& elevation) {
    Length low_x, high_x, low_y, high_y;
    for (const assembly::Outline& outline : elevation.outlines)
        for (const assembly::Spot& spot : outline.spots) {
            low_x = std::min(low_x, spot.x);
            high_x = std::max(high_x, spot.x);
            low_y = std::min(low_y, spot.y);
            high_y = std::max(high_y, spot.y);
        }
    return high_x > low_x ? static_cast<float>((high_y - low_y) / (high_x - low_x)) : 1.0F;
}

} // namespace

LayoutsReading&
LayoutsReadings::of(const edit::Session& session,
                    const LayoutBoard& board,
                    const std::function<std::string(std::string_view)>& source_title) {
    if (revision_ == session.revision() && version_ == board.version)
        return reading_;
    revision_ = session.revision();
    version_ = board.version;
    reading_ = {};
    reading_.rows = edit::layouts_of(session.job());
    reading_.fields = edit::layout_fields(board.kind);
    if (board.kind.empty())
        return reading_;
    reading_.made =
        edit::read_layout(session.job(), {board.kind, board.mark, board.values}, session.catalog());
    for (edit::LayoutRuleRow& rule : reading_.made.rules)
        if (source_title)
            if (std::string title = source_title(rule.source); !title.empty())
                rule.source = std::move(title);
    reading_.high_by_wide = high_by_wide(reading_.made.elevation);
    for (const Working& working : reading_.made.workings)
        reading_.workings.push_back(quantity::working_lines(working, session.job().style));
    return reading_;
}

const std::vector<edit::LayoutKindRow>& LayoutsReadings::kinds() {
    if (kinds_.empty())
        kinds_ = edit::layout_kinds();
    return kinds_;
}

const std::vector<std::string>& LayoutsReadings::titles() {
    if (titles_.empty())
        for (const edit::LayoutKindRow& kind : kinds())
            titles_.push_back(kind.title);
    return titles_;
}

} // namespace treadle::views
