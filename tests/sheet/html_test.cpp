#include "sheet/html.h"
#include "sheet/sample.h"

using namespace treadle;
using sheet::Html;

TEST_CASE("text is escaped, tags are closed in order") {
    Html html;
    html.open("p", "class=\"a\"").text("1 < 2 & \"3\"").element("b", "<i>").close();
    const std::string made = html.take();
    CHECK(made == "<p class=\"a\">1 &lt; 2 &amp; &quot;3&quot;<b>&lt;i&gt;</b>\n</p>\n");
    CHECK(sheet_test::fault_in_markup(made) == "");
}

TEST_CASE("a word longer than any of ours may be parted, but in the title") {
    const auto text = [](std::string_view value) { return Html().text(value).take(); };
    CHECK(text("counter-flange clearances") == "counter-flange clearances");
    const std::string letters = "ABCDEFGHIJKLMNOPQRSTUVWX";
    CHECK(text(letters + " " + letters) == letters + " " + letters);
    CHECK(text(letters + "Y") == "ABCDEFGH<wbr/>IJKLMNOP<wbr/>QRSTUVWX<wbr/>Y");
    CHECK(text("a " + letters + "<- b") == "a ABCDEFGH<wbr/>IJKLMNOP<wbr/>QRSTUVWX<wbr/>&lt;- b");
    CHECK(text("") == "");
    // Between letters that join the browser alone knows where.
    const std::string joined =
        "\u0634\u0628\u0643\u0629\u0634\u0628\u0643\u0629\u0634\u0628\u0643\u0629";
    CHECK(text(joined) == joined);
    CHECK(Html().title(letters + "<U").take() == "<title>" + letters + "&lt;U</title>\n");
}

TEST_CASE("a table has a caption and a head cell with scope for each column") {
    Html html;
    html.open_table("Cuts & holes", {"A", "B"});
    html.open("tr").element("td", "1").element("td", "2").close();
    html.close_table();
    const std::string made = html.take();
    CHECK(made.find("<caption>Cuts &amp; holes</caption>") != std::string::npos);
    CHECK(sheet_test::count_of(made, "<th scope=\"col\">") == 2);
    CHECK(sheet_test::fault_in_markup(made) == "");
}

TEST_CASE("the tests' own look at tags sees what is wrong") {
    CHECK(sheet_test::fault_in_markup("<p><b></p></b>") != "");
    CHECK(sheet_test::fault_in_markup("<p>") != "");
    CHECK(sheet_test::fault_in_markup("<p class=\"a>x</p>") != "");
    CHECK(sheet_test::fault_in_markup("<p><br/></p>") == "");
}
