// Has the job's lists of bars searched beside the page, each once as long as it stays the same.

#pragma once

#include "edit/session.h"

#include "platform/ports.h"
#include "ui/views/stock_board.h"

#include <cstdint>
#include <functional>
#include <map>
#include <string>

#include "cutting/answer.h"

namespace treadle::web {

class StockWork {
public:
    explicit StockWork(platform::Ports& ports) : ports_(ports) {}

    /// Asks for what has changed since the last time, and drops what nobody waits for any more.
    void refresh(const edit::Session& session);
    [[nodiscard]] const views::StockBoard& board() const { return board_; }

private:
    struct Search {
        int ticket = 0;
        cutting::CutList list;
        cutting::CutAnswer answer;
        views::StockSearch state;
        bool wanted = true;
        std::uint64_t news = 0;
    };
    void ask(const std::string& text, const cutting::CutList& list);
    void answered(const std::string& text, const std::string& answer);
    void drop_unwanted();
    void put_together();

    platform::Ports& ports_;
    std::map<std::string, Search> searches_; ///< by the text of their lists
    std::vector<std::string> texts_;         ///< of the groups; empty with a problem
    views::StockBoard board_;
    std::uint64_t revision_ = ~std::uint64_t{0};
    std::uint64_t last_news_ = 1; ///< that number is for what is not searched
    bool has_news_ = false;
};

} // namespace treadle::web
