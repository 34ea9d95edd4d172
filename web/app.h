// The page's one session: loads it, draws it, does what was asked, stores it.
//
// Views ask; between two frames the asks are done here, so that nothing changes under a view.

#pragma once

#include "archive/archive.h"
#include "edit/session.h"

#include "platform/ports.h"
#include "ui/views/desk.h"
#include "ui/widgets/ui.h"

#include <memory>
#include <string>
#include <string_view>
#include <vector>

#include "stock_work.h"

namespace treadle::web {

class App {
public:
    App(platform::Ports& ports, std::shared_ptr<const job::Catalog> catalog, archive::File first);

    /// Asks the store for the job of last time.
    void start();
    void draw(ui::Ui& ui);

    [[nodiscard]] const edit::Session& session() const { return session_; }
    [[nodiscard]] const views::State& state() const { return state_; }

private:
    void do_asks();
    void take(views::FieldEdit& field);
    void take(views::PlainEdit& plain);
    void take(views::Wish& wish);
    void refused(const std::string& title, const base::Refusal& refusal);
    /// After any change of the job: readings, announcement, store.
    void changed();
    void settle_choice();
    void announce_changes(const std::vector<std::shared_ptr<views::PartReading>>& before);

    void loaded(const platform::LoadedBytes& loaded);
    /// Puts what could not be read where nothing overwrites it, then allows storing.
    void keep_unreadable(const std::string& bytes, int number);
    void store();
    void stored(int number, const platform::StoreOutcome& outcome);
    void replace(archive::File file);
    void import(const platform::PickedFile& file);
    void use_demo(const char* path);
    [[nodiscard]] std::string sheet() const;
    [[nodiscard]] std::string source_title(std::string_view key) const;
    [[nodiscard]] std::string file_name(const char* ending) const;
    void say(std::string title, std::string text);
    void redraw(const char* why);

    platform::Ports& ports_;
    std::shared_ptr<const job::Catalog> catalog_;
    edit::Session session_;
    views::State state_;
    views::Readings readings_;
    std::vector<views::Ask> asks_;
    std::vector<archive::Source> sources_;
    std::vector<std::string> about_;
    StockWork stock_;
    int store_number_ = 0;
    bool is_open_ = false;  ///< the store has answered
    bool may_store_ = true; ///< not while something unreadable waits to be kept
};

[[nodiscard]] edit::Document to_document(archive::File file);

} // namespace treadle::web
