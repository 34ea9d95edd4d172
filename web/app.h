// The page's one session: loads it, draws it, does what was asked, stores it.
//
// Views ask; between two frames the asks are done here, so that nothing changes under a view.

#pragma once

#include "archive/archive.h"
#include "archive/bundle.h"
#include "edit/session.h"

#include "platform/ports.h"
#include "ui/views/desk.h"
#include "ui/widgets/ui.h"

#include <cstdint>
#include <functional>
#include <memory>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "jobs.h"
#include "lesson_work.h"
#include "machine_work.h"
#include "parts_list_work.h"
#include "place_keeper.h"
#include "screen_text.h"
#include "stock_work.h"
#include "versions.h"

namespace treadle::web {

class App {
public:
    /// `use_screen`: makes the page look as wished.
    App(platform::Ports& ports,
        std::shared_ptr<const job::Catalog> catalog,
        archive::File first,
        std::function<void(const views::ScreenWishes&)> use_screen);

    /// Asks the store for what was kept of last time.
    void start();
    void draw(ui::Ui& ui);

    [[nodiscard]] const edit::Session& session() const { return session_; }
    [[nodiscard]] const views::State& state() const { return state_; }

private:
    static constexpr const char* k_notice_key = "notice";
    static constexpr const char* k_hint_key = "hint";
    static constexpr const char* k_screen_key = "screen";
    static constexpr const char* k_paper_key = "paper";

    // app_asks.cpp
    void do_asks();
    void refresh_machine();
    void take(views::FieldEdit& field);
    void take(views::PlainEdit& plain);
    void take(const views::CopyText& copy);
    void take(views::Wish& wish);
    void take(views::ScreenWishes& wishes);
    void take(views::PaperWishes& wishes);
    /// One step of undo (-1) or redo (1).
    void step(int by);
    void edited();
    void take(views::AtMachine& ask);
    void take(views::JobAsk& ask);
    void take(views::VersionAsk ask) { versions_.take(ask); }
    void take(const views::PartsListAsk& ask);
    void take(const views::LessonAsk& ask);
    void refused(const std::string& title, const base::Refusal& refusal);

    // app_jobs.cpp
    void wire_jobs();
    void show(edit::Session::History history);
    /// Shown beside what is kept; its first edit makes a job of it.
    void show_guest(archive::File file);
    /// False, and said, when another page writes this job.
    [[nodiscard]] bool may_edit();
    void stored(const platform::StoreOutcome& outcome);
    void save_records(const std::string& job);

    // app_giving.cpp
    void open_address();
    void copy_link();
    void look_at_shelf();
    void open_shelf(const std::string& file);
    void save_all_jobs();
    void read_bundle(const platform::PickedFile& file);
    void add_incoming();
    void use_shop(const platform::PickedFile& file);

    // app_lessons.cpp
    void wire_lessons();
    void open_lesson_file(const std::string& name, std::string_view bytes, bool on_shelf);
    void open_wished_lesson(const archive::LinkWishes& wishes);
    void show_lessons();
    void leave_lessons();
    void print_results();
    void copy_lesson_link();
    /// Large letters and the most contrast while a lesson is presented.
    void use_presenter_look();

    // app_files.cpp
    void import(const platform::PickedFile& file);
    void use_demo(const char* path);
    /// `on_screen`: its boxes can be ticked.
    [[nodiscard]] std::string sheet(bool on_screen = false) const;
    /// The chosen ones; empty, and said, when none can be printed.
    [[nodiscard]] std::string templates();
    [[nodiscard]] std::string file_name(const char* ending) const;

    void answered();
    void load_machine(std::function<void()> ready);
    void use_screen(const views::ScreenWishes& wishes);
    /// After any change of the job: readings, announcement.
    void changed();
    void settle_choice();
    void announce_changes(const std::vector<std::shared_ptr<views::PartReading>>& before);
    void saving();
    /// Calls `done` once all there is lies in the store; never, when it cannot.
    void flush(const std::function<void()>& done);
    [[nodiscard]] std::string source_title(std::string_view key) const;
    void say(std::string title, std::string text);
    void redraw(const char* why);

    platform::Ports& ports_;
    std::shared_ptr<const job::Catalog> catalog_;
    std::function<void(const views::ScreenWishes&)> use_screen_;
    edit::Session session_;
    views::State state_;
    views::Readings readings_;
    std::vector<views::Ask> asks_;
    std::vector<archive::Source> sources_;
    std::vector<std::string> about_;
    StockWork stock_;
    MachineWork machine_;
    PartsListWork parts_list_;
    LessonWork lessons_;
    bool has_presenter_look_ = false;
    Jobs jobs_;
    std::vector<archive::BundledJob> incoming_; ///< of an opened file, waiting for a yes
    bool has_asked_shelf_ = false;
    PlaceKeeper place_;
    Versions versions_;
    std::uint64_t revision_ = 0; ///< of the session, that was stored
    bool is_started_ = false;
    int unanswered_ = 1; ///< questions to the store that nothing can be drawn before
};

[[nodiscard]] edit::Document to_document(archive::File file);

} // namespace treadle::web
