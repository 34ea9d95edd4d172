#include "link_text.h"

#include <utility>

namespace treadle::web {

InAddress in_address(std::string_view fragment) {
    InAddress asked;
    asked.wishes = archive::read_wishes(fragment);
    if (!archive::holds_job(fragment))
        return asked;
    auto link = archive::read_link(fragment);
    if (link)
        asked.file = std::move(link).value().file;
    else
        asked.refusal = link.refusal();
    return asked;
}

void put_link(sheet::SheetOptions& options,
              std::string_view page,
              const job::Job& job,
              const equipment::Shop& shop) {
    const auto fragment = archive::write_link(job, shop);
    const auto address = archive::link_address(page, fragment ? *fragment : "");
    if (!address)
        return;
    options.link_page = page;
    options.link = fragment ? *address : "";
}

} // namespace treadle::web
