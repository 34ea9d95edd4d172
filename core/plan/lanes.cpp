#include "plan/lanes.h"

#include <algorithm>
#include <cstddef>
#include <cstdint>
#include <tuple>
#include <utility>

namespace treadle::plan {

namespace {

/// Looks at a step or at a placed task, all rules together; a few milliseconds.
constexpr long long k_most_work = 2'000'000;
constexpr std::size_t k_most_exhausted = 8; ///< tasks whose every sequence is tried
constexpr int k_most_rounds = 200;          ///< of rules with a little chance in them
constexpr std::size_t k_most_cliques = 16;  ///< stations looked at for the bound

std::size_t at(int index) { return static_cast<std::size_t>(index); }

/// The least a task takes, whatever comes before it.
double least_of(const LaneWork& work, std::size_t task) {
    double sum = work.full_change;
    for (std::size_t other = 0; other < work.tasks.size(); ++other)
        if (other != task && work.tasks[other].place == work.tasks[task].place)
            sum = std::min(sum, work.small_change);
    for (const LaneStep& step : work.tasks[task].steps)
        sum += step.length;
    return sum;
}

/// The most work among stations of which no two run at once.
double heaviest(const LaneWork& work, const std::vector<std::pair<double, int>>& stations) {
    double most = 0.0;
    for (std::size_t i = 0; i < stations.size(); ++i) {
        std::vector<std::pair<double, int>> rest;
        for (std::size_t j = i + 1; j < stations.size(); ++j)
            if (work.apart[at(stations[i].second * work.stations + stations[j].second)] != 0)
                rest.push_back(stations[j]);
        most = std::max(most, stations[i].first + heaviest(work, rest));
    }
    return most;
}

double bound(const LaneWork& work, const std::vector<double>& least) {
    double all = 0.0;
    double longest = 0.0;
    std::vector<double> of_part(at(work.parts));
    std::vector<std::pair<double, int>> stations;
    for (int s = 0; s < work.stations; ++s)
        stations.emplace_back(0.0, s);
    for (std::size_t t = 0; t < work.tasks.size(); ++t) {
        all += least[t];
        stations[at(work.tasks[t].station)].first += least[t];
        for (const LaneStep& step : work.tasks[t].steps)
            of_part[at(step.part)] += step.length;
    }
    for (const double part : of_part)
        longest = std::max(longest, part + std::min(work.small_change, work.full_change));
    std::sort(stations.rbegin(), stations.rend());
    stations.resize(std::min(stations.size(), k_most_cliques));
    return std::max({longest, all / work.lanes, heaviest(work, stations)});
}

class Sharing {
public:
    explicit Sharing(const LaneWork& work)
        : work_(work),
          after_(work.tasks.size()),
          tail_(work.tasks.size()) {
        for (std::size_t t = 0; t < work.tasks.size(); ++t) {
            least_.push_back(least_of(work, t));
            for (const int before : work.tasks[t].before)
                after_[at(before)].push_back(static_cast<int>(t));
        }
        for (std::size_t t = work.tasks.size(); t-- > 0;) {
            for (const int next : after_[t])
                tail_[t] = std::max(tail_[t], tail_[at(next)]);
            tail_[t] += least_[t];
        }
        best_.least = bound(work, least_);
    }

    Lanes solve() {
        in_order(1);
        best_.alone = best_.length;
        if (work_.lanes > 1) {
            in_order(work_.lanes);
            greedy(tail_);
            if (work_.tasks.size() <= k_most_exhausted)
                exhaust();
            else
                by_chance();
        }
        tell_steps();
        std::sort(best_.runs.begin(), best_.runs.end(), [](const LaneRun& a, const LaneRun& b) {
            return std::tie(a.start, a.lane, a.task) < std::tie(b.start, b.lane, b.task);
        });
        return best_;
    }

private:
    struct Lane {
        double free = 0.0;
        int last = -1;
    };

    void start() {
        runs_.clear();
        lanes_.assign(at(work_.lanes), {});
        part_free_.assign(at(work_.parts), 0.0);
        waits_for_.clear();
        for (const LaneTask& task : work_.tasks)
            waits_for_.push_back(task.before.size());
        left_ = 0.0;
        for (const double least : least_)
            left_ += least;
    }

    [[nodiscard]] double change(int task, int lane) const {
        const int last = lanes_[at(lane)].last;
        return last >= 0 && work_.tasks[at(last)].place == work_.tasks[at(task)].place
                   ? work_.small_change
                   : work_.full_change;
    }
    [[nodiscard]] LaneRun timed(int task, int lane, double start) const {
        LaneRun run{task, lane, start, start + change(task, lane), 0.0, {}};
        for (const LaneStep& step : work_.tasks[at(task)].steps) {
            const double begin = std::max(run.finish, part_free_[at(step.part)]);
            run.waits += begin - run.finish;
            run.finish = begin + step.length;
        }
        return run;
    }
    /// Begins when the lane is free and nothing runs that must not run beside it.
    LaneRun earliest(int index, int lane) {
        const LaneTask& task = work_.tasks[at(index)];
        LaneRun run = timed(index, lane, lanes_[at(lane)].free);
        for (bool moved = true; moved;) {
            moved = false;
            double next = run.finish;
            for (const LaneRun& other : runs_)
                if (other.start < run.finish && run.start < other.finish &&
                    kept_apart(work_, task, work_.tasks[at(other.task)])) {
                    next = moved ? std::min(next, other.finish) : other.finish;
                    moved = true;
                }
            work_done_ += static_cast<long long>(task.steps.size() + runs_.size() + 1);
            if (moved)
                run = timed(index, lane, next);
        }
        return run;
    }
    /// Steps are run through again: their ends become the parts' own.
    void place(const LaneRun& run, std::vector<double>* begins = nullptr) {
        double now = run.start + change(run.task, run.lane);
        for (const LaneStep& step : work_.tasks[at(run.task)].steps) {
            double& free = part_free_[at(step.part)];
            const double begin = std::max(now, free);
            if (begins != nullptr)
                begins->push_back(begin);
            free = now = begin + step.length;
        }
        lanes_[at(run.lane)] = {run.finish, run.task};
        runs_.push_back(run);
        left_ -= least_[at(run.task)];
        for (const int next : after_[at(run.task)])
            --waits_for_[at(next)];
    }
    [[nodiscard]] bool is_placed(int task) const {
        return std::any_of(
            runs_.begin(), runs_.end(), [&](const LaneRun& run) { return run.task == task; });
    }
    [[nodiscard]] double length() const {
        double longest = 0.0;
        for (const Lane& lane : lanes_)
            longest = std::max(longest, lane.free);
        return longest;
    }
    void keep() {
        if (!best_.runs.empty() && length() >= best_.length * (1.0 - 1e-12))
            return;
        best_.runs = runs_;
        best_.length = length();
    }

