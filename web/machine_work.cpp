#include "machine_work.h"

#include "archive/progress_file.h"
#include "sheet/machine_drawing.h"

#include <algorithm>
#include <utility>

namespace treadle::web {

namespace {

using Do = views::AtMachine::Do;

constexpr const char* k_old_key = "at-machine"; ///< of pages that kept one record for all jobs
constexpr const char* k_prefix = "progress/";
constexpr const char* k_guest = "guest"; ///< of a job that is not kept

} // namespace

std::string MachineWork::key() const { return k_prefix + (id_.empty() ? k_guest : id_); }

void MachineWork::load(const std::string& id,
                       const std::string& name,
                       std::function<void()> ready,
                       std::function<void(const base::Refusal&)> trouble) {
    id_ = id;
    progress_ = {};
    board_ = {};
    revision_ = ~std::uint64_t{0};
    is_open_ = false;
    may_store_ = true;
    ports_.load(key(), [this, id, name, ready, trouble](const platform::LoadedBytes& answer) {
        if (id != id_)
            return;
        if (answer.result == platform::StoreResult::done || id.empty()) {
            loaded(answer, name, trouble);
            return ready();
        }
        ports_.load(k_old_key, [this, id, name, ready, trouble](const platform::LoadedBytes& old) {
            if (id != id_)
                return;
            loaded(old, name, trouble);
            ready();
        });
    });
}

void MachineWork::loaded(const platform::LoadedBytes& answer,
                         const std::string& name,
                         const std::function<void(const base::Refusal&)>& trouble) {
    if (answer.result != platform::StoreResult::done)
        return;
    auto jobs = archive::read_progress(answer.bytes);
    if (jobs) {
        // A kept job keeps its record when it is renamed; else the name is all there is to go by.
        for (const job::Progress& one : *jobs)
            if (one.job == name || (!id_.empty() && jobs->size() == 1))
                progress_ = one;
        return;
    }
    may_store_ = false;
    ports_.store("aside/" + key(), answer.bytes, [this](const platform::StoreOutcome& outcome) {
        may_store_ = outcome.result == platform::StoreResult::done;
    });
    trouble(jobs.refusal());
}

bool MachineWork::has_record() const {
    return progress_.held ||
           !std::all_of(progress_.steps.begin(),
                        progress_.steps.end(),
                        [](const job::StepDone& step) { return job::is_sheet_tick(step); });
}

bool MachineWork::is_ticked(std::string_view key) const { return job::is_ticked(progress_, key); }

void MachineWork::tick(const std::string& key, bool on, const edit::Session& session) {
    job::tick(progress_, key, on);
    progress_.job = session.job().name;
    store();
}

void MachineWork::refresh(const edit::Session& session) {
    if (board_.is_made && revision_ == session.revision())
        return;
    revision_ = session.revision();
    const job::Progress& progress = progress_;
    board_.run =
        plan::resume(plan::machine_steps(session.plan(), session.job(), session.shop()), progress);
    board_.is_made = true;
    board_.is_held = progress.held;
    board_.note = progress.note;
    board_.when = progress.when;
    board_.not_here.clear();
    for (const plan::NotHere& entry : board_.run.list.not_here)
        board_.not_here.push_back(
            sheet::not_here_words(entry, session.plan(), session.job().style));
    step_read_ = -1;
    read_step(session);
}

void MachineWork::come_back(const edit::Session& session, views::State& state) {
    board_.came_back = true;
    enter(session, state);
}

void MachineWork::enter(const edit::Session& session, views::State& state) {
    board_.is_made = false; // the record of another job may have been shown
    board_.at_end = false;
    refresh(session);
    is_open_ = true;
    if (state.place != views::Place::at_machine)
        state.place_before = state.place;
    state.place = views::Place::at_machine;
    board_.can_stay_awake = ports_.can_keep_awake();
    ports_.keep_awake(true);
}

void MachineWork::leave(views::State& state) {
    is_open_ = false;
    board_.came_back = board_.at_end = false;
    state.place = state.place_before;
    ports_.keep_awake(false);
}

void MachineWork::take(const views::AtMachine& ask,
                       const edit::Session& session,
                       views::State& state) {
    if (ask.what == Do::enter)
        enter(session, state);
    refresh(session);
    const int before = ask.what == Do::enter ? -1 : board_.run.at;
    act(ask, state);
    job::Progress& progress = progress_;
    progress.job = session.job().name;
    plan::record(board_.run, progress);
    progress.open = is_open_;
    progress.held = board_.is_held;
    progress.note = board_.note;
    if (ask.what != Do::enter && ask.what != Do::leave && ask.what != Do::note)
        progress.when = ports_.day_text() + ", " + ports_.now_text();
    board_.when = progress.when;
    read_step(session);
    store();
    if (is_open_)
        say(before);
}

void MachineWork::act(const views::AtMachine& ask, views::State& state) {
    switch (ask.what) {
    case Do::enter:
        return;
    case Do::leave:
        return leave(state);
    case Do::one_more:
        (void)plan::add_one(board_.run);
        return;
    case Do::take_back:
        (void)plan::take_back(board_.run);
        return;
    case Do::next:
        board_.at_end = !plan::go_next(board_.run);
        return;
    case Do::back:
        if (!std::exchange(board_.at_end, false))
            (void)plan::go_back(board_.run);
        return;
    case Do::hold:
        board_.is_held = true;
        return;
    case Do::go_on:
    case Do::check_from_start:
        if (ask.what == Do::check_from_start)
            plan::check_from_start(board_.run);
        board_.is_held = board_.came_back = false;
        board_.note.clear();
        return;
    case Do::note:
        board_.note = ask.note;
        return;
    }
}

void MachineWork::store() {
    if (!may_store_) {
        board_.not_kept = "Counts are not kept: an older record could not be put aside.";
        return;
    }
    const int number = ++store_number_;
    ports_.store(key(),
                 archive::write_progress({progress_}),
                 [this, number](const platform::StoreOutcome& outcome) {
                     if (number != store_number_)
                         return;
                     const bool done = outcome.result == platform::StoreResult::done;
                     board_.not_kept = done ? std::string()
                                            : "Counts are not kept on this device: write them "
                                              "down before the page is closed. " +
                                                  outcome.detail;
                     ports_.request_frame("at machine", 1);
                 });
}

void MachineWork::read_step(const edit::Session& session) {
    const auto& steps = board_.run.list.steps;
    board_.is_begun = false;
    board_.set_ups.clear();
    for (std::size_t i = 0; i < session.plan().order.size(); ++i) {
        const auto done = plan::set_up_progress(board_.run, static_cast<int>(i));
        board_.is_begun = board_.is_begun || done.complete > 0;
        board_.set_ups.push_back(std::to_string(done.complete) + " of " +
                                 std::to_string(done.steps) + " steps done");
    }
    board_.resume = sheet::resume_words(
        board_.run, session.plan(), board_.is_held ? std::string() : board_.when);
    board_.open = sheet::open_words(board_.run, session.plan());
    if (steps.empty()) {
        board_.words = {};
        board_.has_picture = false;
        return;
    }
    if (step_read_ != board_.run.at) {
        step_read_ = board_.run.at;
        const plan::MachineStep& step = steps[static_cast<std::size_t>(step_read_)];
        board_.words = sheet::machine_words(board_.run,
                                            step_read_,
                                            session.plan(),
                                            session.job(),
                                            session.shop(),
                                            session.catalog());
        board_.has_picture = step.part != plan::k_none;
        if (board_.has_picture)
            board_.picture = views::to_picture(sheet::draw_machine_step(
                *session.plan().parts[static_cast<std::size_t>(step.part)], step));
    }
    read_counts();
}

void MachineWork::read_counts() {
    const int at = board_.run.at;
    const plan::MachineStep& step = board_.run.list.steps[static_cast<std::size_t>(at)];
    const int ticked = board_.run.done[static_cast<std::size_t>(at)].ticked;
    const int tick = plan::next_tick(board_.run, at);
    const bool counts = step.kind == plan::MachineWork::run;
    const int all = counts ? plan::pieces_of(step) : static_cast<int>(step.ticks.size());
    board_.count = std::to_string(counts ? plan::pieces_done(board_.run, at) : ticked);
    board_.of = "of " + std::to_string(all);
    board_.count_of = counts ? board_.words.done : "ticked";
    board_.can_add = !plan::is_complete(board_.run, at);
    board_.can_take_back = plan::is_begun(board_.run, at);
    board_.changed = plan::has_changed(board_.run, at);
    board_.plus_name = tick != plan::k_none
                           ? "Tick: " + board_.words.ticks[static_cast<std::size_t>(tick)]
                           : "One piece more";
    const bool piece = board_.run.done[static_cast<std::size_t>(at)].pieces > 0;
    board_.minus_name =
        piece || ticked == 0
            ? std::string(counts ? "One piece less" : "Take the last tick back")
            : "Take back: " + board_.words.ticks[static_cast<std::size_t>(ticked - 1)];
}

/// A new step in one sentence; a tap on the same one with its count alone.
void MachineWork::say(int step_before) {
    if (board_.is_held || board_.came_back)
        return ports_.announce((board_.is_held ? "On hold. " : "") + board_.resume);
    if (board_.at_end || board_.run.list.steps.empty())
        return ports_.announce(board_.open.empty() ? "Every step is done." : board_.open);
    if (step_before != board_.run.at)
        return ports_.announce(board_.words.spoken);
    ports_.announce(board_.count + " " + board_.of + " " + board_.count_of + ".");
}

} // namespace treadle::web
