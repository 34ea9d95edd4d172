// Whatever bytes come as a job file: archive.h.
//
// Nothing may crash, hang or be undefined. What was read is written, read back and written again
// to the identical bytes; a refusal names a field and a reason.

#include "archive/archive.h"

#include <cstdint>
#include <string>

#include "fuzz/must.h"

using namespace treadle;
using fuzz::must;

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
    const std::string bytes(data, data + size);
    const auto file = archive::read_file(bytes);
    if (!file.ok()) {
        fuzz::check_refusal(file.refusal());
        return 0;
    }
    const std::string written = archive::write_file(file->job, file->shop);
    const auto again = archive::read_file(written);
    must(again.ok());
    must(archive::write_file(again->job, again->shop) == written);
    return 0;
}
