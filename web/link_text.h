// Jobs in addresses, as the page meets them: the one that it was opened with, and those it gives
// away. Nothing here touches what is stored: opening a link is somebody's decision.

#pragma once

#include "archive/archive.h"
#include "archive/link.h"
#include "base/result.h"
#include "sheet/worksheet.h"

#include <optional>
#include <string_view>

namespace treadle::web {

/// What the page's own address asks for. Neither file nor refusal: no job is meant.
struct InAddress {
    std::optional<archive::File> file;
    std::optional<base::Refusal> refusal; ///< a job was meant, and why it cannot be opened
    archive::LinkWishes wishes;
};
[[nodiscard]] InAddress in_address(std::string_view fragment);

/// The code on the sheet. `page` is the page's own address without its fragment; one that is no
/// address on the net (a file that was opened) puts nothing on the sheet.
void put_link(sheet::SheetOptions& options,
              std::string_view page,
              const job::Job& job,
              const equipment::Shop& shop);

} // namespace treadle::web
