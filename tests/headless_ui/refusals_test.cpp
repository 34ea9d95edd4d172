// ui/views/refusal_words: every field of every form is given nonsense. What it then says has to be
// why, what is allowed, and how to mend it; and the job stays as it was.

#include "archive/archive.h"

#include "assets/embedded.h"
#include "platform/headless/headless.h"
#include "ui/views/refusal_words.h"
#include "ui/widgets/stage.h"

#include <doctest/doctest.h>

#include <array>
#include <set>
#include <string>
#include <vector>

#include "app_page.h"

using namespace treadle;

namespace {

constexpr std::array k_nonsense = {
    "-1", "0", "999999", "1e9", "abc", "-5 deg", "400 deg", "1/0", "5-3", "7", "\x01", "nan"};

struct Page {
    platform::headless::HeadlessPorts ports;
    tests::AppPage page{ports};
    web::App& app = page.app;
    ui::Stage& stage = page.stage;
    platform::headless::Host& host = page.host;
    std::set<std::string> faulty; ///< what was said and lacks something
    int refused = 0;
    int fields = 0;

    Page() {
        page.press(ui::Role::button, "Understood");
        // High, so that no row of a form is left out because it is out of sight.
        stage.resize({1280, 2400, 1, false});
        host.settle();
    }
    void press(const std::string& id) {
        stage.activate(id);
        host.settle();
    }
    [[nodiscard]] std::vector<std::string> ids(const std::string& start, ui::Role role) {
        std::vector<std::string> list;
        const ui::Semantics& tree = page.mirror();
        for (std::size_t i = 0; i < tree.size(); ++i)
            if (tree.at(i).role == role && tree.at(i).id.rfind(start, 0) == 0)
                list.push_back(tree.at(i).id);
        return list;
    }
    [[nodiscard]] const ui::Node* node(const std::string& id) {
        return stage.ui().semantics().find(id);
    }

    void type(const std::string& id, const char* text) {
        const ui::Node* field = node(id);
        if (field == nullptr)
            return;
        const std::string before = field->value;
        const auto revision = app.session().revision();
        stage.commit_text(id, text);
        host.settle();
        field = node(id);
        const std::string error = field ? field->error : "";
        if (error.empty()) {
            if (app.session().revision() != revision) {
                stage.key({"z", true, false, false});
                host.settle();
            }
            return;
        }
        ++refused;
        CHECK(app.session().revision() == revision);
        look_at(error, id);
        stage.commit_text(id, before);
        host.settle();
    }

    void look_at(const std::string& error, const std::string& id) {
        const std::size_t mend = error.find("Type it again: ");
        const std::string why = error.substr(0, mend);
        std::size_t sentences = 0;
        for (std::size_t at = why.find(". "); at != std::string::npos; at = why.find(". ", at + 1))
            ++sentences;
        const bool upper = why[0] >= 'A' && why[0] <= 'Z';
        const bool path =
            error.find('[') != std::string::npos || error.find('_') != std::string::npos;
        if (mend == std::string::npos || !upper || sentences < 2 || path)
            faulty.insert(error + "   at " + id);
    }

    void type_all(const std::string& start) {
        for (const ui::Role role : {ui::Role::number, ui::Role::text})
            for (const std::string& id : ids(start, role)) {
                ++fields;
                for (const char* text : k_nonsense)
                    type(id, text);
            }
    }
};

void check(const Page& page) {
    for (const std::string& said : page.faulty)
        FAIL_CHECK(said);
}

} // namespace

TEST_CASE(
    "every refusal in the forms of parts and operations says why, what is allowed, how to mend") {
    Page page;
    std::set<std::string> seen; // shapes and kinds of operations: one of each is enough
    for (const job::PartRef& part : page.app.session().job().parts) {
        page.press(part->id);
        if (seen.insert("shape " + std::to_string(static_cast<int>(part->section.shape))).second) {
            page.press("part/change-part");
            page.type_all("panel/");
            page.press("panel/close");
        }
        for (std::size_t i = 0; i < part->operations.size(); ++i) {
            std::string kind = "operation " + std::to_string(part->operations[i].index());
            if (const auto* punch = std::get_if<job::Punch>(&part->operations[i]))
                kind += " " + std::to_string(static_cast<int>(punch->hole.shape));
            if (const auto* notch = std::get_if<job::Notch>(&part->operations[i]))
                kind += " " + std::to_string(static_cast<int>(notch->shape));
            if (!seen.insert(kind).second)
                continue;
            if (page.app.state().operation != static_cast<int>(i))
                page.press("part/operations/operation-" + std::to_string(i));
            page.press("part/operations/checks/change");
            page.type_all("panel/");
            page.press("panel/close");
        }
    }
    CHECK(page.fields > 60);
    CHECK(page.refused > 200);
    check(page);
}

TEST_CASE("every refusal in the forms of the shop says why, what is allowed, how to mend") {
    Page page;
    page.press("places/Shop");
    const std::vector<std::string> entries = page.ids("shop/page-", ui::Role::row);
    CHECK(entries.size() > 10);
    for (const std::string& entry : entries) {
        page.press(entry);
        page.type_all("shop/");
    }
    CHECK(page.fields > 100);
    CHECK(page.refused > 300);
    check(page);
}

TEST_CASE("every refusal in the form of the job says why, what is allowed, how to mend") {
    Page page;
    page.press("places/Sheets");
    page.type_all("sheets/");
    CHECK(page.fields >= 3);
    CHECK(page.refused >= 3);
    check(page);
}

TEST_CASE("a range follows its reason, a sentence stands by itself") {
    using views::mend_words;
    using views::refusal_words;
    CHECK(refusal_words({"count", "This is out of range.", "1 to 100"}) ==
          "This is out of range. Allowed: 1 to 100.");
    CHECK(refusal_words({"count", "Too many.", "Take some away."}) == "Too many. Take some away.");
    CHECK(refusal_words({"count", "Too many.", ""}) == "Too many.");
    CHECK(views::field_words("operations[2].at.row_pitch") == "Row pitch");
    CHECK(views::field_words("operations[2].hole.size2") == "Second size");
    CHECK(views::field_words("legs[1]") == "Legs");
    CHECK(mend_words("1/2 in") == "Type it again: until then it is 1/2 in.");
    CHECK(mend_words("") == "Type it again: until then nothing is entered.");
}
