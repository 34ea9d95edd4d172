// The link to a job file, and the job file that is in it, as the page makes them.
//
//   print_link FILE.json

#include "archive/archive.h"
#include "archive/link.h"

#include <cstdio>
#include <fstream>
#include <iterator>
#include <string>

using namespace treadle;

int main(int count, char** arguments) {
    if (count != 2)
        return 2;
    std::ifstream in(arguments[1], std::ios::binary);
    const std::string bytes{std::istreambuf_iterator<char>(in), {}};
    const auto file = archive::read_file(bytes);
    if (!file)
        return 1;
    const auto link = archive::write_link(file->job, file->shop);
    if (!link)
        return 1;
    const auto back = archive::read_link(*link);
    if (!back)
        return 1;
    std::printf(
        "%s\n%s", link->c_str(), archive::write_file(back->file.job, back->file.shop).c_str());
    return 0;
}
