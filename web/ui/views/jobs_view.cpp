#include "ui/views/jobs_view.h"

#include "ui/views/sections.h"
#include "ui/widgets/controls.h"
#include "ui/widgets/text.h"

#include <algorithm>
#include <array>
#include <string>
#include <vector>

namespace treadle::views {

namespace {

using Do = JobAsk::Do;

constexpr ui::TextStyle k_name{ui::TextSize::body, true, ui::Ink::ink, ui::Align::left};
constexpr ui::TextStyle k_quiet{ui::TextSize::small, false, ui::Ink::quiet, ui::Align::left};

struct RowKey {
    const char* label;
    Do what;
};

/// A name over what is known of it, and its keys: beside it, or below where they leave no room.
float row(Desk& desk,
          ui::Rect rest,
          const std::string& id,
          const std::string& name,
          const std::string& detail,
          std::span<const RowKey> keys) {
    ui::Ui& ui = desk.ui;
    const ui::Scope scope(ui, id);
    const float gap = std::max(12.0F, ui.size().gap);
    float wide = 0;
    for (const RowKey& one : keys) {
        ui::Button key;
        key.label = one.label;
        wide += ui::button_width(ui, key) + gap;
    }
    const bool below = rest.w - wide < 260 * ui.size().text_scale;
    const float width = below ? rest.w : rest.w - wide;
    const float words = ui::paragraph_height(ui, width, name, k_name) +
                        ui::paragraph_height(ui, width, detail, k_quiet);
    const float target = ui.size().target;
    const float height = keys.empty() ? words
                         : below      ? words + ui.size().gap + target
                                      : std::max(words, target);
    float y = rest.y + (below ? 0 : (height - words) / 2);
    y += ui::paragraph(ui, {rest.x, y, width, 0}, name, k_name);
    ui::paragraph(ui, {rest.x, y, width, 0}, detail, k_quiet);
    float x = below ? rest.x : rest.right() - wide + gap;
    const float top = below ? rest.y + words + ui.size().gap : rest.y + (height - target) / 2;
    for (const RowKey& one : keys) {
        const std::string spoken = std::string(one.label) + ": " + name;
        ui::Button key;
        key.label = one.label;
        key.name = spoken;
        key.look = ui::KeyLook::quiet;
        const float key_width = ui::button_width(ui, key);
        if (ui::button(ui, one.label, {x, top, key_width, target}, key))
            desk.ask(JobAsk{one.what, id});
        x += key_width + gap;
    }
    const float end = rest.y + height + ui.size().gap;
    ui.rule(rest.x, end, rest.right(), end, ui::Ink::quiet, 1);
    return end + ui.size().gap;
}

float kept(Desk& desk, ui::Rect rest) {
    const JobsBoard& board = desk.jobs;
    rest.y = section_title(desk.ui,
                           rest,
                           "Kept on this device",
                           board.jobs.empty() ? "No job yet: the first change of the one that is "
                                                "shown keeps it here."
                                              : "Every change is kept at once.");
    constexpr std::array k_open = {RowKey{"Copy", Do::duplicate},
                                   RowKey{"To the trash", Do::throw_away}};
    constexpr std::array k_other = {RowKey{"Open", Do::open},
                                    RowKey{"Copy", Do::duplicate},
                                    RowKey{"To the trash", Do::throw_away}};
    constexpr std::array k_damaged = {RowKey{"Save what is stored", Do::save_records},
                                      RowKey{"To the trash", Do::throw_away}};
    for (const JobRow& job : board.jobs) {
        std::string detail = job.is_open ? "Open now. " + job.detail : job.detail;
        if (!job.mark.empty())
            detail += ". " + job.mark;
        rest.y = row(desk,
                     rest,
                     job.id,
                     job.name,
                     detail,
                     !job.mark.empty() ? std::span<const RowKey>(k_damaged)
                     : job.is_open     ? std::span<const RowKey>(k_open)
                                       : std::span<const RowKey>(k_other));
    }
    for (const std::string& sentence : board.place)
        rest.y += ui::paragraph(desk.ui, rest, sentence, k_quiet);
    return rest.y;
}

float files(Desk& desk, ui::Rect rest) {
    const JobsBoard& board = desk.jobs;
    rest.y = section_title(desk.ui,
                           rest,
                           "Files",
                           "A file holds a job with its shop, a shop, several jobs or a list of "
                           "parts. Opening one puts it beside what is here and replaces nothing.");
    if (!board.since_copy.empty())
        rest.y += ui::paragraph(desk.ui, rest, board.since_copy, k_quiet) + desk.ui.size().gap;
    const std::array keys = {
        SectionKey{
            "Open file", "Open file", Wish::import_file, ui::Icon::open, ui::KeyLook::primary},
        SectionKey{"Save file", "Save file of this job", Wish::export_file, ui::Icon::save},
        SectionKey{"Save all jobs", "Save all jobs in one file", JobAsk{Do::save_all, ""}},
        SectionKey{"Save the shop", "Save the shop as a file", JobAsk{Do::save_shop, ""}},
        SectionKey{"Save parts list", "Save the parts list (CSV)", JobAsk{Do::save_parts, ""}},
        SectionKey{"Paste a table", "Paste a table of parts", JobAsk{Do::paste_table, ""}},
        SectionKey{"Copy a link", "Copy a link to this job", JobAsk{Do::copy_link, ""}}};
    return section_keys(desk, rest, keys);
}

float incoming(Desk& desk, ui::Rect rest) {
    const JobsBoard& board = desk.jobs;
    if (board.incoming.empty() && board.not_incoming.empty())
        return rest.y;
    const std::size_t count = board.incoming.size();
    const std::string add = "Add " + std::to_string(count) + (count == 1 ? " job" : " jobs");
    rest.y = section_title(
        desk.ui, rest, "In the file", "Nothing has been taken from it yet. None replaces another.");
    for (const JobRow& job : board.incoming)
        rest.y = row(desk, rest, job.id, job.name, job.detail, {});
    for (const std::string& why : board.not_incoming)
        rest.y += ui::paragraph(desk.ui, rest, why) + desk.ui.size().gap;
    const std::array keys = {
        SectionKey{add.c_str(),
                   add.c_str(),
                   JobAsk{Do::add_incoming, ""},
                   ui::Icon::none,
                   ui::KeyLook::primary,
                   count > 0,
                   "There is no sound job in it."},
        SectionKey{"Leave them", "Leave them", JobAsk{Do::leave_incoming, ""}}};
    return section_keys(desk, rest, keys);
}

float begin(Desk& desk, ui::Rect rest) {
    rest.y = section_title(
        desk.ui, rest, "Begin", "The job that is open stays kept. The demo jobs are invented.");
    const std::array keys = {
        SectionKey{"New empty job", "New empty job", Wish::new_job},
        SectionKey{"Demo job in inches", "Begin with the demo job in inches", Wish::demo_inch},
        SectionKey{
            "Demo job in millimetres", "Begin with the demo job in millimetres", Wish::demo_metric},
        SectionKey{
            "Lessons", "Lessons and demonstrations", LessonAsk{LessonAsk::Do::enter, "", 0}}};
    return section_keys(desk, rest, keys);
}

float shelf(Desk& desk, ui::Rect rest) {
    if (desk.jobs.shelf.empty())
        return rest.y;
    rest.y = section_title(desk.ui,
                           rest,
                           "On the shelf",
                           "Offered by the host of this page, to be looked at. The first change "
                           "makes a job of your own.");
    constexpr std::array k_keys = {RowKey{"Look at", Do::open_shelf}};
    for (const ShelfRow& one : desk.jobs.shelf)
        rest.y = row(desk, rest, one.file, one.title, one.detail, k_keys);
    return rest.y;
}

float points(Desk& desk, ui::Rect rest) {
    const JobsBoard& board = desk.jobs;
    if (board.ownership != Ownership::own)
        return rest.y;
    rest.y = section_title(desk.ui,
                           rest,
                           "States to go back to",
                           "Kept by themselves before a larger change, and whenever you wish. "
                           "Going back can be undone.");
    constexpr std::array k_keys = {RowKey{"Go back to it", Do::open_point},
                                   RowKey{"Remove", Do::remove_point}};
    for (const PointRow& point : board.points)
        rest.y = row(desk,
                     rest,
                     point.key,
                     point.words,
                     point.is_pinned ? "Stays until you remove it" : "",
                     k_keys);
    const std::array keys = {
        SectionKey{"Keep this state", "Keep this state", JobAsk{Do::keep_point, ""}}};
    return section_keys(desk, rest, keys);
}

/// For good only after a second key in another place.
float trash(Desk& desk, ui::Rect rest) {
    const JobsBoard& board = desk.jobs;
    if (board.trash.empty())
        return rest.y;
    rest.y =
        section_title(desk.ui, rest, "Trash", "Each stays for 30 days on which the page is used.");
    constexpr std::array k_keys = {RowKey{"Take back", Do::take_back},
                                   RowKey{"Remove for good", Do::ask_remove}};
    for (const JobRow& job : board.trash) {
        rest.y = row(desk, rest, job.id, job.name, job.detail + ". It " + job.mark, k_keys);
        if (desk.state.to_remove != job.id)
            continue;
        rest.y +=
            ui::paragraph(desk.ui, rest, "Nothing brings it back afterwards.") + desk.ui.size().gap;
        const std::array sure = {
            SectionKey{"Keep it", "Keep it in the trash", JobAsk{Do::ask_remove, ""}},
            SectionKey{"Yes, remove it", "Yes, remove it for good", JobAsk{Do::remove, job.id}}};
        rest.y = section_keys(desk, rest, sure);
    }
    return rest.y;
}

float aside(Desk& desk, ui::Rect rest) {
    const std::size_t count = desk.jobs.aside;
    if (count == 0)
        return rest.y;
    rest.y = section_title(desk.ui, rest, "Put aside", "");
    const std::string words = std::to_string(count) +
                              (count == 1 ? " damaged record is" : " damaged records are") +
                              " kept as found. No job needs them.";
    rest.y += ui::paragraph(desk.ui, rest, words, k_quiet) + desk.ui.size().gap;
    const std::array keys = {SectionKey{
        "Save what was put aside", "Save what was put aside", JobAsk{Do::save_records, ""}}};
    return section_keys(desk, rest, keys);
}

} // namespace

void jobs_view(Desk& desk, const ui::Rect& rect) {
    ui::Ui& ui = desk.ui;
    const ui::Scope scope(ui, "jobs");
    ui::ScrollArea area(ui, "view", rect, "Jobs");
    ui::Rect rest = area.content().inset(ui.size().margin, 0);
    rest.w = std::min(rest.w, 900 * ui.size().text_scale);
    rest.y = incoming(desk, rest);
    rest.y = kept(desk, rest);
    rest.y = files(desk, rest);
    rest.y = begin(desk, rest);
    rest.y = shelf(desk, rest);
    rest.y = points(desk, rest);
    rest.y = trash(desk, rest);
    rest.y = aside(desk, rest);
    area.finish(rest.y);
}

} // namespace treadle::views
