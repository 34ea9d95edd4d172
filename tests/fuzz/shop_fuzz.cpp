// Whatever bytes come as the shop of a job file without parts: archive.h.
//
// The first byte says the units that the file is written back in. Nothing may crash, hang or be
// undefined. What was read is written, read back and written again to the identical bytes.

#include "archive/archive.h"

#include <cstdint>
#include <string>

#include "fuzz/must.h"

using namespace treadle;
using fuzz::must;

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
    if (size == 0)
        return 0;
    std::string bytes = R"({"format":"treadle-job","version":1,"units":")";
    bytes += data[0] % 2 == 0 ? "inch" : "metric";
    bytes += R"(","name":"a","parts":[],"shop":)";
    bytes.append(data + 1, data + size);
    bytes += '}';
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
