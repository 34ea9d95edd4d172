// Small files for the fuzzers to start from: one thing each of all that a job and a shop can hold.

#pragma once

#include "archive/archive.h"

#include <string>
#include <utility>
#include <vector>

namespace treadle::fuzz {

/// A job with this part alone, in a shop of which nothing is known.
inline archive::File with_part(const archive::File& from, std::size_t part) {
    archive::File small;
    small.job = from.job;
    small.job.note.clear();
    small.job.parts = {from.job.parts[part]};
    small.shop.name = "s";
    return small;
}

template <class List>
void first_of(List& list, std::size_t most) {
    if (list.size() > most)
        list.resize(most);
}

/// The file's shop cut to one thing of each kind; stations stay where an attachment names them.
inline equipment::Shop small_shop(equipment::Shop shop) {
    first_of(shop.machine.stations, 1);
    shop.machine.stations[0].excludes.clear();
    shop.machine.attachments.clear();
    shop.other_machines.clear();
    first_of(shop.crib.punches, 1);
    first_of(shop.crib.dies, 1);
    first_of(shop.crib.vees, 1);
    first_of(shop.crib.brake_punches, 1);
    first_of(shop.crib.saddle_dies, 1);
    first_of(shop.rack, 1);
    first_of(shop.trials, 1);
    return shop;
}

/// Shops that together hold all that the file's shop holds.
inline std::vector<equipment::Shop> small_shops(const equipment::Shop& from) {
    std::vector<equipment::Shop> shops{small_shop(from)};
    for (const equipment::Station& station : from.machine.stations) {
        equipment::Shop shop;
        shop.name = "s";
        shop.machine.stations = {station};
        shop.machine.stations[0].excludes.clear();
        shops.push_back(std::move(shop));
    }
    for (const equipment::Attachment& attachment : from.machine.attachments) {
        equipment::Shop shop;
        shop.name = "s";
        shop.machine.stations.resize(1);
        shop.machine.stations[0].id = attachment.stations.front();
        shop.machine.stations[0].name = "t";
        shop.machine.stations[0].kind = equipment::StationKind::table;
        shop.machine.attachments = {attachment};
        shop.machine.attachments[0].stations.resize(1);
        shops.push_back(std::move(shop));
    }
    for (const equipment::StockBar& bar : from.rack) {
        equipment::Shop shop;
        shop.name = "s";
        shop.rack = {bar};
        shops.push_back(std::move(shop));
    }
    return shops;
}

/// The text without the blanks of a reader: outside of strings only.
inline std::string without_blanks(const std::string& text) {
    std::string out;
    bool quoted = false;
    for (std::size_t i = 0; i < text.size(); ++i) {
        quoted = quoted != (text[i] == '"' && text[i - 1] != '\\');
        if (quoted || (text[i] != ' ' && text[i] != '\n'))
            out += text[i];
    }
    return out;
}

} // namespace treadle::fuzz
