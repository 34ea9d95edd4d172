// Wear of the edges, people side by side and trial strips in words: asked for only when looked at.

#pragma once

#include "edit/session.h"

#include "ui/widgets/verdict.h"

#include <cstdint>
#include <map>
#include <optional>
#include <string>
#include <vector>

namespace treadle::views {

struct WearReading {
    std::string words;
    std::optional<ui::Verdict> mark; ///< none: nothing is known to be judged
    bool counted = false;            ///< its strokes can be booked
};

struct PeopleReading {
    struct Run {
        std::string number; ///< of the set-up
        std::string words;
        double from_share = 0; ///< of the longest lane; for the picture only
        double to_share = 0;
    };
    struct Lane {
        std::string title;
        std::vector<Run> runs;
    };
    std::string words;
    std::string pairs;       ///< what may run at once
    std::vector<Lane> lanes; ///< empty with one operator
};

struct TrialReading {
    std::string figures; ///< K, deduction, spread
    bool sound = false;
    std::vector<std::string> blanks; ///< that go by the record, with and without it
};

class WorkReadings {
public:
    [[nodiscard]] const std::vector<WearReading>& wear(const edit::Session& session);
    [[nodiscard]] const PeopleReading& people(const edit::Session& session);
    [[nodiscard]] const TrialReading& trial(const edit::Session& session, int record);

private:
    void forget_old(const edit::Session& session);

    std::uint64_t revision_ = ~std::uint64_t{0};
    std::optional<std::vector<WearReading>> wear_;
    std::optional<PeopleReading> people_;
    std::map<int, TrialReading> trials_;
};

struct SpreadReading {
    std::string leg;
    std::string figures;
    std::string verdict;
    std::optional<ui::Verdict> mark; ///< none: no class is asked for
};
[[nodiscard]] std::vector<SpreadReading> read_spreads(const plan::PartPlan& plan,
                                                      const edit::Session& session);

} // namespace treadle::views
