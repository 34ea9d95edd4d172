// Which build this is, other versions of it, and what a tab keeps for itself over a reload.

#include "platform/browser/glue.h"
#include "platform/browser/host_state.h"

#include <emscripten.h>

#include <cstdlib>
#include <utility>

namespace treadle::platform::browser {

namespace {

std::string taken(char* text) {
    std::string copy(text);
    std::free(text);
    return copy;
}

/// The next line of `text` after `at`, which moves on.
std::string next_line(const std::string& text, std::size_t& at) {
    const std::size_t end = text.find('\n', at);
    std::string line = text.substr(at, end - at);
    at = end == std::string::npos ? text.size() : end + 1;
    return line;
}

} // namespace

Build BrowserPorts::build() {
    // One line each, as versions.js has it.
    const std::string text = taken(treadle_build());
    std::size_t at = 0;
    Build build;
    build.version = next_line(text, at);
    build.id = next_line(text, at);
    build.sources = next_line(text, at);
    build.is_one_file = next_line(text, at) == "one file";
    build.can_hand_copy = next_line(text, at) == "copy";
    return build;
}

void BrowserPorts::watch_versions(std::function<void(const VersionNews&)> news,
                                  std::function<void(std::function<void()>)> flush) {
    news_ = std::move(news);
    flush_ = std::move(flush);
    treadle_watch_versions();
}

void BrowserPorts::switch_version() { treadle_switch_version(); }

void BrowserPorts::hand_part(PagePart part) { treadle_hand_part(static_cast<int>(part)); }

void BrowserPorts::keep_in_tab(const std::string& text) { treadle_keep_in_tab(text.c_str()); }

std::string BrowserPorts::take_from_tab() { return taken(treadle_take_from_tab()); }

void BrowserPorts::version_news(const VersionNews& news) {
    news_(news); // who shows it asks for the frame
}

void BrowserPorts::flush(std::function<void()> done) const { flush_(std::move(done)); }

} // namespace treadle::platform::browser

namespace tp = treadle::platform;
using tp::browser::browser_ports;

extern "C" {

EMSCRIPTEN_KEEPALIVE void
treadle_on_versions(int offline, int is_secure, int is_waiting, int is_switching, int could_not) {
    browser_ports().version_news({static_cast<tp::VersionNews::Offline>(offline),
                                  is_secure != 0,
                                  is_waiting != 0,
                                  is_switching != 0,
                                  could_not != 0});
}

EMSCRIPTEN_KEEPALIVE void treadle_on_flush(int ticket) {
    browser_ports().flush([ticket] { treadle_flushed(ticket); });
}
}
