#include "ui/views/shop_paths.h"

#include <array>
#include <cstdlib>
#include <utility>

namespace treadle::views {

namespace {

constexpr const char* k_stations = "machine.stations[";
constexpr const char* k_attachments = "machine.attachments[";

struct CribList {
    const char* path;
    const char* words;
};
/// In the order of the shop's list.
constexpr std::array<CribList, 5> k_crib = {{{"crib.punches", "punches in the crib"},
                                             {"crib.dies", "dies in the crib"},
                                             {"crib.vees", "V blocks in the crib"},
                                             {"crib.brake_punches", "brake punches in the crib"},
                                             {"crib.saddle_dies", "saddle dies in the crib"}}};

/// The index in `text` after `stem`, and where the name of the field begins.
struct Indexed {
    std::size_t index = 0;
    std::size_t field = 0;
};
std::optional<Indexed> indexed(const std::string& text, std::size_t at, const char* stem) {
    const std::size_t digits = at + std::string(stem).size();
    const std::size_t close = text.find("].", digits);
    if (close == std::string::npos)
        return std::nullopt;
    return Indexed{std::strtoul(text.c_str() + digits, nullptr, 10), close + 2};
}

/// Replaces the path at `at` by a name and the field in words.
void say(std::string& text, std::size_t at, const Indexed& found, const std::string& name) {
    for (std::size_t i = found.field; i < text.size(); ++i) {
        const char c = text[i];
        if (c == '_')
            text[i] = ' ';
        else if (!(c >= 'a' && c <= 'z'))
            break;
    }
    text.replace(at, found.field - at, name + ", ");
}

template <class Things>
void say_all(std::string& text, const char* stem, const Things& things) {
    for (std::size_t at = text.find(stem); at != std::string::npos; at = text.find(stem, at)) {
        const auto found = indexed(text, at, stem);
        if (!found || found->index >= things.size())
            return;
        say(text, at, *found, things[found->index].name);
    }
}

} // namespace

std::string in_words(std::string text, const equipment::Shop& shop) {
    say_all(text, k_stations, shop.machine.stations);
    say_all(text, k_attachments, shop.machine.attachments);
    for (const CribList& list : k_crib) {
        const std::size_t at = text.find(list.path);
        if (at != std::string::npos)
            text.replace(at, std::string(list.path).size(), list.words);
    }
    return text;
}

std::optional<int> shop_page_of(const std::string& path, const equipment::Shop& shop) {
    const std::size_t stations = shop.machine.stations.size();
    const std::size_t attachments = shop.machine.attachments.size();
    if (path.rfind(k_stations, 0) == 0) {
        if (const auto found = indexed(path, 0, k_stations))
            return static_cast<int>(1 + found->index);
    }
    if (path.rfind(k_attachments, 0) == 0) {
        if (const auto found = indexed(path, 0, k_attachments))
            return static_cast<int>(1 + stations + found->index);
    }
    for (std::size_t i = 0; i < k_crib.size(); ++i) {
        if (path.rfind(k_crib[i].path, 0) == 0)
            return static_cast<int>(1 + stations + attachments + i);
    }
    return std::nullopt;
}

} // namespace treadle::views
