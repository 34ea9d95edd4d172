#include "job/progress.h"

#include <algorithm>
#include <set>
#include <string_view>
#include <utility>

namespace treadle::job {

namespace {

constexpr std::size_t k_most_steps = 100000;
constexpr int k_most_pieces = 100000; // as many as a part may have

base::Refusal refused(std::size_t index, const char* field, const char* reason) {
    return {"steps[" + std::to_string(index) + "]." + field, reason, ""};
}

std::string place_of(std::string_view key) { return std::string(k_sheet_tick) + std::string(key); }

} // namespace

bool is_sheet_tick(const StepDone& step) { return step.place.rfind(k_sheet_tick, 0) == 0; }

bool is_ticked(const Progress& progress, std::string_view key) {
    const std::string place = place_of(key);
    return std::any_of(progress.steps.begin(), progress.steps.end(), [&](const StepDone& step) {
        return step.place == place && step.ticked > 0;
    });
}

void tick(Progress& progress, std::string_view key, bool on) {
    const std::string place = place_of(key);
    progress.steps.erase(std::remove_if(progress.steps.begin(),
                                        progress.steps.end(),
                                        [&](const StepDone& step) { return step.place == place; }),
                         progress.steps.end());
    if (on)
        progress.steps.push_back({place, "", 1, 0});
}

base::Result<Progress> checked(Progress progress) {
    if (progress.steps.size() > k_most_steps)
        return base::Refusal{"steps", "More steps than any job has.", ""};
    std::set<std::string_view> places;
    for (std::size_t i = 0; i < progress.steps.size(); ++i) {
        const StepDone& step = progress.steps[i];
        if (step.place.empty())
            return refused(i, "place", "The step has no place.");
        if (!places.insert(step.place).second)
            return refused(i, "place", "This step is there twice.");
        if (step.ticked < 0 || step.ticked > k_most_pieces)
            return refused(i, "ticked", "A count is from 0 to 100000.");
        if (step.pieces < 0 || step.pieces > k_most_pieces)
            return refused(i, "pieces", "A count is from 0 to 100000.");
    }
    return progress;
}

} // namespace treadle::job
