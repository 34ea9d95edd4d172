// The bars in words and pictures, made once for each change of them.

#pragma once

#include "edit/session.h"

#include "ui/views/picture.h"
#include "ui/views/stock_board.h"

#include <array>
#include <cstdint>
#include <optional>
#include <string>
#include <vector>

namespace treadle::views {

struct StockCutReading {
    std::string title; ///< "HP1 34-1/2"
    std::string stop;  ///< "stop 69-1/8"
    std::string spoken;
    int part = 0;
};

struct StockBarReading {
    std::string title; ///< "Bar 240 × 4"
    std::string left;  ///< "drop 35-5/8, keep"
    std::string spoken;
    KeptPicture picture;
    std::vector<StockCutReading> cuts;
};

struct StockGroupReading {
    std::string title;
    std::string parting;
    std::string proof;
    std::string problem;          ///< why nothing is planned; or empty
    std::optional<int> shop_page; ///< where the shop has what the problem is about
    std::optional<int> part;      ///< or the part it is about
    bool proven = false;
    bool looking = false;
    double share = 0;    ///< of the search
    std::string percent; ///< of it
    std::vector<std::string> use;
    std::string sums;
    std::vector<std::string> cautions;
    Length longest; ///< of the bars, which are all drawn to its scale
    std::vector<StockBarReading> bars;
};

struct StockReading {
    std::string total;
    std::string sums;
    std::string not_from_bars;
    std::vector<StockGroupReading> groups;
    std::array<KeptPicture, 4> samples; ///< of the legend
};

class StockReadings {
public:
    [[nodiscard]] StockReading& of(const edit::Session& session, const StockBoard& board);

private:
    std::optional<StockReading> kept_;
    std::uint64_t revision_ = 0;
    std::uint64_t change_ = 0;
    std::vector<std::uint64_t> news_; ///< of the groups kept
};

} // namespace treadle::views
