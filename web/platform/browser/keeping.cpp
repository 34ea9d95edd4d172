// What lasts beyond the page: many keys in one transaction, and the moment before the page goes.

#include "platform/browser/glue.h"
#include "platform/browser/host_state.h"

#include <emscripten.h>

#include <algorithm>
#include <cstdint>
#include <cstdlib>
#include <cstring>
#include <utility>

namespace treadle::platform::browser {

namespace {

// Packed as keeping.js has it. Changes: key length, byte length (or k_removed), 1 where it is new,
// key, bytes; and so on. What is read: the same without the third.
constexpr std::uint32_t k_removed = 0xFFFFFFFFU;

void append_length(std::string& packed, std::uint32_t length) {
    char bytes[sizeof length];
    std::memcpy(bytes, &length, sizeof length);
    packed.append(bytes, sizeof length);
}

std::string pack(const std::vector<StoreChange>& changes) {
    std::string packed;
    for (const StoreChange& change : changes) {
        append_length(packed, static_cast<std::uint32_t>(change.key.size()));
        append_length(packed,
                      change.bytes ? static_cast<std::uint32_t>(change.bytes->size()) : k_removed);
        append_length(packed, change.is_new ? 1 : 0);
        packed += change.key;
        packed += change.bytes.value_or("");
    }
    return packed;
}

std::vector<Kept> unpack(const char* bytes, std::size_t length) {
    std::vector<Kept> kept;
    for (std::size_t at = 0; at + 2 * sizeof(std::uint32_t) <= length;) {
        std::uint32_t key = 0;
        std::uint32_t size = 0;
        std::memcpy(&key, bytes + at, sizeof key);
        std::memcpy(&size, bytes + at + sizeof key, sizeof size);
        at += sizeof key + sizeof size;
        kept.push_back({std::string(bytes + at, key), std::string(bytes + at + key, size)});
        at += key + size;
    }
    return kept;
}

} // namespace

void BrowserPorts::load_all(const std::string& prefix, std::function<void(LoadedAll)> answer) {
    all_loads_[next_ticket_] = std::move(answer);
    treadle_load_all(prefix.c_str(), next_ticket_++);
}

void BrowserPorts::store_all(const std::vector<StoreChange>& changes,
                             std::function<void(StoreOutcome)> answer) {
    stores_[next_ticket_] = std::move(answer);
    const std::string packed = pack(changes);
    treadle_store_all(packed.data(), static_cast<int>(packed.size()), next_ticket_++);
}

void BrowserPorts::load_keys(const std::string& prefix, std::function<void(LoadedKeys)> answer) {
    key_loads_[next_ticket_] = std::move(answer);
    treadle_load_keys(prefix.c_str(), next_ticket_++);
}

void BrowserPorts::loaded_keys(int ticket, LoadedKeys keys) {
    const auto found = key_loads_.find(ticket);
    const auto answer = std::move(found->second);
    key_loads_.erase(found);
    answer(std::move(keys));
}

std::string BrowserPorts::own_word() {
    char* const word = treadle_own_word();
    std::string copy(word);
    std::free(word);
    return copy;
}

void BrowserPorts::call_in(double seconds, std::function<void()> call) {
    calls_[next_ticket_] = std::move(call);
    treadle_call_in(seconds, next_ticket_++);
}

void BrowserPorts::when_leaving(std::function<void()> call) {
    leave_ = std::move(call);
    treadle_listen_leaving();
}

void BrowserPorts::when_typing(
    std::function<void(const std::string& id, const std::string& text)> call) {
    type_ = std::move(call);
    treadle_listen_typing();
}

void BrowserPorts::type_again(const std::string& id, const std::string& text) {
    treadle_type_again(id.c_str(), text.c_str());
}

void BrowserPorts::loaded_all(int ticket, LoadedAll all) {
    const auto found = all_loads_.find(ticket);
    const auto answer = std::move(found->second);
    all_loads_.erase(found);
    answer(std::move(all));
}

void BrowserPorts::called(int ticket) {
    const auto found = calls_.find(ticket);
    const auto call = std::move(found->second);
    calls_.erase(found);
    call();
}

void BrowserPorts::leaving() const { leave_(); }

void BrowserPorts::typing(const std::string& id, const std::string& text) const { type_(id, text); }

} // namespace treadle::platform::browser

namespace tp = treadle::platform;
using tp::browser::browser_ports;

extern "C" {

EMSCRIPTEN_KEEPALIVE void
treadle_on_loaded_all(int ticket, int result, const char* packed, int length, const char* detail) {
    browser_ports().loaded_all(ticket,
                               {static_cast<tp::StoreResult>(result),
                                tp::browser::unpack(packed, static_cast<std::size_t>(length)),
                                detail});
}

EMSCRIPTEN_KEEPALIVE void treadle_on_keys(int ticket, int result, const char* lines) {
    tp::LoadedKeys keys{static_cast<tp::StoreResult>(result), {}};
    const std::string_view all(lines);
    for (std::size_t at = 0; at < all.size();) {
        const std::size_t end = std::min(all.find('\n', at), all.size());
        keys.keys.emplace_back(all.substr(at, end - at));
        at = end + 1;
    }
    browser_ports().loaded_keys(ticket, std::move(keys));
}

EMSCRIPTEN_KEEPALIVE void treadle_on_called(int ticket) { browser_ports().called(ticket); }

EMSCRIPTEN_KEEPALIVE void treadle_on_leaving() { browser_ports().leaving(); }

EMSCRIPTEN_KEEPALIVE void treadle_on_unfinished(const char* id, const char* text) {
    browser_ports().typing(id, text);
}
}
