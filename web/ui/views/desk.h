// What every view is given for one frame.

#pragma once

#include "edit/session.h"

#include "ui/views/at_machine_board.h"
#include "ui/views/jobs_board.h"
#include "ui/views/lesson_board.h"
#include "ui/views/reading.h"
#include "ui/views/state.h"
#include "ui/views/stock_board.h"
#include "ui/views/version_board.h"
#include "ui/widgets/ui.h"

#include <vector>

namespace treadle::views {

struct Desk {
    ui::Ui& ui;
    const edit::Session& session;
    State& state;
    Readings& readings;
    std::vector<Ask>& asks;
    const std::vector<std::string>& about; ///< lines about this program
    const char* notice;                    ///< the safety notice
    const StockBoard& stock;
    const AtMachineBoard& at_machine;
    const JobsBoard& jobs;
    const VersionBoard& version;
    const LessonBoard& lessons;

    void ask(Ask what);
    [[nodiscard]] PrintStyle style() const { return session.job().style; }
    /// Index of the chosen part, plan::k_none when there is none.
    [[nodiscard]] int chosen_part() const;
};

} // namespace treadle::views
