// Whatever bytes come as a link to a job: link.h, packed.h, short_words.h, base64url.h.
//
// The first byte says what they are: the text of an address, a packed file with a right sum, a
// stream to unpack, or text in short words. Nothing may crash, hang, be undefined or grow past its
// limit; a job that was read is written as a link that leads to the same job.

#include "archive/base64url.h"
#include "archive/link.h"
#include "archive/packed.h"
#include "archive/short_words.h"

#include <cstdint>
#include <string>

#include "fuzz/must.h"

using namespace treadle;
using fuzz::check_refusal;
using fuzz::must;

namespace {

void addresses(const std::string& text) {
    const auto link = archive::read_link(text);
    if (!link.ok())
        return check_refusal(link.refusal());
    must(archive::holds_job(text));
    const auto again = archive::write_link(link->file.job, link->file.shop, link->wishes);
    if (!again.ok())
        return check_refusal(again.refusal());
    const auto same = archive::read_link(*again);
    must(same.ok());
    must(archive::write_file(same->file.job, same->file.shop) ==
         archive::write_file(link->file.job, link->file.shop));
    must(same->wishes.view == link->wishes.view && same->wishes.step == link->wishes.step);
}

void packed(const std::string& bytes) {
    const std::uint32_t sum = archive::check_sum(bytes);
    std::string with_sum;
    for (const unsigned shift : {24U, 16U, 8U, 0U})
        with_sum += static_cast<char>((sum >> shift) & 255U);
    const std::string text = archive::to_base64url(with_sum + bytes);
    must(archive::from_base64url(text) == with_sum + bytes);
    addresses("j=1." + text);
}

void streams(const std::string& bytes) {
    constexpr std::size_t k_most = 4096;
    const auto out = archive::unpack(bytes, archive::link_dictionary().text, k_most);
    if (!out.ok())
        return check_refusal(out.refusal());
    must(out->size() <= k_most);
}

void in_short(const std::string& bytes) {
    constexpr std::size_t k_most = 65536;
    const auto& words = archive::link_dictionary().words;
    const auto json = archive::lengthened(bytes, words, k_most);
    if (!json.ok())
        return check_refusal(json.refusal());
    must(json->size() <= k_most);
    const auto again = archive::shortened(*json, words);
    must(again.ok());
    const auto same = archive::lengthened(*again, words, k_most);
    must(same.ok() && *same == *json);
}

} // namespace

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
    if (size == 0)
        return 0;
    const std::string bytes(data + 1, data + size);
    switch (data[0] % 4) {
    case 0:
        addresses(bytes);
        break;
    case 1:
        packed(bytes);
        break;
    case 2:
        streams(bytes);
        break;
    default:
        in_short(bytes);
    }
    return 0;
}
