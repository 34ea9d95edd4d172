// The page's one session: loads it, draws it, does what was asked, stores it.
//
// Views ask; between two frames the asks are done here, so that nothing changes under a view.

#pragma once

#include "archive/archive.h"
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

#include "job_store.h"
#include "machine_work.h"
#include "place_keeper.h"
#include "screen_text.h"
#include "stock_work.h"

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

    // app_asks.cpp
    void do_asks();
    void refresh_machine();
    void take(views::FieldEdit& field);
    void take(views::PlainEdit& plain);
    void take(const views::CopyText& copy);
    void take(views::Wish& wish);
    void take(views::ScreenWishes& wishes);
    /// One step of undo (-1) or redo (1).
    void step(int by);
    void edited();
    void take(views::AtMachine& ask);
    void refused(const std::string& title, const base::Refusal& refusal);

    // app_files.cpp
    void replace(archive::File file);
    void import(const platform::PickedFile& file);
    void use_demo(const char* path);
    [[nodiscard]] std::string sheet() const;
    [[nodiscard]] std::string file_name(const char* ending) const;

    void answered();
    void use_screen(const views::ScreenWishes& wishes);
    /// After any change of the job: readings, announcement.
    void changed();
    void settle_choice();
    void announce_changes(const std::vector<std::shared_ptr<views::PartReading>>& before);
    void loaded(JobStore::Opened opened);
    void saving();
    void stored(const std::optional<std::string>& trouble);
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
    JobStore store_;
    PlaceKeeper place_;
    std::uint64_t revision_ = 0; ///< of the session, that was stored
    int unanswered_ = 1;         ///< questions to the store that nothing can be drawn before
};

[[nodiscard]] edit::Document to_document(archive::File file);

} // namespace treadle::web
