#include "cli/opened.h"

#include "cli/files.h"

namespace treadle::cli {

base::Result<Opened> open_job(const std::string& path) {
    const auto bytes = read_bytes(path);
    if (!bytes.ok())
        return bytes.refusal();
    auto file = archive::read_file(bytes.value());
    if (!file.ok())
        return file.refusal();
    auto catalog = archive::read_catalog();
    if (!catalog.ok())
        return catalog.refusal();
    return Opened{std::move(file).value(), std::move(catalog).value()};
}

} // namespace treadle::cli
