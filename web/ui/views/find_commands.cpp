#include "ui/views/find_commands.h"

#include "ui/views/layouts_form.h"
#include "ui/views/parts_edit.h"

#include <array>

namespace treadle::views {

namespace {

constexpr std::array k_commands = {
    CommandName{Command::add_part, "Add a part", "new piece", "under Parts"},
    CommandName{Command::lay_out,
                "Lay out parts",
                "layout railing guard fence gate frame base plate clip saddle bracket ring hook",
                "under Parts"},
    CommandName{
        Command::name_job, "Name, due date and note of the job", "rename title", "under Sheets"},
    CommandName{Command::undo, "Undo", "back take back", "top bar"},
    CommandName{Command::redo, "Redo", "again forward", "top bar"},
    CommandName{
        Command::change_units, "Change inches and millimetres", "units metric mm in", "top bar"},
    CommandName{Command::print, "Print the worksheet", "paper pdf", "under Sheets"},
    CommandName{Command::preview, "Look at the worksheet", "preview show", "under Sheets"},
    CommandName{Command::save_file, "Save file of this job", "export download keep", "under Jobs"},
    CommandName{Command::open_file, "Open file", "import load read", "under Jobs"},
    CommandName{Command::save_table, "Save as table (CSV)", "export spreadsheet", "under Sheets"},
    CommandName{Command::new_job, "New empty job", "start own clear", "under Jobs"},
    CommandName{Command::demo_inch, "Demo job in inches", "example sample invented", "under Jobs"},
    CommandName{Command::demo_metric,
                "Demo job in millimetres",
                "example sample invented metric",
                "under Jobs"},
    CommandName{Command::lessons,
                "Lessons and demonstrations",
                "learn teach exercise class present training school",
                "under Jobs"},
};

} // namespace

std::span<const CommandName> command_names() { return k_commands; }

void do_command(Desk& desk, Command command) {
    switch (command) {
    case Command::none:
        return;
    case Command::lay_out:
        desk.state.place = Place::parts;
        return open_new_layout(desk);
    case Command::add_part:
        desk.state.place = Place::parts;
        return add_part(desk);
    case Command::name_job:
        desk.state.place = Place::sheets;
        desk.state.focus_next = "sheets/job/name";
        return desk.ui.want_frame();
    case Command::change_units: {
        PrintStyle style = desk.style();
        style.system = style.system == UnitSystem::inch ? UnitSystem::metric : UnitSystem::inch;
        return desk.ask(PlainEdit{edit::SetStyle{style}, "", false});
    }
    case Command::undo:
        return desk.ask(Wish::undo);
    case Command::redo:
        return desk.ask(Wish::redo);
    case Command::print:
        return desk.ask(Wish::print_sheet);
    case Command::preview:
        return desk.ask(Wish::preview_sheet);
    case Command::save_file:
        return desk.ask(Wish::export_file);
    case Command::open_file:
        return desk.ask(Wish::import_file);
    case Command::save_table:
        return desk.ask(Wish::save_csv);
    case Command::new_job:
        return desk.ask(Wish::new_job);
    case Command::demo_inch:
        return desk.ask(Wish::demo_inch);
    case Command::demo_metric:
        return desk.ask(Wish::demo_metric);
    case Command::lessons:
        return desk.ask(LessonAsk{LessonAsk::Do::enter, "", 0});
    }
}

} // namespace treadle::views
