// web/parts_list_work and the view of it: a list is looked at first, and added in one step.

#include <doctest/doctest.h>

#include "headless_ui/app_page.h"

using namespace treadle;
using tests::AppPage;
using ui::Role;

namespace {

const std::string k_list = "Mark,Qty,No,Section,Length,Grade\n"
                           "A,2,1,FB 3 x 1/2,12-1/2,A36\n"
                           "B,3,2,FB 3 x 1/2,2-Jan,A36\n"
                           "C,4,3,FB 3 in x 1/2 in,10 in,A36\n"
                           "\nTotal,9,,,,\n";

struct ListPage {
    platform::headless::HeadlessPorts ports;
    AppPage page{ports};

    explicit ListPage(const std::string& bytes) {
        page.press(Role::button, "Understood");
        page.press(Role::tab, "Sheets");
        page.press(Role::button, "Open file");
        REQUIRE(ports.pick);
        ports.pick({"list.csv", bytes});
        page.host.settle();
    }

    [[nodiscard]] std::size_t parts() const { return page.app.session().job().parts.size(); }
    void choose(std::string_view label, std::string_view option) {
        const ui::Node* node = page.find(Role::choice, label);
        REQUIRE(node != nullptr);
        for (std::size_t i = 0; i < node->options.size(); ++i)
            if (node->options[i].rfind(option, 0) == 0) {
                page.stage.choose(node->id, static_cast<int>(i));
                page.host.settle();
                return;
            }
        FAIL("no such option");
    }
    [[nodiscard]] const ui::Node* words(std::string_view begin) {
        return page.find(Role::words, begin);
    }
};

} // namespace

TEST_CASE("a list is shown with what each row becomes, and nothing is added by itself") {
    ListPage list(k_list);
    const std::size_t before = list.parts();
    REQUIRE(list.page.find(Role::dialog, "Parts list list.csv") != nullptr);
    // Nobody has said a unit: the bare numbers are refused, the row with its units is taken.
    REQUIRE(list.words("Row 2 refused: Section. The unit is missing.") != nullptr);
    REQUIRE(list.words("Row 4 taken: C \u00D7 4") != nullptr);
    REQUIRE(list.page.find(Role::button, "Add 1 part") != nullptr);
    list.choose("Numbers without a unit are", "inches");
    REQUIRE(list.words("Row 2 taken: A \u00D7 2") != nullptr);
    const ui::Node* date = list.words("Row 3 refused: Length");
    REQUIRE(date != nullptr);
    CHECK(date->name.find("1/2 or 2/1") != std::string::npos);
    CHECK(list.words("Row 5 passed over") != nullptr);
    CHECK(list.words("2 rows are taken, 1 row is refused, 3 rows are passed over") != nullptr);
    CHECK(list.parts() == before);
}

TEST_CASE("the parts are added in one step, which undo takes back") {
    ListPage list(k_list);
    const std::size_t before = list.parts();
    list.choose("Numbers without a unit are", "inches");
    list.page.press(Role::button, "Add 2 parts");
    CHECK(list.parts() == before + 2);
    CHECK(list.page.find(Role::dialog, "Parts list") == nullptr);
    CHECK(list.page.app.session().job().parts.back()->mark == "C");
    CHECK(list.page.app.session().job().parts.back()->operations.size() == 1);
    list.page.press(Role::button, "Undo");
    CHECK(list.parts() == before);
}

TEST_CASE("a column gets another meaning, and what is missing is said") {
    ListPage list(k_list);
    list.choose("Qty", "nothing");
    const ui::Node* add = list.page.find(Role::button, "Add 0 parts");
    REQUIRE(add != nullptr);
    CHECK_FALSE(add->enabled);
    CHECK_FALSE(add->note.empty());
    CHECK(list.page.find(Role::message, "No column is said to be the count.") != nullptr);
    list.choose("No", "count");
    CHECK(list.words("Row 4 taken: C \u00D7 3") != nullptr);
}

TEST_CASE("refused rows are saved, and cancelling leaves the job as it was") {
    ListPage list(k_list);
    const std::size_t before = list.parts();
    list.choose("Numbers without a unit are", "inches");
    list.page.press(Role::button, "Save the refused rows");
    REQUIRE(list.ports.downloads.size() == 1);
    CHECK(list.ports.downloads[0].second.find("B,3,2,FB 3 x 1/2,2-Jan,A36,") != std::string::npos);
    CHECK(list.ports.downloads[0].second.find("A,2,") == std::string::npos);
    list.page.press(Role::button, "Cancel");
    CHECK(list.page.find(Role::dialog, "Parts list") == nullptr);
    CHECK(list.parts() == before);
}

TEST_CASE("what is no table is refused in words, and no list opens") {
    ListPage list("Mark,Qty\nA,\"1\n");
    CHECK(list.page.find(Role::dialog, "Parts list") == nullptr);
    CHECK(list.page.find(Role::message, "list.csv was not opened") != nullptr);
}

TEST_CASE("of twenty thousand rows only those about in sight are drawn") {
    std::string bytes = "Mark,Qty,Section,Length,Grade\n";
    for (int i = 1; i < 20'000; ++i)
        bytes += "M" + std::to_string(i) + ",2,RD 20 mm,100 mm,S235JR\n";
    ListPage list(bytes);
    CHECK(list.page.mirror().size() < 600);
}
