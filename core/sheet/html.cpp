#include "sheet/html.h"

#include "base/contracts.h"
#include "base/text.h"
#include "sheet/text_room.h"

#include <algorithm>

namespace treadle::sheet {

namespace {

constexpr std::size_t k_longest_word = 24; // "1910.147(a)(2)(ii)(A)," stays whole
constexpr std::size_t k_longest_mark = 12;
constexpr std::size_t k_piece = 8;

std::string parted(std::string_view value, std::size_t longest) {
    std::string out;
    for (std::size_t at = 0; at < value.size();) {
        const std::size_t end = std::min(value.find_first_of(" -", at), value.size());
        const bool is_long = letters_of(value.substr(at, end - at)) > longest;
        std::string_view word = value.substr(at, end + 1 - at);
        at += word.size();
        while (const std::size_t piece = is_long ? parting(word, k_piece) : 0) {
            out += base::escape_markup(word.substr(0, piece)) + "<wbr/>";
            word.remove_prefix(piece);
        }
        out += base::escape_markup(word);
    }
    return out;
}

} // namespace

Html& Html::empty(const char* tag, std::string_view attributes) {
    out_ += '<';
    out_ += tag;
    if (!attributes.empty()) {
        out_ += ' ';
        out_ += attributes;
    }
    out_ += '>';
    return *this;
}

Html& Html::open(const char* tag, std::string_view attributes) {
    empty(tag, attributes);
    open_.push_back(tag);
    return *this;
}

Html& Html::close() {
    TREADLE_EXPECT(!open_.empty());
    out_ += "</";
    out_ += open_.back();
    out_ += ">\n";
    open_.pop_back();
    return *this;
}

Html& Html::text(std::string_view value) {
    out_ += parted(value, k_longest_word);
    return *this;
}

Html& Html::row_mark(std::string_view mark) {
    return open("th", "scope=\"row\"").markup(parted(mark, k_longest_mark)).close();
}

Html& Html::title(std::string_view value) {
    return open("title").markup(base::escape_markup(value)).close();
}

Html& Html::element(const char* tag, std::string_view value, std::string_view attributes) {
    return open(tag, attributes).text(value).close();
}

Html& Html::markup(std::string_view value) {
    out_ += value;
    return *this;
}

Html& Html::open_table(std::string_view caption,
                       const std::vector<const char*>& heads,
                       std::string_view attributes) {
    open("table", attributes).element("caption", caption);
    open("thead").open("tr");
    for (const char* head : heads)
        element("th", head, "scope=\"col\"");
    close().close();
    return open("tbody");
}

Html& Html::close_table() { return close().close(); }

std::string Html::take() {
    TREADLE_EXPECT(open_.empty());
    return std::move(out_);
}

} // namespace treadle::sheet