    /// When each step of the best begins: its runs are still in the sequence they were placed in.
    void tell_steps() {
        start();
        for (LaneRun& run : best_.runs)
            place(run, &run.begins);
    }

    /// The list as it stands, each task where it is done first.
    void in_order(int lanes) {
        start();
        for (std::size_t t = 0; t < work_.tasks.size(); ++t) {
            LaneRun best = earliest(static_cast<int>(t), 0);
            for (int lane = 1; lane < lanes; ++lane) {
                const LaneRun run = earliest(static_cast<int>(t), lane);
                if (run.finish < best.finish)
                    best = run;
            }
            place(best);
        }
        keep();
    }

    /// Next is what loses the least time; of these, the one with the most behind it.
    void greedy(const std::vector<double>& weight) {
        start();
        std::vector<int> open;
        for (std::size_t t = 0; t < work_.tasks.size(); ++t)
            if (waits_for_[t] == 0)
                open.push_back(static_cast<int>(t));
        while (!open.empty()) {
            LaneRun best;
            std::tuple<double, double, int> least;
            for (const int task : open)
                for (int lane = 0; lane < work_.lanes; ++lane) {
                    const LaneRun run = earliest(task, lane);
                    const std::tuple<double, double, int> cost{
                        run.start + run.waits, -weight[at(task)], task};
                    if ((task == open.front() && lane == 0) || cost < least) {
                        best = run;
                        least = cost;
                    }
                }
            if (work_done_ > k_most_work)
                return;
            place(best);
            open.erase(std::find(open.begin(), open.end(), best.task));
            for (const int next : after_[at(best.task)])
                if (waits_for_[at(next)] == 0)
                    open.push_back(next);
        }
        keep();
    }

    void by_chance() {
        std::uint32_t chance = 1; // the same rounds every time
        for (int round = 0; round < k_most_rounds && work_done_ < k_most_work; ++round) {
            if (best_.proven())
                return;
            std::vector<double> weight = tail_;
            for (double& one : weight) {
                chance = chance * 1664525u + 1013904223u;
                one *= 0.5 + static_cast<double>(chance >> 22) / 1024.0;
            }
            greedy(weight);
        }
    }

    void exhaust() {
        start();
        try_all();
        if (work_.one_way && work_done_ < k_most_work)
            best_.least = best_.length;
    }
    void try_all() {
        if (runs_.size() == work_.tasks.size()) {
            keep();
            return;
        }
        const auto lanes = lanes_;
        const auto part_free = part_free_;
        const auto waits_for = waits_for_;
        const double left = left_;
        for (std::size_t t = 0; t < work_.tasks.size(); ++t) {
            const int task = static_cast<int>(t);
            if (waits_for_[t] != 0 || is_placed(task))
                continue;
            bool empty = false; // one empty lane is like the other
            for (int lane = 0; lane < work_.lanes && work_done_ < k_most_work; ++lane) {
                if (lanes_[at(lane)].last < 0 && std::exchange(empty, true))
                    continue;
                const LaneRun run = earliest(task, lane);
                place(run);
                double sum = left_;
                for (const Lane& one : lanes_)
                    sum += one.free;
                if (std::max(length(), sum / work_.lanes) < best_.length * (1.0 - 1e-12))
                    try_all();
                runs_.pop_back();
                lanes_ = lanes;
                part_free_ = part_free;
                waits_for_ = waits_for;
                left_ = left;
            }
        }
    }

    const LaneWork& work_;
    std::vector<std::vector<int>> after_;
    std::vector<double> tail_;  ///< of a task: it and the longest that waits for it
    std::vector<double> least_; ///< of a task
    Lanes best_;
    std::vector<LaneRun> runs_;
    std::vector<Lane> lanes_;
    std::vector<double> part_free_;
    std::vector<std::size_t> waits_for_;
    double left_ = 0.0; ///< least work not yet placed
    long long work_done_ = 0;
};

} // namespace

bool kept_apart(const LaneWork& work, const LaneTask& a, const LaneTask& b) {
    if (work.apart[at(a.station * work.stations + b.station)] != 0)
        return true;
    for (const int tool : a.scarce)
        if (tool >= 0 && std::find(b.scarce.begin(), b.scarce.end(), tool) != b.scarce.end())
            return true;
    return false;
}

Lanes share_out(const LaneWork& work) { return Sharing(work).solve(); }

} // namespace treadle::plan
