// The page's side of the platform: turns events into presses, and makes frames.
//
//     Stage stage(ports, [&](Ui& ui) { app.draw(ui); });
//     stage.use_fonts(files);
//     platform::run(stage);

#pragma once

#include "platform/gestures.h"
#include "platform/page.h"
#include "platform/ports.h"
#include "ui/widgets/number_pad.h"
#include "ui/widgets/ui.h"

#include <cstdint>
#include <functional>
#include <optional>
#include <string>

struct ImGuiContext;

namespace treadle::ui {

class Stage final : public platform::Page, private platform::GestureTarget {
public:
    Stage(platform::Ports& ports, std::function<void(Ui&)> draw);
    ~Stage() override;
    Stage(const Stage&) = delete;
    Stage& operator=(const Stage&) = delete;

    void use_fonts(FontFiles files);
    /// Nothing: as the system prefers.
    void use_theme(std::optional<ThemeKind> kind);
    void use_density(std::optional<Density> density);
    void use_text_scale(float scale);
    void use_pad(PadWish wish);

    [[nodiscard]] Ui& ui() { return ui_; }

    void resize(const platform::StageSize& size) override;
    void prefer(const platform::Preferences& preferences) override;
    void pointer(const platform::PointerEvent& event) override;
    bool wheel(const platform::WheelEvent& event) override;
    bool key(const platform::KeyEvent& event) override;
    void activate(const std::string& id) override;
    void commit_text(const std::string& id, const std::string& value) override;
    void typing(const platform::Typing& typing) override;
    void choose(const std::string& id, int index) override;
    void focus(const std::string& id) override;
    void scrolled(const std::string& id, float offset) override;
    void prepare() override;
    std::uint32_t frame(double seconds_since_last) override;
    bool is_outdated() const override { return ui_.is_outdated_; }
    std::string take_mirror_changes() override;
    std::string drawn() const override { return ui_.drawn(); }

private:
    void hover(float x, float y) override;
    void hover_ends() override;
    void press(float x, float y) override;
    void release(float x, float y, bool acts) override;
    [[nodiscard]] platform::Hold hold(float x, float y) override;
    void drag_scroll(float start_x, float start_y, float dx, float dy) override;
    void drag_handle(float dx, float dy) override;
    void drop_handle(bool takes) override;
    bool pinch_starts(float x, float y) override;
    void pinch(float x, float y, float factor, float dx, float dy) override;
    void apply_theme();
    void draw_page();

    platform::Ports& ports_;
    std::function<void(Ui&)> draw_;
    ImGuiContext* context_ = nullptr;
    Ui ui_;
    NumberPad pad_;
    platform::Gestures gestures_;
    Surface* pinched_ = nullptr; ///< while two fingers are down
    HandleDrag last_drag_;
    platform::StageSize size_;
    platform::Preferences preferences_;
    FontFiles files_;
    std::optional<ThemeKind> theme_;
    std::optional<Density> density_;
    float text_scale_ = 1;
    std::string look_; ///< and scale, that the elements beside the canvas were told
    float told_scale_ = 0;
    bool fonts_stale_ = true;
};

} // namespace treadle::ui
