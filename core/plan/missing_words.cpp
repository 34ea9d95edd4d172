// What is missing, in the shop's own names instead of paths.

#include "plan/words.h"

#include <array>
#include <cstdlib>
#include <optional>

namespace treadle::plan {

namespace {

constexpr const char* k_stations = "machine.stations[";
constexpr const char* k_attachments = "machine.attachments[";

struct CribList {
    const char* path;
    const char* words;
};
constexpr std::array<CribList, 7> k_lists = {
    {{"crib.punches", "punches in the crib"},
     {"crib.dies", "dies in the crib"},
     {"crib.vees", "V blocks in the crib"},
     {"crib.brake_punches", "brake punches in the crib"},
     {"crib.saddle_dies", "saddle dies in the crib"},
     {"grade.bend_group", "the grade's least inside radius"},
     {"grade.air_bend_share", "the grade's radius in air bending"}}};

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

/// Replaces the path at `at` by the field in words and the name: "stroke of Flat shear".
void say(std::string& text, std::size_t at, const Indexed& found, const std::string& name) {
    std::string field;
    std::size_t end = found.field;
    for (; end < text.size(); ++end) {
        const char c = text[end];
        if (c != '_' && !(c >= 'a' && c <= 'z'))
            break;
        field += c == '_' ? ' ' : c;
    }
    text.replace(at, end - at, field + " of " + name);
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

/// Tools of the crib have no names: they are counted.
void say_numbered(std::string& text, const char* stem, const char* name) {
    for (std::size_t at = text.find(stem); at != std::string::npos; at = text.find(stem, at)) {
        const auto found = indexed(text, at, stem);
        if (!found)
            return;
        say(text, at, *found, name + std::to_string(found->index + 1));
    }
}

} // namespace

std::string with_names(std::string text, const equipment::Shop& shop) {
    say_all(text, k_stations, shop.machine.stations);
    say_all(text, k_attachments, shop.machine.attachments);
    say_numbered(text, "crib.vees[", "V block ");
    say_numbered(text, "crib.brake_punches[", "brake punch ");
    for (const CribList& list : k_lists) {
        const std::size_t at = text.find(list.path);
        if (at != std::string::npos)
            text.replace(at, std::string(list.path).size(), list.words);
    }
    return text;
}

std::string missing_sentence(const std::string& path, const equipment::Shop& shop) {
    constexpr std::string_view k_of = " of ";
    const std::string words = with_names(path, shop);
    std::string where = "under Shop";
    if (path.rfind("grade.", 0) == 0)
        where = "with the grade";
    else if (path.rfind("crib.", 0) == 0)
        where += " among the tools";
    else if (const std::size_t at = words.find(k_of); at != std::string::npos)
        where += ", " + words.substr(at + k_of.size());
    return "Not known: " + words + ". Enter it " + where + ".";
}

} // namespace treadle::plan
