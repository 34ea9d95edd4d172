// A small page for the tests: a long list of rows, a row of keys, fields. Counts what was pressed.

#pragma once

#include "platform/headless/headless.h"
#include "ui/widgets/controls.h"
#include "ui/widgets/fields.h"
#include "ui/widgets/stage.h"

#include <map>
#include <string>
#include <vector>

namespace treadle::tests {

struct BenchPage {
    platform::headless::HeadlessPorts ports;
    std::map<std::string, int> presses;
    std::string thickness = "1/2 in";
    std::string error;
    int material = 0;
    bool dialog = false;
    int rows = 40;
    ui::Stage stage{ports, [this](ui::Ui& ui) { draw(ui); }};
    platform::headless::Host host{ports, stage};

    static constexpr float k_list_width = 300;
    static constexpr float k_key_top = 20;

    explicit BenchPage(bool coarse = true) { host.open({800, 600, 1, coarse}); }

    void draw(ui::Ui& ui) {
        ui::Rect page = ui.screen();
        {
            ui::ScrollArea list(ui, "parts", page.cut_left(k_list_width), "Parts");
            ui::Rect rest = list.content();
            for (int i = 0; i < rows; ++i) {
                const std::string id = "row" + std::to_string(i);
                ui::ListRow row;
                row.title = id;
                if (ui::list_row(ui, id, rest.cut_top(ui.size().row), row).pressed)
                    ++presses[id];
            }
            list.finish(rest.y);
        }
        page.cut_top(k_key_top);
        ui::Rect keys = page.cut_top(ui.size().target, 20);
        count(ui, "save", keys.column(0, 3, ui.size().gap), true);
        count(ui, "dead", keys.column(1, 3, ui.size().gap), false);
        count(ui, "open", keys.column(2, 3, ui.size().gap), true);
        ui::Field field;
        field.label = "Thickness";
        field.value = thickness;
        field.error = error;
        const ui::Rect fields = page.cut_top(ui::field_height(ui, true));
        if (!error.empty())
            ui::field_error(ui, "thickness", page, error);
        if (auto text = ui::number_field(ui, "thickness", fields.column(0, 2, 12), field))
            thickness = *text;
        const std::vector<std::string> materials{"A36", "304", "5052-H32"};
        field = {};
        field.label = "Material";
        if (auto chosen =
                ui::choice(ui, "material", fields.column(1, 2, 12), field, materials, material))
            material = *chosen;
        if (ui.key("z", ui::Ui::Mod::control))
            ++presses["undo"];
        if (dialog) {
            const ui::Dialog sheet(ui, "sheet", {100, 100, 400, 300}, "Working");
            count(ui, "close", {120, 300, 160, 60}, true);
        }
    }

    void count(ui::Ui& ui, const std::string& id, const ui::Rect& rect, bool enabled) {
        ui::Button key;
        key.label = id;
        key.enabled = enabled;
        key.why_not = enabled ? "" : "Nothing to do";
        if (ui::button(ui, id, rect, key))
            ++presses[id];
    }

    [[nodiscard]] const ui::Node& node(const std::string& id) {
        static const ui::Node none;
        const ui::Node* found = stage.ui().semantics().find(id);
        return found != nullptr ? *found : none;
    }
    [[nodiscard]] float offset() { return node("parts").offset; }
};

} // namespace treadle::tests
