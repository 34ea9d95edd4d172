// Files that come in and go out: part of app.h.

#include "archive/archive.h"
#include "archive/bundle.h"
#include "archive/job_code.h"
#include "sheet/template.h"
#include "sheet/worksheet.h"

#include "assets/embedded.h"
#include "ui/views/paper_options.h"

#include <algorithm>
#include <utility>

#include "app.h"
#include "link_text.h"

namespace treadle::web {

void App::import(const platform::PickedFile& picked) {
    if (picked.is_too_large)
        return refused(picked.name + " was not opened, and the job is as it was.",
                       {"file", "The file is larger than 64 MB; no job is.", ""});
    using archive::FileKind;
    const FileKind kind = archive::kind_of_file(picked.bytes);
    if (kind == FileKind::bundle)
        return read_bundle(picked);
    if (kind == FileKind::shop)
        return use_shop(picked);
    if (kind == FileKind::lesson) {
        open_lesson_file(picked.name, picked.bytes, false);
        return redraw("file");
    }
    const bool is_named_so =
        picked.name.size() > 5 && picked.name.compare(picked.name.size() - 5, 5, ".json") == 0;
    if (kind == FileKind::parts_list && !is_named_so) {
        if (const auto refusal = parts_list_.open(picked.name, picked.bytes, session_))
            refused(picked.name + " was not opened, and the job is as it was.", *refusal);
        return redraw("file");
    }
    auto file = archive::read_file(picked.bytes);
    if (file) {
        show_guest(std::move(file).value());
        jobs_.be_new();
        ports_.announce("Opened beside the other jobs: " + session_.job().name + ".");
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
    show_guest(std::move(file).value());
}

std::string App::sheet(bool on_screen) const {
    sheet::SheetOptions options;
    options.source_title = [this](std::string_view key) { return source_title(key); };
    options.paper = views::paper_of(state_.paper);
    options.units = views::units_of(state_.paper);
    options.kinds = views::sheet_kinds(state_.paper);
    options.date = ports_.day_text();
    options.code = archive::job_code(session_.job(), session_.shop());
    options.live_ticks = on_screen;
    options.ticked = [this](std::string_view key) { return machine_.is_ticked(key); };
    put_link(options, ports_.page_address(), session_.job(), session_.shop());
    return sheet::worksheet_html(
        session_.plan(), session_.job(), session_.shop(), *catalog_, options);
}

std::string App::templates() {
    sheet::TemplateOptions options = views::template_options(state_.paper);
    options.date = ports_.day_text();
    options.code = archive::job_code(session_.job(), session_.shop());
    // Of another job, or of parts that are gone, nothing is printed.
    std::vector<std::string> keys;
    for (const views::TemplateReading& one : readings_.templates(session_, state_.paper))
        if (std::find(state_.templates.begin(), state_.templates.end(), one.key) !=
            state_.templates.end())
            keys.push_back(one.key);
    auto html = sheet::templates_html(
        {session_.plan(), session_.job(), sheet::layout_wraps(session_.job(), *catalog_), options},
        keys);
    if (html.ok())
        return std::move(html).value();
    refused("No template was printed.", html.refusal());
    return "";
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
