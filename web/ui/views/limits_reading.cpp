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

constexpr std::size_t k_shown_stops = 4;

constexpr std::array<const char*, 4> k_outcomes = {
    "fits", "fits only with a certificate", "cannot be said", "does not fit"};

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

void read_rows(const plan::Capacity& is,
               const equipment::Shop& shop,
               PrintStyle style,
               LimitsReading& into) {
    for (const plan::CapacityPoint& at : is.points)
        into.rows.push_back(
            row_of(quantity::print_bare(at.x, style), into.chart.axis, at.thickness, style));
    for (const plan::CapacityBar& bar : is.bars) {
        const char* shape = bar.shape == section::Shape::round ? "Round" : "Square";
        if (bar.missing.empty())
            into.rows.push_back(row_of(shape, "Bar", bar.size, style));
        else
            into.said = std::string(shape) + " bar: " + missing_words(bar.missing, shop, into);
    }
}

void read_points(const plan::Capacity& is,
                 const LimitsReadings::Parts& parts,
                 LimitsReading& into) {
    into.points.reserve(is.job.size());
    for (std::size_t i = 0; i < is.job.size(); ++i) {
        const plan::JobPoint& point = is.job[i];
        const PartReading& part = *parts[static_cast<std::size_t>(point.part)];
        const OperationReading& operation =
            part.operations()[static_cast<std::size_t>(point.operation)];
        into.points.push_back({into.chart.job[i],
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
    reading.said = is.said;
    reading.chart = sheet::limits_chart(is, style);
    if (is.kind == plan::CapacityKind::bend_length)
        reading.note = "Drawn for a bend of 90 degrees with the grain unknown: a part that says "
                       "its grain may take more.";
    read_rows(is, session.shop(), style, reading);
    read_points(is, parts, reading);
    reading.spoken = reading.chart.description + ": " + std::to_string(reading.rows.size()) +
                     " figures below, " + std::to_string(reading.points.size()) +
                     " operations of the job";
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
        reading.mark = mark_of(static_cast<plan::Outcome>(i)); // the worst is the last
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
        const float x = pixels_wide * static_cast<float>(point.at.along);
        const float y = pixels_high * static_cast<float>(point.at.up);
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
