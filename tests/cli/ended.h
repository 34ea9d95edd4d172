// The program run as a shell runs it, and a folder for the files it is given.

#pragma once

#include <doctest/doctest.h>
#include <sys/wait.h>
#include <unistd.h>

#include <array>
#include <cstdio>
#include <filesystem>
#include <fstream>
#include <iterator>
#include <string>

namespace treadle::cli_test {

struct Ended {
    int code = -1;
    std::string out;
};

/// `words` go through the shell: paths in this tree need no quotes.
inline Ended run(const std::string& words) {
    Ended ended;
    std::FILE* pipe = ::popen((TREADLE_PROGRAM " " + words).c_str(), "r");
    REQUIRE(pipe != nullptr);
    std::array<char, 4096> block;
    std::size_t got = 0;
    while ((got = std::fread(block.data(), 1, block.size(), pipe)) > 0)
        ended.out.append(block.data(), got);
    const int status = ::pclose(pipe);
    ended.code = WIFEXITED(status) ? WEXITSTATUS(status) : -1;
    return ended;
}

/// A folder of its own for each test case, gone afterwards.
struct Folder {
    std::filesystem::path path =
        std::filesystem::temp_directory_path() / ("treadle-test-" + std::to_string(::getpid()));
    Folder() { std::filesystem::create_directories(path); }
    ~Folder() { std::filesystem::remove_all(path); }
    Folder(const Folder&) = delete;
    Folder& operator=(const Folder&) = delete;

    [[nodiscard]] std::string file(const std::string& name, const std::string& bytes) const {
        std::ofstream(path / name, std::ios::binary) << bytes;
        return (path / name).string();
    }
    [[nodiscard]] std::size_t files() const {
        return static_cast<std::size_t>(std::distance(std::filesystem::directory_iterator(path),
                                                      std::filesystem::directory_iterator{}));
    }
};

inline std::string content(const std::filesystem::path& path) {
    std::ifstream file(path, std::ios::binary);
    return {std::istreambuf_iterator<char>(file), {}};
}

} // namespace treadle::cli_test
