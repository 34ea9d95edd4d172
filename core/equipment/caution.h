// Cautions by what is done, in which metal, on which station or attachment.
//
// The rows are data (assets/cautions.json); here is what a row says, and for which work it is
// meant. A row names a paragraph that stands behind it, or says that it is the trade's own.
//
// Careful  a metal or tool that is not known gets every row that any metal or tool would get

#pragma once

#include "base/formula_card.h"
#include "equipment/shop.h"

#include <optional>
#include <string>
#include <vector>

namespace treadle::equipment {

enum class Work { cut, punch, notch, bend, saddle };

struct Caution {
    std::string id;
    std::string words;
    std::string anchor; ///< "29 CFR 1910.212(a)(1)"; empty: common practice, no source
    base::Evidence evidence = base::Evidence::common_practice; ///< how the anchor was read
    bool general = false; ///< for every job on any machine, said once
    int least_operators = 1;
    // Empty lists: whichever it is.
    std::vector<Work> works;
    std::vector<material::Family> metals;
    std::vector<StationKind> stations;
    std::vector<AttachmentKind> attachments;
};
using CautionTable = std::vector<Caution>;

/// One stroke's circumstances. A tool bolted to a station is at both.
struct CautionCase {
    Work work = Work::cut;
    std::optional<material::Family> metal;
    std::optional<StationKind> station;
    std::optional<AttachmentKind> attachment;
};
/// Whether a row that is not general is meant for this stroke.
[[nodiscard]] bool applies(const Caution& caution, const CautionCase& at);

/// "29 CFR 1910.212(a)(1), from memory", "common practice, no source".
[[nodiscard]] std::string anchor_words(const Caution& caution);

/// Every row has words, and an id that no other has; an anchor where its evidence is one.
[[nodiscard]] std::optional<base::Refusal> fault_in(const CautionTable& table);

} // namespace treadle::equipment
