#include "ui/views/limits_reading.h"

#include "base/stable_sort.h"
#include "base/text.h"
#include "plan/capacity.h"
#include "plan/machines.h"
#include "plan/words.h"

#include "ui/views/reading.h"
#include "ui/views/shop_paths.h"

#include <algorithm>
#include <array>
#include <cmath>

namespace treadle::views {

namespace {

constexpr double k_head_room = 1.1; ///< so that the topmost line is inside
constexpr double k_farthest = 1.5; ///< a point may stretch the axes so far; beyond it is at the rim
constexpr int k_most_ticks = 7;
constexpr std::size_t k_shown_stops = 4;

constexpr std::array<const char*, 4> k_outcomes = {
    "fits", "fits only with a certificate", "cannot be said", "does not fit"};
constexpr std::array k_marks = {
    ui::Verdict::fits, ui::Verdict::up_to, ui::Verdict::not_known, ui::Verdict::does_not_fit};

ui::Verdict mark_of(plan::Outcome outcome) { return k_marks[static_cast<std::size_t>(outcome)]; }

double mm(Length length) { return quantity::to_millimetres(length); }

/// Steps of the shop's own scale: inches doubled, millimetres by 1, 2, 5.
std::vector<LimitTick> ticks(double reach, PrintStyle style) {
    const bool inch = style.system == UnitSystem::inch;
    double step = inch ? 25.4 / style.denominator : 1;
    for (int i = 0; reach / step > k_most_ticks; ++i)
        step *= inch || i % 3 != 1 ? 2 : 2.5;
    std::vector<LimitTick> list;
    for (int i = 0; step * i <= reach; ++i)
        list.push_back({step * i, quantity::print_bare(millimetres(step * i), style)});
    return list;
}

LimitRow row_of(const std::string& size,
                const std::string& axis,
                const plan::CapacityLimit& limit,
                PrintStyle style) {
    const auto words = [&](Length length) {
        return quantity::print_bare(length, style, Rounding::down);
    };
    LimitRow row;
    row.size = size;
    row.fits = limit.fits > Length{} ? words(limit.fits) : "none";
    row.spoken = axis + " " + size + ": " +
                 (limit.fits > Length{} ? "up to " + row.fits : std::string("nothing fits"));
    if (limit.fits_up_to > limit.fits) {
        row.up_to = words(limit.fits_up_to);
        row.spoken += ", with a certificate up to " + row.up_to;
    }
    if (limit.stopped_by) {
        row.stopped_by = plan::rule_words(*limit.stopped_by);
        row.spoken += "; stopped by " + row.stopped_by;
    }
    const auto beside = [&](const std::string& more) {
        row.stopped_by += (row.stopped_by.empty() ? "" : ", ") + more;
        row.spoken += ", " + more;
    };
    if (limit.opening > Length{})
        beside("V " + quantity::print_bare(limit.opening, style));
    if (limit.least > Length{} && limit.fits_up_to > Length{})
        beside("not under " + quantity::print_bare(limit.least, style, Rounding::up));
    return row;
}

/// Names what is not known, and where it is filled in.
std::string
missing_words(const std::string& path, const equipment::Shop& shop, LimitsReading& into) {
    if (const auto page = shop_page_of(path, shop))
        into.shop_page = *page;
    return "Nothing can be said. " + plan::missing_sentence(path, shop);
}

void read_envelope(const plan::Capacity& is,
                   const equipment::Shop& shop,
                   PrintStyle style,
                   LimitsReading& into) {
    for (std::size_t i = 0; i < is.points.size(); ++i) {
        const plan::CapacityPoint& at = is.points[i];
        into.rows.push_back(
            row_of(quantity::print_bare(at.x, style), into.axis, at.thickness, style));
        if (i == 0)
            continue;
        const plan::CapacityPoint& before = is.points[i - 1];
        const LimitStep step{mm(before.x),
                             mm(at.x),
                             mm(std::min(before.thickness.fits, at.thickness.fits)),
                             mm(std::min(before.thickness.fits_up_to, at.thickness.fits_up_to)),
                             mm(std::max(before.thickness.least, at.thickness.least))};
        if (!into.steps.empty() && into.steps.back().fits == step.fits &&
            into.steps.back().up_to == step.up_to && into.steps.back().least == step.least)
            into.steps.back().to = step.to; // one stretch of hatching
        else
            into.steps.push_back(step);
    }
    for (std::size_t i = 0; i < is.bars.size(); ++i) {
        const plan::CapacityBar& bar = is.bars[i];
        const char* shape = bar.shape == section::Shape::round ? "Round" : "Square";
        const double from = static_cast<double>(i) + 0.25;
        into.x_ticks.push_back({from + 0.25, shape});
        if (!bar.missing.empty()) {
            into.said = std::string(shape) + " bar: " + missing_words(bar.missing, shop, into);
            continue;
        }
        into.steps.push_back(
            {from, from + 0.5, mm(bar.size.fits), mm(bar.size.fits_up_to), mm(bar.size.least)});
        into.rows.push_back(row_of(shape, "Bar", bar.size, style));
    }
}

void read_points(const plan::Capacity& is,
                 const LimitsReadings::Parts& parts,
                 LimitsReading& into) {
    into.points.reserve(is.job.size());
    for (const plan::JobPoint& point : is.job) {
        const PartReading& part = *parts[static_cast<std::size_t>(point.part)];
        const OperationReading& operation =
            part.operations[static_cast<std::size_t>(point.operation)];
        double x = mm(point.x);
        for (std::size_t i = 0; i < is.bars.size(); ++i) {
            if (is.bars[i].shape == point.shape)
                x = static_cast<double>(i) + 0.5;
        }
        into.points.push_back({x,
                               mm(point.thickness),
                               mark_of(point.outcome),
                               point.same_grade,
                               point.part,
                               point.operation,
                               part.mark,
                               operation.title,
                               std::string(k_outcomes[static_cast<std::size_t>(point.outcome)]) +
                                   (point.same_grade ? "" : ", other metal")});
        into.other_grades = into.other_grades || !point.same_grade;
    }
    base::stable_sort(into.points,
                      [](const LimitPoint& a, const LimitPoint& b) { return a.mark > b.mark; });
}

void lay_axes(const plan::Capacity& is, PrintStyle style, LimitsReading& into) {
    double wide = 0;
    double high = 0;
    for (const LimitStep& step : into.steps) {
        wide = std::max(wide, step.to);
        high = std::max(high, step.up_to);
    }
    const double widest = wide > 0 ? wide * k_farthest : 1e9;
    const double highest = high > 0 ? high * k_farthest : 1e9;
    for (const LimitPoint& point : into.points) {
        wide = std::max(wide, std::min(point.x, widest));
        high = std::max(high, std::min(point.y, highest));
    }
    wide = wide > 0 ? wide : mm(inches(1.0)); // nothing fits, and nothing is asked for
    high = high > 0 ? high : mm(inches(1.0));
    into.wide = is.bars.empty() ? wide * k_head_room : static_cast<double>(is.bars.size());
    into.high = high * k_head_room;
    if (is.bars.empty())
        into.x_ticks = ticks(into.wide, style);
    into.y_ticks = ticks(into.high, style);
}

LimitsReading read(const base::Result<plan::Capacity>& answer,
                   const edit::Session& session,
                   const LimitsReadings::Parts& parts) {
    LimitsReading reading;
    if (!answer) {
        reading.problem = answer.refusal().reason;
        return reading;
    }
    const plan::Capacity& is = *answer;
    if (!is.missing.empty()) {
        reading.problem = missing_words(is.missing, session.shop(), reading);
        return reading;
    }
    const PrintStyle style = session.job().style;
    const char* unit = style.system == UnitSystem::inch ? ", in" : ", mm";
    reading.said = is.said;
    reading.axis = plan::capacity_axis_words(is.kind);
    if (is.bars.empty())
        reading.x_title = reading.axis + unit;
    reading.y_title = std::string(is.bars.empty() ? "thickness" : "size") + unit;
    if (is.kind == plan::CapacityKind::bend_length)
        reading.note = "Drawn for a bend of 90 degrees with the grain unknown: a part that says "
                       "its grain may take more.";
    read_envelope(is, session.shop(), style, reading);
    read_points(is, parts, reading);
    lay_axes(is, style, reading);
    reading.spoken = "Greatest " + reading.y_title + " over " + reading.axis + ": " +
                     std::to_string(reading.rows.size()) + " figures below, " +
                     std::to_string(reading.points.size()) + " operations of the job";
    return reading;
}

MachineReading read(const plan::MachineAnswer& answer, const edit::Session& session) {
    MachineReading reading;
    const equipment::Shop& shop = session.shop();
    const job::Job& job = session.job();
    reading.name = plan::machine_at(shop, answer.machine).name;
    if (reading.name.empty())
        reading.name = "Machine without a name";
    reading.words = base::capital(plan::machine_words(answer, job, shop));
    for (std::size_t i = 0; i < k_outcomes.size(); ++i) {
        if (answer.counts[i] == 0)
            continue;
        reading.mark = k_marks[i]; // the worst is the last
        reading.counts +=
            base::capital(k_outcomes[i]) + ": " + std::to_string(answer.counts[i]) + ". ";
    }
    if (!answer.does_whole_job && reading.mark == ui::Verdict::fits)
        reading.mark = ui::Verdict::not_known;
    for (const plan::Stop& stop : answer.stops) {
        if (reading.stops.size() == k_shown_stops)
            break;
        reading.stops.push_back({plan::stop_words(stop, answer, job, shop),
                                 mark_of(stop.outcome),
                                 stop.part,
                                 stop.operation});
    }
    if (answer.stops.size() > k_shown_stops)
        reading.more = "And " + std::to_string(answer.stops.size() - k_shown_stops) + " more.";
    return reading;
}

} // namespace

const std::vector<LimitCluster>&
LimitsReading::clusters(float pixels_wide, float pixels_high, ui::Rect apart) {
    if (kept.wide == pixels_wide && kept.high == pixels_high && kept.apart == apart)
        return kept.clusters;
    kept = {pixels_wide, pixels_high, apart, {}};
    std::vector<int> more;
    for (std::size_t i = 0; i < points.size(); ++i) {
        const LimitPoint& point = points[i];
        const float x = pixels_wide * static_cast<float>(std::min(1.0, point.x / wide));
        const float y = pixels_high * static_cast<float>(std::min(1.0, point.y / high));
        const auto near = std::find_if(
            kept.clusters.begin(), kept.clusters.end(), [&](const LimitCluster& cluster) {
                return std::fabs(cluster.x - x) < apart.w && std::fabs(cluster.y - y) < apart.h;
            });
        if (near == kept.clusters.end()) {
            kept.clusters.push_back(
                {x, y, i, point.label, point.label + ", " + point.words + ": " + point.outcome});
            more.push_back(0);
        } else {
            ++more[static_cast<std::size_t>(near - kept.clusters.begin())];
        }
    }
    for (std::size_t i = 0; i < more.size(); ++i) {
        if (more[i] == 0)
            continue;
        kept.clusters[i].label += " +" + std::to_string(more[i]);
        kept.clusters[i].spoken += ", and " + std::to_string(more[i]) + " more here";
    }
    return kept.clusters;
}

void LimitsReadings::refresh(const edit::Session& session) {
    if (revision_ == session.revision())
        return;
    revision_ = session.revision();
    place_ = plan::k_none;
    has_machines_ = false;
    mountings_ = plan::capacity_places(session.shop().machine);
    places_.clear();
    for (const plan::Mounting& place : mountings_)
        places_.push_back(plan::place_words(place, session.shop().machine));
    grade_ids_.clear();
    grades_.clear();
    for (const auto* list : {&session.job().own_grades, &session.catalog().grades.rows}) {
        for (const Grade& grade : *list) {
            if (std::find(grade_ids_.begin(), grade_ids_.end(), grade.id) != grade_ids_.end())
                continue; // the shop's own one of this name counts
            grade_ids_.push_back(grade.id);
            grades_.push_back(grade.name);
        }
    }
}

const std::vector<std::string>& LimitsReadings::places(const edit::Session& session) {
    refresh(session);
    return places_;
}

const std::vector<std::string>& LimitsReadings::grades(const edit::Session& session) {
    refresh(session);
    return grades_;
}

int LimitsReadings::grade_index(const edit::Session& session, const std::string& id) {
    refresh(session);
    const Grade* grade = job::find_grade(session.job(), session.catalog(), id);
    const auto at =
        std::find(grade_ids_.begin(), grade_ids_.end(), grade ? grade->id : std::string());
    return at == grade_ids_.end() ? plan::k_none : static_cast<int>(at - grade_ids_.begin());
}

const std::string& LimitsReadings::grade_id(int index) const {
    return grade_ids_[static_cast<std::size_t>(index)];
}

LimitsReading& LimitsReadings::of(const edit::Session& session,
                                  const Parts& parts,
                                  int place,
                                  const std::string& grade) {
    refresh(session);
    if (place_ == place && grade_ == grade)
        return reading_;
    place_ = place;
    grade_ = grade;
    reading_ = read(plan::capacity(mountings_[static_cast<std::size_t>(place)],
                                   grade,
                                   session.plan(),
                                   session.job(),
                                   session.shop(),
                                   session.catalog()),
                    session,
                    parts);
    return reading_;
}

const std::vector<MachineReading>& LimitsReadings::machines(const edit::Session& session) {
    refresh(session);
    if (!has_machines_) {
        has_machines_ = true;
        machines_.clear();
        for (const plan::MachineAnswer& answer :
             plan::compare_machines(session.job(), session.shop(), session.catalog()))
            machines_.push_back(read(answer, session));
    }
    return machines_;
}

} // namespace treadle::views
