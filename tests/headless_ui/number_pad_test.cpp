// number_pad.h, pad_keys.h and echo_line.h through a stage: a form of figures and what the keys do.

#include "platform/headless/headless.h"
#include "ui/widgets/controls.h"
#include "ui/widgets/fields.h"
#include "ui/widgets/stage.h"

#include <doctest/doctest.h>

#include <string>
#include <vector>

using namespace treadle;
using namespace treadle::ui;
using Edit = platform::TextEdit;

namespace {

struct FormPage {
    platform::headless::HeadlessPorts ports;
    int rows = 12;
    float field_x = 0;
    float field_width = 300;
    ui::Rect room;
    ui::FigureKind kind = make_kind();
    ui::Stage stage{ports, [this](ui::Ui& ui) { draw(ui); }};
    platform::headless::Host host{ports, stage};

    explicit FormPage(platform::StageSize size) { host.open(size); }

    static ui::FigureKind make_kind() {
        ui::FigureKind kind;
        kind.echo = [](std::string_view typed) {
            ui::Echo echo;
            if (typed == "5-3")
                echo = {"", "Two things.", "", {{"5' 3\"", "feet"}, {"5-3/", "fraction"}}};
            else if (typed == "x")
                echo = {"", "Not read.", "Write 1/2.", {}};
            else
                echo.words = "reads " + std::string(typed);
            return echo;
        };
        kind.step = [](std::string_view typed, int by) -> std::optional<std::string> {
            if (typed != "7")
                return std::nullopt;
            return by > 0 ? "8" : "6";
        };
        kind.step_words = "1/16";
        kind.units = {"in", "mm"};
        kind.feet = true;
        return kind;
    }

    void draw(ui::Ui& ui) {
        room = ui.screen();
        ui::ScrollArea form(ui, "form", room, "Form");
        ui::Rect rest = form.content();
        for (int i = 0; i < rows; ++i) {
            ui::Rect row = rest.cut_top(ui::field_height(ui, true), 12);
            ui::Field field;
            field.label = "Figure";
            field.value = "7";
            field.kind = &kind;
            const ui::Rect cell{field_x, row.y, field_width, row.h};
            (void)ui::number_field(ui, "f" + std::to_string(i), cell, field);
        }
        form.finish(rest.y);
    }

    void enter(const std::string& id, const std::string& text, bool by_touch) {
        stage.typing({id, text, by_touch});
        host.settle();
    }
    [[nodiscard]] const ui::Node* find(const std::string& id) {
        return stage.ui().semantics().find(id);
    }
    /// Middle of a key of the pad. Its node is placed from the corner of the pad.
    void tap(const std::string& id) {
        const ui::Node* key = find("pad/" + id);
        const ui::Node* pad = find("pad");
        REQUIRE(key);
        REQUIRE(pad);
        host.tap(pad->rect.x + key->rect.x + key->rect.w / 2,
                 pad->rect.y + key->rect.y + key->rect.h / 2);
        host.settle();
    }
    /// Where a field stands on the screen.
    [[nodiscard]] ui::Rect seen(const std::string& id) {
        const ui::Node* field = find(id);
        const ui::Node* form = find("form");
        REQUIRE(field);
        REQUIRE(form);
        return field->rect.moved(0, -form->offset);
    }
};

const platform::StageSize k_upright{800, 1280, 1, true};
const platform::StageSize k_lying{1024, 768, 1, true};

} // namespace

TEST_CASE("the pad comes for a finger, and goes with the keyboard or the field") {
    FormPage page(k_upright);
    CHECK_FALSE(page.find("pad"));
    page.enter("f0", "7", true);
    CHECK(page.find("pad"));
    CHECK(page.find("f0")->on); // the real field asks for no keyboard of the system
    page.enter("f0", "71", false);
    CHECK_FALSE(page.find("pad"));
    page.enter("f0", "7", true);
    page.enter("", "", true);
    CHECK_FALSE(page.find("pad"));
    CHECK(page.room.h == 1280);
}

