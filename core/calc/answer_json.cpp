#include "calc/answer_json.h"

#include "base/json_writer.h"
#include "calc/example.h"

#include <algorithm>
#include <variant>
#include <vector>

namespace treadle::calc {

namespace {

using base::JsonWriter;

struct Written {
    double value;
    const char* unit;
};

struct InUnits {
    Written operator()(Length q) const { return {quantity::to_millimetres(q), "mm"}; }
    Written operator()(Area q) const { return {quantity::to_square_millimetres(q), "mm2"}; }
    Written operator()(Force q) const { return {quantity::to_kilonewtons(q), "kN"}; }
    Written operator()(Stress q) const { return {quantity::to_megapascals(q), "MPa"}; }
    Written operator()(Energy q) const { return {quantity::to_joules(q), "J"}; }
    Written operator()(Mass q) const { return {quantity::to_kilograms(q), "kg"}; }
    Written operator()(MassPerLength q) const {
        return {quantity::to_kilograms_per_metre(q), "kg/m"};
    }
    Written operator()(Angle q) const { return {quantity::to_degrees(q), "deg"}; }
    Written operator()(Voltage q) const { return {quantity::to_volts(q), "V"}; }
    Written operator()(Current q) const { return {quantity::to_amperes(q), "A"}; }
    Written operator()(ApparentPower q) const { return {quantity::to_kilovolt_amperes(q), "kVA"}; }
    Written operator()(Power q) const { return {quantity::to_kilowatts(q), "kW"}; }
    Written operator()(Resistance q) const { return {quantity::to_ohms(q), "ohm"}; }
    Written operator()(ResistancePerLength q) const {
        return {quantity::to_ohms_per_kilometre(q), "ohm/km"};
    }
    Written operator()(quantity::Number q) const { return {q.value, ""}; }
    Written operator()(quantity::Share q) const { return {q.value, ""}; }
};

void value_fields(JsonWriter& json, const AnyQuantity& quantity) {
    const Written written = std::visit(InUnits{}, quantity);
    json.field("value", written.value).field("unit", written.unit);
}

void list_fields(JsonWriter& json, const std::vector<Length>& lengths) {
    json.key("values").begin_array();
    for (const Length length : lengths)
        json.number(quantity::to_millimetres(length));
    json.end_array().field("unit", "mm");
}

void working_value(JsonWriter& json, const quantity::WorkingValue& value) {
    json.begin_object().field("symbol", value.symbol);
    value_fields(json, value.value);
    json.end_object();
}

void working_json(JsonWriter& json, const Working& working) {
    const base::FormulaCard& card = *working.card;
    json.begin_object()
        .field("card", card.id)
        .field("title", card.title)
        .field("expression", card.expression);
    json.key("symbols").begin_object();
    for (const base::CardSymbol& symbol : card.symbols)
        json.field(symbol.symbol, symbol.meaning);
    json.end_object();
    json.key("values").begin_array();
    for (const quantity::WorkingValue& value : working.values)
        working_value(json, value);
    json.end_array();
    json.key("result");
    working_value(json, working.result);
    json.field("note", working.note)
        .field("validity", card.validity)
        .field("rounding", card.rounding)
        .field("source", card.source)
        .field("evidence", base::evidence_words(card.evidence))
        .end_object();
}

/// Each source once, in the order met.
void sources_json(JsonWriter& json, const std::vector<const base::FormulaCard*>& cards) {
    std::vector<std::string_view> seen;
    json.key("sources").begin_array();
    for (const base::FormulaCard* card : cards) {
        if (std::find(seen.begin(), seen.end(), card->source) != seen.end())
            continue;
        seen.emplace_back(card->source);
        json.text(card->source);
    }
    json.end_array();
}

void input_json(JsonWriter& json, const Input& input) {
    if (const std::string* text = input.text()) {
        json.text(*text);
    } else if (const Input::List* list = input.list()) {
        json.begin_array();
        for (const Input& item : *list)
            input_json(json, item);
        json.end_array();
    } else {
        json.begin_object();
        for (const auto& [name, value] : *input.object())
            input_json(json.key(name), value);
        json.end_object();
    }
}

void calculation_json(JsonWriter& json, const Calculation& calculation) {
    json.begin_object().field("calc", calculation.name).field("title", calculation.title);
    json.key("in").begin_array();
    for (const InputSpec& input : calculation.inputs) {
        json.begin_object()
            .field("name", input.name)
            .field("kind", kind_hint(input.kind))
            .field("required", input.required)
            .field("meaning", input.meaning);
        if (*input.choices != '\0')
            json.field("choices", input.choices);
        input_json(json.key("example"), example_input(input));
        json.end_object();
    }
    json.end_array().key("out").begin_array();
    for (const OutputSpec& output : calculation.outputs)
        json.begin_object()
            .field("name", output.name)
            .field("unit", output.unit)
            .field("meaning", output.meaning)
            .end_object();
    json.end_array();
    sources_json(json, {calculation.cards.begin(), calculation.cards.end()});
    json.end_object();
}

} // namespace

std::string answer_json(std::string_view name, const Answer& answer) {
    JsonWriter json;
    json.begin_object().field("calc", name).key("out").begin_object();
    for (const Figure& figure : answer.figures) {
        json.key(figure.name).begin_object();
        if (figure.list)
            list_fields(json, *figure.list);
        else
            value_fields(json, figure.value);
        json.end_object();
    }
    json.end_object().key("working").begin_array();
    std::vector<const base::FormulaCard*> cards;
    for (const Working& working : answer.workings) {
        working_json(json, working);
        cards.push_back(working.card);
    }
    json.end_array();
    sources_json(json, cards);
    json.end_object();
    return json.take();
}

std::string refusal_json(const base::Refusal& refusal) {
    JsonWriter json;
    json.begin_object().key("error").begin_object();
    json.field("field", refusal.field).field("reason", refusal.reason);
    if (!refusal.detail.empty())
        json.field("detail", refusal.detail);
    json.end_object().end_object();
    return json.take();
}

std::string request_json(std::string_view name, const Input& in) {
    JsonWriter json;
    json.begin_object().field("calc", name);
    input_json(json.key("in"), in);
    json.end_object();
    return json.take();
}

std::string list_json() {
    JsonWriter json(2);
    json.begin_array();
    for (const Calculation* calculation : all())
        calculation_json(json, *calculation);
    json.end_array();
    return json.take();
}

} // namespace treadle::calc
