// The order of work in words: made when it is looked at, not with every edit.

#pragma once

#include "edit/session.h"

#include "ui/views/kept_height.h"

#include <cstdint>
#include <memory>
#include <string>
#include <vector>

namespace treadle::views {

struct PartReading;

struct StepReading {
    std::string title;  ///< "BP2"
    std::string detail; ///< "× 6   Punch 13/16 round, 24 strokes"
    std::string spoken;
    std::string notes; ///< mark, batches, what is measured
    int part = 0;
    int operation = 0;
    KeptHeight drawn;
};
struct SetUpReading {
    std::string title;
    std::string tools;
    std::string strokes;
    std::vector<std::string> settings;
    std::vector<StepReading> steps;
    KeptHeight head;
    KeptHeight all_steps;
};

struct OrderReading {
    std::vector<SetUpReading> set_ups;
    std::vector<std::string> shopping; ///< what is to be bought, a sentence each
    std::string totals;
    std::string time;
};

class OrderReadings {
public:
    /// `parts`: readings of the session's parts. Kept until the session changes.
    [[nodiscard]] OrderReading& of(const edit::Session& session,
                                   const std::vector<std::shared_ptr<PartReading>>& parts);

private:
    std::uint64_t revision_ = ~std::uint64_t{0};
    OrderReading order_;
};

} // namespace treadle::views
