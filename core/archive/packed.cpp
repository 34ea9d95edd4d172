#include "archive/packed.h"

#define ZLIB_CONST
#include <zlib.h>

#include <algorithm>
#include <array>

namespace treadle::archive {

namespace {

using base::Refusal;

constexpr int k_raw_window = -15; ///< the largest, and no header
constexpr int k_most_memory = 9;
constexpr std::size_t k_block = 16384;

const Bytef* bytes_of(std::string_view text) { return reinterpret_cast<const Bytef*>(text.data()); }

uInt size_of(std::string_view text) { return static_cast<uInt>(text.size()); }

Refusal damaged() { return {"packed", "This was cut short or changed on the way.", ""}; }

Refusal too_long(std::size_t most) {
    return {"packed",
            "What is packed in this is larger than anything that is sent this way.",
            "at most " + std::to_string(most) + " bytes"};
}

/// Everything that comes out of the stream, at most `most` bytes and one more.
int inflate_all(z_stream& stream, std::size_t most, std::string& out) {
    std::array<char, k_block> block;
    int state = Z_OK;
    while (state == Z_OK && out.size() <= most) {
        const std::size_t room = std::min(block.size(), most + 1 - out.size());
        stream.next_out = reinterpret_cast<Bytef*>(block.data());
        stream.avail_out = static_cast<uInt>(room);
        state = inflate(&stream, Z_NO_FLUSH);
        out.append(block.data(), room - stream.avail_out);
    }
    return state;
}

} // namespace

std::string pack(std::string_view bytes, std::string_view dictionary) {
    z_stream stream{};
    const int begun = deflateInit2(
        &stream, Z_BEST_COMPRESSION, Z_DEFLATED, k_raw_window, k_most_memory, Z_DEFAULT_STRATEGY);
    TREADLE_EXPECT(begun == Z_OK);
    if (!dictionary.empty())
        TREADLE_EXPECT(deflateSetDictionary(&stream, bytes_of(dictionary), size_of(dictionary)) ==
                       Z_OK);
    std::string out(deflateBound(&stream, bytes.size()), '\0');
    stream.next_in = bytes_of(bytes);
    stream.avail_in = size_of(bytes);
    stream.next_out = reinterpret_cast<Bytef*>(out.data());
    stream.avail_out = size_of(out);
    TREADLE_EXPECT(deflate(&stream, Z_FINISH) == Z_STREAM_END);
    out.resize(out.size() - stream.avail_out);
    deflateEnd(&stream);
    return out;
}

base::Result<std::string>
unpack(std::string_view packed, std::string_view dictionary, std::size_t most) {
    z_stream stream{};
    TREADLE_EXPECT(inflateInit2(&stream, k_raw_window) == Z_OK);
    if (!dictionary.empty())
        TREADLE_EXPECT(inflateSetDictionary(&stream, bytes_of(dictionary), size_of(dictionary)) ==
                       Z_OK);
    stream.next_in = bytes_of(packed);
    stream.avail_in = size_of(packed);
    std::string out;
    const int state = inflate_all(stream, most, out);
    const bool whole = state == Z_STREAM_END && stream.avail_in == 0;
    inflateEnd(&stream);
    if (out.size() > most)
        return too_long(most);
    if (!whole)
        return damaged();
    return out;
}

std::uint32_t check_sum(std::string_view bytes) {
    return static_cast<std::uint32_t>(adler32(1, bytes_of(bytes), size_of(bytes)));
}

} // namespace treadle::archive
