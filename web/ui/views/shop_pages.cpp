#include "ui/views/shop_pages.h"

#include "plan/words.h"

#include <array>
#include <utility>

namespace treadle::views {

namespace {

std::string count_words(std::size_t count) {
    return std::to_string(count) + (count == 1 ? " tool" : " tools");
}

} // namespace

std::vector<ShopPage> shop_pages(const equipment::Shop& shop) {
    using Kind = ShopPage::Kind;
    std::vector<ShopPage> pages;
    pages.push_back({Kind::machine,
                     0,
                     shop.machine.name.empty() ? "Machine" : shop.machine.name,
                     shop.machine.invented ? "Machine, invented" : "Machine"});
    for (std::size_t i = 0; i < shop.machine.stations.size(); ++i) {
        const equipment::Station& station = shop.machine.stations[i];
        pages.push_back({Kind::station,
                         static_cast<int>(i),
                         station.name,
                         std::string("Station: ") + equipment::station_word(station.kind)});
    }
    for (std::size_t i = 0; i < shop.machine.attachments.size(); ++i) {
        const equipment::Attachment& attachment = shop.machine.attachments[i];
        pages.push_back(
            {Kind::attachment,
             static_cast<int>(i),
             attachment.name,
             std::string("Attachment: ") + equipment::attachment_word(attachment.kind)});
    }
    const equipment::Crib& crib = shop.crib;
    const std::array<std::pair<const char*, std::size_t>, 5> tools = {
        {{"Punches", crib.punches.size()},
         {"Dies", crib.dies.size()},
         {"V blocks", crib.vees.size()},
         {"Brake punches", crib.brake_punches.size()},
         {"Saddle dies", crib.saddle_dies.size()}}};
    for (std::size_t i = 0; i < tools.size(); ++i)
        pages.push_back(
            {Kind::crib, static_cast<int>(i), tools[i].first, count_words(tools[i].second)});
    pages.push_back({Kind::rack,
                     0,
                     "Rack",
                     std::to_string(shop.rack.size()) +
                         (shop.rack.size() == 1 ? " kind of bar" : " kinds of bars")});
    pages.push_back({Kind::rules, 0, "House rules", "Margins, rounding, overlaps"});
    pages.push_back({Kind::times, 0, "Times and handling", "Minutes, money, weights"});
    pages.push_back({Kind::power, 0, "Power", "Motor, cord, generator"});
    const std::size_t trials = shop.trials.size();
    pages.push_back({Kind::trials,
                     0,
                     "Trial strips",
                     std::to_string(trials) + (trials == 1 ? " trial" : " trials")});
    return pages;
}

const char* crib_list_path(int list) {
    constexpr std::array k_paths = {"punches", "dies", "vees", "brake_punches", "saddle_dies"};
    return k_paths[static_cast<std::size_t>(list)];
}

std::string tool_row_id(const equipment::Shop& shop, int page, int tool) {
    const int list = shop_pages(shop)[static_cast<std::size_t>(page)].index;
    return "shop/" + std::to_string(page) + "/" + crib_list_path(list) + "-" + std::to_string(tool);
}

std::string tool_words(const equipment::PunchTool& tool, PrintStyle style) {
    return plan::hole_words(tool.hole, style);
}
std::string tool_words(const equipment::DieTool& tool, PrintStyle style) {
    return plan::hole_words(tool.hole, style);
}
std::string tool_words(const equipment::VBlock& tool, PrintStyle style) {
    return quantity::print(tool.opening, style) + " open, " + quantity::print(tool.length, style) +
           " long";
}
std::string tool_words(const equipment::BrakePunch& tool, PrintStyle style) {
    return "nose " + quantity::print_decimal(tool.nose, style) + ", " +
           quantity::print(tool.length, style) + " long";
}
std::string tool_words(const equipment::SaddleDie& tool, PrintStyle style) {
    return quantity::print_decimal(tool.branch_diameter, style) + " on " +
           quantity::print_decimal(tool.run_diameter, style);
}

} // namespace treadle::views
