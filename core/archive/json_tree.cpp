#include "archive/json_tree.h"

#include "archive/archive.h"

#include <nlohmann/json.hpp>

#include <algorithm>
#include <optional>
#include <utility>

namespace treadle::archive {

namespace {

using base::Refusal;
using nlohmann::json;

/// Where a fault in the text is, as an editor counts.
std::string line_and_column(std::string_view bytes, std::size_t position) {
    const std::string_view before = bytes.substr(0, std::min(position, bytes.size()));
    const auto line = 1 + std::count(before.begin(), before.end(), '\n');
    const std::size_t line_start = before.rfind('\n') + 1; // npos + 1 is 0
    const std::size_t column = std::max<std::size_t>(before.size() - line_start, 1);
    return "line " + std::to_string(line) + ", column " + std::to_string(column);
}

/// Takes the library's events one by one. Any `false` stops the reading.
class Builder {
public:
    explicit Builder(std::string_view bytes) : bytes_(bytes) {
        tree_.text.reserve(bytes.size());
        tree_.nodes.reserve(std::min(bytes.size() / 10 + 16, k_most_values));
    }

    bool null() { return add(Node{}); }
    bool boolean(bool value) {
        Node node;
        node.kind = Kind::truth;
        node.truth = value;
        return add(node);
    }
    bool number_integer(json::number_integer_t value) {
        return number_float(static_cast<double>(value), {});
    }
    bool number_unsigned(json::number_unsigned_t value) {
        return number_float(static_cast<double>(value), {});
    }
    bool number_float(json::number_float_t value, const std::string& /*digits*/) {
        Node node;
        node.kind = Kind::number;
        node.number = value;
        return add(node);
    }
    bool string(std::string& value) {
        Node node;
        node.kind = Kind::text;
        std::tie(node.first, node.size) = keep(value);
        return add(node);
    }
    /// Only in binary formats, which are not read here.
    bool binary(json::binary_t& /*value*/) { return false; }
    bool start_object(std::size_t /*elements*/) { return open(Kind::object); }
    bool start_array(std::size_t /*elements*/) { return open(Kind::list); }
    bool end_object() { return close(); }
    bool end_array() { return close(); }

    bool key(std::string& name) {
        const Node& object = tree_.nodes[open_.back().node];
        if (object.size >= k_most_members)
            return refuse(path(), "This has more entries than anything in such a file.");
        std::uint32_t member = object.first;
        for (std::uint32_t i = 0; i < object.size; ++i, member = tree_.nodes[member].next)
            if (tree_.key_of(tree_.nodes[member]) == name) {
                const std::string above = path();
                return refuse(above.empty() ? name : above + "." + name,
                              "This is said twice; only one can hold.");
            }
        std::tie(key_at_, key_size_) = keep(name);
        return true;
    }

    bool parse_error(std::size_t position,
                     const std::string& /*token*/,
                     const json::exception& /*why*/) {
        const std::string where = line_and_column(bytes_, position);
        if (position > bytes_.size() || bytes_.find_last_not_of(" \t\r\n") + 1 < position)
            return refuse("file", "This ends in the middle; it has been cut short.", where);
        if (position > 0 && static_cast<unsigned char>(bytes_[position - 1]) >= 0x80)
            return refuse("file", "There are bytes here that are not UTF-8 text.", where);
        return refuse("file", "This is not readable as JSON.", where);
    }

    [[nodiscard]] base::Result<Tree> finish(bool read) && {
        if (refusal_)
            return std::move(*refusal_);
        if (!read || tree_.nodes.empty())
            return Refusal{"file", "This is not readable as JSON.", ""};
        return std::move(tree_);
    }

private:
    struct Open {
        std::uint32_t node;
        std::uint32_t last_child;
    };

    std::pair<std::uint32_t, std::uint32_t> keep(const std::string& text) {
        const auto at = static_cast<std::uint32_t>(tree_.text.size());
        tree_.text += text;
        return {at, static_cast<std::uint32_t>(text.size())};
    }

    bool add(Node node) {
        if (tree_.nodes.size() >= k_most_values)
            return refuse("file",
                          "The file holds more values than can be read.",
                          "at most " + std::to_string(k_most_values));
        const auto index = static_cast<std::uint32_t>(tree_.nodes.size());
        if (!open_.empty()) {
            Open& above = open_.back();
            Node& parent = tree_.nodes[above.node];
            if (parent.kind == Kind::object) {
                node.key_at = key_at_;
                node.key_size = key_size_;
            }
            (parent.size == 0 ? parent.first : tree_.nodes[above.last_child].next) = index;
            ++parent.size;
            above.last_child = index;
        }
        tree_.nodes.push_back(node);
        return true;
    }

    bool open(Kind kind) {
        if (open_.size() >= static_cast<std::size_t>(k_deepest_nesting))
            return refuse("file",
                          "The file is nested too deep.",
                          "at most " + std::to_string(k_deepest_nesting) + " levels");
        Node node;
        node.kind = kind;
        if (!add(node))
            return false;
        open_.push_back({static_cast<std::uint32_t>(tree_.nodes.size() - 1), k_no_value});
        return true;
    }

    bool close() {
        open_.pop_back();
        return true;
    }

    /// The way to the innermost open object.
    [[nodiscard]] std::string path() const {
        std::string way;
        for (std::size_t i = 1; i < open_.size(); ++i) {
            const Node& parent = tree_.nodes[open_[i - 1].node];
            if (parent.kind == Kind::list)
                way += "[" + std::to_string(parent.size - 1) + "]";
            else
                way += (way.empty() ? "" : ".") +
                       std::string(tree_.key_of(tree_.nodes[open_[i].node]));
        }
        return way;
    }

    bool refuse(std::string field, std::string reason, std::string detail = "") {
        if (!refusal_)
            refusal_ = Refusal{
                field.empty() ? "file" : std::move(field), std::move(reason), std::move(detail)};
        return false;
    }

    std::string_view bytes_;
    Tree tree_;
    std::vector<Open> open_;
    std::optional<Refusal> refusal_;
    std::uint32_t key_at_ = 0;
    std::uint32_t key_size_ = 0;
};

} // namespace

base::Result<Tree> read_tree(std::string_view bytes) {
    if (bytes.size() > k_largest_file)
        return Refusal{"file",
                       "The file is larger than any job.",
                       "at most " + std::to_string(k_largest_file / (1024 * 1024)) + " MB"};
    if (bytes.find_first_not_of(" \t\r\n") == std::string_view::npos)
        return Refusal{"file", "There is nothing in it.", ""};
    Builder builder(bytes);
    const bool read = json::sax_parse(bytes.begin(), bytes.end(), &builder);
    return std::move(builder).finish(read);
}

} // namespace treadle::archive
