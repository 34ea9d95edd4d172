#include "plan/scrap.h"

#include "plan/words.h"

namespace treadle::plan {

namespace {

std::string counted(int count, const char* one, const char* many) {
    return std::to_string(count) + " " + (count == 1 ? one : many);
}

struct Fallen {
    int punched = 0;
    int trimmed = 0;
    int crescents = 0;
    bool cut = false;
};

Fallen fallen_in(const Plan& plan, const SetUp& set_up) {
    Fallen fallen;
    for (const Step& step : set_up.steps) {
        const job::Part& part = *plan.parts[static_cast<std::size_t>(step.part)]->part;
        const job::Operation& done = part.operations[static_cast<std::size_t>(step.operation)];
        if (std::holds_alternative<job::Punch>(done))
            fallen.punched += step.strokes;
        else if (std::holds_alternative<job::Notch>(done))
            fallen.trimmed += step.strokes;
        else if (std::holds_alternative<job::Saddle>(done))
            fallen.crescents += step.strokes;
        else if (std::holds_alternative<job::Cut>(done))
            fallen.cut = true;
    }
    return fallen;
}

} // namespace

std::vector<std::string> scrap_words(const Plan& plan, const SetUp& set_up, PrintStyle style) {
    const Fallen fallen = fallen_in(plan, set_up);
    std::vector<std::string> words;
    if (fallen.punched > 0)
        words.push_back(counted(fallen.punched, "slug", "slugs") + " of " +
                        hole_words(set_up.tools.punch_size, style) +
                        " fall: empty the chute with the machine at rest, and count a slug that "
                        "is missing as one that is still in the die.");
    if (fallen.trimmed > 0)
        words.push_back(counted(fallen.trimmed, "trimming falls", "trimmings fall") +
                        ": take them out with the machine at rest.");
    if (fallen.crescents > 0)
        words.push_back(counted(fallen.crescents, "crescent falls", "crescents fall") +
                        ", sharp on every side; look for one that stays in the pipe.");
    if (fallen.cut)
        words.emplace_back("Drops: write section, grade and length on what is kept before it is "
                           "put away; the cutting list says which.");
    return words;
}

} // namespace treadle::plan
