#include "archive/shelf.h"

#include "archive/json_reader.h"
#include "quantity/input_limits.h"

#include <optional>
#include <set>

namespace treadle::archive {

template <>
struct Words<ShelfKind> {
    static constexpr Word<ShelfKind> k_list[] = {
        {"job", ShelfKind::job},
        {"shop", ShelfKind::shop},
        {"lesson", ShelfKind::lesson},
    };
};

namespace {

using base::Refusal;
using Fault = std::optional<Refusal>;

bool plain(char c) {
    return (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z') || (c >= '0' && c <= '9') || c == '-' ||
           c == '_' || c == '.';
}

Fault file_fault(std::string_view file) {
    const auto refuse = [](const char* reason) {
        return Refusal{"file", reason, "a name like lessons/first.json, beside the page"};
    };
    if (file.empty() || file.size() > k_longest_shelf_name)
        return refuse("The name of the file is missing or too long.");
    for (std::size_t from = 0; from <= file.size();) {
        const std::size_t slash = std::min(file.find('/', from), file.size());
        const std::string_view piece = file.substr(from, slash - from);
        if (piece.empty() || piece == "." || piece == "..")
            return refuse("The name of the file leads elsewhere.");
        for (const char c : piece)
            if (!plain(c))
                return refuse("The name of the file holds a sign that it may not.");
        from = slash + 1;
    }
    constexpr std::string_view k_end = ".json";
    if (file.size() <= k_end.size() || file.substr(file.size() - k_end.size()) != k_end)
        return refuse("The name of the file does not end in .json.");
    return std::nullopt;
}

Fault entry_fault(const ShelfEntry& entry, const std::set<std::string>& files) {
    if (auto fault = quantity::text_fault(entry.title, "title", quantity::Presence::required))
        return fault;
    if (auto fault = quantity::text_fault(
            entry.note, "note", quantity::Presence::optional, quantity::k_longest_note))
        return fault;
    if (auto fault = file_fault(entry.file))
        return fault;
    if (files.count(entry.file) > 0)
        return Refusal{"file", "Another entry has this file.", entry.file};
    return std::nullopt;
}

/// One entry by itself, so that a fault in it is its own.
base::Result<ShelfEntry> entry_in(const Tree& tree, std::uint32_t index) {
    Reading reading{tree, std::nullopt};
    const Place at(reading, index);
    ShelfEntry entry;
    Members members(at);
    members.need("kind", entry.kind).need("title", entry.title).may("note", entry.note);
    members.need("file", entry.file);
    members.finish();
    if (reading.refusal)
        return std::move(*reading.refusal);
    return entry;
}

void take_entries(const Tree& tree, const Node& list, Shelf& shelf) {
    std::set<std::string> files;
    std::uint32_t child = list.first;
    for (std::uint32_t i = 0; i < list.size; ++i, child = tree.nodes[child].next) {
        auto entry = entry_in(tree, child);
        Fault fault = entry.ok() ? entry_fault(*entry, files) : Fault(entry.refusal());
        // The root's field of an entry that is no object is "file": the entry itself.
        if (fault && !entry.ok() && tree.nodes[child].kind != Kind::object)
            fault->field = quantity::item("entries", i);
        else if (fault)
            fault = quantity::inside("entries", i, *fault);
        if (fault) {
            shelf.refused.push_back(std::move(*fault));
            continue;
        }
        files.insert(entry->file);
        shelf.entries.push_back(std::move(entry).value());
    }
}

/// A list whose entries are read one by one, afterwards.
struct Entries {
    const Node* list = nullptr;
};

} // namespace

static void read_value(const Place& at, Entries& out) {
    if (at.must_be(Kind::list))
        out.list = &at.node();
}

bool is_shelf_file(std::string_view name) { return !file_fault(name); }

const char* shelf_kind_word(ShelfKind kind) { return word_for(kind); }

base::Result<Shelf> read_shelf(std::string_view bytes) {
    if (bytes.size() > k_largest_shelf)
        return Refusal{"file", "The file is larger than any shelf.", "at most 256 KB"};
    const base::Result<Tree> tree = read_tree(bytes);
    if (!tree.ok())
        return tree.refusal();
    Reading reading{tree.value(), std::nullopt};
    const Place root(reading, 0);
    Members members(root);
    std::string format;
    int version = 0;
    Entries entries;
    members.need("format", format);
    if (!root.failed() && format != "treadle-shelf")
        root.refuse("This is not a shelf of Treadle.", "\"treadle-shelf\"", "format");
    members.need("version", version);
    if (!root.failed() && (version < k_oldest_version || version > k_shelf_version))
        root.refuse(version > k_shelf_version
                        ? "This shelf was made for a newer Treadle; it was not read."
                        : "There was never such a version of the format.",
                    "this one reads up to version " + std::to_string(k_shelf_version),
                    "version");
    members.need("entries", entries);
    members.finish();
    if (!root.failed() && entries.list->size > k_most_shelf_entries)
        root.refuse("There are more entries than a shelf may hold.",
                    "at most " + std::to_string(k_most_shelf_entries),
                    "entries");
    if (reading.refusal)
        return std::move(*reading.refusal);
    Shelf shelf;
    take_entries(tree.value(), *entries.list, shelf);
    return shelf;
}

} // namespace treadle::archive
