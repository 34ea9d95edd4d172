// Files stay small and say at the top what they are for.

#include <doctest/doctest.h>

#include "architecture/tree.h"

using namespace treadle::architecture;

namespace {

std::size_t longest(const SourceFile& file) {
    if (file.header())
        return 250;
    if (begins_with(file.path, "core/"))
        return 400;
    if (begins_with(file.path, "tests/"))
        return 500;
    return 450;
}

} // namespace

TEST_CASE("no file is longer than its kind may be") {
    int checked = 0;
    for (const auto& [path, file] : tree()) {
        ++checked;
        if (file.lines.size() > longest(file))
            FAIL_CHECK(path << " has " << file.lines.size() << " lines, at most " << longest(file));
    }
    CHECK(checked > 100);
}

TEST_CASE("a header begins with a line that says what it is for, and guards itself") {
    int checked = 0;
    for (const auto& [path, file] : tree()) {
        if (!file.header())
            continue;
        ++checked;
        const std::string first = file.lines.empty() ? std::string{} : file.lines.front();
        if (!begins_with(first, "// ") || first.size() < 20)
            FAIL_CHECK(path << " does not begin with a comment that says what it is for");
        if (file.text.find("\n#pragma once\n") == std::string::npos)
            FAIL_CHECK(path << " has no #pragma once");
    }
    CHECK(checked > 40);
}

TEST_CASE("nothing is left for later in the sources") {
    // Put together here, so that this file does not find itself.
    const std::string later[] = {
        std::string("TO") + "DO", std::string("FIX") + "ME", std::string("XX") + "X:"};
    for (const auto& [path, file] : tree()) {
        for (const std::string& word : later) {
            if (file.text.find(word) != std::string::npos)
                FAIL_CHECK(path << " says " << word);
        }
    }
}
