#include "ui/views/placing_reading.h"

#include "plan/words.h"

#include "ui/views/reading.h"

namespace treadle::views {

namespace {

std::string lies_on(const std::optional<edit::Settled>& way) {
    return way && way->kind < edit::SnapKind::step ? way->words : std::string();
}

bool same(const edit::FlatPlace& a, const edit::FlatPlace& b) {
    return a.along == b.along && a.across == b.across;
}

} // namespace

void PlacingReading::look_at(const std::shared_ptr<const plan::PartPlan>& plan,
                             int operation,
                             PrintStyle style) {
    if (plan == plan_ && operation == operation_ && style == style_)
        return;
    plan_ = plan;
    operation_ = operation;
    style_ = style;
    read_.reset();
    movable.reset();
    refusal.clear();
    lines.clear();
    on_along.clear();
    on_across.clear();
    if (operation == plan::k_none) {
        refusal = "Choose an operation first";
        return;
    }
    const edit::Placing placing{*plan, operation, style};
    const auto found = edit::movable(placing);
    if (!found) {
        refusal = found.refusal().reason + " " + found.refusal().detail;
        return;
    }
    movable = *found;
    lines = edit::candidates(placing);
    if (const auto now = edit::as_it_is(placing)) {
        on_along = lies_on(now->along);
        on_across = lies_on(now->across);
    }
}

void PlacingReading::look_at(const edit::Session& session,
                             const std::optional<Trial>& trial,
                             const std::vector<sheet::FacePlace>& faces) {
    if (!movable)
        return;
    at = trial ? trial->placed.at : movable->at;
    if (read_ && same(*read_, at) && read_trial_ == trial.has_value())
        return;
    read_ = at;
    read_trial_ = trial.has_value();
    picture = {};
    const edit::Placing placing{*plan_, operation_, style_};
    const auto now = trial ? base::Result<edit::Placed>(trial->placed) : edit::as_it_is(placing);
    if (!now)
        return;
    figure = edit::figure_words(*now, style_);
    caught = edit::caught_words(*now);
    edges = edit::edge_words(*now, style_);
    handle = "Move operation " + std::to_string(operation_ + 1) + ", now at " + figure +
             ": drag, or use the arrow keys";
    if (!trial) {
        verdict = plan::verdict_words(*plan_, style_);
        mark = mark_of(plan_->outcome);
    } else if (edit::is_quick_to_plan(trial->placed.part)) {
        const plan::PartPlan there = edit::trial_plan(session, trial->placed.part);
        verdict = plan::verdict_words(there, style_);
        mark = mark_of(there.outcome);
        picture = to_picture(sheet::draw_alone(there, operation_, faces));
    } else {
        verdict = "checked when you let go";
        mark = ui::Verdict::not_known;
    }
}

} // namespace treadle::views
