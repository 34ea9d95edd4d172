// assets/sources.json: what stands behind the formulas and tables.

#include "archive/archive.h"
#include "archive/json_tree.h"

namespace treadle::archive {

namespace {

std::string member(const Tree& tree, const Node& object, std::string_view key) {
    for (std::uint32_t at = object.first; at != k_no_value; at = tree.nodes[at].next) {
        const Node& node = tree.nodes[at];
        if (tree.key_of(node) == key && node.kind == Kind::text)
            return std::string(tree.text_of(node));
    }
    return {};
}

/// An edition that only repeats the year is said once.
std::string title_of(const Tree& tree, const Node& entry) {
    std::string title = member(tree, entry, "title");
    if (title.empty())
        return title;
    const std::string edition = member(tree, entry, "edition");
    const std::string year = member(tree, entry, "year");
    if (!edition.empty())
        title += ", " + edition;
    if (!year.empty() && edition.find(year) == std::string::npos)
        title += ", " + year;
    return title;
}

} // namespace

base::Result<std::vector<Source>> read_sources(std::string_view bytes) {
    const auto tree = read_tree(bytes);
    if (!tree)
        return tree.refusal();
    const Node& root = tree->nodes.front();
    if (root.kind != Kind::object)
        return base::Refusal{"", "The list of sources is not an object.", ""};
    std::vector<Source> sources;
    for (std::uint32_t at = root.first; at != k_no_value; at = tree->nodes[at].next) {
        const Node& entry = tree->nodes[at];
        Source source{std::string(tree->key_of(entry)), "", ""};
        if (entry.kind == Kind::object)
            source = {source.key, title_of(*tree, entry), member(*tree, entry, "how_read")};
        if (source.title.empty())
            return base::Refusal{source.key + ".title", "This source has no title.", ""};
        sources.push_back(std::move(source));
    }
    return sources;
}

} // namespace treadle::archive