TEST_CASE("the pad is always or never there when that is wished") {
    FormPage page(k_upright);
    page.stage.use_pad(PadWish::always);
    page.enter("f0", "7", false);
    CHECK(page.find("pad"));
    page.stage.use_pad(PadWish::never);
    page.enter("f0", "7", true);
    CHECK_FALSE(page.find("pad"));
    CHECK_FALSE(page.find("f0")->on);
}

TEST_CASE("each key asks for its sign, and the digits are high enough for a glove") {
    FormPage page(k_upright);
    page.enter("f2", "7", true);
    const std::vector<std::pair<const char*, const char*>> keys{{"0", "0"},
                                                                {"1", "1"},
                                                                {"5", "5"},
                                                                {"9", "9"},
                                                                {"point", "."},
                                                                {"feet", "'"},
                                                                {"inches", "\""},
                                                                {"bar", "/"},
                                                                {"dash", "-"},
                                                                {"space", " "},
                                                                {"unit0", "in"},
                                                                {"unit1", "mm"}};
    for (const auto& key : keys) {
        const std::string id = key.first;
        const std::string text = key.second;
        CAPTURE(id);
        page.tap(id);
        REQUIRE_FALSE(page.ports.edits.empty());
        CHECK(page.ports.edits.back().kind == Edit::Kind::insert);
        CHECK(page.ports.edits.back().text == text);
        CHECK(page.ports.edits.back().id == "f2");
    }
    CHECK(page.ports.edits.size() == keys.size()); // one tap is one sign
    for (const char* id : {"0", "3", "9"})
        CHECK(page.find("pad/" + std::string(id))->rect.h >= 104);
    for (const char* id : {"feet", "next", "done", "down"})
        CHECK(page.find("pad/" + std::string(id))->rect.h >= 56);
}

TEST_CASE("steps, back, clear, next and done") {
    FormPage page(k_upright);
    page.enter("f0", "7", true);
    page.tap("up");
    CHECK(page.ports.edits.back().kind == Edit::Kind::replace);
    CHECK(page.ports.edits.back().text == "8");
    page.tap("down");
    CHECK(page.ports.edits.back().text == "6");
    page.tap("erase");
    CHECK(page.ports.edits.back().kind == Edit::Kind::erase);
    page.tap("clear");
    CHECK(page.ports.edits.back().kind == Edit::Kind::replace);
    CHECK(page.ports.edits.back().text.empty());
    page.tap("next");
    CHECK(page.ports.edits.back().kind == Edit::Kind::next);
    page.tap("done");
    CHECK(page.ports.edits.back().kind == Edit::Kind::done);
    const std::size_t before = page.ports.edits.size();
    page.enter("f0", "12", true); // no step from here: the key stands, and says why it is dead
    CHECK_FALSE(page.find("pad/up")->enabled);
    page.tap("up");
    CHECK(page.ports.edits.size() == before);
}

TEST_CASE("keys keep their distance and lie on no other") {
    for (const platform::StageSize& size : {k_upright,
                                            k_lying,
                                            platform::StageSize{768, 1024, 1, true},
                                            platform::StageSize{1280, 800, 1, true},
                                            platform::StageSize{1920, 1080, 1, true}}) {
        CAPTURE(size.width);
        FormPage page(size);
        page.enter("f0", "7", true);
        std::vector<ui::Rect> keys;
        for (const char* id :
             {"down", "up", "unit0", "unit1", "feet",  "inches", "bar",   "dash",
              "7",    "8",  "9",     "erase", "4",     "5",      "6",     "clear",
              "1",    "2",  "3",     "next",  "point", "0",      "space", "done"}) {
            REQUIRE(page.find("pad/" + std::string(id)));
            keys.push_back(page.find("pad/" + std::string(id))->rect);
        }
        const ui::Rect pad = page.find("pad")->rect;
        for (std::size_t i = 0; i < keys.size(); ++i) {
            CHECK(keys[i].h >= 56);
            CHECK(keys[i].x >= 0);
            CHECK(keys[i].right() <= pad.w);
            CHECK(keys[i].bottom() <= pad.h);
            for (std::size_t j = 0; j < i; ++j)
                CHECK(keys[i].inset(-5.9F).common(keys[j].inset(-5.9F)).is_empty());
        }
    }
}

