#include "lesson/numbers.h"

#include "base/contracts.h"

#include <algorithm>

namespace treadle::lesson {

namespace {

std::uint32_t mixed(std::uint32_t value) {
    value ^= value >> 16;
    value *= 0x7feb352dU;
    value ^= value >> 15;
    value *= 0x846ca68bU;
    value ^= value >> 16;
    return value;
}

/// Calls `name` for what stands in braces and `text` for the rest.
template <class Text, class Name>
void walk(std::string_view words, const Text& text, const Name& name) {
    while (!words.empty()) {
        const std::size_t open = words.find('{');
        const std::size_t close = open == words.npos ? open : words.find('}', open);
        if (close == words.npos)
            return text(words);
        text(words.substr(0, open));
        name(words.substr(open + 1, close - open - 1));
        words.remove_prefix(close + 1);
    }
}

const std::string* text_input(const calc::Input::Object& in, std::string_view name) {
    const calc::Input* const found = find_input(in, name);
    return found == nullptr ? nullptr : found->text();
}

} // namespace

std::size_t pick(unsigned seed, std::size_t step, std::size_t place, std::size_t choices) {
    TREADLE_EXPECT(choices > 0);
    const std::uint32_t state = (static_cast<std::uint32_t>(seed) + 1U) * 2654435769U +
                                (static_cast<std::uint32_t>(step) + 1U) * 2246822519U +
                                (static_cast<std::uint32_t>(place) + 1U) * 3266489917U;
    const std::uint64_t wide = std::uint64_t{mixed(state)} * std::uint64_t{choices};
    return static_cast<std::size_t>(wide >> 32U);
}

calc::Input::Object inputs_of(const Asked& asked, unsigned seed, std::size_t step) {
    calc::Input::Object in = asked.in;
    for (std::size_t place = 0; place < asked.vary.size(); ++place) {
        const auto& sets = asked.vary[place].sets;
        if (!sets.empty())
            put_over(in, sets[pick(seed, step, place, sets.size())]);
    }
    return in;
}

const job::PartRef& part_of(const Trial& trial, unsigned seed, std::size_t step) {
    TREADLE_EXPECT(!trial.parts.empty());
    return trial.parts[pick(seed, step, 0, trial.parts.size())];
}

void put_over(calc::Input::Object& in, const calc::Input::Object& over) {
    for (const auto& [name, value] : over) {
        const auto same = [&name = name](const auto& member) { return member.first == name; };
        const auto found = std::find_if(in.begin(), in.end(), same);
        if (found != in.end())
            found->second = value;
        else
            in.emplace_back(name, value);
    }
}

void leave_out(calc::Input::Object& in, const std::vector<std::string>& names) {
    for (const std::string& name : names)
        in.erase(std::remove_if(in.begin(),
                                in.end(),
                                [&](const auto& member) { return member.first == name; }),
                 in.end());
}

const calc::Input* find_input(const calc::Input::Object& in, std::string_view name) {
    for (const auto& [known, value] : in)
        if (known == name)
            return &value;
    return nullptr;
}

std::string filled(std::string_view words, const calc::Input::Object& in) {
    std::string out;
    walk(
        words,
        [&](std::string_view text) { out += text; },
        [&](std::string_view name) {
            const std::string* const value = text_input(in, name);
            out += value != nullptr ? *value : "{" + std::string(name) + "}";
        });
    return out;
}

std::string unknown_name(std::string_view words, const calc::Input::Object& in) {
    std::string unknown;
    walk(
        words,
        [](std::string_view) {},
        [&](std::string_view name) {
            if (unknown.empty() && text_input(in, name) == nullptr)
                unknown = name.empty() ? "{}" : std::string(name);
        });
    return unknown;
}

} // namespace treadle::lesson
