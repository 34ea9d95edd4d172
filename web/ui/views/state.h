// What the screen remembers between frames, and what it asks for.
//
// Nothing here is part of the job: losing it loses no work. A view changes only this; everything
// that changes the job goes out as an ask and is done between two frames.

#pragma once

#include "edit/session.h"

#include "ui/views/layouts_board.h"
#include "ui/views/paper_wishes.h"
#include "ui/views/lesson_board.h"
#include "ui/views/parts_list_board.h"
#include "ui/views/placing_reading.h"
#include "ui/views/screen_wishes.h"
#include "ui/views/version_board.h"

#include <optional>
#include <string>
#include <variant>
#include <vector>

namespace treadle::views {

enum class Place { jobs, parts, order, bars, limits, shop, sheets, help, at_machine, lessons };
/// What the place beside a part's operations shows.
enum class Panel { checks, working, part_form, operation_form };

/// Which drawing of a part is shown.
enum class Shape { flat, finished, bends };

/// A typed text that was not taken, and why; it stays until it is mended or undone.
struct Fault {
    std::string field;
    std::string typed;
    std::string reason;
};

/// What the search does by itself, without a place to go to.
enum class Command {
    none,
    add_part,
    lay_out,
    name_job,
    undo,
    redo,
    change_units,
    print,
    preview,
    save_file,
    open_file,
    save_table,
    new_job,
    demo_inch,
    demo_metric,
    lessons
};

enum class Saved { nothing_yet, saving, saved, failed };

/// A message that stays until it is dismissed.
struct Message {
    std::string title;
    std::string text;
};

struct State {
    Place place = Place::parts;
    Place place_before = Place::order; ///< where one comes from to the machine
    bool notice_open = false;          ///< the safety notice is over everything
    std::string part;                  ///< id of the chosen part
    int operation = -1;                ///< chosen operation of it, plan::k_none for none
    std::string part_to_show;          ///< to be brought into sight in the list, once
    int operation_to_show = -1;
    bool placing = false; ///< the chosen operation has a handle
    std::optional<Trial> trial;
    std::optional<edit::FlatPlace> grabbed; ///< where it was when the handle was taken
    Shape shape = Shape::flat;
    int bend_step = 0; ///< shown of the order of bends
    Panel panel = Panel::checks;
    bool detail_open = false;     ///< narrow screens: the part is shown instead of the list
    bool adding = false;          ///< the choice of a new operation is open
    bool limits_machines = false; ///< which machine, instead of what one station can do
    int limits_place = 0;         ///< chosen station or attachment there
    std::string limits_grade;     ///< chosen grade there
    std::string open_bar;         ///< whose cuts are listed, under Bars
    int shop_page = 0;            ///< entry of the shop's list
    int tool = 0;                 ///< chosen tool of the crib page that is open
    bool own_grade_open = false;
    bool hint_open = false; ///< the line of the first start
    bool find_open = false; ///< the search lies over the page
    std::string find_typed;
    int help_section = 0;        ///< of k_help_sections
    std::string help_topic;      ///< to be brought into sight under Help, once
    std::string working_to_show; ///< beginning of the title of a working, the same way
    std::string focus_next;      ///< full id of what gets the keyboard in the next frame
    std::vector<Fault> faults;
    std::vector<Message> messages;
    Saved saved = Saved::nothing_yet;
    std::string saved_note; ///< why it was not saved
    std::string to_remove;  ///< id of a job of the trash that is to go for good, once confirmed
    PaperWishes paper;
    std::vector<std::string> templates; ///< keys of those that are chosen to be printed
    std::string printer_name;           ///< being typed, with what its bars measured
    Length bar_across = millimetres(100.0);
    Length bar_along = millimetres(100.0);
    ScreenWishes screen;
    LayoutBoard layouts;
};

/// An edit that one field made: a refusal is shown there, with the typed text kept.
struct FieldEdit {
    std::string field;
    std::string typed;
    edit::Edit edit;
};
struct PlainEdit {
    edit::Edit edit;
    std::string select_part;  ///< chosen afterwards; may be empty
    bool select_last = false; ///< the part that was added last
};
enum class Wish {
    undo,
    redo,
    accept_notice,
    import_file,
    export_file,
    save_csv,
    save_html,
    save_json,
    preview_sheet,
    print_sheet,
    preview_templates,
    print_templates,
    demo_inch,
    demo_metric,
    new_job,
    hide_hint,
    show_hint
};
/// Text for the clipboard; `what` it is, to be said when it is there: "The working".
struct CopyText {
    std::string what;
    std::string text;
};
/// What was tapped at the machine. Changes no job, only how much of it is done.
struct AtMachine {
    enum class Do {
        enter,
        leave,
        one_more,
        take_back,
        next,
        back,
        hold,
        go_on,
        check_from_start,
        note
    };
    Do what = Do::enter;
    std::string note;
};
/// What is done to what is kept; `id` names the job, the state or the file of the shelf.
struct JobAsk {
    enum class Do {
        none,
        open,
        duplicate,
        throw_away,
        take_back,
        ask_remove,
        remove,
        edit_here,
        keep_point,
        open_point,
        remove_point,
        open_shelf,
        add_incoming,
        leave_incoming,
        save_all,
        save_shop,
        save_parts,
        save_records,
        paste_table,
        copy_link
    };
    Do what = Do::none;
    std::string id;
};
using Ask = std::variant<FieldEdit,
                         PlainEdit,
                         CopyText,
                         Wish,
                         ScreenWishes,
                         PaperWishes,
                         AtMachine,
                         JobAsk,
                         VersionAsk,
                         PartsListAsk,
                         LessonAsk>;

[[nodiscard]] const Fault* find_fault(const State& state, const std::string& field);
void clear_fault(State& state, const std::string& field);
void set_fault(State& state, Fault fault);

} // namespace treadle::views
