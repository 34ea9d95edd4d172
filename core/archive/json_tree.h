// Bytes to a tree of values: private to this room, and the only place where the JSON library works.
//
// The library's own tree is not used: it keeps the last of two equal keys without a word, and
// copies. Here all text sits in one string, and a value is forty bytes.

#pragma once

#include "base/result.h"

#include <cstdint>
#include <string>
#include <string_view>
#include <vector>

namespace treadle::archive {

enum class Kind : std::uint8_t { null, truth, number, text, list, object };

/// No value: index zero is the root, which is nobody's child.
inline constexpr std::uint32_t k_no_value = 0;

struct Node {
    Kind kind = Kind::null;
    bool truth = false;
    std::uint32_t key_at = 0; ///< members only
    std::uint32_t key_size = 0;
    std::uint32_t next = k_no_value; ///< next sibling
    std::uint32_t first = 0;         ///< list, object: first child; text: where it begins
    std::uint32_t size = 0;          ///< list, object: number of children; text: bytes
    double number = 0.0;
};

struct Tree {
    std::vector<Node> nodes;
    std::string text;

    [[nodiscard]] std::string_view key_of(const Node& node) const {
        return std::string_view(text).substr(node.key_at, node.key_size);
    }
    [[nodiscard]] std::string_view text_of(const Node& node) const {
        return std::string_view(text).substr(node.first, node.size);
    }
};

/// More members than any object of ours has. Keeps the look for equal keys short as well.
inline constexpr std::uint32_t k_most_members = 512;
/// About 80 MB of tree; a job of 10,000 parts has a tenth of that.
inline constexpr std::size_t k_most_values = 1'000'000;

/// Refuses what is too large, too deep, not JSON, not UTF-8, or says one thing twice. Depth and
/// number of values are counted while reading, before anything is built on them.
[[nodiscard]] base::Result<Tree> read_tree(std::string_view bytes);

} // namespace treadle::archive