TEST_CASE("the field stays in sight, and the page keeps what the pad does not need") {
    FormPage page(k_upright);
    for (const char* id : {"f0", "f5", "f11"}) {
        CAPTURE(std::string(id));
        page.enter(id, "7", true);
        const ui::Rect field = page.seen(id);
        CHECK(field.y >= 0);
        CHECK(field.bottom() <= page.room.bottom());
        CHECK(page.room.bottom() <= page.find("pad")->rect.y);
    }
}

TEST_CASE("on a lying screen the pad stands where the field is not, and stays there") {
    FormPage page(k_lying);
    page.field_x = 40;
    page.enter("f0", "7", true);
    const ui::Rect right = page.find("pad")->rect;
    CHECK(right.x >= 40 + 300);
    page.field_x = 260; // still free of the pad: nothing moves under the finger
    page.enter("f1", "7", true);
    CHECK(page.find("pad")->rect == right);
    page.field_x = 700;
    page.enter("f2", "7", true);
    CHECK(page.find("pad")->rect.right() <= 700);
    page.field_x = 0;
    page.field_width = 1000;
    page.enter("f3", "7", true);
    CHECK(page.seen("f3").bottom() <=
          page.find("pad")->rect.y + 0.5F); // scrolls go by whole pixels
}

TEST_CASE("the echo is on the pad, and beside the field for a keyboard") {
    FormPage page(k_upright);
    page.enter("f0", "12", true);
    CHECK(page.find("entry/echo")->name == "reads 12");
    page.enter("f0", "13", false);
    CHECK(page.find("entry/echo")->name == "reads 13");
    page.enter("f0", "x", false);
    CHECK(page.find("entry/echo")->name == "Not read. Write 1/2.");
    CHECK(page.find("entry/echo")->role == Role::message);
    page.enter("f0", "7", false); // as it was: nothing to say
    CHECK_FALSE(page.find("entry/echo"));
}

TEST_CASE("what may mean two things is asked with two keys") {
    for (const bool by_touch : {true, false}) {
        CAPTURE(by_touch);
        FormPage page(k_upright);
        page.enter("f0", "5-3", by_touch);
        REQUIRE(page.find("entry/meaning0"));
        REQUIRE(page.find("entry/meaning1"));
        CHECK(page.find("entry/meaning1")->name == "fraction");
        page.stage.activate("entry/meaning0");
        page.host.settle();
        REQUIRE(page.ports.edits.size() == 1);
        CHECK(page.ports.edits[0].kind == Edit::Kind::replace);
        CHECK(page.ports.edits[0].text == "5' 3\"");
    }
}

TEST_CASE("a figure without steps and feet shows no key for them, and the others stay in place") {
    FormPage page(k_upright);
    page.enter("f0", "7", true);
    const ui::Rect seven = page.find("pad/7")->rect;
    page.kind.step = nullptr;
    page.kind.feet = false;
    page.kind.units = {"kN", ""};
    page.enter("f1", "7", true);
    for (const char* id : {"up", "down", "feet", "inches", "unit1"})
        CHECK_FALSE(page.find("pad/" + std::string(id)));
    CHECK(page.find("pad/unit0")->name == "kN");
    CHECK(page.find("pad/7")->rect == seven);
}

TEST_CASE("nothing is drawn while nobody types") {
    FormPage page(k_upright);
    page.enter("f0", "12", true);
    const long before = page.host.frames();
    for (int i = 0; i < 100; ++i)
        page.host.tick();
    CHECK(page.host.frames() == before);
}
