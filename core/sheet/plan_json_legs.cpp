// Finished legs in the plan's JSON: millimetres, null for what is not known.

#include "plan/leg_spread.h"
#include "sheet/trial_sheet.h"

#include <cmath>

namespace treadle::sheet {

namespace {

void write_known(base::JsonWriter& json, const char* name, const std::optional<Length>& value) {
    json.key(name);
    if (value)
        json.number(std::round(quantity::to_millimetres(*value) * 1e6) / 1e6);
    else
        json.null();
}

} // namespace

void write_leg_spreads(base::JsonWriter& json,
                       const plan::PartPlan& part,
                       const job::Job& job,
                       const equipment::Shop& shop) {
    json.key("leg_spreads").begin_array();
    for (const plan::LegSpread& leg : plan::leg_spreads(part, job, shop)) {
        json.begin_object().field("leg", leg.leg);
        write_known(json, "nominal_mm", leg.nominal);
        write_known(json, "limit_mm", leg.limit);
        write_known(json, "worst_mm", leg.worst);
        write_known(json, "rss_mm", leg.rss);
        json.field("verdict", plan::spread_key(leg.verdict)).field("missing", leg.missing);
        json.end_object();
    }
    json.end_array();
}

} // namespace treadle::sheet
