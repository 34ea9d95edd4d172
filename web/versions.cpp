#include "versions.h"

#include <utility>

namespace treadle::web {

namespace {

constexpr const char* k_hint_key = "form-hint";

views::Offline offline_of(platform::VersionNews::Offline offline) {
    using Known = platform::VersionNews::Offline;
    switch (offline) {
    case Known::works:
        return views::Offline::works;
    case Known::needs_host:
        return views::Offline::needs_host;
    case Known::not_known:
        break;
    }
    return views::Offline::not_known;
}

} // namespace

Versions::Versions(platform::Ports& ports) : ports_(ports) {
    platform::Build build = ports_.build();
    board_.version = std::move(build.version);
    board_.build = std::move(build.id);
    board_.sources = std::move(build.sources);
    board_.can_hand_copy = build.can_hand_copy;
    is_one_file_ = build.is_one_file;
    if (is_one_file_)
        board_.offline = views::Offline::one_file;
}

void Versions::load(std::function<void()> answer) {
    ports_.load(k_hint_key, [this, answer = std::move(answer)](const platform::LoadedBytes& kept) {
        board_.hint_open = kept.result != platform::StoreResult::done;
        answer();
    });
}

void Versions::watch(std::function<void(std::function<void()>)> flush) {
    ports_.watch_versions([this](const platform::VersionNews& news) { told(news); },
                          std::move(flush));
}

void Versions::told(const platform::VersionNews& news) {
    if (news.is_waiting && !board_.is_waiting)
        ports_.announce("A new version is ready.");
    if (!is_one_file_)
        board_.offline = offline_of(news.offline);
    board_.is_secure = news.is_secure;
    board_.is_waiting = news.is_waiting;
    board_.is_switching = news.is_switching;
    board_.could_not = news.could_not;
    ports_.request_frame("version", 2);
}

void Versions::take(views::VersionAsk ask) {
    using views::VersionAsk;
    switch (ask) {
    case VersionAsk::switch_now:
        return ports_.switch_version();
    case VersionAsk::take_copy:
        return ports_.hand_part(platform::PagePart::one_file_copy);
    case VersionAsk::read_licences:
        return ports_.hand_part(platform::PagePart::licences);
    case VersionAsk::dismiss:
        board_.hint_open = false;
        return ports_.store(k_hint_key, "gone", [](const platform::StoreOutcome&) {});
    }
}

} // namespace treadle::web
