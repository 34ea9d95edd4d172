// Every input of every calculation against nonsense: whatever is listed is tried here, so a new
// calculation needs no line of its own, only an example for each of its inputs.

#include "archive/archive.h"
#include "calc/allowed_values.h"
#include "calc/calculation.h"
#include "calc/example.h"
#include "calc/valid_input.h"

#include <doctest/doctest.h>

#include <set>
#include <string>
#include <vector>

using namespace treadle;
using calc::Input;
using calc::InputKind;

namespace {

const job::Catalog& catalog() {
    static const job::Catalog whole = archive::read_catalog().value();
    return whole;
}

calc::Tables tables() { return {catalog().grades, catalog().sections}; }

struct Trial {
    const char* name;
    std::string text;
};

bool is_plain_word(InputKind kind, const std::string& example) {
    return kind == InputKind::word || kind == InputKind::material || kind == InputKind::section ||
           example.empty() || (example[0] >= 'A' && example[0] <= 'Z');
}

/// " mm" of "50 mm", "" of "0.42".
std::string unit_of(const std::string& example) {
    const std::size_t at = example.find_first_not_of("0123456789./- '\"");
    return at == std::string::npos ? "" : " " + example.substr(at);
}

std::vector<Trial> trials(InputKind kind, const std::string& example) {
    std::vector<Trial> out{
        {"empty", ""},
        {"blanks", "   "},
        {"not a number", "nan"},
        {"infinite", "inf"},
        {"rubbish", "ten"},
        {"hex", "0x10"},
        {"script", "<b>1</b>"},
        {"overlong", std::string(5000, '9')},
        {"overlong", std::string(5000, 'x')},
        {"bytes", "\xff\xfe"},
    };
    if (is_plain_word(kind, example))
        return out;
    const std::string unit = unit_of(example);
    out.push_back({"zero", "0" + unit});
    out.push_back({"negative", "-1" + unit});
    out.push_back({"negative", "-0.001" + unit});
    out.push_back({"infinite", "inf" + unit});
    out.push_back({"infinite", "1e999" + unit});
    out.push_back({"not a number", "nan" + unit});
    out.push_back({"absurd", "1e12" + unit});
    out.push_back({"unknown unit", "12 apples"});
    if (unit != " kg" && unit != " lb")
        out.push_back({"wrong dimension", "5 kg"});
    else
        out.push_back({"wrong dimension", "5 in"});
    if (unit == " in" || unit == " mm" || unit == " ft")
        out.push_back({"absurd", "10 km"}); // no unit of the trade, and no length of it
    if (!unit.empty() && unit != " deg")
        out.push_back({"unit missing", "5"});
    return out;
}

bool is_allowed(const std::string& calculation, const std::string& input, const char* trial) {
    for (const test::AllowedValue& row : test::k_allowed_values)
        if (row.calculation == calculation && row.input == input && row.trial == trial)
            return true;
    return false;
}

/// The input's own name, or a place inside it.
bool names(const std::string& field, const std::string& input) {
    return field == input || field.rfind(input + "[", 0) == 0 || field.rfind(input + ".", 0) == 0;
}

Input* find(Input::Object& in, const std::string& name) {
    for (auto& member : in)
        if (member.first == name)
            return &member.second;
    return nullptr;
}

/// Rebuilds `in` with the leaf that `leaf` counts down to put as `text`; its old text in `before`.
Input with_leaf(const Input& in, int& leaf, const std::string& text, std::string& before) {
    if (const std::string* old = in.text()) {
        if (leaf-- != 0)
            return in;
        before = *old;
        return Input(text);
    }
    if (in.list() != nullptr) {
        Input::List list;
        for (const Input& item : *in.list())
            list.push_back(with_leaf(item, leaf, text, before));
        return Input(std::move(list));
    }
    Input::Object object;
    for (const auto& [name, value] : *in.object())
        object.emplace_back(name, with_leaf(value, leaf, text, before));
    return Input(std::move(object));
}

/// Asks with one input changed, and says what is wrong with the answer: "" when nothing is.
std::string fault(const calc::Calculation& calculation,
                  Input::Object in,
                  const std::string& input,
                  Input changed) {
    *find(in, input) = std::move(changed);
    const auto answer = calc::run(calculation.name, Input(in), tables());
    if (answer.ok())
        return "was answered";
    if (!names(answer.refusal().field, input))
        return "was refused as " + answer.refusal().field;
    return answer.refusal().reason.empty() ? "was refused without a reason" : "";
}

struct Tally {
    int tried = 0;
    std::set<std::string> allowed_met;
};

void try_input(const calc::Calculation& calculation, const calc::InputSpec& spec, Tally& tally) {
    auto good = test::valid_input(calculation, spec.name, tables());
    if (!good) {
        FAIL_CHECK(std::string(calculation.name)
                   << ": no answer with " << std::string(spec.name)
                   << ". Give each input in its InputSpec an example that works.");
        return;
    }
    const Input value = *find(*good, spec.name);
    for (int place = 0;; ++place) {
        std::string before;
        int leaf = place;
        (void)with_leaf(value, leaf, "", before);
        if (leaf >= 0)
            break;
        for (const Trial& trial : trials(spec.kind, before)) {
            leaf = place;
            const std::string wrong =
                fault(calculation, *good, spec.name, with_leaf(value, leaf, trial.text, before));
            ++tally.tried;
            if (wrong == "was answered" && is_allowed(calculation.name, spec.name, trial.name))
                tally.allowed_met.insert(std::string(calculation.name) + spec.name + trial.name);
            else if (!wrong.empty())
                FAIL_CHECK(std::string(calculation.name)
                           << ": " << std::string(spec.name) << " = " << trial.text.substr(0, 20)
                           << " (" << trial.name << ") " << wrong);
        }
    }
    // Of another shape than it has.
    const Input object(Input::Object{{"a", "1"}});
    for (const Input& other : {Input(Input::List{}), Input(Input::List{object}), object}) {
        const std::string wrong = fault(calculation, *good, spec.name, other);
        ++tally.tried;
        if (!wrong.empty())
            FAIL_CHECK(std::string(calculation.name)
                       << ": " << std::string(spec.name) << " of another shape " << wrong);
    }
}

} // namespace

