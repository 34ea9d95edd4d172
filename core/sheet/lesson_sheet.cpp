#include "sheet/lesson_sheet.h"

#include "base/text.h"
#include "sheet/html.h"

namespace treadle::sheet {

namespace {

void write_head(Html& html, const lesson::Results& results, const SheetOptions& options) {
    html.open("head");
    html.empty("meta", "charset=\"utf-8\"");
    html.empty("meta", "name=\"viewport\" content=\"width=device-width, initial-scale=1\"");
    html.title("Results: " + results.title);
    if (options.style_address.empty())
        html.open("style").markup(worksheet_style()).close();
    else
        html.empty("link",
                   "rel=\"stylesheet\" href=\"" + base::escape_markup(options.style_address) +
                       "\"");
    html.close();
}

void write_fact(Html& html, const char* name, const std::string& value) {
    if (!value.empty())
        html.open("div").element("dt", name).element("dd", value).close();
}

void write_line(Html& html,
                int number,
                const lesson::ResultLine& line,
                const SheetOptions& options) {
    html.open("tr").element("th", std::to_string(number), "scope=\"row\"").open("td");
    html.element("strong", line.title).element("div", line.question);
    for (const std::string& given : line.given)
        html.element("div", given, "class=\"small\"");
    html.close();
    html.element("td", line.typed.empty() ? "not answered" : line.typed);
    html.element("td", line.judged).open("td").element("div", line.answer);
    if (!line.answer.empty() && !line.source.empty()) {
        const std::string title =
            options.source_title ? options.source_title(line.source) : std::string();
        html.element("div", title.empty() ? line.source : title, "class=\"small\"");
    }
    html.close().close();
}

} // namespace

std::string lesson_html(const lesson::Results& results, const SheetOptions& options) {
    Html html;
    html.markup("<!DOCTYPE html>\n").open("html", "lang=\"en\"");
    write_head(html, results, options);
    html.open("body", options.paper == Paper::letter ? "class=\"letter\"" : "class=\"a4\"");
    html.element("div", results.title + " · results", "class=\"running\" aria-hidden=\"true\"");
    html.open("div", "class=\"sheet\"").open("header");
    html.element("h1", results.title);
    html.open("dl", "class=\"facts\"");
    write_fact(html, "Name", "______________________________");
    write_fact(html, "Numbers", "set " + std::to_string(results.seed));
    write_fact(html, "Questions", results.summary);
    write_fact(html, "Written by", results.author);
    html.close();
    html.element("p", safety_notice(), "class=\"safety\"").close();
    html.open("main");
    html.open_table("Answers", {"", "Question", "Answered", "Judged", "Treadle works out"});
    int number = 0;
    for (const lesson::ResultLine& line : results.lines)
        write_line(html, ++number, line, options);
    html.close_table().close().close().close().close();
    return html.take();
}

} // namespace treadle::sheet
