#include "plan/bend_sweep.h"

#include <algorithm>
#include <cmath>
#include <cstdint>

namespace treadle::plan {

namespace {

using geometry::ConvexOutline;
using geometry::ProfileLine;
using geometry::ProfilePoint;
using quantity::to_millimetres;

constexpr double k_step_rad = 0.5 / 57.29577951308232; ///< half a degree of the bend
constexpr double k_far_mm = 1e5;
constexpr double k_slack_mm = 1e-6;
constexpr Angle k_slack = degrees(0.01);
/// A leg that leans away from the bend leaves the stop no edge.
constexpr Angle k_least_gauged_turn = degrees(89.5);

ConvexOutline box(double half_width, double low, double high) {
    return geometry::convex_outline(
        {{-half_width, low}, {half_width, low}, {half_width, high}, {-half_width, high}});
}

/// A wedge that is tangent to the nose, then the body; the nose is cut flat at its lowest point.
ConvexOutline punch_outline(const BrakeOutline& tools) {
    const double half = tools.punch_included.in_radians() / 2.0;
    const double nose = to_millimetres(tools.nose);
    const double body = to_millimetres(tools.punch_width) / 2.0;
    const double height = to_millimetres(tools.punch_height);
    const double flat = std::min(body, (nose / std::sin(half) - nose) * std::tan(half));
    const double shoulder = std::min(height, (body - flat) / std::tan(half));
    const double wide = std::min(body, flat + shoulder * std::tan(half));
    return geometry::convex_outline({{-flat, 0.0},
                                     {flat, 0.0},
                                     {wide, shoulder},
                                     {wide, height},
                                     {-wide, height},
                                     {-wide, shoulder}});
}

bool same_tools(const BrakeOutline& a, const BrakeOutline& b) {
    return a.opening == b.opening && a.die_width == b.die_width && a.die_height == b.die_height &&
           a.punch_width == b.punch_width && a.punch_height == b.punch_height &&
           a.punch_included == b.punch_included && a.nose == b.nose && a.bed_width == b.bed_width &&
           a.ram_width == b.ram_width;
}

/// The stroke is the same, wherever on the part.
bool bent_alike(const OrderedBend& a, const OrderedBend& b) {
    return a.angle == b.angle && a.radius == b.radius && a.allowance == b.allowance &&
           same_tools(a.tools, b.tools);
}

} // namespace

BendSweep::BendSweep(const BendProblem& problem) : problem_(problem) {
    const std::size_t count = problem.bends.size();
    for (std::size_t i = 0; i < count; ++i) {
        set_up(i);
        forward_.emplace_back(std::size_t{1} << (count - 1 - i));
        backward_.emplace_back(std::size_t{1} << i);
    }
}

void BendSweep::set_up(std::size_t index) {
    const OrderedBend& bend = problem_.bends[index];
    always_.push_back(always_hit(index));
    for (std::size_t before = 0; before < index; ++before)
        if (bent_alike(bend, problem_.bends[before])) {
            place_.push_back(place_[before]);
            return;
        }
    place_.push_back(tools_.size());
    tools_.push_back(tools_of(bend));
}

std::optional<BendBlock> BendSweep::always_hit(std::size_t index) const {
    const OrderedBend& bend = problem_.bends[index];
    const BrakeOutline& outline = bend.tools;
    const int number = static_cast<int>(index);
    if (outline.open_height < outline.die_height + outline.punch_height + problem_.thickness)
        return BendBlock{number, -1, BendObstacle::open_height};
    if (degrees(180.0) - bend.angle + k_slack < outline.punch_included)
        return BendBlock{number, number + 1, BendObstacle::punch};
    return std::nullopt;
}

BendSweep::Tools BendSweep::tools_of(const OrderedBend& bend) const {
    const BrakeOutline& outline = bend.tools;
    Tools tools;
    const double t = to_millimetres(problem_.thickness);
    const double r = to_millimetres(bend.radius);
    const double half_opening = to_millimetres(outline.opening) / 2.0;
    const double punch_height = to_millimetres(outline.punch_height);
    const double die_height = to_millimetres(outline.die_height);
    // Metal that lies on the die touches it: the clearance counts beside the die, not above it.
    const double top = -to_millimetres(k_bend_clearance) - k_slack_mm;
    tools.punch = punch_outline(outline);
    tools.ram = box(to_millimetres(outline.ram_width) / 2.0, punch_height, k_far_mm);
    tools.die = box(to_millimetres(outline.die_width) / 2.0, std::min(top, -die_height) - 1.0, top);
    tools.bed = box(to_millimetres(outline.bed_width) / 2.0, -k_far_mm, std::min(top, -die_height));
    const double angle = bend.angle.in_radians();
    const int steps = std::max(1, static_cast<int>(std::ceil(angle / k_step_rad)));
    tools.radians_per_step = angle / steps;
    const double step_cosine = std::cos(tools.radians_per_step / 2.0);
    const double step_sine = std::sin(tools.radians_per_step / 2.0);
    const double arc_per_step = to_millimetres(bend.allowance) / steps;
    tools.poses.resize(static_cast<std::size_t>(steps) + 1);
    Pose pose;
    for (int i = 0; i <= steps; ++i) {
        const double tangent = pose.sine / pose.cosine;
        pose.shift_mm = (r + t) * tangent - arc_per_step * i / 2.0;
        pose.apex_mm = -half_opening * tangent;
        pose.nose_mm = pose.apex_mm + (r + t) / pose.cosine - r;
        tools.poses[static_cast<std::size_t>(i)] = pose;
        const double cosine = pose.cosine * step_cosine - pose.sine * step_sine;
        pose.sine = pose.sine * step_cosine + pose.cosine * step_sine;
        pose.cosine = cosine;
    }
    const double steep = 1.0 / (tools.poses.back().cosine * tools.poses.back().cosine);
    tools.drift_mm = (half_opening + r + t) * steep + to_millimetres(bend.allowance) / angle;
    return tools;
}

const std::optional<BendBlock>& BendSweep::hit(std::size_t bend, MadeBends made) {
    if (always_[bend])
        return always_[bend];
    const std::optional<BendBlock>& forward = flank(bend, made, true);
    return forward ? forward : flank(bend, made, false);
}

const std::optional<BendBlock>& BendSweep::flank(std::size_t bend, MadeBends made, bool forward) {
    const std::size_t key =
        forward ? made >> (bend + 1) : made & ((MadeBends{1} << bend) - MadeBends{1});
    Found& found = forward ? forward_[bend][key] : backward_[bend][key];
    if (found.known)
        return found.block;
    outwards_.clear();
    const std::size_t there = forward ? problem_.bends.size() - 1 - bend : bend;
    for (std::size_t i = 1; i <= there; ++i) {
        const std::size_t other = forward ? bend + i : bend - i;
        if ((made >> other & 1U) != 0)
            outwards_.push_back(other);
    }
    found.block = sweep(bend, outwards_, forward);
    found.known = true;
    return found.block;
}

std::optional<BendBlock>
BendSweep::sweep(std::size_t index, const std::vector<std::size_t>& outwards, bool forward) {
    const OrderedBend& bend = problem_.bends[index];
    const double t = to_millimetres(problem_.thickness);
    const auto from_line = [&](Length place) {
        return to_millimetres(forward ? place - bend.line : bend.line - place);
    };
    folds_.clear();
    for (const std::size_t other : outwards) {
        const OrderedBend& fold = problem_.bends[other];
        const double at = from_line(fold.line);
        const double half = to_millimetres(fold.allowance) / 2.0;
        const double turn = fold.angle.in_radians();
        folds_.push_back({at - half,
                          at + half,
                          to_millimetres(fold.radius) + t / 2.0,
                          fold.up == bend.up ? turn : -turn});
    }
    geometry::fold_strip(
        folds_, from_line(forward ? problem_.blank_length : Length{}), t / 2.0, strip_);
    const int last = forward ? static_cast<int>(problem_.bends.size()) : 0;
    for (std::size_t i = 0; i < strip_.lines.size(); ++i) {
        const auto passed = static_cast<std::size_t>(strip_.folds[i]);
        const auto obstacle = sweep_line(tools_[place_[index]], strip_.lines[i], passed == 0);
        if (!obstacle)
            continue;
        int leg = last; // the outermost one of a run that is still flat
        if (passed < outwards.size())
            leg = static_cast<int>(outwards[passed]) + (forward ? 0 : 1);
        return BendBlock{static_cast<int>(index), leg, *obstacle};
    }
    return std::nullopt;
}

std::optional<BendObstacle>
BendSweep::sweep_line(const Tools& tools, const ProfileLine& line, bool in_run) const {
    const double limit =
        to_millimetres(problem_.thickness) / 2.0 + to_millimetres(k_bend_clearance) - k_slack_mm;
    const double most_shift = std::max(0.0, tools.poses.back().shift_mm);
    const auto reach = [&](ProfilePoint p) {
        const double x = std::abs(p.x_mm) + most_shift;
        return std::sqrt(x * x + p.y_mm * p.y_mm);
    };
    const double per_step = (std::max(reach(line.from), reach(line.to)) / 2.0 + tools.drift_mm) *
                            tools.radians_per_step;
    const double steps_per_mm = 1.0 / per_step;
    for (std::size_t i = 0; i < tools.poses.size();) {
        const Pose& pose = tools.poses[i];
        const auto place = [&](ProfilePoint p) -> ProfilePoint {
            const double x = p.x_mm + pose.shift_mm;
            return {pose.cosine * x - pose.sine * p.y_mm,
                    pose.apex_mm + pose.sine * x + pose.cosine * p.y_mm};
        };
        const ProfileLine placed{place(line.from), place(line.to)};
        const ProfileLine under{{placed.from.x_mm, placed.from.y_mm - pose.nose_mm},
                                {placed.to.x_mm, placed.to.y_mm - pose.nose_mm}};
        double least = k_far_mm;
        const auto meets = [&](const ProfileLine& at, const ConvexOutline& outline) {
            double gap = geometry::least_gap_mm(at, outline);
            if (gap < limit)
                gap = geometry::distance_mm(at, outline);
            least = std::min(least, gap);
            return gap < limit;
        };
        if (meets(under, tools.ram))
            return BendObstacle::ram;
        // The run lies on the shoulders and is pressed by the nose: it touches both by right.
        if (!in_run) {
            if (meets(under, tools.punch))
                return BendObstacle::punch;
            if (meets(placed, tools.die))
                return BendObstacle::die;
            if (meets(placed, tools.bed))
                return BendObstacle::bed;
        }
        // No point crosses the gap that is left in fewer steps than these.
        const auto clear_steps = static_cast<std::int64_t>((least - limit) * steps_per_mm);
        i += static_cast<std::size_t>(std::max<std::int64_t>(1, clear_steps));
    }
    return std::nullopt;
}

std::optional<BendGauge>
BendSweep::gauge(std::size_t bend, MadeBends made, bool start_gauged) const {
    const OrderedBend& now = problem_.bends[bend];
    BendGauge gauge;
    gauge.stop = start_gauged ? now.line : problem_.blank_length - now.line;
    const std::size_t there = start_gauged ? bend : problem_.bends.size() - 1 - bend;
    for (std::size_t i = 1; i <= there; ++i) {
        const std::size_t other = start_gauged ? bend - i : bend + i;
        if ((made >> other & 1U) == 0)
            continue;
        const OrderedBend& standing = problem_.bends[other];
        if (standing.angle < k_least_gauged_turn)
            return std::nullopt;
        gauge.against = static_cast<int>(start_gauged ? other : other + 1);
        gauge.stop = (start_gauged ? now.line - standing.line : standing.line - now.line) +
                     standing.half_deduction;
        break;
    }
    if (gauge.stop < now.tools.least_gauge)
        return std::nullopt;
    return gauge;
}

} // namespace treadle::plan