TEST_CASE("every input of every calculation refuses nonsense by its own name") {
    Tally tally;
    for (const calc::Calculation* calculation : calc::all())
        for (const calc::InputSpec& spec : calculation->inputs)
            try_input(*calculation, spec, tally);
    CHECK(tally.tried > 1000);
    MESSAGE("nonsense tried: " << tally.tried);
    for (const test::AllowedValue& row : test::k_allowed_values)
        if (tally.allowed_met.count(std::string(row.calculation) + std::string(row.input) +
                                    std::string(row.trial)) == 0)
            FAIL_CHECK("allowed_values.h: " << std::string(row.calculation) + " " +
                                                   std::string(row.input) + " " +
                                                   std::string(row.trial)
                                            << " is refused after all");
}

TEST_CASE("every required input is missed by its own name; unknown and doubled ones are refused") {
    for (const calc::Calculation* calculation : calc::all()) {
        CAPTURE(calculation->name);
        const auto good = test::valid_input(*calculation, "", tables());
        REQUIRE(good);
        const auto field = [&](const Input::Object& in) {
            const auto answer = calc::run(calculation->name, Input(in), tables());
            return answer.ok() ? std::string() : answer.refusal().field;
        };
        for (const calc::InputSpec& spec : calculation->inputs) {
            Input::Object in;
            for (const auto& member : *good)
                if (member.first != spec.name)
                    in.push_back(member);
            if (spec.required)
                CHECK(field(in) == spec.name);
        }
        Input::Object more = *good;
        more.emplace_back("colour", "red");
        CHECK(field(more) == "colour");
        Input::Object twice = *good;
        twice.push_back(good->front());
        CHECK(field(twice) == good->front().first);
    }
}

TEST_CASE("every answer keeps to the list: its figures in order, its workings' cards among them") {
    std::set<std::string> names_met;
    for (const calc::Calculation* calculation : calc::all()) {
        CAPTURE(calculation->name);
        CHECK(names_met.insert(calculation->name).second);
        std::set<std::string> figures_met;
        for (const calc::InputSpec& spec : calculation->inputs) {
            const auto good = test::valid_input(*calculation, spec.name, tables());
            if (!good)
                continue; // said by the first case
            const auto answer = calc::run(calculation->name, Input(*good), tables());
            REQUIRE(answer.ok());
            std::size_t at = 0;
            for (const calc::Figure& figure : answer->figures) {
                while (at < calculation->outputs.size() &&
                       figure.name != calculation->outputs[at].name)
                    ++at;
                CHECK_MESSAGE(at < calculation->outputs.size(), figure.name, " is not listed here");
                figures_met.insert(figure.name);
            }
            for (const Working& working : answer->workings) {
                bool listed = false;
                for (const base::FormulaCard* card : calculation->cards)
                    listed = listed || card == working.card;
                CHECK_MESSAGE(listed, working.card->id, " is not listed");
            }
        }
        CHECK(figures_met.size() == calculation->outputs.size());
    }
}
