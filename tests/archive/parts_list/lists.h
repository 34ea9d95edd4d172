// Parts lists as the tests of this folder take them.

#pragma once

#include "archive/archive.h"
#include "archive/parts_list.h"

#include <doctest/doctest.h>

#include <string>
#include <string_view>

namespace treadle::parts_list_test {

inline job::Catalog catalog() {
    auto read = archive::read_catalog();
    REQUIRE(read.ok());
    return std::move(read).value();
}

inline archive::Table table(std::string_view bytes) {
    auto read = archive::read_table(bytes);
    REQUIRE_MESSAGE(read.ok(), (read.ok() ? "" : read.refusal().reason));
    return std::move(read).value();
}

/// With the mapping that is proposed.
inline archive::ReadParts parts(std::string_view bytes,
                                const job::Catalog& catalog,
                                const archive::ListOptions& options = {}) {
    const archive::Table cells = table(bytes);
    auto read =
        archive::read_parts(cells, archive::propose_mapping(cells, catalog), options, catalog);
    REQUIRE_MESSAGE(read.ok(), (read.ok() ? "" : read.refusal().reason));
    return std::move(read).value();
}

} // namespace treadle::parts_list_test
