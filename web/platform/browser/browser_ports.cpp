#include "platform/browser/glue.h"
#include "platform/browser/host.h"
#include "platform/browser/host_state.h"

#include <cstdlib>
#include <utility>

namespace treadle::platform::browser {

namespace {

/// Text that the glue made with malloc.
std::string taken(char* text) {
    std::string copy(text != nullptr ? text : "");
    std::free(text);
    return copy;
}

template <typename Answer, typename Value>
void answer_once(std::map<int, std::function<Answer>>& waiting, int ticket, Value value) {
    const auto found = waiting.find(ticket);
    if (found == waiting.end())
        return;
    const auto answer = std::move(found->second);
    waiting.erase(found);
    answer(std::move(value));
}

} // namespace

BrowserPorts& browser_ports() {
    // Never destroyed: the browser calls back as long as the page is open.
    static BrowserPorts* const only = new BrowserPorts();
    return *only;
}

Ports& ports() { return browser_ports(); }

std::string boot_file(int index) {
    int length = 0;
    char* const bytes = treadle_boot_file(index, &length);
    std::string file(bytes, static_cast<std::size_t>(length));
    std::free(bytes);
    return file;
}

void BrowserPorts::request_frame(const char*, int count) {
    pacer.request(count);
    if (schedule)
        schedule();
}

void BrowserPorts::request_frame_in(double seconds) { treadle_wake_in(seconds); }

void BrowserPorts::load(const std::string& key, std::function<void(LoadedBytes)> answer) {
    loads_[next_ticket_] = std::move(answer);
    treadle_load(key.c_str(), next_ticket_++);
}

void BrowserPorts::store(const std::string& key,
                         std::string_view bytes,
                         std::function<void(StoreOutcome)> answer) {
    stores_[next_ticket_] = std::move(answer);
    treadle_store(key.c_str(), bytes.data(), static_cast<int>(bytes.size()), next_ticket_++);
}

void BrowserPorts::download(const std::string& name,
                            const std::string& media_type,
                            std::string_view bytes) {
    treadle_download(
        name.c_str(), media_type.c_str(), bytes.data(), static_cast<int>(bytes.size()));
}

void BrowserPorts::pick_file(const std::string& accept, std::function<void(PickedFile)> answer) {
    // A user who walked away never answers; only the last question waits.
    picks_.clear();
    picks_[next_ticket_] = std::move(answer);
    treadle_pick_file(accept.c_str(), next_ticket_++);
}

void BrowserPorts::print_html(const std::string& title, const std::string& html) {
    treadle_print(title.c_str(), html.c_str());
}

void BrowserPorts::show_sheet_preview(const std::string& title, const std::string& html) {
    treadle_preview(title.c_str(), html.c_str());
}

void BrowserPorts::hide_sheet_preview() { treadle_hide_preview(); }

void BrowserPorts::ticked(const std::string& key, bool on) const {
    if (tick_)
        tick_(key, on);
}

int BrowserPorts::cut(const std::string& list,
                      long long most_work,
                      std::function<void(const std::string&)> answer) {
    cuts_[next_ticket_] = std::move(answer);
    treadle_cut(next_ticket_, list.c_str(), static_cast<double>(most_work));
    return next_ticket_++;
}

void BrowserPorts::stop_cut(int ticket) {
    if (cuts_.erase(ticket) > 0)
        treadle_cut(ticket, "", 0);
}

void BrowserPorts::edit_text(const TextEdit& edit) {
    treadle_edit_text(edit.id.c_str(), static_cast<int>(edit.kind), edit.text.c_str());
}

void BrowserPorts::copy_text(const std::string& text, std::function<void(bool)> answer) {
    copies_[next_ticket_] = std::move(answer);
    treadle_copy(text.c_str(), next_ticket_++);
}

std::string BrowserPorts::now_text() { return taken(treadle_now_text()); }

std::string BrowserPorts::day_text() { return taken(treadle_day_text()); }

void BrowserPorts::announce(const std::string& sentence) { treadle_announce(sentence.c_str()); }

void BrowserPorts::use_look(const std::string& name, float text_scale) {
    treadle_look(name.c_str(), text_scale);
}

void BrowserPorts::keep_awake(bool awake) { treadle_keep_awake(awake ? 1 : 0); }

bool BrowserPorts::can_keep_awake() { return treadle_can_keep_awake() != 0; }

std::string BrowserPorts::address_fragment() { return taken(treadle_fragment()); }

void BrowserPorts::forget_fragment() { treadle_forget_fragment(); }

std::string BrowserPorts::page_address() { return taken(treadle_page_address()); }

void BrowserPorts::when_given(std::function<void(PickedFile)> call) {
    give_ = std::move(call);
    treadle_listen_given();
}

void BrowserPorts::ask_for_table() { treadle_ask_for_table(); }

void BrowserPorts::fetch_beside(const std::string& name,
                                int most,
                                std::function<void(LoadedBytes)> answer) {
    loads_[next_ticket_] = std::move(answer);
    treadle_fetch_beside(name.c_str(), most, next_ticket_++);
}

void BrowserPorts::given(PickedFile file) {
    if (give_)
        give_(std::move(file));
    request_frame("given", 2);
}

void BrowserPorts::loaded(int ticket, LoadedBytes bytes) {
    answer_once(loads_, ticket, std::move(bytes));
    request_frame("loaded", 2);
}

void BrowserPorts::stored(int ticket, StoreOutcome outcome) {
    answer_once(stores_, ticket, std::move(outcome)); // who shows it asks for the frame
}

void BrowserPorts::picked(int ticket, PickedFile file) {
    answer_once(picks_, ticket, std::move(file));
    request_frame("picked", 2);
}

void BrowserPorts::copied(int ticket, bool done) {
    answer_once(copies_, ticket, done);
    request_frame("copied", 2);
}

void BrowserPorts::was_cut(int ticket, const std::string& answer) {
    const auto found = cuts_.find(ticket);
    if (found == cuts_.end())
        return; // stopped since
    const auto tell = found->second;
    tell(answer);
    request_frame("cut", 2);
}

} // namespace treadle::platform::browser
