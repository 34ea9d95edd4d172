// Who writes a job, how well it is kept, and words between pages.

#include "platform/browser/glue.h"
#include "platform/browser/host_state.h"

#include <emscripten.h>

#include <cstdlib>
#include <utility>

namespace treadle::platform::browser {

void BrowserPorts::ask_to_protect() { treadle_protect(); }

void BrowserPorts::standing(std::function<void(StoreStanding)> answer) {
    standings_[next_ticket_] = std::move(answer);
    treadle_standing(next_ticket_++);
}

void BrowserPorts::accept_place() { treadle_accept_place(); }

void BrowserPorts::bring_back(std::function<void(int)> answer) {
    bring_backs_[next_ticket_] = std::move(answer);
    treadle_bring_back(next_ticket_++);
}

void BrowserPorts::hold(const std::string& name, bool insist, std::function<void(Claim)> tell) {
    // Of two calls for a name the glue answers the later one only.
    std::erase_if(holds_, [&](const auto& one) { return one.second.name == name; });
    holds_[next_ticket_] = {name, std::move(tell)};
    treadle_hold(name.c_str(), insist ? 1 : 0, next_ticket_++);
}

void BrowserPorts::let_go(const std::string& name, bool stay) {
    if (!stay)
        std::erase_if(holds_, [&](const auto& one) { return one.second.name == name; });
    treadle_let_go(name.c_str(), stay ? 1 : 0);
}

void BrowserPorts::tell_pages(const std::string& words) { treadle_tell_pages(words.c_str()); }

void BrowserPorts::when_told(std::function<void(const std::string& words)> call) {
    told_ = std::move(call);
    treadle_listen_pages();
}

std::string BrowserPorts::page_text() {
    char* const text = treadle_page_text();
    std::string copy(text);
    std::free(text);
    return copy;
}

void BrowserPorts::keep_page_text(const std::string& text) { treadle_keep_page_text(text.c_str()); }

void BrowserPorts::held(int ticket, Claim how) {
    const auto found = holds_.find(ticket);
    if (found == holds_.end())
        return;                           // not wanted any more
    const auto tell = found->second.tell; // a copy: it may be replaced while it is called
    tell(how);
}

void BrowserPorts::stands(int ticket, const StoreStanding& standing) {
    const auto found = standings_.find(ticket);
    const auto answer = std::move(found->second);
    standings_.erase(found);
    answer(standing);
}

void BrowserPorts::brought_back(int ticket, int count) {
    const auto found = bring_backs_.find(ticket);
    const auto answer = std::move(found->second);
    bring_backs_.erase(found);
    answer(count);
}

void BrowserPorts::told(const std::string& words) const { told_(words); }

} // namespace treadle::platform::browser

namespace tp = treadle::platform;
using tp::browser::browser_ports;

extern "C" {

EMSCRIPTEN_KEEPALIVE void treadle_on_hold(int ticket, int how) {
    browser_ports().held(ticket, static_cast<tp::Claim>(how));
}

EMSCRIPTEN_KEEPALIVE void
treadle_on_standing(int ticket, int place, int is_protected, double used, double most) {
    browser_ports().stands(
        ticket, {static_cast<tp::StoreStanding::Where>(place), is_protected != 0, used, most});
}

EMSCRIPTEN_KEEPALIVE void treadle_on_brought_back(int ticket, int count) {
    browser_ports().brought_back(ticket, count);
}

EMSCRIPTEN_KEEPALIVE void treadle_on_told(const char* words) { browser_ports().told(words); }
}
