#include "ui/widgets/semantics.h"

#include "base/contracts.h"
#include "base/json_writer.h"

#include <cmath>
#include <unordered_map>
#include <unordered_set>

namespace treadle::ui {

namespace {

long long whole(float px) { return std::llround(px); }

bool same(const Node& a, const Node& b) {
    return a.role == b.role && a.name == b.name && a.value == b.value && a.note == b.note &&
           a.error == b.error && a.options == b.options && a.selected == b.selected &&
           a.level == b.level && a.enabled == b.enabled && a.on == b.on && a.live == b.live &&
           a.keeps_focus == b.keeps_focus && a.rect == b.rect &&
           a.content_height == b.content_height && a.offset == b.offset;
}

void write_node(base::JsonWriter& json, const Node& node) {
    json.begin_object();
    json.field("id", node.id).field("role", role_word(node.role)).field("name", node.name);
    json.field("value", node.value).field("note", node.note).field("error", node.error);
    json.field("enabled", node.enabled).field("on", node.on).field("level", node.level);
    if (node.keeps_focus)
        json.field("keep", true);
    if (node.live)
        json.field("live", true);
    json.key("box").begin_array();
    for (const float px : {node.rect.x, node.rect.y, node.rect.w, node.rect.h})
        json.integer(whole(px));
    json.end_array();
    if (node.role == Role::choice) {
        json.field("selected", node.selected).key("options").begin_array();
        for (const std::string& option : node.options)
            json.text(option);
        json.end_array();
    }
    if (node.role == Role::scroll) {
        json.key("height").integer(whole(node.content_height));
        json.key("offset").integer(whole(node.offset));
    }
    json.end_object();
}

} // namespace

const char* role_word(Role role) {
    switch (role) {
    case Role::button:
        return "button";
    case Role::tab:
        return "tab";
    case Role::row:
        return "row";
    case Role::toggle:
        return "toggle";
    case Role::text:
        return "text";
    case Role::number:
        return "number";
    case Role::choice:
        return "choice";
    case Role::heading:
        return "heading";
    case Role::words:
        return "words";
    case Role::message:
        return "message";
    case Role::picture:
        return "picture";
    case Role::group:
        return "group";
    case Role::tabs:
        return "tabs";
    case Role::list:
        return "list";
    case Role::scroll:
        return "scroll";
    case Role::dialog:
        return "dialog";
    }
    return "words";
}

bool is_container(Role role) { return role >= Role::group; }

void Semantics::begin_frame() {
    count_ = 0;
    open_.clear();
}

Node& Semantics::add(std::string_view id, Role role) {
    if (count_ == nodes_.size())
        nodes_.emplace_back();
    Node& node = nodes_[count_++];
    // Cleared one by one, so that the strings keep their memory.
    node.id.assign(id);
    node.role = role;
    node.name.clear();
    node.value.clear();
    node.note.clear();
    node.error.clear();
    node.options.clear();
    node.selected = -1;
    node.level = 0;
    node.enabled = true;
    node.on = false;
    node.live = false;
    node.keeps_focus = false;
    node.parent = open_.empty() ? -1 : open_.back();
    node.content_height = 0;
    node.offset = 0;
    return node;
}

void Semantics::open_last() {
    TREADLE_EXPECT(count_ > 0 && is_container(nodes_[count_ - 1].role));
    open_.push_back(static_cast<int>(count_) - 1);
}

Node& Semantics::close() {
    TREADLE_EXPECT(!open_.empty());
    Node& node = nodes_[static_cast<std::size_t>(open_.back())];
    open_.pop_back();
    return node;
}

void Semantics::part_namesakes() {
    std::unordered_set<std::string> seen;
    for (std::size_t i = 0; i < count_; ++i) {
        while (!seen.insert(nodes_[i].id).second)
            nodes_[i].id += '~';
    }
}

bool Semantics::has_same_order() const {
    bool same_order = count_ == last_count_;
    for (std::size_t i = 0; same_order && i < count_; ++i)
        same_order = nodes_[i].id == last_[i].id && nodes_[i].parent == last_[i].parent;
    return same_order;
}

bool Semantics::end_frame(std::string_view focus_wish) {
    TREADLE_EXPECT(open_.empty());
    bool same_order = has_same_order();
    if (!same_order) {
        part_namesakes();
        same_order = has_same_order();
    }

    std::unordered_map<std::string_view, std::size_t> before;
    if (!same_order) {
        for (std::size_t i = 0; i < last_count_; ++i)
            before.emplace(last_[i].id, i);
    }
    base::JsonWriter json;
    json.begin_object().key("nodes").begin_array();
    bool changed = !same_order || !focus_wish.empty();
    for (std::size_t i = 0; i < count_; ++i) {
        const auto known = same_order ? before.end() : before.find(nodes_[i].id);
        const Node* old = same_order              ? &last_[i]
                          : known != before.end() ? &last_[known->second]
                                                  : nullptr;
        if (old != nullptr && same(*old, nodes_[i]))
            continue;
        write_node(json, nodes_[i]);
        changed = true;
    }
    json.end_array();
    if (!same_order) {
        json.key("order").begin_array();
        for (std::size_t i = 0; i < count_; ++i)
            json.begin_array().text(nodes_[i].id).integer(nodes_[i].parent).end_array();
        json.end_array();
    }
    if (!focus_wish.empty())
        json.field("focus", focus_wish);
    json.end_object();
    if (changed)
        changes_ = json.take();
    std::swap(nodes_, last_);
    last_count_ = count_;
    return changed;
}

const Node* Semantics::find(std::string_view id) const {
    for (std::size_t i = 0; i < last_count_; ++i) {
        if (last_[i].id == id)
            return &last_[i];
    }
    return nullptr;
}

} // namespace treadle::ui
