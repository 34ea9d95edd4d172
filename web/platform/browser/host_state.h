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

    // Answers that came back from the browser, by ticket.
    void loaded(int ticket, LoadedBytes bytes);
    void loaded_all(int ticket, LoadedAll all);
    void stored(int ticket, StoreOutcome outcome);
    void called(int ticket);
    void leaving() const;
    void typing(const std::string& id, const std::string& text) const;
    void picked(int ticket, PickedFile file);
    void copied(int ticket, bool done);
    void was_cut(int ticket, const std::string& answer);

    FramePacer pacer;
    std::function<void()> schedule; ///< asks the browser for the next animation frame

private:
    int next_ticket_ = 1;
    std::map<int, std::function<void(LoadedBytes)>> loads_;
    std::map<int, std::function<void(LoadedAll)>> all_loads_;
    std::map<int, std::function<void(StoreOutcome)>> stores_;
    std::map<int, std::function<void()>> calls_;
    std::function<void()> leave_;
    std::function<void(const std::string& id, const std::string& text)> type_;
    std::map<int, std::function<void(PickedFile)>> picks_;
    std::map<int, std::function<void(bool)>> copies_;
    std::map<int, std::function<void(const std::string&)>> cuts_;
};

[[nodiscard]] BrowserPorts& browser_ports();

} // namespace treadle::platform::browser
