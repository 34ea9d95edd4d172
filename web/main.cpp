// Wires the page together; nothing else.

#include "archive/archive.h"
#include "base/contracts.h"

#include "assets/embedded.h"
#include "platform/browser/glue.h"
#include "platform/browser/host.h"
#include "ui/widgets/stage.h"

#include <cstdlib>
#include <memory>

#include "app.h"

namespace {

using namespace treadle;
using ui::Stage;

/// The job is stored after each edit, so a reload loses nothing.
void fault(const char* condition, const char* file, int line) {
    const std::string words = "The job is kept. Reload the page to go on. (" + std::string(file) +
                              ":" + std::to_string(line) + ": " + condition + ")";
    treadle_trouble("This program has a fault.", words.c_str());
    std::abort();
}

void build_is_broken(const base::Refusal& refusal) {
    const std::string words = refusal.field + ": " + refusal.reason;
    treadle_trouble("This build is not whole.", words.c_str());
}

void look(Stage& stage, const views::ScreenWishes& wishes) {
    stage.use_theme(wishes.theme);
    stage.use_density(wishes.density);
    stage.use_text_scale(static_cast<float>(wishes.text_percent) / 100);
    stage.use_pad(wishes.pad);
}

} // namespace

int main() {
    base::set_fault_handler(fault);
    auto catalog = archive::read_catalog();
    if (!catalog) {
        build_is_broken(catalog.refusal());
        return 1;
    }
    auto demo = archive::read_file(assets::embedded("demo/demo-inch.json").value_or(""));
    if (!demo) {
        build_is_broken(demo.refusal());
        return 1;
    }
    // Never destroyed: the browser calls back as long as the page is open.
    platform::Ports& ports = platform::browser::ports();
    auto* stage = new Stage*(nullptr);
    auto* app = new web::App(ports,
                             std::make_shared<const job::Catalog>(std::move(catalog).value()),
                             std::move(demo).value(),
                             [stage](const views::ScreenWishes& wishes) { look(**stage, wishes); });
    *stage = new Stage(ports, [app](ui::Ui& ui) { app->draw(ui); });
    (*stage)->use_fonts({platform::browser::boot_file(0), platform::browser::boot_file(1)});
    platform::browser::run(**stage);
    app->start();
    return 0;
}
