// Everything that a command about a job file needs.

#pragma once

#include "archive/archive.h"

#include <string>

namespace treadle::cli {

struct Opened {
    archive::File file;
    job::Catalog catalog;
};
/// Refuses what files.h and the archive refuse.
[[nodiscard]] base::Result<Opened> open_job(const std::string& path);

} // namespace treadle::cli
