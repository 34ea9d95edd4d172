// Twenty thousand damaged copies of the demo job: each is read or refused, none does anything else.

#include "archive/archive.h"
#include "archive/demo_files.h"

#include <doctest/doctest.h>

#include <random>

using namespace treadle;

namespace {

constexpr unsigned k_seed = 20260727;
constexpr int k_copies = 20'000;

/// One to four changes: a byte, a piece gone, a piece twice, the end cut off.
std::string damaged(std::string bytes, std::mt19937& random) {
    const auto below = [&](std::size_t limit) { return random() % (limit == 0 ? 1 : limit); };
    const std::size_t changes = 1 + below(4);
    for (std::size_t i = 0; i < changes && !bytes.empty(); ++i) {
        const std::size_t at = below(bytes.size());
        const std::size_t size = below(12);
        switch (below(6)) {
        case 0:
            bytes.erase(at, size);
            break;
        case 1:
            bytes.insert(at, bytes.substr(at, size));
            break;
        case 2:
            if (below(8) == 0)
                bytes.resize(at);
            break;
        case 3: // digits and marks that keep the text readable as JSON more often
            bytes[at] = "0123456789-./\"{}[],: ein"[below(23)];
            break;
        default:
            bytes[at] = static_cast<char>(below(256));
        }
    }
    return bytes;
}

} // namespace

TEST_CASE("a damaged file is read whole or refused with field and reason") {
    MESSAGE("seed " << k_seed);
    std::mt19937 random(k_seed);
    const std::string demos[] = {archive_test::demo("demo-inch.json"),
                                 archive_test::demo("demo-metric.json")};
    int read = 0;
    int refused = 0;
    int wordless = 0;
    int changed_when_rewritten = 0;
    for (int i = 0; i < k_copies; ++i) {
        const auto file = archive::read_file(damaged(demos[i % 2], random));
        if (!file.ok()) {
            ++refused;
            if (file.refusal().field.empty() || file.refusal().reason.empty())
                ++wordless;
            continue;
        }
        ++read;
        // What was taken is sound: it can be written, and read again to the same bytes.
        const std::string once = archive::write_file(file->job, file->shop);
        const auto again = archive::read_file(once);
        if (!again.ok() || archive::write_file(again->job, again->shop) != once)
            ++changed_when_rewritten;
    }
    CHECK(wordless == 0);
    CHECK(changed_when_rewritten == 0);
    CHECK(refused > k_copies / 2);
    CHECK(read > 0);
}
