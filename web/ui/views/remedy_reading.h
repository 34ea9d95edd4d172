// Remedies of the chosen operation in words, asked for only when they are looked at.

#pragma once

#include "edit/session.h"

#include "ui/widgets/verdict.h"

#include <cstdint>
#include <string>
#include <vector>

namespace treadle::views {

struct RemedyReading {
    std::string words;  ///< what is changed
    std::string result; ///< verdict, margin and blank it leads to
    std::string why;
    std::string key; ///< spoken name of the key; empty: nothing to try, something to read first
    ui::Ink ink = ui::Ink::quiet;
    job::Part part; ///< the changed part
};

class RemedyReadings {
public:
    /// Of the session as it is; kept until it changes or another operation is asked about.
    [[nodiscard]] const std::vector<RemedyReading>&
    of(const edit::Session& session, int part, int operation);

private:
    std::uint64_t revision_ = ~std::uint64_t{0};
    int part_ = plan::k_none;
    int operation_ = plan::k_none;
    std::vector<RemedyReading> list_;
};

} // namespace treadle::views
