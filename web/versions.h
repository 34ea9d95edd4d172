// Other versions of the page, and its use without a network: what is known, and what was pressed.

#pragma once

#include "platform/ports.h"
#include "ui/views/version_board.h"

#include <functional>

namespace treadle::web {

class Versions {
public:
    explicit Versions(platform::Ports& ports);

    /// Reads whether the line about this form of the page was dismissed; answers once.
    void load(std::function<void()> answer);
    /// From now on. `flush` stores all there is, and then calls what it is given.
    void watch(std::function<void(std::function<void()>)> flush);
    void take(views::VersionAsk ask);

    [[nodiscard]] const views::VersionBoard& board() const { return board_; }

private:
    void told(const platform::VersionNews& news);

    platform::Ports& ports_;
    views::VersionBoard board_;
    bool is_one_file_ = false;
};

} // namespace treadle::web
