#include "place_text.h"

#include "base/text.h"

#include <cmath>

#include "kept_text.h"

namespace treadle::web {

namespace {

using views::Panel;
using views::Place;
using views::Shape;
using views::State;

constexpr const char* k_title = "treadle-place 1";
constexpr KeptWord<Place> k_places[] = {{"parts", Place::parts},
                                        {"jobs", Place::jobs},
                                        {"order", Place::order},
                                        {"bars", Place::bars},
                                        {"limits", Place::limits},
                                        {"shop", Place::shop},
                                        {"sheets", Place::sheets},
                                        {"help", Place::help}};
constexpr KeptWord<Panel> k_panels[] = {{"checks", Panel::checks},
                                        {"working", Panel::working},
                                        {"part", Panel::part_form},
                                        {"operation", Panel::operation_form}};
constexpr KeptWord<Shape> k_shapes[] = {
    {"flat", Shape::flat}, {"finished", Shape::finished}, {"bends", Shape::bends}};

struct NumberLine {
    const char* name;
    int State::*value;
    int least;
};
constexpr NumberLine k_numbers[] = {{"operation", &State::operation, -1},
                                    {"bend", &State::bend_step, 0},
                                    {"limits-place", &State::limits_place, 0},
                                    {"shop-page", &State::shop_page, 0},
                                    {"tool", &State::tool, 0},
                                    {"help-section", &State::help_section, 0}};
struct TextLine {
    const char* name;
    std::string State::*value;
};
constexpr TextLine k_texts[] = {{"chosen", &State::part},
                                {"limits-grade", &State::limits_grade},
                                {"open-bar", &State::open_bar}};
struct TruthLine {
    const char* name;
    bool State::*value;
};
constexpr TruthLine k_truths[] = {{"detail", &State::detail_open},
                                  {"machines", &State::limits_machines}};

/// A number, a blank, and a name: "120 parts".
void take_scroll(std::string_view text, PlaceBeside& beside) {
    const std::size_t blank = text.find(' ');
    const auto offset = base::read_number(text.substr(0, blank));
    if (blank != std::string_view::npos && offset && *offset >= 0 && *offset < 1e6)
        beside.scrolls[std::string(text.substr(blank + 1))] = static_cast<float>(*offset);
}

void take_number(std::string_view text, int least, int& out) {
    const auto number = base::read_number(text);
    if (number && *number >= least && *number < 1e6 && *number == std::floor(*number))
        out = static_cast<int>(*number);
}

void take_state(const KeptLine& line, State& state) {
    if (line.name == "place")
        take_word(k_places, line.value, state.place);
    else if (line.name == "panel")
        take_word(k_panels, line.value, state.panel);
    else if (line.name == "shape")
        take_word(k_shapes, line.value, state.shape);
    for (const NumberLine& number : k_numbers)
        if (line.name == number.name)
            take_number(line.value, number.least, state.*number.value);
    for (const TextLine& text : k_texts)
        if (line.name == text.name)
            state.*text.value = line.value;
    for (const TruthLine& truth : k_truths)
        if (line.name == truth.name)
            state.*truth.value = line.value == "yes";
}

/// A refused entry is three lines, the last of which brings it in.
void take_fault(const KeptLine& line, views::Fault& fault, State& state) {
    if (line.name == "fault")
        fault = {line.value, "", ""};
    else if (line.name == "fault-typed")
        fault.typed = line.value;
    else if (line.name == "fault-reason" && !fault.field.empty())
        views::set_fault(state, {fault.field, fault.typed, line.value});
}

} // namespace

std::string place_text(const State& state, const PlaceBeside& beside) {
    std::vector<KeptLine> lines{{"place", word_of(k_places, state.place)},
                                {"panel", word_of(k_panels, state.panel)},
                                {"shape", word_of(k_shapes, state.shape)}};
    for (const NumberLine& number : k_numbers)
        lines.push_back({number.name, std::to_string(state.*number.value)});
    for (const TextLine& text : k_texts)
        lines.push_back({text.name, state.*text.value});
    for (const TruthLine& truth : k_truths)
        lines.push_back({truth.name, state.*truth.value ? "yes" : "no"});
    for (const views::Fault& fault : state.faults) {
        lines.push_back({"fault", fault.field});
        lines.push_back({"fault-typed", fault.typed});
        lines.push_back({"fault-reason", fault.reason});
    }
    for (const auto& [id, offset] : beside.scrolls)
        if (offset >= 1)
            lines.push_back({"scroll", base::write_fixed(offset, 0) + " " + id});
    if (!beside.field.empty()) {
        lines.push_back({"field", beside.field});
        lines.push_back({"typed", beside.typed});
    }
    return write_lines(k_title, lines);
}

bool read_place_text(std::string_view text, State& state, PlaceBeside& beside) {
    const auto lines = read_lines(k_title, text);
    if (!lines)
        return false;
    views::Fault fault;
    for (const KeptLine& line : *lines) {
        take_state(line, state);
        take_fault(line, fault, state);
        if (line.name == "scroll")
            take_scroll(line.value, beside);
        else if (line.name == "field")
            beside.field = line.value;
        else if (line.name == "typed")
            beside.typed = line.value;
    }
    return true;
}

} // namespace treadle::web
