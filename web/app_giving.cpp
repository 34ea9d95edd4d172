// Jobs and shops that come from elsewhere or go there: links, the shelf, files of several: part of
// app.h. Whatever comes is put beside what is kept.

#include "archive/bundle.h"
#include "archive/link.h"
#include "archive/shelf.h"

#include <utility>

#include "app.h"
#include "link_text.h"

namespace treadle::web {

namespace {

std::string parts_words(const job::Job& job) {
    const std::size_t count = job.parts.size();
    return std::to_string(count) + (count == 1 ? " part" : " parts") +
           (job.invented ? ", invented scenario" : "");
}

} // namespace

/// A job in the page's address is shown, not kept: the one that was open stays where it is.
void App::open_address() {
    InAddress address = in_address(ports_.address_fragment());
    if (!address.wishes.lesson.empty()) {
        ports_.forget_fragment();
        return open_wished_lesson(address.wishes);
    }
    if (!address.file && !address.refusal)
        return;
    ports_.forget_fragment();
    if (address.refusal)
        return refused("The link was not opened, and the job is as it was.", *address.refusal);
    show_guest(std::move(*address.file));
    say("This job came with a link.",
        "It is shown beside your own jobs and is not kept. Your first change makes a job of yours "
        "of it.");
}

void App::copy_link() {
    auto link = archive::write_link(session_.job(), session_.shop());
    auto address = link ? archive::link_address(ports_.page_address(), *link) : link;
    if (!address)
        return refused("There is no link to this job.", address.refusal());
    views::CopyText copy{"The link", std::move(address).value()};
    take(copy);
}

// ---- the shelf ----------------------------------------------------------------------------------

void App::look_at_shelf() {
    if (std::exchange(has_asked_shelf_, true))
        return;
    ports_.fetch_beside("shelf.json",
                        static_cast<int>(archive::k_largest_shelf),
                        [this](const platform::LoadedBytes& answer) {
                            if (answer.result != platform::StoreResult::done)
                                return; // a host without a shelf
                            auto shelf = archive::read_shelf(answer.bytes);
                            if (!shelf)
                                return refused("The shelf of this host could not be read.",
                                               shelf.refusal());
                            auto& rows = jobs_.board().shelf;
                            rows.clear();
                            for (const archive::ShelfEntry& entry : shelf->entries)
                                rows.push_back({entry.file,
                                                entry.title,
                                                std::string(archive::shelf_kind_word(entry.kind)) +
                                                    (entry.note.empty() ? "" : ". " + entry.note)});
                            for (const base::Refusal& bad : shelf->refused)
                                refused("An entry of the shelf was left out.", bad);
                            redraw("shelf");
                        });
}

void App::open_shelf(const std::string& file) {
    ports_.fetch_beside(file,
                        static_cast<int>(archive::k_largest_file),
                        [this, file](const platform::LoadedBytes& answer) {
                            if (answer.result != platform::StoreResult::done)
                                return say(file + " was not opened.",
                                           "The host does not give it now, or it is too large.");
                            if (archive::kind_of_file(answer.bytes) == archive::FileKind::shop)
                                return use_shop({file, answer.bytes});
                            if (archive::kind_of_file(answer.bytes) == archive::FileKind::lesson)
                                return open_lesson_file(file, answer.bytes, true);
                            auto read = archive::read_file(answer.bytes);
                            if (!read)
                                return refused(file + " was not opened.", read.refusal());
                            show_guest(std::move(read).value());
                        });
}

// ---- files of several ---------------------------------------------------------------------------

void App::save_all_jobs() {
    jobs_.read_all([this](std::vector<edit::Document> documents, int unread) {
        std::vector<archive::BundledJob> jobs;
        for (edit::Document& document : documents)
            jobs.push_back({archive::JobState::kept, {std::move(document.job), *document.shop}});
        if (jobs.empty()) // nobody's job yet, and all there is
            jobs.push_back({archive::JobState::kept, {session_.job(), session_.shop()}});
        ports_.download("treadle-jobs.json", "application/json", archive::write_bundle(jobs));
        if (unread > 0)
            say(std::to_string(unread) + (unread == 1 ? " job is" : " jobs are") +
                    " not in the file.",
                "What is damaged can be saved as it is stored, under Jobs.");
        redraw("saved all");
    });
}

void App::read_bundle(const platform::PickedFile& file) {
    auto bundle = archive::read_bundle(file.bytes);
    if (!bundle)
        return refused(file.name + " was not opened, and nothing was changed.", bundle.refusal());
    archive::Bundle read = std::move(bundle).value();
    auto& board = jobs_.board();
    board.incoming.clear();
    board.not_incoming.clear();
    incoming_ = std::move(read.jobs);
    for (std::size_t i = 0; i < incoming_.size(); ++i) {
        const archive::BundledJob& one = incoming_[i];
        std::string detail = parts_words(one.file.job);
        if (one.state == archive::JobState::trash)
            detail += ", from the trash and into it";
        board.incoming.push_back(
            {"incoming" + std::to_string(i), one.file.job.name, detail, "", false});
    }
    for (const base::Refusal& refusal : read.refused)
        board.not_incoming.push_back("Left out: " + refusal.field + ": " + refusal.reason);
    state_.place = views::Place::jobs;
    redraw("bundle");
}

void App::add_incoming() {
    for (archive::BundledJob& one : std::exchange(incoming_, {})) {
        const bool in_trash = one.state == archive::JobState::trash;
        jobs_.add(to_document(std::move(one.file)), in_trash, [](bool) {});
    }
    jobs_.board().incoming.clear();
    jobs_.board().not_incoming.clear();
    redraw("added");
}

/// The shop of a file takes the place of the job's own, as an edit; the state before it is kept.
void App::use_shop(const platform::PickedFile& file) {
    auto shop = archive::read_shop_file(file.bytes);
    if (!shop)
        return refused(file.name + " was not opened, and the shop is as it was.", shop.refusal());
    if (!may_edit())
        return;
    jobs_.keep_point("Before a shop file was opened", false);
    views::PlainEdit edit{edit::ReplaceShop{std::move(shop).value()}, "", false};
    take(edit);
    state_.place = views::Place::shop;
    say("This job uses the shop of " + file.name + " now.",
        "Undo brings the one before it back; it is also kept under Jobs as a state to go back to.");
    redraw("shop");
}

} // namespace treadle::web
