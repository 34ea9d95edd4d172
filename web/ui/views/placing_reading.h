// Where the chosen operation can be put, in words and as a picture. Kept until job, operation or
// trial change.

#pragma once

#include "edit/placing.h"

#include "ui/views/picture.h"
#include "ui/widgets/verdict.h"

#include <memory>
#include <optional>
#include <string>
#include <vector>

namespace treadle::views {

/// An operation on its way: not done before it is let go or taken.
struct Trial {
    std::string part;
    int operation = plan::k_none;
    edit::Placed placed;
};

class PlacingReading {
public:
    /// What can be done with an operation of this plan.
    void
    look_at(const std::shared_ptr<const plan::PartPlan>& plan, int operation, PrintStyle style);
    /// What a trial, or the operation as it is, comes to.
    void look_at(const edit::Session& session,
                 const std::optional<Trial>& trial,
                 const std::vector<sheet::FacePlace>& faces);

    std::optional<edit::Movable> movable;
    std::string refusal; ///< why it cannot be moved
    std::vector<edit::SnapLine> lines;
    std::string on_along; ///< what it lies on as it is: "middle of the length"; or empty
    std::string on_across;
    edit::FlatPlace at; ///< of the trial, or as it is
    std::string figure;
    std::string caught;
    std::string edges;
    std::string handle; ///< what the handle is called
    std::string verdict;
    ui::Verdict mark = ui::Verdict::not_known;
    Picture picture; ///< the operation there; empty without a trial

private:
    std::shared_ptr<const plan::PartPlan> plan_;
    int operation_ = plan::k_none;
    PrintStyle style_;
    std::optional<edit::FlatPlace> read_; ///< that the words are about
    bool read_trial_ = false;
};

} // namespace treadle::views
