#include "equipment/caution.h"

#include <algorithm>

namespace treadle::equipment {

namespace {

template <class T>
bool among(const std::vector<T>& list, const std::optional<T>& value) {
    return list.empty() || !value || std::find(list.begin(), list.end(), *value) != list.end();
}

/// Named stations and attachments are alternatives: a row may be meant for either.
bool at_tool(const Caution& caution, const CautionCase& at) {
    if (caution.stations.empty())
        return caution.attachments.empty() ||
               (at.attachment && among(caution.attachments, at.attachment)) ||
               (!at.attachment && !at.station);
    if (among(caution.stations, at.station))
        return true;
    return !caution.attachments.empty() && at.attachment &&
           among(caution.attachments, at.attachment);
}

} // namespace

bool applies(const Caution& caution, const CautionCase& at) {
    return !caution.general && among(caution.works, std::optional<Work>(at.work)) &&
           among(caution.metals, at.metal) && at_tool(caution, at);
}

std::string anchor_words(const Caution& caution) {
    if (caution.anchor.empty())
        return "common practice, no source";
    if (caution.evidence == base::Evidence::published)
        return caution.anchor;
    return caution.anchor + ", " + base::evidence_words(caution.evidence);
}

std::optional<base::Refusal> fault_in(const CautionTable& table) {
    for (std::size_t i = 0; i < table.size(); ++i) {
        const Caution& row = table[i];
        const std::string field = "cautions[" + std::to_string(i) + "]";
        if (row.id.empty() || row.words.empty())
            return base::Refusal{field, "A caution has a name and words.", ""};
        if (row.anchor.empty() != (row.evidence == base::Evidence::common_practice))
            return base::Refusal{field + ".anchor",
                                 "A paragraph stands behind a caution, or it is common practice.",
                                 row.id};
        for (std::size_t j = 0; j < i; ++j)
            if (table[j].id == row.id)
                return base::Refusal{field + ".id", "Two cautions have the same name.", row.id};
    }
    return std::nullopt;
}

} // namespace treadle::equipment
