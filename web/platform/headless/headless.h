// The outside as tests see it: nothing happens by itself, everything asked for is kept.

#pragma once

#include "platform/frame_pacer.h"
#include "platform/page.h"
#include "platform/ports.h"

#include <map>
#include <string>
#include <utility>
#include <vector>

namespace treadle::platform::headless {

class HeadlessPorts : public Ports {
public:
    void request_frame(const char* reason, int count) override;
    void request_frame_in(double seconds) override { wake_in = seconds; }
    void load(const std::string& key, std::function<void(LoadedBytes)> answer) override;
    void store(const std::string& key,
               std::string_view bytes,
               std::function<void(StoreOutcome)> answer) override;
    void load_all(const std::string& prefix, std::function<void(LoadedAll)> answer) override;
    void store_all(const std::vector<StoreChange>& changes,
                   std::function<void(StoreOutcome)> answer) override;
    void load_keys(const std::string& prefix, std::function<void(LoadedKeys)> answer) override;
    void ask_to_protect() override { wants_protection = true; }
    void standing(std::function<void(StoreStanding)> answer) override { answer(stands); }
    void accept_place() override {}
    void bring_back(std::function<void(int)> answer) override { answer(0); }
    void hold(const std::string& name, bool insist, std::function<void(Claim)> tell) override;
    void let_go(const std::string& name, bool stay) override;
    void tell_pages(const std::string& words) override { told.push_back(words); }
    void when_told(std::function<void(const std::string& words)> call) override {
        hear = std::move(call);
    }
    std::string page_text() override { return of_page; }
    void keep_page_text(const std::string& text) override { of_page = text; }
    std::string own_word() override { return word; }
    void call_in(double, std::function<void()> call) override { calls.push_back(std::move(call)); }
    void when_leaving(std::function<void()> call) override { leave = std::move(call); }
    void when_typing(std::function<void(const std::string&, const std::string&)> call) override {
        type = std::move(call);
    }
    void type_again(const std::string& id, const std::string& text) override {
        typed_again.emplace_back(id, text);
    }
    /// Lets the time pass that somebody waits for.
    void pass_time();
    void download(const std::string& name,
                  const std::string& media_type,
                  std::string_view bytes) override;
    void pick_file(const std::string& accept, std::function<void(PickedFile)> answer) override;
    void print_html(const std::string& title, const std::string& html) override;
    void show_sheet_preview(const std::string& title, const std::string& html) override;
    void hide_sheet_preview() override { preview.clear(); }
    void when_ticked(std::function<void(const std::string& key, bool on)> call) override {
        tick = std::move(call);
    }
    int cut(const std::string& list,
            long long most_work,
            std::function<void(const std::string&)> answer) override;
    void stop_cut(int ticket) override { stopped.push_back(ticket); }
    void edit_text(const TextEdit& edit) override { edits.push_back(edit); }
    void copy_text(const std::string& text, std::function<void(bool)> answer) override {
        copied = text;
        answer(true);
    }
    std::string now_text() override { return "10:41"; }
    std::string day_text() override { return "26 Nov"; }
    void announce(const std::string& sentence) override { announced.push_back(sentence); }
    void use_look(const std::string& name, float) override { look = name; }
    void keep_awake(bool wish) override { awake = wish; }
    bool can_keep_awake() override { return has_wake_lock; }
    std::string address_fragment() override { return fragment; }
    void forget_fragment() override { fragment.clear(); }
    std::string page_address() override { return address; }
    void when_given(std::function<void(PickedFile)> call) override { give = std::move(call); }
    void ask_for_table() override { asked_for_table = true; }
    void fetch_beside(const std::string& name,
                      int most,
                      std::function<void(LoadedBytes)> answer) override;
    Build build() override { return made; }
    void watch_versions(std::function<void(const VersionNews&)> tell,
                        std::function<void(std::function<void()>)> store_all) override {
        news = std::move(tell);
        flush = std::move(store_all);
    }
    void switch_version() override { ++switches; }
    void hand_part(PagePart part) override { handed.push_back(part); }
    void keep_in_tab(const std::string& text) override { in_tab = text; }
    std::string take_from_tab() override { return std::exchange(in_tab, {}); }

    FramePacer pacer;
    double wake_in = -1;
    std::map<std::string, std::string> kept;
    bool store_refuses = false;
    StoreResult refusal = StoreResult::refused; ///< with which it does
    StoreStanding stands;
    bool wants_protection = false;
    std::map<std::string, std::function<void(Claim)>> holds; ///< call one to say how it stands
    std::map<std::string, bool> insisted;
    std::vector<std::string> held_by_others; ///< names that another page has
    std::vector<std::string> let_gone;
    std::vector<std::string> told; ///< to other pages
    std::function<void(const std::string&)> hear;
    std::string of_page;
    std::vector<std::vector<StoreChange>> transactions; ///< that were asked for, refused or not
    std::string word = "tab1";
    std::vector<std::function<void()>> calls; ///< that wait for their time
    std::function<void()> leave;              ///< call it to leave the page
    std::function<void(const std::string& id, const std::string& text)> type;
    std::vector<std::pair<std::string, std::string>> typed_again; ///< id, text
    std::vector<std::pair<std::string, std::string>> downloads;   ///< name, bytes
    std::function<void(PickedFile)> pick; ///< answer the last pick_file with it
    std::string printed;
    std::string preview;
    std::function<void(const std::string& key, bool on)> tick; ///< as a finger on a box would
    std::vector<std::string> announced;
    std::string look;
    std::vector<TextEdit> edits;
    std::string copied;
    bool awake = false;
    bool has_wake_lock = true;
    std::string fragment;
    std::string address = "http://localhost/";
    std::function<void(PickedFile)> give; ///< call it to drop a file
    bool asked_for_table = false;
    std::map<std::string, std::string> beside; ///< files of the host
    Build made{"1.2.3", "build-1", "sources-1", false, true};
    std::function<void(const VersionNews&)> news; ///< call it with what is to be known
    std::function<void(std::function<void()>)> flush;
    int switches = 0;
    std::vector<PagePart> handed;
    std::string in_tab;
    /// Cuts at once; the one who tests knows how. None: there is no working on lists.
    std::function<std::string(const std::string& list, long long most_work)> cutter;
    std::vector<std::string> lists; ///< that were asked for; the ticket is the place, from 1
    std::vector<int> stopped;
};

/// Stands for the browser's loop: draws when a frame is wanted, and only then.
class Host {
public:
    Host(HeadlessPorts& ports, Page& page) : ports_(ports), page_(page) {}

    void open(const StageSize& size);
    /// One turn of the screen, 1/60 s. True when a frame was drawn.
    bool tick();
    /// Turns until nothing is wanted any more; gives up after `most`.
    void settle(int most = 600);

    void tap(float x, float y);
    void click(float x, float y);
    /// Finger from one point to the other in `steps` moves, one a tick, then let go.
    void drag(float from_x, float from_y, float to_x, float to_y, int steps);

    /// What the mirror was told last, as JSON; kept until something changes.
    [[nodiscard]] const std::string& mirror() const { return mirror_; }
    [[nodiscard]] long frames() const { return ports_.pacer.drawn(); }

private:
    void send(PointerPhase phase, PointerKind kind, float x, float y);

    HeadlessPorts& ports_;
    Page& page_;
    double now_ = 0;
    std::string mirror_;
};

} // namespace treadle::platform::headless
