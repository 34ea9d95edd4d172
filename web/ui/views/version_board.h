// What the page says about its own version, and about use without a network.

#pragma once

#include <cstdint>
#include <string>

namespace treadle::views {

enum class Offline : std::uint8_t { not_known, works, needs_host, one_file };

struct VersionBoard {
    std::string version;
    std::string build;
    std::string sources; ///< hash of what it was made from
    Offline offline = Offline::not_known;
    bool is_secure = true;      ///< false: the browser keeps no pages from this address
    bool can_hand_copy = false; ///< the host has the one-file copy
    bool is_waiting = false;    ///< another version can be switched to
    bool is_switching = false;
    bool could_not = false; ///< switch, because something is not stored
    bool hint_open = false; ///< the sentence about this form of the page, until it is dismissed
};

/// What was pressed about it.
enum class VersionAsk : std::uint8_t { switch_now, take_copy, read_licences, dismiss };

} // namespace treadle::views
