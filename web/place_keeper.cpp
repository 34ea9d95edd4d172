#include "place_keeper.h"

#include <utility>

namespace treadle::web {

namespace {

constexpr const char* k_key = "place";
constexpr double k_wait_seconds = 1;

} // namespace

void PlaceKeeper::load(std::function<void()> answer) {
    ports_.load(k_key, [this, answer = std::move(answer)](const platform::LoadedBytes& kept) {
        kept_ = kept.bytes;
        if (std::string own = ports_.take_from_tab(); !own.empty())
            kept_ = std::move(own);
        answer();
    });
}

void PlaceKeeper::restore() {
    is_to_scroll_ = read_place_text(kept_, state_, beside_);
    if (!beside_.field.empty())
        ports_.type_again(beside_.field, beside_.typed);
    ports_.when_typing([this](const std::string& id, const std::string& text) {
        beside_.field = id;
        beside_.typed = text;
        wait();
    });
    ports_.when_leaving([this] { keep(); });
}

void PlaceKeeper::before_frame(ui::Ui& ui) {
    if (!std::exchange(is_to_scroll_, false))
        return;
    for (const auto& [id, offset] : beside_.scrolls)
        ui.scroll_to(id, offset);
}

void PlaceKeeper::after_frame(const ui::Ui& ui) {
    beside_.scrolls = ui.scroll_offsets();
    wait();
}

void PlaceKeeper::wait() {
    if (std::exchange(is_waiting_, true))
        return;
    ports_.call_in(k_wait_seconds, [this] {
        is_waiting_ = false;
        keep();
    });
}

void PlaceKeeper::keep() {
    std::string text = place_text(state_, beside_);
    if (text == kept_)
        return;
    kept_ = std::move(text);
    ports_.store(k_key, kept_, [](const platform::StoreOutcome&) {});
}

void PlaceKeeper::flush(std::function<void()> done) {
    kept_ = place_text(state_, beside_);
    ports_.keep_in_tab(kept_);
    ports_.store(k_key, kept_, [done = std::move(done)](const platform::StoreOutcome&) { done(); });
}

} // namespace treadle::web
