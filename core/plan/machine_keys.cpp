#include "plan/machine_keys.h"

#include "plan/words.h"

#include <cmath>
#include <cstdint>
#include <type_traits>

namespace treadle::plan {

namespace {

/// FNV-1a over what is added; a bar between two things, so that "1" "23" is not "12" "3".
class Sum {
public:
    Sum& add(std::string_view text) {
        for (const char c : text)
            take(static_cast<unsigned char>(c));
        take(k_bar);
        return *this;
    }
    Sum& add(std::int64_t number) { return add(std::to_string(number)); }
    Sum& add(Length length) { return add(std::llround(quantity::to_millimetres(length) * 1000.0)); }
    Sum& add(Angle angle) { return add(std::llround(angle.in_degrees() * 1000.0)); }
    Sum& add(Stress stress) { return add(std::llround(quantity::to_megapascals(stress) * 1000.0)); }
    Sum& add(const std::optional<Length>& length) {
        return length ? add(*length) : add(std::string_view("none"));
    }
    [[nodiscard]] std::string text() const {
        constexpr const char* k_digits = "0123456789abcdef";
        std::string words;
        for (int shift = 60; shift >= 0; shift -= 4)
            words += k_digits[(sum_ >> static_cast<unsigned>(shift)) & 15u];
        return words;
    }

private:
    static constexpr unsigned char k_bar = 0xFF; ///< in no UTF-8 text
    void take(unsigned char byte) { sum_ = (sum_ ^ byte) * 1099511628211ull; }
    std::uint64_t sum_ = 14695981039346656037ull;
};

/// The same words whatever units the job is printed in.
constexpr PrintStyle k_fixed{UnitSystem::metric, 64};

void add_tools(Sum& sum, const Tooling& tools, const equipment::Shop& shop) {
    sum.add(tooling_words(tools, shop, k_fixed));
    sum.add(tools.punch_size.size).add(tools.punch_size.size2);
    sum.add(tools.die_size.size).add(tools.die_size.size2);
    sum.add(tools.opening).add(tools.nose).add(tools.saddle_run).add(tools.mitre);
}

void add_settings(Sum& sum, const Settings& settings) {
    sum.add(static_cast<std::int64_t>(settings.kind)).add(settings.stripper_gap);
    sum.add(settings.stroke_up).add(settings.stroke_down).add(settings.out_along ? 1 : 0);
}

void add_value(Sum& sum, const AnyQuantity& value) {
    if (const auto* length = std::get_if<Length>(&value))
        sum.add(*length);
    else if (const auto* angle = std::get_if<Angle>(&value))
        sum.add(*angle);
}

const char* kind_word(MachineWork kind) {
    switch (kind) {
    case MachineWork::set_up:
        return "set-up";
    case MachineWork::certificate:
        return "certificate";
    case MachineWork::first_piece:
        return "first";
    case MachineWork::run:
        return "run";
    case MachineWork::mark:
        return "mark";
    }
    return "";
}

} // namespace

StepKey set_up_key(const SetUp& set_up, const equipment::Shop& shop) {
    Sum place;
    add_tools(place, set_up.tools, shop);
    Sum content;
    add_settings(content, set_up.settings);
    return {"set-up/" + place.text(), content.text()};
}

StepKey work_key(const MachineStep& step,
                 const PartPlan& part,
                 const SetUp& set_up,
                 const equipment::Shop& shop) {
    const auto index = static_cast<std::size_t>(step.operation);
    Sum content;
    add_tools(content, set_up.tools, shop);
    content.add(section_title(part.part->section, k_fixed)).add(part.part->grade);
    content.add(part.part->certified_tensile);
    content.add(operation_title(*part.part, index, k_fixed));
    content.add(static_cast<std::int64_t>(part.operations[index].outcome));
    content.add(verdict_words(part.operations[index], k_fixed));
    content.add(step.strokes).add(step.positions);
    for (const SetFigure& figure : step.figures) {
        content.add(figure.what).add(figure.from);
        add_value(content, figure.value);
    }
    return {"part/" + part.part->id + "/" + std::to_string(step.operation + 1) + "." +
                std::to_string(step.position + 1) + "/" + kind_word(step.kind),
            content.text()};
}

} // namespace treadle::plan
