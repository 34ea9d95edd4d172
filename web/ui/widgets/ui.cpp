#include "ui/widgets/ui.h"

#include "base/contracts.h"

#include <imgui.h>

#include <cmath>
#include <utility>

namespace treadle::ui {

namespace {

constexpr float k_far = 1.0e6F; ///< a scrolled content may grow to this height
constexpr float k_near = 240;   ///< one row at least, of any list

bool answers_by_itself(Role role) {
    return role == Role::text || role == Role::number || role == Role::choice;
}

bool begins_with(std::string_view text, std::string_view start) {
    return text.substr(0, start.size()) == start;
}

} // namespace

// ---- frame --------------------------------------------------------------------------------------

void Ui::begin_frame(const Rect& screen, ImDrawList& draw) {
    screen_ = screen;
    draw_ = &draw;
    wants_frame_ = false;
    is_outdated_ = false;
    semantics_.begin_frame();
    scope_.clear();
    scope_lengths_.clear();
    counters_.assign(1, 0);
    clips_.clear();
    origins_.assign(1, {0, 0});
    open_scrolls_.clear();
    scroll_hits_.clear();
    hit_count_ = 0;
    modal_from_ = 0;
    scroll_modal_from_ = 0;
    known_keys_.clear();
    cut_words_.clear();
    entry_.reset();
}

bool Ui::end_frame() {
    TREADLE_EXPECT(scope_lengths_.empty() && open_scrolls_.empty() && origins_.size() == 1);
    std::swap(hits_, last_hits_);
    last_hit_count_ = hit_count_;
    last_modal_from_ = modal_from_;
    std::swap(scroll_hits_, last_scroll_hits_);
    last_scroll_modal_from_ = scroll_modal_from_;
    // One key twice between two frames is two presses: the second waits for the next frame.
    std::erase_if(keys_, [&](const Key& key) {
        return std::none_of(known_keys_.begin(), known_keys_.end(), [&](const Key& known) {
            return known.name == key.name && known.mod == key.mod;
        });
    });
    if (!keys_.empty())
        wants_frame_ = true;
    texts_.clear();
    choices_.clear();
    taps_.clear();
    drag_.reset();
    // A press stays for one more frame: two quick taps on one key are two.
    for (Activation& activation : activations_)
        ++activation.frames;
    std::erase_if(activations_, [](const Activation& a) { return a.frames > 1; });
    if (!activations_.empty())
        wants_frame_ = true;
    if (frames_to_reveal_ > 0 && --frames_to_reveal_ > 0)
        wants_frame_ = true;
    const bool changed = semantics_.end_frame(focus_wish_);
    focus_wish_.clear();
    return changed;
}

// ---- ids ----------------------------------------------------------------------------------------

void Ui::push_scope(std::string_view part) {
    scope_lengths_.push_back(scope_.size());
    scope_.append(part);
    scope_.push_back('/');
    counters_.push_back(0);
}

void Ui::pop_scope() {
    TREADLE_EXPECT(!scope_lengths_.empty());
    scope_.resize(scope_lengths_.back());
    scope_lengths_.pop_back();
    counters_.pop_back();
}

std::string Ui::full_id(std::string_view id) const {
    std::string full = scope_;
    full.append(id);
    return full;
}

std::string Ui::next_id(std::string_view kind) {
    std::string id(kind);
    id += std::to_string(counters_.back()++);
    return id;
}

// ---- nodes --------------------------------------------------------------------------------------

Node& Ui::add_node(std::string_view id, Role role, const Rect& rect, std::string_view name) {
    Node& node = semantics_.add(full_id(id), role);
    node.name.assign(name);
    node.rect = rect.moved(-origins_.back().x, -origins_.back().y);
    return node;
}

Node& Ui::add_control(
    std::string_view id, Role role, const Rect& rect, std::string_view name, bool enabled) {
    Node& node = add_node(id, role, rect, name);
    node.enabled = enabled;
    add_hit(node.id, rect, enabled, answers_by_itself(role) ? HitKind::native : HitKind::control);
    return node;
}

Surface& Ui::add_surface(std::string_view id, const Rect& rect) {
    const std::string full = full_id(id);
    add_hit(full, rect, true, HitKind::surface);
    return surfaces_[full];
}

std::optional<PointMm> Ui::take_tap(std::string_view id) {
    const auto found = taps_.find(full_id(id));
    if (found == taps_.end())
        return std::nullopt;
    const PointMm at = found->second;
    taps_.erase(found);
    wants_frame_ = true;
    return at;
}

Node& Ui::add_handle(std::string_view id, const Rect& rect, std::string_view name) {
    Node& node = add_node(id, Role::button, rect, name);
    add_hit(node.id, rect, true, HitKind::handle);
    return node;
}

std::optional<HandleDrag> Ui::take_drag(const std::string& id) {
    if (!drag_ || dragged_ != id)
        return std::nullopt;
    wants_frame_ = true;
    return std::exchange(drag_, std::nullopt);
}

bool Ui::has_attention() const {
    return begins_with(focused_.empty() ? attended_ : focused_, scope_);
}

void Ui::add_hit(std::string_view id, const Rect& rect, bool enabled, HitKind kind) {
    const Rect seen = rect.common(clip());
    if (seen.is_empty())
        return;
    if (hit_count_ == hits_.size())
        hits_.emplace_back();
    Hit& hit = hits_[hit_count_++];
    hit.id.assign(id);
    hit.rect = seen;
    hit.enabled = enabled;
    hit.kind = kind;
}

const Ui::Hit* Ui::hit(float x, float y) const {
    for (std::size_t i = last_hit_count_; i > last_modal_from_; --i) {
        if (last_hits_[i - 1].rect.contains(x, y))
            return &last_hits_[i - 1];
    }
    return nullptr;
}

Surface* Ui::surface_at(float x, float y) {
    for (std::size_t i = last_hit_count_; i > last_modal_from_; --i) {
        const Hit& hit = last_hits_[i - 1];
        if (hit.kind != HitKind::surface || !hit.rect.contains(x, y))
            continue;
        const auto found = surfaces_.find(hit.id);
        return found == surfaces_.end() ? nullptr : &found->second;
    }
    return nullptr;
}

Touch Ui::touch(const std::string& id) const {
    return {hovered_ == id, pressed_ == id, focused_ == id};
}

bool Ui::take_activation(const std::string& id) {
    for (auto it = activations_.begin(); it != activations_.end(); ++it) {
        if (it->id == id) {
            activations_.erase(it);
            wants_frame_ = true;
            return true;
        }
    }
    return false;
}

std::optional<std::string> Ui::take_text(const std::string& id) {
    const auto found = texts_.find(id);
    if (found == texts_.end())
        return std::nullopt;
    std::string text = std::move(found->second);
    texts_.erase(found);
    wants_frame_ = true;
    return text;
}

std::optional<int> Ui::take_choice(const std::string& id) {
    const auto found = choices_.find(id);
    if (found == choices_.end())
        return std::nullopt;
    const int index = found->second;
    choices_.erase(found);
    wants_frame_ = true;
    return index;
}

bool Ui::key(std::string_view name, Mod mod) {
    known_keys_.push_back({std::string(name), mod});
    const auto found = std::find_if(keys_.begin(), keys_.end(), [&](const Key& key) {
        return key.name == name && key.mod == mod;
    });
    if (found == keys_.end())
        return false;
    keys_.erase(found);
    wants_frame_ = true;
    return true;
}

// ---- containers and scrolling -------------------------------------------------------------------

void Ui::begin_container(std::string_view id, Role role, const Rect& rect, std::string_view name) {
    add_node(id, role, rect, name);
    semantics_.open_last();
    origins_.push_back({rect.x, rect.y});
    if (role == Role::dialog) {
        modal_from_ = hit_count_;
        scroll_modal_from_ = scroll_hits_.size();
    }
}

void Ui::end_container() {
    semantics_.close();
    origins_.pop_back();
}

Rect Ui::begin_scroll(std::string_view id, const Rect& rect, std::string_view name) {
    begin_container(id, Role::scroll, rect, name);
    const std::string full = full_id(id);
    ScrollState& state = scrolls_[full];
    state.height = rect.h;
    // What was never drawn has no height yet: where it is to stand is known before.
    if (state.content > 0)
        state.offset = std::clamp(state.offset, 0.0F, std::max(0.0F, state.content - rect.h));
    const Rect seen = rect.common(clip());
    scroll_hits_.push_back({full, seen});
    clips_.push_back(seen);
    open_scrolls_.push_back(full);
    draw_->PushClipRect({seen.x, seen.y}, {seen.right(), seen.bottom()}, true);
    // Whole pixels, as the mirror scrolls.
    const float offset = std::round(state.offset);
    origins_.back().y -= offset;
    return {rect.x, rect.y - offset, rect.w, k_far};
}

void Ui::end_scroll(float content_height) {
    draw_->PopClipRect();
    ScrollState& state = scrolls_[open_scrolls_.back()];
    Node& node = semantics_.close();
    origins_.pop_back();
    const Rect seen = clip();
    clips_.pop_back();
    open_scrolls_.pop_back();
    if (state.content != content_height) {
        state.content = content_height;
        wants_frame_ = true;
    }
    node.content_height = content_height;
    node.offset = std::round(state.offset);
    if (content_height > state.height + 1 && !seen.is_empty()) {
        // A thin bar says that there is more, and where one is.
        const float length = std::max(24.0F, seen.h * state.height / content_height);
        const float travel = state.offset / (content_height - state.height);
        fill({seen.right() - 5, seen.y + (seen.h - length) * travel, 4, length}, Ink::line);
    }
}

bool Ui::scroll_at(float x, float y, float dy) {
    for (std::size_t i = last_scroll_hits_.size(); i > last_scroll_modal_from_; --i) {
        const ScrollHit& hit = last_scroll_hits_[i - 1];
        if (!hit.rect.contains(x, y))
            continue;
        ScrollState& state = scrolls_[hit.id];
        const float most = std::max(0.0F, state.content - state.height);
        const float moved = std::clamp(state.offset + dy, 0.0F, most);
        if (moved == state.offset)
            continue;
        state.offset = moved;
        return true;
    }
    return false;
}

void Ui::bring_to_top(const Rect& rect) {
    TREADLE_EXPECT(!open_scrolls_.empty());
    ScrollState& state = scrolls_[open_scrolls_.back()];
    // The origin is where the content begins, the offset taken off.
    state.offset = std::max(0.0F, rect.y - origins_.back().y);
    wants_frame_ = true;
}

std::map<std::string, float> Ui::scroll_offsets() const {
    std::map<std::string, float> offsets;
    for (const auto& [id, state] : scrolls_)
        offsets.emplace(id, state.offset);
    return offsets;
}

void Ui::scroll_to(const std::string& full_id, float offset) {
    scrolls_[full_id].offset = offset;
    wants_frame_ = true;
}

const platform::Typing* Ui::typing_in(const std::string& full_id) const {
    return !full_id.empty() && typing_.id == full_id ? &typing_ : nullptr;
}

void Ui::keep_in_sight(const Rect& rect) {
    if (frames_to_reveal_ > 0)
        bring_into_sight(rect);
}

void Ui::bring_into_sight(const Rect& rect) {
    if (open_scrolls_.empty())
        return;
    const Rect seen = clip();
    const float below = rect.bottom() - seen.bottom();
    const float above = seen.y - rect.y;
    float by = 0;
    if (above > 0)
        by = -above;
    else if (below > 0)
        by = std::min(below, -above); // the top of what is higher than the place stays in it
    if (by == 0)
        return;
    scrolls_[open_scrolls_.back()].offset += by;
    wants_frame_ = true;
}

bool Ui::is_visible(const Rect& rect) const { return !rect.common(clip()).is_empty(); }

bool Ui::is_near(const Rect& rect) const {
    const Rect seen = clip();
    return rect.y < seen.bottom() + k_near && rect.bottom() > seen.y - k_near;
}

// ---- ink ----------------------------------------------------------------------------------------

void Ui::fill(const Rect& rect, Ink ink) {
    draw_->AddRectFilled({rect.x, rect.y}, {rect.right(), rect.bottom()}, colour(ink));
}

void Ui::outline(const Rect& rect, Ink ink, float stroke) {
    // Four bars: square corners, sharp at every density.
    fill({rect.x, rect.y, rect.w, stroke}, ink);
    fill({rect.x, rect.bottom() - stroke, rect.w, stroke}, ink);
    fill({rect.x, rect.y + stroke, stroke, rect.h - 2 * stroke}, ink);
    fill({rect.right() - stroke, rect.y + stroke, stroke, rect.h - 2 * stroke}, ink);
}

void Ui::rule(float x0, float y0, float x1, float y1, Ink ink, float stroke) {
    // Upright and level rules are filled rectangles: sharp at every density.
    const float half = stroke / 2;
    if (x0 == x1)
        fill({x0 - half, y0, stroke, y1 - y0}, ink);
    else if (y0 == y1)
        fill({x0, y0 - half, x1 - x0, stroke}, ink);
    else
        draw_->AddLine({x0, y0}, {x1, y1}, colour(ink), stroke);
}

void Ui::draw_focus_ring(const std::string& id, const Rect& rect) {
    if (focused_ != id || id.empty())
        return;
    // Two rings, so that one of them stands out from whatever lies under it.
    const Rect outer = rect.inset(-4);
    outline(outer, Ink::touch, 3);
    outline(rect.inset(-1), Ink::paper, 1);
}

} // namespace treadle::ui
