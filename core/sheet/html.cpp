#include "sheet/html.h"

#include "base/contracts.h"
#include "base/text.h"

namespace treadle::sheet {

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
    out_ += base::escape_markup(value);
    return *this;
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
