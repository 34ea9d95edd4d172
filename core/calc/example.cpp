#include "calc/example.h"

#include "base/text.h"

namespace treadle::calc {

namespace {

/// Takes what stands before the next `mark` off the front, or all of it.
std::string_view take_until(std::string_view& text, char mark) {
    const std::size_t end = text.find(mark);
    const std::string_view front = text.substr(0, end);
    text = end == std::string_view::npos ? std::string_view{} : text.substr(end + 1);
    return base::trim(front);
}

Input item(std::string_view text) {
    text = base::trim(text);
    if (text.find('=') == std::string_view::npos)
        return Input(text);
    Input::Object object;
    while (!text.empty()) {
        std::string_view member = take_until(text, ',');
        const std::string_view name = take_until(member, '=');
        object.emplace_back(std::string(name), Input(base::trim(member)));
    }
    return Input(std::move(object));
}

} // namespace

Input example_input(const InputSpec& spec) {
    std::string_view text = spec.example;
    if (text.empty() && spec.kind == InputKind::word) {
        text = spec.choices;
        return Input(take_until(text, '|'));
    }
    if (text.find(';') == std::string_view::npos)
        return item(text);
    Input::List list;
    while (!base::trim(text).empty())
        list.push_back(item(take_until(text, ';')));
    return Input(std::move(list));
}

} // namespace treadle::calc
