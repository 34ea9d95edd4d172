#include "cli/files.h"

#include <array>
#include <cerrno>
#include <cstdio>
#include <cstring>
#include <filesystem>
#include <memory>

namespace treadle::cli {

namespace {

using base::Refusal;

struct Closer {
    void operator()(std::FILE* file) const { std::fclose(file); }
};
using OpenFile = std::unique_ptr<std::FILE, Closer>;

} // namespace

base::Result<std::string> read_bytes(const std::string& path, std::size_t most) {
    std::error_code ignored;
    if (std::filesystem::is_directory(path, ignored))
        return Refusal{"file", "This is a folder, not a file.", path};
    const OpenFile file(std::fopen(path.c_str(), "rb"));
    if (!file)
        return Refusal{"file",
                       errno == ENOENT ? "There is no such file." : "The file cannot be opened.",
                       path};
    std::string bytes;
    std::array<char, 65536> block;
    std::size_t got = 0;
    while (bytes.size() <= most &&
           (got = std::fread(block.data(), 1, block.size(), file.get())) > 0)
        bytes.append(block.data(), got);
    if (std::ferror(file.get()) != 0)
        return Refusal{"file", "The file cannot be read to its end.", path};
    return bytes;
}

std::optional<Refusal>
write_bytes(const std::string& path, std::string_view bytes, const std::string& source) {
    std::error_code fault;
    if (std::filesystem::equivalent(path, source, fault))
        return Refusal{"out", "This would overwrite the job itself.", path};
    const std::string beside = path + ".part";
    OpenFile file(std::fopen(beside.c_str(), "wb"));
    if (!file)
        return Refusal{"out", "The file cannot be written there.", path};
    const bool all = std::fwrite(bytes.data(), 1, bytes.size(), file.get()) == bytes.size();
    const bool closed = std::fclose(file.release()) == 0;
    if (all && closed)
        std::filesystem::rename(beside, path, fault);
    if (!all || !closed || fault) {
        std::error_code ignored;
        std::filesystem::remove(beside, ignored);
        return Refusal{"out", "The file cannot be written there.", path};
    }
    return std::nullopt;
}

bool say(std::string_view text) {
    return std::fwrite(text.data(), 1, text.size(), stdout) == text.size() &&
           std::fflush(stdout) == 0;
}

} // namespace treadle::cli
