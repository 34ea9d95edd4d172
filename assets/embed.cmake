# cmake -DROOT=<assets folder> -DOUTPUT=<file.cpp> -DFILES=<a|b|c, relative to ROOT> -P embed.cmake
#
# Byte arrays, not string literals: compilers limit the length of a literal, never of an array.
# CMake alone, so that neither build asks for another language.
string(REPLACE "|" ";" files "${FILES}")
set(arrays "")
set(rows "")
set(index 0)
foreach(path IN LISTS files)
  file(READ "${ROOT}/${path}" hex HEX)
  string(REGEX REPLACE "(..)" "0x\\1," bytes "${hex}")
  # A line of a megabyte is hard on tools that read the file. 32 bytes a line.
  string(REGEX REPLACE "(................................................................................................................................................................)" "\\1\n" bytes "${bytes}")
  string(APPEND arrays "const unsigned char k_file_${index}[] = {\n${bytes}0x00};\n")
  string(APPEND rows "    {\"${path}\", k_file_${index}, sizeof(k_file_${index}) - 1},\n")
  math(EXPR index "${index} + 1")
endforeach()

file(WRITE "${OUTPUT}" "// Made by assets/embed.cmake at build time.
#include \"assets/embedded.h\"

#include <cstddef>

namespace treadle::assets {
namespace {

${arrays}
struct File {
    std::string_view path;
    const unsigned char* bytes;
    std::size_t size; // without the closing zero
};
const File k_files[] = {
${rows}};

} // namespace

std::optional<std::string_view> embedded(std::string_view path) {
    for (const File& file : k_files) {
        if (file.path == path)
            return std::string_view(reinterpret_cast<const char*>(file.bytes), file.size);
    }
    return std::nullopt;
}

std::vector<std::string_view> embedded_under(std::string_view folder) {
    std::vector<std::string_view> paths;
    for (const File& file : k_files) {
        if (file.path.substr(0, folder.size()) == folder)
            paths.push_back(file.path);
    }
    return paths;
}

} // namespace treadle::assets
")
