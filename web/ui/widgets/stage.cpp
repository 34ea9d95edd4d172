#include "ui/widgets/stage.h"

#include <imgui.h>

#include <algorithm>
#include <cmath>
#include <utility>

namespace treadle::ui {

namespace {

constexpr float k_px_per_notch = 100; ///< what browsers scroll for one notch

} // namespace

Stage::Stage(platform::Ports& ports, std::function<void(Ui&)> draw)
    : ports_(ports),
      draw_(std::move(draw)),
      context_(ImGui::CreateContext()),
      gestures_(*this) {
    ImGui::SetCurrentContext(context_);
    ImGuiIO& io = ImGui::GetIO();
    io.IniFilename = nullptr;
    io.LogFilename = nullptr;
    apply_theme();
}

Stage::~Stage() { ImGui::DestroyContext(context_); }

void Stage::use_fonts(FontFiles files) {
    files_ = std::move(files);
    fonts_stale_ = true;
    ports_.request_frame("fonts", 2);
}

void Stage::use_theme(std::optional<ThemeKind> kind) {
    theme_ = kind;
    apply_theme();
}

void Stage::use_density(std::optional<Density> density) {
    density_ = density;
    apply_theme();
}

void Stage::use_text_scale(float scale) {
    text_scale_ = std::clamp(scale, 1.0F, 2.0F);
    fonts_stale_ = true;
    apply_theme();
}

void Stage::use_pad(PadWish wish) {
    ui_.pad_wish_ = wish;
    ports_.request_frame("pad", 2);
}

void Stage::apply_theme() {
    const ThemeKind wished = preferences_.more_contrast ? ThemeKind::sun
                             : preferences_.dark        ? ThemeKind::dark
                                                        : ThemeKind::light;
    const Density held = size_.coarse_pointer ? Density::shop : Density::desk;
    ui_.theme_ = make_theme(theme_.value_or(wished), density_.value_or(held), text_scale_);
    const char* const look = ui_.theme_.kind == ThemeKind::dark  ? "dark"
                             : ui_.theme_.kind == ThemeKind::sun ? "sun"
                                                                 : "light";
    if (look_ != look || told_scale_ != text_scale_) {
        look_ = look;
        told_scale_ = text_scale_;
        ports_.use_look(look_, text_scale_);
    }
    ports_.request_frame("theme", 2);
}

void Stage::resize(const platform::StageSize& size) {
    if (size.density != size_.density)
        fonts_stale_ = true;
    size_ = size;
    ui_.frames_to_reveal_ = 2;
    apply_theme();
}

void Stage::prefer(const platform::Preferences& preferences) {
    preferences_ = preferences;
    apply_theme();
}

// ---- events -------------------------------------------------------------------------------------

void Stage::pointer(const platform::PointerEvent& event) {
    gestures_.pointer(event);
    if (gestures_.is_gliding())
        ports_.request_frame("glide", 1);
}

bool Stage::wheel(const platform::WheelEvent& event) {
    gestures_.stop_glide();
    Surface* const surface = ui_.surface_at(event.x, event.y);
    if (surface != nullptr && (event.zoom || !surface->is_whole())) {
        if (surface->zoom_by(std::pow(Surface::k_step, -event.notches_y), event.x, event.y))
            ports_.request_frame("zoom", 1);
        return true;
    }
    if (event.zoom || !ui_.scroll_at(event.x, event.y, event.notches_y * k_px_per_notch))
        return false;
    ports_.request_frame("wheel", 2);
    return true;
}

bool Stage::key(const platform::KeyEvent& event) {
    if (event.alt)
        return false;
    if (event.key == "Escape" && gestures_.cancel_drag())
        return true;
    const bool named_shift = event.shift && event.key.size() > 1;
    const Ui::Mod mod = event.control ? (event.shift ? Ui::Mod::control_shift : Ui::Mod::control)
                        : named_shift ? Ui::Mod::shift
                                      : Ui::Mod::none;
    // Only what the page asked for in its last frame: all other keys are the browser's.
    const bool known =
        std::any_of(ui_.known_keys_.begin(), ui_.known_keys_.end(), [&](const Ui::Key& key) {
            return key.name == event.key && key.mod == mod;
        });
    if (!known)
        return false;
    ui_.keys_.push_back({event.key, mod});
    ports_.request_frame("key", 2);
    return true;
}

void Stage::activate(const std::string& id) {
    ui_.activations_.push_back({id, 0});
    ports_.request_frame("press", 2);
}

void Stage::commit_text(const std::string& id, const std::string& value) {
    ui_.texts_[id] = value;
    ports_.request_frame("text", 2);
}

void Stage::typing(const platform::Typing& typing) {
    if (typing.id != ui_.typing_.id)
        ui_.frames_to_reveal_ = 2;
    ui_.typing_ = typing;
    ports_.request_frame("typing", 1);
}

void Stage::choose(const std::string& id, int index) {
    ui_.choices_[id] = index;
    ports_.request_frame("choice", 2);
}

void Stage::focus(const std::string& id) {
    if (ui_.focused_ == id)
        return;
    ui_.focused_ = id;
    ports_.request_frame("focus", 1);
}

void Stage::scrolled(const std::string& id, float offset) {
    const auto found = ui_.scrolls_.find(id);
    if (found == ui_.scrolls_.end() || std::fabs(found->second.offset - offset) < 1)
        return;
    found->second.offset = offset;
    ports_.request_frame("scroll", 2);
}

// ---- gestures -----------------------------------------------------------------------------------

void Stage::hover(float x, float y) {
    const Ui::Hit* hit = ui_.hit(x, y);
    const std::string_view id = hit != nullptr ? std::string_view(hit->id) : std::string_view();
    if (ui_.hovered_ == id)
        return;
    ui_.hovered_ = id;
    ports_.request_frame("hover", 1);
}

void Stage::hover_ends() {
    if (ui_.hovered_.empty())
        return;
    ui_.hovered_.clear();
    ports_.request_frame("hover", 1);
}

void Stage::press(float x, float y) {
    const Ui::Hit* hit = ui_.hit(x, y);
    std::string attended = hit != nullptr ? hit->id : std::string();
    if (attended != ui_.attended_)
        ports_.request_frame("attention", 1);
    ui_.attended_ = std::move(attended);
    if (hit == nullptr || !hit->enabled)
        return;
    ui_.pressed_ = hit->id;
    ports_.request_frame("press", 1);
}

void Stage::release(float x, float y, bool acts) {
    const Ui::Hit* hit = ui_.hit(x, y);
    if (acts && hit != nullptr && hit->enabled && hit->id == ui_.pressed_) {
        if (hit->kind == Ui::HitKind::surface)
            ui_.taps_[hit->id] = {static_cast<double>(x), static_cast<double>(y)};
        else if (hit->kind != Ui::HitKind::native)
            activate(hit->id);
    }
    if (!ui_.pressed_.empty())
        ports_.request_frame("release", 1);
    ui_.pressed_.clear();
}

platform::Hold Stage::hold(float x, float y) {
    const Ui::Hit* hit = ui_.hit(x, y);
    if (hit == nullptr)
        return platform::Hold::page;
    if (hit->kind == Ui::HitKind::handle)
        return platform::Hold::handle;
    const Surface* surface = hit->kind == Ui::HitKind::surface ? ui_.surface_at(x, y) : nullptr;
    return surface != nullptr && !surface->is_whole() ? platform::Hold::surface
                                                      : platform::Hold::page;
}

void Stage::drag_handle(float dx, float dy) {
    ui_.dragged_ = ui_.pressed_;
    ui_.drag_ = last_drag_ = HandleDrag{dx, dy, HandleDrag::Phase::moves};
    ports_.request_frame("drag", 1);
}

void Stage::drop_handle(bool takes) {
    HandleDrag drag = last_drag_;
    drag.phase = takes ? HandleDrag::Phase::dropped : HandleDrag::Phase::cancelled;
    ui_.dragged_ = ui_.pressed_;
    ui_.drag_ = drag;
    ports_.request_frame("drop", 2);
}

bool Stage::pinch_starts(float x, float y) {
    pinched_ = ui_.surface_at(x, y);
    return pinched_ != nullptr;
}

void Stage::pinch(float x, float y, float factor, float dx, float dy) {
    // What lay between the fingers stays between them.
    const bool zoomed = pinched_->zoom_by(factor, x - dx, y - dy);
    if (pinched_->pan(dx, dy) || zoomed)
        ports_.request_frame("pinch", 1);
}

void Stage::drag_scroll(float start_x, float start_y, float dx, float dy) {
    Surface* const surface = ui_.surface_at(start_x, start_y);
    if (surface != nullptr && surface->pan(dx, dy))
        ports_.request_frame("drag", 1);
    else if (ui_.scroll_at(start_x, start_y, -dy))
        ports_.request_frame("drag", 1);
    else
        gestures_.stop_glide();
}

// ---- frame --------------------------------------------------------------------------------------

void Stage::prepare() {
    ImGui::SetCurrentContext(context_);
    if (!fonts_stale_)
        return;
    ui_.fonts_.build(files_, size_.density, text_scale_);
    ImGui::GetIO().Fonts->SetTexID(nullptr);
    fonts_stale_ = false;
}

std::uint32_t Stage::frame(double seconds_since_last) {
    ImGui::SetCurrentContext(context_);
    if (gestures_.glide(seconds_since_last))
        ports_.request_frame("glide", 1);
    ImGuiIO& io = ImGui::GetIO();
    io.DisplaySize = ImVec2(size_.width, size_.height);
    io.DisplayFramebufferScale = ImVec2(size_.density, size_.density);
    // After an idle hour the clock must not jump.
    io.DeltaTime = static_cast<float>(std::clamp(seconds_since_last, 0.001, 0.1));
    ImGui::NewFrame();
    draw_page();
    ImGui::Render();
    if (ui_.wants_frame_)
        ports_.request_frame("page", 1);
    return ui_.colour(Ink::paper);
}

/// The page in the room that the number pad leaves, and the pad over it.
void Stage::draw_page() {
    const Rect whole{0, 0, size_.width, size_.height};
    const Rect room = pad_.room_for_page(ui_, whole);
    if (!(room == ui_.screen_))
        ui_.frames_to_reveal_ = 2;
    ui_.begin_frame(room, *ImGui::GetBackgroundDrawList());
    draw_(ui_);
    ui_.screen_ = whole;
    if (const auto edit = pad_.draw(ui_, whole, ui_.entry_)) {
        ports_.edit_text(*edit);
        ui_.want_frame();
    }
    ui_.screen_ = room;
    ui_.end_frame();
}

std::string Stage::take_mirror_changes() { return ui_.semantics_.take_changes(); }

} // namespace treadle::ui
