// What is put into a named calculation: a small tree of text, lists and objects.
//
// It knows no file format: the archive reads one from JSON, a test builds one by hand. Numbers stay
// text ("1-1/8 in", "90"), so that a calculation itself decides whether a bare number has a
// meaning.

#pragma once

#include <string>
#include <string_view>
#include <utility>
#include <variant>
#include <vector>

namespace treadle::calc {

class Input {
public:
    using List = std::vector<Input>;
    using Member = std::pair<std::string, Input>;
    /// In the order given; a name twice is refused by the calculation.
    using Object = std::vector<Member>;

    Input() = default; ///< empty text
    Input(std::string text) : content_(std::move(text)) {}
    Input(std::string_view text) : content_(std::string(text)) {}
    Input(const char* text) : content_(std::string(text)) {}
    Input(List list) : content_(std::move(list)) {}
    Input(Object object) : content_(std::move(object)) {}

    /// Null when it is another kind.
    [[nodiscard]] const std::string* text() const { return std::get_if<std::string>(&content_); }
    [[nodiscard]] const List* list() const { return std::get_if<List>(&content_); }
    [[nodiscard]] const Object* object() const { return std::get_if<Object>(&content_); }

private:
    std::variant<std::string, List, Object> content_;
};

} // namespace treadle::calc
