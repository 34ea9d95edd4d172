// Files that come in and go out: part of app.h.

#include "archive/archive.h"
#include "sheet/worksheet.h"

#include "assets/embedded.h"

#include <utility>

#include "app.h"

namespace treadle::web {

void App::replace(archive::File file) {
    views::PlainEdit edit{edit::ReplaceDocument{to_document(std::move(file))}, "", false};
    state_.faults.clear();
    state_.panel = views::Panel::checks;
    take(edit);
    state_.letter = session_.job().style.system == UnitSystem::inch;
}

void App::import(const platform::PickedFile& picked) {
    auto file = archive::read_file(picked.bytes);
    if (file) {
        replace(std::move(file).value());
        state_.messages.clear();
        state_.place = views::Place::parts;
    } else {
        refused(picked.name + " was not opened, and the job is as it was.", file.refusal());
    }
    redraw("file");
}

void App::use_demo(const char* path) {
    const auto bytes = assets::embedded(path);
    if (!bytes)
        return say("The demo job is missing from this build.", path);
    auto file = archive::read_file(*bytes);
    if (!file)
        return refused("The demo job could not be read.", file.refusal());
    replace(std::move(file).value());
    state_.place = views::Place::parts;
}

std::string App::sheet() const {
    sheet::SheetOptions options;
    options.source_title = [this](std::string_view key) { return source_title(key); };
    options.paper = state_.letter ? sheet::Paper::letter : sheet::Paper::a4;
    return sheet::worksheet_html(
        session_.plan(), session_.job(), session_.shop(), *catalog_, options);
}

std::string App::file_name(const char* ending) const {
    std::string name;
    for (const char c : session_.job().name) {
        const bool plain =
            (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z') || (c >= '0' && c <= '9');
        if (plain)
            name += c;
        else if (!name.empty() && name.back() != '-')
            name += '-';
    }
    while (!name.empty() && name.back() == '-')
        name.pop_back();
    return (name.empty() ? "job" : name) + "." + ending;
}

} // namespace treadle::web
