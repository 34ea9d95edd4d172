#include "base/text.h"
#include "plan/words.h"

namespace treadle::plan {

namespace {

using geometry::HoleShape;
using quantity::print;
using quantity::print_bare;
using section::Shape;

constexpr const char* k_times = " × ";

std::string bare(Length value, PrintStyle style) {
    if (style.both)
        return bare(value, quantity::one_system(style)) + " (" +
               bare(value, quantity::other_system(style)) + ")";
    // Walls and pipe diameters are decimals by nature: show them so when no fraction fits.
    const PrintStyle fine{style.system, 64};
    const Length step = quantity::round_to_step(value, fine, Rounding::nearest);
    const Length off = step > value ? step - value : value - step;
    if (style.system == UnitSystem::inch && off > inches(0.0005)) {
        std::string text = quantity::print_decimal(value, style);
        const std::size_t unit = text.find(' ');
        return text.substr(0, unit);
    }
    return print_bare(value, fine);
}

std::string plural(int count, const char* one, const char* many) {
    return std::to_string(count) + " " + (count == 1 ? one : many);
}

Length length_of(const job::Part& part) {
    Length length = part.length;
    for (const Length leg : part.legs)
        length += leg;
    return length;
}

std::string cut_title(const job::Part& part, const job::Cut& cut, PrintStyle style) {
    if (cut.side == job::CutSide::width)
        return "Slit to " + bare(part.section.width, style) + " wide";
    std::string title = part.legs.empty() ? "Shear to " + bare(length_of(part), style)
                                          : std::string("Shear to the blank");
    const Angle mitre = cut.start_mitre != Angle{} ? cut.start_mitre : cut.finish_mitre;
    if (mitre != Angle{})
        title += ", mitre " + print(mitre, style);
    return title;
}

std::string notch_title(const job::Notch& notch, PrintStyle style) {
    if (notch.shape == geometry::NotchShape::vee)
        return "V notch " + print(notch.included, style) + ", " + bare(notch.depth, style) +
               " deep";
    return "Notch " + bare(notch.along, style) + k_times + bare(notch.depth, style);
}

std::string saddle_title(const job::Saddle& saddle, PrintStyle style) {
    return "Saddle for " + bare(saddle.run_diameter, style) + " run" +
           (saddle.end == job::End::both ? ", both ends" : "");
}

} // namespace

std::string hole_words(const geometry::HoleOutline& hole, PrintStyle style) {
    std::string text = bare(hole.size, style);
    if (hole.shape == HoleShape::rectangle || hole.shape == HoleShape::obround)
        text += k_times + bare(hole.size2, style);
    return text + " " + geometry::hole_shape_word(hole.shape);
}

std::string operation_title(const job::Part& part, std::size_t operation, PrintStyle style) {
    const job::Operation& op = part.operations[operation];
    if (const auto* cut = std::get_if<job::Cut>(&op))
        return cut_title(part, *cut, style);
    if (const auto* punch = std::get_if<job::Punch>(&op))
        return "Punch " + hole_words(punch->hole, style);
    if (const auto* notch = std::get_if<job::Notch>(&op))
        return notch_title(*notch, style);
    if (const auto* bend = std::get_if<job::Bend>(&op))
        return "Bend " + print(bend->angle, style) + (bend->up ? " up" : " down");
    return saddle_title(std::get<job::Saddle>(op), style);
}

std::string operation_detail(const job::Part& part,
                             const PartPlan& plan,
                             std::size_t operation,
                             PrintStyle style) {
    const job::Operation& op = part.operations[operation];
    const OperationPlan& planned = plan.operations[operation];
    std::string text;
    if (std::holds_alternative<job::Punch>(op))
        text = plural(planned.strokes, "hole", "holes");
    else
        text = plural(planned.strokes, "stroke", "strokes");
    if (std::holds_alternative<job::Bend>(op) && planned.tools.opening > Length{})
        text += ", V " + bare(planned.tools.opening, style) + ", inside radius " +
                bare(planned.bend.radius, style);
    if (const auto* punch = std::get_if<job::Punch>(&op);
        punch != nullptr && punch->face != section::Face::flat)
        text += std::string(" in ") + section::face_word(punch->face);
    return text;
}

std::string section_title(const Section& section, PrintStyle style) {
    const std::string width = bare(section.width, style);
    switch (section.shape) {
    case Shape::flat:
        return "Flat " + bare(section.thickness, style) + k_times + width;
    case Shape::plate:
        return "Plate " + bare(section.thickness, style) + k_times + width;
    case Shape::angle:
        return "Angle " + width + k_times + bare(section.height, style) + k_times +
               bare(section.thickness, style);
    case Shape::channel:
        return section.designation.empty()
                   ? "Channel " + bare(section.height, style) + k_times + width
                   : "Channel " + section.designation;
    case Shape::round:
        return "Round " + width;
    case Shape::square:
        return "Square " + width;
    case Shape::pipe:
        return "Pipe " + width + k_times + bare(section.thickness, style);
    case Shape::square_tube:
        return "Tube " + width + k_times + bare(section.height, style) + k_times +
               bare(section.thickness, style);
    }
    return "";
}

std::string part_title(const job::Part& part, PrintStyle style) {
    const std::string section = section_title(part.section, style);
    if (!part.legs.empty())
        return section + ", " + plural(static_cast<int>(part.legs.size()) - 1, "bend", "bends");
    if (part.section.shape == Shape::plate)
        return section + k_times + bare(part.length, style);
    return section + ", " + bare(part.length, style) + " long";
}

std::string tooling_words(const Tooling& tools, const equipment::Shop& shop, PrintStyle style) {
    if (tools.station == k_none)
        return "";
    const auto& machine = shop.machine;
    const auto& station = machine.stations[static_cast<std::size_t>(tools.station)];
    std::string text = station.name;
    if (tools.attachment != k_none)
        text += ", " + machine.attachments[static_cast<std::size_t>(tools.attachment)].name;
    if (tools.punch_size.size > Length{}) {
        text += ": punch " + hole_words(tools.punch_size, style);
        if (tools.die_size.size > Length{})
            text += ", die " + hole_words(tools.die_size, style);
        if (tools.holder != k_none)
            text += ", " + station.holders[static_cast<std::size_t>(tools.holder)].name;
    }
    if (tools.opening > Length{}) {
        text += ": V " + bare(tools.opening, style);
        if (tools.nose > Length{})
            text += ", punch nose " + bare(tools.nose, style);
    }
    if (tools.saddle_run > Length{})
        text += ": die for a " + bare(tools.saddle_run, style) + " run";
    if (tools.mitre != Angle{})
        text += ": set to " + print(tools.mitre, style);
    return text;
}

std::string need_words(const Need& need, PrintStyle style) {
    const std::string long_enough =
        need.length > Length{} ? ", at least " + bare(need.length, style) + " long" : "";
    switch (need.kind) {
    case Need::Kind::punch:
        return "Punch " + hole_words(need.hole, style);
    case Need::Kind::die:
        return "Die " + hole_words(need.hole, style);
    case Need::Kind::vee_block:
        return "V block, opening " + bare(need.size, style) + long_enough;
    case Need::Kind::brake_punch:
        return "Brake punch, nose radius up to " + bare(need.size, style) + long_enough;
    case Need::Kind::saddle_die:
        return "Saddle die for " + bare(need.branch, style) + " on " + bare(need.size, style);
    case Need::Kind::holder:
        return std::string(need.hole.shape == HoleShape::round ? "Punch holder"
                                                               : "Keyed punch holder") +
               " that takes " + bare(need.size, style) + " across";
    }
    return "";
}

} // namespace treadle::plan
