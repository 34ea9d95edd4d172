// What host.cpp and browser_ports.cpp share: one page, one canvas, one program.

#pragma once

#include "platform/frame_pacer.h"
#include "platform/page.h"
#include "platform/ports.h"

#include <functional>
#include <map>
#include <string>

namespace treadle::platform::browser {

class BrowserPorts final : public Ports {
public:
    void request_frame(const char* reason, int count) override;
    void request_frame_in(double seconds) override;
    void load(const std::string& key, std::function<void(LoadedBytes)> answer) override;
    void store(const std::string& key,
               std::string_view bytes,
               std::function<void(StoreOutcome)> answer) override;
    void load_all(const std::string& prefix, std::function<void(LoadedAll)> answer) override;
    void store_all(const std::vector<StoreChange>& changes,
                   std::function<void(StoreOutcome)> answer) override;
    void load_keys(const std::string& prefix, std::function<void(LoadedKeys)> answer) override;
    void ask_to_protect() override;
    void standing(std::function<void(StoreStanding)> answer) override;
    void accept_place() override;
    void bring_back(std::function<void(int)> answer) override;
    void hold(const std::string& name, bool insist, std::function<void(Claim)> tell) override;
    void let_go(const std::string& name, bool stay) override;
    void tell_pages(const std::string& words) override;
    void when_told(std::function<void(const std::string& words)> call) override;
    std::string page_text() override;
    void keep_page_text(const std::string& text) override;
    std::string own_word() override;
    void call_in(double seconds, std::function<void()> call) override;
    void when_leaving(std::function<void()> call) override;
    void
    when_typing(std::function<void(const std::string& id, const std::string& text)> call) override;
    void type_again(const std::string& id, const std::string& text) override;
    void download(const std::string& name,
                  const std::string& media_type,
                  std::string_view bytes) override;
    void pick_file(const std::string& accept, std::function<void(PickedFile)> answer) override;
    void print_html(const std::string& title, const std::string& html) override;
    void show_sheet_preview(const std::string& title, const std::string& html) override;
    void hide_sheet_preview() override;
    void when_ticked(std::function<void(const std::string& key, bool on)> call) override {
        tick_ = std::move(call);
    }
    int cut(const std::string& list,
            long long most_work,
            std::function<void(const std::string&)> answer) override;
    void stop_cut(int ticket) override;
    void edit_text(const TextEdit& edit) override;
    void copy_text(const std::string& text, std::function<void(bool)> answer) override;
    std::string now_text() override;
    std::string day_text() override;
    void announce(const std::string& sentence) override;
    void use_look(const std::string& name, float text_scale) override;
    void keep_awake(bool awake) override;
    bool can_keep_awake() override;
    std::string address_fragment() override;
    void forget_fragment() override;
    std::string page_address() override;
    void when_given(std::function<void(PickedFile)> call) override;
    void ask_for_table() override;
    void fetch_beside(const std::string& name,
                      int most,
                      std::function<void(LoadedBytes)> answer) override;
    Build build() override;
    void watch_versions(std::function<void(const VersionNews&)> news,
                        std::function<void(std::function<void()>)> flush) override;
    void switch_version() override;
    void hand_part(PagePart part) override;
    void keep_in_tab(const std::string& text) override;
    std::string take_from_tab() override;

    // Answers that came back from the browser, by ticket.
    void loaded(int ticket, LoadedBytes bytes);
    void loaded_all(int ticket, LoadedAll all);
    void loaded_keys(int ticket, LoadedKeys keys);
    void held(int ticket, Claim how);
    void stands(int ticket, const StoreStanding& standing);
    void brought_back(int ticket, int count);
    void told(const std::string& words) const;
    void stored(int ticket, StoreOutcome outcome);
    void called(int ticket);
    void leaving() const;
    void typing(const std::string& id, const std::string& text) const;
    void picked(int ticket, PickedFile file);
    void given(PickedFile file);
    void copied(int ticket, bool done);
    void ticked(const std::string& key, bool on) const;
    void was_cut(int ticket, const std::string& answer);
    void version_news(const VersionNews& news);
    void flush(std::function<void()> done) const;

    FramePacer pacer;
    std::function<void()> schedule; ///< asks the browser for the next animation frame

private:
    struct Held {
        std::string name;
        std::function<void(Claim)> tell;
    };

    int next_ticket_ = 1;
    std::map<int, std::function<void(LoadedBytes)>> loads_;
    std::map<int, std::function<void(LoadedAll)>> all_loads_;
    std::map<int, std::function<void(LoadedKeys)>> key_loads_;
    std::map<int, std::function<void(StoreStanding)>> standings_;
    std::map<int, std::function<void(int)>> bring_backs_;
    std::map<int, Held> holds_;
    std::function<void(const std::string& words)> told_;
    std::map<int, std::function<void(StoreOutcome)>> stores_;
    std::map<int, std::function<void()>> calls_;
    std::function<void()> leave_;
    std::function<void(const std::string& id, const std::string& text)> type_;
    std::map<int, std::function<void(PickedFile)>> picks_;
    std::function<void(PickedFile)> give_;
    std::function<void(const std::string& key, bool on)> tick_;
    std::map<int, std::function<void(bool)>> copies_;
    std::map<int, std::function<void(const std::string&)>> cuts_;
    std::function<void(const VersionNews&)> news_;
    std::function<void(std::function<void()>)> flush_;
};

[[nodiscard]] BrowserPorts& browser_ports();

} // namespace treadle::platform::browser
