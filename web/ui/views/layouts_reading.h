// What the layout on the board would make, read once and kept while nothing changes.

#pragma once

#include "edit/layout_reading.h"
#include "edit/session.h"

#include "ui/views/layouts_board.h"
#include "ui/views/picture.h"
#include "ui/widgets/verdict.h"

#include <cstdint>
#include <functional>
#include <string>
#include <string_view>
#include <vector>

namespace treadle::views {

struct LayoutsReading {
    edit::LayoutReading made;
    std::vector<edit::LayoutField> fields;
    std::vector<edit::LayoutRow> rows; ///< layouts of the job
    std::vector<std::vector<std::string>> workings;
    KeptPicture picture;
    float high_by_wide = 1; ///< of the elevation, so that a long run has no empty ground round it
};

class LayoutsReadings {
public:
    [[nodiscard]] LayoutsReading&
    of(const edit::Session& session,
       const LayoutBoard& board,
       const std::function<std::string(std::string_view)>& source_title);
    /// Titles of the kinds, in order; and what each makes.
    [[nodiscard]] const std::vector<std::string>& titles();
    [[nodiscard]] const std::vector<edit::LayoutKindRow>& kinds();

private:
    LayoutsReading reading_;
    std::vector<edit::LayoutKindRow> kinds_;
    std::vector<std::string> titles_;
    std::uint64_t revision_ = ~std::uint64_t{0};
    int version_ = -1;
};

[[nodiscard]] ui::Verdict verdict_of(assembly::Held held);

} // namespace treadle::views
