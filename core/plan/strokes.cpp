// What a stroke leaves behind: slugs that do not fall, clearances out of the usual, the bang when
// hard metal lets go. Warnings; common practice, no source, unless a line says otherwise.

#include "plan/part_checks.h"
#include "process/die_clearance.h"

#include <algorithm>
#include <cmath>

namespace treadle::plan {

namespace {

using material::Family;

constexpr Length k_thin_sheet = inches(1.0 / 16.0); // under it a large slug dishes
constexpr Length k_large_slug = inches(1.0);
constexpr double k_soft_clearance = 0.10; // of the thickness, total: soft metal clings under it
/// Hard metal breaks early and all at once: that much of the force is left unused for the shock.
constexpr double k_hard_metal_margin = 0.20;

const equipment::Station* station_of(const Question& question, const OperationPlan& operation) {
    return operation.tools.station == k_none
               ? nullptr
               : &question.shop.machine.stations[static_cast<std::size_t>(operation.tools.station)];
}

void check_opening(const Question& question, OperationPlan& operation, Length across) {
    const equipment::Station* station = station_of(question, operation);
    if (station != nullptr && station->slug_opening && across > *station->slug_opening)
        say_once(operation,
                 web_warning(Rule::slug,
                             across,
                             *station->slug_opening,
                             "The slug does not pass the opening below and stays in the die: after "
                             "every stroke, with the foot off the pedal, push it out with a rod "
                             "from the side that it came in."));
}

void check_punch_slug(const Question& question, const job::Punch& punch, OperationPlan& operation) {
    check_opening(question, operation, geometry::circumscribed(punch.hole));
    const Length thickness = section::thickness_at(question.part.section, punch.face);
    if (thickness < k_thin_sheet && geometry::least_width(punch.hole) >= k_large_slug)
        say_once(operation,
                 warning_check(Rule::slug,
                               "A large slug of thin sheet dishes and clings to the die: push it "
                               "out with a rod after every stroke, and use a tight die that holds "
                               "the sheet all round."));
    const Length clearance = operation.tools.die_size.size - operation.tools.punch_size.size;
    if (!(clearance > Length{}) || !(thickness > Length{}))
        return;
    const double share = clearance / thickness;
    const Family family = question.metal.grade->family;
    if ((family == Family::aluminium || family == Family::copper_alloy) &&
        share < k_soft_clearance - 1e-9)
        say_once(operation,
                 warning_check(Rule::slug,
                               "Soft metal cut with so little clearance comes back up with the "
                               "punch or sticks in the die: oil the punch, look after every "
                               "stroke, and push the slug out with a rod, never by hand."));
    if (share < process::k_least_clearance_share - 1e-9)
        say_once(operation,
                 warning_check(Rule::die_clearance,
                               "The die has under 6 % of the thickness as clearance: hard to "
                               "strip and its edge chips. Take the next larger die."));
    if (share > process::k_most_clearance_share + 1e-9)
        say_once(operation,
                 warning_check(Rule::die_clearance,
                               "The die has over 25 % of the thickness as clearance: the edge "
                               "rolls over and burrs. Take a closer die."));
}

/// The piece of one bite, corner to corner.
void check_notch_slug(const Question& question, const job::Notch& notch, OperationPlan& operation) {
    Length width = notch.along;
    if (notch.shape == geometry::NotchShape::vee)
        width = notch.depth * (2.0 * std::tan(notch.included.in_radians() / 2.0));
    else if (operation.tools.attachment != k_none)
        width = smaller(
            width,
            question.shop.machine.attachments[static_cast<std::size_t>(operation.tools.attachment)]
                .length.value_or(width));
    check_opening(question,
                  operation,
                  millimetres(std::hypot(quantity::to_millimetres(width),
                                         quantity::to_millimetres(notch.depth))));
}

void check_snap(OperationPlan& operation) {
    const bool near =
        std::any_of(operation.checks.begin(), operation.checks.end(), [](const Check& check) {
            return !check.warning && check.by_strength && check.outcome <= Outcome::fits_up_to &&
                   check.margin < k_hard_metal_margin;
        });
    if (near)
        say_once(operation,
                 warning_check(Rule::snap_through,
                               "Hard metal lets go early and with a bang, and this stroke takes "
                               "over 80 % of what is allowed: wear ear protection, stand aside, "
                               "and look for a stronger station."));
}

} // namespace

void check_strokes(const Question& question, PartPlan& plan) {
    const bool hard = process::is_harder(*question.metal.grade);
    for (std::size_t i = 0; i < plan.operations.size(); ++i) {
        const job::Operation& operation = question.part.operations[i];
        OperationPlan& planned = plan.operations[i];
        if (const auto* punch = std::get_if<job::Punch>(&operation))
            check_punch_slug(question, *punch, planned);
        else if (const auto* notch = std::get_if<job::Notch>(&operation))
            check_notch_slug(question, *notch, planned);
        else if (std::holds_alternative<job::Saddle>(operation))
            check_opening(question, planned, question.part.section.width);
        if (hard && !std::holds_alternative<job::Bend>(operation))
            check_snap(planned);
    }
}

} // namespace treadle::plan
