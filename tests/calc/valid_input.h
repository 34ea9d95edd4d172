// Inputs that a calculation answers, found from the examples in its own list.
//
// Which inputs go together is the calculation's to say (material or shear_strength, a second size
// for a rectangle only), so it is asked: fewest optional inputs first, each choice of a word.

#pragma once

#include "calc/calculation.h"
#include "calc/example.h"

#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace treadle::test {

/// The examples of `specs`, with the words' choices counted through by `turn`; sets `turn` to zero
/// when it was the last.
inline calc::Input::Object examples_at(const std::vector<const calc::InputSpec*>& specs,
                                       std::size_t& turn) {
    calc::Input::Object in;
    std::size_t rest = turn;
    for (const calc::InputSpec* spec : specs) {
        calc::InputSpec one = *spec;
        std::string choices = spec->choices;
        if (spec->kind == calc::InputKind::word && !choices.empty()) {
            std::vector<std::string> words(1);
            for (const char c : choices) {
                if (c == '|')
                    words.emplace_back();
                else
                    words.back() += c;
            }
            in.emplace_back(spec->name, calc::Input(words[rest % words.size()]));
            rest /= words.size();
        } else {
            in.emplace_back(spec->name, calc::example_input(one));
        }
    }
    turn = rest == 0 ? turn + 1 : 0;
    return in;
}

/// Every required input, `wanted`, and as few others as will do; none when nothing is answered.
inline std::optional<calc::Input::Object>
valid_input(const calc::Calculation& calculation, std::string_view wanted, calc::Tables tables) {
    std::vector<const calc::InputSpec*> fixed;
    std::vector<const calc::InputSpec*> free;
    for (const calc::InputSpec& spec : calculation.inputs)
        (spec.required || spec.name == wanted ? fixed : free).push_back(&spec);
    const auto count_of = [&](std::size_t bits) {
        std::size_t count = 0;
        for (; bits != 0; bits &= bits - 1)
            ++count;
        return count;
    };
    for (std::size_t most = 0; most <= free.size() && most <= 4; ++most) {
        for (std::size_t bits = 0; bits < (std::size_t{1} << free.size()); ++bits) {
            if (count_of(bits) != most)
                continue;
            std::vector<const calc::InputSpec*> chosen = fixed;
            for (std::size_t i = 0; i < free.size(); ++i)
                if ((bits >> i & 1U) != 0)
                    chosen.push_back(free[i]);
            std::size_t turn = 0;
            do {
                calc::Input::Object in = examples_at(chosen, turn);
                if (calc::run(calculation.name, calc::Input(in), tables).ok())
                    return in;
            } while (turn != 0);
        }
    }
    return std::nullopt;
}

} // namespace treadle::test
