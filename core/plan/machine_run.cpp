#include "plan/machine_run.h"

#include <algorithm>
#include <map>
#include <string_view>
#include <utility>

namespace treadle::plan {

namespace {

const MachineStep& step_at(const MachineRun& run, int step) {
    return run.list.steps[static_cast<std::size_t>(step)];
}
MachineRun::Done& done_at(MachineRun& run, int step) {
    return run.done[static_cast<std::size_t>(step)];
}
const MachineRun::Done& done_at(const MachineRun& run, int step) {
    return run.done[static_cast<std::size_t>(step)];
}
int ticks_of(const MachineStep& step) { return static_cast<int>(step.ticks.size()); }
/// The first piece is ticked, not counted.
int counted(const MachineStep& step) { return step.kind == MachineWork::run ? step.pieces : 0; }
int size_of(const MachineRun& run) { return static_cast<int>(run.list.steps.size()); }

int first_open(const MachineRun& run) {
    for (int i = 0; i < size_of(run); ++i)
        if (!is_complete(run, i))
            return i;
    return std::max(0, size_of(run) - 1);
}

} // namespace

MachineRun resume(MachineSteps list, const job::Progress& progress) {
    MachineRun run;
    run.list = std::move(list);
    run.done.resize(run.list.steps.size());
    std::map<std::string_view, const job::StepDone*> known;
    for (const job::StepDone& step : progress.steps)
        known.emplace(step.place, &step);
    int at = k_none;
    for (int i = 0; i < size_of(run); ++i) {
        const MachineStep& step = step_at(run, i);
        if (!progress.at.empty() && step.key.place == progress.at)
            at = i;
        const auto found = known.find(step.key.place);
        if (found == known.end())
            continue;
        if (found->second->content != step.key.content) {
            done_at(run, i).content_before = found->second->content;
            continue;
        }
        done_at(run, i).ticked = std::min(found->second->ticked, ticks_of(step));
        done_at(run, i).pieces = std::min(found->second->pieces, counted(step));
    }
    run.at = at != k_none ? at : first_open(run);
    return run;
}

void record(const MachineRun& run, job::Progress& progress) {
    progress.steps.erase(
        std::remove_if(progress.steps.begin(),
                       progress.steps.end(),
                       [](const job::StepDone& step) { return !job::is_sheet_tick(step); }),
        progress.steps.end());
    for (int i = 0; i < size_of(run); ++i) {
        const MachineRun::Done& done = done_at(run, i);
        const StepKey& key = step_at(run, i).key;
        if (has_changed(run, i))
            progress.steps.push_back({key.place, done.content_before, 0, 0});
        else if (is_begun(run, i))
            progress.steps.push_back({key.place, key.content, done.ticked, done.pieces});
    }
    progress.at = run.list.steps.empty() ? std::string() : step_at(run, run.at).key.place;
}

bool is_complete(const MachineRun& run, int step) {
    return done_at(run, step).ticked >= ticks_of(step_at(run, step)) &&
           done_at(run, step).pieces >= counted(step_at(run, step));
}

bool is_begun(const MachineRun& run, int step) {
    return done_at(run, step).ticked > 0 || done_at(run, step).pieces > 0;
}

bool has_changed(const MachineRun& run, int step) {
    return !done_at(run, step).content_before.empty();
}

int pieces_done(const MachineRun& run, int step) {
    const MachineStep& of = step_at(run, step);
    if (of.kind != MachineWork::first_piece) // who went past the first piece has not made it
        return done_at(run, step).pieces + (of.made_before > 0 ? pieces_done(run, step - 1) : 0);
    const auto made = std::find_if(of.ticks.begin(), of.ticks.end(), [](const Tick& tick) {
        return tick.kind == Tick::Kind::first_made;
    });
    return done_at(run, step).ticked > static_cast<int>(made - of.ticks.begin()) ? 1 : 0;
}

int pieces_of(const MachineStep& step) { return step.made_before + step.pieces; }

int next_tick(const MachineRun& run, int step) {
    const int ticked = done_at(run, step).ticked;
    return ticked < ticks_of(step_at(run, step)) ? ticked : k_none;
}

bool add_one(MachineRun& run) {
    if (run.list.steps.empty() || is_complete(run, run.at))
        return false;
    MachineRun::Done& done = done_at(run, run.at);
    done.content_before.clear();
    if (next_tick(run, run.at) != k_none)
        ++done.ticked;
    else
        ++done.pieces;
    return true;
}

bool take_back(MachineRun& run) {
    if (run.list.steps.empty() || !is_begun(run, run.at))
        return false;
    MachineRun::Done& done = done_at(run, run.at);
    if (done.pieces > 0)
        --done.pieces;
    else
        --done.ticked;
    return true;
}

bool go_next(MachineRun& run) {
    if (run.at + 1 >= size_of(run))
        return false;
    ++run.at;
    return true;
}

bool go_back(MachineRun& run) {
    if (run.at <= 0 || run.list.steps.empty())
        return false;
    --run.at;
    return true;
}

void check_from_start(MachineRun& run) {
    if (run.list.steps.empty())
        return;
    done_at(run, run.at).ticked = 0;
    const int set_up = step_at(run, run.at).set_up;
    for (int i = run.at; i >= 0 && step_at(run, i).set_up == set_up; --i)
        if (step_at(run, i).kind == MachineWork::set_up) {
            done_at(run, i).ticked = 0;
            run.at = i;
            return;
        }
}

SetUpProgress set_up_progress(const MachineRun& run, int set_up) {
    SetUpProgress progress;
    for (int i = 0; i < size_of(run); ++i)
        if (step_at(run, i).set_up == set_up) {
            ++progress.steps;
            progress.complete += is_complete(run, i) ? 1 : 0;
        }
    return progress;
}

std::vector<int> open_steps(const MachineRun& run) {
    std::vector<int> list;
    for (int i = 0; i < size_of(run); ++i)
        if (!is_complete(run, i))
            list.push_back(i);
    return list;
}

} // namespace treadle::plan
