#include "platform/headless/headless.h"

#include <algorithm>

namespace treadle::platform::headless {

namespace {

constexpr double k_turn_seconds = 1.0 / 60;

} // namespace

void HeadlessPorts::request_frame(const char*, int count) { pacer.request(count); }

void HeadlessPorts::load(const std::string& key, std::function<void(LoadedBytes)> answer) {
    const auto found = kept.find(key);
    if (found == kept.end())
        answer({StoreResult::not_found, "", ""});
    else
        answer({StoreResult::done, found->second, ""});
}

void HeadlessPorts::store(const std::string& key,
                          std::string_view bytes,
                          std::function<void(StoreOutcome)> answer) {
    if (store_refuses) {
        answer({refusal, "the store is full"});
        return;
    }
    kept[key] = bytes;
    answer({StoreResult::done, ""});
}

void HeadlessPorts::load_all(const std::string& prefix, std::function<void(LoadedAll)> answer) {
    LoadedAll all{StoreResult::done, {}, ""};
    for (auto at = kept.lower_bound(prefix);
         at != kept.end() && at->first.compare(0, prefix.size(), prefix) == 0;
         ++at)
        all.kept.push_back({at->first, at->second});
    answer(std::move(all));
}

void HeadlessPorts::store_all(const std::vector<StoreChange>& changes,
                              std::function<void(StoreOutcome)> answer) {
    transactions.push_back(changes);
    if (store_refuses) {
        answer({refusal, "the store is full"});
        return;
    }
    for (const StoreChange& change : changes)
        if (change.is_new && kept.count(change.key) > 0)
            return answer({StoreResult::taken, "there is one already"});
    for (const StoreChange& change : changes) {
        if (change.bytes)
            kept[change.key] = *change.bytes;
        else
            kept.erase(change.key);
    }
    answer({StoreResult::done, ""});
}

void HeadlessPorts::load_keys(const std::string& prefix, std::function<void(LoadedKeys)> answer) {
    LoadedKeys keys{StoreResult::done, {}};
    for (auto at = kept.lower_bound(prefix);
         at != kept.end() && at->first.compare(0, prefix.size(), prefix) == 0;
         ++at)
        keys.keys.push_back(at->first);
    answer(std::move(keys));
}

void HeadlessPorts::hold(const std::string& name, bool insist, std::function<void(Claim)> tell) {
    holds[name] = tell;
    insisted[name] = insist;
    const bool others =
        std::find(held_by_others.begin(), held_by_others.end(), name) != held_by_others.end();
    tell(others && !insist ? Claim::others : Claim::mine);
}

void HeadlessPorts::let_go(const std::string& name, bool stay) {
    let_gone.push_back(name);
    if (!stay)
        holds.erase(name);
}

void HeadlessPorts::fetch_beside(const std::string& name,
                                 int most,
                                 std::function<void(LoadedBytes)> answer) {
    const auto found = beside.find(name);
    const bool is_there =
        found != beside.end() && found->second.size() <= static_cast<std::size_t>(most);
    if (is_there)
        answer({StoreResult::done, found->second, ""});
    else
        answer({StoreResult::not_found, "", ""});
}

void HeadlessPorts::pass_time() {
    for (const auto& call : std::exchange(calls, {}))
        call();
}

void HeadlessPorts::download(const std::string& name, const std::string&, std::string_view bytes) {
    downloads.emplace_back(name, bytes);
}

void HeadlessPorts::pick_file(const std::string&, std::function<void(PickedFile)> answer) {
    pick = std::move(answer);
}

void HeadlessPorts::print_html(const std::string&, const std::string& html) { printed = html; }

void HeadlessPorts::show_sheet_preview(const std::string&, const std::string& html) {
    preview = html;
}

int HeadlessPorts::cut(const std::string& list,
                       long long most_work,
                       std::function<void(const std::string&)> answer) {
    lists.push_back(list);
    answer(cutter ? cutter(list, most_work) : std::string());
    return static_cast<int>(lists.size());
}

void Host::open(const StageSize& size) {
    page_.resize(size);
    settle();
}

bool Host::tick() {
    now_ += k_turn_seconds;
    if (!ports_.pacer.wants_frame())
        return false;
    ports_.pacer.frame_starts();
    page_.prepare();
    page_.frame(k_turn_seconds);
    std::string changes = page_.take_mirror_changes();
    if (!changes.empty())
        mirror_ = std::move(changes);
    return true;
}

void Host::settle(int most) {
    for (int turn = 0; turn < most && tick(); ++turn) {
    }
}

void Host::send(PointerPhase phase, PointerKind kind, float x, float y) {
    page_.pointer({phase, kind, 1, x, y, now_});
}

void Host::tap(float x, float y) {
    send(PointerPhase::down, PointerKind::touch, x, y);
    tick();
    send(PointerPhase::up, PointerKind::touch, x, y);
    settle();
}

void Host::click(float x, float y) {
    send(PointerPhase::move, PointerKind::mouse, x, y);
    tick();
    send(PointerPhase::down, PointerKind::mouse, x, y);
    tick();
    send(PointerPhase::up, PointerKind::mouse, x, y);
    settle();
}

void Host::drag(float from_x, float from_y, float to_x, float to_y, int steps) {
    send(PointerPhase::down, PointerKind::touch, from_x, from_y);
    tick();
    for (int step = 1; step <= steps; ++step) {
        const float share = static_cast<float>(step) / static_cast<float>(steps);
        send(PointerPhase::move,
             PointerKind::touch,
             from_x + (to_x - from_x) * share,
             from_y + (to_y - from_y) * share);
        tick();
    }
    send(PointerPhase::up, PointerKind::touch, to_x, to_y);
}

} // namespace treadle::platform::headless
