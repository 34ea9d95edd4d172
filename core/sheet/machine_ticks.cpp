#include "sheet/machine_ticks.h"

#include "plan/settings.h"
#include "plan/words.h"
#include "sheet/figures.h"
#include "sheet/machine_words.h"

#include <string_view>

namespace treadle::sheet {

namespace {

using plan::MachineStep;
using plan::Tick;
using plan::ToolItem;

const plan::SetUp& set_up_at(const TickInputs& in, int index) {
    return in.plan.order[static_cast<std::size_t>(index)];
}
const plan::PartPlan& part_of(const TickInputs& in, const MachineStep& step) {
    return *in.plan.parts[static_cast<std::size_t>(step.part)];
}

std::string item_words(const TickInputs& in, const plan::Tooling& tools, ToolItem item) {
    const PrintStyle style = in.job.style;
    const equipment::Machine& machine = in.shop.machine;
    switch (item) {
    case ToolItem::attachment:
        return machine.attachments[static_cast<std::size_t>(tools.attachment)].name;
    case ToolItem::holder:
        return machine.stations[static_cast<std::size_t>(tools.station)]
            .holders[static_cast<std::size_t>(tools.holder)]
            .name;
    case ToolItem::punch:
        return "punch " + plan::hole_words(tools.punch_size, style);
    case ToolItem::die:
        return "die " + plan::hole_words(tools.die_size, style);
    case ToolItem::vee:
        return "V block, opening " + stock_text(tools.opening, style);
    case ToolItem::brake_punch:
        return "brake punch, nose radius " + stock_text(tools.nose, style);
    case ToolItem::saddle_die:
        return "saddle die for a " + stock_text(tools.saddle_run, style) + " run";
    case ToolItem::mitre:
        return "angle of " + quantity::print(tools.mitre, style);
    }
    return "";
}

std::string stop_tick(const TickInputs& in, const plan::SetFigure& figure) {
    const FigureText text = figure_text(figure, in.job.style);
    const std::string value = text.digits + " " + text.unit;
    if (text.what == "ram down")
        return "Ram down set to " + value + " " + text.from;
    if (text.what == "angle")
        return "Angle set to " + value + " " + text.from;
    if (text.what == "run")
        return "Die read: for a run of " + value + ", " + text.from;
    if (text.what == "deep")
        return "Depth set to " + value;
    if (text.what == "length" || text.what == "width")
        return "Stop set to a " + text.what + " of " + value;
    constexpr std::string_view k_middle = "middle ";
    if (text.what.rfind(k_middle, 0) == 0)
        return "Stop set to " + value + " " + text.what.substr(k_middle.size()) +
               ", to the middle of the notch";
    return "Stop set to " + value + (text.what == "stop" ? "" : " " + text.what);
}

std::string measured_words(const TickInputs& in, const MachineStep& step) {
    return "Measured" + measures_text(step.measures, in.job.style);
}

std::string marked_words(const TickInputs& in, const MachineStep& step) {
    const plan::Step& planned =
        set_up_at(in, step.set_up).steps[static_cast<std::size_t>(step.step)];
    std::string words = planned.pieces == 1
                            ? std::string("The piece is marked ")
                            : "All " + std::to_string(planned.pieces) + " pieces are marked ";
    words += part_of(in, step).part->mark;
    const std::string& how = in.shop.rules.marking;
    return how.empty() ? words : words + ": " + how;
}

std::string certificate_words(const TickInputs& in, const MachineStep& step) {
    const auto& operation = part_of(in, step).operations[static_cast<std::size_t>(step.operation)];
    return "Certificate read, tensile strength not over the limit: " +
           plan::verdict_words(operation, in.job.style);
}

std::string words_of(const TickInputs& in, const MachineStep& step, const Tick& tick) {
    const plan::SetUp& set_up = set_up_at(in, step.set_up);
    switch (tick.kind) {
    case Tick::Kind::take_off:
        return "Off: " + item_words(in, set_up_at(in, step.tools_before).tools, tick.item);
    case Tick::Kind::mount:
        return (tick.item == ToolItem::mitre ? "Set: " : "On: ") +
               item_words(in, set_up.tools, tick.item);
    case Tick::Kind::setting:
        return plan::setting_lines(
            set_up, in.shop, in.job.style)[static_cast<std::size_t>(tick.index)];
    case Tick::Kind::by_hand: {
        const plan::Step& first = set_up.steps.front();
        return by_hand_words(in.plan.parts[static_cast<std::size_t>(first.part)]
                                 ->part->operations[static_cast<std::size_t>(first.operation)]);
    }
    case Tick::Kind::certificate:
        return certificate_words(in, step);
    case Tick::Kind::stop:
        return stop_tick(in, step.figures[static_cast<std::size_t>(tick.index)]);
    case Tick::Kind::first_made:
        return std::string(set_up.steps[static_cast<std::size_t>(step.step)].pieces == 1
                               ? "Piece "
                               : "First piece ") +
               done_word(
                   part_of(in, step).part->operations[static_cast<std::size_t>(step.operation)]);
    case Tick::Kind::measured:
        return measured_words(in, step);
    case Tick::Kind::marked:
        return marked_words(in, step);
    }
    return "";
}

} // namespace

std::vector<std::string> tick_words(const TickInputs& in, const MachineStep& step) {
    std::vector<std::string> list;
    list.reserve(step.ticks.size());
    for (const Tick& tick : step.ticks)
        list.push_back(words_of(in, step, tick));
    return list;
}

const char* done_word(const job::Operation& operation) {
    if (std::holds_alternative<job::Cut>(operation))
        return "cut";
    if (std::holds_alternative<job::Punch>(operation))
        return "punched";
    if (std::holds_alternative<job::Notch>(operation))
        return "notched";
    if (std::holds_alternative<job::Bend>(operation))
        return "bent";
    return "shaped";
}

std::string by_hand_words(const job::Operation& first) {
    if (std::holds_alternative<job::Punch>(first))
        return "Punch and die read and matched, jogged through by hand once";
    if (std::holds_alternative<job::Bend>(first))
        return "Bend a trial strip of the same metal; set the stroke to its angle";
    if (std::holds_alternative<job::Cut>(first))
        return "Hold-down set to the thickness; stop square to the blade";
    return "";
}

} // namespace treadle::sheet
