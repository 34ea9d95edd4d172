// Sheets and templates as the page asks for them: paper_text, paper_options, template_section,
// sheets_view, and the boxes of a shown sheet.

#include "ui/views/paper_options.h"

#include <doctest/doctest.h>

#include "headless_ui/app_page.h"
#include "paper_text.h"

using namespace treadle;
using platform::headless::HeadlessPorts;
using tests::AppPage;

namespace {

void start(AppPage& page) {
    page.press(ui::Role::button, "Understood");
    page.press(ui::Role::tab, "Sheets");
}
bool has(const std::string& text, const char* what) { return text.find(what) != std::string::npos; }

bool is_on(AppPage& page, const char* name) {
    const ui::Node* node = page.find(ui::Role::toggle, name);
    REQUIRE_MESSAGE(node != nullptr, name);
    return node->on;
}

} // namespace

TEST_CASE("wishes for paper come back as they were kept, nonsense is left out") {
    views::PaperWishes wishes;
    wishes.letter = false;
    wishes.chosen_paper = true;
    wishes.units = 3;
    wishes.kinds = 0b100101U;
    wishes.printers = {{"Office, upstairs", 1.008065, 0.995}, {"Shop", 1.0, 1.0}};
    wishes.printer = 1;
    const auto read = web::read_paper_text(web::paper_text(wishes));
    REQUIRE(read);
    CHECK_FALSE(read->letter);
    CHECK(read->units == 3);
    CHECK(read->kinds == wishes.kinds);
    REQUIRE(read->printers.size() == 2);
    CHECK(read->printers[0].name == "Office, upstairs");
    CHECK(read->printers[0].x == doctest::Approx(1.008065));
    CHECK(read->printer == 1);
    const auto odd = web::read_paper_text("treadle-paper 1\npaper vellum\nunits cubits\n"
                                          "printer 3 1 Mad\nprinter x\nin-use 7\nwithout songs\n");
    REQUIRE(odd);
    CHECK(odd->printers.empty());
    CHECK(odd->printer == -1);
    CHECK(odd->units == 0);
    CHECK_FALSE(web::read_paper_text("something else"));
}

TEST_CASE("what is wished for is what the sheets take") {
    views::PaperWishes wishes;
    wishes.kinds = 1U << static_cast<unsigned>(views::SheetKind::cutting);
    const sheet::SheetKinds kinds = views::sheet_kinds(wishes);
    CHECK(kinds.cutting);
    CHECK_FALSE((kinds.summary || kinds.tools || kinds.set_ups || kinds.parts || kinds.workings));
    wishes.printers = {{"Shop", 1.01, 0.99}};
    CHECK(views::template_options(wishes).factors.x == 1.0);
    wishes.printer = 0;
    CHECK(views::template_options(wishes).factors.x == 1.01);
}

TEST_CASE("only the sheets that are ticked are printed, and the next page knows it") {
    HeadlessPorts ports;
    AppPage page(ports);
    start(page);
    CHECK(is_on(page, "Cutting list"));
    page.press(ui::Role::toggle, "Cutting list");
    page.press(ui::Role::toggle, "Working sheets");
    page.press(ui::Role::button, "Look at the worksheet");
    CHECK(has(ports.preview, "<h2>Set-ups in order"));
    CHECK_FALSE(has(ports.preview, "<h2>Bars to cut"));
    CHECK_FALSE(has(ports.preview, "<h2>Working sheets"));
    AppPage next(ports);
    next.press(ui::Role::tab, "Sheets");
    CHECK_FALSE(is_on(next, "Cutting list"));
}

TEST_CASE("a box ticked on the screen is kept with the job, and counting leaves it alone") {
    HeadlessPorts ports;
    AppPage page(ports);
    start(page);
    page.press(ui::Role::button, "Look at the worksheet");
    const std::string box = "data-tick=\"step/p1/0\"";
    REQUIRE(has(ports.preview, box.c_str()));
    REQUIRE(ports.tick);
    ports.tick("step/p1/0", true);
    const std::string ticked = box + " aria-label=\"HB1, operation 1\" checked>";
    page.press(ui::Role::button, "Look at the worksheet");
    CHECK(has(ports.preview, ticked.c_str()));
    page.press(ui::Role::tab, "Order");
    page.press(ui::Role::button, "To the machine");
    page.press(ui::Role::button, "Leave");
    AppPage next(ports);
    next.press(ui::Role::tab, "Sheets");
    next.press(ui::Role::button, "Look at the worksheet");
    CHECK(has(ports.preview, ticked.c_str()));
    ports.tick("step/p1/0", false);
    next.press(ui::Role::button, "Look at the worksheet");
    CHECK_FALSE(has(ports.preview, ticked.c_str()));
}

TEST_CASE("templates are chosen, counted and shown at full size") {
    HeadlessPorts ports;
    AppPage page(ports);
    start(page);
    CHECK_FALSE(is_on(page, "HB1: holes (2 pages)"));
    page.press(ui::Role::toggle, "HB1: holes (2 pages)");
    page.press(ui::Role::button, "Look at the templates");
    CHECK(has(ports.preview, "class=\"bar level-mm\""));
    CHECK(has(ports.preview, "HB1: holes, sheet 1 of 2"));
    page.press(ui::Role::button, "Choose no template");
    CHECK_FALSE(is_on(page, "HB1: holes (2 pages)"));
    page.press(ui::Role::button, "Choose all templates");
    page.press(ui::Role::button, "Look at the templates");
    CHECK(has(ports.preview, "HR1, 1: wrap for the saddle"));
}

TEST_CASE("a measured printer is kept under its name, one that is far off is refused") {
    HeadlessPorts ports;
    AppPage page(ports);
    start(page);
    page.type("Name of the printer", "Office");
    page.type("100 mm bar across", "76 mm");
    page.press(ui::Role::button, "Keep what was measured");
    CHECK(page.app.state().paper.printers.empty());
    CHECK_FALSE(page.app.state().faults.empty());
    page.type("100 mm bar across", "99 mm");
    page.press(ui::Role::button, "Keep what was measured");
    REQUIRE(page.app.state().paper.printers.size() == 1);
    CHECK(page.app.state().paper.printers[0].x == doctest::Approx(100.0 / 99.0));
    page.press(ui::Role::toggle, "HB1: holes (2 pages)");
    page.press(ui::Role::button, "Look at the templates");
    CHECK(has(ports.preview, "Stretched for Office<"));
    CHECK(has(ports.preview, "1.0101 across, 1 along"));
    AppPage next(ports);
    CHECK(next.app.state().paper.printer == 0);
}
